package shotwright.mesh.pull;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.function.Consumer;
import org.locationtech.jts.geom.Envelope;
import org.locationtech.jts.index.strtree.STRtree;
import shotwright.geom.Vec3;
import shotwright.mesh.Edges;
import shotwright.mesh.TriMesh;

/**
 * The bounds that the edges of a standing wall set between their ends. The upper and the lower edge of a curved wall are rarely divided
 * alike: a corner of the one stands over the middle of a chord of the other. Where a wall borders an up or a down facet, every corner of the same
 * wall that stands over or under that border, as near in plan as the facets there lean, is bound by it too.
 */
final class WallBounds {
    private static final double SAME_WAY = 0.5;

    private final TriMesh mesh;
    private final Edges edges;
    private final Sight[] sight;
    private final double[] lean;
    private final double leastLean;
    private final double same;
    private final int[] wall;

    /** A side of a wall's facet beyond which the part looks up or down. */
    private record Border(int facet, Vec3 from, Vec3 to, boolean up) {}

    /** A bound found: the vertex, the height there, and whether the parting must stay below it. */
    record Bound(int vertex, double height, boolean upper) {}

    /**
     * @param leanDeg how far a facet leans off the pull and still stands
     * @param same distance in plan within which points count as one, mm
     */
    WallBounds(TriMesh mesh, Edges edges, Sight[] sight, double leanDeg, double same) {
        this.mesh = mesh;
        this.edges = edges;
        this.sight = sight;
        this.same = same;
        leastLean = Math.sin(Math.toRadians(leanDeg));
        lean = FacetSight.leans(mesh);
        wall = walls();
    }

    private boolean stands(int f) {
        return sight[f] == Sight.FREE && lean[f] <= RimGraph.STANDS;
    }

    /** Numbers the connected walls; −1 for facets that do not stand. */
    private int[] walls() {
        int[] number = new int[sight.length];
        Arrays.fill(number, -1);
        int[] stack = new int[sight.length];
        int n = 0;
        for (int s = 0; s < number.length; s++) {
            if (!stands(s) || number[s] >= 0) continue;
            int top = 0;
            stack[top++] = s;
            number[s] = n;
            while (top > 0) {
                int f = stack[--top];
                for (int k = 0; k < 3; k++) {
                    int g = edges.neighbour(f, k);
                    if (g == Edges.NONE || !stands(g) || number[g] >= 0) continue;
                    number[g] = n;
                    stack[top++] = g;
                }
            }
            n++;
        }
        return number;
    }

    void find(Consumer<Bound> found) {
        STRtree tree = new STRtree();
        for (Border b : borders()) tree.insert(new Envelope(b.from.x(), b.to.x(), b.from.y(), b.to.y()), b);
        double[] reach = reaches();
        for (int f = 0; f < sight.length; f++) {
            if (wall[f] < 0) continue;
            Vec3 n = mesh.doubleAreaNormal(f);
            double r = reach[wall[f]];
            for (int k = 0; k < 3; k++) {
                int v = mesh.corner(f, k);
                Vec3 p = mesh.vertex(v);
                Envelope around = new Envelope(p.x() - r, p.x() + r, p.y() - r, p.y() + r);
                for (Object o : tree.query(around)) {
                    Border b = (Border) o;
                    if (wall[b.facet] == wall[f] && faceAlike(n, mesh.doubleAreaNormal(b.facet)))
                        bind(v, p, b, Math.max(leastLean, Math.max(lean[f], lean[b.facet])), found);
                }
            }
        }
    }

    /** How far in plan the edges of each wall can be apart. */
    private double[] reaches() {
        int n = Arrays.stream(wall).max().orElse(-1) + 1;
        double[] low = new double[n], high = new double[n], most = new double[n];
        Arrays.fill(low, Double.POSITIVE_INFINITY);
        Arrays.fill(high, Double.NEGATIVE_INFINITY);
        Arrays.fill(most, leastLean);
        for (int f = 0; f < wall.length; f++) {
            int w = wall[f];
            if (w < 0) continue;
            most[w] = Math.max(most[w], lean[f]);
            for (int k = 0; k < 3; k++) {
                low[w] = Math.min(low[w], mesh.z(mesh.corner(f, k)));
                high[w] = Math.max(high[w], mesh.z(mesh.corner(f, k)));
            }
        }
        double[] reach = new double[n];
        for (int w = 0; w < n; w++) reach[w] = most[w] * (high[w] - low[w]) + same;
        return reach;
    }

    private List<Border> borders() {
        List<Border> all = new ArrayList<>();
        for (int f = 0; f < sight.length; f++) {
            if (wall[f] < 0) continue;
            for (int k = 0; k < 3; k++) {
                int g = edges.neighbour(f, k);
                if (g == Edges.NONE || (sight[g] != Sight.UP && sight[g] != Sight.DOWN)) continue;
                all.add(new Border(f, mesh.cornerPoint(f, k), mesh.cornerPoint(f, (k + 1) % 3), sight[g] == Sight.UP));
            }
        }
        return all;
    }

    private static boolean faceAlike(Vec3 a, Vec3 b) {
        double dot = a.x() * b.x() + a.y() * b.y();
        return dot > SAME_WAY * Math.hypot(a.x(), a.y()) * Math.hypot(b.x(), b.y());
    }

    private void bind(int v, Vec3 p, Border b, double leanSine, Consumer<Bound> found) {
        double dx = b.to.x() - b.from.x(), dy = b.to.y() - b.from.y(), length2 = dx * dx + dy * dy;
        if (length2 <= same * same) return;
        double t = ((p.x() - b.from.x()) * dx + (p.y() - b.from.y()) * dy) / length2;
        if (t <= 0 || t >= 1) return;
        double z = b.from.z() + t * (b.to.z() - b.from.z());
        double aside = Math.hypot(p.x() - b.from.x() - t * dx, p.y() - b.from.y() - t * dy);
        if (aside <= leanSine * Math.abs(p.z() - z) + same) found.accept(new Bound(v, z, b.up));
    }
}
