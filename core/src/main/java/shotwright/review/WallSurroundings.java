package shotwright.review;

import java.util.Arrays;
import shotwright.geom.Vec2;
import shotwright.geom.Vec3;
import shotwright.mesh.Bvh;
import shotwright.mesh.Probe;
import shotwright.mesh.TriMesh;

/**
 * What lies round a wall, by rays from points spread over it.
 *
 * @param openUpShare how much of it has open air above the space in front of it
 * @param openDownShare how much of it has open air below that space
 * @param farShare how much of it looks away from the part
 * @param gapMm air in front of it to the next wall (middle value); infinite when mostly open
 * @param thickMm plastic behind it (middle value)
 * @param backedBy the wall most often met behind it, −1 for none
 */
record WallSurroundings(
        double openUpShare, double openDownShare, double farShare, double gapMm, double thickMm, int backedBy) {
    private static final int SAMPLES = 17;
    private static final double OFF = 5e-4;

    static WallSurroundings of(TriMesh mesh, Bvh tree, Walls walls, Wall wall, Probe probe) {
        double off = OFF * mesh.box().diagonal();
        double[] gap = new double[SAMPLES], thick = new double[SAMPLES];
        int[] behind = new int[SAMPLES];
        int up = 0, down = 0, far = 0;
        double sum = 0, next = wall.areaMm2() / SAMPLES / 2;
        int i = 0;
        for (int f : wall.facets()) {
            sum += mesh.area(f);
            for (int k = 0; i < SAMPLES && next <= sum; k++, i++, next += wall.areaMm2() / SAMPLES) {
                Vec3 p = PullSide.inside(mesh, f, k + i), n = level(mesh, f);
                gap[i] = tree.firstHit(probe.aim(p, n), 0, Double.POSITIVE_INFINITY, f) == Bvh.NONE
                        ? Double.POSITIVE_INFINITY
                        : probe.t();
                if (Double.isInfinite(gap[i])) far++;
                int hit = tree.firstHit(probe.aim(p, n.negate()), 0, Double.POSITIVE_INFINITY, f);
                thick[i] = hit == Bvh.NONE ? 0 : probe.t();
                behind[i] = hit == Bvh.NONE ? -1 : walls.wallOf()[hit];
                Vec3 air = p.plus(n.times(Math.min(off, gap[i] / 2)));
                if (!tree.anyHit(probe.aim(air, Vec3.Z), 0, Double.POSITIVE_INFINITY, f)) up++;
                if (!tree.anyHit(probe.aim(air, Vec3.Z.negate()), 0, Double.POSITIVE_INFINITY, f)) down++;
            }
        }
        double n = i;
        return new WallSurroundings(up / n, down / n, far / n, middle(gap, i), middle(thick, i), mode(behind, i));
    }

    private static Vec3 level(TriMesh mesh, int f) {
        Vec2 n = mesh.doubleAreaNormal(f).xy().unit();
        return n.atZ(0);
    }

    private static double middle(double[] v, int n) {
        double[] s = Arrays.copyOf(v, n);
        Arrays.sort(s);
        return s[n / 2];
    }

    private static int mode(int[] v, int n) {
        int best = -1, count = 0;
        for (int i = 0; i < n; i++) {
            int c = 0;
            for (int j = 0; j < n; j++) if (v[j] == v[i]) c++;
            if (v[i] >= 0 && c > count) {
                best = v[i];
                count = c;
            }
        }
        return best;
    }

    /** Metal could leave along neither end. */
    boolean isShutIn() {
        return openUpShare < 0.5 && openDownShare < 0.5;
    }

    boolean opensBothWays() {
        return openUpShare >= 0.5 && openDownShare >= 0.5;
    }
}
