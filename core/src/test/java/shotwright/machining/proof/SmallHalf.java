package shotwright.machining.proof;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import shotwright.cutter.Cutter;
import shotwright.cutter.MountedCutter;
import shotwright.geom.Box3;
import shotwright.geom.Vec2;
import shotwright.geom.Vec3;
import shotwright.machining.path.Arc;
import shotwright.machining.path.Coolant;
import shotwright.machining.path.Drilling;
import shotwright.machining.path.Line;
import shotwright.machining.path.Move;
import shotwright.machining.path.Operation;
import shotwright.machining.path.Program;
import shotwright.machining.path.Rapid;
import shotwright.machining.path.WorkOffset;
import shotwright.mesh.TriMesh;

/**
 * A small half with one drafted pocket off its middle, two dowel holes and a vent, and a sound program for it: 40 × 30 × 12, pocket 20 × 12 at
 * its floor, corners 1.5 there, 7 deep, 2° draft.
 */
final class SmallHalf {
    static final double DEPTH = 7;
    static final double DRAFT = Math.tan(Math.toRadians(2));
    static final Vec2 MIDDLE = new Vec2(2, 1);
    static final Box3 STOCK = new Box3(new Vec3(-20, -15, -12), new Vec3(20, 15, 0.3));
    private static final double CLEAR = 20;
    private static final int CORNER = 32;

    private SmallHalf() {}

    /** The half: top, walls, floor, sides, bottom; closed. */
    static TriMesh mesh() {
        List<Vec3> top = ring(0), floor = ring(-DEPTH), points = new ArrayList<>();
        List<int[]> facets = new ArrayList<>();
        points.addAll(top);
        points.addAll(floor);
        int n = top.size(), t = 2 * n, b = t + 4;
        double[][] corners = {{20, 15}, {-20, 15}, {-20, -15}, {20, -15}};
        for (double z : new double[] {0, -12}) for (double[] c : corners) points.add(new Vec3(c[0], c[1], z));
        for (int k = 0; k < n; k++) {
            int next = (k + 1) % n, q = k / (CORNER + 1), qNext = next / (CORNER + 1);
            facets.add(new int[] {k, t + q, next});
            if (qNext != q) facets.add(new int[] {t + q, t + qNext, next});
            facets.add(new int[] {k, next, n + next});
            facets.add(new int[] {k, n + next, n + k});
            if (k > 0 && k < n - 1) facets.add(new int[] {n, n + k, n + k + 1});
        }
        for (int q = 0; q < 4; q++) {
            int r = (q + 1) % 4;
            facets.add(new int[] {t + q, b + q, b + r});
            facets.add(new int[] {t + q, b + r, t + r});
        }
        facets.add(new int[] {b, b + 2, b + 1});
        facets.add(new int[] {b, b + 3, b + 2});
        double[] xyz = new double[3 * points.size()];
        for (int i = 0; i < points.size(); i++) {
            xyz[3 * i] = points.get(i).x();
            xyz[3 * i + 1] = points.get(i).y();
            xyz[3 * i + 2] = points.get(i).z();
        }
        int[] tri = new int[3 * facets.size()];
        for (int i = 0; i < facets.size(); i++) System.arraycopy(facets.get(i), 0, tri, 3 * i, 3);
        return new TriMesh(xyz, tri);
    }

    private static List<Vec3> ring(double z) {
        double out = (z + DEPTH) * DRAFT, r = 1.5 + out;
        double[][] centres = {{8.5, 4.5}, {-8.5, 4.5}, {-8.5, -4.5}, {8.5, -4.5}};
        List<Vec3> ring = new ArrayList<>();
        for (int q = 0; q < 4; q++)
            for (int k = 0; k <= CORNER; k++) {
                double a = (q + k / (double) CORNER) * Math.PI / 2;
                ring.add(new Vec3(
                        MIDDLE.x() + centres[q][0] + r * Math.cos(a), MIDDLE.y() + centres[q][1] + r * Math.sin(a), z));
            }
        return ring;
    }

    static List<Hole> holes() {
        return List.of(
                new Hole("dowel left", new Vec2(-15, 10), 3, 0, -8, -9.5),
                new Hole("dowel right", new Vec2(16, 11), 3, 0, -8, -9.5));
    }

    static List<Level> levels() {
        return List.of(new Level("vent", new Vec2(12.1, -1.5), new Vec2(20, 1.5), -0.02));
    }

    static List<KeepOut> jaws() {
        return List.of(
                new KeepOut("fixed jaw", new Box3(new Vec3(-20, 15, -30), new Vec3(20, 30, -6))),
                new KeepOut("moving jaw", new Box3(new Vec3(-20, -30, -30), new Vec3(20, -15, -6))));
    }

