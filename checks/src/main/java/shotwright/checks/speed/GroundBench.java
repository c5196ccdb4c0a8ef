package shotwright.checks.speed;

import java.nio.file.Path;
import java.util.List;
import java.util.Random;
import java.util.concurrent.TimeUnit;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Param;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.State;
import shotwright.geom.Box3;
import shotwright.geom.Transform;
import shotwright.geom.Vec3;
import shotwright.intake.Intake;
import shotwright.intake.IntakeException;
import shotwright.intake.IntakeOptions;
import shotwright.mesh.Bvh;
import shotwright.mesh.Probe;
import shotwright.mesh.Shadow;
import shotwright.mesh.TriMesh;
import shotwright.mesh.pull.Parting;
import shotwright.mesh.pull.PulledMesh;
import shotwright.part.Part;
import shotwright.progress.Progress;

/** The ground's heavy work on one part, pulled along its file's z axis, and a plain memory copy to hold it against. */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MILLISECONDS)
public class GroundBench {
    /** Rays in one round. */
    static final int RAYS = 100_000;
    /** Doubles copied in one round: 128 MiB read and as much written, far beyond any cache. */
    static final int COPIED = 1 << 24;
    /** Metal around the part, mm. */
    private static final double AROUND_MM = 10;

    /** The part file. */
    @Param("")
    public String part = "";

    private final double[] from = new double[COPIED];
    private final double[] to = new double[COPIED];
    private final double[] rays = new double[6 * RAYS];
    private TriMesh mesh;
    private Bvh tree;

    static TriMesh read(String file) throws IntakeException {
        Part part = Intake.read(Path.of(file), IntakeOptions.usual(), Progress.SILENT)
                .part();
        if (part == null) throw new IllegalArgumentException(file + " is no sound part");
        return part.mesh();
    }

    /** Rays from random points of the surface, each straight into the wall, as the wall map shoots them. */
    @Setup
    public void prepare() throws IntakeException {
        mesh = read(part);
        tree = Bvh.of(mesh);
        Random random = new Random(1);
        for (int k = 0; k < RAYS; k++) {
            int facet = random.nextInt(mesh.facetCount());
            Vec3 at = mesh.centroid(facet),
                    inward = mesh.doubleAreaNormal(facet).unit().times(-1);
            double[] ray = {at.x(), at.y(), at.z(), inward.x(), inward.y(), inward.z()};
            System.arraycopy(ray, 0, rays, 6 * k, 6);
        }
        for (int i = 0; i < COPIED; i++) from[i] = i;
    }

    @Benchmark
    public double memoryCopy() {
        System.arraycopy(from, 0, to, 0, COPIED);
        return to[COPIED - 1];
    }

    @Benchmark
    public int raysThroughWalls() {
        Probe probe = new Probe();
        int hits = 0;
        for (int k = 0; k < 6 * RAYS; k += 6) {
            probe.aim(rays[k], rays[k + 1], rays[k + 2], rays[k + 3], rays[k + 4], rays[k + 5]);
            if (tree.firstHit(probe, 1e-6, Double.POSITIVE_INFINITY, Bvh.NONE) != Bvh.NONE) hits++;
        }
        return hits;
    }

    @Benchmark
    public Bvh searchTree() {
        return Bvh.of(mesh);
    }

    @Benchmark
    public Shadow areaUnion() {
        return Shadow.of(mesh, Progress.SILENT);
    }

    @Benchmark
    public Parting parting() {
        PulledMesh pulled = PulledMesh.of(mesh, Progress.SILENT);
        Box3 block = mesh.box().grow(AROUND_MM);
        return Parting.of(pulled, List.of(Transform.IDENTITY), block, Double.NaN, Progress.SILENT);
    }
}
