package shotwright.job;

import java.nio.file.Path;
import java.util.List;
import shotwright.cutter.Cutter;
import shotwright.cutter.CutterRack;
import shotwright.machining.feed.FeedTable;
import shotwright.machining.gcode.Dialect;
import shotwright.machining.gcode.DialectRack;
import shotwright.mill.Mill;
import shotwright.mill.MillRack;
import shotwright.press.Press;
import shotwright.press.PressRack;
import shotwright.quote.Rates;
import shotwright.quote.RatesRack;
import shotwright.rack.Rack;
import shotwright.resin.Resin;
import shotwright.resin.ResinRack;
import shotwright.stock.Dowel;
import shotwright.stock.MoldMaterial;
import shotwright.stock.Screw;
import shotwright.stock.Stock;
import shotwright.stock.StockRack;

/** Everything on the shop's rack. */
public record Shop(
        Rack<Resin> resins,
        Rack<Press> presses,
        Rack<Stock> stock,
        Rack<MoldMaterial> materials,
        Rack<Dowel> dowels,
        Rack<Screw> screws,
        Rack<Cutter> cutters,
        Rack<Mill> mills,
        Rack<FeedTable> feedTables,
        Rack<Dialect> dialects,
        Rack<Rates> ratesRack) {

    /** The rack as it comes with the program. */
    public static Shop standard() {
        return new Shop(
                ResinRack.standard(),
                PressRack.standard(),
                StockRack.standard(),
                StockRack.materials(),
                StockRack.dowels(),
                StockRack.screws(),
                CutterRack.standard(),
                MillRack.standard(),
                FeedTable.standard(),
                DialectRack.standard(),
                RatesRack.standard());
    }

    /** The rack with the shop's own files laid over it; they win by id. */
    public Shop withFolder(Path folder) {
        return new Shop(
                resins.withFolder(folder),
                presses.withFolder(folder),
                stock.withFolder(folder),
                materials.withFolder(folder),
                dowels.withFolder(folder),
                screws.withFolder(folder),
                cutters.withFolder(folder),
                mills.withFolder(folder),
                feedTables.withFolder(folder),
                dialects.withFolder(folder),
                RatesRack.withFolder(folder));
    }

    /** The shop's rates. */
    public Rates rates() {
        return ratesRack.byId(RatesRack.ID);
    }

    /** Every rack, in the order a shop thinks of them. */
    public List<Rack<?>> racks() {
        return List.of(
                resins, presses, cutters, mills, feedTables, dialects, stock, materials, dowels, screws, ratesRack);
    }
}
