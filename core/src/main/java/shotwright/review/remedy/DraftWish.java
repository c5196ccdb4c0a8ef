package shotwright.review.remedy;

/**
 * What is asked for.
 *
 * @param draftDeg draft of every wall afterwards, 0.1° to 15°
 * @param neutral which end keeps its size
 */
public record DraftWish(double draftDeg, NeutralEnd neutral) {
    /** Least and most draft that can be asked for, in degrees. */
    public static final double LEAST_DEG = 0.1, MOST_DEG = 15;

    public DraftWish {
        if (!(draftDeg >= LEAST_DEG && draftDeg <= MOST_DEG))
            throw new IllegalArgumentException("draftDeg: " + draftDeg + " is not from 0.1 to 15");
    }
}
