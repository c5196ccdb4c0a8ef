package shotwright.layout;

import java.util.List;

/**
 * Where the halves part.
 *
 * @param kind plane or stepped
 * @param pulledZMm height of the parting plane in the pulled frame of the unscaled part (the nominal plane when stepped)
 * @param freeLowMm lowest height a plane may take, pulled frame; equal to {@code pulledZMm} when forced or stepped
 * @param freeHighMm highest height a plane may take
 * @param reason why this one
 * @param alternatives the others, with what each would mean
 */
public record PartingChoice(
        Kind kind,
        double pulledZMm,
        double freeLowMm,
        double freeHighMm,
        String reason,
        List<Alternative> alternatives) {
    /** Plane, or a surface that steps up and down with the rim. */
    public enum Kind {
        PLANE,
        STEPPED
    }

    /**
     * A height not taken.
     *
     * @param pulledZMm height in the pulled frame
     * @param consequence what it would mean, in a sentence
     */
    public record Alternative(double pulledZMm, String consequence) {}

    public PartingChoice {
        alternatives = List.copyOf(alternatives);
    }
}
