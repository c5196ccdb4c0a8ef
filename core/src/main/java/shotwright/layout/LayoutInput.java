package shotwright.layout;

import shotwright.part.PulledPart;

/**
 * What station 40 takes in.
 *
 * @param part the part turned to its pull
 * @param wallMm median wall
 * @param freeLowMm lowest height of a parting plane in the pulled frame
 * @param freeHighMm highest height; below {@code freeLowMm} when no plane parts the outline
 * @param bestZMm height of the plane nearest to every part of the rim, taken when the parting must step
 * @param melt the resin at its set point
 * @param press the press, or the tighter of two
 * @param shop sizes on the rack
 * @param cavities how many
 * @param wishes what was decided already
 */
public record LayoutInput(
        PulledPart part,
        double wallMm,
        double freeLowMm,
        double freeHighMm,
        double bestZMm,
        Melt melt,
        PressFace press,
        ShopRack shop,
        int cavities,
        LayoutWishes wishes) {
    public LayoutInput {
        if (cavities < 1 || cavities > 16)
            throw new IllegalArgumentException("cavities: " + cavities + " is outside 1 … 16");
        if (!(wallMm > 0)) throw new IllegalArgumentException("wall: " + wallMm + " mm is not above zero");
    }

    /** A plane parts the outline. */
    public boolean plane() {
        return freeLowMm <= freeHighMm;
    }
}
