package shotwright.machining.path;

import java.util.List;
import shotwright.geom.Box3;

/**
 * Everything done in one clamping.
 *
 * @param setup name of the setup, for example {@code "half A, parting face"}
 * @param workOffset offset that holds the setup's zero
 * @param stock the block as clamped, in the frame of the moves
 * @param clearanceZMm height at which the cutter crosses everything in the setup: stock, jaws, clamps
 * @param operations in order
 */
public record Program(
        String setup, WorkOffset workOffset, Box3 stock, double clearanceZMm, List<Operation> operations) {
    public Program {
        operations = List.copyOf(operations);
        if (setup.isBlank()) throw new IllegalArgumentException("setup: give the setup a name");
        if (operations.isEmpty()) throw new IllegalArgumentException("operations: the program has none");
        if (!(clearanceZMm > stock.max().z()) || !Double.isFinite(clearanceZMm))
            throw new IllegalArgumentException("clearanceZMm: " + clearanceZMm + " is not above the stock's top "
                    + stock.max().z());
    }

    /** The smallest box around the way of the tip in all operations. */
    public Box3 box() {
        Box3 box = operations.getFirst().box();
        for (Operation o : operations) box = box.join(o.box());
        return box;
    }

    /** The same setup with other operations. */
    public Program withOperations(List<Operation> others) {
        return new Program(setup, workOffset, stock, clearanceZMm, others);
    }
}
