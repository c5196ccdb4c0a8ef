package shotwright.mold.exact;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.function.ToDoubleFunction;
import shotwright.geom.Vec3;

/** A connected piece of the parting surface that does not lie level, as triangles that can be made fewer; what its border runs along is kept. */
final class Slope {
    /** A vertex and the next one of a border, in the sense of the triangle they belong to. */
    record Side(int from, int to) {
        private Side back() {
            return new Side(to, from);
        }
    }

    private static final double LEAST_COSINE = 0.3;

    private final List<Vec3> corners;
    private final List<int[]> facets;
    private final Map<Side, Rim> border;
    private final List<List<Integer>> lost = new ArrayList<>();
    private final List<List<Integer>> star = new ArrayList<>();
    private final Map<Side, List<Vec3>> lostOnBorder = new HashMap<>();

    Slope(List<Vec3> corners, List<int[]> facets, Map<Side, Rim> border) {
        this.corners = corners;
        this.facets = new ArrayList<>(facets);
        this.border = new HashMap<>(border);
        for (int v = 0; v < corners.size(); v++) star.add(new ArrayList<>());
        for (int f = 0; f < facets.size(); f++) {
            lost.add(new ArrayList<>());
            for (int v : facets.get(f)) star.get(v).add(f);
        }
    }

    List<Vec3> corners() {
        return corners;
    }

    /** The triangles there are now. */
    List<int[]> facets() {
        List<int[]> out = new ArrayList<>();
        for (int f = 0; f < facets.size(); f++) if (isAlive(f)) out.add(facets.get(f));
        return out;
    }

    Map<Side, Rim> border() {
        return border;
    }

    /**
     * Takes vertices out until none can go without moving the surface or its border too far.
     *
     * @param slackMm how far a point may come to lie off the surface
     */
    Slope thinned(ToDoubleFunction<Vec3> slackMm) {
        double[] slack = corners.stream().mapToDouble(slackMm).toArray();
        boolean changed = true;
        while (changed) {
            changed = false;
            for (int v = 0; v < corners.size(); v++) if (!star.get(v).isEmpty()) changed |= remove(v, slack);
        }
        return this;
    }

    private boolean isAlive(int f) {
        return !star.get(facets.get(f)[0]).isEmpty()
                && star.get(facets.get(f)[0]).contains(f);
    }

    private boolean remove(int u, double[] slack) {
        List<Side> sides =
                border.keySet().stream().filter(s -> s.from == u || s.to == u).toList();
        if (sides.isEmpty()) {
            List<Integer> near = neighbours(u);
            near.sort((a, b) -> Double.compare(distance(u, a), distance(u, b)));
            for (int v : near) if (pull(u, v, slack)) return true;
            return false;
        }
        if (sides.size() != 2 || border.get(sides.get(0)) != border.get(sides.get(1))) return false;
        Side in = sides.get(0).to == u ? sides.get(0) : sides.get(1),
                out = in == sides.get(0) ? sides.get(1) : sides.get(0);
        if (in.to != u || out.from != u || in.from == out.to) return false;
        return straight(in, out) && (pullBorder(u, in, out, in.from, slack) || pullBorder(u, in, out, out.to, slack));
    }

    private boolean straight(Side in, Side out) {
        double slack = Objects.requireNonNull(border.get(in)).slackMm();
        Vec3 a = corners.get(in.from), b = corners.get(out.to);
        List<Vec3> points = new ArrayList<>(List.of(corners.get(in.to)));
        points.addAll(lostOnBorder.getOrDefault(in, List.of()));
        points.addAll(lostOnBorder.getOrDefault(out, List.of()));
        return points.stream().allMatch(p -> toSegment(p, a, b) <= slack);
    }

