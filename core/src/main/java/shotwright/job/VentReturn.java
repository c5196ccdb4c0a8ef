package shotwright.job;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.function.BiFunction;
import shotwright.fill.CaughtAir;
import shotwright.fill.FlowField;
import shotwright.finding.Finding;
import shotwright.geom.Vec3;
import shotwright.layout.Layout;
import shotwright.layout.LayoutInput;
import shotwright.layout.LayoutResult;
import shotwright.layout.PlaceInFile;
import shotwright.layout.Vent;
import shotwright.layout.vent.VentPlan;
import shotwright.progress.Progress;

/**
 * What filling returns to the layout. The layout is laid, melt is followed through it, and when the last place, or another that fills late, lies
 * out of reach of the vent meant for it, the layout is laid once more with vents asked for there. Once only: what is still out of reach then
 * is for the person to decide.
 */
final class VentReturn {
    private static final double SAME_MM = 1;

    private final LayoutInput in;

    VentReturn(LayoutInput in) {
        this.in = in;
    }

    /**
     * Lays out the mold.
     *
     * @param picture follows melt through the part as laid out
     */
    LayoutResult settle(BiFunction<LayoutResult, Progress, FlowField> picture, Progress progress) {
        LayoutResult first = Layout.lay(in, progress.part(0, 0.4));
        List<CaughtAir> caught = CaughtAir.proposals(first, picture.apply(first, progress.part(0.4, 0.7)));
        if (caught.isEmpty()) return first;
        List<Vec3> asked = new ArrayList<>(in.wishes().ventsAtMm());
        for (CaughtAir c : caught) asked.add(in.part().toFile(c.place().atMm()));
        LayoutInput again = in.wishing(in.wishes().filling(in.wishes().fillTimeS(), asked));
        LayoutResult second = Layout.lay(again, progress.part(0.7, 1));
        List<Finding> said = changes(first, second, caught, new PlaceInFile(in.part(), second.cavities()));
        if (said.isEmpty()) return first;
        said.addAll(0, second.findings());
        return second.withFindings(said);
    }

    private static List<Finding> changes(
            LayoutResult first, LayoutResult second, List<CaughtAir> caught, PlaceInFile place) {
        boolean more = second.vents().size() > first.vents().size();
        List<Finding> out = new ArrayList<>();
        for (Vent v : second.vents()) {
            if (!v.reason().equals(VentPlan.LATE_WORDS) || stood(first, v)) continue;
            CaughtAir why = nearest(caught, v.atMm());
            out.add(Finding.note(
                            "vent-moved",
                            String.format(
                                    Locale.ROOT,
                                    "A vent was %s at the parting line, because the melt arrives there last, when %.0f %% is full.",
                                    more ? "added" : "moved",
                                    100 * why.place().arrivalShare()))
                    .at(place.of(v.atMm())));
        }
        return out;
    }

    private static boolean stood(LayoutResult first, Vent v) {
        return first.vents().stream().anyMatch(o -> o.atMm().distance(v.atMm()) < SAME_MM);
    }

    private static CaughtAir nearest(List<CaughtAir> caught, Vec3 atMm) {
        CaughtAir best = caught.getFirst();
        for (CaughtAir c : caught) if (c.atMm().distance(atMm) < best.atMm().distance(atMm)) best = c;
        return best;
    }
}
