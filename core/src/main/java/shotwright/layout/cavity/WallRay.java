package shotwright.layout.cavity;

import shotwright.geom.Vec3;
import shotwright.mesh.Bvh;
import shotwright.mesh.Probe;

/** Pieces of plastic along a ray. Not for several threads at once. */
public final class WallRay {
    private final Bvh tree;
    private final Probe probe = new Probe();

    public WallRay(Bvh tree) {
        this.tree = tree;
    }

    /**
     * One piece of plastic on the ray.
     *
     * @param fromMm where the ray enters it, along the ray
     * @param toMm where it leaves it
     */
    public record Piece(double fromMm, double toMm) {
        public double lengthMm() {
            return toMm - fromMm;
        }
    }

    /**
     * The plastic along a ray of unit direction, up to a length; a ray that starts inside gives a piece from 0. Pieces are written into the
     * array as from, to, from, to …; answers how many pieces.
     */
    public int pieces(Vec3 from, Vec3 unitDirection, double lengthMm, double[] into) {
        probe.aim(from, unitDirection);
        int hits = tree.allHits(probe, 0, lengthMm, Bvh.NONE);
        int n = 0;
        double open = Double.NaN;
        for (int i = 0; i < hits && n < into.length / 2; i++) {
            boolean enters = tree.mesh().doubleAreaNormal(probe.hitFacet(i)).dot(unitDirection) < 0;
            double t = probe.hitT(i);
            if (enters) {
                if (Double.isNaN(open)) open = t;
            } else if (!Double.isNaN(open) || n == 0) {
                double start = Double.isNaN(open) ? 0 : open;
                if (t > start) {
                    into[2 * n] = start;
                    into[2 * n + 1] = t;
                    n++;
                }
                open = Double.NaN;
            }
        }
        return n;
    }

    /** The first piece along the ray, or a piece of no length at infinity when there is none. */
    public Piece first(Vec3 from, Vec3 unitDirection, double lengthMm) {
        double[] two = new double[2];
        return pieces(from, unitDirection, lengthMm, two) == 0
                ? new Piece(Double.POSITIVE_INFINITY, Double.POSITIVE_INFINITY)
                : new Piece(two[0], two[1]);
    }
}
