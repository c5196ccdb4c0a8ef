package shotwright.mesh.complex;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.jspecify.annotations.Nullable;
import shotwright.geom.Vec3;

/**
 * Takes back the subdivisions a cut has left where nothing changes any more. Facets that hold a vertex younger than the cut are gathered into
 * patches of one surface between the same two cells; young vertices inside a patch vanish, and so do those in a straight run of border that
 * no third run joins. Each patch is then spanned anew on what is left. Neighbouring patches lose the same border vertices, so the
 * complex stays conforming; a patch that cannot be spanned keeps its vertices, and its neighbours keep them with it.
 */
final class Coalesce {
    private final Complex c;
    private final int young;
    private int[] dirty = new int[0];
    private int[] patchOf = new int[0];
    private List<Patch> patches = List.of();

    /** One flat piece of a surface. */
    private static final class Patch {
        final IntList facets = new IntList();
        final IntList from = new IntList();
        final IntList to = new IntList();
        Vec3 up = Vec3.Z;
        boolean asItWas;
        int @Nullable [] triangles;
    }

    Coalesce(Complex complex, int youngestKept) {
        this.c = complex;
        this.young = youngestKept;
    }

    void apply() {
        if (c.vertexCount() == young) return;
        gather();
        borders();
        boolean[] needed = corners();
        boolean again = true;
        while (again) {
            again = false;
            for (Patch p : patches) again |= !p.asItWas && !span(p, needed);
        }
        replace();
    }

    // ---- patches
    // ---------------------------------------------------------------------------------------------------------------

    private void gather() {
        IntList list = new IntList();
        for (int f = 0; f < c.facetCount(); f++) {
            if (c.corner(f, 0) >= young || c.corner(f, 1) >= young || c.corner(f, 2) >= young) list.add(f);
        }
        dirty = list.toArray();
        int[] root = new int[dirty.length];
        for (int i = 0; i < root.length; i++) root[i] = i;
        join(root);
        patchOf = new int[dirty.length];
        int[] number = new int[dirty.length];
        Arrays.fill(number, -1);
        patches = new ArrayList<>();
        for (int i = 0; i < dirty.length; i++) {
            int r = find(root, i);
            if (number[r] < 0) {
                number[r] = patches.size();
                patches.add(new Patch());
            }
            patchOf[i] = number[r];
            patches.get(number[r]).facets.add(dirty[i]);
        }
    }

    /** Joins facets of one surface and the same two cells across their edges; all facets at an edge are compared, in a ring by edge. */
    private void join(int[] root) {
        EdgeTally latest = new EdgeTally(2 * dirty.length);
        int[] older = new int[3 * dirty.length];
        for (int i = 0; i < dirty.length; i++) {
            for (int k = 0; k < 3; k++) {
                int a = c.corner(dirty[i], k), b = c.corner(dirty[i], (k + 1) % 3);
                int side = latest.get(a, b, -1);
                older[3 * i + k] = side;
                latest.put(a, b, 3 * i + k);
                for (; side >= 0; side = older[side]) {
                    if (alike(dirty[i], dirty[side / 3])) root[find(root, i)] = find(root, side / 3);
                }
            }
        }
    }

    private boolean alike(int f, int g) {
        return c.source(f) == c.source(g) && c.front(f) == c.front(g) && c.behind(f) == c.behind(g);
    }

    private static int find(int[] root, int i) {
        int r = i;
        while (root[r] != r) r = root[r] = root[root[r]];
        return r;
    }

    private void borders() {
        for (Patch p : patches) {
            EdgeTally net = new EdgeTally(3 * p.facets.size());
            Vec3 normal = Vec3.ZERO;
            for (int i = 0; i < p.facets.size(); i++) {
                int f = p.facets.get(i);
                normal = normal.plus(c.doubleAreaNormal(f));
                for (int k = 0; k < 3; k++) net.addDirected(c.corner(f, k), c.corner(f, (k + 1) % 3));
            }
            net.forEach((low, high, n) -> {
                for (int i = 0; i < Math.abs(n); i++) {
                    p.from.add(n > 0 ? low : high);
                    p.to.add(n > 0 ? high : low);
                }
            });
            double size = normal.length();
            if (size > 0) p.up = normal.times(1 / size);
            else p.asItWas = true;
        }
    }

