package shotwright.sheet;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import shotwright.cool.CoolResult;
import shotwright.fill.FillResult;
import shotwright.finding.Finding;
import shotwright.layout.LayoutResult;
import shotwright.layout.Shrink;
import shotwright.measure.Band;
import shotwright.measure.Source;
import shotwright.resin.Resin;

/**
 * One mold, several resins: the mold is cut for the shrink of the first; what sizes, clamp, filling and cooling the others would give. A size that was
 * drawn L is cut L/(1 − S₁) and comes out L·(1 − S)/(1 − S₁) in a resin of shrink S (ISO 294-4 definition of shrink).
 *
 * @param first id of the resin the mold is cut for
 * @param rows one per resin, the first included
 * @param findings what has to be said
 */
public record ResinComparison(String first, List<Row> rows, List<Finding> findings) {
    private static final double SIZE_WATCH = 0.003;
    /** Shrink outside this is a slip, not a resin (checks A8). */
    private static final double LEAST_SHRINK = -0.01;

    private static final double MOST_SHRINK = 0.08;

    /**
     * What a resin would give.
     *
     * @param resin its id
     * @param name its name
     * @param sizeXMm the part along x of the pulled frame, with the band of its shrink
     * @param sizeYMm along y
     * @param sizeZMm along the pull
     * @param offDrawingPercent how far off the drawing its middle is, largest of the three axes, signed
     * @param clampKn opening force
     * @param pressureMpa pressure to fill
     * @param verdict will it fill
     * @param coolingTimeS cooling time
     * @param cycleTimeS cycle
     */
    public record Row(
            String resin,
            String name,
            Band sizeXMm,
            Band sizeYMm,
            Band sizeZMm,
            double offDrawingPercent,
            double clampKn,
            double pressureMpa,
            FillResult.Verdict verdict,
            double coolingTimeS,
            double cycleTimeS) {}

    /**
     * A resin with its answers of stations 60 and 70 on this mold.
     *
     * @param resin the resin
     * @param fill filling
     * @param cool cooling
     */
    public record Tried(Resin resin, FillResult fill, CoolResult cool) {}

    public ResinComparison {
        rows = List.copyOf(rows);
        findings = List.copyOf(findings);
    }

    /**
     * Compares.
     *
     * @param layout holds the shrink the mold is cut with
     * @param drawnMm sizes of the part as drawn, x, y, z of the pulled frame
     * @param tried the resins, the one the mold is cut for first
     */
    public static ResinComparison of(LayoutResult layout, double[] drawnMm, List<Tried> tried) {
        if (tried.isEmpty()) throw new IllegalArgumentException("resins: none given");
        double[] cut = {layout.shrinkX(), layout.shrinkY(), layout.shrinkZ()};
        List<Row> rows = new ArrayList<>();
        List<Finding> findings = new ArrayList<>();
        for (Tried t : tried) {
            Band x = size(drawnMm[0], cut[0], t.resin()), y = size(drawnMm[1], cut[1], t.resin());
            Band z = size(drawnMm[2], cut[2], t.resin());
            double off = worst(drawnMm, x, y, z);
            rows.add(new Row(
                    t.resin().id(),
                    t.resin().name(),
                    x,
                    y,
                    z,
                    100 * off,
                    t.fill().clampPeakKn(),
                    t.fill().pressurePeakMpa(),
                    t.fill().verdict(),
                    t.cool().coolingTimeS(),
                    t.cool().cycleTimeS()));
            if (Math.abs(off) > SIZE_WATCH && t != tried.getFirst())
                findings.add(offSize(t.resin(), tried.getFirst().resin(), off));
        }
        return new ResinComparison(tried.getFirst().resin().id(), rows, findings);
    }

    private static Band size(double drawn, double cutShrink, Resin r) {
        double mold = Shrink.moldLengthMm(drawn, cutShrink);
        double low = r.shrinkPercent().low() / 100, high = r.shrinkPercent().high() / 100;
        if (low < LEAST_SHRINK || high > MOST_SHRINK)
            throw new IllegalArgumentException(
                    "shrink of " + r.name() + ": " + 100 * low + " to " + 100 * high + " % is absurd");
        return new Band(mold * (1 - high), mold * (1 - (low + high) / 2), mold * (1 - low));
    }

    private static double worst(double[] drawn, Band... sizes) {
        double worst = 0;
        for (int k = 0; k < sizes.length; k++) {
            double off = sizes[k].nominal() / drawn[k] - 1;
            if (Math.abs(off) > Math.abs(worst)) worst = off;
        }
        return worst;
    }

    private static Finding offSize(Resin r, Resin first, double off) {
        return Finding.watch(
                        "size-of-other-resin",
                        String.format(
                                Locale.ROOT,
                                "Parts in %s come out about %.1f %% %s than drawn: the mold is cut for %s.",
                                r.name(),
                                Math.abs(100 * off),
                                off > 0 ? "larger" : "smaller",
                                first.name()))
                .measured(
                        100 * off,
                        100 * SIZE_WATCH,
                        "%",
                        Source.computed("shrink of both resins, middle of their ranges"))
                .remedy("Good for a trial of shape and feel; for size a mold of its own, or metal left to correct.");
    }
}
