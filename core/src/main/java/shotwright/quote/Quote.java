package shotwright.quote;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.TreeSet;
import shotwright.finding.Finding;
import shotwright.measure.Band;
import shotwright.measure.Digits;

/**
 * What to charge. Price = cost·(1 + overhead)/(1 − margin); part cost by {@link PartCost}; a lot carries its set-up, purge and start shots. The
 * mold is priced apart from the parts.
 */
public final class Quote {
    private static final double LOW = 0.8;
    private static final double HIGH = 1.45;
    private static final double HIGH_WITH_PROGRAMS = 1.25;
    /** Attendance of a press that runs by itself, share of the cycle. */
    private static final double AUTOMATIC_ATTENDANCE = 0.3;

    private static final double PURGE_BARRELS = 4;
    private static final double STOCK_DAYS = 3;

    private Quote() {}

    /** Answers station 90. */
    public static QuoteResult quote(QuoteInput in) {
        MoldCost mold = new MoldCost(in);
        Rates r = in.rates();
        double price = price(mold.money(), r);
        double high = mold.fromPrograms ? HIGH_WITH_PROGRAMS : HIGH;
        List<QuoteResult.PartPrice> parts = new ArrayList<>();
        TreeSet<Integer> quantities = new TreeSet<>(QuoteInput.QUANTITIES);
        if (in.quantityAsked() > 0) quantities.add(in.quantityAsked());
        for (int q : quantities) parts.add(partPrice(in, q));
        double days = STOCK_DAYS + mold.allH() / r.workDayH().value() + 2;
        return new QuoteResult(
                r,
                new Band(LOW * price, price, high * price),
                parts,
                new Band(0.8 * days, days, 1.6 * days),
                mold.hours,
                mold.costs,
                findings(in, mold, price));
    }

    private static double price(double cost, Rates r) {
        return PartCost.priceMoney(
                cost * (1 + r.overheadShare().value()), r.marginShare().value());
    }

    /** Price of a part in a lot of a quantity, set-up in it, mold not. */
    static QuoteResult.PartPrice partPrice(QuoteInput in, int quantity) {
        Rates r = in.rates();
        double lot = price(lotCost(in, quantity), r);
        return new QuoteResult.PartPrice(quantity, lot / quantity, lot);
    }

    /** Cost of a lot of good parts. */
    static double lotCost(QuoteInput in, int quantity) {
        Rates r = in.rates();
        double perKg = in.resin().pricePerKg().mid();
        double material = PartCost.materialMoney(
                in.partG(),
                in.feedG(),
                in.cavities(),
                r.regrindShare().value(),
                r.lossShare().value(),
                perKg);
        double press = in.press().ratePerH().value() + r.dryerRatePerH().value();
        double process = PartCost.processMoney(
                press,
                r.labourRatePerH().value(),
                in.handRun() ? 1 : AUTOMATIC_ATTENDANCE,
                in.cycleS(),
                in.cavities(),
                r.upTimeShare().value());
        double trim = in.trimS() / 3600 * r.labourRatePerH().value();
        double startG = r.startShotsCount().value() * (in.partG() * in.cavities() + in.feedG());
        double purgeG = PURGE_BARRELS * in.press().barrelG().value();
        double setup = r.setupH().value() * (press + r.labourRatePerH().value()) + (startG + purgeG) / 1000 * perKg;
        double perPart = PartCost.perGoodPartMoney(
                material, process + trim, 0, 0, r.goodShare().value());
        return perPart * quantity + setup;
    }

    private static List<Finding> findings(QuoteInput in, MoldCost mold, double price) {
        List<Finding> out = new ArrayList<>();
        if (!mold.fromPrograms)
            out.add(Finding.note(
                    "milling-estimated",
                    String.format(
                            Locale.ROOT,
                            "Milling of %.1f h is an estimate from volume and surface; the mold price may lie between %s and %s until the programs are proved.",
                            mold.millH,
                            Digits.figures(LOW * price, 2),
                            Digits.figures(HIGH * price, 2))));
        if (in.openQuestionsCount() > 0)
            out.add(Finding.ask(
                    "answers-move-price",
                    String.format(
                            Locale.ROOT,
                            "%d open question%s to the customer may move the price.",
                            in.openQuestionsCount(),
                            in.openQuestionsCount() == 1 ? "" : "s")));
        if (in.smallestCornerMm() <= 0)
            out.add(
                    Finding.note(
                            "corners-unknown",
                            "The smallest inside corner was not measured; three tenths of the finishing time are put in for small cutters."));
        addRatesAndHours(out, in);
        return out;
    }

    private static void addRatesAndHours(List<Finding> out, QuoteInput in) {
        if (!in.rates().typical().isEmpty())
            out.add(
                    Finding.ask(
                                    "rates-are-typical",
                                    "The prices stand at " + in.rates().whose()
                                            + ": compare with them, do not quote them.")
                            .remedy(
                                    "Write your own into rack/rates/shop.json of your shop folder and name that folder with --shop; \"shotwright rack rates shop\" prints what the file may hold."));
        if (in.handRun() && in.cycleS() * in.quantityAsked() / in.cavities() > 40 * 3600)
            out.add(Finding.watch(
                    "lot-by-hand-is-long",
                    String.format(
                            Locale.ROOT,
                            "%d parts keep a person at the press for about %.0f hours.",
                            in.quantityAsked(),
                            in.cycleS()
                                    * in.quantityAsked()
                                    / in.cavities()
                                    / 3600
                                    / in.rates().upTimeShare().value())));
    }
}
