package shotwright.review;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import shotwright.geom.Vec2;
import shotwright.mesh.Edges;
import shotwright.mesh.Probe;
import shotwright.mesh.TriMesh;
import shotwright.part.PulledPart;
import shotwright.progress.Progress;
import shotwright.region.Region;

/**
 * Tells for every wall which half forms it and what a person would call it. A wall whose air is open on one end only belongs to the half
 * that comes from there. Where both ends are open the lean decides, and for straight walls the outside goes to A, holes to B.
 */
final class WallNames {
    private static final double CLOSED_HOLE_DEG = 200;
    private static final double CLOSED_BOSS_DEG = 150;
    private static final double CLOSED_CHAIN_DEG = 250;
    private static final double STANDS_STRAIGHT_DEG = 0.1;
    private static final double RIB_TO_WALL = 1.3;
    private static final double SKIN_TO_WALL = 2;

    private final PulledPart pulled;
    private final Walls walls;
    private final double medianWallMm;
    private final List<WallSurroundings> around = new ArrayList<>();
    private final WallShape[] shape;
    private final Region holes;

    private WallNames(PulledPart pulled, Walls walls, double medianWallMm, Progress progress) {
        this.pulled = pulled;
        this.walls = walls;
        this.medianWallMm = medianWallMm;
        shape = new WallShape[walls.all().size()];
        Arrays.fill(shape, WallShape.CURVED);
        holes = Region.unionOf(pulled.shadow().holes().stream().map(Region::of).toList());
        Probe probe = new Probe();
        for (Wall w : walls.all()) {
            if ((around.size() & 63) == 0) progress.at("looking round walls", around.size() / (double) shape.length);
            around.add(WallSurroundings.of(pulled.mesh(), pulled.tree(), walls, w, probe));
        }
    }

    /** All walls that a half can form, largest first; walls shut in between layers are left to the undercuts. */
    static List<FormedWall> of(PulledPart pulled, Walls walls, double medianWallMm, Progress progress) {
        WallNames names = new WallNames(pulled, walls, medianWallMm, progress);
        names.outer();
        names.inner();
        names.pockets();
        names.round();
        List<FormedWall> formed = new ArrayList<>();
        for (int i = 0; i < names.shape.length; i++) if (!names.around.get(i).isShutIn()) formed.add(names.formed(i));
        return formed;
    }

    private void outer() {
        for (int i = 0; i < shape.length; i++) {
            Wall w = walls.all().get(i);
            WallSurroundings a = around.get(i);
            boolean away = a.farShare() >= 0.6 || a.opensBothWays() && !isAtHole(w);
            if (away) shape[i] = WallShape.OUTER;
        }
    }

    private boolean isAtHole(Wall w) {
        Vec2 p = pulled.mesh().centroid(w.facets()[0]).xy();
        double toHole = holes.distance(p);
        if (toHole > 0.02 * pulled.mesh().box().diagonal()) return false;
        for (List<Vec2> ring : pulled.shadow().exteriors())
            if (Region.of(ring).borderDistance(p) < toHole) return false;
        return true;
    }

    private void inner() {
        for (int i = 0; i < shape.length; i++) {
            if (shape[i] == WallShape.OUTER) continue;
            int back = around.get(i).backedBy();
            boolean flat = walls.all().get(i).isFlat();
            boolean skin = around.get(i).thickMm() < SKIN_TO_WALL * medianWallMm;
            if (back >= 0
                    && shape[back] == WallShape.OUTER
                    && skin
                    && !around.get(i).opensBothWays()) shape[i] = WallShape.INNER;
            else if (!flat) shape[i] = WallShape.CURVED;
            else if (back >= 0
                    && walls.all().get(back).isFlat()
                    && around.get(i).thickMm() < RIB_TO_WALL * medianWallMm) shape[i] = WallShape.RIB;
            else shape[i] = WallShape.FLAT;
        }
    }

