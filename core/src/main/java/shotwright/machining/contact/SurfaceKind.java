package shotwright.machining.contact;

/** Kinds of surface that are finished in different ways. */
public enum SurfaceKind {
    /** The level top: the parting face. */
    FACE("parting face"),
    FLOOR("level floor"),
    CURVED("curved floor"),
    WALL("wall");

    /** Least share of the normal that points up on a level floor: 0.8° of lean. */
    private static final double LEVEL_SHARE = 0.9999;
    /** Share of the normal that points up where floors end and walls begin: a slope of 60°. */
    private static final double WALL_SHARE = 0.5;

    private final String words;

    SurfaceKind(String words) {
        this.words = words;
    }

    public String words() {
        return words;
    }

    /** The kind of a facet by its lean and its height under the top. */
    public static SurfaceKind of(double normalZ, double belowTopMm) {
        if (normalZ >= LEVEL_SHARE) return belowTopMm < 1e-4 ? FACE : FLOOR;
        return normalZ >= WALL_SHARE ? CURVED : WALL;
    }
}
