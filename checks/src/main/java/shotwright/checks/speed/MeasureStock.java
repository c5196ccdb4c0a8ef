package shotwright.checks.speed;

import java.lang.management.ManagementFactory;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import shotwright.cutter.Cutter;
import shotwright.cutter.CutterRack;
import shotwright.cutter.Holder;
import shotwright.cutter.MountedCutter;
import shotwright.geom.Box3;
import shotwright.geom.Vec3;
import shotwright.machining.path.Coolant;
import shotwright.machining.path.Line;
import shotwright.machining.path.Move;
import shotwright.machining.path.Operation;
import shotwright.machining.path.Program;
import shotwright.machining.path.WorkOffset;
import shotwright.machining.proof.Proof;
import shotwright.machining.proof.ProofTask;
import shotwright.machining.proof.Proveout;
import shotwright.machining.proof.StockHeights;
import shotwright.progress.Progress;

/**
 * Cells of stock a second and core that programs are run against, beside what this machine can do at best in the same run: rows of floats
 * copied from memory, and rows of floats in the nearest cache each of which takes one root and one comparison. Time is processor time, so
 * neither the number of cores nor other work on them counts; the best of several rounds is told. Last, how the time grows with moves and with
 * cells.
 */
public final class MeasureStock {
    private static final int ROUNDS = 5;
    private static final int MOVES = 20_000;
    private static final double MOVE_MM = 0.3;
    private static final Box3 STOCK = new Box3(new Vec3(-30, -25, -10), new Vec3(30, 25, 0));

    private static float kept;

    private MeasureStock() {}

    public static void main(String[] args) {
        say("memory copy", copied() / 1e9, "G floats/s (read and written)");
        say("root and comparison, in cache", rooted() / 1e9, "G floats/s");
        for (String id : List.of("flat-6.0x18", "ball-6.0x25", "ball-1.0x6", "taper-2deg-tip1", "bull-6.0r1x24")) {
            var cutter = CutterRack.standard().find(id);
            if (cutter.isEmpty()) continue;
            for (boolean sloped : new boolean[] {false, true})
                say(id + (sloped ? ", sloped" : ", level"), rate(mounted(cutter.get()), sloped), "G cells/s");
        }
        MountedCutter ball = mounted(CutterRack.standard().byId("ball-6.0x25"));
        for (int moves : new int[] {MOVES / 2, MOVES, 2 * MOVES})
            say(moves + " moves, cell 0.05", bestS(ball, moves, 0.05), "s");
        for (double cell : new double[] {0.1, 0.05, 0.025})
            say(MOVES + " moves, cell " + cell, bestS(ball, MOVES, cell), "s");
    }

    private static void say(String what, double value, String unit) {
        System.out.println(String.format(Locale.ROOT, "%-34s %8.2f %s", what, value, unit));
    }

    private static MountedCutter mounted(Cutter c) {
        return new MountedCutter(c, c.reachMm().value() + 10, Holder.ER16);
    }

    private static double cpuS() {
        var system = (com.sun.management.OperatingSystemMXBean) ManagementFactory.getOperatingSystemMXBean();
        return system.getProcessCpuTime() / 1e9;
    }

    /** Short moves along a slow wave over the whole stock, level or up and down. */
    private static Program program(int moves, boolean sloped) {
        List<Move> way = new ArrayList<>();
        Vec3 at = new Vec3(0, 0, -1);
        for (int i = 0; i < moves; i++) {
            double a = 0.01 * i;
            Vec3 aim = new Vec3(24 * Math.cos(0.37 * a), 19 * Math.sin(a), sloped ? -1 - 0.5 * Math.sin(7 * a) : -1);
            double far = aim.distance(at);
            Vec3 to = far > MOVE_MM ? at.toward(aim, MOVE_MM / far) : aim;
            if (to.distance(at) < 1e-6) continue;
            way.add(new Line(at, to, 500));
            at = to;
        }
        Operation op = new Operation(1, "wave", 1, "x", 0, 9000, Coolant.OFF, way);
        return new Program("speed", WorkOffset.G54, STOCK, 20, List.of(op));
    }

    private static double rate(MountedCutter cutter, boolean sloped) {
        ProofTask task = ProofTask.of(program(MOVES, sloped), Map.of(1, cutter));
        double best = 0;
        for (int r = 0; r < ROUNDS; r++) {
            StockHeights stock = StockHeights.block(STOCK, 0.05);
            double start = cpuS();
            Proof p = Proveout.run(task, stock, Progress.SILENT);
            best = Math.max(best, p.cellCount() / (cpuS() - start) / 1e9);
        }
        return best;
    }

    private static double bestS(MountedCutter cutter, int moves, double cell) {
        ProofTask task = ProofTask.of(program(moves, true), Map.of(1, cutter));
        double best = Double.POSITIVE_INFINITY;
        for (int r = 0; r < ROUNDS; r++) {
            StockHeights stock = StockHeights.block(STOCK, cell);
            double start = cpuS();
            Proveout.run(task, stock, Progress.SILENT);
            best = Math.min(best, cpuS() - start);
        }
        return best;
    }

    private static double copied() {
        float[] from = new float[1 << 25], to = new float[1 << 25];
        double best = 0;
        for (int r = 0; r < ROUNDS; r++) {
            double start = cpuS();
            for (int k = 0; k < 8; k++) System.arraycopy(from, 0, to, 0, from.length);
            best = Math.max(best, 8.0 * from.length / (cpuS() - start));
        }
        return best;
    }

    private static double rooted() {
        float[] top = new float[1200], row = new float[1200];
        double best = 0;
        for (int r = 0; r < ROUNDS; r++) {
            double start = cpuS();
            for (int k = 0; k < 400_000; k++) root(top, row, k);
            best = Math.max(best, 400_000.0 * row.length / (cpuS() - start));
        }
        kept = top[7];
        return kept < 0 ? best : 0;
    }

    private static void root(float[] top, float[] row, float offset) {
        for (int i = 0; i < row.length; i++) row[i] = -(float) Math.sqrt(Math.abs(row[i] + offset));
        for (int i = 0; i < row.length; i++) if (row[i] < top[i]) top[i] = row[i];
    }
}
