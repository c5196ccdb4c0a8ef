package shotwright.job;

import java.util.List;
import shotwright.layout.LayoutInput;
import shotwright.layout.Melt;
import shotwright.layout.PressFace;
import shotwright.layout.ShopRack;
import shotwright.mesh.pull.Columns;
import shotwright.mesh.pull.PartingHeights;
import shotwright.mesh.pull.Sight;
import shotwright.mesh.pull.SightTolerance;
import shotwright.part.PulledPart;
import shotwright.review.ReviewResult;
import shotwright.sizing.SizingResult;

/** Puts together what the layout needs from the part, the rack and the decisions. */
final class LayoutOrder {
    private LayoutOrder() {}

    static LayoutInput of(ReviewResult review, SizingResult sizing, Decisions decisions, Shop shop) {
        PulledPart part = review.pulled();
        SightTolerance finest = SightTolerance.LADDER.getFirst();
        Sight[] sight = part.sight().at(finest);
        Columns columns = Columns.of(part.mesh(), sight, part.exactShadow());
        Columns.FreeBand band = columns.outerBand();
        double best = PartingHeights.bestPlane(columns, sight, part.edges(), finest.leanDeg());
        PressFace face = PressFace.of(sizing.press());
        if (sizing.secondPress() != null) face = face.with(PressFace.of(sizing.secondPress()));
        return new LayoutInput(
                part,
                review.wall().medianMm(),
                band.low(),
                band.high(),
                best,
                Melt.of(decisions.resin()),
                face,
                rack(shop, decisions),
                sizing.cavities(),
                decisions.wishes());
    }

    private static ShopRack rack(Shop shop, Decisions decisions) {
        return ShopRack.of(
                decisions.cutters(),
                shop.stock().all(),
                List.of(decisions.material()),
                shop.dowels().all(),
                shop.screws().all());
    }
}
