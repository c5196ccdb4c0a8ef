package shotwright.machining.proof;

import shotwright.cutter.CutterProfile;
import shotwright.geom.Vec3;
import shotwright.machining.contact.DropCutter;
import shotwright.machining.contact.TriangleTree;
import shotwright.mesh.Bvh;
import shotwright.mesh.Grid;
import shotwright.mesh.HeightMap;
import shotwright.mesh.TriMesh;

/** The half a setup should leave, in the frame of its program. */
public final class Half {
    private final TriMesh mesh;
    private final Bvh tree;
    private final TriangleTree facets;

    public Half(TriMesh mesh) {
        this.mesh = mesh;
        tree = Bvh.of(mesh);
        facets = TriangleTree.of(mesh);
    }

    /** Where a cutter let down on the half comes to rest. */
    DropCutter under(CutterProfile profile) {
        return new DropCutter(facets, profile);
    }

    public TriMesh mesh() {
        return mesh;
    }

    /** Top of the half over each cell; −∞ beside it. */
    float[] heights(Grid grid) {
        return HeightMap.of(mesh, grid).upper(Float.NEGATIVE_INFINITY);
    }

    /** Distance of a place from the half's surface, no more than {@code mostMm}. */
    double distanceMm(Vec3 place, double mostMm) {
        Bvh.Hit hit = tree.nearest(place, mostMm);
        return hit == null ? mostMm : Math.min(mostMm, hit.point().distance(place));
    }
}
