package shotwright.quote;

import java.util.List;
import shotwright.press.Press;
import shotwright.resin.Resin;
import shotwright.stock.MoldMaterial;
import shotwright.stock.Stock;

/**
 * What station 90 needs.
 *
 * @param rates the shop's rates
 * @param resin the resin
 * @param press the press
 * @param stock bar or plate of the halves
 * @param material its alloy
 * @param blockWidthMm block as sawn, without allowance
 * @param blockHeightMm block
 * @param blockThicknessMm both halves together
 * @param sawAllowanceMm added to each sawn length
 * @param cavities cavities
 * @param partVolumeMm3 volume of one part
 * @param partSurfaceMm2 surface of one part
 * @param partG mass of one part
 * @param feedG mass of the feed of one shot
 * @param feedVolumeMm3 feed cut into the halves
 * @param smallestCornerMm smallest inside radius, 0 when not known
 * @param openQuestionsCount questions the review left open
 * @param cycleS cycle
 * @param trimS seconds of trimming per part
 * @param handRun true when somebody stands at the press all the time
 * @param programH machine time from proved programs, 0 while there are none
 * @param quantityAsked quantity the customer asked for, 0 when none
 */
public record QuoteInput(
        Rates rates,
        Resin resin,
        Press press,
        Stock stock,
        MoldMaterial material,
        double blockWidthMm,
        double blockHeightMm,
        double blockThicknessMm,
        double sawAllowanceMm,
        int cavities,
        double partVolumeMm3,
        double partSurfaceMm2,
        double partG,
        double feedG,
        double feedVolumeMm3,
        double smallestCornerMm,
        int openQuestionsCount,
        double cycleS,
        double trimS,
        boolean handRun,
        double programH,
        int quantityAsked) {
    /** Quantities every quote shows. */
    public static final List<Integer> QUANTITIES = List.of(1, 10, 50, 100, 250, 500, 1000, 2500, 5000);

    public QuoteInput {
        if (cavities < 1) throw new IllegalArgumentException("cavities: " + cavities + ", at least one");
        if (!(cycleS > 0)) throw new IllegalArgumentException("cycle: " + cycleS + " s is not above zero");
        if (!(partG > 0)) throw new IllegalArgumentException("part: " + partG + " g is not above zero");
    }
}
