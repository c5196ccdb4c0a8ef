package shotwright.drawing;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

/**
 * One axis of a plot.
 *
 * @param title what is measured and its unit
 * @param from least value shown
 * @param to greatest value shown
 * @param logarithmic equal steps for equal factors
 */
public record Axis(String title, double from, double to, boolean logarithmic) {
    public Axis {
        if (!(from < to)) throw new IllegalArgumentException("axis: " + from + " to " + to + " does not rise");
        if (logarithmic && from <= 0)
            throw new IllegalArgumentException("axis: a logarithmic axis cannot start at " + from);
    }

    /** From zero, or below it when the values are, to a round value above the greatest. */
    public static Axis fromZero(String title, double least, double greatest) {
        double to = greatest > 0 ? greatest : 1, step = step(to - Math.min(0, least), 8);
        double from = least < 0 ? Math.floor(least / step) * step : 0;
        return new Axis(title, from, Math.ceil(to / step * 0.9999) * step, false);
    }

    /** Between round values that hold the data. */
    public static Axis around(String title, double least, double greatest) {
        double span = greatest > least ? greatest - least : Math.max(1, Math.abs(least) * 0.1), step = step(span, 5);
        return new Axis(title, Math.floor(least / step) * step, Math.ceil((least + span) / step) * step, false);
    }

    /** Logarithmic between two values. */
    public static Axis factors(String title, double from, double to) {
        return new Axis(title, from, to, true);
    }

    /** Share of the way along the axis, not clamped. */
    double share(double v) {
        return logarithmic ? Math.log(v / from) / Math.log(to / from) : (v - from) / (to - from);
    }

    /** Round values to be written, at most about {@code most}. */
    List<Double> ticks(int most) {
        List<Double> out = new ArrayList<>();
        if (!logarithmic) {
            double step = step(to - from, most);
            for (double k = Math.ceil(from / step - 1e-9); k * step <= to + 1e-9 * step; k++) out.add(k * step);
            return out;
        }
        for (double ten = Math.pow(10, Math.floor(Math.log10(from))); ten <= to; ten *= 10) {
            for (double f : new double[] {1, 2, 5}) {
                double v = f * ten;
                if (v >= from * 0.9999 && v <= to * 1.0001) out.add(v);
            }
        }
        return out;
    }

    /** A tick's figure among at most six. */
    String figure(double v) {
        return figure(v, 6);
    }

    /** A tick's figure among at most so many, with as many decimals as their steps have. */
    String figure(double v, int most) {
        double step = logarithmic ? Math.abs(v) : step(to - from, most);
        int decimals = (int) Math.clamp(Math.ceil(-Math.log10(Math.max(step, 1e-12)) - 1e-9), 0, 6);
        if (!logarithmic && Math.abs(step * Math.pow(10, decimals) - Math.rint(step * Math.pow(10, decimals))) > 1e-6)
            decimals++;
        double clean = v == 0 ? 0 : v;
        String s = String.format(Locale.ROOT, "%." + decimals + "f", clean).replace('-', '−');
        return thousands(s);
    }

    private static String thousands(String s) {
        int dot = s.indexOf('.'), end = dot < 0 ? s.length() : dot, first = s.startsWith("−") ? 1 : 0;
        if (end - first < 5) return s;
        StringBuilder b = new StringBuilder(s);
        for (int i = end - 3; i > first; i -= 3) b.insert(i, '\u00a0');
        return b.toString();
    }

    private static double step(double span, int most) {
        double raw = span / Math.max(1, most), ten = Math.pow(10, Math.floor(Math.log10(raw))), f = raw / ten;
        return (f <= 1.0001 ? 1 : f <= 2.0001 ? 2 : f <= 2.5001 ? 2.5 : f <= 5.0001 ? 5 : 10) * ten;
    }
}
