package shotwright.layout;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.jspecify.annotations.Nullable;
import shotwright.layout.cavity.CavityShape;
import shotwright.layout.cavity.Spoke;
import shotwright.layout.release.PinPlan;

/**
 * How the parts come out: which half keeps them, with what force they come off, and what carries it. Up to 40 N a part is lifted by hand; up
 * to 120 N the gate and the feed pull it; above, pins push, moved by the press's knock-out where it is strong enough.
 */
final class ReleasePlan {
    /** A part is lifted out with two fingers or a soft pick up to here (common practice). */
    static final double HAND_N = 40;

    /** A tap or pull by hand carries this much (common practice, 100 to 200 N). */
    static final double PULL_N = 120;

    /** The half that keeps the part should hold it this much harder (common practice). */
    static final double KEEP_RATIO = 1.5;

    private final MoldPlan plan;
    private final Basis basis;

    private ReleasePlan(MoldPlan plan) {
        this.plan = plan;
        basis = plan.basis;
    }

    static Release of(MoldPlan plan) {
        return new ReleasePlan(plan).choose();
    }

    private Release choose() {
        Half keeps = basis.keeps();
        int n = plan.in.cavities();
        double one = basis.gripN(keeps), all = n * one;
        PinPlan.@Nullable Pins pins = null;
        Release.By by;
        if (one <= HAND_N) {
            by = Release.By.HAND;
        } else if (one <= PULL_N && !plan.direct()) {
            by = Release.By.GATE_AND_SPRUE;
        } else {
            pins = PinPlan.of(basis.shape(), basis.grid(), keeps, load(plan, one));
            boolean press = keeps == Half.B && plan.in.press().knockOutN() >= 1.5 * all;
            by = press ? Release.By.PRESS_KNOCK_OUT : Release.By.PINS;
        }
        List<PinPlace> placed = new ArrayList<>();
        if (pins != null) {
            for (Spoke s : plan.spokes) placed.addAll(PinPlan.placed(pins, s, keeps));
        }
        return new Release(
                keeps, n * basis.grip().inAN(), n * basis.grip().inBN(), all, by, words(keeps, one, by, pins), placed);
    }

    private static PinPlan.Load load(MoldPlan plan, double forceN) {
        CavityShape shape = plan.basis.shape();
        double floor =
                plan.basis.keeps() == Half.B ? plan.thicknessB - shape.depthBMm() : plan.thicknessA - shape.depthAMm();
        return new PinPlan.Load(forceN, plan.in.wallMm(), Math.max(floor, plan.floorMm));
    }

    private String words(Half keeps, double one, Release.By by, PinPlan.@Nullable Pins pins) {
        double other = basis.gripN(keeps.other());
        StringBuilder s = new StringBuilder(String.format(
                Locale.ROOT,
                "Half %s keeps the part: it holds one with about %.0f N, half %s with about %.0f N. ",
                keeps,
                one,
                keeps.other(),
                other));
        if (one < KEEP_RATIO * other)
            s.append(String.format(
                    Locale.ROOT,
                    "Wanted is %.1f times as much. Polish half %s along the pull and give it more draft; leave half %s as milled, or scratch two"
                            + " rings 0.03 mm deep into its steepest core. ",
                    KEEP_RATIO,
                    keeps.other(),
                    keeps));
        switch (by) {
            case HAND -> s.append("Lift it out by hand or with a brass pick.");
            case GATE_AND_SPRUE ->
                s.append(
                        "Pull it off by the runner while it is warm, or tap it loose; do not lever on the parting face.");
            case PINS, PRESS_KNOCK_OUT -> s.append(pinWords(by, pins));
        }
        return s.toString();
    }

    private static String pinWords(Release.By by, PinPlan.@Nullable Pins pins) {
        String who = by == Release.By.PRESS_KNOCK_OUT ? "the press's knock-out" : "a push plate under an arbor press";
        if (pins == null || pins.places().isEmpty())
            return "It needs pins, but none finds room under the part with metal beside its hole; blow it off with air, push it with a"
                    + " sleeve round a core pin, or change the part.";
        return String.format(
                Locale.ROOT,
                "%s of %.1f\u00a0mm a part, %.0f N each, pushed by %s.%s%s",
                pins.places().size() == 1 ? "1 pin" : pins.places().size() + " pins",
                pins.diameterMm(),
                pins.forceN(),
                who,
                Double.isFinite(pins.metalMm())
                        ? String.format(
                                Locale.ROOT, " At least %.1f mm of metal stands beside their holes.", pins.metalMm())
                        : "",
                pins.enough() ? "" : " They mark the part: more would not find room.");
    }

    /** True when no pins are needed, or those that find room carry the force within every limit. */
    static boolean pinsSuffice(MoldPlan plan, Release release) {
        if (release.by() != Release.By.PINS && release.by() != Release.By.PRESS_KNOCK_OUT) return true;
        if (release.pins().isEmpty()) return false;
        int cavities = plan.in.cavities();
        PinPlan.Load load = load(plan, release.ejectionForceN() / cavities);
        return load.enough(
                release.pins().getFirst().diameterMm(), release.pins().size() / cavities);
    }
}
