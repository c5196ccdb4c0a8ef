package shotwright.machining.feed;

import java.util.List;
import org.jspecify.annotations.Nullable;
import shotwright.cutter.Cutter;
import shotwright.mill.Mill;
import shotwright.stock.MoldMaterial;
import shotwright.stock.Stock;

/**
 * What a mold is milled with.
 *
 * @param cutters cutters owned
 * @param mill the mill
 * @param alloy what is cut
 * @param feeds start values
 * @param bars bars and plates on the rack
 */
public record Shopfloor(List<Cutter> cutters, Mill mill, MoldMaterial alloy, FeedTable feeds, List<Stock> bars) {
    public Shopfloor {
        cutters = List.copyOf(cutters);
        bars = List.copyOf(bars);
    }

    /**
     * How a cutter is run here.
     *
     * @param depthMm deepest single pass wanted
     * @param widthMm widest pass wanted
     * @return null when the cut cannot be made
     */
    public @Nullable CutData cut(Cutter cutter, double stickoutMm, CutKind kind, double depthMm, double widthMm) {
        Cut cut = new Cut(cutter, stickoutMm, alloy, mill, kind, depthMm, widthMm);
        return CutChoice.of(cut, feeds) instanceof CutData data ? data : null;
    }

    /** A drill or spot drill: see {@link HoleData#drill}. */
    public HoleData drill(Cutter drill, double diaMm, double depthMm) {
        return HoleData.drill(drill, diaMm, depthMm, alloy, mill, feeds);
    }

    /** A reamer: see {@link HoleData#ream}. */
    public HoleData ream(Cutter reamer, double depthMm) {
        return HoleData.ream(reamer, depthMm, alloy, mill, feeds);
    }
}
