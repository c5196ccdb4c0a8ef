package shotwright.drawing.dxf;

/**
 * A layer.
 *
 * @param name capitals, figures and underscores
 * @param colour number of the colour, 1 to 255; 7 is black on white
 * @param line how its lines look
 */
public record DxfLayer(String name, int colour, Line line) {
    /** How lines look. */
    public enum Line {
        CONTINUOUS("Continuous", "Solid line"),
        /** What lies behind. */
        HIDDEN("HIDDEN", "__ __ __ __", 2, -1),
        /** Middle lines. */
        CENTER("CENTER", "____ _ ____ _", 6, -1, 1, -1);

        final String word;
        final String words;
        final double[] dashesMm;

        Line(String word, String words, double... dashesMm) {
            this.word = word;
            this.words = words;
            this.dashesMm = dashesMm;
        }
    }

    public DxfLayer {
        if (!name.matches("[A-Z0-9_]{1,31}")) throw new IllegalArgumentException("layer: its name is '" + name + "'");
        if (colour < 1 || colour > 255) throw new IllegalArgumentException("layer " + name + ": colour " + colour);
    }
}
