package shotwright.layout;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import shotwright.finding.Finding;
import shotwright.measure.Source;

/** What has to be said about the block in the press and the bars it is made from. */
final class RoomFindings {
    private final MoldPlan plan;
    private final Basis basis;
    private final LayoutInput in;
    private final List<Finding> out = new ArrayList<>();

    private RoomFindings(MoldPlan plan) {
        this.plan = plan;
        this.basis = plan.basis;
        this.in = plan.in;
    }

    static List<Finding> of(MoldPlan plan) {
        RoomFindings f = new RoomFindings(plan);
        f.across();
        f.thickness();
        f.bars();
        return f.out;
    }

    private static String f(String format, Object... values) {
        return String.format(Locale.ROOT, format, values);
    }

    private void across() {
        PressFace p = in.press();
        Source limit = Source.computed("mold space of " + p.name());
        boolean across = plan.widthMm > p.largestWidthMm() || plan.heightMm > p.largestHeightMm();
        if (across) {
            boolean wide = plan.widthMm - p.largestWidthMm() > plan.heightMm - p.largestHeightMm();
            out.add(Finding.stop(
                            "mold-too-large",
                            f(
                                    "The mold will be %.0f × %.0f mm and %s takes %.0f × %.0f mm, so it does not go in.",
                                    plan.widthMm, plan.heightMm, p.name(), p.largestWidthMm(), p.largestHeightMm()))
                    .measured(
                            wide ? plan.widthMm : plan.heightMm,
                            wide ? p.largestWidthMm() : p.largestHeightMm(),
                            "mm",
                            limit)
                    .remedy(
                            in.cavities() > 1
                                    ? f("Take %d cavities instead of %d, or a larger press.", fewer(), in.cavities())
                                    : "Take a larger press."));
        }
    }

    private void thickness() {
        PressFace p = in.press();
        Source limit = Source.computed("mold space of " + p.name());
        double t = plan.thicknessA + plan.thicknessB + plan.packingMm;
        if (t > p.largestThicknessMm())
            out.add(Finding.stop(
                            "mold-too-thick",
                            f(
                                    "The closed mold will be %.1f mm thick and %s closes over %.0f mm at most.",
                                    t, p.name(), p.largestThicknessMm()))
                    .measured(t, p.largestThicknessMm(), "mm", limit)
                    .remedy("Take a larger press, or thinner bars if the floors allow it."));
        if (t < p.smallestThicknessMm() - 1e-6)
            out.add(Finding.watch(
                            "mold-too-thin",
                            f(
                                    "The closed mold will be %.1f mm thick and %s needs %.0f mm to reach its clamp.",
                                    t, p.name(), p.smallestThicknessMm()))
                    .measured(t, p.smallestThicknessMm(), "mm", limit)
                    .remedy(f("Put a packing plate of %.0f mm behind it.", Math.ceil(p.smallestThicknessMm() - t))));
        if (plan.packingMm > 0 && !plan.axisTooLow)
            out.add(Finding.note(
                    "packing-plate",
                    f(
                            "A packing plate of %.1f mm goes below half B, so that the parting line meets the nozzle %.1f mm above the table.",
                            plan.packingMm, p.axisHeightMm().orElse(0))));
        if (plan.axisTooLow)
            out.add(
                    Finding.stop(
                                    "nozzle-too-low",
                                    f(
                                            "Half B needs %.1f mm below the parting line, but the nozzle of %s lies only %.1f mm above the table.",
                                            basis.shape().depthBMm() + plan.floorMm,
                                            p.name(),
                                            p.axisHeightMm().orElse(0)))
                            .measured(
                                    basis.shape().depthBMm() + plan.floorMm,
                                    p.axisHeightMm().orElse(0),
                                    "mm",
                                    limit)
                            .remedy(
                                    "Choose a lower parting height so that less of the part lies in B, or turn the part over."));
    }

    private int fewer() {
        double share =
                Math.min(in.press().largestWidthMm() / plan.widthMm, in.press().largestHeightMm() / plan.heightMm);
        return Math.clamp((int) Math.floor(in.cavities() * Math.min(share, 0.99)), 1, Math.max(1, in.cavities() - 1));
    }

    private void bars() {
        for (Half h : Half.values()) {
            ShopRack.Bar bar = h == Half.A ? plan.barA : plan.barB;
            double t = h == Half.A ? plan.thicknessA : plan.thicknessB;
            if (bar == null)
                out.add(Finding.ask(
                                "no-bar",
                                f(
                                        "No bar on the rack gives half %s its %.1f mm of thickness and %.0f mm of width.",
                                        h, t, Math.min(plan.widthMm, plan.heightMm)))
                        .remedy(f("Buy a plate of %.0f mm or more.", Math.ceil(t + 1))));
        }
    }
}
