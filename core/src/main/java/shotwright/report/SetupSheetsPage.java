package shotwright.report;

import java.util.List;
import java.util.Locale;
import shotwright.geom.Box3;
import shotwright.geom.Vec3;
import shotwright.layout.DowelPlace;
import shotwright.layout.Gate;
import shotwright.layout.Half;
import shotwright.layout.LayoutResult;
import shotwright.layout.Vent;
import shotwright.machining.MachiningResult;
import shotwright.machining.MachiningResult.Clamping;
import shotwright.machining.MachiningResult.HalfWork;
import shotwright.machining.MachiningResult.LoadedCutter;
import shotwright.machining.MachiningResult.OperationWork;
import shotwright.machining.setup.Setup;
import shotwright.measure.InchSentence;
import shotwright.stock.Fit;

/** {@code setup-sheets.md}: one sheet for each clamping, what to measure before it is loosened, cautions in front. */
public final class SetupSheetsPage {
    private final MachiningResult work;
    private final LayoutResult layout;
    private final Numbers show;
    private final StringBuilder page = new StringBuilder();

    private SetupSheetsPage(MachiningResult work, LayoutResult layout, boolean inch) {
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
        SetupSheetsPage p = new SetupSheetsPage(work, layout, inch);
        p.write(title);
        return p.page.toString();
    }

    private void write(String title) {
        line("# Set-up sheets");
        line("");
        line(InchSentence.name(title) + ". Mill: " + InchSentence.name(work.mill()) + ". Control: " + work.control()
                + ".");
        line("");
        line("Programs are in **" + (work.programsInch() ? "inches, G20" : "millimetres, G21")
                + "**. Every height is that of the cutter's tip. Run the sheets in this order.");
        line("");
        line("## Cautions");
        line("");
        MillingCautions.ALL.forEach(c -> line("- " + c));
        int n = 1;
        for (HalfWork h : work.halves()) {
            for (Clamping c : h.clampings()) {
                boolean last = c == h.clampings().getLast();
                sheet(n++, h, c);
                if (last) inspection(Half.valueOf(h.half()));
                signOff();
            }
        }
    }

    private void sheet(int number, HalfWork half, Clamping c) {
        Setup s = c.setup();
        String name =
                s.name().substring(0, 1).toUpperCase(Locale.ROOT) + s.name().substring(1);
        line("");
        line("---");
        line("");
        line("## Sheet " + number + ": " + name);
        line("");
        if (!half.canOpen()) line("**This half cannot be pulled off the part as it is.** See the summary.");
        if (!half.canOpen()) line("");
        row("Program", MillingText.program(c));
        row(
                "Zero",
                s.offset() + ": x 0 at the finished left end, y 0 at the fixed jaw's side, z 0 on "
                        + (s.name().contains("back") ? "the finished back face" : "the finished parting face"));
        row("Stock as clamped", stock(s.stock()));
        row(
                "Vise",
                show.coarse(s.gripMm()) + " of it in the jaws; fixed jaw at the back (+y); clamp with at least "
                        + Numbers.figures(c.clampForceN(), 2) + " N");
        if (!s.keepOut().isEmpty())
            row(
                    "Jaws reach up to",
                    "z " + show.length(s.keepOut().getFirst().max().z()) + "; cutters stay clear of them");
        Setup.Travel t = s.travel();
        row(
                "Travel",
                show.box(new Vec3(t.xMm(), t.yMm(), t.zMm())) + " in x, y, z; the mill has "
                        + show.box(new Vec3(t.millXMm(), t.millYMm(), t.millZMm())));
        row("Time", MillingText.hours(c.timeS()) + " with " + c.cutterChanges() + " cutter changes");
        line("");
        int step = 1;
        for (String x : s.steps()) line(step++ + ". " + x);
        line("");
        line("| op | what | cutter | stands out | speed | feed | deepest tip | time |");
        line("|---:|---|---|---:|---:|---:|---:|---:|");
        for (OperationWork o : c.operations()) operation(o);
    }

