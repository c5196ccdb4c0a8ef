package shotwright.intake;

import java.util.regex.Pattern;

/** Decimal numbers as part files write them: a point, never a comma, an optional power of ten; {@code nan} and {@code inf} are NaN. */
final class DecimalText {
    private static final double[] TEN = {
        1e0, 1e1, 1e2, 1e3, 1e4, 1e5, 1e6, 1e7, 1e8, 1e9, 1e10, 1e11, 1e12, 1e13, 1e14, 1e15, 1e16, 1e17, 1e18, 1e19,
        1e20, 1e21, 1e22
    };
    private static final int LONGEST = 400;
    private static final int NO_EXPONENT = Integer.MIN_VALUE;
    private static final Pattern DECIMAL = Pattern.compile("[+-]?(\\d+\\.?\\d*|\\.\\d+)([eE][+-]?\\d+)?");
    private static final Pattern NOT_A_NUMBER = Pattern.compile("(?i)[+-]?(nan|inf|infinity|1\\.#.*|nan\\(.*\\))");
    private static final Pattern WITH_COMMA = Pattern.compile("[+-]?\\d+,\\d+([eE][+-]?\\d+)?");

    private DecimalText() {}

    /** Whether a text that is no number would be one if its comma were a point. */
    static boolean hasComma(CharSequence s) {
        return s.length() <= LONGEST && WITH_COMMA.matcher(s).matches();
    }

    /**
     * The number, correctly rounded. Up to 15 digits with a small power of ten are put together from two exact parts (Clinger's fast path);
     * anything else goes the long way.
     *
     * @throws NumberFormatException when the text is no number
     */
    static double parse(CharSequence s) {
        int n = s.length(), i = 0, digits = 0, scale = 0;
        long m = 0;
        boolean minus = n > 0 && s.charAt(0) == '-', point = false, any = false;
        if (minus || n > 0 && s.charAt(0) == '+') i++;
        for (; i < n; i++) {
            char c = s.charAt(i);
            if (c == '.' && !point) {
                point = true;
                continue;
            }
            if (c < '0' || c > '9') break;
            any = true;
            if (m != 0 || c != '0') digits++;
            if (digits > 15) return longWay(s);
            m = 10 * m + (c - '0');
            if (point) scale--;
        }
        if (!any) return longWay(s);
        if (i < n) {
            int e = exponent(s, i);
            if (e == NO_EXPONENT) return longWay(s);
            scale += e;
        }
        if (Math.abs(scale) > 22) return longWay(s);
        double x = scale < 0 ? m / TEN[-scale] : m * TEN[scale];
        return minus ? -x : x;
    }

    private static int exponent(CharSequence s, int start) {
        int i = start, n = s.length();
        if (s.charAt(i) != 'e' && s.charAt(i) != 'E') return NO_EXPONENT;
        i++;
        boolean minus = i < n && s.charAt(i) == '-';
        if (minus || i < n && s.charAt(i) == '+') i++;
        if (i >= n || n - i > 3) return NO_EXPONENT;
        int e = 0;
        for (; i < n; i++) {
            char c = s.charAt(i);
            if (c < '0' || c > '9') return NO_EXPONENT;
            e = 10 * e + (c - '0');
        }
        return minus ? -e : e;
    }

    private static double longWay(CharSequence s) {
        if (s.length() <= LONGEST) {
            if (DECIMAL.matcher(s).matches()) return Double.parseDouble(s.toString());
            if (NOT_A_NUMBER.matcher(s).matches()) return Double.NaN;
        }
        throw new NumberFormatException("no decimal number");
    }
}
