package shotwright.fill;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import shotwright.geom.Vec3;
import shotwright.mesh.Bvh;
import shotwright.mesh.TriMesh;
import shotwright.progress.Progress;

/**
 * How melt goes through this part from one gate: its own walls, the order in which places fill, the way to the last corner with the wall and
 * the velocity along it, and how much of the gate pressure stands on the projected area. Worked out once per part and gate with melt of one
 * temperature; {@link FirstOrderFill} then walks the way with cold walls, for any resin of like power index and any fill time.
 *
 * <p>Limits: cubes of 0.4 of the wall give walls exactly and pressures within 10 % of closed forms for strips and discs (tests). Bosses
 * and ribs take part as passages of their own wall. Jetting, hesitation by freezing and compressibility are not in it.
 *
 * @see FrontMarch
 */
public final class FlowField {
    private static final double CELLS_ACROSS_WALL = 2.5;
    private static final int MOST_SLICES = 40;
    /** Cells the front moves in one step. */
    private static final double FRONT_ADVANCE = 1;
    /** Where pressure is read: beyond it the last corners take the whole flow and a press has changed to hold. */
    static final double FULL_SHARE = 0.97;

    /**
     * One piece of the way from the gate to the last corner.
     *
     * @param fromGateMm way from the gate to its far end
     * @param lengthMm its length
     * @param wallMm wall there
     * @param narrowFactor drag of narrow sides, 1 for wide walls, 0.42 for a square passage
     * @param speedPerFlowPerMm2 mean velocity (mm/s) for a flow of 1 mm³/s through the gate when the part is nearly full
     * @param arrivalShare share of the cavity filled when the front came by
     */
    public record Slice(
            double fromGateMm,
            double lengthMm,
            double wallMm,
            double narrowFactor,
            double speedPerFlowPerMm2,
            double arrivalShare) {}

    /**
     * A place that fills late with nothing filling after it around: air is caught there unless it can leave.
     *
     * @param atMm place, in the frame of the mesh
     * @param arrivalShare share of the cavity filled when the front gets there
     */
    public record LastFill(Vec3 atMm, double arrivalShare) {}

    private final MeltCells cells;
    private final double[] arrival;
    private final double[] wallMm;
    private final List<Slice> way;
    private final List<LastFill> lastFills;
    private final double meanPressureShare;
    private final double medianWallMm;
    private final double projectedAreaMm2;
    private final double reachedShare;
    private final double exponentRatio;

    private FlowField(
            MeltCells cells, LocalWalls walls, FrontMarch march, boolean[] gate, double exponent, Progress progress) {
        this.cells = cells;
        this.wallMm = walls.wallMm;
        this.exponentRatio = exponent;
        medianWallMm = walls.median();
        march.fillTo(FULL_SHARE, progress);
        WayTracer tracer = new WayTracer(cells, walls, march, gate, exponent);
        meanPressureShare = tracer.meanPressureShare();
        projectedAreaMm2 = tracer.projectedAreaMm2();
        march.fillTo(0.999, progress);
        march.finish();
        arrival = march.arrival;
        way = tracer.way(arrival, MOST_SLICES);
        lastFills = lateMaxima();
        reachedShare = march.reachableMm3() / volumeMm3();
    }

    /**
     * Follows melt through a part.
     *
     * @param mesh the part, the pull along z
     * @param gateMm where melt enters, in the frame of the mesh
     * @param gateRadiusMm radius of the patch melt enters through
     * @param exponentRatio power index n of the melt, 0.15 to 1
     * @param mostCells upper limit of cells; about 20 000 for a first answer, 60 000 for a careful one
     * @throws IllegalArgumentException when the index lies outside its range
     */
    public static FlowField of(
            TriMesh mesh, Vec3 gateMm, double gateRadiusMm, double exponentRatio, int mostCells, Progress progress) {
        return of(Bvh.of(mesh), gateMm, gateRadiusMm, exponentRatio, mostCells, progress);
    }

    /** The same for a part whose search tree is at hand. */
    public static FlowField of(
            Bvh bvh, Vec3 gateMm, double gateRadiusMm, double exponentRatio, int mostCells, Progress progress) {
        return of(Walls.of(bvh, mostCells, progress), gateMm, gateRadiusMm, exponentRatio, progress);
    }

    /** The same for a part whose walls are measured: what every resin and every gate share. */
    public static FlowField of(Walls walls, Vec3 gateMm, double gateRadiusMm, double exponentRatio, Progress progress) {
        if (!(exponentRatio >= 0.15 && exponentRatio <= 1))
            throw new IllegalArgumentException("power index: " + exponentRatio + " is not between 0.15 and 1");
        boolean[] gate = gatePatch(walls.cells, gateMm, gateRadiusMm);
        FrontMarch march = new FrontMarch(walls.cells, walls.local, gate, exponentRatio, FRONT_ADVANCE);
        return new FlowField(walls.cells, walls.local, march, gate, exponentRatio, progress.part(0.9, 1));
    }

    /** A part cut into cells with the wall at each of them; holds for every resin and every gate. */
    public static final class Walls {
        private final MeltCells cells;
        private final LocalWalls local;

        private Walls(MeltCells cells, LocalWalls local) {
            this.cells = cells;
            this.local = local;
        }

        /**
         * Measures a part.
         *
         * @throws IllegalArgumentException when the cells allowed are too few for its walls
         */
        public static Walls of(Bvh bvh, int mostCells, Progress progress) {
            MeltCells cells = MeltCells.of(bvh, cellSizeMm(bvh.mesh(), mostCells), progress);
            if (cells.count() == 0)
                throw new IllegalArgumentException("cells: no wall of the part is as thick as half a cell of "
                        + cells.cellMm + " mm; allow more cells");
            return new Walls(cells, LocalWalls.of(cells, bvh, progress));
        }
    }

