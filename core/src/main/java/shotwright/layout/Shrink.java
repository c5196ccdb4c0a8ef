package shotwright.layout;

/**
 * Mold size from part size: L_mold = L_part / (1 − S), with S = (L_mold − L_part) / L_mold at 23 °C, the part 16 h or more after molding.
 * Source: ISO 294-4, DIN 16901.
 */
public final class Shrink {
    private Shrink() {}

    /** Factor on every length of the part along an axis. Shares outside −1 % … 8 % are no plastic's shrink and are refused. */
    public static double moldFactor(double shrinkShare) {
        if (!(shrinkShare > -0.01 && shrinkShare < 0.08))
            throw new IllegalArgumentException(
                    "shrink: " + 100 * shrinkShare + " % is outside −1 % … 8 %; a share such as 0.006 is meant");
        return 1 / (1 - shrinkShare);
    }

    /** Length in the mold that gives a length on the part, mm. */
    public static double moldLengthMm(double partLengthMm, double shrinkShare) {
        return partLengthMm * moldFactor(shrinkShare);
    }

    /**
     * Shrink taken from a resin's range for a wall: the middle of the range, and for a crystalline resin 0.15 % more for every millimetre of
     * wall above 2 mm, never beyond the range by more than 0.3 %. Source: common practice (0.1–0.2 % per mm).
     *
     * @param lowShare lower end of the resin's range
     * @param highShare upper end
     * @param wallMm median wall
     * @param crystalline true for POM, PP, PE, PA, PBT
     */
    public static double fromRangeShare(double lowShare, double highShare, double wallMm, boolean crystalline) {
        double mid = (lowShare + highShare) / 2;
        if (!crystalline || wallMm <= 2) return mid;
        return Math.min(mid + 0.0015 * (wallMm - 2), highShare + 0.003);
    }

    /** Shrink measured on parts, S = 1 − L_part/L_mold, after 16 to 24 h at 23 °C (ISO 294-4). */
    public static double measuredShare(double partMm, double moldMm) {
        if (!(partMm > 0 && moldMm > 0))
            throw new IllegalArgumentException("lengths: " + partMm + " and " + moldMm + " mm");
        double share = 1 - partMm / moldMm;
        if (share < -0.01 || share > 0.08)
            throw new IllegalArgumentException(
                    "shrink: " + 100 * share + " % is absurd; check which length is the mold's");
        return share;
    }

    /** Linear shrink from the volume when the plastic stops moving to the volume at room temperature, S = 1 − (v_room/v_freeze)^⅓, alike every way. */
    public static double fromVolumesShare(double roomCm3PerG, double freezeCm3PerG) {
        return 1 - Math.cbrt(roomCm3PerG / freezeCm3PerG);
    }
}
