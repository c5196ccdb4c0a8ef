package shotwright.layout;

import shotwright.geom.Vec2;
import shotwright.geom.Vec3;

/**
 * A gate into one cavity, starting at the smallest size that passes shear, freeze and pressure.
 *
 * @param cavity which cavity
 * @param kind how it enters
 * @param atMm where it meets the cavity wall, mold frame
 * @param flow unit direction of the flow through it, in the parting plane; zero for a direct sprue gate
 * @param half the half it is cut into
 * @param widthMm width along the wall, or the diameter of a round one
 * @param depthMm depth, or the diameter of a round one
 * @param landMm length of the narrow passage
 * @param wallMm the part's wall where it enters
 * @param largestWidthMm how far it may be opened after short shots
 * @param largestDepthMm how far it may be opened after short shots
 * @param stepMm in which steps it may be opened, 0.1 to 0.25 mm
 * @param markMm height of the mark left on the part after trimming
 * @param trimS seconds of trimming per part
 */
public record Gate(
        int cavity,
        Kind kind,
        Vec3 atMm,
        Vec2 flow,
        Half half,
        double widthMm,
        double depthMm,
        double landMm,
        double wallMm,
        double largestWidthMm,
        double largestDepthMm,
        double stepMm,
        double markMm,
        double trimS) {
    /** The least a cutter can take off a gate. */
    private static final double LEAST_CUT_MM = 0.02;

    /** Whether a gate can be cut open from one size to another, largest or next. */
    public static boolean opens(double widthMm, double depthMm, double toWidthMm, double toDepthMm) {
        return toWidthMm > widthMm + LEAST_CUT_MM || toDepthMm > depthMm + LEAST_CUT_MM;
    }

    /** Gate kinds of a two-plate mold without slides. */
    public enum Kind {
        EDGE,
        FAN,
        TAB,
        /** Tunnel below the parting plane that shears off when the mold opens. */
        SUBMARINE,
        /** The sprue enters the part itself. */
        DIRECT
    }
}
