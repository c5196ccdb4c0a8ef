package shotwright.measure;

import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;

/** Sets a bare number as it stands on a page: a real minus sign, thousands by a thin gap, never a power of ten. */
public final class Digits {
    private Digits() {}

    /** A number with so many decimals; a dash when it is not a number. */
    public static String fixed(double v, int decimals) {
        if (!Double.isFinite(v)) return "–";
        String s =
                BigDecimal.valueOf(v).setScale(decimals, RoundingMode.HALF_UP).toPlainString();
        if (s.startsWith("-") && s.replaceAll("[0.\\-]", "").isEmpty()) s = s.substring(1);
        int dot = s.indexOf('.');
        String whole = dot < 0 ? s : s.substring(0, dot), rest = dot < 0 ? "" : s.substring(dot);
        String sign = whole.startsWith("-") ? "−" : "";
        if (!sign.isEmpty()) whole = whole.substring(1);
        if (whole.length() > 4) whole = whole.replaceAll("(?<=\\d)(?=(\\d{3})+$)", "\u202f");
        return sign + whole + rest;
    }

    /** A number to so many significant figures. */
    public static String figures(double v, int figures) {
        if (v == 0 || !Double.isFinite(v)) return v == 0 ? "0" : "–";
        BigDecimal b = BigDecimal.valueOf(v).round(new MathContext(figures, RoundingMode.HALF_UP));
        return fixed(b.doubleValue(), Math.max(0, b.scale()));
    }
}
