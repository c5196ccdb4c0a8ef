package shotwright.fill;

import java.util.ArrayList;
import java.util.List;
import shotwright.geom.Box3;
import shotwright.geom.Vec3;
import shotwright.mesh.Bvh;
import shotwright.mesh.Probe;
import shotwright.progress.Progress;

/**
 * The cavity cut into cubes: which cubes hold melt, what share of each, and how far the faces between them are open. Shares and openings are
 * measured along bundles of rays with exact crossing heights, so that a wall lying at an angle keeps its volume and its passage. Slivers
 * below a twentieth of a cube are given to a neighbour. Two cubes with a gap of metal between their centres are not neighbours.
 */
final class MeltCells {
    static final int NONE = -1;
    /** A cube with more than this share of plastic counts. */
    private static final double COUNTS_FROM = 0.05;
    /** Rays across a cube, each way. */
    private static final int RAYS = 3;

    final double cellMm;
    final Vec3 originMm;
    final int nx, ny, nz;
    /** Dense grid → cell number, or NONE. */
    final int[] cellOf;
    /** Cell → dense grid index. */
    final int[] gridOf;
    /** Share of the cube that is plastic; above 1 where a neighbour's rest was added. */
    final double[] share;
    /** Six neighbours per cell, −x +x −y +y −z +z, NONE where melt cannot pass. */
    final int[] neighbour;
    /** How far the face to each neighbour is open, 0 to 1. */
    final float[] opening;
    /** Share of the part's volume that found no cell. */
    final double lostShare;

    private MeltCells(Builder b) {
        cellMm = b.h;
        originMm = b.origin;
        nx = b.nx;
        ny = b.ny;
        nz = b.nz;
        cellOf = b.cellOf;
        gridOf = b.gridOf;
        share = b.share;
        neighbour = b.neighbour;
        opening = b.opening;
        lostShare = b.lostShare;
    }

    int count() {
        return gridOf.length;
    }

    int column(int cell) {
        return gridOf[cell] % (nx * ny);
    }

    Vec3 centreMm(int cell) {
        int g = gridOf[cell], i = g % nx, j = g / nx % ny, k = g / (nx * ny);
        return originMm.plus(new Vec3((i + 0.5) * cellMm, (j + 0.5) * cellMm, (k + 0.5) * cellMm));
    }

    /** Cells melt can pass to directly or across one neighbour's edge. */
    List<Integer> around(int cell) {
        List<Integer> out = new ArrayList<>();
        for (int s = 0; s < 6; s++) {
            int o = neighbour[6 * cell + s];
            if (o == NONE) continue;
            out.add(o);
            for (int t = 0; t < 6; t++) {
                int aside = t / 2 == s / 2 ? NONE : neighbour[6 * o + t];
                if (aside != NONE) out.add(aside);
            }
        }
        return out;
    }

    /** The cell whose cube holds a point, or NONE. */
    int at(Vec3 p) {
        Vec3 d = p.minus(originMm).times(1 / cellMm);
        int i = (int) Math.floor(d.x()), j = (int) Math.floor(d.y()), k = (int) Math.floor(d.z());
        if (i < 0 || j < 0 || k < 0 || i >= nx || j >= ny || k >= nz) return NONE;
        return cellOf[i + nx * (j + ny * k)];
    }

    static MeltCells of(Bvh bvh, double cellMm, Progress progress) {
        Builder b = new Builder(bvh, cellMm);
        b.measure(progress);
        b.number();
        b.giveRest();
        b.link(progress);
        return new MeltCells(b);
    }

    private static final class Builder {
        final Bvh bvh;
        final double h;
        final Vec3 origin;
        final int nx, ny, nz;
        final float[] dense;
        final float[] openX;
        final float[] openY;
        final float[] openZ;
        final Probe probe = new Probe();
        int[] cellOf = {};
        int[] gridOf = {};
        double[] share = {};
        int[] neighbour = {};
        float[] opening = {};
        double lostShare;

        Builder(Bvh bvh, double h) {
            this.bvh = bvh;
            this.h = h;
            Box3 box = bvh.mesh().box();
            Vec3 size = box.size();
            nx = cells(size.x());
            ny = cells(size.y());
            nz = cells(size.z());
            // centred, then moved off faces that lie on round numbers by an odd share of a cell
            Vec3 span = new Vec3(nx, ny, nz).times(h / 2);
            origin = box.centre().minus(span).plus(new Vec3(1.7e-5, 2.3e-5, 1.1e-5).times(h));
            dense = new float[nx * ny * nz];
            openX = new float[dense.length];
            openY = new float[dense.length];
            openZ = new float[dense.length];
        }

        private int cells(double size) {
            return (int) Math.ceil(size / h) + 4;
        }

