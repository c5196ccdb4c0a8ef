package shotwright.report;

import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.function.DoubleUnaryOperator;
import java.util.stream.IntStream;
import shotwright.cool.CoolResult;
import shotwright.drawing.Axis;
import shotwright.drawing.BandBars;
import shotwright.drawing.Drawing;
import shotwright.drawing.Plot;
import shotwright.fill.FillResult;
import shotwright.job.JobResult;
import shotwright.measure.Band;
import shotwright.measure.Units;
import shotwright.quote.QuoteResult;
import shotwright.sizing.ClampWay;
import shotwright.sizing.SizingResult;

/** Figures of the job as bars and curves. */
final class ChartPictures {
    private static final double WIDE = 160;
    private static final double HIGH = 95;

    private ChartPictures() {}

    static void add(Map<String, Pictures.Draws> to, JobResult job) {
        boolean inch = job.inch();
        SizingResult sizing = job.sizing();
        if (sizing != null) to.put("30-clamp", () -> clamp(sizing, inch));
        FillResult fill = job.fill();
        if (fill != null && fill.scan().size() > 1) to.put("60-pressure", () -> pressure(fill, inch));
        CoolResult cool = job.cool();
        if (cool != null && cool.moldByShotC().size() > 1) to.put("70-mold-temperature", () -> mold(cool, inch));
        QuoteResult quote = job.quote();
        if (quote != null && quote.perPart().size() > 1) to.put("90-price", () -> price(quote));
    }

    static Drawing clamp(SizingResult sizing, boolean inch) {
        String unit = inch ? "short tons" : "kN";
        DoubleUnaryOperator in = inch ? Units::knToShortTons : DoubleUnaryOperator.identity();
        BandBars bars = new BandBars("clamp, " + unit);
        for (ClampWay w : sizing.clamp().ways()) {
            Band b = w.clampKn().times(in.applyAsDouble(1));
            String low = Numbers.figures(b.low(), 3), high = Numbers.figures(b.high(), 3);
            bars.estimate(w.name(), (low.equals(high) ? low : low + " to " + high) + " " + unit, b);
        }
        double holds = in.applyAsDouble(sizing.press().usableKn());
        double plate = in.applyAsDouble(sizing.press().nameplateKn());
        bars.limit(holds, "press holds");
        if (plate > 1.15 * holds) bars.level(plate, "nameplate");
        return bars.drawing("Clamp needed against what the press holds", WIDE);
    }

    static Drawing pressure(FillResult fill, boolean inch) {
        DoubleUnaryOperator in = inch ? Units::mpaToPsi : DoubleUnaryOperator.identity();
        String unit = inch ? "psi" : "MPa";
        List<FillResult.ScanPoint> scan = fill.scan().stream()
                .sorted(Comparator.comparingDouble(FillResult.ScanPoint::timeS))
                .toList();
        double[] t = scan.stream().mapToDouble(FillResult.ScanPoint::timeS).toArray();
        double[] p = scan.stream()
                .mapToDouble(FillResult.ScanPoint::pressureMpa)
                .map(in)
                .toArray();
        double peak = Math.max(1e-9, in.applyAsDouble(fill.pressurePeakMpa()));
        Band band = fill.pressureBandMpa().times(in.applyAsDouble(1));
        double[] low = Arrays.stream(p).map(v -> v * band.low() / peak).toArray();
        double[] high = Arrays.stream(p).map(v -> v * band.high() / peak).toArray();
        double press = in.applyAsDouble(fill.pressureAvailableMpa());
        double top = pressureTop(Arrays.stream(high).max().orElse(peak), band.high(), press);
        for (double[] v : List.of(low, p, high)) for (int i = 0; i < v.length; i++) v[i] = Math.min(top, v[i]);
        Axis x = Axis.factors("fill time, s", t[0], Math.max(t[t.length - 1], t[0] * 1.01));
        String chosen = "chosen: " + Numbers.time(fill.fillTimeS()) + ", " + Numbers.figures(peak, 2) + " " + unit;
        return new Plot(x, Axis.fromZero("pressure, " + unit, 0, top))
                .band(t, low, high)
                .curve("", t, p)
                .limit(press, "press gives at most " + Numbers.figures(press, 3) + " " + unit)
                .point(fill.fillTimeS(), Math.min(top, peak), chosen, true)
                .drawing("Pressure to fill against fill time", WIDE, HIGH);
    }

    /** The curve takes the whole height: steep ends of the scan are cut off, and a press that gives far more stands above the picture. */
    static double pressureTop(double highest, double chosenHigh, double press) {
        double top = Math.min(highest, 2.5 * chosenHigh);
        return press <= 1.5 * top ? Math.max(top, press) : top;
    }

    static Drawing mold(CoolResult cool, boolean inch) {
        DoubleUnaryOperator in = inch ? Units::cToF : DoubleUnaryOperator.identity();
        double[] c = cool.moldByShotC().stream()
                .mapToDouble(Double::doubleValue)
                .map(in)
                .toArray();
        double[] shot = IntStream.rangeClosed(1, c.length).asDoubleStream().toArray();
        double wanted = in.applyAsDouble(cool.moldTargetC());
        double least = Math.min(wanted, Arrays.stream(c).min().orElse(wanted));
        double most = Math.max(wanted, Arrays.stream(c).max().orElse(wanted));
        return new Plot(
                        Axis.fromZero("shot, without pauses", 0, c.length),
                        Axis.around("mold temperature, " + (inch ? "°F" : "°C"), least, most))
                .curve("", shot, c)
                .level(wanted, "wanted for the resin: " + Numbers.fixed(wanted, 0))
                .drawing("Mold temperature after each shot", WIDE, HIGH);
    }

    static Drawing price(QuoteResult quote) {
        List<QuoteResult.PartPrice> rows = quote.perPart().stream()
                .sorted(Comparator.comparingInt(QuoteResult.PartPrice::quantityCount))
                .toList();
        double[] n =
                rows.stream().mapToDouble(QuoteResult.PartPrice::quantityCount).toArray();
        double[] each =
                rows.stream().mapToDouble(QuoteResult.PartPrice::pricePerPart).toArray();
        double[] sorted = Arrays.stream(each).sorted().toArray();
        double least = sorted[0], most = sorted[sorted.length - 1];
        Plot plot = new Plot(
                        Axis.factors("good parts ordered", Math.max(1, n[0]), Math.max(n[n.length - 1], n[0] * 1.1)),
                        Axis.factors("price per part without mold, " + quote.currency(), 0.7 * least, 1.4 * most))
                .curve("", n, each);
        double last = 0;
        for (int i = 0; i < n.length; i++) {
            boolean room = n[i] > 1.9 * last && n[i] < 0.45 * n[n.length - 1] || i == 0 || i == n.length - 1;
            plot.point(
                    n[i],
                    each[i],
                    room ? (each[i] < 1 ? Numbers.fixed(each[i], 2) : Numbers.figures(each[i], 3)) : "",
                    false);
            if (room) last = n[i];
        }
        return plot.drawing("Price per part against quantity", WIDE, HIGH);
    }
}
