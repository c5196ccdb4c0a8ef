package shotwright.measure;

import java.util.Arrays;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;

/**
 * Turns a sentence written in metric units into one for a shop that works in inches.
 *
 * <p>The convention every sentence keeps: a measured value is its number, one plain space and its unit, and each number carries its own
 * unit ({@code needs 34 mm, has 30 mm}). One unit may serve several numbers only in sizes ({@code 3.0 × 1.20 mm}), ranges ({@code 6 to 22
 * MPa}, {@code 0.025–0.038 mm}), tolerances ({@code 1.1 ± 0.1 mm}) and places ({@code x 10.6, y 7.4, z 9.3 mm}). A length that is part of
 * a name as sold has a no-break space before its unit, see {@link #name}, and stays as it is.
 *
 * <p>Lengths, areas and volumes turn into inches alone. Forces, pressures and temperatures are shown in both systems, inside round
 * brackets in the inch shop's alone. Differences of temperature are written in kelvin. Every number keeps about the worth its metric digits
 * had, pressures three figures.
 */
public final class InchSentence {
    private static final char NO_BREAK = '\u00a0';

    /** How a metric unit turns: {@code inch = metric · factor + offset}, with so many decimals more than the metric text. */
    private enum Unit {
        MM3("mm³", "in³", Math.pow(Units.MM_PER_IN, -3), 0, 5, false),
        CM3_PER_S("cm³/s", "in³/s", 1000 * Math.pow(Units.MM_PER_IN, -3), 0, 2, false),
        CM3("cm³", "in³", 1000 * Math.pow(Units.MM_PER_IN, -3), 0, 2, false),
        MM2("mm²", "in²", 1 / Units.MM2_PER_IN2, 0, 3, false),
        CM2("cm²", "in²", 100 / Units.MM2_PER_IN2, 0, 1, false),
        MM_PER_S("mm/s", "in/s", 1 / Units.MM_PER_IN, 0, 2, false),
        MM_PER_MIN("mm/min", "in/min", 1 / Units.MM_PER_IN, 0, 2, false),
        M_PER_MIN("m/min", "ft/min", 1000 / (12 * Units.MM_PER_IN), 0, 0, false),
        MM("mm", "in", 1 / Units.MM_PER_IN, 0, 2, false),
        UM("µm", "µin", 1000 / Units.MM_PER_IN, 0, 0, false),
        MPA("MPa", "psi", 1e6 / Units.PA_PER_PSI, 0, 0, true),
        KN("kN", "short tons", 1 / Units.KN_PER_SHORT_TON, 0, 1, true),
        N("N", "lbf", 1 / Units.N_PER_LBF, 0, 0, true),
        C("°C", "°F", 9.0 / 5, 32, 0, true),
        K("K", "°F", 9.0 / 5, 0, 0, true),
        KG("kg", "lb", 1 / 0.45359237, 0, 0, true);

        private final String metric;
        private final String inch;
        private final double factor;
        private final double offset;
        private final int moreDecimals;
        private final boolean both;

        Unit(String metric, String inch, double factor, double offset, int moreDecimals, boolean both) {
            this.metric = metric;
            this.inch = inch;
            this.factor = factor;
            this.offset = offset;
            this.moreDecimals = moreDecimals;
            this.both = both;
        }

        static Unit of(String metricSign) {
            for (Unit u : values()) {
                if (u.metric.equals(metricSign)) return u;
            }
            throw new IllegalArgumentException("unit: '" + metricSign + "' does not turn into inches");
        }

        private static String metricSigns() {
            return Arrays.stream(values()).map(u -> u.metric).collect(Collectors.joining("|"));
        }

        private static String inchSigns() {
            return Arrays.stream(values()).map(u -> u.inch).distinct().collect(Collectors.joining("|"));
        }
    }

    private static final Pattern NUMBER = Pattern.compile("[−-]?\\d+(?:\u202f\\d{3})*(?:\\.\\d+)?");
    private static final Pattern VALUE = value();
    private static final Pattern LENGTH = Pattern.compile("(?<=\\d) (?=mm(?![\\p{L}\\d]))");

    private InchSentence() {}

    /** A number or several, a plain space, a metric unit, and behind it perhaps the same value in brackets. */
    private static Pattern value() {
        String n = "Ø?" + NUMBER.pattern();
        String joined = n + "(?:(?: × | to |–| ± )" + n + ")*";
        String place = "x " + n + ", y " + n + ", z " + n;
        return Pattern.compile("(?<![\\p{L}\\d.\u202f])(?<numbers>" + place + "|" + joined + ") (?<unit>"
                + Unit.metricSigns() + ")(?![\\p{L}\\d²³/·])(?: \\((?<pair>" + joined + " (?:" + Unit.inchSigns()
                + "))\\))?");
    }

    /** The sentence with its values for an inch shop; a sentence already turned comes back unchanged. */
    public static String of(String metric) {
        Matcher m = VALUE.matcher(metric);
        StringBuilder out = new StringBuilder();
        while (m.find()) {
            Unit unit = Unit.of(m.group("unit"));
            String pair = m.group("pair");
            String inch = pair != null ? pair : turned(m.group("numbers"), unit) + " " + unit.inch;
            if ((unit.both || pair != null) && !inBrackets(metric, m.start()))
                inch += " (" + m.group("numbers") + NO_BREAK + unit.metric + ")";
            m.appendReplacement(out, Matcher.quoteReplacement(inch));
        }
        return m.appendTail(out).toString();
    }

    /** A name as sold, its lengths bound to their unit so that no sentence ever turns them. */
    public static String name(String asSold) {
        return LENGTH.matcher(asSold).replaceAll(String.valueOf(NO_BREAK));
    }

    private static String turned(String numbers, Unit unit) {
        return NUMBER.matcher(numbers).replaceAll(n -> Matcher.quoteReplacement(turnedNumber(n.group(), unit)));
    }

    private static String turnedNumber(String text, Unit unit) {
        double metric = Double.parseDouble(text.replace('−', '-').replace("\u202f", ""));
        if (metric == 0 && unit.offset == 0) return text;
        if (unit == Unit.MPA) return Digits.figures(metric * unit.factor, 3);
        int dot = text.indexOf('.');
        int decimals = (dot < 0 ? 0 : text.length() - dot - 1) + unit.moreDecimals;
        String s = Digits.fixed(metric * unit.factor + unit.offset, decimals);
        for (; decimals > 3 && s.endsWith("0"); decimals--) s = s.substring(0, s.length() - 1);
        return s;
    }

    private static boolean inBrackets(String text, int at) {
        int depth = 0;
        for (int i = 0; i < at; i++) {
            if (text.charAt(i) == '(') depth++;
            if (text.charAt(i) == ')') depth--;
        }
        return depth > 0;
    }
}
