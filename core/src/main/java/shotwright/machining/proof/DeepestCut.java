package shotwright.machining.proof;

import java.util.Arrays;
import java.util.List;
import shotwright.cutter.CutterProfile;
import shotwright.geom.Box3;
import shotwright.geom.Vec3;
import shotwright.machining.path.Move;
import shotwright.machining.path.Operation;
import shotwright.machining.path.Step;

/** Which operation and which of its moves cut deepest over given places: the program once more, over these places alone. */
final class DeepestCut {
    private final List<Vec3> places;
    private final float[] lowest;
    private final int[] operation;
    private final int[] move;

    DeepestCut(ProofTask task, List<Vec3> places) {
        this.places = places;
        lowest = new float[places.size()];
        operation = new int[places.size()];
        move = new int[places.size()];
        Arrays.fill(lowest, Float.MAX_VALUE);
        Arrays.fill(operation, -1);
        if (places.isEmpty()) return;
        List<Operation> operations = task.program().operations();
        for (int o = 0; o < operations.size(); o++) {
            CutterProfile profile = task.cutter(operations.get(o)).profile();
            List<Move> moves = operations.get(o).moves();
            for (int m = 0; m < moves.size(); m++) for (Step s : moves.get(m).steps()) look(s, profile, o, m);
        }
    }

    private void look(Step step, CutterProfile profile, int o, int m) {
        Box3 box = step.box();
        double r = profile.largestRadiusMm();
        List<Sweep> sweeps = null;
        for (int p = 0; p < places.size(); p++) {
            Vec3 at = places.get(p);
            if (box.min().z() >= lowest[p]
                    || at.x() < box.min().x() - r
                    || at.x() > box.max().x() + r
                    || at.y() < box.min().y() - r
                    || at.y() > box.max().y() + r) continue;
            if (sweeps == null) sweeps = Sweep.of(step, profile, 0);
            for (Sweep s : sweeps) {
                float z = s.over(at.x(), at.y());
                if (z >= lowest[p]) continue;
                lowest[p] = z;
                operation[p] = o;
                move[p] = m;
            }
        }
    }

    /** Operation, from 0, that cut deepest over a place; −1 when none did. */
    int operation(int place) {
        return operation[place];
    }

    int move(int place) {
        return move[place];
    }
}
