package shotwright.review;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.BitSet;
import java.util.Comparator;
import java.util.List;
import shotwright.finding.Finding;
import shotwright.finding.Severity;
import shotwright.geom.Vec3;
import shotwright.measure.Source;
import shotwright.mesh.GreyMorphology;
import shotwright.mesh.GreyMorphology.Element;
import shotwright.mesh.Grid;
import shotwright.mesh.HeightMap;
import shotwright.part.PulledPart;

/**
 * Marks of even depth on faces that look along the pull: what stands out of, or is sunk below, the face a square of {@value #WINDOW} mm slides
 * on (top-hat of the height map). Round rims also stand out, but unevenly, and are dropped; so are islands inside sunk letters.
 */
final class LetteringReview {
    static final double WINDOW = 1.6;
    private static final double CELL = 0.05;
    private static final int MOST_CELLS = 1_000_000;
    private static final double LEAST_DEPTH = 0.08, MOST_DEPTH = 1.0, LEAST_AREA = 0.4;
    /** The shallowest quarter of a mark is at least this share of its deepest tenth. */
    private static final double EVEN = 0.85;
    /** Cell sides along a slanted border are longer than the border: by 4/π over all directions. */
    private static final double STAIRS = 4 / Math.PI;

    private static final double LEAST_STROKE = 0.6, LEAST_HEIGHT = 0.2, MOST_HEIGHT = 0.4;
    private static final double SAME_MARK_MM = 3;
    private static final Source RULE =
            Source.commonPractice("lettering 0.2 to 0.4 mm high, strokes of 0.6 mm or wider");

    private final PulledPart pulled;

    LetteringReview(PulledPart pulled) {
        this.pulled = pulled;
    }

    private record Mark(Lettering row, double[] boxMm, Vec3 pulledMm) {}

    List<Said<Lettering>> review() {
        Vec3 size = pulled.mesh().box().size();
        double margin = WINDOW;
        double area = (size.x() + 2 * margin) * (size.y() + 2 * margin);
        Grid grid = Grid.around(pulled.mesh().box().grow(margin), Math.max(CELL, Math.sqrt(area / MOST_CELLS)));
        HeightMap map = HeightMap.of(pulled.mesh(), grid);
        List<Mark> marks = new ArrayList<>();
        for (Side side : Side.values()) {
            List<Mark> sunk = marks(map, grid, side, false);
            List<Mark> raised = marks(map, grid, side, true).stream()
                    .filter(r -> sunk.stream().noneMatch(s -> encloses(s.boxMm, r.boxMm)))
                    .toList();
            marks.addAll(sunk);
            marks.addAll(raised);
        }
        marks.sort(Comparator.comparingDouble(m -> -m.row.areaMm2()));
        return told(marks);
    }

    private static boolean encloses(double[] outer, double[] inner) {
        return outer[0] <= inner[0] && outer[1] >= inner[1] && outer[2] <= inner[2] && outer[3] >= inner[3];
    }

    /** The part's own surface: looking up for A, looking down, turned over, for B. */
    private static float[] surface(HeightMap map, Side side, float none) {
        if (side == Side.A) return map.upper(none);
        float[] z = map.lower(-none);
        for (int c = 0; c < z.length; c++) z[c] = -z[c];
        return z;
    }

    private List<Mark> marks(HeightMap map, Grid grid, Side side, boolean raised) {
        Element square = Element.square((int) Math.round(WINDOW / 2 / grid.cell()));
        float[] z = surface(map, side, raised ? Float.POSITIVE_INFINITY : Float.NEGATIVE_INFINITY);
        float[] smooth = raised ? GreyMorphology.open(z, grid, square) : GreyMorphology.close(z, grid, square);
        float[] depth = new float[z.length];
        BitSet marked = new BitSet(z.length);
        for (int c = 0; c < z.length; c++) {
            if (map.intervalCount(c) == 0) continue;
            depth[c] = Math.abs(smooth[c] - z[c]);
            if (depth[c] > LEAST_DEPTH && depth[c] < MOST_DEPTH) marked.set(c);
        }
        List<Mark> marks = new ArrayList<>();
        for (GridPatches.Patch p : GridPatches.of(grid, marked)) {
            if (p.areaMm2(grid) < LEAST_AREA) break;
            Mark m = mark(p, grid, z, depth, side, raised);
            if (m != null) marks.add(m);
        }
        return marks;
    }

