package shotwright.mesh.complex;

import java.util.List;
import shotwright.geom.Box3;
import shotwright.geom.Plane;
import shotwright.geom.Vec3;
import shotwright.mesh.TriMesh;

/** Axis-parallel boxes as meshes and as half-spaces. */
final class Boxes {
    private static final int[] QUADS = {0, 3, 2, 1, 4, 5, 6, 7, 0, 1, 5, 4, 2, 3, 7, 6, 1, 2, 6, 5, 3, 0, 4, 7};

    private Boxes() {}

    static TriMesh mesh(Box3 box) {
        Vec3 a = box.min(), b = box.max();
        double[] xyz = {
            a.x(), a.y(), a.z(), b.x(), a.y(), a.z(), b.x(), b.y(), a.z(), a.x(), b.y(), a.z(),
            a.x(), a.y(), b.z(), b.x(), a.y(), b.z(), b.x(), b.y(), b.z(), a.x(), b.y(), b.z()
        };
        int[] tri = new int[36];
        for (int q = 0; q < 6; q++) {
            int[] pick = {0, 1, 2, 0, 2, 3};
            for (int k = 0; k < 6; k++) tri[6 * q + k] = QUADS[4 * q + pick[k]];
        }
        return new TriMesh(xyz, tri);
    }

    /** The six faces, normals outward. */
    static List<Plane> planes(Box3 box) {
        return List.of(
                Plane.through(box.min(), Vec3.X.negate()),
                Plane.through(box.max(), Vec3.X),
                Plane.through(box.min(), Vec3.Y.negate()),
                Plane.through(box.max(), Vec3.Y),
                Plane.through(box.min(), Vec3.Z.negate()),
                Plane.through(box.max(), Vec3.Z));
    }
}
