package shotwright.review;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import org.jspecify.annotations.Nullable;
import shotwright.finding.Finding;
import shotwright.finding.Severity;
import shotwright.measure.Source;
import shotwright.part.PulledPart;

/**
 * Draft by wall. Walls of one kind, half and lean make one row; a row that falls short gets one finding with the smallest change, what it
 * does to the size and what it saves. Walls less than {@value #EDGE_MM} mm deep are edges and are left out.
 */
final class DraftReview {
    static final double EDGE_MM = 0.3;
    private static final double SAME_LEAN_DEG = 0.25;
    private static final double SAME_SIZE_MM = 0.15;
    private static final int MOST_ROWS = 14;
    private static final int MOST_FINDINGS = 8;
    /** Short by so much and so deep, the customer is asked; less is watched (half a degree drags, a quarter can be polished). */
    private static final double ASK_SHORT_DEG = 0.45;

    private static final double ASK_DEPTH_MM = 3;
    /** A wall that leans against the draw by no more than this across gives way. */
    private static final double GIVES_WAY_MM = 0.02;

    private final PulledPart pulled;
    private final Walls walls;
    private final MoldingLimits limits;
    private final Finish finish;
    private final RackCutters cutters;
    private final FaceTable faces;

    DraftReview(
            PulledPart pulled, Walls walls, MoldingLimits limits, Finish finish, RackCutters cutters, FaceTable faces) {
        this.pulled = pulled;
        this.walls = walls;
        this.limits = limits;
        this.finish = finish;
        this.cutters = cutters;
        this.faces = faces;
    }

    /** One row with the walls it gathers. */
    private record Group(List<FormedWall> walls, double askedDeg, boolean isShort) {
        FormedWall first() {
            return walls.getFirst();
        }

        double area() {
            return walls.stream().mapToDouble(w -> w.wall().areaMm2()).sum();
        }

        double depth() {
            return walls.stream().mapToDouble(w -> w.wall().depthMm()).max().orElse(0);
        }

        double has() {
            return walls.stream()
                            .mapToDouble(w -> w.hasDeg() * w.wall().areaMm2())
                            .sum()
                    / area();
        }

        /** Short degrees by area: how much this row matters. */
        double weight() {
            return isShort ? (askedDeg - has()) * area() : 0;
        }
    }

    /** Rows worst first, and what is said about them. */
    List<Said<DraftRegion>> review(List<FormedWall> formed) {
        List<Group> groups = new ArrayList<>();
        for (FormedWall w : formed) if (w.wall().depthMm() >= EDGE_MM) gather(groups, w);
        groups.sort(Comparator.comparingDouble(Group::weight).reversed().thenComparing(g -> -g.area()));
        List<Said<DraftRegion>> rows = new ArrayList<>();
        int told = 0;
        List<Group> rest = new ArrayList<>();
        for (Group g : groups) {
            if (rows.size() >= MOST_ROWS || g.isShort && told >= MOST_FINDINGS) {
                rest.add(g);
                continue;
            }
            Finding finding = g.isShort ? shortFall(g) : justEnough(g);
            if (g.isShort) told++;
            rows.add(new Said<>(row(g, name(g)), finding));
        }
        if (!rest.isEmpty()) rows.add(others(rest));
        return rows;
    }

    private void gather(List<Group> groups, FormedWall w) {
        double asked = DraftRule.askedDeg(w.shape(), w.wall().depthMm(), limits, finish);
        boolean isShort = w.hasDeg() < asked - DraftRule.BAND_DEG;
        for (Group g : groups) {
            FormedWall f = g.first();
            boolean alike = f.shape() == w.shape()
                    && f.side() == w.side()
                    && g.isShort == isShort
                    && Math.abs(f.acrossMm() - w.acrossMm()) < SAME_SIZE_MM
                    && g.askedDeg == asked;
            if (alike && (!isShort || Math.abs(f.hasDeg() - w.hasDeg()) < SAME_LEAN_DEG)) {
                g.walls.add(w);
                return;
            }
        }
        groups.add(new Group(new ArrayList<>(List.of(w)), asked, isShort));
    }

    private String name(Group g) {
        if (g.walls.size() > 1) return Say.plural(g.first().name());
        List<FaceReview> under = under(g);
        return under.size() == 1 ? under.getFirst().name() : g.first().name();
    }

    /** The exact faces of a row. */
    private List<FaceReview> under(Group g) {
        return g.walls.stream()
                .flatMap(w -> faces.under(w.wall().facets()).stream())
                .distinct()
                .toList();
    }

    private DraftRegion row(Group g, String name) {
        double least = g.walls.stream().mapToDouble(FormedWall::leastDeg).min().orElse(0);
        double shortArea = g.walls.stream()
                .mapToDouble(w -> w.wall()
                        .shortAreaMm2(pulled.mesh(), walls.leanDeg(), w.side(), g.askedDeg - DraftRule.BAND_DEG))
                .sum();
        int[] facets = g.walls.stream()
                .flatMapToInt(w -> Arrays.stream(w.wall().facets()))
                .toArray();
        return new DraftRegion(
                0,
                name,
                g.first().shape(),
                g.first().side(),
                g.walls.size(),
                g.area(),
                g.depth(),
                g.has(),
                least,
                g.askedDeg,
                shortArea,
                pulled.toFile(pulled.mesh().centroid(g.first().wall().facets()[0])),
                facets);
    }