    /** Which vertices must stay: the old ones, and young ones where the borders of patches turn or branch. */
    private boolean[] corners() {
        int n = c.vertexCount();
        int[] one = new int[n - young], two = new int[n - young];
        boolean[] needed = new boolean[n];
        Arrays.fill(needed, 0, young, true);
        Arrays.fill(one, -1);
        Arrays.fill(two, -1);
        for (Patch p : patches) {
            for (int i = 0; i < p.from.size(); i++) {
                meet(p.from.get(i), p.to.get(i), one, two, needed);
                meet(p.to.get(i), p.from.get(i), one, two, needed);
            }
            if (p.asItWas) keepAll(p, needed);
        }
        for (int v = young; v < n; v++) {
            if (two[v - young] >= 0 && !straight(one[v - young], v, two[v - young])) needed[v] = true;
        }
        return needed;
    }

    private void meet(int v, int neighbour, int[] one, int[] two, boolean[] needed) {
        if (v < young) return;
        int i = v - young;
        if (one[i] < 0 || one[i] == neighbour) one[i] = neighbour;
        else if (two[i] < 0 || two[i] == neighbour) two[i] = neighbour;
        else needed[v] = true;
    }

    private boolean straight(int a, int v, int b) {
        Vec3 run = c.vertex(b).minus(c.vertex(a)), way = c.vertex(v).minus(c.vertex(a));
        double length = run.length();
        double along = run.dot(way) / length;
        return length > 0
                && along > 0
                && along < length
                && run.cross(way).length() <= (c.grain().straight() + 1e-13 * length) * length;
    }

    // ---- spanning anew
    // ---------------------------------------------------------------------------------------------------------

    /** Spans a patch on its needed vertices; when that fails it stays as it was, its vertices are needed, and the answer is false. */
    private boolean span(Patch p, boolean[] needed) {
        if (allNeeded(p, needed)) {
            p.triangles = null;
            return true;
        }
        Outline border = Outline.of(c, p.from.toArray(), p.to.toArray(), p.up);
        List<int[]> loops = new ArrayList<>();
        for (int[] l : border.loops) {
            int[] k = Arrays.stream(l).filter(i -> needed[border.vertex[i]]).toArray();
            if (k.length > 2) loops.add(k);
        }
        Outline kept = border.with(loops);
        Fill fill = loops.isEmpty() ? null : Fill.attempt(c.grain(), kept);
        if (fill == null) {
            p.asItWas = true;
            p.triangles = null;
            return !keepAll(p, needed);
        }
        p.triangles = Arrays.stream(fill.triangles()).map(i -> border.vertex[i]).toArray();
        return true;
    }

    private boolean allNeeded(Patch p, boolean[] needed) {
        for (int i = 0; i < p.facets.size(); i++) {
            for (int k = 0; k < 3; k++) if (!needed[c.corner(p.facets.get(i), k)]) return false;
        }
        return true;
    }

    /** True when that changed anything. */
    private boolean keepAll(Patch p, boolean[] needed) {
        boolean changed = false;
        for (int i = 0; i < p.facets.size(); i++) {
            for (int k = 0; k < 3; k++) {
                int v = c.corner(p.facets.get(i), k);
                changed |= !needed[v];
                needed[v] = true;
            }
        }
        return changed;
    }

    private void replace() {
        boolean[] gone = new boolean[c.facetCount()];
        for (Patch p : patches) {
            int[] t = p.triangles;
            if (t == null) continue;
            int like = p.facets.get(0);
            for (int i = 0; i < p.facets.size(); i++) gone[p.facets.get(i)] = true;
            for (int i = 0; i < t.length; i += 3) c.addPiece(like, t[i], t[i + 1], t[i + 2]);
        }
        c.removeIf(f -> f < gone.length && gone[f]);
    }
}
