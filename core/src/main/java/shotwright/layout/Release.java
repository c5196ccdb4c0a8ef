package shotwright.layout;

import java.util.List;

/**
 * How the part comes out.
 *
 * @param keepsPart the half that keeps the part when the mold opens
 * @param gripNA estimated hold of half A on all parts of one shot, N
 * @param gripNB estimated hold of half B
 * @param ejectionForceN force to get the parts off the half that keeps them, N
 * @param by what carries it
 * @param words why, and what to do, in a few sentences
 * @param pins ejector pins, empty when none are needed
 */
public record Release(
        Half keepsPart, double gripNA, double gripNB, double ejectionForceN, By by, String words, List<PinPlace> pins) {
    /** What gets the part off. */
    public enum By {
        HAND,
        GATE_AND_SPRUE,
        PINS,
        PRESS_KNOCK_OUT
    }

    public Release {
        pins = List.copyOf(pins);
    }
}
