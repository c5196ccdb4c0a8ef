package shotwright.intake;

/** The formats told apart by content. */
enum FileFormat {
    STL_BINARY("STL, binary"),
    STL_ASCII("STL, ASCII"),
    OBJ("OBJ"),
    THREE_MF("3MF"),
    STEP("STEP");

    private final String words;

    FileFormat(String words) {
        this.words = words;
    }

    String words() {
        return words;
    }
}
