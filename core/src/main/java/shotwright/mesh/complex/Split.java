package shotwright.mesh.complex;

import java.util.Arrays;

/**
 * The one solid operation: a cell is cut along a level. Edges of its skin that cross the level get a point there; every facet holding such an
 * edge is subdivided, whichever cell it bounds, so that no corner ever lies inside an edge. The skin is then coloured above or below; the
 * border of the colouring is closed by nature, and a cap spans it.
 */
final class Split {
    private final Complex c;
    private final int cell;
    private final Level level;
    private double[] value;

    Split(Complex complex, int cell, Level level) {
        this.c = complex;
        this.cell = cell;
        this.level = level;
        this.value = new double[complex.vertexCount()];
    }

    Cap apply(int newCell, Grade grade) {
        if (!evaluate()) return new Cap(-1, 0, 0, 0, 0);
        subdivide(mark());
        boolean[] above = colour();
        Outline border = border(above);
        for (int f = 0; f < above.length; f++) if (above[f]) c.retag(f, cell, newCell);
        return cap(border, newCell, grade);
    }

    /** Evaluates the level on the skin of the cell, numbers near zero snapped to it; false when nothing lies above. */
    private boolean evaluate() {
        Arrays.fill(value, Double.NaN);
        double snap = c.grain().snap();
        boolean any = false;
        for (int f = 0; f < c.facetCount(); f++) {
            if (!c.bounds(f, cell)) continue;
            any |= c.pin(f) > 0;
            for (int k = 0; k < 3; k++) {
                int v = c.corner(f, k);
                if (!Double.isNaN(value[v])) continue;
                double s = level.at(c, v);
                value[v] = Math.abs(s) < snap ? 0 : s;
                any |= value[v] > 0;
            }
        }
        return any;
    }

    /** A new point on every skin edge that crosses the level, save those of pinned facets only. */
    private EdgeTally mark() {
        EdgeTally points = new EdgeTally(256);
        int skin = c.facetCount();
        for (int f = 0; f < skin; f++) {
            if (c.pin(f) != 0 || !c.bounds(f, cell)) continue;
            for (int k = 0; k < 3; k++) {
                int a = c.corner(f, k), b = c.corner(f, (k + 1) % 3);
                if (value[a] * value[b] < 0 && points.get(a, b, -1) < 0) points.put(a, b, pointBetween(a, b));
            }
        }
        value = Arrays.copyOf(value, c.vertexCount());
        return points;
    }

    private int pointBetween(int i, int j) {
        int a = Math.min(i, j), b = Math.max(i, j);
        double t = value[a] / (value[a] - value[b]);
        return c.addVertex(
                c.x(a) + t * (c.x(b) - c.x(a)), c.y(a) + t * (c.y(b) - c.y(a)), c.z(a) + t * (c.z(b) - c.z(a)));
    }

    /** Subdivides all facets of the complex that hold a marked edge; at most two edges of a facet are marked, for the signs alternate. */
    private void subdivide(EdgeTally points) {
        if (points.size() == 0) return;
        boolean[] touched = new boolean[c.vertexCount()];
        points.forEach((a, b, p) -> touched[a] = touched[b] = true);
        int n = c.facetCount();
        for (int f = 0; f < n; f++) {
            int a = c.corner(f, 0), b = c.corner(f, 1), d = c.corner(f, 2);
            boolean ta = touched[a], tb = touched[b], td = touched[d];
            if (!(ta && tb || tb && td || td && ta)) continue;
            int ab = points.get(a, b, -1), bd = points.get(b, d, -1), da = points.get(d, a, -1);
            if (ab >= 0 && da >= 0) corner(f, a, b, d, ab, da);
            else if (bd >= 0 && ab >= 0) corner(f, b, d, a, bd, ab);
            else if (da >= 0 && bd >= 0) corner(f, d, a, b, da, bd);
            else if (ab >= 0) halve(f, a, b, d, ab);
            else if (bd >= 0) halve(f, b, d, a, bd);
            else if (da >= 0) halve(f, d, a, b, da);
        }
    }

    private void halve(int f, int a, int b, int d, int ab) {
        c.setCorners(f, a, ab, d);
        c.addPiece(f, ab, b, d);
    }

    /** Cuts off corner a; the rest is divided along its shorter diagonal. */
    private void corner(int f, int a, int b, int d, int ab, int da) {
        c.setCorners(f, a, ab, da);
        if (c.vertex(ab).distance(c.vertex(d)) < c.vertex(b).distance(c.vertex(da))) {
            c.addPiece(f, ab, b, d);
            c.addPiece(f, ab, d, da);
        } else {
            c.addPiece(f, ab, b, da);
            c.addPiece(f, b, d, da);
        }
    }

    /** Which skin facets belong to what is split off. */
    private boolean[] colour() {
        boolean[] above = new boolean[c.facetCount()];
        for (int f = 0; f < above.length; f++) if (c.bounds(f, cell)) above[f] = isAbove(f);
        return above;
    }

    private boolean isAbove(int f) {
        if (c.pin(f) != 0) return c.pin(f) > 0;
        double lo = 0, hi = 0;
        for (int k = 0; k < 3; k++) {
            lo = Math.min(lo, value[c.corner(f, k)]);
            hi = Math.max(hi, value[c.corner(f, k)]);
        }
        if (hi != 0 || lo != 0) return hi > -lo;
        // the facet lies in the level: the cell is above it when the normal out of the cell points down
        double out = c.doubleAreaNormal(f).dot(level.up());
        return c.behind(f) == cell ? out < 0 : out > 0;
    }

    private Outline border(boolean[] above) {
        EdgeTally net = new EdgeTally(1024);
        for (int f = 0; f < above.length; f++) {
            if (!above[f]) continue;
            boolean outward = c.behind(f) == cell;
            for (int k = 0; k < 3; k++) {
                int a = c.corner(f, k), b = c.corner(f, (k + 1) % 3);
                if (outward) net.addDirected(a, b);
                else net.addDirected(b, a);
            }
        }
        IntList from = new IntList(), to = new IntList();
        net.forEach((low, high, n) -> {
            for (int i = 0; i < Math.abs(n); i++) {
                from.add(n > 0 ? low : high);
                to.add(n > 0 ? high : low);
            }
        });
        return Outline.of(c, from.toArray(), to.toArray(), level.up());
    }

    private Cap cap(Outline border, int newCell, Grade grade) {
        if (border.loops.isEmpty()) return new Cap(-1, 0, 0, 0, 0);
        if (grade instanceof Grade.Sloped s) {
            Cap cap = new SlopedCap(c, border, s).span(newCell, cell);
            if (cap != null) return cap;
        }
        Fill fill = Fill.of(c, border);
        int[] t = new int[fill.triangles().length];
        for (int i = 0; i < t.length; i++) t[i] = border.vertex[fill.triangles()[i]];
        int source = CapFacets.add(c, t, level.up(), newCell, cell);
        return new Cap(source, t.length / 3, border.loops.size(), fill.spikes(), 0);
    }
}
