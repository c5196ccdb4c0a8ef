package shotwright.machining.gcode;

import shotwright.measure.LengthUnit;
import shotwright.measure.Quantity;
import shotwright.rack.Rack;

/**
 * How a control wants its programs: one file per control.
 *
 * @param id id on the rack
 * @param name name shown
 * @param unit what lengths are written in
 * @param decimals decimals of a length in that unit
 * @param lineNumberStep step of the N words; 0 for none
 * @param percentSigns whether a line with a per-cent sign stands first and last
 * @param lengthCompensation whether G43 with the cutter's number follows a change of cutter
 * @param toolChange how cutters are changed
 * @param mist whether M7 is known
 * @param flood whether M8 is known
 * @param machineRetract whether G53 G0 Z0 takes the spindle to its top
 * @param arcs whether G2 and G3 are known; else arcs become lines
 * @param arcChordMm how far those lines may leave the arc
 * @param cycles whether G73 and G81 to G83 are known; else holes are written as single moves
 * @param dwellUnit what the P word of a dwell counts
 * @param comment signs around comments
 * @param longestLine most characters in a line
 * @param following whether corners are rounded
 * @param blendMm how far they may be rounded; 0 unless following blends
 * @param end word that ends the program
 */
public record Dialect(
        String id,
        String name,
        Unit unit,
        int decimals,
        int lineNumberStep,
        boolean percentSigns,
        boolean lengthCompensation,
        ToolChange toolChange,
        boolean mist,
        boolean flood,
        boolean machineRetract,
        boolean arcs,
        Quantity arcChordMm,
        boolean cycles,
        DwellUnit dwellUnit,
        Comment comment,
        int longestLine,
        Following following,
        Quantity blendMm,
        End end)
        implements Rack.Entry {
    /** What lengths are written in. */
    public enum Unit {
        MM("G21", LengthUnit.MM),
        INCH("G20", LengthUnit.IN);

        private final String word;
        private final LengthUnit length;

        Unit(String word, LengthUnit length) {
            this.word = word;
            this.length = length;
        }

        /** The G word that says so. */
        public String word() {
            return word;
        }

        /** The unit itself. */
        public LengthUnit length() {
            return length;
        }
    }

    /** How cutters are changed. */
    public enum ToolChange {
        /** T and M6. */
        M6,
        /** T and a pause, M0: the cutter is changed by hand and touched off again. */
        PAUSE
    }

    /** What the P word of a dwell counts. */
    public enum DwellUnit {
        SECONDS,
        MILLISECONDS
    }

    /** Signs around comments. */
    public enum Comment {
        BRACKETS,
        SEMICOLON
    }

    /** Whether corners are rounded. */
    public enum Following {
        /** Nothing is said: as the control stands. */
        UNSAID,
        /** G61. */
        EXACT,
        /** G64 with P. */
        BLEND
    }

    /** Word that ends the program. */
    public enum End {
        M30,
        M2
    }

    public Dialect {
        if (decimals < 2 || decimals > 6)
            throw new IllegalArgumentException("decimals: " + decimals + " is not between 2 and 6");
        if (lineNumberStep < 0 || lineNumberStep > 100)
            throw new IllegalArgumentException("lineNumberStep: " + lineNumberStep + " is not between 0 and 100");
        if (longestLine < 60 || longestLine > 252)
            throw new IllegalArgumentException("longestLine: " + longestLine + " is not between 60 and 252");
        if (!(arcChordMm.value() > 0))
            throw new IllegalArgumentException("arcChordMm: " + arcChordMm.value() + " is not above zero");
        if ((following == Following.BLEND) != (blendMm.value() > 0))
            throw new IllegalArgumentException("blendMm: " + blendMm.value() + " does not suit following " + following);
    }

    /** The same control in another unit; an inch needs one decimal more than a millimetre. */
    public Dialect in(Unit other) {
        if (other == unit) return this;
        int more = other == Unit.INCH ? decimals + 1 : decimals - 1;
        return new Dialect(
                id,
                name,
                other,
                more,
                lineNumberStep,
                percentSigns,
                lengthCompensation,
                toolChange,
                mist,
                flood,
                machineRetract,
                arcs,
                arcChordMm,
                cycles,
                dwellUnit,
                comment,
                longestLine,
                following,
                blendMm,
                end);
    }

    /** Millimetres in the last digit of a length. */
    public double digitMm() {
        return unit.length().mm() / Math.pow(10, decimals);
    }
}
