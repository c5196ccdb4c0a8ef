package shotwright.report;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import shotwright.layout.DowelPlace;
import shotwright.layout.FeedSegment;
import shotwright.layout.Gate;
import shotwright.layout.LayoutResult;
import shotwright.layout.Vent;
import shotwright.measure.InchSentence;
import shotwright.mold.MoldHalf;
import shotwright.mold.MoldResult;
import shotwright.mold.exact.ExactMold;

/** Says a layout and its halves in rows of words and numbers. */
final class LayoutText {
    private LayoutText() {}

    static Map<String, String> rows(LayoutResult l, Numbers show) {
        Map<String, String> rows = new LinkedHashMap<>();
        rows.put(
                "Parting",
                (l.parting().kind() == shotwright.layout.PartingChoice.Kind.PLANE
                                ? "one plane; "
                                : "a stepped surface; ")
                        + l.parting().reason());
        if (!l.gates().isEmpty()) rows.put("Gate", gate(l.gates().getFirst(), show));
        rows.put("Feed", feed(l, show));
        rows.put("Vents", vents(l.vents(), show));
        rows.put("Dowels", dowels(l.dowels(), show));
        rows.put("Comes out", l.release().words());
        rows.put(
                "Block",
                show.face(l.block().widthMm(), l.block().heightMm()) + ", A "
                        + show.coarse(l.block().thicknessAMm()) + " and B "
                        + show.coarse(l.block().thicknessBMm()) + " thick");
        return rows;
    }

    private static String gate(Gate g, Numbers show) {
        return g.kind().name().toLowerCase(java.util.Locale.ROOT) + ", " + show.length(g.widthMm()) + " wide, "
                + show.length(g.depthMm()) + " deep, land "
                + show.length(g.landMm()) + ", in half " + g.half() + "; " + opened(g, show) + "; trimming takes about "
                + Numbers.time(g.trimS())
                + " a part and leaves a mark of " + show.length(g.markMm());
    }

    private static String opened(Gate g, Numbers show) {
        return Gate.opens(g.widthMm(), g.depthMm(), g.largestWidthMm(), g.largestDepthMm())
                ? "after short shots open it in steps of " + show.length(g.stepMm()) + " up to "
                        + show.length(g.largestWidthMm()) + " × " + show.length(g.largestDepthMm())
                : "the wall allows no larger one";
    }

    private static String feed(LayoutResult l, Numbers show) {
        String pieces = l.feed().stream()
                .filter(s -> s.kind() != FeedSegment.Kind.GATE)
                .map(s -> s.kind().name().toLowerCase(java.util.Locale.ROOT).replace('_', ' ') + " "
                        + show.coarse(s.from().widthMm())
                        + (Math.abs(s.from().widthMm() - s.to().widthMm()) > 0.05
                                ? " to " + show.coarse(s.to().widthMm())
                                : "")
                        + " wide, " + show.coarse(s.lengthMm()) + " long")
                .distinct()
                .collect(Collectors.joining("; "));
        return (l.entry() == LayoutResult.NozzleEntry.BACK
                        ? "nozzle through the back of half A; "
                        : "nozzle on the edge at the parting line; ")
                + pieces + "; " + show.volume(l.feedVolumeMm3()) + " in all";
    }

    private static String vents(List<Vent> vents, Numbers show) {
        if (vents.isEmpty()) return "none";
        Vent v = vents.getFirst();
        return vents.size() + ", " + show.coarse(v.widthMm()) + " wide, " + depth(v.depthMm(), show)
                + " deep over a land of " + show.coarse(v.landMm()) + ", then a channel "
                + show.coarse(v.channelDepthMm()) + " deep to the open air";
    }

    /** A vent's depth needs a digit more than other lengths. */
    private static String depth(double mm, Numbers show) {
        return show.toString().contains("inch") ? Numbers.fixed(mm / 25.4, 4) + " in" : Numbers.fixed(mm, 3) + " mm";
    }

    private static String dowels(List<DowelPlace> dowels, Numbers show) {
        if (dowels.isEmpty()) return "none";
        DowelPlace d = dowels.getFirst();
        String sold = Numbers.figures(d.diameterMm(), 3).replaceAll("\\.?0+$", "") + " mm";
        return dowels.size() + " of " + InchSentence.name(sold) + ", kept in half " + d.holdHalf() + ", standing proud "
                + show.coarse(d.proudMm()) + "; " + d.fit();
    }

    static Map<String, String> moldRows(MoldResult m, Numbers show) {
        Map<String, String> rows = new LinkedHashMap<>();
        for (MoldHalf h : List.of(m.a(), m.b())) {
            rows.put(
                    "Half " + h.half(),
                    show.volume(h.volumeMm3()) + ", " + (h.openEdges() == 0 ? "closed" : h.openEdges() + " open edges")
                            + ", " + Numbers.fixed(h.mesh().facetCount(), 0) + " facets, "
                            + h.opening().words());
        }
        rows.put(
                "Checked",
                "metal, plastic and cut-outs add up to the block"
                        + (m.balanceError() < 5e-7
                                ? ""
                                : " but for " + Numbers.figures(100 * m.balanceError(), 2) + " %")
                        + "; looked through at " + Numbers.fixed(m.columns(), 0) + " places, "
                        + (m.badColumns() == 0 ? "sound at all of them" : "wrong at " + m.badColumns() + " of them"));
        if (m.specks().count() > 0)
            rows.put(
                    "Specks",
                    (m.specks().count() == 1 ? "one loose speck" : m.specks().count() + " loose specks")
                            + " of metal, "
                            + Numbers.figures(m.specks().volumeMm3(), 1)
                            + " mm³ in all, given to what they touch");
        return rows;
    }

    /** The exact halves, when there are any. */
    static Map<String, String> exactRows(@Nullable ExactMold m) {
        if (m == null || m.halves().isEmpty()) return Map.of();
        String faces = m.halves().stream()
                .map(h -> Numbers.fixed(h.check().faces(), 0) + " in " + h.half())
                .collect(Collectors.joining(", "));
        double off = m.halves().stream()
                .mapToDouble(h -> Math.abs(h.overMeshMm3()))
                .max()
                .orElse(0);
        return Map.of(
                "As STEP",
                "both halves as exact solids, one closed solid each, faces: " + faces
                        + "; they and the parts add up to the block, and are within " + Numbers.figures(off, 1)
                        + " mm³ of the mesh halves");
    }
}
