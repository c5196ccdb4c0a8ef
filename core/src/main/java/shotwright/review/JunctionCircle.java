package shotwright.review;

/**
 * The largest circle in the corner where a rib meets a wall, worked out from the geometry of the joint:
 *
 * <p>d = ((h + r)² + (t/2 + r)² − r²) / (h + 2r), with wall h, rib t at its foot, fillet r on both sides; r = 0 gives h + t²/(4h).
 */
public final class JunctionCircle {
    private JunctionCircle() {}

    /**
     * Its diameter.
     *
     * @param wallMm wall h, above zero
     * @param ribMm rib at its foot t, zero or more, no thicker than makes the circle touch the fillets
     * @param filletMm fillet r, zero or more
     */
    public static double diameterMm(double wallMm, double ribMm, double filletMm) {
        if (!(wallMm > 0) || !(ribMm >= 0) || !(filletMm >= 0))
            throw new IllegalArgumentException("joint: wall " + wallMm + ", rib " + ribMm + ", fillet " + filletMm);
        double h = wallMm + filletMm, t = ribMm / 2 + filletMm;
        return (h * h + t * t - filletMm * filletMm) / (wallMm + 2 * filletMm);
    }
}
