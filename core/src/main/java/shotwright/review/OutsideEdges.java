package shotwright.review;

import java.util.Arrays;
import shotwright.geom.Box3;
import shotwright.geom.Vec3;
import shotwright.mesh.Edges;
import shotwright.mesh.TriMesh;

/**
 * Outside corners of a part as a cloud of points on a grid of cells: how near the next one lies. Thickness measured near them means nothing.
 */
final class OutsideEdges {
    private static final double SHARP = Math.toRadians(30);
    private static final int MOST_POINTS = 200_000;

    private final double cell;
    private final Vec3 origin;
    private final int nx, ny, nz;
    private final int[] start;
    private final double[] points;

    private OutsideEdges(Box3 box, double cell, double[] loose) {
        this.cell = cell;
        origin = box.min();
        nx = cells(box.size().x());
        ny = cells(box.size().y());
        nz = cells(box.size().z());
        int n = loose.length / 3;
        int[] at = new int[n];
        start = new int[nx * ny * nz + 1];
        for (int i = 0; i < n; i++) {
            at[i] = index(loose[3 * i], loose[3 * i + 1], loose[3 * i + 2]);
            start[at[i] + 1]++;
        }
        for (int c = 0; c + 1 < start.length; c++) start[c + 1] += start[c];
        points = new double[loose.length];
        int[] next = start.clone();
        for (int i = 0; i < n; i++) System.arraycopy(loose, 3 * i, points, 3 * next[at[i]]++, 3);
    }

    private int cells(double size) {
        return (int) Math.ceil(size / cell) + 1;
    }

    private int index(double x, double y, double z) {
        int i = Math.clamp((int) ((x - origin.x()) / cell), 0, nx - 1);
        int j = Math.clamp((int) ((y - origin.y()) / cell), 0, ny - 1);
        int k = Math.clamp((int) ((z - origin.z()) / cell), 0, nz - 1);
        return (k * ny + j) * nx + i;
    }

    /** Points along all edges that turn outwards by more than 30°, no farther apart than a fifth of the wall. */
    static OutsideEdges of(TriMesh mesh, Edges edges, double wallMm) {
        Box3 box = mesh.box();
        double step = Math.max(wallMm / 5, box.diagonal() / 2000);
        double[] found = new double[3 * 1024];
        int n = 0;
        for (int e = 0; e < edges.count() && n < MOST_POINTS; e++) {
            if (!(edges.turn(e) > SHARP)) continue;
            Vec3 a = mesh.vertex(edges.low(e)), b = mesh.vertex(edges.high(e));
            int parts = (int) Math.ceil(a.distance(b) / step) + 1;
            for (int i = 0; i < parts; i++, n++) {
                if (3 * n + 3 > found.length) found = Arrays.copyOf(found, 2 * found.length);
                Vec3 p = a.toward(b, (i + 0.5) / parts);
                found[3 * n] = p.x();
                found[3 * n + 1] = p.y();
                found[3 * n + 2] = p.z();
            }
        }
        double cell = Math.max(wallMm, box.diagonal() / 100);
        return new OutsideEdges(box, cell, Arrays.copyOf(found, 3 * n));
    }

    /** Is there one nearer than the distance? */
    boolean isNear(Vec3 p, double distanceMm) {
        int reach = (int) Math.ceil(distanceMm / cell);
        int i0 = (int) ((p.x() - origin.x()) / cell), j0 = (int) ((p.y() - origin.y()) / cell);
        int k0 = (int) ((p.z() - origin.z()) / cell);
        double square = distanceMm * distanceMm;
        for (int k = Math.max(0, k0 - reach); k <= Math.min(nz - 1, k0 + reach); k++)
            for (int j = Math.max(0, j0 - reach); j <= Math.min(ny - 1, j0 + reach); j++)
                for (int i = Math.max(0, i0 - reach); i <= Math.min(nx - 1, i0 + reach); i++)
                    if (holds((k * ny + j) * nx + i, p, square)) return true;
        return false;
    }

    private boolean holds(int c, Vec3 p, double square) {
        for (int q = start[c]; q < start[c + 1]; q++) {
            double x = points[3 * q] - p.x(), y = points[3 * q + 1] - p.y(), z = points[3 * q + 2] - p.z();
            if (x * x + y * y + z * z < square) return true;
        }
        return false;
    }
}
