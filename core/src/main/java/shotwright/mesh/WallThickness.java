package shotwright.mesh;

import java.util.Arrays;
import java.util.stream.IntStream;
import shotwright.geom.Vec3;
import shotwright.progress.Parallel;
import shotwright.progress.Progress;

/**
 * Wall thickness at points spread evenly over the surface, measured two ways: along the inward normal to the opposite wall (ray), and as
 * the diameter of the largest ball that touches the surface there from inside (sphere; the shrinking ball of Ma, Bae and Choi 2012, The
 * Visual Computer 28). The ray overestimates on slanted walls; the ball goes to zero at outside corners. Their disagreement tells which is
 * meant. Rays are exact; balls are true to two parts in a hundred.
 *
 * <p>The same mesh, count and seed give the same samples on any number of processors.
 */
public final class WallThickness {
    private static final int CHUNK = 512;
    private static final int STEPS = 40;
    /** The ball may poke through by this share of its radius, so that the chords of a round wall (up to 8° apart) do not shrink it. */
    private static final double POKE = 0.01;

    private final TriMesh mesh;
    private final int[] facet;
    private final double[] point;
    private final double[] ray;
    private final double[] sphere;
    private final double[] normal;

    private WallThickness(TriMesh mesh, int count) {
        this.mesh = mesh;
        facet = new int[count];
        point = new double[3 * count];
        normal = new double[3 * count];
        ray = new double[count];
        sphere = new double[count];
    }

    /** One sample. {@code ray} is NaN where the inward ray meets nothing (an open mesh); {@code sphere} then is NaN too. */
    public record Sample(int facet, Vec3 point, Vec3 normal, double ray, double sphere) {}

    /**
     * Measures at {@code count} points, each standing for the same area.
     *
     * @throws Progress.Cancelled when asked to stop
     */
    public static WallThickness of(Bvh bvh, int count, long seed, Progress progress) {
        if (count < 1) throw new IllegalArgumentException("count: " + count + " samples");
        WallThickness w = new WallThickness(bvh.mesh(), count);
        w.spread(seed);
        double diagonal = bvh.mesh().box().diagonal();
        int chunks = (count + CHUNK - 1) / CHUNK;
        Runnable told = Parallel.steps(progress, "measuring walls", chunks);
        Parallel.run(chunks, () -> {
            Probe probe = new Probe();
            return c -> {
                for (int i = c * CHUNK, end = Math.min(count, i + CHUNK); i < end; i++)
                    w.measure(bvh, probe, i, diagonal);
                told.run();
            };
        });
        return w;
    }

    /** One point in each of {@code count} equal shares of the area, at a random place of the share. */
    private void spread(long seed) {
        int n = mesh.facetCount();
        double[] upTo = new double[n];
        double sum = 0;
        for (int f = 0; f < n; f++) {
            sum += mesh.area(f);
            upTo[f] = sum;
        }
        if (!(sum > 0)) throw new IllegalArgumentException("mesh: has no area");
        for (int i = 0; i < facet.length; i++) {
            double at = (i + random(seed, 3L * i)) / facet.length * sum;
            int f = Arrays.binarySearch(upTo, at);
            f = Math.min(n - 1, f < 0 ? -1 - f : f + 1);
            while (mesh.area(f) == 0) f--;
            facet[i] = f;
            double s = Math.sqrt(random(seed, 3L * i + 1)), t = random(seed, 3L * i + 2);
            Vec3 a = mesh.cornerPoint(f, 0), b = mesh.cornerPoint(f, 1), c = mesh.cornerPoint(f, 2);
            put(point, i, a.times(1 - s).plus(b.times(s * (1 - t))).plus(c.times(s * t)));
            put(normal, i, mesh.doubleAreaNormal(f).unit());
        }
    }

    private static void put(double[] to, int i, Vec3 p) {
        to[3 * i] = p.x();
        to[3 * i + 1] = p.y();
        to[3 * i + 2] = p.z();
    }