        /** Rays up every column: a bundle through it for its shares, and one row along each of its two low faces for their openings. */
        void measure(Progress progress) {
            for (int j = 0; j < ny; j++) {
                progress.at("cutting the part into cells", 0.3 * j / ny);
                for (int i = 0; i < nx; i++) {
                    int column = i + nx * j;
                    for (int s = 0; s < RAYS; s++) {
                        double across = (s + 0.5) / RAYS;
                        addRay(openX, column, i, j + across, 1.0 / RAYS);
                        addRay(openY, column, i + across, j, 1.0 / RAYS);
                        for (int t = 0; t < RAYS; t++)
                            addRay(dense, column, i + across, j + (t + 0.5) / RAYS, 1.0 / (RAYS * RAYS));
                    }
                }
            }
        }

        private void addRay(float[] to, int column, double i, double j, double weight) {
            double below = origin.z() - h;
            probe.aim(origin.x() + i * h, origin.y() + j * h, below, 0, 0, 1);
            int n = bvh.allHits(probe, 0, Double.POSITIVE_INFINITY, Bvh.NONE);
            double entered = Double.NaN;
            for (int k = 0; k < n; k++) {
                boolean up = upward(k);
                double z = (below + probe.hitT(k) - origin.z()) / h;
                if (!up && Double.isNaN(entered)) entered = z;
                if (up && !Double.isNaN(entered) && (k == n - 1 || !upward(k + 1))) {
                    addInterval(to, column, entered, z, weight);
                    entered = Double.NaN;
                }
            }
        }

        private boolean upward(int hit) {
            return bvh.mesh().doubleAreaNormal(probe.hitFacet(hit)).z() > 0;
        }

        private void addInterval(float[] to, int column, double a, double b, double weight) {
            for (int k = Math.max(0, (int) a); k < nz && k < b; k++) {
                int g = column + nx * ny * k;
                double overlap = Math.min(b, k + 1) - Math.max(a, k);
                if (overlap > 0) to[g] += (float) (overlap * weight);
                if (to == dense && a < k) openZ[g] += (float) weight;
            }
        }

        void number() {
            cellOf = new int[dense.length];
            int n = 0;
            for (int g = 0; g < dense.length; g++) cellOf[g] = dense[g] >= COUNTS_FROM ? n++ : NONE;
            gridOf = new int[n];
            share = new double[n];
            for (int g = 0; g < dense.length; g++) {
                if (cellOf[g] == NONE) continue;
                gridOf[cellOf[g]] = g;
                share[cellOf[g]] = dense[g];
            }
        }

        void giveRest() {
            double lost = 0, all = 0;
            for (int g = 0; g < dense.length; g++) {
                all += dense[g];
                if (cellOf[g] != NONE || dense[g] == 0) continue;
                int best = NONE;
                for (int side = 0; side < 6; side++) {
                    int o = cellOf[step(g, side)];
                    if (o != NONE && (best == NONE || dense[gridOf[o]] > dense[gridOf[best]])) best = o;
                }
                if (best == NONE) lost += dense[g];
                else share[best] += dense[g];
            }
            lostShare = all > 0 ? lost / all : 0;
        }

        /** The rim of the grid is empty by a cell, so stepping never leaves it from a cube with plastic. */
        private int step(int g, int side) {
            int stride = side < 2 ? 1 : side < 4 ? nx : nx * ny;
            return g + (side % 2 == 0 ? -stride : stride);
        }

        void link(Progress progress) {
            neighbour = new int[6 * gridOf.length];
            opening = new float[neighbour.length];
            java.util.Arrays.fill(neighbour, NONE);
            for (int c = 0; c < gridOf.length; c++) {
                if (c % 4096 == 0) progress.at("joining cells", 0.3 + 0.1 * c / gridOf.length);
                for (int side = 1; side < 6; side += 2) {
                    int g = step(gridOf[c], side), o = cellOf[g];
                    float open = side == 1 ? openX[g] : side == 3 ? openY[g] : openZ[g];
                    if (o == NONE || open <= 0.01f || metalBetween(gridOf[c], side)) continue;
                    neighbour[6 * c + side] = o;
                    neighbour[6 * o + side - 1] = c;
                    opening[6 * c + side] = open;
                    opening[6 * o + side - 1] = open;
                }
            }
        }

        /** Does the line from this cube's centre to the next leave the plastic and enter it again? */
        private boolean metalBetween(int g, int side) {
            double x = origin.x() + (g % nx + 0.5) * h, y = origin.y() + (g / nx % ny + 0.5) * h;
            double z = origin.z() + (g / (nx * ny) + 0.5) * h;
            Vec3 d = new Vec3(side == 1 ? 1 : 0, side == 3 ? 1 : 0, side == 5 ? 1 : 0);
            probe.aim(x, y, z, d.x(), d.y(), d.z());
            int n = bvh.allHits(probe, 0, h, Bvh.NONE);
            boolean left = false;
            for (int k = 0; k < n; k++) {
                boolean out = bvh.mesh().doubleAreaNormal(probe.hitFacet(k)).dot(d) > 0;
                if (out) left = true;
                else if (left) return true;
            }
            return false;
        }
    }
}
