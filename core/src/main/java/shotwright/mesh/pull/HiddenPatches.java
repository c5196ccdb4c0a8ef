package shotwright.mesh.pull;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import shotwright.geom.Vec3;
import shotwright.mesh.Edges;
import shotwright.mesh.TriMesh;

/**
 * Connected hidden facets. A patch is given whole to the half with which it shares the longer border: cutting it would lay the parting through
 * the part.
 *
 * @param patches the patches, largest first
 */
public record HiddenPatches(List<Patch> patches) {
    private static final double IN_THE_PARTING = 1e-6;

    /**
     * One patch.
     *
     * @param facets its facets
     * @param side +1 when it goes to half A, −1 to half B
     * @param shadow its area seen along the pull
     * @param place middle of its facets by area
     */
    public record Patch(int[] facets, int side, double shadow, Vec3 place) {}

    public static HiddenPatches of(TriMesh mesh, Sight[] sight, Edges edges, PartingHeights heights) {
        boolean[] seen = new boolean[sight.length];
        int[] stack = new int[sight.length];
        List<Patch> patches = new ArrayList<>();
        for (int s = 0; s < sight.length; s++) {
            if (sight[s] != Sight.HIDDEN || seen[s]) continue;
            int top = 0, n = 0;
            int[] found = new int[16];
            stack[top++] = s;
            seen[s] = true;
            double balance = 0;
            while (top > 0) {
                int f = stack[--top];
                if (n == found.length) found = Arrays.copyOf(found, 2 * n);
                found[n++] = f;
                for (int k = 0; k < 3; k++) {
                    int g = edges.neighbour(f, k);
                    if (g < 0) continue;
                    if (sight[g] == Sight.HIDDEN && !seen[g]) {
                        seen[g] = true;
                        stack[top++] = g;
                    }
                    balance += pullOf(mesh, sight, heights, f, k, g);
                }
            }
            patches.add(patch(mesh, Arrays.copyOf(found, n), balance));
        }
        patches.sort((a, b) -> Double.compare(b.shadow, a.shadow));
        return new HiddenPatches(List.copyOf(patches));
    }

    /** Length of a border edge, above zero when the facet across it belongs to A. */
    private static double pullOf(TriMesh mesh, Sight[] sight, PartingHeights heights, int f, int side, int across) {
        int a = mesh.corner(f, side), b = mesh.corner(f, (side + 1) % 3);
        double length = mesh.vertex(a).distance(mesh.vertex(b));
        return switch (sight[across]) {
            case UP -> length;
            case DOWN -> -length;
            case HIDDEN -> 0;
            case FREE -> isAbove(mesh, heights, a, b, across) ? length : -length;
        };
    }

    /** A free wall counts by where it is at the edge; at an edge that lies in the parting itself, by where the rest of it is. */
    private static boolean isAbove(TriMesh mesh, PartingHeights heights, int a, int b, int wall) {
        double atEdge = (mesh.z(a) - heights.at(a) + mesh.z(b) - heights.at(b)) / 2;
        if (Math.abs(atEdge) > IN_THE_PARTING * mesh.box().diagonal()) return atEdge > 0;
        double sum = 0;
        for (int k = 0; k < 3; k++) sum += mesh.z(mesh.corner(wall, k)) - heights.at(mesh.corner(wall, k));
        return sum > 0;
    }

    private static Patch patch(TriMesh mesh, int[] facets, double balance) {
        double shadow = 0, area = 0;
        Vec3 moment = Vec3.ZERO;
        for (int f : facets) {
            shadow += Math.abs(mesh.doubleAreaNormal(f).z()) / 2;
            area += mesh.area(f);
            moment = moment.plus(mesh.centroid(f).times(mesh.area(f)));
        }
        return new Patch(facets, balance >= 0 ? 1 : -1, shadow, moment.times(1 / area));
    }
}
