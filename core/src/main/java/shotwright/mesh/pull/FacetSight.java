package shotwright.mesh.pull;

import java.util.stream.IntStream;
import shotwright.geom.Vec3;
import shotwright.mesh.Bvh;
import shotwright.mesh.Probe;
import shotwright.mesh.Shadow;
import shotwright.mesh.TriMesh;
import shotwright.progress.Progress;

/**
 * Which facets a pull along +z sees. Four rays are cast from every facet along its side of the pull (from its centroid and from three points
 * 70 % of the way to its corners); a facet with two or more rays blocked is hidden. Rays are cast once; how far a facet may lean and still
 * count as free is asked afterwards. No ray is needed when the facets' own shadows add up to the exact shadow: then nothing is hidden.
 */
public final class FacetSight {
    private static final double NOTHING_HIDDEN = 1e-6;
    private static final int CHUNK = 2048;

    private final TriMesh mesh;
    private final double[] lean;
    private final boolean[] blocked;
    private final boolean cast;

    private FacetSight(TriMesh mesh, double[] lean, boolean[] blocked, boolean cast) {
        this.mesh = mesh;
        this.lean = lean;
        this.blocked = blocked;
        this.cast = cast;
    }

    /** The sine of the lean of every facet off the pull: 0 when it stands, 1 when it lies flat. */
    public static double[] leans(TriMesh mesh) {
        double[] lean = new double[mesh.facetCount()];
        for (int f = 0; f < lean.length; f++) {
            Vec3 n = mesh.doubleAreaNormal(f);
            double l = n.length();
            lean[f] = l == 0 ? 1 : Math.abs(n.z()) / l;
        }
        return lean;
    }

    /** Casts the rays, on all cores. */
    public static FacetSight of(TriMesh mesh, Bvh tree, Shadow shadow, Progress progress) {
        return of(mesh, leans(mesh), tree, shadow, progress);
    }

    /**
     * Casts the rays, on all cores.
     *
     * @param lean sine of the lean of every facet's surface off the pull; the triangles over a curved standing wall lean by themselves
     */
    public static FacetSight of(TriMesh mesh, double[] lean, Bvh tree, Shadow shadow, Progress progress) {
        boolean[] blocked = new boolean[mesh.facetCount()];
        boolean cast = shadow.hiddenShare() > NOTHING_HIDDEN;
        FacetSight sight = new FacetSight(mesh, lean, blocked, cast);
        if (!cast) return sight;
        double offset = 1e-5 * mesh.box().diagonal();
        double steepest =
                Math.sin(Math.toRadians(SightTolerance.LADDER.getFirst().leanDeg()));
        int chunks = (mesh.facetCount() + CHUNK - 1) / CHUNK;
        IntStream.range(0, chunks).parallel().forEach(chunk -> {
            Probe probe = new Probe();
            int end = Math.min(mesh.facetCount(), (chunk + 1) * CHUNK);
            for (int f = chunk * CHUNK; f < end; f++)
                blocked[f] = lean[f] > steepest && isBlocked(mesh, tree, probe, f, offset);
            progress.at("looking along the pull", (double) chunk / chunks);
        });
        return sight;
    }

    private static boolean isBlocked(TriMesh mesh, Bvh tree, Probe probe, int f, double offset) {
        Vec3 way = mesh.doubleAreaNormal(f).z() > 0 ? Vec3.Z : Vec3.Z.negate(), centre = mesh.centroid(f);
        int hits = 0;
        for (int k = 0; k < 4 && hits < 2; k++) {
            Vec3 from = k == 3 ? centre : centre.toward(mesh.cornerPoint(f, k), 0.7);
            if (tree.anyHit(probe.aim(from, way), offset, Double.POSITIVE_INFINITY, f)) hits++;
        }
        return hits >= 2;
    }

    /** The same sight for a mesh with the same facets, grown along the axes: that neither hides nor shows anything. */
    public FacetSight carriedOver(TriMesh grown) {
        if (grown.facetCount() != mesh.facetCount())
            throw new IllegalArgumentException(
                    "mesh: " + grown.facetCount() + " facets where " + mesh.facetCount() + " were looked at");
        return new FacetSight(grown, lean, blocked, cast);
    }

    /** False when the areas showed that nothing is hidden. */
    public boolean raysWereCast() {
        return cast;
    }

    public TriMesh mesh() {
        return mesh;
    }

    /** The sight of every facet under a tolerance. */
    public Sight[] at(SightTolerance tolerance) {
        double steepest = Math.sin(Math.toRadians(tolerance.leanDeg()));
        double width = tolerance.widthShare() * mesh.box().diagonal();
        Sight[] sight = new Sight[mesh.facetCount()];
        for (int f = 0; f < sight.length; f++) {
            Vec3 n = mesh.doubleAreaNormal(f);
            if (lean[f] <= steepest || shadowWidth(f, n) < width) sight[f] = Sight.FREE;
            else if (blocked[f]) sight[f] = Sight.HIDDEN;
            else sight[f] = n.z() > 0 ? Sight.UP : Sight.DOWN;
        }
        return sight;
    }

    /** Smallest altitude of the facet's shadow. */
    private double shadowWidth(int f, Vec3 n) {
        double longest = 0;
        for (int k = 0; k < 3; k++) {
            Vec3 a = mesh.cornerPoint(f, k), b = mesh.cornerPoint(f, (k + 1) % 3);
            longest = Math.max(longest, Math.hypot(a.x() - b.x(), a.y() - b.y()));
        }
        return longest == 0 ? 0 : Math.abs(n.z()) / longest;
    }

    /** Area of hidden facets seen along the pull over the shadow's area; hidden layers count as often as they lie there. */
    public double hiddenAreaShare(Sight[] sight, Shadow shadow) {
        double sum = 0;
        for (int f = 0; f < sight.length; f++) {
            if (sight[f] == Sight.HIDDEN)
                sum += Math.abs(mesh.doubleAreaNormal(f).z()) / 4;
        }
        return sum / shadow.area();
    }
}
