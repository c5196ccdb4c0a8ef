package shotwright.report;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import shotwright.layout.LayoutResult;
import shotwright.machining.MachiningResult;
import shotwright.machining.MachiningResult.Clamping;
import shotwright.machining.MachiningResult.HalfWork;
import shotwright.machining.MachiningResult.LoadedCutter;
import shotwright.measure.Band;
import shotwright.measure.InchSentence;

/** {@code kit-list.md}: what to lay out before the mold is begun, the hours it takes, and the traveller that goes with it. */
public final class KitListPage {
    /** Clamping, squaring, finding the zero, clearing away, for each clamping (common practice). */
    private static final Band CLAMPING_S = new Band(20 * 60, 30 * 60, 40 * 60);

    /** Sawing and deburring a blank (common practice). */
    private static final Band SAWING_S = new Band(5 * 60, 10 * 60, 15 * 60);

    private final MachiningResult work;
    private final LayoutResult layout;
    private final Numbers show;
    private final StringBuilder page = new StringBuilder();

    private KitListPage(MachiningResult work, LayoutResult layout, boolean inch) {
        this.work = work;
        this.layout = layout;
        this.show = inch ? Numbers.inch() : Numbers.metric();
    }

    /**
     * The page.
     *
     * @param title the job
     */
    public static String text(String title, MachiningResult work, LayoutResult layout, boolean inch) {
        KitListPage p = new KitListPage(work, layout, inch);
        p.write(title);
        return p.page.toString();
    }

    private void write(String title) {
        line("# Kit list");
        line("");
        line(InchSentence.name(title) + ". Mill: " + InchSentence.name(work.mill()) + ".");
        line("");
        line("## Saw");
        line("");
        work.sawing().forEach(s -> line("- [ ] " + s));
        line("");
        line("## Cutters to load");
        line("");
        line("One number and one stickout for the whole mold. The stickout is the least; more than " + show.coarse(2)
                + " above it costs stiffness.");
        line("");
        line(
                "| | T | cutter | kind | teeth | flutes long | stands out at least | holder | moves for | Ø found | length found |");
        line("|---|---:|---|---|---:|---:|---:|---|---:|---|---|");
        for (LoadedCutter c : work.cutters())
            line("| [ ] | " + c.number() + " | " + InchSentence.name(c.name()) + " | " + c.shape() + " | " + c.flutes()
                    + " | " + show.coarse(c.fluteLengthMm()) + " | " + show.coarse(c.stickoutMm()) + " | " + c.holder()
                    + " | " + Numbers.time(c.timeS()) + " | | |");
        small();
        hours();
        traveller();
    }

    private void small() {
        Map<String, Integer> parts = new LinkedHashMap<>();
        layout.dowels().forEach(d -> parts.merge(d.dowel(), 1, Integer::sum));
        layout.screws().forEach(s -> parts.merge(s.screw(), 1, Integer::sum));
        layout.release()
                .pins()
                .forEach(p -> parts.merge("ejector pin Ø " + show.length(p.diameterMm()), 1, Integer::sum));
        line("");
        line("## Small parts and gauges");
        line("");
        parts.forEach((what, n) -> line("- [ ] " + n + " × " + what));
        layout.dowels().stream()
                .flatMap(d -> java.util.stream.Stream.of(d.holdHoleMm(), d.slipHoleMm()))
                .distinct()
                .sorted()
                .forEach(d -> line("- [ ] gauge pins around " + show.fine(d)));
        line("- [ ] parallels, indicator, depth micrometer, edge finder or probe, deburring blade, layout blue");
    }

    private void hours() {
        line("");
        line("## Hours");
        line("");
        line("| | likely | from | to |");
        line("|---|---:|---:|---:|");
        Band all = new Band(0, 0, 0);
        for (HalfWork h : work.halves())
            for (Clamping c : h.clampings()) {
                row(c.setup().name() + ", with " + c.cutterChanges() + " cutter changes", c.timeS());
                all = all.plus(c.timeS());
            }
        Band clamping = CLAMPING_S.times(work.clampings().size()),
                sawing = SAWING_S.times(work.halves().size());
        row(work.clampings().size() + " clampings, zero found anew each time", clamping);
        row("sawing and deburring " + work.halves().size() + " blanks", sawing);
        row("**all**", all.plus(clamping).plus(sawing));
        line("");
        line("Cutter changes by hand and waiting for the spindle are " + MillingText.hours(work.changeS())
                + " of it; length over feed alone would say " + MillingText.hours(work.lengthOverFeedS())
                + ". Bench work, fitting and the trial are in the quote.");
    }

    private void row(String what, Band s) {
        line("| " + what + " | " + MillingText.hours(s.nominal()) + " | " + MillingText.hours(s.low()) + " | "
                + MillingText.hours(s.high()) + " |");
    }

    private void traveller() {
        line("");
        line("## Traveller");
        line("");
        line("| | step | hours planned | hours taken | who |");
        line("|---|---|---:|---|---|");
        step("saw and deburr the blanks, mark them A and B", "");
        int sheet = 1;
        for (HalfWork h : work.halves()) {
            List<String> notes = new ArrayList<>(h.notes());
            for (Clamping c : h.clampings())
                step(
                        "sheet " + sheet++ + ": " + c.setup().name(),
                        MillingText.hours(c.timeS().nominal()));
            step("half " + h.half() + ": measure before loosening, see its sheet", "");
            notes.forEach(n -> step("half " + h.half() + ": " + lowered(n), ""));
            h.byHand().forEach(b -> step("half " + h.half() + ", by hand: " + b, ""));
        }
        step("deburr outside edges; parting line, gate and shut-offs stay sharp", "");
        step("press dowels in, close the halves, blue the parting faces: at least 80 % must touch", "");
        step("wash, dry, oil; keep the halves together", "");
    }

    private static String lowered(String s) {
        String t = s.endsWith(".") ? s.substring(0, s.length() - 1) : s;
        return t.isEmpty() || t.length() > 1 && Character.isUpperCase(t.charAt(1))
                ? t
                : Character.toLowerCase(t.charAt(0)) + t.substring(1);
    }

    private void step(String what, String hours) {
        line("| [ ] | " + what + " | " + hours + " | | |");
    }

    private void line(String text) {
        page.append(show.sentence(text)).append('\n');
    }
}
