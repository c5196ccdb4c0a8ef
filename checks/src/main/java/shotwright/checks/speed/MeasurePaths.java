package shotwright.checks.speed;

import java.lang.management.ManagementFactory;
import java.util.List;
import java.util.Locale;
import java.util.function.DoubleSupplier;
import shotwright.cutter.CutterProfile;
import shotwright.geom.Vec2;
import shotwright.machining.clear.LevelClearing;
import shotwright.machining.clear.RoughRules;
import shotwright.machining.contact.DropCutter;
import shotwright.machining.contact.LocationMap;
import shotwright.machining.contact.TopSurface;
import shotwright.machining.contact.TriangleTree;
import shotwright.machining.contour.LevelContour;
import shotwright.machining.contour.Offset;
import shotwright.mesh.TriMesh;
import shotwright.progress.Progress;
import shotwright.region.Region;

/**
 * Points a second and core of the exact drop-cutter over waves of some 32 000 facets, and times of a level contour and of clearing a pocket,
 * beside what this machine can do at best in the same run: doubles copied from memory, and roots with a comparison in the nearest cache, of
 * which a point takes one for every box and edge it asks. Processor time, the best of several rounds. Last, how the time of a point grows
 * with facets.
 */
public final class MeasurePaths {
    private static final int ROUNDS = 5;
    private static final double SIDE_MM = 60;

    private static double kept;

    private MeasurePaths() {}

    public static void main(String[] args) {
        say("memory copy", copied() / 1e9, "G doubles/s (read and written)");
        say("root and comparison, in cache", rooted() / 1e9, "G doubles/s");
        TriMesh waves = waves(127);
        TriangleTree tree = TriangleTree.of(waves);
        say("facets", waves.facetCount(), "");
        say("tree over them", bestS(() -> TriangleTree.of(waves).facetCount()), "s");
        double taper = Math.toRadians(2);
        for (CutterProfile p : List.of(
                CutterProfile.flat(3),
                CutterProfile.ball(3),
                CutterProfile.ball(0.5),
                CutterProfile.ball(0.2),
                CutterProfile.bull(3, 1),
                CutterProfile.tapered(0.5, taper, 0.85),
                CutterProfile.tapered(0.065, Math.toRadians(15), 0.6),
                new CutterProfile(0, 0.5, taper, 0.85)))
            say("drop-cutter, " + name(p), points(tree, p) / 1e3, "k points/s");
        for (int n : new int[] {64, 127, 254})
            say(
                    "ball 3, facets " + 2 * n * n,
                    points(TriangleTree.of(waves(n)), CutterProfile.ball(3)) / 1e3,
                    "k points/s");
        TopSurface top = TopSurface.of(waves, 0.1, 4);
        for (CutterProfile p : List.of(CutterProfile.flat(3), CutterProfile.ball(1.5))) {
            DropCutter drop = new DropCutter(tree, p);
            LocationMap map = LocationMap.of(top, p);
            say(
                    "level contour, " + name(p),
                    bestS(() -> new LevelContour(drop, map).at(0).contours().size()),
                    "s");
        }
        Region pocket = Region.rectangle(new Vec2(-28, -18), new Vec2(28, 18));
        for (double step : new double[] {0.6, 1.2, 2.4}) {
            RoughRules rules = new RoughRules(3, step, Math.toRadians(3), 0, 2, 1000, 300, 2000);
            Region allowed = Offset.by(pocket, -3);
            say(
                    "pocket 56 x 36 cleared, step " + step,
                    bestS(() -> LevelClearing.of(allowed, Region.EMPTY, -1, rules, null, Progress.SILENT)
                            .moves()
                            .size()),
                    "s");
        }
        if (Double.isNaN(kept)) throw new IllegalStateException("a result was not a number");
    }

    private static String name(CutterProfile p) {
        return String.format(
                Locale.ROOT,
                "flat %.3g corner %.3g half angle %.3g° radius %.3g",
                p.flatRadiusMm(),
                p.cornerRadiusMm(),
                Math.toDegrees(p.halfAngleRad()),
                p.largestRadiusMm());
    }

    private static void say(String what, double value, String unit) {
        System.out.println(String.format(Locale.ROOT, "%-60s %10.3f %s", what, value, unit));
    }

    private static double cpuS() {
        var system = (com.sun.management.OperatingSystemMXBean) ManagementFactory.getOperatingSystemMXBean();
        return system.getProcessCpuTime() / 1e9;
    }

    private static double bestS(DoubleSupplier work) {
        double best = Double.POSITIVE_INFINITY;
        for (int r = 0; r < ROUNDS; r++) {
            double start = cpuS();
            kept += work.getAsDouble();
            best = Math.min(best, cpuS() - start);
        }
        return best;
    }

    private static TriMesh waves(int n) {
        double[] xyz = new double[3 * (n + 1) * (n + 1)];
        int[] tri = new int[6 * n * n];
        for (int j = 0, v = 0; j <= n; j++)
            for (int i = 0; i <= n; i++, v += 3) {
                double x = SIDE_MM * i / n, y = SIDE_MM * j / n;
                xyz[v] = x;
                xyz[v + 1] = y;
                xyz[v + 2] = 2 * Math.sin(0.35 * x) * Math.cos(0.3 * y);
            }
        for (int j = 0, k = 0; j < n; j++)
            for (int i = 0; i < n; i++) {
                int a = j * (n + 1) + i, b = a + 1, c = b + n + 1, d = a + n + 1;
                for (int corner : new int[] {a, b, c, a, c, d}) tri[k++] = corner;
            }
        return new TriMesh(xyz, tri);
    }

    private static double points(TriangleTree tree, CutterProfile p) {
        DropCutter drop = new DropCutter(tree, p);
        int across = 300;
        double s = bestS(() -> {
            DropCutter.Cursor cursor = new DropCutter.Cursor();
            double sum = 0;
            for (int j = 0; j < across; j++)
                for (int i = 0; i < across; i++)
                    sum += drop.tipMm(SIDE_MM * (i + 0.5) / across, SIDE_MM * (j + 0.5) / across, cursor);
            return sum;
        });
        return across * across / s;
    }

    private static double copied() {
        double[] from = new double[1 << 24], to = new double[1 << 24];
        return 8.0
                * from.length
                / bestS(() -> {
                    for (int k = 0; k < 8; k++) System.arraycopy(from, 0, to, 0, from.length);
                    return to[7];
                });
    }

    private static double rooted() {
        double[] row = new double[1200];
        int times = 200_000;
        return (double) times
                * row.length
                / bestS(() -> {
                    double most = 0;
                    for (int k = 0; k < times; k++) {
                        for (int i = 0; i < row.length; i++) row[i] = Math.max(row[i], Math.sqrt(row[i] + k));
                        most += row[k % row.length];
                    }
                    return most;
                });
    }
}