    private Said<DraftRegion> others(List<Group> rest) {
        List<FormedWall> all = rest.stream().flatMap(g -> g.walls.stream()).toList();
        List<Group> lacking = rest.stream().filter(g -> g.isShort).toList();
        double asked = rest.stream().mapToDouble(g -> g.askedDeg).max().orElse(0);
        Group merged = new Group(all, asked, !lacking.isEmpty());
        DraftRegion row = row(merged, "other walls");
        if (lacking.isEmpty()) return new Said<>(row, null);
        int count = lacking.stream().mapToInt(g -> g.walls.size()).sum();
        double area = lacking.stream().mapToDouble(Group::area).sum();
        double worst =
                lacking.stream().mapToDouble(g -> g.askedDeg - g.has()).max().orElse(0);
        Finding f = Finding.watch(
                        "draft-short-others",
                        count + " more walls, " + Say.number(area, 0)
                                + " mm² together, lean less than their depth wants.")
                .at(row.at())
                .measured(asked - worst, asked, "deg", DraftRule.TABLE)
                .remedy("Lean each up to " + Say.deg(worst) + " more; the draft picture shows where.", "", "");
        return new Said<>(row, f);
    }

    /** Outer walls that have just what they need are pointed out: milling marks across the draw use it up. */
    private @Nullable Finding justEnough(Group g) {
        if (g.first().shape() != WallShape.OUTER
                || g.has() > g.askedDeg + DraftRule.BAND_DEG
                || g.depth() < ASK_DEPTH_MM) return null;
        return Finding.note(
                        "draft-just-enough",
                        Say.capital(subject(g)) + (g.walls.size() == 1 ? " has" : " have")
                                + " just the least draft. Milling marks across the draw use it up: polish along it.")
                .at(place(g))
                .measured(g.has(), g.askedDeg, "deg", source(g));
    }

    private Finding shortFall(Group g) {
        double has = g.has(), missing = g.askedDeg - has, depth = g.depth();
        double against = DraftRule.sideChangeMm(depth, Math.max(0, -has));
        boolean back = has < -DraftRule.BAND_DEG;
        Severity severity = back && against > GIVES_WAY_MM || missing >= ASK_SHORT_DEG && depth >= ASK_DEPTH_MM
                ? Severity.ASK
                : depth < 1 ? Severity.NOTE : Severity.WATCH;
        double moves = DraftRule.sideChangeMm(depth, g.askedDeg) - DraftRule.sideChangeMm(depth, has);
        return Finding.of(
                        severity,
                        back ? "draft-reversed" : has < DraftRule.BAND_DEG ? "draft-none" : "draft-short",
                        text(g))
                .at(place(g))
                .measured(has, g.askedDeg, "deg", source(g))
                .remedy(remedy(g, missing), sizeEffect(g, moves), saves(g));
    }

    private String subject(Group g) {
        List<FaceReview> under = under(g);
        String who = g.walls.size() == 1
                ? "the " + name(g)
                : Say.some(g.walls.size(), g.first().name());
        return under.isEmpty() ? who : who + " (" + FaceTable.numbers(under) + ")";
    }

    private String text(Group g) {
        boolean one = g.walls.size() == 1;
        String who = Say.capital(subject(g)), deep = Say.mm(g.depth());
        double has = g.has();
        String half = g.first().side().words();
        if (has < -DraftRule.BAND_DEG) {
            String over = Say.mm(DraftRule.sideChangeMm(g.depth(), -has), 2);
            return who + (one ? " leans " : " lean ") + Say.deg(-has) + " against the draw and "
                    + (one ? "holds" : "hold") + " the part in " + half + " by " + over + ".";
        }
        if (has < DraftRule.BAND_DEG)
            return who + (one ? " stands" : " stand") + " straight and will drag in " + half + " over " + deep + ".";
        return who + (one ? " leans " : " lean ") + Say.deg(has) + " over " + deep + "; " + Say.deg(g.askedDeg)
                + " lets go of " + half + " without a mark.";
    }

    private String remedy(Group g, double missing) {
        String change = "Lean " + (g.walls.size() == 1 ? "it " : "each ") + Say.deg(g.askedDeg)
                + (g.has() < DraftRule.BAND_DEG ? "" : ", " + Say.deg(missing) + " more than now");
        String cut = cutters.taperAtLeast(g.askedDeg - DraftRule.BAND_DEG);
        return cut.isEmpty() ? change + "." : change + "; or leave the drawing and cut it with the " + cut + ".";
    }

    private static String sizeEffect(Group g, double movesMm) {
        String by = moved(movesMm), twice = moved(2 * movesMm);
        return switch (g.first().shape()) {
            case OUTER ->
                "The part gets " + by + " smaller a side at the end that leaves last from "
                        + g.first().side().words() + ".";
            case HOLE, POCKET -> "The mouth opens by " + twice + "; the narrow end keeps its size.";
            case BOSS -> "The boss gets " + twice + " thicker at its foot, or thinner at its end.";
            case RIB -> "Each rib gets " + twice + " thicker at its foot, or thinner at its tip.";
            case INNER -> "The wall gets " + by + " thicker at the closed end, or thinner at the rim.";
            case FLAT, CURVED -> "One end of the wall moves by " + by + ".";
        };
    }

    /** Two decimals, three for what two would make nothing of. */
    private static String moved(double mm) {
        return Say.mm(mm, Math.abs(mm) < 0.01 ? 3 : 2);
    }

    private static String saves(Group g) {
        return g.first().shape().isCore()
                ? "Force to push the part off, and white marks."
                : "Drag marks, and polishing along the draw.";
    }

    private shotwright.geom.Vec3 place(Group g) {
        return pulled.toFile(pulled.mesh().centroid(g.first().wall().facets()[0]));
    }

    private Source source(Group g) {
        boolean byResin = g.askedDeg == limits.leastDraftDeg()
                && g.depth() > DraftRule.SHALLOW_MM
                && !g.first().shape().followsDepthAlone();
        return byResin ? limits.draftSource() : DraftRule.TABLE;
    }
}
