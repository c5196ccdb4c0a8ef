package shotwright.layout;

import shotwright.mesh.pull.Columns;
import shotwright.mesh.pull.PartingHeights;
import shotwright.mesh.pull.Sight;
import shotwright.mesh.pull.SightTolerance;
import shotwright.part.PulledPart;
import shotwright.resin.Resin;
import shotwright.review.ReviewResult;
import shotwright.sizing.SizingResult;

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
    /** From the stations before: the second press, if there is one, makes every limit the tighter of the two. */
    public static LayoutInput of(
            ReviewResult review, SizingResult sizing, Resin resin, ShopRack shop, LayoutWishes wishes) {
        PressFace face = PressFace.of(sizing.press());
        if (sizing.secondPress() != null) face = face.with(PressFace.of(sizing.secondPress()));
        return of(review.pulled(), review.wall().medianMm(), Melt.of(resin), face, shop, sizing.cavities(), wishes);
    }

    /** With the heights at which a plane may part the outline, measured on the part. */
    public static LayoutInput of(
            PulledPart part,
            double wallMm,
            Melt melt,
            PressFace press,
            ShopRack shop,
            int cavities,
            LayoutWishes wishes) {
        SightTolerance finest = SightTolerance.LADDER.getFirst();
        Sight[] sight = part.sight().at(finest);
        Columns columns = Columns.of(part.mesh(), part.edges(), sight, finest.leanDeg(), part.exactShadow());
        Columns.FreeBand band = columns.outerBand();
        double best = PartingHeights.bestPlane(columns, sight, part.edges(), finest.leanDeg());
        return new LayoutInput(part, wallMm, band.low(), band.high(), best, melt, press, shop, cavities, wishes);
    }

    public LayoutInput {
        if (cavities < 1 || cavities > 16)
            throw new IllegalArgumentException("cavities: " + cavities + " is outside 1 … 16");
        if (!(wallMm > 0)) throw new IllegalArgumentException("wall: " + wallMm + " mm is not above zero");
    }

    /** The same with other wishes. */
    public LayoutInput wishing(LayoutWishes others) {
        return new LayoutInput(part, wallMm, freeLowMm, freeHighMm, bestZMm, melt, press, shop, cavities, others);
    }

    /** A plane parts the outline. */
    public boolean plane() {
        return freeLowMm <= freeHighMm;
    }
}
