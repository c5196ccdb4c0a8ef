package shotwright.drawing;

/**
 * How lettering looks.
 *
 * @param size height of the em, mm on paper
 * @param bold heavy or plain
 * @param rgb colour
 * @param align where the reference point lies in the line
 */
public record Letter(double size, boolean bold, int rgb, Align align) {
    /** Reference point at the beginning, the middle or the end. */
    public enum Align {
        START,
        MIDDLE,
        END
    }

    /** Dimensions, labels: 12.5 pixels of the desk. */
    public static final Letter LABEL = new Letter(3.1, false, Ink.BLACK, Align.START);

    /** Below a number or an axis. */
    public static final Letter SMALL = new Letter(2.8, false, Ink.GREY, Align.START);

    /** Sentences. */
    public static final Letter BODY = new Letter(3.6, false, Ink.BLACK, Align.START);

    /** Names of halves and cuts. */
    public static final Letter NAME = new Letter(5, false, Ink.BLACK, Align.MIDDLE);

    public Letter {
        if (!(size > 0)) throw new IllegalArgumentException("size: " + size + " is not above zero");
    }

    public Letter middle() {
        return new Letter(size, bold, rgb, Align.MIDDLE);
    }

    public Letter end() {
        return new Letter(size, bold, rgb, Align.END);
    }

    public Letter heavy() {
        return new Letter(size, true, rgb, align);
    }

    public Letter in(int colour) {
        return new Letter(size, bold, colour, align);
    }

    public Letter sized(double mm) {
        return new Letter(mm, bold, rgb, align);
    }

    /** Height of a capital above the base line. */
    public double capital() {
        return size * 0.72;
    }
}
