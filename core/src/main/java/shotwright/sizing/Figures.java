package shotwright.sizing;

import shotwright.measure.Digits;
import shotwright.measure.Units;

/** Numbers as the station's sentences show them: no more digits than the estimate is worth, clamp and area in both systems. */
final class Figures {
    private Figures() {}

    static String kn(double kn) {
        return number(kn) + " kN (" + number(Units.knToShortTons(kn)) + " short tons)";
    }

    static String mm2(double mm2) {
        return number(mm2) + " mm² (" + number(Units.mm2ToIn2(mm2)) + " in²)";
    }

    static String percent(double share) {
        return number(100 * share) + " %";
    }

    /** Three figures, no exponent. */
    static String number(double value) {
        double size = Math.abs(value);
        return Digits.fixed(value, size >= 99.95 ? 0 : size >= 9.995 ? 1 : 2);
    }
}