    /** The mean wall over 2.5 (twice volume over surface), no more cells than allowed. */
    private static double cellSizeMm(TriMesh mesh, int mostCells) {
        var mass = shotwright.mesh.MassProperties.of(mesh);
        double meanWall = 2 * mass.volumeMm3() / mass.surfaceAreaMm2();
        return Math.max(meanWall / CELLS_ACROSS_WALL, Math.cbrt(mass.volumeMm3() / mostCells));
    }

    private static boolean[] gatePatch(MeltCells cells, Vec3 at, double radius) {
        boolean[] gate = new boolean[cells.count()];
        int nearest = 0, taken = 0;
        double least = Double.POSITIVE_INFINITY;
        for (int c = 0; c < gate.length; c++) {
            double d = cells.centreMm(c).distance(at);
            if (d < least) {
                least = d;
                nearest = c;
            }
            if (d > radius) continue;
            gate[c] = true;
            taken++;
        }
        if (taken == 0 || taken == gate.length) {
            Arrays.fill(gate, false);
            gate[nearest] = true;
        }
        return gate;
    }

    /** Places later than everything within two walls of them, latest first, no two within four walls. */
    private List<LastFill> lateMaxima() {
        List<Integer> maxima = new ArrayList<>();
        for (int c = 0; c < arrival.length; c++) {
            if (arrival[c] > 0.5 && isLatestAround(c)) maxima.add(c);
        }
        maxima.sort((a, b) -> Double.compare(arrival[b], arrival[a]));
        List<LastFill> out = new ArrayList<>();
        for (int c : maxima) {
            Vec3 p = cells.centreMm(c);
            if (out.stream().allMatch(o -> o.atMm().distance(p) > 4 * wallMm[c])) out.add(new LastFill(p, arrival[c]));
            if (out.size() == 8) break;
        }
        return List.copyOf(out);
    }

    private boolean isLatestAround(int c) {
        int reach = Math.max(1, (int) Math.round(wallMm[c] / cells.cellMm));
        int g = cells.gridOf[c], i0 = g % cells.nx, j0 = g / cells.nx % cells.ny, k0 = g / (cells.nx * cells.ny);
        for (int k = Math.max(0, k0 - reach); k <= Math.min(cells.nz - 1, k0 + reach); k++) {
            for (int j = Math.max(0, j0 - reach); j <= Math.min(cells.ny - 1, j0 + reach); j++) {
                for (int i = Math.max(0, i0 - reach); i <= Math.min(cells.nx - 1, i0 + reach); i++) {
                    int o = cells.cellOf[i + cells.nx * (j + cells.ny * k)];
                    if (o != MeltCells.NONE && arrival[o] > arrival[c]) return false;
                }
            }
        }
        return true;
    }

    /** The way to the last corner, gate first. */
    public List<Slice> way() {
        return way;
    }

    /** Its length, mm. */
    public double wayLengthMm() {
        return way.isEmpty() ? 0 : way.getLast().fromGateMm();
    }

    /** Length over wall summed along the way. */
    public double wayRatio() {
        return way.stream().mapToDouble(s -> s.lengthMm() / s.wallMm()).sum();
    }

    /** Places that fill late with nothing later around them, latest first: where air wants out. */
    public List<LastFill> lastFills() {
        return lastFills;
    }

    /** Mean pressure over the projected area against the pressure behind the gate, at the end of fill. */
    public double meanPressureShare() {
        return meanPressureShare;
    }

    /** Projected area along z as the cells see it, mm². */
    public double projectedAreaMm2() {
        return projectedAreaMm2;
    }

    /** Half of the plastic lies in walls up to this, mm. */
    public double medianWallMm() {
        return medianWallMm;
    }

    /** Volume of the part as the cells see it, mm³. */
    public double volumeMm3() {
        double v = 0;
        for (double s : cells.share) v += s;
        return v * Math.pow(cells.cellMm, 3);
    }

    /** Share of the volume melt can reach through the cells; below 1 walls thinner than half a cell cut something off. */
    public double reachedShare() {
        return reachedShare * (1 - cells.lostShare);
    }

    /** Edge of a cell, mm. */
    public double cellMm() {
        return cells.cellMm;
    }

    public int cellCount() {
        return cells.count();
    }

    /** The power index the picture was made with. */
    public double exponentRatio() {
        return exponentRatio;
    }

    /** Centre of a cell, in the frame of the mesh. */
    public Vec3 cellCentreMm(int cell) {
        return cells.centreMm(cell);
    }

    /** Share of the cavity filled when the front comes to a cell: 0 at the gate, 1 at the last corner; NaN where it never comes. */
    public double arrivalShare(int cell) {
        return arrival[cell];
    }

    /** Wall a cell lies in, mm. */
    public double wallMm(int cell) {
        return wallMm[cell];
    }

    /** The cell a point lies in, or −1. */
    public int cellAt(Vec3 pointMm) {
        return cells.at(pointMm);
    }

    /** Wall below which a share of the volume lies, mm. */
    public double wallQuantileMm(double volumeShare) {
        Integer[] order = new Integer[wallMm.length];
        Arrays.setAll(order, i -> i);
        Arrays.sort(order, (a, b) -> Double.compare(wallMm[a], wallMm[b]));
        double all = Arrays.stream(cells.share).sum(), sum = 0;
        for (int c : order) {
            sum += cells.share[c];
            if (sum >= volumeShare * all) return wallMm[c];
        }
        return wallMm[order[order.length - 1]];
    }
}
