package shotwright.quote;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import shotwright.measure.Quantity;

/**
 * Hours and money of a mold: metal, drawing and programs, milling, bench, small parts, trial; and the hours a customer never sees. Shape of the
 * sum: KAZ; hours by common practice of one-person shops except the milling, which is {@link MillingGuess} or the programs.
 */
final class MoldCost {
    private static final double DESIGN_H = 2;
    private static final double PER_QUESTION_H = 0.5;
    private static final double PROGRAM_PER_HALF_H = 1.25;
    private static final double BESIDE_SHARE = 0.45;
    private static final double BENCH_H = 2;
    private static final double POLISH_H_PER_DM2 = 0.5;
    private static final double TRIAL_H = 2;
    private static final double MEASURE_H = 1;
    private static final double CORRECT_SHARE = 0.3;

    final List<QuoteResult.Hours> hours = new ArrayList<>();
    final List<QuoteResult.Cost> costs = new ArrayList<>();
    final boolean fromPrograms;
    double millH;

    MoldCost(QuoteInput in) {
        Rates r = in.rates();
        MillingGuess guess =
                MillingGuess.of(removedMm3(in), in.cavities() * in.partSurfaceMm2(), in.smallestCornerMm());
        fromPrograms = in.programH() > 0;
        millH = fromPrograms ? in.programH() + guess.setUpH() : guess.allH();
        metal(in);
        work(
                "design",
                DESIGN_H + PER_QUESTION_H * in.openQuestionsCount(),
                r.designRatePerH(),
                true,
                "two hours and half an hour for each open question");
        work("programs", 2 * PROGRAM_PER_HALF_H, r.designRatePerH(), true, "an hour and a quarter for each half");
        String how = fromPrograms
                ? "machine time of the proved programs and four clampings"
                : say(
                        "estimate until programs exist: roughing %.1f h, finishing %.1f h, small cutters %.1f h, four clampings %.1f h",
                        guess.roughingH(), guess.finishingH(), guess.smallCutterH(), guess.setUpH());
        work("at the mill", millH, r.millRatePerH(), true, how);
        work(
                "beside the mill",
                BESIDE_SHARE * millH,
                r.labourRatePerH(),
                true,
                "you are not free for 45 % of the time it runs");
        bench(in);
        cost("dowels, screws, a cutter", r.smallPartsPrice().value(), "small parts for one mold");
        cost("resin for the trial", 1.5 * in.resin().pricePerKg().mid(), "about one and a half kilograms");
    }

    private void bench(QuoteInput in) {
        Rates r = in.rates();
        double polish = POLISH_H_PER_DM2 * in.cavities() * in.partSurfaceMm2() / 1e4;
        work(
                "bench: dowels, fitting, stoning",
                BENCH_H + polish,
                r.labourRatePerH(),
                true,
                "two hours and half an hour for each 100 cm² to 320 grit");
        work("trial at the press", TRIAL_H, r.labourRatePerH(), true, "set-up, short shots, gate seal");
        work("measuring first parts", MEASURE_H, r.labourRatePerH(), true, "three parts of each cavity");
        work(
                "correction after the trial",
                CORRECT_SHARE * millH,
                r.millRatePerH(),
                false,
                "three in ten molds go back on the mill for as long again");
        work("letters, quote, delivery", 1.5, r.labourRatePerH(), false, "nobody pays for it by the hour");
    }

    private static String say(String format, Object... args) {
        return String.format(Locale.ROOT, format, args);
    }

    /** Cavities, feed, and a millimetre off each big face to clean the block up. */
    private static double removedMm3(QuoteInput in) {
        double faces = 4 * in.blockWidthMm() * in.blockHeightMm();
        return in.cavities() * in.partVolumeMm3() * 1.3 + in.feedVolumeMm3() + faces;
    }

    private void metal(QuoteInput in) {
        double w = in.blockWidthMm() + in.sawAllowanceMm(), h = in.blockHeightMm() + in.sawAllowanceMm();
        double kg =
                w * h * in.blockThicknessMm() * in.material().densityGPerCm3().value() * 1e-6;
        double price = in.stock().pricePerKg().mid();
        cost(
                "metal",
                kg * price,
                say(
                        "%.2f kg of %s at %.1f per kg, saw allowance %.0f mm",
                        kg, in.material().name(), price, in.sawAllowanceMm()));
    }

    private void work(String name, double timeH, Quantity rate, boolean shown, String why) {
        hours.add(new QuoteResult.Hours(name, timeH, shown, why));
        cost(name, timeH * rate.value(), say("%.1f h at %.0f per hour; %s", timeH, rate.value(), why));
    }

    private void cost(String name, double money, String why) {
        costs.add(new QuoteResult.Cost(name, money, why));
    }

    double money() {
        return costs.stream().mapToDouble(QuoteResult.Cost::money).sum();
    }

    /** All hours of a person and the mill, one after the other. */
    double allH() {
        return hours.stream().mapToDouble(QuoteResult.Hours::timeH).sum();
    }
}
