package shotwright.report.half;

import shotwright.measure.Digits;
import shotwright.measure.Units;

/** Sets lengths on a drawing: to a hundredth of a millimetre or its like in inches, fits to a thousandth; no unit, for the title block names it. */
final class Sizes {
    private final boolean inch;

    Sizes(boolean inch) {
        this.inch = inch;
    }

    String unit() {
        return inch ? "in" : "mm";
    }

    /** 0.01 mm or 0.0001 in; zeros behind are dropped to two or three decimals. */
    String length(double mm) {
        return inch ? trimmed(Digits.fixed(Units.mmToIn(mm), 4), 3) : trimmed(Digits.fixed(mm, 2), 1);
    }

    /** 0.001 mm or 0.0001 in. */
    String fine(double mm) {
        return inch ? Digits.fixed(Units.mmToIn(mm), 4) : Digits.fixed(mm, 3);
    }

    /** A coordinate, always with the same number of decimals. */
    String place(double mm) {
        return inch ? Digits.fixed(Units.mmToIn(mm), 4) : Digits.fixed(mm, 2);
    }

    /** A tolerance; in inches to the thousandth, below two thousandths to a tenth of that. */
    String tolerance(double mm) {
        double in = Units.mmToIn(mm);
        return "±" + (inch ? Digits.fixed(in, in < 0.002 ? 4 : 3) : trimmed(Digits.fixed(mm, 2), 1));
    }

    /** A round size that a table goes up to. */
    String upTo(double mm) {
        return inch ? Digits.fixed(Units.mmToIn(mm), 2) : Digits.fixed(mm, 0);
    }

    private static String trimmed(String s, int least) {
        int point = s.indexOf('.'), end = s.length();
        while (end > point + 1 + least && s.charAt(end - 1) == '0') end--;
        return s.substring(0, end);
    }
}
