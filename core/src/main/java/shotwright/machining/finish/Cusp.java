package shotwright.machining.finish;

/** Height of the ridges between neighbouring passes, and the step that makes them so high. Plain geometry of circle and straight lines. */
public final class Cusp {
    private Cusp() {}

    /** Ridge between passes of a ball over a plane: R − √(R² − s²/4). */
    public static double ballMm(double radiusMm, double stepMm) {
        return radiusMm - Math.sqrt(radiusMm * radiusMm - stepMm * stepMm / 4);
    }

    /** Step along the surface of a ball over a plane: 2·√(2·R·h − h²). */
    public static double ballStepMm(double radiusMm, double cuspMm) {
        return 2 * Math.sqrt(2 * radiusMm * cuspMm - cuspMm * cuspMm);
    }

    /**
     * Step along a curved surface: √(8·h·R·ρ/(ρ + R)).
     *
     * @param surfaceRadiusMm radius of curvature across the passes, above zero where the surface bulges, below where it is hollow
     */
    public static double ballStepMm(double radiusMm, double cuspMm, double surfaceRadiusMm) {
        double bend = 1 / radiusMm + 1 / surfaceRadiusMm;
        if (!(bend > 0))
            throw new IllegalArgumentException("ball: radius " + radiusMm + " mm does not fit into a hollow of "
                    + -surfaceRadiusMm + " mm; take a smaller one");
        return Math.sqrt(8 * cuspMm / bend);
    }

    /** The step of touches along a curved surface as a step of tips, which run a ball's radius away from it: s·(ρ + R)/ρ. */
    public static double tipStepMm(double touchStepMm, double radiusMm, double surfaceRadiusMm) {
        return touchStepMm * (1 + radiusMm / surfaceRadiusMm);
    }

    /** Fall between level passes of a ball on a wall that leans by the draft from upright: s·cos(draft). */
    public static double ballFallMm(double radiusMm, double cuspMm, double draftRad) {
        return ballStepMm(radiusMm, cuspMm) * Math.cos(draftRad);
    }

    /** Fall between level passes of a flat end on a wall of some draft: h/sin(draft). */
    public static double flatFallMm(double cuspMm, double draftRad) {
        return cuspMm / Math.sin(draftRad);
    }
}
