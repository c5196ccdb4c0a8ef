package shotwright.drawing;

/** Lines on a face or a cut that say without colour what colour says. */
public enum Texture {
    /** Nothing. */
    NONE,
    /** Lines along the opening direction: below a limit. */
    RULED,
    /** Lines both ways: cannot be pulled. */
    CROSSED,
    /** Cut through half A. */
    HATCH_A,
    /** Cut through half B. */
    HATCH_B;

    private static final double ROOT_HALF = Math.sqrt(0.5);

    /** Whether a line of the texture passes a point of the page, in pixels of the desk. */
    boolean inked(double x, double y) {
        return switch (this) {
            case NONE -> false;
            case RULED -> near(x, 6, 1);
            case CROSSED -> near((x + y) * ROOT_HALF, 6, 0.9) || near((x - y) * ROOT_HALF, 6, 0.9);
            case HATCH_A -> near((x + y) * ROOT_HALF, 9, 0.7);
            case HATCH_B -> near((x - y) * ROOT_HALF, 9, 0.7);
        };
    }

    private static boolean near(double across, double pitch, double width) {
        return across - pitch * Math.floor(across / pitch) < width;
    }
}
