package shotwright.mold;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import shotwright.finding.Finding;
import shotwright.geom.Transform;
import shotwright.geom.Vec3;
import shotwright.measure.Source;
import shotwright.mesh.complex.ColumnTest;
import shotwright.mesh.pull.HiddenPatches;
import shotwright.mesh.pull.Parting;
import shotwright.mesh.pull.PartingHeights;
import shotwright.mesh.pull.SightTolerance;
import shotwright.mesh.pull.SteepRisers;

/** What is to be said about a parting: how it was made, where it steps too steeply, where it locks. */
final class PartingWords {
    /** Common practice: 5° on each riser of a stepped parting, 3° at the least. */
    private static final double RISER_DEG = 5;

    private static final double BALANCE_LIMIT = 1e-12;

    private PartingWords() {}

    /** How far the parting surface leaves its plane on the part, mm. */
    static double stepMm(Parting parting) {
        Parting.Choice choice = parting.choice();
        if (choice == null) return 0;
        PartingHeights h = choice.heights();
        double step = 0;
        for (int v = 0; v < choice.columns().mesh().vertexCount(); v++) {
            if (choice.columns().isOuter(choice.columns().columnOf(v)))
                step = Math.max(step, Math.abs(h.at(v) - h.planeZ()));
        }
        return step;
    }

    static String used(Parting parting) {
        Parting.Choice choice = parting.choice();
        if (choice == null) return "cut by a plane only, for looking at and weighing; it does not open";
        String kind = stepMm(parting) > 0 ? "stepped with the rim" : "plane";
        if (choice.tolerance().equals(SightTolerance.LADDER.getFirst())) return kind;
        return String.format(
                Locale.ROOT,
                "%s; walls leaning up to %.1f° were taken as straight",
                kind,
                choice.tolerance().leanDeg());
    }

    static List<Finding> findings(
            Parting parting,
            MoldHalf a,
            MoldHalf b,
            double allowedLockShare,
            ColumnTest after,
            double balance,
            Transform toMold) {
        List<Finding> out = new ArrayList<>();
        Parting.Choice choice = parting.choice();
        if (choice == null) {
            out.add(Finding.stop(
                            "parting-by-plane-only",
                            "No parting line round the part could be found; the block is cut by a plane, and metal inside hollows"
                                    + " lies on the wrong side of it.")
                    .remedy("Turn the part to another pull direction, or export it again as one clean solid."));
        } else {
            locks(choice, a, b, allowedLockShare, toMold, out);
            coarse(parting, choice, out);
            contradictions(choice, toMold, out);
        }
        steep(parting, out);
        sound(parting, a, b, after, balance, out);
        return out;
    }

    private static void locks(
            Parting.Choice choice, MoldHalf a, MoldHalf b, double allowedShare, Transform toMold, List<Finding> out) {
        List<HiddenPatches.Patch> patches = choice.hidden().patches();
        for (MoldHalf h : List.of(a, b)) {
            if (h.canOpen()) continue;
            Finding f = Finding.stop(
                            "half-cannot-open",
                            String.format(
                                    Locale.ROOT,
                                    "Half %s cannot open: over %.1f %% of the part's shadow its metal is caught behind the part.",
                                    h.half(),
                                    100 * h.lockShare()))
                    .measured(
                            100 * h.lockShare(),
                            100 * allowedShare,
                            "%",
                            new Source(Source.Kind.COMPUTED, "columns along the pull through the halves"))
                    .remedy(
                            "Change the part so that nothing hides behind anything along the pull, or form the place with a hand-loaded"
                                    + " insert.",
                            "",
                            "a side action or a hand-loaded insert");
            out.add(patches.isEmpty() ? f : f.at(toMold.apply(patches.getFirst().place())));
        }
    }

    private static void coarse(Parting parting, Parting.Choice choice, List<Finding> out) {
        if (choice.tolerance().equals(SightTolerance.LADDER.getFirst())) return;
        out.add(Finding.note(
                "parting-tolerance",
                String.format(
                        Locale.ROOT,
                        "Walls leaning up to %.1f° were taken as standing along the pull, because a finer view did not close (%s).",
                        choice.tolerance().leanDeg(),
                        parting.failures().getLast())));
    }

    private static void contradictions(Parting.Choice choice, Transform toMold, List<Finding> out) {
        double noise = 1e-5 * choice.columns().mesh().box().diagonal();
        List<Vec3> places = choice.columns().contradictions(noise);
        if (places.isEmpty()) return;
        out.add(Finding.watch(
                        "parting-contradiction",
                        places.size()
                                + " places look down above where they look up; the parting runs between them as well as it can.")
                .at(toMold.apply(places.getFirst()))
                .remedy("Check the part's surface there for folds."));
    }

    private static void steep(Parting parting, List<Finding> out) {
        SteepRisers steep = SteepRisers.of(parting.complex(), parting.a(), parting.b(), RISER_DEG);
        double least = 1e-4
                * parting.complex().grain().diagonal()
                * parting.complex().grain().diagonal();
        Vec3 place = steep.place();
        if (place == null || steep.area() < least) return;
        out.add(Finding.watch(
                        "parting-riser-steep",
                        String.format(
                                Locale.ROOT,
                                "The parting steps too steeply over %.1f mm²; the halves rub there instead of closing, and plastic flashes in"
                                        + " between.",
                                steep.area()))
                .at(place)
                .measured(steep.worstDeg(), RISER_DEG, "°", Source.COMMON_PRACTICE)
                .remedy(
                        "Give the wall where the line steps 5° of draft (3° at the least), move the step along to a vertical wall, or form the"
                                + " place with an insert."));
    }

    private static void sound(
            Parting parting, MoldHalf a, MoldHalf b, ColumnTest after, double balance, List<Finding> out) {
        int open = a.openEdges() + b.openEdges();
        if (open > 0)
            out.add(Finding.stop(
                    "half-not-closed",
                    "The halves have " + open + " edges that match no other; do not cut from them."));
        if (balance > BALANCE_LIMIT)
            out.add(Finding.stop(
                            "volumes-do-not-add-up",
                            "Halves, parts and cut-outs do not add up to the block; do not cut from them.")
                    .measured(
                            balance,
                            BALANCE_LIMIT,
                            "",
                            new Source(Source.Kind.COMPUTED, "volumes by the divergence theorem")));
        int bad = Math.max(after.bad(), parting.columns().bad());
        if (bad == 0) return;
        String text =
                bad + " of " + after.columns() + " columns through the mold meet the materials in the wrong order";
        out.add(
                after.badShare() > Parting.BAD_SHARE_LIMIT
                        ? Finding.stop("columns-wrong", text + "; do not cut from these halves.")
                        : Finding.watch("columns-wrong", text + ": slivers of the mesh fold over there."));
    }
}
