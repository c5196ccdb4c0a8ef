package shotwright.quote;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.jspecify.annotations.Nullable;
import shotwright.cool.PlateCooling;
import shotwright.measure.Band;
import shotwright.press.Press;
import shotwright.resin.Resin;

/**
 * A first price from a part's size alone, before any layout: everything not measured is a default and is listed.
 *
 * @param rates what it was worked out with
 * @param mold price of the mold
 * @param firstLot price of the parts of the first lot
 * @param perPart price of one part of it
 * @param quantityCount size of that lot
 * @param leadDays working days until first parts
 * @param assumptions what was taken without being measured, a sentence each
 */
public record PriceBand(
        Rates rates,
        Band mold,
        Band firstLot,
        Band perPart,
        int quantityCount,
        Band leadDays,
        List<String> assumptions) {
    private static final double LOW = 0.6;
    private static final double HIGH = 1.8;
    private static final double SIDE_MM = 20;
    private static final double FLOOR_MM = 12;
    private static final double METAL_PER_KG = 10;
    private static final double ALUMINIUM_G_PER_CM3 = 2.7;
    private static final double HANDLING_S = 25;
    private static final double PRESS_PER_H = 8;
    private static final double FEED_SHARE = 0.25;
    private static final double TRIM_S = 6;
    private static final double BAR_DAYS = 3;
    private static final double TRIAL_DAYS = 1;

    public PriceBand {
        assumptions = List.copyOf(assumptions);
    }

    /** Word or sign behind the money. */
    public String currency() {
        return rates.currency();
    }

    /** Mold and first lot together: the two numbers of the review page. */
    public double[] moldAndFirstLotMoney() {
        return new double[] {mold.low() + firstLot.low(), mold.high() + firstLot.high()};
    }

    /**
     * The first price.
     *
     * @param volumeMm3 of the part
     * @param surfaceMm2 of the part
     * @param boxMm sizes of its box in the pulled frame, x, y, z
     * @param undercutsCount places that do not come out of two plates; each adds a hand-loaded piece
     * @param resin the resin
     * @param press the press; null while none is chosen
     * @param quantity size of the first lot
     */
    public static PriceBand first(
            double volumeMm3,
            double surfaceMm2,
            double[] boxMm,
            int undercutsCount,
            Resin resin,
            @Nullable Press press,
            int quantity,
            Rates rates) {
        if (!(volumeMm3 > 0) || !(surfaceMm2 > 0))
            throw new IllegalArgumentException("part: volume " + volumeMm3 + " mm³, surface " + surfaceMm2 + " mm²");
        int lot = Math.max(1, quantity);
        double mold = PartCost.priceMoney(
                moldCost(volumeMm3, surfaceMm2, boxMm, undercutsCount, rates)
                        * (1 + rates.overheadShare().value()),
                rates.marginShare().value());
        double parts = PartCost.priceMoney(
                lotCost(volumeMm3, surfaceMm2, resin, press, lot, rates)
                        * (1 + rates.overheadShare().value()),
                rates.marginShare().value());
        return new PriceBand(
                rates,
                new Band(LOW * mold, mold, HIGH * mold),
                new Band(LOW * parts, parts, HIGH * parts),
                new Band(LOW * parts / lot, parts / lot, HIGH * parts / lot),
                lot,
                leadDays(volumeMm3, surfaceMm2, boxMm, undercutsCount, rates),
                assumptions(volumeMm3, surfaceMm2, undercutsCount, resin, press));
    }

    private static double moldCost(double volume, double surface, double[] box, int undercuts, Rates r) {
        double w = box[0] + 2 * SIDE_MM, h = box[1] + 2 * SIDE_MM, t = box[2] + 2 * FLOOR_MM;
        double metal = w * h * t * ALUMINIUM_G_PER_CM3 * 1e-6 * METAL_PER_KG;
        MillingGuess m = MillingGuess.of(1.3 * volume + 4 * w * h, surface, 0);
        double design = (4.5 + 2 * undercuts) * r.designRatePerH().value();
        double mill =
                m.allH() * (1 + 0.3) * (1 + 0.15 * undercuts) * r.millRatePerH().value();
        double bench = (6.5 + 0.45 * m.allH() + undercuts) * r.labourRatePerH().value();
        return metal + design + mill + bench + r.smallPartsPrice().value();
    }

    /** Working days to first parts: bar ordered, mold made at the shop's hours a day, one day of trial; wide, as from defaults. */
    private static Band leadDays(double volume, double surface, double[] box, int undercuts, Rates r) {
        double w = box[0] + 2 * SIDE_MM, h = box[1] + 2 * SIDE_MM;
        double milling = MillingGuess.of(1.3 * volume + 4 * w * h, surface, 0).allH();
        double hours = 4.5 + 6.5 + 3 * undercuts + milling * (1 + 0.3) * (1 + 0.15 * undercuts) + 0.45 * milling;
        double days = BAR_DAYS + hours / r.workDayH().value() + TRIAL_DAYS;
        return new Band(LOW * days, days, HIGH * days);
    }

    private static double lotCost(double volume, double surface, Resin resin, @Nullable Press press, int lot, Rates r) {
        double partG = volume / 1000 * resin.solidDensityGPerCm3().mid();
        double perKg = resin.pricePerKg().mid();
        double material = PartCost.materialMoney(
                partG,
                FEED_SHARE * partG,
                1,
                r.regrindShare().value(),
                r.lossShare().value(),
                perKg);
        double handling = press == null ? HANDLING_S : press.handlingS().value();
        double pressPerH = press == null ? PRESS_PER_H : press.ratePerH().value();
        double cycle = coolingS(volume, surface, resin) + 3 + handling;
        double process = PartCost.processMoney(
                pressPerH,
                r.labourRatePerH().value(),
                1,
                cycle,
                1,
                r.upTimeShare().value());
        double trim = TRIM_S / 3600 * r.labourRatePerH().value();
        double setup = r.setupH().value() * (pressPerH + r.labourRatePerH().value());
        return lot
                        * PartCost.perGoodPartMoney(
                                material, process + trim, 0, 0, r.goodShare().value())
                + setup;
    }

    /** Mean wall as twice volume over surface, a sixth more because edges count twice; centre line at the ejection temperature. */
    private static double meanWallMm(double volume, double surface) {
        return 2 * volume / surface * 1.15;
    }

    private static double coolingS(double volume, double surface, Resin r) {
        double mold = r.settings().moldC().value(), eject = Math.max(r.ejectC().mid(), mold + 5);
        double melt = r.settings().nozzleC().value();
        return PlateCooling.centreTimeS(
                meanWallMm(volume, surface), r.diffusivityMm2PerS().mid(), melt, mold, eject);
    }

    private static List<String> assumptions(
            double volume, double surface, int undercuts, Resin resin, @Nullable Press press) {
        List<String> out = new ArrayList<>();
        out.add("From defaults: one cavity, aluminium block 20 mm round the part and 12 mm above and below.");
        out.add(String.format(
                Locale.ROOT,
                "Mean wall %.1f mm, so about %.0f s cooling in %s.",
                meanWallMm(volume, surface),
                coolingS(volume, surface, resin),
                resin.name()));
        out.add(press == null ? "No press chosen: 25 s handling, 8 per hour." : "Press: " + press.name() + ".");
        if (undercuts > 0)
            out.add(undercuts + (undercuts == 1 ? " undercut is" : " undercuts are")
                    + " priced as hand-loaded pieces; leaving them out saves most of it.");
        return out;
    }
}
