package shotwright.part;

import org.jspecify.annotations.Nullable;
import shotwright.brep.ExactBody;
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
 * @param mass volume, area and centroid, from exact faces where the file has them; box of the mesh
 * @param tolerance noise and shop tolerance that travel with this part
 * @param exact what is known from exact faces; null when the file gave triangles only
 */
public record Part(
        String name,
        String fileName,
        LengthUnit unitTaken,
        TriMesh mesh,
        MassProperties mass,
        Tolerance tolerance,
        @Nullable ExactBody exact) {
    /** A part known by its triangles only. */
    public Part(
            String name,
            String fileName,
            LengthUnit unitTaken,
            TriMesh mesh,
            MassProperties mass,
            Tolerance tolerance) {
        this(name, fileName, unitTaken, mesh, mass, tolerance, null);
    }

    public Part {
        if (!(mass.volumeMm3() > 0))
            throw new IllegalArgumentException("mesh: volume " + mass.volumeMm3() + " mm³ is not above zero");
    }

    public Box3 box() {
        return mass.box();
    }
}
