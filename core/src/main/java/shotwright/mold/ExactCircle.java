package shotwright.mold;

import shotwright.geom.Vec3;
import shotwright.layout.Half;

/**
 * The exact circle behind a many-sided hole in the mesh, kept for milling and for exact solids.
 *
 * @param name what it is for
 * @param use what it does
 * @param half the half it is in
 * @param centreMm centre of the mouth, mold frame
 * @param axis unit direction into the metal
 * @param diameterMm diameter at the mouth
 * @param endDiameterMm diameter at the end, differs on a taper
 * @param depthMm depth
 */
public record ExactCircle(
        String name,
        Purpose use,
        Half half,
        Vec3 centreMm,
        Vec3 axis,
        double diameterMm,
        double endDiameterMm,
        double depthMm) {}
