package shotwright.machining.gcode;

import java.util.List;
import org.jspecify.annotations.Nullable;
import shotwright.geom.Box3;

/**
 * Reads programs: the words our own writer uses and the usual ones beyond. It knows what every word it takes does to the cutter; anything else
 * is refused with its line, never skipped.
 *
 * <p>The control is taken to start with millimetres, absolute places, the spindle standing and the tip at the middle of x and y high above the
 * stock. Whatever follows the end of the program is refused too, because some controls run it.
 */
public final class GcodeReader {
    /** The most lines of a file. */
    private static final int MOST_LINES = 5_000_000;

    private final Dialect.DwellUnit dwellUnit;

    /** @param dwellUnit what the P word of a dwell counts */
    public GcodeReader(Dialect.DwellUnit dwellUnit) {
        this.dwellUnit = dwellUnit;
    }

    /**
     * Reads a program.
     *
     * @param file name of the file, for messages
     * @param text its lines
     * @param stock the block as clamped, in the frame of the program
     * @param topZMm where {@code G53 G0 Z0} takes the tip, in the frame of the program; above the stock
     * @throws GcodeException naming the line that cannot be used
     */
    public Listing read(String file, String text, Box3 stock, double topZMm) {
        if (!(topZMm > stock.max().z()))
            throw new IllegalArgumentException("topZMm: " + topZMm + " is not above the stock "
                    + stock.max().z());
        Control control = new Control(dwellUnit, topZMm);
        List<String> lines = text.lines().limit(MOST_LINES + 1L).toList();
        if (lines.size() > MOST_LINES)
            throw new GcodeException(file, MOST_LINES, "", "the file has more lines", "share it among files");
        boolean percent = false, closed = false;
        Block.@Nullable Place last = null;
        for (int i = 0; i < lines.size() && !closed; i++) {
            String line = lines.get(i).strip();
            Block.Place at = new Block.Place(file, i + 1, line);
            if (line.isEmpty()) continue;
            if (line.equals("%")) {
                if (!percent && last != null && !control.ended())
                    throw at.fault(
                            "a per-cent sign stands inside the program", "put it on the first and the last line");
                closed = percent;
                percent = true;
                continue;
            }
            if (control.ended()) {
                boolean words = !Block.scan(at).words().isEmpty();
                if (words) throw at.fault("words stand behind the end of the program", "take them out");
                continue;
            }
            last = at;
            control.run(Block.scan(at));
        }
        Block.Place end = last == null ? new Block.Place(file, 1, "") : last;
        if (!control.ended()) throw end.fault("the program does not end", "put M30 on its last line");
        return control.listing(end, stock);
    }
}
