package shotwright.machining.proof;

import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import shotwright.geom.Box3;
import shotwright.geom.Vec3;
import shotwright.machining.path.Drilling;
import shotwright.machining.path.Feed;
import shotwright.machining.path.Move;
import shotwright.machining.path.Operation;
import shotwright.machining.path.Program;
import shotwright.machining.path.Rapid;
import shotwright.machining.path.Step;
import shotwright.measure.Quantity;
import shotwright.mill.Mill;

/** What a control runs without a word though the machine or the cutter cannot: speeds, feeds, travel, changes of cutter down in the vise. */
final class MillRules {
    /** A rapid rises or goes across; both at once beyond this is a slant, mm. */
    private static final double SLANT_MM = 1e-4;

    private final ProofTask task;

    MillRules(ProofTask task) {
        this.task = task;
    }

    List<Fault> check() {
        List<Fault> faults = new ArrayList<>();
        Program program = task.program();
        double topMm = program.stock().max().z();
        int tool = -1;
        for (int o = 0; o < program.operations().size(); o++) {
            Operation op = program.operations().get(o);
            if (tool >= 0 && op.toolNumber() != tool && op.from().z() < topMm)
                faults.add(Fault.of(
                        Fault.Kind.LOW_CHANGE, o, 0, op.from(), "", op.from().z(), topMm));
            tool = op.toolNumber();
            moves(o, op, topMm, faults);
        }
        Mill mill = task.mill();
        if (mill != null) travel(program, mill, faults);
        return faults;
    }

    private void moves(int o, Operation op, double topMm, List<Fault> faults) {
        boolean slanted = false, speed = false, feed = false;
        for (int m = 0; m < op.moves().size(); m++) {
            Move move = op.moves().get(m);
            boolean cuts = move instanceof Feed || move instanceof Drilling;
            if (cuts && !speed) {
                Fault f = speed(o, m, op, move.to());
                if (f != null) faults.add(f);
                speed = true;
            }
            Mill mill = task.mill();
            double feedMmPerMin = move instanceof Feed f ? f.feedMmPerMin() : 0;
            if (mill != null && !feed && feedMmPerMin > mill.maxFeedMmPerMin().value() * (1 + 1e-6)) {
                double most = mill.maxFeedMmPerMin().value();
                faults.add(Fault.of(Fault.Kind.FEED, o, m, move.to(), "", feedMmPerMin, most));
                feed = true;
            }
            for (Step s : move.steps()) {
                if (slanted || !(s instanceof Rapid) || !slants(s, topMm)) continue;
                faults.add(Fault.of(
                        Fault.Kind.SLANTED_RAPID,
                        o,
                        m,
                        s.to(),
                        "",
                        s.box().min().z(),
                        topMm));
                slanted = true;
            }
        }
    }

    private static boolean slants(Step s, double topMm) {
        double acrossMm = s.from().xy().distance(s.to().xy());
        return acrossMm > SLANT_MM
                && Math.abs(s.from().z() - s.to().z()) > SLANT_MM
                && s.box().min().z() < topMm;
    }

    private @Nullable Fault speed(int o, int m, Operation op, Vec3 at) {
        double rpm = op.speedRpm();
        Mill mill = task.mill();
        if (rpm == 0)
            return Fault.of(
                    Fault.Kind.SPINDLE_STANDS,
                    o,
                    m,
                    at,
                    "",
                    0,
                    mill == null ? 1 : mill.minRpm().value());
        Quantity cutterMost = task.cutter(op).cutter().maxRpm();
        if (cutterMost != null && rpm > cutterMost.value())
            return Fault.of(Fault.Kind.SPEED, o, m, at, "the cutter's highest", rpm, cutterMost.value());
        if (mill != null && rpm > mill.maxRpm().value())
            return Fault.of(
                    Fault.Kind.SPEED,
                    o,
                    m,
                    at,
                    "the mill's highest",
                    rpm,
                    mill.maxRpm().value());
        if (mill != null && rpm < mill.minRpm().value())
            return Fault.of(
                    Fault.Kind.SPEED,
                    o,
                    m,
                    at,
                    "the mill's lowest",
                    rpm,
                    mill.minRpm().value());
        return null;
    }

    /** The ways from the first cut on: where the spindle stood before is not the program's. */
    private static void travel(Program program, Mill mill, List<Fault> faults) {
        Box3 box = null;
        for (Operation op : program.operations()) {
            for (Move m : op.moves()) {
                boolean cuts = m instanceof Feed || m instanceof Drilling;
                if (box != null) box = box.join(m.box());
                else if (cuts) box = m.box();
            }
        }
        if (box == null) return;
        axis(program, "X", box.size().x(), mill.travelXMm().value(), faults);
        axis(program, "Y", box.size().y(), mill.travelYMm().value(), faults);
        axis(
                program,
                "Z",
                program.clearanceZMm() - box.min().z(),
                mill.travelZMm().value(),
                faults);
    }

    private static void axis(Program program, String axis, double wayMm, double travelMm, List<Fault> faults) {
        if (wayMm <= travelMm) return;
        int worstOperation = 0, worstMove = 0;
        double farthest = -1;
        Vec3 at = Vec3.ZERO, middle = program.stock().centre();
        for (int o = 0; o < program.operations().size(); o++) {
            List<Move> moves = program.operations().get(o).moves();
            for (int m = 0; m < moves.size(); m++) {
                Vec3 to = moves.get(m).to(), off = to.minus(middle);
                double far = Math.abs(axis.equals("X") ? off.x() : axis.equals("Y") ? off.y() : off.z());
                if (far <= farthest) continue;
                farthest = far;
                worstOperation = o;
                worstMove = m;
                at = to;
            }
        }
        faults.add(Fault.of(Fault.Kind.TRAVEL, worstOperation, worstMove, at, axis, wayMm, travelMm));
    }
}
