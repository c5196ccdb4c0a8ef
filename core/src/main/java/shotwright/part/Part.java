package shotwright.part;

import shotwright.geom.Box3;
import shotwright.measure.LengthUnit;
import shotwright.measure.Tolerance;
import shotwright.mesh.MassProperties;
import shotwright.mesh.TriMesh;

/**
 * The customer's part as intake accepted it: one closed solid, millimetres, in the axes of the file, before shrink.
 *
 * @param name the file name without folder and ending
 * @param fileName the file name without folder
 * @param unitTaken the unit the file's numbers were read in
 * @param mesh closed, outward-facing facets
 * @param mass volume, area, centroid and box of the mesh
 * @param tolerance noise and shop tolerance that travel with this part
 */
public record Part(
        String name, String fileName, LengthUnit unitTaken, TriMesh mesh, MassProperties mass, Tolerance tolerance) {
    public Part {
        if (!(mass.volumeMm3() > 0))
            throw new IllegalArgumentException("mesh: volume " + mass.volumeMm3() + " mm³ is not above zero");
    }

    public Box3 box() {
        return mass.box();
    }
}