    private boolean pullBorder(int u, Side in, Side out, int v, double[] slack) {
        if (!pull(u, v, slack)) return false;
        Side one = new Side(in.from, out.to);
        border.put(one, Objects.requireNonNull(border.get(in)));
        List<Vec3> gone = new ArrayList<>(List.of(corners.get(u)));
        gone.addAll(lostOnBorder.getOrDefault(in, List.of()));
        gone.addAll(lostOnBorder.getOrDefault(out, List.of()));
        lostOnBorder.put(one, gone);
        border.remove(in);
        border.remove(out);
        return true;
    }

    /** Draws vertex u onto its neighbour v when the surface stays near all points it has lost. */
    private boolean pull(int u, int v, double[] slack) {
        List<Integer> gone = new ArrayList<>(), kept = new ArrayList<>();
        for (int f : star.get(u)) (has(f, v) ? gone : kept).add(f);
        List<Integer> shared = neighbours(u);
        shared.retainAll(neighbours(v));
        if (kept.isEmpty() || shared.size() != gone.size()) return false;
        List<int[]> fresh =
                kept.stream().map(f -> replaced(facets.get(f), u, v)).toList();
        for (int i = 0; i < fresh.size(); i++) {
            Vec3 was = normal(facets.get(kept.get(i))), is = normal(fresh.get(i));
            if (!(is.dot(was) > LEAST_COSINE * is.length() * was.length())) return false;
            if (is.z() < Math.min(0, was.z())) return false; // it would hook one half into the other
        }
        List<Integer> points = new ArrayList<>(List.of(u));
        for (int f : star.get(u)) points.addAll(lost.get(f));
        int[] home = new int[points.size()];
        for (int p = 0; p < home.length; p++) {
            double best = Double.MAX_VALUE;
            for (int i = 0; i < fresh.size(); i++) {
                double d = toTriangle(corners.get(points.get(p)), fresh.get(i));
                if (d < best) {
                    best = d;
                    home[p] = i;
                }
            }
            if (best > slack[points.get(p)]) return false;
        }
        for (int f : gone) for (int w : facets.get(f)) if (w != u) star.get(w).remove((Integer) f);
        for (int i = 0; i < kept.size(); i++) {
            facets.set(kept.get(i), fresh.get(i));
            lost.get(kept.get(i)).clear();
            star.get(v).add(kept.get(i));
        }
        for (int p = 0; p < home.length; p++) lost.get(kept.get(home[p])).add(points.get(p));
        star.get(u).clear();
        return true;
    }

    private boolean has(int f, int v) {
        for (int w : facets.get(f)) if (w == v) return true;
        return false;
    }

    private static int[] replaced(int[] facet, int u, int v) {
        int[] out = facet.clone();
        for (int k = 0; k < 3; k++) if (out[k] == u) out[k] = v;
        return out;
    }

    private List<Integer> neighbours(int u) {
        List<Integer> out = new ArrayList<>();
        for (int f : star.get(u)) for (int w : facets.get(f)) if (w != u && !out.contains(w)) out.add(w);
        return out;
    }

    private double distance(int a, int b) {
        return corners.get(a).distance(corners.get(b));
    }

    private Vec3 normal(int[] f) {
        Vec3 a = corners.get(f[0]);
        return corners.get(f[1]).minus(a).cross(corners.get(f[2]).minus(a));
    }

    private static double toSegment(Vec3 p, Vec3 a, Vec3 b) {
        Vec3 along = b.minus(a);
        double t = Math.clamp(p.minus(a).dot(along) / along.dot(along), 0, 1);
        return p.distance(a.toward(b, t));
    }

    private double toTriangle(Vec3 p, int[] f) {
        Vec3 a = corners.get(f[0]), b = corners.get(f[1]), c = corners.get(f[2]), n = normal(f);
        boolean inside = n.dot(b.minus(a).cross(p.minus(a))) >= 0
                && n.dot(c.minus(b).cross(p.minus(b))) >= 0
                && n.dot(a.minus(c).cross(p.minus(c))) >= 0;
        if (inside) return Math.abs(n.dot(p.minus(a))) / n.length();
        return Math.min(toSegment(p, a, b), Math.min(toSegment(p, b, c), toSegment(p, c, a)));
    }
}
