package shotwright.mold.exact;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import shotwright.geom.Box3;
import shotwright.geom.Vec3;

/**
 * Lets a piece of the parting surface reach beyond its border: a little way into the plastic, where it cuts nothing but is sure to cross the
 * part's true surface, and out of the sides of the block.
 */
final class Reach {
    private static final double INTO_PART_MM = 0.08, OUT_OF_BLOCK_MM = 1;
    private static final double[] SHORTER = {1, 0.5, 0.25, 0.1};
    private static final double[] ALONG = {0.15, 0.5, 1};
    private static final List<Vec3> DIRECTIONS = directions(200);

    private final Slope slope;
    private final Inside plastic;
    private final Box3 block;
    private final List<Vec3> corners;
    private final List<int[]> facets;
    private final Map<Integer, Integer> moved = new HashMap<>();

    private Reach(Slope slope, Inside plastic, Box3 block) {
        this.slope = slope;
        this.plastic = plastic;
        this.block = block;
        this.corners = new ArrayList<>(slope.corners());
        this.facets = new ArrayList<>(slope.facets());
    }

    /** Corners and triangles of the piece with its strips. */
    record Sheet(List<Vec3> corners, List<int[]> facets) {}

    static Sheet of(Slope slope, Inside plastic, Box3 block) {
        return new Reach(slope, plastic, block).sheet();
    }

    private Sheet sheet() {
        Map<Integer, List<Slope.Side>> at = new HashMap<>();
        slope.border().forEach((side, rim) -> {
            if (rim == Rim.LEVEL) return;
            at.computeIfAbsent(side.from(), v -> new ArrayList<>()).add(side);
            at.computeIfAbsent(side.to(), v -> new ArrayList<>()).add(side);
        });
        at.forEach((v, sides) -> {
            Vec3 to = beyond(v, sides);
            if (to == null) return;
            corners.add(to);
            moved.put(v, corners.size() - 1);
        });
        slope.border().forEach((side, rim) -> {
            if (rim != Rim.LEVEL) strip(side.from(), side.to());
        });
        return used();
    }

    private void strip(int a, int b) {
        Integer farA = moved.get(a), farB = moved.get(b);
        if (farA != null) facets.add(new int[] {b, a, farA});
        if (farB != null) facets.add(new int[] {b, farA == null ? a : farA, farB});
    }

    private @Nullable Vec3 beyond(int v, List<Slope.Side> sides) {
        Vec3 p = slope.corners().get(v);
        for (Slope.Side s : sides)
            if (slope.border().get(s) == Rim.BLOCK) return p.plus(outOfBlock(p).times(OUT_OF_BLOCK_MM));
        for (double share : SHORTER) {
            Vec3 to = intoPlastic(p, share * INTO_PART_MM);
            if (to != null) return to;
        }
        return null;
    }

    private Vec3 outOfBlock(Vec3 p) {
        Vec3 c = p.minus(block.centre()), half = block.size().times(0.5);
        double x = Math.abs(Math.abs(c.x()) - half.x()) < 1e-6 ? Math.signum(c.x()) : 0;
        double y = Math.abs(Math.abs(c.y()) - half.y()) < 1e-6 ? Math.signum(c.y()) : 0;
        return new Vec3(x, y, 0);
    }

    /** Along the mean of all directions that lead straight into plastic. */
    private @Nullable Vec3 intoPlastic(Vec3 p, double by) {
        Vec3 sum = Vec3.ZERO;
        for (Vec3 d : DIRECTIONS) if (leadsIn(p, d, by)) sum = sum.plus(d);
        if (sum.length() < 1e-9) return null;
        Vec3 mean = sum.unit();
        return leadsIn(p, mean, by) ? p.plus(mean.times(by)) : null;
    }

    private boolean leadsIn(Vec3 p, Vec3 direction, double by) {
        for (double share : ALONG) if (!plastic.holds(p.plus(direction.times(share * by)))) return false;
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
