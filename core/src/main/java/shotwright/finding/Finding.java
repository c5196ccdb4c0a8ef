package shotwright.finding;

import java.util.function.UnaryOperator;
import org.jspecify.annotations.Nullable;
import shotwright.geom.Vec3;
import shotwright.measure.Source;

/**
 * One thing a station has to say. Built with {@link #of} and the {@code with…} methods.
 *
 * @param severity how much it weighs
 * @param code short stable name for scripts, for example {@code draft-short}; never shown alone
 * @param text one plain sentence that says what will happen
 * @param atMm a place in the file's own axes, also for findings about the mold; null when there is no place
 * @param value what was measured, in {@code unit}; null when nothing was
 * @param limit what it is held against, in {@code unit}; null when there is none
 * @param unit unit of value and limit, empty when there is none
 * @param source where the limit comes from; null when there is no limit
 * @param remedy the smallest change that cures it, in a sentence; empty when nothing needs doing
 * @param sizeEffect what the remedy does to the part's size, in a sentence; empty when nothing
 * @param saves what the remedy saves, in a sentence; empty when nothing
 */
public record Finding(
        Severity severity,
        String code,
        String text,
        @Nullable Vec3 atMm,
        @Nullable Double value,
        @Nullable Double limit,
        String unit,
        @Nullable Source source,
        String remedy,
        String sizeEffect,
        String saves) {

    public Finding {
        if (!code.matches("[a-z0-9-]+"))
            throw new IllegalArgumentException("code: '" + code + "' must be lower case with dashes");
        if (text.isBlank()) throw new IllegalArgumentException("text: a finding must say something");
    }

    public static Finding of(Severity severity, String code, String text) {
        return new Finding(severity, code, text, null, null, null, "", null, "", "", "");
    }

    public static Finding stop(String code, String text) {
        return of(Severity.STOP, code, text);
    }

    public static Finding ask(String code, String text) {
        return of(Severity.ASK, code, text);
    }

    public static Finding watch(String code, String text) {
        return of(Severity.WATCH, code, text);
    }

    public static Finding note(String code, String text) {
        return of(Severity.NOTE, code, text);
    }

    /** The same in other words. */
    public Finding saying(String newText) {
        return new Finding(severity, code, newText, atMm, value, limit, unit, source, remedy, sizeEffect, saves);
    }

    public Finding at(Vec3 placeMm) {
        return new Finding(severity, code, text, placeMm, value, limit, unit, source, remedy, sizeEffect, saves);
    }

    /** The same with its place carried into other axes. */
    public Finding placed(UnaryOperator<Vec3> axes) {
        return atMm == null ? this : at(axes.apply(atMm));
    }

    /** What was measured against what, and whose limit it is. */
    public Finding measured(double newValue, double newLimit, String newUnit, Source limitSource) {
        return new Finding(
                severity, code, text, atMm, newValue, newLimit, newUnit, limitSource, remedy, sizeEffect, saves);
    }

    /** A measured value that has no limit. */
    public Finding measured(double newValue, String newUnit, Source valueSource) {
        return new Finding(severity, code, text, atMm, newValue, null, newUnit, valueSource, remedy, sizeEffect, saves);
    }

    public Finding remedy(String change) {
        return new Finding(severity, code, text, atMm, value, limit, unit, source, change, sizeEffect, saves);
    }

    public Finding remedy(String change, String newSizeEffect, String newSaves) {
        return new Finding(severity, code, text, atMm, value, limit, unit, source, change, newSizeEffect, newSaves);
    }
}
