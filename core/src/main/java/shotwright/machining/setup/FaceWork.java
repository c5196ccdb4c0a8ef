package shotwright.machining.setup;

/** What is done to a face of a blank. */
public enum FaceWork {
    AS_DRAWN("used as drawn, corners broken with a file"),
    BY_HAND("cleaned by hand on a flat stone or abrasive paper"),
    SKIMMED("skimmed"),
    MILLED("milled to size");

    private final String words;

    FaceWork(String words) {
        this.words = words;
    }

    public String words() {
        return words;
    }
}
