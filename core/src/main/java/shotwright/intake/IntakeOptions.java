package shotwright.intake;

import java.util.Set;
import org.jspecify.annotations.Nullable;
import shotwright.measure.LengthUnit;

/**
 * The owner's choices when a part file is read.
 *
 * @param unit the unit of a file that states none; null to take the likely one
 * @param mends repairs that may be made
 * @param body number of the body to take when a file holds several, 1 = the largest; null to take the largest and ask
 * @param limits what the file may cost
 */
public record IntakeOptions(
        @Nullable LengthUnit unit,
        Set<Mend> mends,
        @Nullable Integer body,
        Limits limits) {
    public IntakeOptions {
        mends = Set.copyOf(mends);
        if (body != null && body < 1)
            throw new IllegalArgumentException("body: " + body + ", bodies are numbered from 1");
    }

    /** Nothing chosen. */
    public static IntakeOptions usual() {
        return new IntakeOptions(null, Set.of(), null, Limits.USUAL);
    }

    public IntakeOptions withUnit(LengthUnit newUnit) {
        return new IntakeOptions(newUnit, mends, body, limits);
    }

    public IntakeOptions withMends(Mend... newMends) {
        return new IntakeOptions(unit, Set.of(newMends), body, limits);
    }

    public IntakeOptions withBody(int number) {
        return new IntakeOptions(unit, mends, number, limits);
    }

    public IntakeOptions withLimits(Limits newLimits) {
        return new IntakeOptions(unit, mends, body, newLimits);
    }
}
