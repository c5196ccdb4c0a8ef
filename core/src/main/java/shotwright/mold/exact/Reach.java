package shotwright.mold.exact;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.function.Predicate;
import org.jspecify.annotations.Nullable;
import shotwright.geom.Box3;
import shotwright.geom.Vec3;

/**
 * Lets a piece of the parting surface reach beyond its border: a little way into the plastic, where it cuts nothing but is sure to cross the
 * part's true surface, and out of the sides of the block. Where its triangles can be stretched in their own planes they are; elsewhere strips
 * are added.
 */
final class Reach {
    private static final double INTO_PART_MM = 0.08, OUT_OF_BLOCK_MM = 1;
    private static final double[] SHORTER = {1, 0.5, 0.25, 0.1}, STRETCHED = {1, 0.5};
    /** How far a stretched corner may leave the plane of a triangle. */
    private static final double TILT_MM = 5e-3;

    private static final double[] ALONG = {0.15, 0.5, 1};
    private static final List<Vec3> DIRECTIONS = directions(200);

    private final Slope slope;
    private final List<Double> levels;
    private final Inside plastic;
    private final Box3 block;
    private final List<Vec3> corners;
    private final List<int[]> facets;
    private final Map<Integer, List<int[]>> facetsAt = new HashMap<>();
    /** The corner beyond the first end of a side, and the one beyond its second end. */
    private final Map<Slope.Side, Integer> beforeSide = new HashMap<>(), afterSide = new HashMap<>();

    private Reach(Slope slope, List<Double> levels, Inside plastic, Box3 block) {
        this.slope = slope;
        this.levels = levels;
        this.plastic = plastic;
        this.block = block;
        this.corners = new ArrayList<>(slope.corners());
        this.facets = new ArrayList<>(slope.facets());
        for (int[] f : facets)
            for (int v : f) facetsAt.computeIfAbsent(v, k -> new ArrayList<>()).add(f);
    }

    /** Corners and triangles of the piece with its strips. */
    record Sheet(List<Vec3> corners, List<int[]> facets) {}

    /**
     * The piece and what it reaches.
     *
     * @param levels heights of the plates; nothing reaches through the plate its piece ends at
     */
    static Sheet of(Slope slope, List<Double> levels, Inside plastic, Box3 block) {
        return new Reach(slope, levels, plastic, block).sheet();
    }

    private Sheet sheet() {
        Map<Integer, List<Slope.Side>> leaving = new HashMap<>(), entering = new HashMap<>();
        for (Slope.Side side : slope.border().keySet()) {
            leaving.computeIfAbsent(side.from(), v -> new ArrayList<>()).add(side);
            entering.computeIfAbsent(side.to(), v -> new ArrayList<>()).add(side);
        }
        entering.forEach((v, sides) -> {
            List<Slope.Side> out = Objects.requireNonNull(leaving.get(v), "border");
            for (Slope.Side side : sides) reach(v, side, out);
        });
        slope.border().forEach((side, rim) -> {
            if (rim != Rim.LEVEL) strip(side);
        });
        return used();
    }

    /** Moves a corner out into the gap between one side of the border and the next to its left; a border that meets itself has several. */
    private void reach(int v, Slope.Side in, List<Slope.Side> leaving) {
        Vec3 p = slope.corners().get(v), normal = normal(v), first = along(v, in.from());
        Slope.Side out = leaving.stream()
                .min(Comparator.comparingDouble(s -> turnRad(normal, first, along(v, s.to()))))
                .orElseThrow();
        Rim before = slope.border().get(in), after = slope.border().get(out);
        if (before == Rim.LEVEL && after == Rim.LEVEL) return;
        boolean one = leaving.size() == 1;
        double[] plates = platesAround(v);
        if (one && before == Rim.PART && after == Rim.PART) {
            Vec3 to = stretched(v, in, out, plates);
            if (to != null) {
                corners.set(v, to);
                return;
            }
        }
        double gap = turnRad(normal, first, along(v, out.to()));
        Vec3 to = before == Rim.BLOCK || after == Rim.BLOCK
                ? p.plus(outOfBlock(p).times(OUT_OF_BLOCK_MM))
                : intoPlastic(p, plates, one ? d -> true : d -> turnRad(normal, first, d) < gap);
        if (to == null) return;
        corners.add(to);
        afterSide.put(in, corners.size() - 1);
        beforeSide.put(out, corners.size() - 1);
    }

    private void strip(Slope.Side side) {
        Integer farA = beforeSide.get(side), farB = afterSide.get(side);
        int a = side.from(), b = side.to();
        if (farA != null) facets.add(new int[] {b, a, farA});
        if (farB != null) facets.add(new int[] {b, farA == null ? a : farA, farB});
    }

    private Vec3 along(int v, int w) {
        return slope.corners().get(w).minus(slope.corners().get(v));
    }

    private List<int[]> around(int v) {
        return Objects.requireNonNull(facetsAt.get(v), "a corner of the border");
    }

