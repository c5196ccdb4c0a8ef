package shotwright.drawing;

import java.util.List;

/**
 * A row of colours, evenly spaced, with straight lines between them in sRGB. Own anchors: the draft map follows the tokens of our pages, the
 * other two were set so that lightness L* rises steadily from end to end, which a test holds. None runs from red to green.
 *
 * @param anchors first to last, 0xRRGGBB
 */
public record ColourMap(List<Integer> anchors) {
    /** Draft: dark blue is short of what is asked, near white is what is asked (at two thirds), sand is more. */
    public static final ColourMap DRAFT =
            new ColourMap(List.of(0x2c2a5c, 0x3d5f95, 0x7fa3c5, 0xbccddb, 0xe8ebe9, 0xdcdbc0, 0xc3c293));

    /** Wall thickness: dark blue-green is thin, rose is thick. */
    public static final ColourMap THICKNESS =
            new ColourMap(List.of(0x123a5a, 0x1c5560, 0x3f6b56, 0x6f7d42, 0xa48c3c, 0xd4995a, 0xf0ac90, 0xf6c8c9));

    /** Time of filling: dark is first. */
    public static final ColourMap FILL =
            new ColourMap(List.of(0x0d1f4a, 0x1f4583, 0x4672a8, 0x7397b5, 0x9db3b9, 0xc3cbc2, 0xe6e6d6));

    /** Stages of one thing, light to dark. */
    public static final ColourMap GREY = new ColourMap(List.of(0xe8e6df, 0x3a3d41));

    public ColourMap {
        anchors = List.copyOf(anchors);
        if (anchors.size() < 2) throw new IllegalArgumentException("anchors: " + anchors.size() + " are no map");
    }

    /** The colour at a share of the way, clamped to the ends. */
    public int at(double share) {
        double s = Math.clamp(share, 0, 1) * (anchors.size() - 1);
        int i = (int) Math.min(Math.floor(s), anchors.size() - 2);
        return Ink.between(anchors.get(i), anchors.get(i + 1), s - i);
    }
}
