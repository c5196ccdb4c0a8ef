package shotwright.intake;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import shotwright.finding.Finding;
import shotwright.geom.Vec3;
import shotwright.measure.Digits;
import shotwright.measure.Source;
import shotwright.mesh.Bvh;
import shotwright.mesh.Edges;
import shotwright.mesh.MassProperties;
import shotwright.mesh.SelfCrossing;
import shotwright.mesh.TriMesh;

/**
 * The gate a body must pass to become a part: every side of every facet matched by one running the other way, no edge with more than two
 * facets, a volume above zero. A refusal names the count and a place and offers the mend that has been tried and would work.
 */
final class SolidGate {
    private static final Source CLOSED = Source.computed("a solid has none");

    private SolidGate() {}

    /** What speaks against the body; empty when nothing does. Mends are offered only when {@code mayOffer}. */
    static List<Finding> check(TriMesh mesh, Set<Mend> mends, boolean mayOffer, ReadGuard guard) {
        List<Finding> out = new ArrayList<>();
        if (mesh.facetCount() == 0) {
            out.add(Finding.stop("no-facets", "The file holds no usable facet, so there is nothing to mold.")
                    .remedy("Ask the customer for a new export of the part."));
            return out;
        }
        guard.at("checking that the solid is closed", 0.7);
        Edges edges = Edges.of(mesh);
        int[] open = edges.open(), many = edges.nonManifold(), turned = edges.misWound();
        if (open.length > 0) out.add(openEdges(mesh, edges, open, mends, mayOffer, guard));
        if (many.length > 0) out.add(nonManifold(edges, many));
        if (turned.length > 0) out.add(turned(mesh, edges, turned, mends, mayOffer && open.length + many.length == 0));
        if (out.isEmpty()) {
            Finding f = volume(mesh, mends);
            if (f != null) out.add(f);
            else out.addAll(crossing(mesh, guard));
        }
        return out;
    }

    private static List<Finding> crossing(TriMesh mesh, ReadGuard guard) {
        SelfCrossing s = SelfCrossing.of(Bvh.of(mesh), guard.progress().part(0.8, 1));
        Source limit = Source.computed("depth above " + UnitRule.number(s.depthTolerance() * 1e3)
                + " µm, a hundred-thousandth of the part's size");
        if (s.crossingCount() > 0) {
            SelfCrossing.Place p = s.places().getFirst();
            String n = (s.capped() ? "at least " : "") + count(s.crossingCount(), "pair");
            return List.of(Finding.stop(
                            "self-crossing",
                            "The surface runs through itself: " + n + " of facets cross, the first " + near(p.at())
                                    + ". What is plastic and what is air is not clear there, so the part cannot be parted.")
                    .at(p.at())
                    .measured(s.crossingCount(), 0, "pairs", limit)
                    .remedy("Ask for an export in which overlapping pieces are united into one solid."));
        }
        if (s.overlapCount() == 0) return List.of();
        SelfCrossing.Place p = s.places().getFirst();
        return List.of(
                Finding.watch(
                                "folded-surface",
                                count(s.overlapCount(), "pair") + " of facets lie on each other, the first "
                                        + near(p.at()) + "; the surface is folded or doubled there and may part badly.")
                        .at(p.at())
                        .measured(s.overlapCount(), 0, "pairs", limit)
                        .remedy(
                                "Look at the place; if a wall without thickness is meant, ask the customer for its thickness."));
    }

    private static Finding openEdges(
            TriMesh mesh, Edges edges, int[] open, Set<Mend> mends, boolean mayOffer, ReadGuard guard) {
        Vec3 at = edges.midpoint(open[0]);
        String text = "The surface is not closed: " + count(open.length, "open edge") + ", the first " + near(at)
                + ". Without a closed surface there is no inside to fill with plastic, so no mold can be made from it.";
        String remedy = "Ask for an export of one closed solid.";
        if (!mends.contains(Mend.HOLES) && mayOffer) {
            guard.at("looking at the holes", 0.75);
            Mending.Mended m = HoleFilling.fill(mesh);
            if (m.facets() > 0 && Edges.of(m.mesh()).isClosed())
                remedy = "All holes are flat: --mend holes closes them with " + count(m.facets(), "flat facet")
                        + "; or ask for an export of one closed solid.";
        } else if (mayOffer) {
            remedy = "What is left of the holes is not flat and cannot be closed without guessing; " + lower(remedy);
        }
        return Finding.stop("open-edges", text)
                .at(at)
                .measured(open.length, 0, "edges", CLOSED)
                .remedy(remedy);
    }

    private static Finding nonManifold(Edges edges, int[] many) {
        Vec3 at = edges.midpoint(many[0]);
        return Finding.stop(
                        "non-manifold-edges",
                        count(many.length, "edge") + (many.length == 1 ? " is" : " are")
                                + " shared by three or more facets, the first " + near(at)
                                + ": there it is not clear what is plastic and what is air, so the part cannot be parted.")
                .at(at)
                .measured(many.length, 0, "edges", CLOSED)
                .remedy(
                        "Ask for an export in which walls do not meet in a line without thickness, or in which the parts of"
                                + " the solid are united.");
    }

    private static Finding turned(TriMesh mesh, Edges edges, int[] turned, Set<Mend> mends, boolean onlyThis) {
        Vec3 at = edges.midpoint(turned[0]);
        String text = "The facets do not agree which side is outside: they change sides across "
                + count(turned.length, "edge") + ", the first " + near(at) + ". Volume and draft would come out wrong.";
        String remedy = "Ask for an export with all facets facing outward.";
        Mending.Mended m = onlyThis && !mends.contains(Mend.WINDING) ? Mending.winding(mesh) : null;
        if (m != null && Edges.of(m.mesh()).isClosed())
            remedy = "--mend winding turns " + count(m.facets(), "facet") + " of " + mesh.facetCount()
                    + " so that all face the same way; or ask for a new export.";
        return Finding.stop("winding-mixed", text)
                .at(at)
                .measured(turned.length, 0, "edges", CLOSED)
                .remedy(remedy);
    }

    private static @Nullable Finding volume(TriMesh mesh, Set<Mend> mends) {
        MassProperties mass = MassProperties.of(mesh);
        double v = mass.volumeMm3(), d = mass.box().diagonal();
        if (Math.abs(v) <= 1e-12 * d * d * d || !Double.isFinite(v))
            return Finding.stop(
                            "no-volume", "The facets enclose no volume: the part is flat, there is nothing to fill.")
                    .at(mass.box().centre())
                    .remedy("Ask for an export of the solid, not of a sheet or a drawing.");
        if (v > 0) return null;
        return Finding.stop(
                        "inside-out",
                        "The solid is inside out: its facets face inward and enclose " + UnitRule.number(v)
                                + " mm³. Plastic and metal would change places.")
                .at(mass.box().centre())
                .measured(v, 0, "mm³", Source.computed("a solid has a volume above zero"))
                .remedy(
                        mends.contains(Mend.FLIP)
                                ? "Ask for an export with all facets facing outward."
                                : "--mend flip turns all facets; or ask for an export with all facets facing outward.");
    }

    static String near(Vec3 p) {
        return "near x " + Digits.fixed(p.x(), 2) + ", y " + Digits.fixed(p.y(), 2) + ", z " + Digits.fixed(p.z(), 2)
                + " mm";
    }

    static String count(long n, String what) {
        return n + " " + what + (n == 1 ? "" : "s");
    }

    private static String lower(String s) {
        return s.substring(0, 1).toLowerCase(Locale.ROOT) + s.substring(1);
    }
}
