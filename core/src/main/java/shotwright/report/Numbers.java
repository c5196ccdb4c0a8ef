package shotwright.report;

import java.util.Locale;
import shotwright.geom.Vec3;
import shotwright.measure.Band;
import shotwright.measure.Digits;
import shotwright.measure.InchSentence;
import shotwright.measure.Units;

/**
 * Sets numbers as they stand on a page: rounded to what they are worth, with unit, in the shop's unit first. For inch shops the metric value
 * in brackets has a no-break space before its unit, so that {@link #sentence} leaves it alone.
 */
public final class Numbers {
    private final boolean inch;

    private Numbers(boolean inch) {
        this.inch = inch;
    }

    /** Millimetres first. */
    public static Numbers metric() {
        return new Numbers(false);
    }

    /** Inches first. */
    public static Numbers inch() {
        return new Numbers(true);
    }

    /** The shop's choice: {@code "in"} or anything else for millimetres. */
    public static Numbers of(String lengthsIn) {
        return new Numbers(lengthsIn.equals("in"));
    }

    /** A station's sentence, which is always written in metric units, for this shop. */
    public String sentence(String metric) {
        return inch ? InchSentence.of(metric) : metric;
    }

    /** A number with so many decimals, thousands by a thin gap. */
    public static String fixed(double v, int decimals) {
        return Digits.fixed(v, decimals);
    }

    /** A number to so many significant figures, never in powers of ten. */
    public static String figures(double v, int figures) {
        return Digits.figures(v, figures);
    }

    /** A length: 0.01 mm or 0.001 in. */
    public String length(double mm) {
        return inch ? fixed(Units.mmToIn(mm), 3) + " in" : fixed(mm, 2) + " mm";
    }

    /** A fine length: 0.001 mm or 0.0001 in. */
    public String fine(double mm) {
        return inch ? fixed(Units.mmToIn(mm), 4) + " in" : fixed(mm, 3) + " mm";
    }

    /** A length with the other unit behind it. */
    public String lengthBoth(double mm) {
        String m = fixed(mm, 2) + " mm", i = fixed(Units.mmToIn(mm), 3) + " in";
        return inch ? i + behind(m) : m + " (" + i + ")";
    }

    /** A coarse length: 0.1 mm or 0.01 in. */
    public String coarse(double mm) {
        return inch ? fixed(Units.mmToIn(mm), 2) + " in" : fixed(mm, 1) + " mm";
    }

    /** Two coarse lengths across each other. */
    public String face(double wideMm, double highMm) {
        return inch
                ? fixed(Units.mmToIn(wideMm), 2) + " × " + coarse(highMm)
                : fixed(wideMm, 1) + " × " + coarse(highMm);
    }

    /** Three sizes of a box. */
    public String box(Vec3 sizeMm) {
        double k = inch ? 1 / Units.MM_PER_IN : 1;
        int d = inch ? 3 : 1;
        return fixed(sizeMm.x() * k, d) + " × " + fixed(sizeMm.y() * k, d) + " × " + fixed(sizeMm.z() * k, d)
                + (inch ? " in" : " mm");
    }

    /** A place. */
    public String place(Vec3 mm) {
        double k = inch ? 1 / Units.MM_PER_IN : 1;
        int d = inch ? 2 : 1;
        return "x " + fixed(mm.x() * k, d) + ", y " + fixed(mm.y() * k, d) + ", z " + fixed(mm.z() * k, d)
                + (inch ? " in" : " mm");
    }

    /** An area in both systems. */
    public String area(double mm2) {
        String cm = fixed(mm2 / 100, 2) + " cm²", in = fixed(Units.mm2ToIn2(mm2), 2) + " in²";
        return inch ? in + behind(cm) : cm + " (" + in + ")";
    }

    /** A small area, in the shop's unit alone. */
    private String smallArea(double mm2) {
        return inch ? figures(Units.mm2ToIn2(mm2), 2) + " in²" : figures(mm2, 2) + " mm²";
    }

    /** A volume in cubic centimetres, with cubic inches for inch shops. */
    public String volume(double mm3) {
        String cm = fixed(mm3 / 1000, 2) + " cm³";
        return inch ? fixed(mm3 / Math.pow(Units.MM_PER_IN, 3), 3) + " in³" + behind(cm) : cm;
    }

    /** A force in kilonewtons and short tons. */
    public String force(double kn) {
        String k = figures(kn, 3) + " kN", t = fixed(Units.knToShortTons(kn), 2) + " short tons";
        return inch ? t + behind(k) : k + " (" + t + ")";
    }

    /** A pressure in megapascals and pounds per square inch. */
    public String pressure(double mpa) {
        String m = figures(mpa, 2) + " MPa", p = figures(Units.mpaToPsi(mpa), 2) + " psi";
        return inch ? p + behind(m) : m + " (" + p + ")";
    }

    /** A band of pressure. */
    public String pressure(Band mpa) {
        String m = figures(mpa.low(), 2) + " to " + figures(mpa.high(), 2) + " MPa";
        String p = figures(Units.mpaToPsi(mpa.low()), 2) + " to " + figures(Units.mpaToPsi(mpa.high()), 2) + " psi";
        return inch ? p : m;
    }

    /** A temperature in both scales. */
    public String temperature(double c) {
        String m = fixed(c, 0) + " °C", f = fixed(Units.cToF(c), 0) + " °F";
        return inch ? f + behind(m) : m + " (" + f + ")";
    }

    /** A mass in grams, ounces behind for inch shops. */
    public String mass(double g) {
        return fixed(g, 2) + " g" + (inch ? " (" + fixed(Units.gToOz(g), 3) + " oz)" : "");
    }

    /** A share in per cent. */
    public static String percent(double share, int decimals) {
        return fixed(100 * share, decimals) + " %";
    }

    /** A time: seconds below two minutes, else minutes; whole ones from ten up. */
    public static String time(double s) {
        if (s < 120) return (s < 10 ? figures(s, 2) : fixed(s, 0)) + " s";
        return fixed(s / 60, s < 600 ? 1 : 0) + " min";
    }

    /** Any value with any unit, turned into inches where it is a length and the shop works in inches. */
    public String value(double v, String unit) {
        return switch (unit) {
            case "mm" -> length(v);
            case "mm²", "mm2" -> v < 50 ? smallArea(v) : area(v);
            case "°C", "C" -> temperature(v);
            case "kN" -> force(v);
            case "MPa" -> pressure(v);
            case "°", "deg" -> fixed(v, 2) + "°";
            case "share", "ratio", "1", "" -> figures(v, 3);
            default -> figures(v, 3) + " " + unit;
        };
    }

    private static String behind(String metric) {
        return " (" + metric.replace(' ', '\u00a0') + ")";
    }

    @Override
    public String toString() {
        return String.format(Locale.ROOT, "numbers in %s", inch ? "inch" : "mm");
    }
}
