package shotwright.machining.letter;

import java.util.ArrayList;
import java.util.List;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.GeometryFactory;
import org.locationtech.jts.operation.distance.IndexedFacetDistance;
import shotwright.cutter.CutterProfile;
import shotwright.geom.Vec2;
import shotwright.geom.Vec3;
import shotwright.machining.contact.ExactPath;
import shotwright.region.Region;

/**
 * Letters cut along the middle of their strokes, everywhere just as deep as the engraver is as wide as the stroke; where the stroke is wider
 * than the greatest depth allows, the path stays at that depth and leaves the sides.
 */
public final class Engraving {
    /** Points on the outline: five to the width of the tip. */
    private static final double SPACING_SHARE = 0.2;
    /** Depth between places may stray by so much, mm. */
    private static final double CHORD_MM = 0.001;

    private static final double SHORTEST_MM = 0.002;
    private static final GeometryFactory FACTORY = new GeometryFactory();

    private final CutterProfile engraver;
    private final double deepestMm;
    private final Region letters;
    private final IndexedFacetDistance outline;

    private Engraving(Region letters, CutterProfile engraver, double deepestMm) {
        this.letters = letters;
        this.engraver = engraver;
        this.deepestMm = deepestMm;
        outline = new IndexedFacetDistance(letters.geometry().getBoundary());
    }

    /**
     * Paths of the tip, nearest first; the surface is at z 0.
     *
     * @param letters what shall be sunk, the right way round as the mill sees it
     * @param engraver a cone on a small flat tip
     * @param deepestMm greatest depth
     */
    public static List<List<Vec3>> paths(Region letters, CutterProfile engraver, double deepestMm) {
        if (engraver.halfAngleRad() == 0 || engraver.flatRadiusMm() == 0 || engraver.cornerRadiusMm() > 0)
            throw new IllegalArgumentException("cutter: letters need an engraver with a flat tip, not " + engraver);
        if (!(deepestMm > 0) || deepestMm > engraver.endHeightMm())
            throw new IllegalArgumentException(
                    "depth: " + deepestMm + " mm; the engraver's cone is " + engraver.endHeightMm() + " mm high");
        if (letters.isEmpty()) return List.of();
        Engraving e = new Engraving(letters, engraver, deepestMm);
        List<List<Vec3>> paths = new ArrayList<>();
        for (List<Vec2> line : MedialAxis.lines(letters, SPACING_SHARE * 2 * engraver.flatRadiusMm())) {
            List<Vec3> path = withoutIdleEnds(e.sunk(line));
            if (path.size() > 1) paths.add(ExactPath.thin(path, CHORD_MM));
        }
        return nearestFirst(paths);
    }

    private List<Vec3> sunk(List<Vec2> line) {
        List<Vec3> path = new ArrayList<>(List.of(at(line.getFirst())));
        for (int i = 1; i < line.size(); i++) refine(path.getLast(), at(line.get(i)), path);
        return path;
    }

    /** Without the ways at the surface into corners narrower than the tip. */
    private static List<Vec3> withoutIdleEnds(List<Vec3> path) {
        int from = 0, to = path.size();
        while (from + 1 < to && path.get(from + 1).z() >= 0) from++;
        while (to - 2 > from && path.get(to - 2).z() >= 0) to--;
        return path.subList(from, to);
    }

    private void refine(Vec3 a, Vec3 b, List<Vec3> out) {
        Vec3 m = at(a.toward(b, 0.5).xy());
        if (a.xy().distance(b.xy()) > SHORTEST_MM && (off(a, b, 0.25) || off(a, b, 0.5) || off(a, b, 0.75))) {
            refine(a, m, out);
            refine(m, b, out);
        } else {
            out.add(b);
        }
    }

    private boolean off(Vec3 a, Vec3 b, double share) {
        Vec3 p = a.toward(b, share);
        return Math.abs(at(p.xy()).z() - p.z()) > CHORD_MM;
    }

    /** As deep as the cone is no wider than the stroke, at most to the surface where even the tip is wider. */
    private Vec3 at(Vec2 p) {
        if (!letters.contains(p)) return p.atZ(0);
        double free = outline.distance(FACTORY.createPoint(new Coordinate(p.x(), p.y())));
        double depth = Math.max(0, free - engraver.flatRadiusMm()) * engraver.coneSlope();
        return p.atZ(-Math.min(deepestMm, depth));
    }

    private static List<List<Vec3>> nearestFirst(List<List<Vec3>> paths) {
        List<List<Vec3>> open = new ArrayList<>(paths), ordered = new ArrayList<>();
        Vec3 at = paths.isEmpty() ? Vec3.ZERO : paths.getFirst().getFirst();
        while (!open.isEmpty()) {
            int best = 0;
            double least = Double.POSITIVE_INFINITY;
            boolean back = false;
            for (int i = 0; i < open.size(); i++) {
                double first = at.distance(open.get(i).getFirst()),
                        last = at.distance(open.get(i).getLast());
                if (Math.min(first, last) < least) {
                    least = Math.min(first, last);
                    best = i;
                    back = last < first;
                }
            }
            List<Vec3> path = open.remove(best);
            ordered.add(back ? path.reversed() : path);
            at = ordered.getLast().getLast();
        }
        return ordered;
    }
}
