package shotwright.review;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.stream.IntStream;
import shotwright.brep.ExactBody;
import shotwright.geom.Vec3;
import shotwright.mesh.Edges;
import shotwright.mesh.TriMesh;
import shotwright.part.PulledPart;
import shotwright.progress.Progress;

/**
 * The walls of a part in the pulled frame, grown from the largest facet outwards over neighbours that turn by less than {@value #MAX_TURN}°
 * and lean like the first one within {@value #SAME_LEAN}°. Facets leaning more than {@value #STEEPEST}° off the pull are floors, not walls.
 *
 * @param leanDeg lean of every facet: 90° looks straight up, 0° stands along the pull, −90° looks straight down
 * @param wallOf number of the wall of every facet, −1 for none
 * @param all walls worth naming, largest first
 */
record Walls(double[] leanDeg, int[] wallOf, List<Wall> all) {
    static final double STEEPEST = 20;
    static final double SAME_LEAN = 0.75;
    static final double MAX_TURN = 20;
    private static final double LEAST_AREA_SHARE = 1e-4;
    private static final double LEAST_DEPTH_SHARE = 1e-3;

    static Walls of(PulledPart pulled, Progress progress) {
        TriMesh mesh = pulled.mesh();
        Edges edges = pulled.edges();
        ExactBody exact = pulled.part().exact();
        double[] lean = exact == null ? leans(mesh) : leans(exact, pulled.pull());
        int[] wallOf = new int[lean.length];
        Arrays.fill(wallOf, -1);
        double total = 0;
        for (int f = 0; f < lean.length; f++) total += mesh.area(f);
        double leastDepth = LEAST_DEPTH_SHARE * mesh.box().diagonal();
        boolean[] taken = new boolean[lean.length];
        int[] stack = new int[lean.length];
        List<Wall> all = new ArrayList<>();
        int seen = 0;
        for (int seed : bySize(mesh, lean)) {
            if ((seen++ & 4095) == 0) progress.at("finding walls", seen / (double) lean.length);
            if (taken[seed]) continue;
            int[] facets = grow(mesh, edges, lean, taken, stack, seed);
            double area = 0;
            for (int f : facets) area += mesh.area(f);
            if (area < LEAST_AREA_SHARE * total) continue;
            Wall wall = Wall.of(mesh, lean, facets);
            if (wall.depthMm() < leastDepth) continue;
            for (int f : facets) wallOf[f] = all.size();
            all.add(wall);
        }
        return new Walls(lean, wallOf, List.copyOf(all));
    }

    private static double[] leans(TriMesh mesh) {
        double[] lean = new double[mesh.facetCount()];
        for (int f = 0; f < lean.length; f++) {
            Vec3 n = mesh.doubleAreaNormal(f);
            double l = n.length();
            lean[f] = l == 0 ? 90 : Math.toDegrees(Math.asin(Math.clamp(n.z() / l, -1, 1)));
        }
        return lean;
    }

    /** From the exact normals at the corners of each facet. */
    private static double[] leans(ExactBody body, Vec3 pull) {
        float[] n = body.normals();
        double[] lean = new double[body.faceOf().length];
        for (int f = 0; f < lean.length; f++) {
            int i = 9 * f;
            Vec3 sum = new Vec3(
                    (double) n[i] + n[i + 3] + n[i + 6],
                    (double) n[i + 1] + n[i + 4] + n[i + 7],
                    (double) n[i + 2] + n[i + 5] + n[i + 8]);
            lean[f] = Math.toDegrees(Math.asin(Math.clamp(sum.unit().dot(pull), -1, 1)));
        }
        return lean;
    }

    private static int[] bySize(TriMesh mesh, double[] lean) {
        double[] area = new double[lean.length];
        for (int f = 0; f < area.length; f++) area[f] = mesh.area(f);
        return IntStream.range(0, lean.length)
                .filter(f -> Math.abs(lean[f]) < STEEPEST)
                .boxed()
                .sorted((f, g) -> Double.compare(area[g], area[f]))
                .mapToInt(Integer::intValue)
                .toArray();
    }

    private static int[] grow(TriMesh mesh, Edges edges, double[] lean, boolean[] taken, int[] stack, int seed) {
        int top = 0, n = 0;
        int[] found = new int[16];
        stack[top++] = seed;
        taken[seed] = true;
        double turn = Math.cos(Math.toRadians(MAX_TURN));
        while (top > 0) {
            int f = stack[--top];
            if (n == found.length) found = Arrays.copyOf(found, 2 * n);
            found[n++] = f;
            Vec3 normal = mesh.doubleAreaNormal(f);
            for (int k = 0; k < 3; k++) {
                int g = edges.neighbour(f, k);
                if (g < 0 || taken[g] || Math.abs(lean[g] - lean[seed]) > SAME_LEAN) continue;
                Vec3 other = mesh.doubleAreaNormal(g);
                if (normal.dot(other) < turn * normal.length() * other.length()) continue;
                taken[g] = true;
                stack[top++] = g;
            }
        }
        return Arrays.copyOf(found, n);
    }

    /** Share of the whole surface that leans no more than so far off the pull, either way. */
    static double areaShareWithin(TriMesh mesh, double[] leanDeg, double limitDeg) {
        double within = 0, all = 0;
        for (int f = 0; f < leanDeg.length; f++) {
            double a = mesh.area(f);
            all += a;
            if (Math.abs(leanDeg[f]) <= limitDeg) within += a;
        }
        return within / all;
    }
}
