package shotwright.review;

/** Kinds of walls that stand more or less along the pull. */
public enum WallShape {
    /** Looks away from the part: the cavity side, the part shrinks off it. */
    OUTER("outer wall"),
    /** The inside of an outer wall: a core, the part shrinks onto it. */
    INNER("inner wall"),
    /** A round wall round air. */
    HOLE("hole"),
    /** Flat walls that close round air. */
    POCKET("pocket wall"),
    /** A round wall round plastic, standing inside the part. */
    BOSS("boss"),
    /** A thin flat wall with air on both sides. */
    RIB("rib side"),
    /** Any other wall that is flat. */
    FLAT("flat wall"),
    /** Any other wall that is not. */
    CURVED("curved wall");

    private final String words;

    WallShape(String words) {
        this.words = words;
    }

    public String words() {
        return words;
    }

    /** The part shrinks onto it and needs more draft to come off. */
    public boolean isCore() {
        return this == INNER || this == BOSS;
    }

    /** Small enough things to be asked for no more than their depth wants. */
    boolean followsDepthAlone() {
        return this == RIB || this == HOLE || this == POCKET;
    }
}
