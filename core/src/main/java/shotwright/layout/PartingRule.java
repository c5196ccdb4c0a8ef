package shotwright.layout;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.TreeMap;
import shotwright.geom.Vec3;
import shotwright.layout.PartingChoice.Alternative;
import shotwright.layout.PartingChoice.Kind;
import shotwright.measure.Digits;
import shotwright.mesh.Bvh;
import shotwright.mesh.Probe;
import shotwright.mesh.TriMesh;

/**
 * Chooses the height of the parting plane. Where the rim leaves a choice: the half that has the cores keeps the part, and the outside goes
 * into the other half, so that the part stands free on its core after opening; without cores the whole cavity goes into B and A stays a flat
 * lid. An existing flat rim within the band is preferred, it is milled in one pass and hides the line.
 */
final class PartingRule {
    private static final double FLAT = 0.9999;
    private static final int MOST_FACETS = 20_000;

    private final LayoutInput in;
    private final TriMesh mesh;
    private final double shopMm;

    private PartingRule(LayoutInput in) {
        this.in = in;
        mesh = in.part().mesh();
        shopMm = in.part().part().tolerance().shopMm();
    }

    static PartingChoice of(LayoutInput in) {
        return new PartingRule(in).choose();
    }

    private PartingChoice choose() {
        if (!in.plane()) return stepped();
        double low = in.freeLowMm(), high = in.freeHighMm();
        Double wish = in.wishes().partingZMm();
        if (wish != null) {
            String words = wish < low - shopMm || wish > high + shopMm
                    ? String.format(
                            Locale.ROOT,
                            "set by hand at height %s mm, outside the %s to %s mm that a plane allows",
                            height(wish),
                            height(low),
                            height(high))
                    : "set by hand at height " + height(wish) + " mm";
            return new PartingChoice(Kind.PLANE, wish, low, high, words, alternatives(low, high, wish));
        }
        if (high - low <= 2 * shopMm)
            return new PartingChoice(
                    Kind.PLANE,
                    (low + high) / 2,
                    low,
                    high,
                    String.format(
                            Locale.ROOT,
                            "the widest outline lies at height %s mm and leaves no other height",
                            height((low + high) / 2)),
                    List.of());
        return free(low, high);
    }

    private PartingChoice stepped() {
        Double wish = in.wishes().partingZMm();
        double z = wish != null ? wish : in.bestZMm();
        return new PartingChoice(
                Kind.STEPPED,
                z,
                z,
                z,
                String.format(
                        Locale.ROOT,
                        "no plane parts the outline: it would have to lie above %s mm and below %s mm at once; the line steps with the rim and lies"
                                + " at height %s mm wherever it can",
                        height(in.freeLowMm()),
                        height(in.freeHighMm()),
                        height(z)),
                List.of());
    }

    private static String height(double mm) {
        return Digits.fixed(mm, 2);
    }

    private PartingChoice free(double low, double high) {
        double[] core = coreAreas();
        double telling = 0.1 * core[2];
        boolean coreB = core[1] > Math.max(1.2 * core[0], telling), coreA = core[0] > Math.max(1.2 * core[1], telling);
        double[] flats = flatLevels(low, high);
        double pick = coreB ? (flats.length > 0 ? flats[0] : low) : flats.length > 0 ? flats[flats.length - 1] : high;
        String rim = flats.length > 0
                ? "on the flat rim at height %s mm, "
                : "at height %s mm, where the outline lets a plane pass, ";
        String why = coreB
                ? "so that the cores in B keep the part and it stands free on them"
                : coreA
                        ? "so that the cores in A keep the part and the outside lies in B"
                        : mesh.box().max().z() - pick <= shopMm
                                ? "so that the whole cavity lies in B and A stays a flat lid"
                                : "so that as much of the cavity as can be lies in B";
        return new PartingChoice(
                Kind.PLANE,
                pick,
                low,
                high,
                String.format(Locale.ROOT, rim, height(pick)) + why,
                alternatives(low, high, pick));
    }

    private List<Alternative> alternatives(double low, double high, double pick) {
        List<Alternative> out = new ArrayList<>();
        if (high - low <= 2 * shopMm) return out;
        double bottom = mesh.box().min().z(), top = mesh.box().max().z();
        for (double z : new double[] {low, (low + high) / 2, high}) {
            if (Math.abs(z - pick) <= 2 * shopMm) continue;
            double inA = top - z, inB = z - bottom;
            String words = inA <= shopMm
                    ? "whole cavity in B, A a flat lid; the part sits deep in B"
                    : inB <= shopMm
                            ? "whole outside in A, B flat but for its cores; the part stands free on B"
                            : "a line round the middle of the wall that shows; each half needs its own cavity";
            out.add(new Alternative(
                    z, String.format(Locale.ROOT, "%s (%.1f mm deep in A, %.1f mm in B)", words, inA, inB)));
        }
        return out;
    }

    /** Heights in the band at which the part has flat faces of at least 1 % of its shadow, rising. */
    private double[] flatLevels(double low, double high) {
        Map<Long, Double> area = new TreeMap<>();
        double step = 2 * shopMm;
        for (int f = 0; f < mesh.facetCount(); f++) {
            Vec3 twice = mesh.doubleAreaNormal(f);
            double a = twice.length() / 2, z = mesh.centroid(f).z();
            if (a > 0 && Math.abs(twice.z()) / 2 > FLAT * a && z >= low - shopMm && z <= high + shopMm)
                area.merge(Math.round(z / step), a, Double::sum);
        }
        double least = 0.01 * in.part().shadow().area();
        return area.entrySet().stream()
                .filter(e -> e.getValue() >= least)
                .mapToDouble(e -> Math.clamp(e.getKey() * step, low, high))
                .toArray();
    }

    /** Steep area of cores reached from above only (0), from below only (1), and all steep area (2). */
    private double[] coreAreas() {
        Bvh tree = Bvh.of(mesh);
        Probe probe = new Probe();
        double off = 1e-4 * mesh.box().diagonal();
        double[] core = new double[3];
        int stride = 1 + mesh.facetCount() / MOST_FACETS;
        for (int f = 0; f < mesh.facetCount(); f += stride) {
            Vec3 twice = mesh.doubleAreaNormal(f);
            if (!(twice.length() > 0)) continue;
            Vec3 n = twice.unit();
            if (Math.abs(n.z()) > 0.5) continue;
            core[2] += twice.length() / 2;
            Vec3 from = mesh.centroid(f).plus(n.times(off));
            if (!tree.anyHit(probe.aim(from, new Vec3(n.x(), n.y(), 0)), 0, Double.POSITIVE_INFINITY, f)) continue;
            boolean up = tree.anyHit(probe.aim(from, Vec3.Z), 0, Double.POSITIVE_INFINITY, f);
            boolean down = tree.anyHit(probe.aim(from, Vec3.Z.negate()), 0, Double.POSITIVE_INFINITY, f);
            if (up && !down) core[1] += twice.length() / 2;
            if (down && !up) core[0] += twice.length() / 2;
        }
        return core;
    }
}
