package shotwright.layout.cavity;

import shotwright.geom.Vec2;
import shotwright.layout.Half;

/**
 * A point on the outer parting loop.
 *
 * @param index number round the loop
 * @param alongMm way round the loop to here
 * @param at the point, cavity frame
 * @param out unit direction away from the part, in the parting plane
 * @param half the half in which the part's wall stands next to the parting plane here; B when it stands in both
 * @param wallMm the thinner of the wall across the rim and the part's height at the rim; 0 when no wall stands here
 * @param heightMm height of that wall in that half: the deepest a gate can open
 * @param insetMm how far inside the loop the wall begins just off the parting plane
 * @param stepMm how far the parting surface leaves its plane next to here
 * @param level the parting surface is flat as far as a gate or vent needs it
 * @param bulgeMm how far the loop bulges out (above zero) or in (below zero) over 3 mm to either side; 0 where it is straight
 */
public record RimPoint(
        int index,
        double alongMm,
        Vec2 at,
        Vec2 out,
        Half half,
        double wallMm,
        double heightMm,
        double insetMm,
        double stepMm,
        boolean level,
        double bulgeMm) {
    /** The same, judged level or not. */
    RimPoint levelled(boolean flat) {
        return new RimPoint(index, alongMm, at, out, half, wallMm, heightMm, insetMm, stepMm, flat, bulgeMm);
    }

    /** A gate or vent can be cut here: a wall stands here and the halves meet on the plane. */
    public boolean reachable() {
        return wallMm > 0 && level;
    }
}
