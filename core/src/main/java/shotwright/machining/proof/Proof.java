package shotwright.machining.proof;

import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * What running a program against its stock showed.
 *
 * @param stock what is left
 * @param faults every fault, in the order of the program; of each kind the worst in each place
 * @param leftover the half against what is left; null when no half was given
 * @param removedMm3 metal taken
 * @param cellCount cells looked at
 */
public record Proof(
        StockHeights stock, List<Fault> faults, @Nullable Leftover leftover, double removedMm3, long cellCount) {
    public Proof {
        faults = List.copyOf(faults);
    }

    /** True when nothing stands against running it. */
    public boolean isClean() {
        return faults.isEmpty();
    }
}
