package shotwright.machining.path;

/** A step that may cut. */
public sealed interface Feed extends Step permits Line, Arc {
    /** Feed along the path, mm/min. */
    double feedMmPerMin();

    /** The same path at another feed. */
    Feed withFeed(double mmPerMin);

    /** Refuses a feed that is not above zero. */
    static void check(double feedMmPerMin) {
        if (!(feedMmPerMin > 0) || !Double.isFinite(feedMmPerMin))
            throw new IllegalArgumentException("feedMmPerMin: " + feedMmPerMin + " is not above zero");
    }
}
