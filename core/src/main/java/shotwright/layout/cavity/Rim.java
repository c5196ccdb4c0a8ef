package shotwright.layout.cavity;

import java.util.ArrayList;
import java.util.List;
import shotwright.geom.Vec2;
import shotwright.geom.Vec3;
import shotwright.layout.Half;
import shotwright.mesh.pull.PartingHeights;

/**
 * The outer parting loop, sampled.
 *
 * @param points in order, counter-clockwise
 * @param lengthMm the whole way round
 * @param level a gate or vent finds a place where the parting surface is flat; without one they are laid at the plane all the same
 */
public record Rim(List<RimPoint> points, double lengthMm, boolean level) {
    /** Most a wall may stand back from the loop at the parting plane and still be met by a gate. */
    public static final double LARGEST_INSET_MM = 0.6;

    /** A gate or vent wants the parting surface flat so far to either side; half of a vent and a little more. */
    private static final double LEVEL_MM = 4;

    private static final double FLAT_MM = 0.02;
    private static final double ARM_MM = 3;
    private static final double TALL_ENOUGH_MM = 1.5;

    public Rim {
        points = List.copyOf(points);
    }

    /** Points about every hundredth of the loop, never closer than 0.4 mm. */
    public static Rim of(CavityShape shape, RimSteps steps) {
        List<Vec2> ring = shape.outline();
        double[] along = new double[ring.size() + 1];
        for (int i = 0; i < ring.size(); i++) {
            along[i + 1] = along[i] + ring.get(i).distance(ring.get((i + 1) % ring.size()));
        }
        double length = along[ring.size()];
        int n = (int) Math.clamp(length / Math.max(length / 144, 0.4), 16, 144);
        WallRay ray = new WallRay(shape.tree());
        double[] step = ring.stream().mapToDouble(steps::nearMm).map(Math::abs).toArray();
        List<RimPoint> points = new ArrayList<>(n);
        for (int i = 0; i < n; i++) points.add(point(shape, ray, ring, along, step, i, length * i / n));
        List<RimPoint> judged =
                points.stream().map(p -> p.levelled(isLevel(p, points))).toList();
        boolean level = judged.stream().anyMatch(RimPoint::reachable);
        return new Rim(level ? judged : points, length, level);
    }

    /** The same with every place taken for level: for what finds no flat. */
    public Rim anyway() {
        return new Rim(points.stream().map(p -> p.levelled(true)).toList(), lengthMm, level);
    }

    /** No step within reach; beside a step the surface comes back to the plane at its slope. */
    private static boolean isLevel(RimPoint p, List<RimPoint> all) {
        for (RimPoint o : all) {
            double reach = LEVEL_MM + o.stepMm() / PartingHeights.SLOPE;
            if (o.stepMm() > FLAT_MM && o.at().distance(p.at()) <= reach) return false;
        }
        return true;
    }

    /** The shorter way round between two points of the loop, mm. */
    public double apartMm(RimPoint a, RimPoint b) {
        double d = Math.abs(a.alongMm() - b.alongMm());
        return Math.min(d, lengthMm - d);
    }

    private static RimPoint point(
            CavityShape shape, WallRay ray, List<Vec2> ring, double[] along, double[] step, int index, double s) {
        double length = along[ring.size()], arm = Math.min(ARM_MM, length / 12);
        Vec2 p = at(ring, along, s), back = at(ring, along, s - arm), ahead = at(ring, along, s + arm);
        Vec2 chord = ahead.minus(back);
        Vec2 out = chord.length() > 1e-9 * length ? new Vec2(chord.y(), -chord.x()).unit() : p.unit();
        double bulge = p.minus(back).dot(out);
        double off = Math.min(0.3, 0.25 * shape.box().size().z());
        Wall b = shape.depthBMm() > off ? wall(ray, p, out, -off) : Wall.NONE;
        Wall a = shape.depthAMm() > off ? wall(ray, p, out, off) : Wall.NONE;
        boolean tall = b.upMm >= Math.min(TALL_ENOUGH_MM, a.upMm);
        boolean inB = b.thicknessMm >= 0.6 * a.thicknessMm && b.thicknessMm > 0 && tall;
        Wall w = inB ? b : a;
        double both = a.thicknessMm > 0 && b.thicknessMm > 0 ? w.upMm + (inB ? a : b).upMm : w.upMm;
        double wall = w.thicknessMm > 0 ? Math.min(w.thicknessMm, both) : 0;
        int before = corner(along, s);
        double leaves = Math.max(step[before], step[(before + 1) % step.length]);
        return new RimPoint(index, s, p, out, inB ? Half.B : Half.A, wall, w.upMm, w.insetMm, leaves, true, bulge);
    }

    private record Wall(double thicknessMm, double insetMm, double upMm) {
        static final Wall NONE = new Wall(0, Double.POSITIVE_INFINITY, 0);
    }

    /** The wall next to the loop at a height off the parting plane. */
    private static Wall wall(WallRay ray, Vec2 p, Vec2 out, double z) {
        Vec3 in = out.times(-1).atZ(0);
        WallRay.Piece across = ray.first(p.plus(out.times(0.5)).atZ(z), in, 1e3);
        double inset = across.fromMm() - 0.5;
        if (!(inset <= LARGEST_INSET_MM)) return Wall.NONE;
        double deep = Math.max(inset, 0) + Math.min(0.4, across.lengthMm() / 2);
        Vec3 inside = p.minus(out.times(deep)).atZ(z);
        WallRay.Piece up = ray.first(inside, new Vec3(0, 0, Math.signum(z)), 1e3);
        double height = up.fromMm() == 0 ? up.toMm() + Math.abs(z) : Math.abs(z);
        return new Wall(across.lengthMm(), Math.max(inset, 0), height);
    }

    /** The corner of the ring before a place on it. */
    private static int corner(double[] along, double s) {
        int lo = 0, hi = along.length - 1;
        while (hi - lo > 1) {
            int mid = (lo + hi) >>> 1;
            if (along[mid] <= s) lo = mid;
            else hi = mid;
        }
        return lo;
    }

    private static Vec2 at(List<Vec2> ring, double[] along, double way) {
        double length = along[ring.size()], s = ((way % length) + length) % length;
        int lo = corner(along, s);
        Vec2 a = ring.get(lo), b = ring.get((lo + 1) % ring.size());
        double piece = along[lo + 1] - along[lo];
        return piece > 0 ? a.plus(b.minus(a).times((s - along[lo]) / piece)) : a;
    }
}