    private void operation(OperationWork o) {
        line("| " + o.number() + " | " + o.words() + " | T" + o.toolNumber() + " "
                + InchSentence.name(tool(o.toolNumber()).name()) + " | "
                + show.coarse(tool(o.toolNumber()).stickoutMm()) + " | " + Numbers.fixed(o.speedRpm(), 0) + " 1/min | "
                + Numbers.fixed(o.feedMmPerMin(), 0) + " mm/min | z " + show.fine(o.lowestZMm()) + " | "
                + Numbers.time(o.timeS()) + " |");
    }

    private LoadedCutter tool(int number) {
        return work.cutters().stream()
                .filter(c -> c.number() == number)
                .findFirst()
                .orElseThrow();
    }

    private String stock(Box3 b) {
        return show.box(b.size()) + "; x " + range(b.min().x(), b.max().x()) + ", y "
                + range(b.min().y(), b.max().y()) + ", z "
                + range(b.min().z(), b.max().z()) + " from the zero";
    }

    private String range(double low, double high) {
        return show.length(low) + " to " + show.length(high);
    }

    /** What is measured while the block still stands in the vise. */
    private void inspection(Half half) {
        line("");
        line("**Measure before you loosen the vise**");
        line("");
        line("| what | asked | limits | with | found |");
        line("|---|---:|---|---|---|");
        check("parting face, four corners and middle", "flat", "within " + show.fine(0.01), "indicator or probe");
        for (DowelPlace d : layout.dowels()) dowel(half, d);
        if (layout.dowels().size() > 1) {
            double pitch = layout.dowels()
                    .get(0)
                    .atMm()
                    .distance(layout.dowels().get(1).atMm());
            check("dowels, centre to centre", show.fine(pitch), "± " + show.fine(0.01), "pins and micrometer");
        }
        double deep =
                half == Half.A ? layout.block().thicknessAMm() : layout.block().thicknessBMm();
        check("parting face to back face", show.length(deep), "± " + show.length(0.05), "micrometer, four corners");
        for (Gate g : layout.gates())
            if (g.half() == half)
                check(
                        "gate, depth (starting size, metal-safe)",
                        show.fine(g.depthMm()),
                        "not deeper; grows to " + show.fine(g.largestDepthMm()) + " in steps",
                        "depth micrometer");
        for (Vent v : layout.vents())
            if (v.half() == half)
                check("vent, depth", show.fine(v.depthMm()), "± " + show.fine(0.005), "solder wire or casting putty");
        check(
                "cavity and core heights, walls at two depths",
                "drawing",
                "± " + show.length(0.02),
                "probe or height gauge");
        check("letters", "read on the part", "mirrored in the metal", "eye and mirror");
        line("");
        line("A small mill with a touch probe measures to about " + show.fine(0.005) + " to " + show.fine(0.015)
                + ". Do not claim better. Leave the parting line, gate and shut-offs sharp.");
    }

    private void dowel(Half half, DowelPlace d) {
        boolean held = d.holdHalf() == half;
        double hole = held ? d.holdHoleMm() : d.slipHoleMm(), spread = Fit.H7.highUm(d.diameterMm()) / 2000.0;
        check(
                "dowel hole, " + (held ? "pin kept" : "pin slides"),
                show.fine(hole),
                show.fine(hole - spread) + " to " + show.fine(hole + spread),
                "gauge pins, class X");
    }

    private void check(String what, String asked, String limits, String with) {
        line("| " + what + " | " + asked + " | " + limits + " | " + with + " | |");
    }

    private void signOff() {
        line("");
        for (String x :
                List.of("cutters and stickouts checked", "zero checked", "run in the air", "measured", "deburred"))
            page.append("- [ ] ").append(x).append('\n');
        line("");
        line("Who and when: ______________________");
    }

    private void row(String name, String text) {
        line("- **" + name + ":** " + text);
    }

    private void line(String text) {
        page.append(show.sentence(text)).append('\n');
    }
}
