package shotwright.cutter;

import shotwright.measure.Source;

/**
 * What grips the cutter, as a cylinder that starts at its nose and has no upper end: wider than the true outline nowhere but above the nut,
 * so a path that clears it clears the holder.
 *
 * @param name name shown
 * @param noseDiaMm diameter, the allowance for a nut that runs out of true included
 * @param source where the diameter is from
 */
public record Holder(String name, double noseDiaMm, Source source) {
    private static final Source NUTS = Source.fromMemory("outside diameters of collet nuts, 1 mm added");

    /** Collet chucks by the size of their nut. */
    public static final Holder ER11 = new Holder("ER11 collet chuck", 20, NUTS);

    public static final Holder ER16_SLIM = new Holder("ER16 collet chuck, slim nut", 23, NUTS);
    public static final Holder ER16 = new Holder("ER16 collet chuck", 29, NUTS);
    public static final Holder ER20 = new Holder("ER20 collet chuck", 35, NUTS);

    public Holder {
        if (name.isBlank()) throw new IllegalArgumentException("holder: has no name");
        if (!(noseDiaMm > 0) || !Double.isFinite(noseDiaMm))
            throw new IllegalArgumentException("holder: nose diameter " + noseDiaMm + " mm is not above zero");
    }

    /** The smallest collet chuck that takes a shank; ER11 takes 7, ER16 10, ER20 13 mm. */
    public static Holder forShank(double shankMm) {
        return shankMm <= 7 ? ER11 : shankMm <= 10 ? ER16 : ER20;
    }

    /** Half the diameter. */
    public double noseRadiusMm() {
        return noseDiaMm / 2;
    }
}