    private @org.jspecify.annotations.Nullable Mark mark(
            GridPatches.Patch p, Grid grid, float[] z, float[] depth, Side side, boolean raised) {
        double[] d =
                Arrays.stream(p.cells()).mapToDouble(c -> depth[c]).sorted().toArray();
        double middle = d[d.length / 2];
        if (d[d.length / 4] < EVEN * d[d.length * 9 / 10]) return null;
        double area = p.areaMm2(grid), stroke = 2 * area / (p.perimeterMm(grid) / STAIRS);
        if (stroke > WINDOW) return null;
        int[] e = p.extent(grid);
        double[] box = {grid.x(e[0]), grid.x(e[1]), grid.y(e[2]), grid.y(e[3])};
        int first = p.cells()[p.cells().length / 2];
        double height = side == Side.A ? z[first] : -z[first];
        Vec3 at = new Vec3((box[0] + box[1]) / 2, (box[2] + box[3]) / 2, height);
        double longer = Math.max(box[1] - box[0], box[3] - box[2]) + grid.cell();
        return new Mark(new Lettering(0, pulled.toFile(at), side, raised, middle, stroke, area, longer), box, at);
    }

    /** Marks near each other, of one side and depth, are one inscription and share a finding. */
    private static List<Said<Lettering>> told(List<Mark> marks) {
        List<List<Mark>> inscriptions = new ArrayList<>();
        for (Mark m : marks) {
            List<Mark> home = inscriptions.stream()
                    .filter(i -> i.stream().anyMatch(o -> belongs(o, m)))
                    .findFirst()
                    .orElse(null);
            if (home != null) home.add(m);
            else inscriptions.add(new ArrayList<>(List.of(m)));
        }
        List<Said<Lettering>> said = new ArrayList<>();
        for (List<Mark> i : inscriptions) {
            Finding f = finding(i);
            for (Mark m : i) said.add(new Said<>(m.row, f));
        }
        return said;
    }

    private static boolean belongs(Mark a, Mark b) {
        double gapX = Math.max(a.boxMm[0], b.boxMm[0]) - Math.min(a.boxMm[1], b.boxMm[1]);
        double gapY = Math.max(a.boxMm[2], b.boxMm[2]) - Math.min(a.boxMm[3], b.boxMm[3]);
        return a.row.side() == b.row.side()
                && a.row.raised() == b.row.raised()
                && Math.abs(a.row.depthMm() - b.row.depthMm()) < 0.03
                && Math.max(gapX, gapY) < SAME_MARK_MM;
    }

    private static Finding finding(List<Mark> marks) {
        Lettering first = marks.getFirst().row;
        double stroke = marks.stream().mapToDouble(m -> m.row.strokeMm()).min().orElse(0);
        double depth = first.depthMm();
        boolean thin = stroke < LEAST_STROKE - 0.03,
                low = depth < LEAST_HEIGHT - 0.01,
                high = depth > MOST_HEIGHT + 0.01;
        String who = marks.size() == 1 ? "A mark " : marks.size() + " marks ";
        String what = first.raised()
                ? "stand" + (marks.size() == 1 ? "s " : " ") + Say.mm(depth, 2) + " proud; milled into "
                        + first.side().words() + " in strokes of " + Say.mm(stroke, 2) + "."
                : (marks.size() == 1 ? "is " : "are ") + Say.mm(depth, 2) + " deep; "
                        + first.side().words() + " must be milled down all round to leave strokes of "
                        + Say.mm(stroke, 2) + " standing.";
        Finding f = Finding.of(thin || low || high ? Severity.WATCH : Severity.NOTE, "lettering", who + what)
                .at(first.at())
                .measured(stroke, LEAST_STROKE, "mm", RULE);
        if (!first.raised())
            return f.remedy(
                    "Raise it from the part instead of sinking it.",
                    "",
                    "Milling the whole face down by " + Say.mm(depth, 2) + ".");
        if (thin)
            return f.remedy("Make the strokes " + Say.mm(LEAST_STROKE, 1) + " or wider.", "", "An engraving cutter.");
        if (low || high)
            return f.remedy(
                    "Make the height " + Say.number(LEAST_HEIGHT, 1) + " to " + Say.mm(MOST_HEIGHT, 1) + ".",
                    "",
                    "Letters hard to read, and drag marks on them.");
        return f;
    }
}
