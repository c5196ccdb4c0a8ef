package shotwright.review;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.concurrent.atomic.AtomicInteger;
import shotwright.geom.Transform;
import shotwright.geom.Vec3;
import shotwright.mesh.HeightMap;
import shotwright.mesh.Shadow;
import shotwright.mesh.TriMesh;
import shotwright.progress.Progress;

/**
 * Looks for the line along which a part leaves a two-plate mold: little of it hidden behind other layers, and shallow. Directions tried: the
 * three axes, the normals that carry most area, and a hundred spread evenly over the half sphere (Fibonacci lattice). Each is scored on a
 * raster of {@value #CELLS} columns by hidden share + ¼ · depth over diagonal, after which those of the best three that are
 * near enough to each other are settled with the exact shadow.
 * A direction without meaning of its own must beat the axes and the face normals by more than the noise of the raster. Directions so deep that
 * they could not win with nothing hidden are not looked at.
 */
final class PullSearch {
    private static final int CELLS = 128;
    private static final int SPREAD = 100;
    private static final int NORMALS = 12;
    private static final int SETTLED = 3;
    private static final double DEPTH_WEIGHT = 0.25;
    /** Scores of the raster repeat to within this. */
    private static final double NOISE = 0.01;
    /** Cosine beyond which two directions count as one (2°). */
    private static final double SAME = Math.cos(Math.toRadians(2));

    private PullSearch() {}

    /** Trials this far behind the best are not settled exactly. */
    private static final double OUT_OF_REACH = 0.05;

    private record Trial(Vec3 direction, boolean plain, double score, PullChoice.Candidate raster) {}

    /** The best directions, settled exactly, best first; the sign means nothing yet. */
    static List<PullChoice.Candidate> search(TriMesh mesh, Progress progress) {
        List<Vec3> plain = new ArrayList<>(List.of(Vec3.X, Vec3.Y, Vec3.Z));
        for (Vec3 n : largestNormals(mesh)) if (isNew(plain, n)) plain.add(n);
        List<Vec3> others = new ArrayList<>();
        for (Vec3 d : spread()) if (isNew(plain, d)) others.add(d);
        double diagonal = mesh.box().diagonal();
        List<Trial> trials = new ArrayList<>(score(mesh, plain.subList(0, 3), true, diagonal, progress.part(0, 0.2)));
        trials.addAll(score(
                mesh,
                promising(mesh, plain.subList(3, plain.size()), trials, 0),
                true,
                diagonal,
                progress.part(0.2, 0.4)));
        trials.addAll(score(mesh, promising(mesh, others, trials, NOISE), false, diagonal, progress.part(0.4, 0.8)));
        List<Trial> best = trials.stream()
                .sorted(Comparator.comparingDouble(Trial::score))
                .limit(SETTLED)
                .toList();
        List<PullChoice.Candidate> settled = new ArrayList<>();
        for (Trial t : best)
            settled.add(
                    t.score > best.getFirst().score + OUT_OF_REACH
                            ? t.raster
                            : settle(mesh, t.direction, progress.part(0.8, 1)));
        settled.sort(Comparator.comparingDouble(c -> exactScore(c, best, diagonal)));
        return settled;
    }

    /** Those that could beat the best so far if nothing were hidden along them. */
    private static List<Vec3> promising(TriMesh mesh, List<Vec3> directions, List<Trial> trials, double handicap) {
        double best = trials.stream().mapToDouble(Trial::score).min().orElseThrow();
        double diagonal = mesh.box().diagonal();
        return directions.stream()
                .filter(d -> DEPTH_WEIGHT * extent(mesh, d) / diagonal + handicap < best)
                .toList();
    }

