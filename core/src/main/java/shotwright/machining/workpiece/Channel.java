package shotwright.machining.workpiece;

import shotwright.geom.Vec3;
import shotwright.mold.Purpose;

/**
 * A straight channel open to the parting face, in the frame of the half's programs with the parting face up: a piece of the feed, a vent, a
 * pocket to open the mold.
 *
 * @param name what it is for
 * @param use the same as a purpose
 * @param fromMm start of its middle at the parting face
 * @param toMm end of it
 * @param round its section is a half circle; else a flat floor between walls
 * @param fromWidthMm width at the parting face at the start
 * @param toWidthMm the same at the end
 * @param fromDepthMm depth at the start
 * @param toDepthMm depth at the end
 * @param wallDraftDeg lean of the walls of a flat one
 * @param openBefore it runs out of the block at the start
 * @param openAfter it runs out of the block at the end
 * @param beforeMm how far it is prolonged beyond the start, to meet what lies before it
 * @param afterMm how far beyond the end
 */
public record Channel(
        String name,
        Purpose use,
        Vec3 fromMm,
        Vec3 toMm,
        boolean round,
        double fromWidthMm,
        double toWidthMm,
        double fromDepthMm,
        double toDepthMm,
        double wallDraftDeg,
        boolean openBefore,
        boolean openAfter,
        double beforeMm,
        double afterMm) {
    private static final double STRAIGHT_MM = 1e-6;

    public double lengthMm() {
        return fromMm.distance(toMm);
    }

    public boolean isStraight() {
        return Math.abs(fromWidthMm - toWidthMm) < STRAIGHT_MM && Math.abs(fromDepthMm - toDepthMm) < STRAIGHT_MM;
    }
}
