package shotwright.layout.release;

import shotwright.geom.Vec3;
import shotwright.layout.Melt;
import shotwright.layout.Shrink;
import shotwright.layout.cavity.CavityShape;
import shotwright.mesh.Bvh;
import shotwright.mesh.Probe;
import shotwright.mesh.TriMesh;
import shotwright.progress.Progress;

/**
 * How hard each half holds one part when the mold opens, N. Every steep facet is asked by a ray whether metal between plastic lies in front
 * of it (a core, which the shrinking part grips) or open metal (a cavity wall, from which it shrinks away and only clings). Grip by the
 * closed-core formula, draft taken off, no more pressure than the free shrink can give. An outer wall grips all cores and ribs inside it as
 * one; a wall between two cores grips only the one it bends round, with half its thickness. Estimates, good to a factor of two.
 *
 * @param shrinkAN grip of half A's cores
 * @param shrinkBN grip of half B's cores
 * @param clingAN clinging to half A's walls
 * @param clingBN clinging to half B's walls
 * @param vacuumAN air pressure on half A's closed cores
 * @param vacuumBN air pressure on half B's closed cores
 * @param coreAreaMm2 steep area that grips cores, both halves
 */
public record Grip(
        double shrinkAN,
        double shrinkBN,
        double clingAN,
        double clingBN,
        double vacuumAN,
        double vacuumBN,
        double coreAreaMm2) {
    /** Clinging of smooth plastic to a milled wall: 1 N/cm² polished, three times that as milled (common practice). */
    public static final double CLING_MPA = 0.03;

    private static final double STEEPEST_SIN = 0.5;
    private static final int MOST_FACETS = 30_000;
    private static final double NARROWEST_MM = 1;

    /** All that holds the part in half A. */
    public double inAN() {
        return shrinkAN + clingAN + vacuumAN;
    }

    /** All that holds the part in half B. */
    public double inBN() {
        return shrinkBN + clingBN + vacuumBN;
    }

    /** Share of the shrink that has happened when the part comes out: by the temperature it has lost since it stopped flowing. */
    public static double shrinkAtEjectionShare(Melt melt, double wallMm) {
        double all = Shrink.fromRangeShare(melt.lowShrinkShare(), melt.highShrinkShare(), wallMm, melt.crystalline());
        return all * Math.clamp((melt.noFlowC() - melt.ejectC()) / (melt.noFlowC() - 23), 0.1, 1);
    }

    /** Measures one cavity; on very fine meshes a regular sample of the facets stands for all. */
    public static Grip of(CavityShape shape, Melt melt, double wallMm, Progress progress) {
        return new Measure(shape, melt, wallMm).run(progress);
    }

    private static final class Measure {
        private final CavityShape shape;
        private final TriMesh mesh;
        private final Melt melt;
        private final double wallMm;
        private final double strainMpa;
        private final Probe probe = new Probe();
        private final double start;
        private final double[] shrink = new double[2];
        private final double[] cling = new double[2];
        private final double[] closedArea = new double[2];
        private double coreArea;

        Measure(CavityShape shape, Melt melt, double wallMm) {
            this.shape = shape;
            this.mesh = shape.mesh();
            this.melt = melt;
            this.wallMm = wallMm;
            this.strainMpa = melt.modulusMpa() * shrinkAtEjectionShare(melt, wallMm);
            this.start = 1e-5 * shape.box().diagonal();
        }

        Grip run(Progress progress) {
            int stride = 1 + mesh.facetCount() / MOST_FACETS;
            for (int f = 0; f < mesh.facetCount(); f += stride) {
                if (f % 4096 < stride) progress.at("weighing the grip of the halves", f / (double) mesh.facetCount());
                Vec3 twice = mesh.doubleAreaNormal(f);
                double area = twice.length() / 2 * stride;
                if (area > 0) weigh(f, twice.unit(), area);
            }
            boolean vented = !shape.shadow().holes().isEmpty();
            double air = vented ? 0 : CoreGrip.ATMOSPHERE_MPA;
            return new Grip(
                    shrink[0], shrink[1], cling[0], cling[1], air * closedArea[0], air * closedArea[1], coreArea);
        }

        private void weigh(int f, Vec3 n, double area) {
            int half = Math.abs(n.z()) > 0.002
                    ? (n.z() > 0 ? 0 : 1)
                    : mesh.centroid(f).z() > 0 ? 0 : 1;
            if (Math.abs(n.z()) > STEEPEST_SIN) {
                if (Math.abs(n.z()) > 0.7 && closedIn(f, n)) closedArea[half] += area * Math.abs(n.z());
                return;
            }
            Vec3 flat = new Vec3(n.x(), n.y(), 0).unit();
            double draft = Math.toDegrees(Math.asin(Math.abs(n.z())));
            double factor = CoreGrip.draftFactor(melt.frictionRatio(), draft);
            double gap = ray(mesh.centroid(f), flat, f);
            if (Double.isInfinite(gap)) {
                cling[half] += CLING_MPA * area * factor / melt.frictionRatio();
                return;
            }
            Vec3 at = mesh.centroid(f);
            double behind = ray(at, flat.negate(), f);
            boolean outside = Double.isInfinite(ray(at.minus(flat.times(behind + 2 * start)), flat.negate(), f));
            double wall = Math.min(behind, 3 * wallMm) / (outside ? 1 : 2);
            double width = outside ? last(at, flat, f) : gap;
            if (!outside && !hollow(at, flat, gap, f)) {
                cling[half] += CLING_MPA * area * factor / melt.frictionRatio();
                return;
            }
            double thin = 2 * wall / (Math.max(width, NARROWEST_MM) * (1 - melt.poissonRatio() / 2));
            shrink[half] += factor * strainMpa * Math.min(thin, 1) * area;
            coreArea += area;
        }

        /** The wall bends round the core in front: slanting rays are shorter than the straight one. */
        private boolean hollow(Vec3 at, Vec3 flat, double gap, int f) {
            double c = Math.sqrt(0.5);
            Vec3 side = new Vec3(-flat.y(), flat.x(), 0);
            double left = ray(at, flat.plus(side).times(c), f),
                    right = ray(at, flat.minus(side).times(c), f);
            return (left + right) / 2 < gap;
        }

        /** Way to the far side of all cores and ribs: where the ray enters plastic for the last time. */
        private double last(Vec3 from, Vec3 direction, int skip) {
            probe.aim(from.plus(direction.times(start)), direction);
            int hits = shape.tree().allHits(probe, 0, Double.POSITIVE_INFINITY, skip);
            for (int i = hits - 1; i >= 0; i--) {
                if (mesh.doubleAreaNormal(probe.hitFacet(i)).dot(direction) < 0) return probe.hitT(i);
            }
            return Double.POSITIVE_INFINITY;
        }

        private double ray(Vec3 from, Vec3 direction, int skip) {
            probe.aim(from.plus(direction.times(start)), direction);
            return shape.tree().firstHit(probe, 0, Double.POSITIVE_INFINITY, skip) == Bvh.NONE
                    ? Double.POSITIVE_INFINITY
                    : probe.t();
        }

        /** Plastic all round in front of a flat facet: the end of a closed core. */
        private boolean closedIn(int f, Vec3 n) {
            Vec3 from = mesh.centroid(f).plus(new Vec3(0, 0, Math.signum(n.z()) * 100 * start));
            for (int k = 0; k < 8; k++) {
                double a = k * Math.PI / 4 + 0.1;
                probe.aim(from, new Vec3(Math.cos(a), Math.sin(a), 0));
                if (shape.tree().firstHit(probe, 0, Double.POSITIVE_INFINITY, f) == Bvh.NONE) return false;
            }
            return true;
        }
    }
}
