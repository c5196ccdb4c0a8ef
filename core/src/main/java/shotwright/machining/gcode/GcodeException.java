package shotwright.machining.gcode;

/** A program file cannot be used. The message names file, line and text and says what to do. */
public final class GcodeException extends RuntimeException {
    private final int line;

    /**
     * @param file name of the file
     * @param line line in it, from 1
     * @param text the line itself
     * @param what what is wrong with it
     * @param remedy what to do about it
     */
    public GcodeException(String file, int line, String text, String what, String remedy) {
        super(file + " line " + line + " \"" + shortened(text) + "\": " + what + "; " + remedy + ".");
        this.line = line;
    }

    /** Line in the file, from 1. */
    public int line() {
        return line;
    }

    private static String shortened(String text) {
        String plain = text.strip().replaceAll("[^ -~]", "?");
        return plain.length() <= 60 ? plain : plain.substring(0, 57) + "...";
    }
}
