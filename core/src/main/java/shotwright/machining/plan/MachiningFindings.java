package shotwright.machining.plan;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import shotwright.finding.Finding;
import shotwright.machining.MachiningResult.Clamping;
import shotwright.machining.MachiningResult.HalfWork;
import shotwright.machining.MachiningResult.ProgramFault;
import shotwright.machining.proof.Limits;
import shotwright.measure.Digits;
import shotwright.measure.Source;

/** What has to be said about the milling of one half. */
final class MachiningFindings {
    private static final Source LEFT = Source.computed("planned ridge and 0.02 mm, handbook of the project 8.3");

    /** Less surface than this is nothing to speak of. */
    private static final double TRIFLE_MM2 = 0.05;

    private final HalfWork work;
    private final List<Finding> out = new ArrayList<>();

    private MachiningFindings(HalfWork work) {
        this.work = work;
    }

    static List<Finding> of(HalfPlan plan, HalfWork work) {
        MachiningFindings f = new MachiningFindings(work);
        for (Clamping c : work.clampings()) if (!c.clean()) f.notProved(c);
        if (!work.canOpen()) f.cannotOpen();
        f.left();
        for (String t : plan.setups().trouble())
            f.out.add(Finding.stop("clamping-trouble", "Half " + work.half() + ": " + t));
        for (String n : work.notes())
            if (!plan.setups().trouble().contains(n)) f.out.add(Finding.note("milling-note", n));
        if (!work.byHand().isEmpty())
            f.out.add(Finding.note(
                    "left-to-the-bench",
                    "Half " + work.half() + ", by hand: "
                            + String.join("; ", work.byHand()).replaceFirst("\\.$", "") + "."));
        return f.out;
    }

    private void notProved(Clamping c) {
        Map<String, List<ProgramFault>> kinds = new LinkedHashMap<>();
        for (ProgramFault f : c.faults())
            kinds.computeIfAbsent(f.operation() + f.kind(), k -> new ArrayList<>())
                    .add(f);
        List<String> says = new ArrayList<>();
        for (List<ProgramFault> same : kinds.values()) {
            ProgramFault f = same.getFirst();
            says.add("Operation " + f.operation() + " (" + f.words() + "), line " + f.line()
                    + (same.size() > 1 ? " and " + (same.size() - 1) + " more" : "") + ": " + f.text());
        }
        int told = Math.min(3, says.size());
        String more = says.size() > told ? " Other kinds of fault: " + (says.size() - told) + "." : "";
        out.add(Finding.stop(
                        "program-not-proved",
                        "The program of " + c.setup().name() + " is not given out, because its proof has faults. "
                                + String.join(" ", says.subList(0, told)) + more)
                .remedy("another mill, other cutters or a thicker block may help; 00-summary.json lists every fault"));
    }

    private void cannotOpen() {
        out.add(Finding.watch(
                        "programs-of-a-half-that-cannot-open",
                        "Half " + work.half()
                                + " cannot be pulled off the part. Its programs mill what a cutter reaches from above and carry HALF CANNOT OPEN in their names.")
                .remedy("change the part as the halves' findings say, then run the job again"));
    }

    private void left() {
        double missed = work.proof().unreachableMm2(), worst = work.proof().maxLeftoverMm();
        double limit = Limits.USUAL.leftoverMm();
        if (missed > TRIFLE_MM2)
            out.add(Finding.watch(
                            "surface-not-reached",
                            "No cutter on the rack gets down to " + Digits.figures(missed, 2)
                                    + " mm² of the molding surface of half " + work.half()
                                    + ": inside corners keep the radius of the cutter, and the part gets it.")
                    .remedy("ask the customer for rounder corners there, or finish them on the bench"));
        if (worst > limit)
            out.add(Finding.watch(
                            "metal-left",
                            "The programs of half " + work.half() + " leave up to " + Digits.fixed(worst, 2)
                                    + " mm of metal; "
                                    + Digits.figures(work.proof().leftoverMm2(), 2)
                                    + " mm² have more than 0.02 mm left.")
                    .measured(worst, limit, "mm", LEFT)
                    .remedy("see the list of what is left to the bench, and blue the half against the other one"));
    }
}
