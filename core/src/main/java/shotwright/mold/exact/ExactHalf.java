package shotwright.mold.exact;

import shotwright.brep.SolidCheck;
import shotwright.layout.Half;

/**
 * One half as an exact solid.
 *
 * @param half A or B
 * @param check what its topology says
 * @param volumeMm3 its metal, from the exact surfaces
 * @param overMeshMm3 by how much that is more than the mesh half, once the flats of round cut-outs are put right
 * @param step the half as a STEP file
 */
public record ExactHalf(Half half, SolidCheck check, double volumeMm3, double overMeshMm3, byte[] step) {}
