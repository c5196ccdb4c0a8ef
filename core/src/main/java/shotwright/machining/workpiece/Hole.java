package shotwright.machining.workpiece;

import shotwright.geom.Vec2;
import shotwright.mold.Purpose;

/**
 * A round hole along the spindle, in the frame of the half's programs with the parting face up.
 *
 * @param name what it is for
 * @param use the same as a kind
 * @param atMm its axis in plan
 * @param fromParting its mouth opens to the parting face; false when it is made from the back
 * @param through it leaves the metal on the other side
 * @param diameterMm diameter at the mouth
 * @param endDiameterMm diameter at the end; differs on a taper
 * @param mouthZMm height of its mouth
 * @param endZMm height of its end: below the mouth when made from the parting face, else above it
 */
public record Hole(
        String name,
        Purpose use,
        Vec2 atMm,
        boolean fromParting,
        boolean through,
        double diameterMm,
        double endDiameterMm,
        double mouthZMm,
        double endZMm) {
    private static final double STRAIGHT_MM = 1e-6;

    public double depthMm() {
        return Math.abs(mouthZMm - endZMm);
    }

    public boolean isTapered() {
        return Math.abs(diameterMm - endDiameterMm) > STRAIGHT_MM;
    }

    /** Something has to fit into it to a few micrometres. */
    public boolean isFitted() {
        return use == Purpose.DOWEL_HELD || use == Purpose.DOWEL_SLIDING || use == Purpose.PIN;
    }

    /** The same hole with the back up: turned about the y axis, z counted from the back face. */
    public Hole backUp(double lengthMm, double thicknessMm) {
        return new Hole(
                name,
                use,
                new Vec2(lengthMm - atMm.x(), atMm.y()),
                fromParting,
                through,
                diameterMm,
                endDiameterMm,
                -thicknessMm - mouthZMm,
                -thicknessMm - endZMm);
    }
}