    private static List<Trial> score(
            TriMesh mesh, List<Vec3> directions, boolean plain, double diagonal, Progress progress) {
        AtomicInteger done = new AtomicInteger();
        return directions.parallelStream()
                .map(d -> {
                    HeightMap map = HeightMap.along(mesh, d, CELLS);
                    var seen = new PullChoice.Candidate(d, hidden(map), extent(mesh, d), map.coveredArea());
                    double score = seen.hiddenShare() + DEPTH_WEIGHT * seen.depthMm() / diagonal + (plain ? 0 : NOISE);
                    progress.at("looking for the pull", done.incrementAndGet() / (double) directions.size());
                    return new Trial(d, plain, score, seen);
                })
                .toList();
    }

    private static double exactScore(PullChoice.Candidate c, List<Trial> trials, double diagonal) {
        boolean plain = trials.stream().anyMatch(t -> t.plain && t.direction.equals(c.direction()));
        return c.hiddenShare() + DEPTH_WEIGHT * c.depthMm() / diagonal + (plain ? 0 : NOISE);
    }

    /** One direction measured exactly. */
    static PullChoice.Candidate settle(TriMesh mesh, Vec3 direction, Progress progress) {
        Shadow shadow = Shadow.of(mesh.transform(Transform.bringToZ(direction)), progress);
        return new PullChoice.Candidate(direction, shadow.hiddenShare(), extent(mesh, direction), shadow.area());
    }

    /** Layers beyond the first over all covered columns. */
    private static double hidden(HeightMap map) {
        long covered = 0, extra = 0;
        for (int c = 0; c < map.grid().count(); c++) {
            int n = map.intervalCount(c);
            if (n > 0) covered++;
            if (n > 1) extra += n - 1;
        }
        return covered == 0 ? 1 : extra / (double) covered;
    }

    static double extent(TriMesh mesh, Vec3 d) {
        double low = Double.POSITIVE_INFINITY, high = Double.NEGATIVE_INFINITY;
        for (int v = 0; v < mesh.vertexCount(); v++) {
            double t = mesh.x(v) * d.x() + mesh.y(v) * d.y() + mesh.z(v) * d.z();
            low = Math.min(low, t);
            high = Math.max(high, t);
        }
        return high - low;
    }

    private static boolean isNew(List<Vec3> known, Vec3 d) {
        return known.stream().noneMatch(k -> Math.abs(k.dot(d)) > SAME);
    }

    /** Face normals, both signs taken together, gathered by a coarse grid of directions; those with most area first. */
    private static List<Vec3> largestNormals(TriMesh mesh) {
        Map<Long, Vec3> sums = new HashMap<>();
        for (int f = 0; f < mesh.facetCount(); f++) {
            Vec3 n = upward(mesh.doubleAreaNormal(f));
            double l = n.length();
            if (l == 0) continue;
            long key = cell(n.x() / l) * 10_000 + cell(n.y() / l) * 100 + cell(n.z() / l);
            sums.merge(key, n, Vec3::plus);
        }
        List<Vec3> largest = new ArrayList<>();
        sums.values().stream()
                .sorted(Comparator.comparingDouble(Vec3::length).reversed())
                .limit(4L * NORMALS)
                .filter(n -> n.length() > 0)
                .map(Vec3::unit)
                .forEach(n -> {
                    if (largest.size() < NORMALS && isNew(largest, n)) largest.add(n);
                });
        return largest;
    }

    private static long cell(double component) {
        return Math.round(component * 20) + 20;
    }

    private static Vec3 upward(Vec3 n) {
        double first =
                Math.abs(n.z()) > 1e-9 * n.length() ? n.z() : Math.abs(n.y()) > 1e-9 * n.length() ? n.y() : n.x();
        return first < 0 ? n.negate() : n;
    }

    private static List<Vec3> spread() {
        List<Vec3> all = new ArrayList<>();
        double golden = Math.PI * (3 - Math.sqrt(5));
        for (int i = 0; i < SPREAD; i++) {
            double z = (i + 0.5) / SPREAD, r = Math.sqrt(1 - z * z);
            all.add(new Vec3(r * Math.cos(golden * i), r * Math.sin(golden * i), z));
        }
        return all;
    }
}