    static Map<Integer, MountedCutter> cutters() {
        Map<Integer, MountedCutter> c = new TreeMap<>();
        c.put(1, Cutters.flat(8));
        c.put(2, Cutters.made(Cutter.Shape.FLAT, 4, 0, 0, 4, null, 4, 8));
        c.put(3, Cutters.taper(2, 2, 8, 4));
        c.put(4, Cutters.drill(3));
        c.put(5, Cutters.flat(3));
        return c;
    }

    static Program program() {
        List<Operation> ops = new ArrayList<>();
        ops.add(operation(1, "face", 1, face()));
        ops.add(operation(2, "rough the pocket", 2, rough()));
        ops.add(operation(3, "floor and wall", 3, finish()));
        ops.add(operation(4, "dowel holes", 4, drill()));
        ops.add(operation(5, "vent", 5, vent()));
        return new Program("small half", WorkOffset.G54, STOCK, CLEAR, ops);
    }

    private static Operation operation(int number, String words, int tool, Way way) {
        MountedCutter cutter = cutters().get(tool);
        if (cutter == null) throw new IllegalStateException("T" + tool);
        way.rapid(way.at.x(), way.at.y(), CLEAR);
        return new Operation(
                number, words, tool, cutter.cutter().id(), cutter.stickoutMm(), 9000, Coolant.MIST, way.moves);
    }

    /** Moves one after the other. */
    private static final class Way {
        private final List<Move> moves = new ArrayList<>();
        private Vec3 at;

        Way(double x, double y) {
            at = new Vec3(x, y, CLEAR);
        }

        void rapid(double x, double y, double z) {
            moves.add(new Rapid(at, at = new Vec3(x, y, z)));
        }

        void line(double x, double y, double z) {
            moves.add(new Line(at, at = new Vec3(x, y, z), 400));
        }

        void left(double x, double y, double cx, double cy) {
            moves.add(new Arc(at, at = new Vec3(x, y, at.z()), new Vec2(cx, cy), true, 300));
        }

        /** A rectangle about the pocket's middle, against the clock, its corners rounded. */
        void loop(double w, double h, double r) {
            double x = MIDDLE.x(), y = MIDDLE.y();
            line(x - w + r, y - h, at.z());
            line(x + w - r, y - h, at.z());
            if (r > 0) left(x + w, y - h + r, x + w - r, y - h + r);
            line(x + w, y + h - r, at.z());
            if (r > 0) left(x + w - r, y + h, x + w - r, y + h - r);
            line(x - w + r, y + h, at.z());
            if (r > 0) left(x - w, y + h - r, x - w + r, y + h - r);
            line(x - w, y - h + r, at.z());
            if (r > 0) left(x - w + r, y - h, x - w + r, y - h + r);
            else line(x - w, y - h, at.z());
        }
    }

    private static Way face() {
        Way w = new Way(-26, -14);
        w.rapid(-26, -14, 0);
        for (int k = 0; k < 6; k++) {
            double y = -14 + 5.6 * k;
            w.line(k % 2 == 0 ? 26 : -26, y, 0);
            if (k < 5) w.line(k % 2 == 0 ? 26 : -26, y + 5.6, 0);
        }
        return w;
    }

    private static Way rough() {
        double x = MIDDLE.x(), y = MIDDLE.y();
        Way w = new Way(x - 4.75, y);
        w.rapid(x - 4.75, y, 1);
        w.line(x - 4.75, y, 0);
        double[] levels = {-1.75, -3.5, -5.25, -6.9};
        for (double z : levels) {
            w.line(x + 4.75, y, (w.at.z() + z) / 2);
            w.line(x - 4.75, y, z);
            for (double in : new double[] {3, 1.5, 0}) w.loop(7.75 - in, 3.75 - in, 0);
            if (z != -6.9) w.line(x - 4.75, y, z);
        }
        return w;
    }

    private static Way finish() {
        double x = MIDDLE.x(), y = MIDDLE.y();
        Way w = new Way(x - 4.2, y);
        w.rapid(x - 4.2, y, -6.8);
        w.line(x - 4.2, y, -DEPTH);
        for (int k = 4; k >= 1; k--) w.loop(9 - 1.2 * k, 5 - 1.2 * k, 0);
        w.loop(9, 5, 0.5);
        return w;
    }

    private static Way drill() {
        Way w = new Way(-15, 10);
        w.rapid(-15, 10, 2);
        for (Hole h : holes()) {
            w.moves.add(new Drilling(Drilling.Kind.PECK, w.at, h.centre(), 1, -9, 2, 0, false, 200));
            w.at = w.moves.getLast().to();
        }
        return w;
    }

    private static Way vent() {
        Way w = new Way(24, 0);
        w.rapid(24, 0, 1);
        w.line(24, 0, -0.02);
        w.line(13, 0, -0.02);
        return w;
    }
}
