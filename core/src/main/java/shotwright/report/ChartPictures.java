package shotwright.report;

import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.stream.IntStream;
import shotwright.cool.CoolResult;
import shotwright.drawing.Axis;
import shotwright.drawing.BandBars;
import shotwright.drawing.Drawing;
import shotwright.drawing.Plot;
import shotwright.fill.FillResult;
import shotwright.job.JobResult;
import shotwright.quote.QuoteResult;
import shotwright.sizing.ClampWay;
import shotwright.sizing.SizingResult;

/** Figures of the job as bars and curves. */
final class ChartPictures {
    private static final double WIDE = 160;
    private static final double HIGH = 95;

    private ChartPictures() {}

    static void add(Map<String, Pictures.Draws> to, JobResult job) {
        SizingResult sizing = job.sizing();
        if (sizing != null) to.put("30-clamp", () -> clamp(sizing));
        FillResult fill = job.fill();
        if (fill != null && fill.scan().size() > 1) to.put("60-pressure", () -> pressure(fill));
        CoolResult cool = job.cool();
        if (cool != null && cool.moldByShotC().size() > 1) to.put("70-mold-temperature", () -> mold(cool));
        QuoteResult quote = job.quote();
        if (quote != null && quote.perPart().size() > 1) to.put("90-price", () -> price(quote));
    }

    static Drawing clamp(SizingResult sizing) {
        BandBars bars = new BandBars("clamp, kN");
        for (ClampWay w : sizing.clamp().ways()) {
            String basis = Numbers.figures(w.clampKn().low(), 3) + " to "
                    + Numbers.figures(w.clampKn().high(), 3) + " kN";
            bars.estimate(w.name(), basis, w.clampKn());
        }
        double holds = sizing.press().usableKn(), plate = sizing.press().nameplateKn();
        bars.limit(holds, "press holds");
        if (plate > 1.15 * holds) bars.level(plate, "nameplate");
        return bars.drawing("Clamp needed against what the press holds", WIDE);
    }

    static Drawing pressure(FillResult fill) {
        List<FillResult.ScanPoint> scan = fill.scan().stream()
                .sorted(Comparator.comparingDouble(FillResult.ScanPoint::timeS))
                .toList();
        double[] t = scan.stream().mapToDouble(FillResult.ScanPoint::timeS).toArray();
        double[] p =
                scan.stream().mapToDouble(FillResult.ScanPoint::pressureMpa).toArray();
        double peak = Math.max(1e-9, fill.pressurePeakMpa());
        double down = fill.pressureBandMpa().low() / peak,
                up = fill.pressureBandMpa().high() / peak;
        double[] low = new double[p.length], high = new double[p.length];
        double most = fill.pressureAvailableMpa();
        for (int i = 0; i < p.length; i++) {
            low[i] = p[i] * down;
            high[i] = p[i] * up;
            most = Math.max(most, high[i]);
        }
        // steep ends of the scan would press the curve flat
        double top = Math.min(
                most,
                2 * Math.max(fill.pressureAvailableMpa(), fill.pressureBandMpa().high()));
        for (int i = 0; i < p.length; i++) {
            high[i] = Math.min(top, high[i]);
            low[i] = Math.min(top, low[i]);
            p[i] = Math.min(top, p[i]);
        }
        Axis x = Axis.factors("fill time, s", t[0], Math.max(t[t.length - 1], t[0] * 1.01));
        return new Plot(x, Axis.fromZero("pressure, MPa", 0, top))
                .band(t, low, high)
                .curve("", t, p)
                .limit(fill.pressureAvailableMpa(), "press gives at most")
                .point(fill.fillTimeS(), Math.min(top, fill.pressurePeakMpa()), "chosen", true)
                .drawing("Pressure to fill against fill time", WIDE, HIGH);
    }

    static Drawing mold(CoolResult cool) {
        double[] c =
                cool.moldByShotC().stream().mapToDouble(Double::doubleValue).toArray();
        double[] shot = IntStream.rangeClosed(1, c.length).asDoubleStream().toArray();
        double least = cool.moldTargetC(), most = cool.moldTargetC();
        for (double v : c) {
            least = Math.min(least, v);
            most = Math.max(most, v);
        }
        return new Plot(
                        Axis.fromZero("shot, without pauses", 0, c.length),
                        Axis.around("mold temperature, °C", least, most))
                .curve("", shot, c)
                .level(cool.moldTargetC(), "wanted for the resin")
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
            boolean room = n[i] > 1.9 * last && n[i] < 0.8 * n[n.length - 1] || i == 0;
            plot.point(n[i], each[i], room ? Numbers.figures(each[i], 3) : "", false);
            if (room) last = n[i];
        }
        return plot.drawing("Price per part against quantity", WIDE, HIGH);
    }
}
