package shotwright.fill;

import java.util.Arrays;
import shotwright.geom.Vec3;
import shotwright.mesh.Bvh;
import shotwright.mesh.Probe;
import shotwright.progress.Progress;

/**
 * The wall every cell lies in: the diameter of the largest ball that fits the part and holds the cell's centre, and how wide the passage is
 * across that ball. Balls are found from the surface: from the point nearest to a cell straight through the plastic to the other side, with
 * the ball in the middle of that chord cut down to what really fits. In a flat wall this gives the wall exactly, whatever the cells.
 */
final class LocalWalls {
    private static final int WAYS_ACROSS = 4;

    final double[] wallMm;
    /** Width of the passage over its wall; 1 for rods, large for plates. */
    final double[] widthRatio;

    private LocalWalls(int cells) {
        wallMm = new double[cells];
        widthRatio = new double[cells];
    }

    static LocalWalls of(MeltCells cells, Bvh bvh, Progress progress) {
        LocalWalls walls = new LocalWalls(cells.count());
        Balls balls = new Balls(bvh);
        for (int c = 0; c < cells.count(); c++) {
            if (c % 1024 == 0) progress.at("measuring walls", 0.4 + 0.5 * c / cells.count());
            if (balls.from(cells.centreMm(c))) walls.paint(cells, balls);
        }
        walls.fillRest(cells);
        return walls;
    }

    private void paint(MeltCells cells, Balls b) {
        double h = cells.cellMm, r = b.radius;
        Vec3 low = b.centre.minus(cells.originMm).minus(new Vec3(r, r, r)).times(1 / h);
        Vec3 high = b.centre.minus(cells.originMm).plus(new Vec3(r, r, r)).times(1 / h);
        int i1 = Math.min(cells.nx - 1, (int) high.x()), j1 = Math.min(cells.ny - 1, (int) high.y());
        int k1 = Math.min(cells.nz - 1, (int) high.z());
        for (int k = Math.max(0, (int) low.z()); k <= k1; k++) {
            for (int j = Math.max(0, (int) low.y()); j <= j1; j++) {
                for (int i = Math.max(0, (int) low.x()); i <= i1; i++) {
                    int c = cells.cellOf[i + cells.nx * (j + cells.ny * k)];
                    if (c != MeltCells.NONE && cells.centreMm(c).distance(b.centre) <= r) take(c, 2 * r, b.widthRatio);
                }
            }
        }
    }

    /** The larger ball wins; of two like ones the one in the wider passage. */
    private void take(int c, double wall, double width) {
        boolean like = wall > 0.999 * wallMm[c] && wall < 1.001 * wallMm[c];
        if (like ? width > widthRatio[c] : wall > wallMm[c]) {
            wallMm[c] = Math.max(wall, wallMm[c]);
            widthRatio[c] = width;
        }
    }

    /** Corners no ball reaches take the mean of their neighbours, inward out. */
    private void fillRest(MeltCells cells) {
        boolean found = true;
        while (found) {
            found = false;
            double[] next = wallMm.clone();
            for (int c = 0; c < wallMm.length; c++) {
                if (wallMm[c] > 0) continue;
                double sum = 0, width = 0;
                int n = 0;
                for (int s = 0; s < 6; s++) {
                    int o = cells.neighbour[6 * c + s];
                    if (o == MeltCells.NONE || !(wallMm[o] > 0)) continue;
                    sum += wallMm[o];
                    width += widthRatio[o];
                    n++;
                }
                if (n == 0) continue;
                next[c] = sum / n;
                widthRatio[c] = width / n;
                found = true;
            }
            System.arraycopy(next, 0, wallMm, 0, next.length);
        }
        for (int c = 0; c < wallMm.length; c++) {
            if (wallMm[c] > 0) continue;
            wallMm[c] = cells.cellMm;
            widthRatio[c] = 1;
        }
    }

    double median() {
        double[] sorted = wallMm.clone();
        Arrays.sort(sorted);
        return sorted[sorted.length / 2];
    }

    /** Finds the ball that belongs to a point. */
    private static final class Balls {
        private final Bvh bvh;
        private final Probe probe = new Probe();
        Vec3 centre = Vec3.ZERO;
        double radius;
        double widthRatio;

        Balls(Bvh bvh) {
            this.bvh = bvh;
        }

        boolean from(Vec3 p) {
            int f = bvh.nearest(probe, p.x(), p.y(), p.z(), Double.POSITIVE_INFINITY);
            if (f == Bvh.NONE) return false;
            Vec3 q = probe.nearestPoint(), normal = bvh.mesh().doubleAreaNormal(f);
            if (!(normal.length() > 0)) return false;
            Vec3 inward = normal.unit().negate();
            if (bvh.firstHit(probe.aim(q, inward), 0, Double.POSITIVE_INFINITY, f) == Bvh.NONE) return false;
            double chord = probe.t();
            if (!(chord > 0)) return false;
            centre = q.plus(inward.times(chord / 2));
            bvh.nearest(probe, centre.x(), centre.y(), centre.z(), Double.POSITIVE_INFINITY);
            radius = probe.nearestPoint().distance(centre);
            if (!(radius > 0.05 * chord) || centre.distance(p) > radius) return false;
            widthRatio = Math.max(1, narrowestAcross(inward) / (2 * radius));
            return true;
        }

        /** Shortest way from wall to wall through the ball's centre, square to the chord it was found on. */
        private double narrowestAcross(Vec3 chord) {
            Vec3 u = chord.across(), v = chord.cross(u);
            double least = Double.POSITIVE_INFINITY;
            for (int k = 0; k < WAYS_ACROSS; k++) {
                double angle = Math.PI * k / WAYS_ACROSS;
                Vec3 d = u.times(Math.cos(angle)).plus(v.times(Math.sin(angle)));
                least = Math.min(least, toWall(d) + toWall(d.negate()));
            }
            return least;
        }

        private double toWall(Vec3 d) {
            return bvh.firstHit(probe.aim(centre, d), 0, Double.POSITIVE_INFINITY, Bvh.NONE) == Bvh.NONE
                    ? 0
                    : probe.t();
        }
    }
}
