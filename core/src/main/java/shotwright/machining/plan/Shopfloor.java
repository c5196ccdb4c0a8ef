package shotwright.machining.plan;

import java.util.List;
import shotwright.cutter.Cutter;
import shotwright.machining.feed.FeedTable;
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
}
