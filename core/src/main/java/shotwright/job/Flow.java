package shotwright.job;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import shotwright.cool.CoolInput;
import shotwright.cool.CoolResult;
import shotwright.cool.FirstOrderCool;
import shotwright.fill.FillInput;
import shotwright.fill.FillResult;
import shotwright.fill.FirstOrderFill;
import shotwright.fill.FlowField;
import shotwright.fill.Melt;
import shotwright.fill.PressLimits;
import shotwright.geom.Vec3;
import shotwright.layout.Gate;
import shotwright.layout.LayoutResult;
import shotwright.mold.MoldResult;
import shotwright.progress.Progress;
import shotwright.resin.Resin;
import shotwright.review.ReviewResult;
import shotwright.sheet.ResinComparison;
import shotwright.sheet.SheetMaker;
import shotwright.sizing.SizingResult;

/** Runs stations 60 and 70 for every resin of the card on the one mold that was cut for the first of them. */
final class Flow {
    private static final double ROOM_C = 23;

    /** Enough for a path that changes by a few per cent when doubled. */
    private static final int CELLS = 40_000;

    /** Hold goes on for this long after the gate has sealed (common practice: 0.5 to 1 s). */
    private static final double AFTER_SEAL_S = 1;

    private final Decisions decisions;
    private final Map<FieldKey, FlowField> fields = new HashMap<>();
    private FlowField.@Nullable Walls walls;

    Flow(Decisions decisions) {
        this.decisions = decisions;
    }

    /**
     * Filling and cooling.
     *
     * @param fill with the first resin
     * @param cool with the first resin
     * @param comparison every resin on this mold
     */
    record Answer(FillResult fill, CoolResult cool, ResinComparison comparison) {}

    Answer answer(
            ReviewResult review,
            SizingResult sizing,
            LayoutResult layout,
            @Nullable MoldResult mold,
            Progress progress) {
        List<ResinComparison.Tried> tried = new ArrayList<>();
        int n = decisions.resins().size();
        for (int i = 0; i < n; i++) {
            Resin resin = decisions.resins().get(i);
            Progress p = progress.part((double) i / n, (i + 1.0) / n);
            Melt melt = melt(resin, sizing);
            FillResult fill = fill(review, sizing, layout, resin, melt, field(review, layout, melt, p));
            tried.add(new ResinComparison.Tried(
                    resin, fill, cool(review, sizing, layout, mold, resin, melt.meltC(), fill)));
        }
        Vec3 size = review.pulled().mesh().box().size();
        ResinComparison comparison = ResinComparison.of(layout, new double[] {size.x(), size.y(), size.z()}, tried);
        return new Answer(tried.getFirst().fill(), tried.getFirst().cool(), comparison);
    }

    /** How the first resin goes through the part as laid out. */
    FlowField picture(ReviewResult review, SizingResult sizing, LayoutResult layout, Progress progress) {
        return field(review, layout, melt(decisions.resin(), sizing), progress);
    }

    private static Melt melt(Resin resin, SizingResult sizing) {
        return Melt.of(
                resin,
                SheetMaker.meltC(resin, sizing.press()),
                resin.settings().moldC().value());
    }

    /** What a flow picture depends on: the power index steers the front, so resins share one only when theirs is the same. */
    private record FieldKey(Vec3 atMm, double radiusMm, double indexRatio) {}

    /** Cells and walls are measured once for all resins, and every picture is made once. */
    private FlowField field(ReviewResult review, LayoutResult layout, Melt melt, Progress progress) {
        Gate gate = layout.gates().getFirst();
        Vec3 at = rounded(layout.cavities().getFirst().place().inverse().apply(gate.atMm()));
        FieldKey key = new FieldKey(at, Math.max(gate.widthMm(), gate.depthMm()) / 2, melt.indexRatio());
        FlowField known = fields.get(key);
        if (known != null) return known;
        FlowField.Walls measured = walls;
        if (measured == null)
            walls = measured = FlowField.Walls.of(review.pulled().tree(), CELLS, progress.part(0, 0.3));
        FlowField made = FlowField.of(measured, at, key.radiusMm, key.indexRatio, progress.part(0.3, 1));
        fields.put(key, made);
        return made;
    }

    /** To a nanometre, so that the last bits of a place never decide which cells the melt enters by. */
    private static Vec3 rounded(Vec3 p) {
        return new Vec3(Math.rint(p.x() * 1e6) / 1e6, Math.rint(p.y() * 1e6) / 1e6, Math.rint(p.z() * 1e6) / 1e6);
    }

    private static FillResult fill(
            ReviewResult review, SizingResult sizing, LayoutResult layout, Resin resin, Melt melt, FlowField field) {
        double gx = 1 / (1 - layout.shrinkX()), gy = 1 / (1 - layout.shrinkY()), gz = 1 / (1 - layout.shrinkZ());
        double hold = Math.min(
                resin.settings().holdMpa().mid(), sizing.press().maxMeltMpa().value());
        FillResult said = FirstOrderFill.fill(new FillInput(
                melt,
                PressLimits.of(sizing.press()),
                layout,
                field,
                review.pulled().part().mass().volumeMm3() * gx * gy * gz,
                review.projectedAreaMm2() * gx * gy,
                hold,
                0));
        return said.withFindings(said.findings().stream()
                .map(f -> f.placed(review.pulled()::toFile))
                .toList());
    }

    private CoolResult cool(
            ReviewResult review,
            SizingResult sizing,
            LayoutResult layout,
            @Nullable MoldResult mold,
            Resin resin,
            double meltC,
            FillResult fill) {
        double metal = mold == null
                ? layout.block().volumeMm3()
                : mold.a().volumeMm3() + mold.b().volumeMm3();
        double shotG = (sizing.cavities() * review.pulled().part().mass().volumeMm3() + layout.feedVolumeMm3())
                / 1000
                * resin.solidDensityGPerCm3().mid();
        return FirstOrderCool.cool(new CoolInput(
                resin,
                meltC,
                sizing.press(),
                decisions.material(),
                layout,
                review.wall().samples(),
                metal,
                shotG,
                fill.fillTimeS(),
                fill.gateSealS() + AFTER_SEAL_S,
                ROOM_C));
    }
}
