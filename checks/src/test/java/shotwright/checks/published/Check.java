package shotwright.checks.published;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Collection;
import java.util.Locale;
import java.util.Map;
import java.util.concurrent.ConcurrentSkipListMap;

/** Compares one of our numbers with one from outside, and keeps the pair for {@code docs/EXTERNAL-CHECKS.md}. */
public final class Check {
    private static final Map<String, Row> ROWS = new ConcurrentSkipListMap<>();

    private Check() {}

    record Row(String quantity, String published, String ours, String deviation, String allowed, Published by) {}

    /**
     * Asserts that our number lies within an absolute deviation of the published one.
     *
     * @param quantity what is compared, with its inputs in short, for example {@code "centre-line cooling, LDPE 12.7 mm"}
     * @param unit unit of all three numbers, empty for pure numbers
     * @param why reason for the deviation allowed, for example {@code "printed to 0.1"}
     */
    public static void absolute(
            String quantity, double published, double ours, double allowed, String unit, String why) {
        record(
                quantity,
                published,
                ours,
                number(ours - published) + " " + unit,
                "±" + number(allowed) + " " + unit + " (" + why + ")",
                unit);
        assertThat(ours).as(quantity).isCloseTo(published, org.assertj.core.data.Offset.offset(allowed));
    }

    /** Asserts that our number lies within a relative deviation ({@code allowedShare} 0.01 is 1 %) of the published one. */
    public static void relative(
            String quantity, double published, double ours, double allowedShare, String unit, String why) {
        double dev = (ours - published) / published;
        record(
                quantity,
                published,
                ours,
                number(100 * dev) + " %",
                "±" + number(100 * allowedShare) + " % (" + why + ")",
                unit);
        assertThat(Math.abs(dev))
                .as("%s: published %s, ours %s", quantity, published, ours)
                .isLessThanOrEqualTo(allowedShare);
    }

    /** Asserts that our number lies in a published band. */
    public static void band(String quantity, double low, double high, double ours, String unit, String why) {
        row(quantity, number(low) + " … " + number(high) + " " + unit, number(ours) + " " + unit, "inside", why);
        assertThat(ours).as(quantity).isBetween(low, high);
    }

    /** Asserts a word or an exact value. */
    public static void exact(String quantity, Object published, Object ours) {
        row(quantity, String.valueOf(published), String.valueOf(ours), "none", "exact");
        assertThat(ours).as(quantity).isEqualTo(published);
    }

    /** Asserts a sign or an order that a source reports. */
    public static void trend(String statement, boolean holds) {
        row(statement, "holds", holds ? "holds" : "fails", "none", "sign only");
        assertThat(holds).as(statement).isTrue();
    }

    static Collection<Row> rows() {
        return ROWS.values();
    }

    private static void record(
            String quantity, double published, double ours, String deviation, String allowed, String unit) {
        row(quantity, number(published) + " " + unit, number(ours) + " " + unit, deviation, allowed);
    }

    private static void row(String quantity, String published, String ours, String deviation, String allowed) {
        Published by = caller();
        ROWS.put(
                by.id()[0] + "|" + quantity,
                new Row(quantity, published.strip(), ours.strip(), deviation.strip(), allowed, by));
    }

    private static Published caller() {
        return StackWalker.getInstance(StackWalker.Option.RETAIN_CLASS_REFERENCE)
                .walk(frames -> frames.map(Check::annotationOf)
                        .filter(java.util.Objects::nonNull)
                        .findFirst())
                .orElseThrow(() -> new IllegalStateException("call Check only from a method marked @Published"));
    }

    private static Published annotationOf(StackWalker.StackFrame frame) {
        try {
            return frame.getDeclaringClass()
                    .getDeclaredMethod(
                            frame.getMethodName(), frame.getMethodType().parameterArray())
                    .getAnnotation(Published.class);
        } catch (NoSuchMethodException e) {
            return null;
        }
    }

    private static String number(double v) {
        if (v == 0) return "0";
        double a = Math.abs(v);
        return a >= 1e5 || a < 1e-3
                ? String.format(Locale.ROOT, "%.4g", v)
                : new java.math.BigDecimal(v)
                        .round(new java.math.MathContext(6))
                        .stripTrailingZeros()
                        .toPlainString();
    }
}
