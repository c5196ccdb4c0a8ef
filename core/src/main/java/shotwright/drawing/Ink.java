package shotwright.drawing;

/** Colours of paper, inks and materials as 0xRRGGBB. Black is worked out, blue is yours to decide, oxide is below a limit. */
public final class Ink {
    public static final int PAPER = 0xfcfbf7;
    public static final int BENCH = 0xe7e4da;
    public static final int WHITE = 0xffffff;
    public static final int BLACK = 0x1b1e22;
    public static final int GREY = 0x4a4f55;
    public static final int LIGHT = 0x666a6c;
    public static final int BLUE = 0x17477b;
    public static final int OXIDE = 0x8a2d14;
    public static final int RULE = 0xb7b2a3;
    public static final int HAIR = 0xdad6c9;
    public static final int METAL_A = 0xeceae4;
    public static final int METAL_B = 0xdfe3e6;
    public static final int METAL_DARK = 0xb9bec2;
    public static final int PLASTIC_CUT = 0x2b2f34;
    public static final int NO_VALUE = 0x8d8f8e;

    private Ink() {}

    /** {@code #rrggbb}. */
    public static String hex(int rgb) {
        return String.format("#%06x", rgb & 0xffffff);
    }

    /** A colour between two, share 0 to 1. */
    public static int between(int from, int to, double share) {
        int out = 0;
        for (int shift = 16; shift >= 0; shift -= 8) {
            int a = from >> shift & 255, b = to >> shift & 255;
            out |= (int) Math.round(a + (b - a) * share) << shift;
        }
        return out;
    }

    /** Perceived lightness L* of CIELAB, 0 to 100, for sRGB under D65 (IEC 61966-2-1, CIE 15). */
    public static double lightness(int rgb) {
        double y = 0.2126 * linear(rgb >> 16) + 0.7152 * linear(rgb >> 8) + 0.0722 * linear(rgb);
        return y > 216.0 / 24389 ? 116 * Math.cbrt(y) - 16 : y * 24389 / 27;
    }

    /** The ink with the greater contrast on this ground (ratio of relative luminances, WCAG 2): both are equal at L* 52. */
    public static int readableOn(int rgb) {
        return lightness(rgb) > 52 ? BLACK : PAPER;
    }

    private static double linear(int channel) {
        double c = (channel & 255) / 255.0;
        return c <= 0.04045 ? c / 12.92 : Math.pow((c + 0.055) / 1.055, 2.4);
    }
}
