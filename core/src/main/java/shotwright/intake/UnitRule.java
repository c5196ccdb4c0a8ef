package shotwright.intake;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import shotwright.finding.Finding;
import shotwright.geom.Vec3;
import shotwright.measure.Digits;
import shotwright.measure.LengthUnit;
import shotwright.measure.Source;

/**
 * Which unit a file's numbers are in. A unit the file states stands. For STL and OBJ, which have none, the owner's word stands; without it
 * millimetres are taken, and when the longest side is then unlikely for a part from a benchtop press (below 6 mm or above 600 mm) the
 * question goes to the owner with all readings. Only below 1 mm, where no such part exists, another unit is taken for now, and only when
 * exactly one of the common ones gives a likely size.
 */
final class UnitRule {
    static final double SMALLEST_LIKELY_MM = 6;
    static final double LARGEST_LIKELY_MM = 600;
    static final double SMALLEST_POSSIBLE_MM = 1;
    private static final List<LengthUnit> SHOWN = List.of(LengthUnit.MM, LengthUnit.CM, LengthUnit.M, LengthUnit.IN);
    private static final Source LIMIT_SOURCE =
            Source.commonPractice("parts molded on benchtop presses of 2 to 30 short tons are 6 to 600 mm long");

    private UnitRule() {}

    /**
     * The unit taken.
     *
     * @param unit the unit
     * @param reason why, in a sentence
     * @param readings the size in mm, cm, m and inch
     * @param findings what to ask or to note
     */
    record Taken(LengthUnit unit, String reason, List<UnitReading> readings, List<Finding> findings) {}

    /**
     * @param stated the unit the file states
     * @param chosen the unit the owner names
     * @param size length, width, height in the file's own numbers; null when nothing could be measured
     */
    static Taken take(@Nullable LengthUnit stated, @Nullable LengthUnit chosen, @Nullable Vec3 size) {
        List<UnitReading> readings = new ArrayList<>();
        if (size != null) for (LengthUnit u : SHOWN) readings.add(new UnitReading(u, size.times(u.mm())));
        List<Finding> findings = new ArrayList<>();
        if (stated != null) {
            if (chosen != null && chosen != stated)
                findings.add(Finding.note(
                        "unit-ignored",
                        "The file states that its numbers are " + stated.plural() + "; the unit " + chosen.symbol()
                                + " given for it was not used."));
            if (size != null && !likely(longest(size, stated)))
                findings.add(question(stated, "the file states " + stated.plural(), size, readings));
            return new Taken(stated, "The file states " + stated.plural() + ".", readings, findings);
        }
        if (chosen != null)
            return new Taken(chosen, "Taken in " + chosen.plural() + ", as you named them.", readings, findings);
        return guess(size, readings);
    }

    private static Taken guess(@Nullable Vec3 size, List<UnitReading> readings) {
        if (size == null)
            return new Taken(
                    LengthUnit.MM, "The format has no unit and nothing could be measured.", readings, List.of());
        double mm = longest(size, LengthUnit.MM);
        if (likely(mm)) {
            String reason = "The format has no unit; read as millimetres, the longest side is " + length(mm)
                    + ", a likely size for a molded part.";
            return new Taken(LengthUnit.MM, reason, readings, List.of());
        }
        LengthUnit taken = LengthUnit.MM;
        List<UnitReading> fitting =
                readings.stream().filter(r -> likely(r.longestMm())).toList();
        if (mm < SMALLEST_POSSIBLE_MM && fitting.size() == 1)
            taken = fitting.getFirst().unit();
        String reason = "The format has no unit; " + taken.plural() + " were taken for now, the longest side is then "
                + length(longest(size, taken)) + ".";
        return new Taken(taken, reason, readings, List.of(question(taken, "the format has no unit", size, readings)));
    }

    private static Finding question(LengthUnit taken, String why, Vec3 size, List<UnitReading> readings) {
        double mm = longest(size, taken);
        boolean small = longest(size, LengthUnit.MM) < SMALLEST_LIKELY_MM;
        String all = readings.stream()
                .map(r -> size(r.sizeMm()) + " if the numbers are " + r.unit().plural())
                .collect(Collectors.joining("; "));
        String text = "In which unit was this part drawn? " + capital(why) + ", and "
                + (small ? "as millimetres the part is very small" : "as millimetres the part is very large")
                + " for this trade. It is " + all + ". Everything below is worked out in " + taken.plural() + ".";
        String remedy = small
                ? "Ask the customer for one known size, then name the unit (--unit mm, cm, m or in)."
                : "Ask the customer for one known size; if the numbers are micrometres name that unit (--unit um).";
        return Finding.ask("unit-guess", text)
                .measured(mm, small ? SMALLEST_LIKELY_MM : LARGEST_LIKELY_MM, "mm", LIMIT_SOURCE)
                .remedy(remedy);
    }

    private static boolean likely(double mm) {
        return mm >= SMALLEST_LIKELY_MM && mm <= LARGEST_LIKELY_MM;
    }

    private static double longest(Vec3 size, LengthUnit unit) {
        return unit.mm() * Math.max(size.x(), Math.max(size.y(), size.z()));
    }

    /** A box in words: three sides with as many digits as help. */
    static String size(Vec3 mm) {
        return number(mm.x()) + " × " + number(mm.y()) + " × " + length(mm.z());
    }

    static String length(double mm) {
        return number(mm) + " mm";
    }

    /** Four digits, never in powers of ten for sizes a person can picture. */
    static String number(double x) {
        double a = Math.abs(x);
        if (a == 0) return "0";
        if (a < 1e-4 || a >= 1e9) return String.format(Locale.ROOT, "%.3g", x);
        int digits = Math.max(0, 3 - (int) Math.floor(Math.log10(a)));
        String s = Digits.fixed(x, digits);
        return s.contains(".") ? s.replaceAll("0+$", "").replaceAll("\\.$", "") : s;
    }

    private static String capital(String s) {
        return s.substring(0, 1).toUpperCase(Locale.ROOT) + s.substring(1);
    }
}
