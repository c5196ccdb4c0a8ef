package shotwright.review;

import java.util.Locale;
import shotwright.measure.Digits;

/** Numbers as they stand in sentences. */
final class Say {
    private Say() {}

    /** A length with its unit and so many decimals. */
    static String mm(double mm, int decimals) {
        return number(mm, decimals) + " mm";
    }

    /** A length with one decimal from 1 mm up, two below. */
    static String mm(double mm) {
        return mm(mm, Math.abs(mm) >= 0.995 ? 1 : 2);
    }

    static String deg(double deg) {
        return number(deg, 2) + "°";
    }

    static String number(double v, int decimals) {
        return Digits.fixed(v, decimals);
    }

    static String percent(double share, int decimals) {
        return number(100 * share, decimals) + " %";
    }

    /** {@code "6 rib sides"}, {@code "the outer wall"}. */
    static String some(int count, String one) {
        return count == 1 ? "the " + one : count + " " + plural(one);
    }

    /** Several holes have several walls; one pocket has several walls. */
    static String plural(String one) {
        for (String head : new String[] {"wall", "outside"}) {
            if (!one.startsWith(head + " of the ")) continue;
            String of = one.substring(head.length() + 8);
            return head + "s of the " + of + (of.endsWith("pocket") ? "" : of.endsWith("s") ? "es" : "s");
        }
        return one + "s";
    }

    static String capital(String s) {
        return s.substring(0, 1).toUpperCase(Locale.ROOT) + s.substring(1);
    }
}
