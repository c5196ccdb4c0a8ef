package shotwright.machining.feed;

/**
 * Ridges left between passes, and the step that leaves a ridge of wanted height. Lengths in mm; ball or corner radius R, step s, height h.
 * Plane geometry of neighbouring circles.
 */
public final class Cusp {
    private Cusp() {}

    /** Ridge of a round cutter on flat ground: R − √(R² − s²/4). */
    public static double ofBallMm(double radiusMm, double stepMm) {
        if (!(stepMm >= 0 && stepMm <= 2 * radiusMm))
            throw new IllegalArgumentException("step " + stepMm + " mm with a radius of " + radiusMm + " mm");
        double halfMm = stepMm / 2;
        return halfMm * halfMm / (radiusMm + Math.sqrt(radiusMm * radiusMm - halfMm * halfMm));
    }

    /** Step of a round cutter on flat ground: 2·√(2·R·h − h²). */
    public static double stepOfBallMm(double radiusMm, double cuspMm) {
        if (!(cuspMm >= 0 && cuspMm <= radiusMm))
            throw new IllegalArgumentException("ridge " + cuspMm + " mm with a radius of " + radiusMm + " mm");
        return 2 * Math.sqrt(cuspMm * (2 * radiusMm - cuspMm));
    }

    /** Step seen from above, across a face that leans by an angle from level: s·cos β. */
    public static double planStepMm(double radiusMm, double cuspMm, double leanRad) {
        return stepOfBallMm(radiusMm, cuspMm) * Math.cos(leanRad);
    }

    /** Step down of level passes on a face that leans by an angle from level: s·sin β. */
    public static double downStepMm(double radiusMm, double cuspMm, double leanRad) {
        return stepOfBallMm(radiusMm, cuspMm) * Math.sin(leanRad);
    }

    /**
     * Step on ground of radius ρ, first order: √(8·h·R·ρ/(ρ ± R)), plus on convex ground, minus in a hollow.
     *
     * @param groundRadiusMm radius of the ground, above zero on convex ground, below zero in a hollow; in a hollow it must be the larger
     */
    public static double stepOnCurveMm(double radiusMm, double cuspMm, double groundRadiusMm) {
        double bend = 1 / radiusMm + 1 / groundRadiusMm;
        if (!(bend > 0))
            throw new IllegalArgumentException("a radius of " + radiusMm + " mm does not fit into a hollow of "
                    + -groundRadiusMm + " mm; take a smaller one");
        return Math.sqrt(8 * cuspMm / bend);
    }

    /** The step of touches along curved ground as a step of tips, which run a ball's radius away from it: s·(ρ + R)/ρ. */
    public static double tipStepMm(double touchStepMm, double radiusMm, double groundRadiusMm) {
        return touchStepMm * (1 + radiusMm / groundRadiusMm);
    }

    /** Steps a sharp flat cutter leaves on a wall with draft, square to it: dz·sin a. */
    public static double ofFlatOnWallMm(double downStepMm, double draftRad) {
        return downStepMm * Math.sin(draftRad);
    }

    /** Step down of a sharp flat cutter on a wall with draft: h/sin a. */
    public static double downStepOfFlatMm(double cuspMm, double draftRad) {
        return cuspMm / Math.sin(draftRad);
    }

    /** Ridge of a sharp edge with feed f: f/(tan C + cot e), side angle C, end angle e. */
    public static double ofSharpEdgeMm(double feedMm, double sideRad, double endRad) {
        return feedMm / (Math.tan(sideRad) + 1 / Math.tan(endRad));
    }
}