    /** Zero for a triangle without area. */
    private Vec3 unitNormal(int[] f) {
        Vec3 n = along(f[0], f[1]).cross(along(f[0], f[2]));
        return n.length() < 1e-12 ? Vec3.ZERO : n.unit();
    }

    private Vec3 normal(int v) {
        Vec3 sum = Vec3.ZERO;
        for (int[] f : around(v)) sum = sum.plus(unitNormal(f));
        return sum.length() < 1e-9 ? Vec3.Z : sum.unit();
    }

    /** The angle to the left, above 0 up to 2π, about a unit normal from one direction to another. */
    private static double turnRad(Vec3 normal, Vec3 from, Vec3 to) {
        Vec3 left = normal.cross(from);
        double angle = Math.atan2(to.dot(left), to.dot(left.cross(normal)));
        return angle <= 0 ? angle + 2 * Math.PI : angle;
    }

    /** The plates next below and above all triangles at a corner. */
    private double[] platesAround(int v) {
        double low = Double.POSITIVE_INFINITY, high = Double.NEGATIVE_INFINITY;
        for (int[] f : around(v))
            for (int w : f) {
                low = Math.min(low, slope.corners().get(w).z());
                high = Math.max(high, slope.corners().get(w).z());
            }
        double[] out = {Double.NEGATIVE_INFINITY, Double.POSITIVE_INFINITY};
        for (double z : levels) {
            if (z <= low) out[0] = Math.max(out[0], z);
            if (z >= high) out[1] = Math.min(out[1], z);
        }
        return out;
    }

    /** The corner itself moved into the plastic, square to the border, where that leaves its triangles in their planes. */
    private @Nullable Vec3 stretched(int v, Slope.Side in, Slope.Side out, double[] plates) {
        Vec3 p = slope.corners().get(v), outward = Vec3.ZERO;
        for (int[] f : around(v))
            for (Slope.Side s : List.of(in, out))
                if (has(f, s.from()) && has(f, s.to()))
                    outward = outward.plus(along(s.from(), s.to()).unit().cross(unitNormal(f)));
        if (outward.length() < 1e-9) return null;
        Vec3 d = outward.unit();
        for (double share : STRETCHED) {
            double by = share * INTO_PART_MM;
            Vec3 to = p.plus(d.times(by));
            boolean near =
                    around(v).stream().allMatch(f -> Math.abs(unitNormal(f).dot(d)) * by <= TILT_MM);
            if (near && to.z() >= plates[0] && to.z() <= plates[1] && leadsIn(p, to)) return to;
        }
        return null;
    }

    private static boolean has(int[] facet, int v) {
        return facet[0] == v || facet[1] == v || facet[2] == v;
    }

    private Vec3 outOfBlock(Vec3 p) {
        Vec3 c = p.minus(block.centre()), half = block.size().times(0.5);
        double x = Math.abs(Math.abs(c.x()) - half.x()) < 1e-6 ? Math.signum(c.x()) : 0;
        double y = Math.abs(Math.abs(c.y()) - half.y()) < 1e-6 ? Math.signum(c.y()) : 0;
        return new Vec3(x, y, 0);
    }

    /** Along the mean of all directions in the gap that lead straight into plastic, but not through a plate. */
    private @Nullable Vec3 intoPlastic(Vec3 p, double[] plates, Predicate<Vec3> inGap) {
        for (double share : SHORTER) {
            double by = share * INTO_PART_MM;
            Vec3 sum = Vec3.ZERO;
            for (Vec3 d : DIRECTIONS) if (inGap.test(d) && leadsIn(p, p.plus(d.times(by)))) sum = sum.plus(d);
            if (sum.length() < 1e-9) continue;
            Vec3 free = p.plus(sum.unit().times(by));
            Vec3 to = new Vec3(free.x(), free.y(), Math.clamp(free.z(), plates[0], plates[1]));
            if (p.distance(to) > 0.1 * by && leadsIn(p, to)) return to;
        }
        return null;
    }

    private boolean leadsIn(Vec3 p, Vec3 to) {
        for (double share : ALONG) if (!plastic.holds(p.toward(to, share))) return false;
        return true;
    }

    /** Directions spread evenly over the sphere, along a spiral. */
    private static List<Vec3> directions(int count) {
        double golden = Math.PI * (3 - Math.sqrt(5));
        List<Vec3> out = new ArrayList<>();
        for (int i = 0; i < count; i++) {
            double z = 1 - (2 * i + 1.0) / count, r = Math.sqrt(1 - z * z);
            out.add(new Vec3(r * Math.cos(i * golden), r * Math.sin(i * golden), z));
        }
        return List.copyOf(out);
    }

    private Sheet used() {
        Map<Integer, Integer> number = new HashMap<>();
        List<Vec3> kept = new ArrayList<>();
        List<int[]> own = new ArrayList<>();
        for (int[] f : facets) {
            int[] t = new int[3];
            for (int k = 0; k < 3; k++) {
                t[k] = number.computeIfAbsent(f[k], v -> {
                    kept.add(corners.get(v));
                    return kept.size() - 1;
                });
            }
            own.add(t);
        }
        return new Sheet(kept, own);
    }
}