    /** A number from 0 to 1 for each index, without order (SplitMix64: Steele, Lea and Flood 2014). */
    private static double random(long seed, long index) {
        long z = seed + (index + 1) * 0x9E3779B97F4A7C15L;
        z = (z ^ (z >>> 30)) * 0xBF58476D1CE4E5B9L;
        z = (z ^ (z >>> 27)) * 0x94D049BB133111EBL;
        return ((z ^ (z >>> 31)) >>> 11) * 0x1p-53;
    }

    private void measure(Bvh bvh, Probe probe, int i, double diagonal) {
        double px = point[3 * i], py = point[3 * i + 1], pz = point[3 * i + 2];
        double nx = -normal[3 * i], ny = -normal[3 * i + 1], nz = -normal[3 * i + 2];
        double start = 1e-7 * diagonal;
        probe.aim(px, py, pz, nx, ny, nz);
        if (bvh.firstHit(probe, start, 2 * diagonal, facet[i]) == Bvh.NONE) {
            ray[i] = Double.NaN;
            sphere[i] = Double.NaN;
            return;
        }
        ray[i] = probe.t();
        double r = probe.t() / 2;
        for (int step = 0; step < STEPS; step++) {
            double cx = px + r * nx, cy = py + r * ny, cz = pz + r * nz;
            if (bvh.nearest(probe, cx, cy, cz, r - POKE * r) == Bvh.NONE) break;
            double vx = probe.nearestX() - px, vy = probe.nearestY() - py, vz = probe.nearestZ() - pz;
            double along = vx * nx + vy * ny + vz * nz;
            double smaller = along > 0 ? (vx * vx + vy * vy + vz * vz) / (2 * along) : 0;
            if (!(smaller < r)) break;
            r = smaller;
            if (r <= start) break;
        }
        sphere[i] = 2 * r;
    }

    public int count() {
        return facet.length;
    }

    public Sample sample(int i) {
        return new Sample(
                facet[i], point(i), new Vec3(normal[3 * i], normal[3 * i + 1], normal[3 * i + 2]), ray[i], sphere[i]);
    }

    /** Where a sample lies. */
    public Vec3 point(int i) {
        return new Vec3(point[3 * i], point[3 * i + 1], point[3 * i + 2]);
    }

    /** The facet a sample lies on. */
    public int facet(int i) {
        return facet[i];
    }

    /** Distance to the opposite wall along the inward normal; NaN where there is none. */
    public double ray(int i) {
        return ray[i];
    }

    /** Diameter of the largest ball that touches at the sample from inside; NaN where the ray is. */
    public double sphere(int i) {
        return sphere[i];
    }

    /**
     * The ray thickness that a share of the surface stays below, from 0 to 1; 0.5 is the median.
     */
    public double rayQuantile(double share) {
        return quantile(ray, share);
    }

    /** The ball diameter that a share of the surface stays below, from 0 to 1; 0.5 is the median. */
    public double sphereQuantile(double share) {
        return quantile(sphere, share);
    }

    /** The value that a share of the finite numbers stays below, with straight lines between them; NaN when there are none. */
    public static double quantile(double[] values, double share) {
        if (!(share >= 0 && share <= 1)) throw new IllegalArgumentException("share: " + share + " is not from 0 to 1");
        double[] v = Arrays.stream(values).filter(Double::isFinite).sorted().toArray();
        if (v.length == 0) return Double.NaN;
        double at = share * (v.length - 1);
        int i = (int) at;
        return i + 1 < v.length ? v[i] + (v[i + 1] - v[i]) * (at - i) : v[i];
    }

    /** The samples in order of ball diameter, thinnest first; those without a measure left out. */
    public int[] thinnestFirst() {
        return IntStream.range(0, facet.length)
                .filter(i -> !Double.isNaN(sphere[i]))
                .boxed()
                .sorted((i, j) -> Double.compare(sphere[i], sphere[j]))
                .mapToInt(Integer::intValue)
                .toArray();
    }
}