    /** Flat walls joined by inside corners all the way round air. */
    private void pockets() {
        int[] chain = chains();
        for (int root = 0; root < chain.length; root++) {
            int r = root;
            int[] members = java.util.stream.IntStream.range(0, chain.length)
                    .filter(i -> chain[i] == r)
                    .toArray();
            if (members.length < 3) continue;
            boolean inside = Arrays.stream(members)
                    .allMatch(i -> shape[i] != WallShape.OUTER
                            && shape[i] != WallShape.INNER
                            && Double.isFinite(around.get(i).gapMm()));
            if (inside && spanOf(members) >= CLOSED_CHAIN_DEG)
                for (int i : members) if (walls.all().get(i).isFlat()) shape[i] = WallShape.POCKET;
        }
    }

    private int[] chains() {
        TriMesh mesh = pulled.mesh();
        Edges edges = pulled.edges();
        int[] above = java.util.stream.IntStream.range(0, shape.length).toArray();
        double sharp = Math.toRadians(Walls.MAX_TURN);
        for (int f = 0; f < mesh.facetCount(); f++) {
            int w = walls.wallOf()[f];
            for (int k = 0; w >= 0 && k < 3; k++) {
                int g = edges.neighbour(f, k);
                int v = g < 0 ? -1 : walls.wallOf()[g];
                if (v > w && edges.turn(edges.edge(f, k)) < -sharp) above[root(above, v)] = root(above, w);
            }
        }
        for (int i = 0; i < above.length; i++) above[i] = root(above, i);
        return above;
    }

    private static int root(int[] above, int i) {
        while (above[i] != i) {
            above[i] = above[above[i]];
            i = above[i];
        }
        return i;
    }

    private double spanOf(int[] members) {
        int[] facets = Arrays.stream(members)
                .flatMap(i -> Arrays.stream(walls.all().get(i).facets()))
                .toArray();
        return Wall.of(pulled.mesh(), walls.leanDeg(), facets).spanDeg();
    }

    /** Round walls: arcs of one circle are counted together. */
    private void round() {
        List<Wall> all = walls.all();
        for (int i = 0; i < shape.length; i++) {
            Wall.Circle c = all.get(i).circle();
            if (c == null || shape[i] == WallShape.OUTER) continue;
            double turn = 0;
            for (Wall w : all) {
                Wall.Circle o = w.circle();
                if (o != null && o.convex() == c.convex() && isSame(c, o) && overlaps(w, all.get(i)))
                    turn += w.spanDeg();
            }
            if (turn >= (c.convex() ? CLOSED_BOSS_DEG : CLOSED_HOLE_DEG))
                shape[i] = c.convex() ? WallShape.BOSS : shape[i] == WallShape.INNER ? WallShape.INNER : WallShape.HOLE;
        }
    }

    private static boolean isSame(Wall.Circle a, Wall.Circle b) {
        return a.centre().distance(b.centre()) < 0.05 * a.mostMm()
                && Math.abs(a.leastMm() - b.leastMm()) < 0.05 * a.mostMm();
    }

    private static boolean overlaps(Wall a, Wall b) {
        return Math.min(a.zHighMm(), b.zHighMm()) - Math.max(a.zLowMm(), b.zLowMm())
                > 0.3 * Math.min(a.depthMm(), b.depthMm());
    }

    private FormedWall formed(int i) {
        Wall w = walls.all().get(i);
        WallSurroundings a = around.get(i);
        Wall.Circle c = w.circle();
        double across = shape[i] == WallShape.HOLE && c != null
                ? 2 * c.leastMm()
                : shape[i] == WallShape.BOSS && c != null
                        ? 2 * c.mostMm()
                        : shape[i] == WallShape.POCKET ? a.gapMm() : 0;
        return new FormedWall(w, a, side(w, a, shape[i]), shape[i], across);
    }

    private static Side side(Wall w, WallSurroundings a, WallShape shape) {
        if (!a.opensBothWays()) return a.openUpShare() > a.openDownShare() ? Side.A : Side.B;
        if (Math.abs(w.leanDeg()) > STANDS_STRAIGHT_DEG) return w.leanDeg() > 0 ? Side.A : Side.B;
        return shape == WallShape.OUTER ? Side.A : Side.B;
    }
}
