package shotwright.mold;

import java.util.List;
import shotwright.geom.Box3;
import shotwright.geom.Plane;
import shotwright.layout.Half;
import shotwright.mesh.complex.Material;

/**
 * One convex cut-out of one half.
 *
 * @param name what it is for, in trade words
 * @param purpose what it does
 * @param half the half it is cut into
 * @param shape its shape; it stands out of the metal where it opens, so that no two faces coincide
 * @param closedFormMm3 its volume in the metal by formula, before the cavity or another cut-out takes its share
 * @param circles the exact circles behind its flats
 */
public record ConvexTool(
        String name, Purpose purpose, Half half, ToolShape shape, double closedFormMm3, List<ExactCircle> circles) {
    public ConvexTool {
        circles = List.copyOf(circles);
        if (!(closedFormMm3 > 0)) throw new IllegalArgumentException(name + ": volume " + closedFormMm3 + " mm³");
    }

    /** What fills it: feed, vent or hole. */
    public Material kind() {
        return purpose.material();
    }

    /** Its flat faces, normals outward. */
    public List<Plane> planes() {
        return shape.planes();
    }

    /** A box around it. */
    public Box3 around() {
        return shape.around();
    }
}
