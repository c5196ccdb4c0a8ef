package shotwright.machining.finish;

import java.util.ArrayList;
import java.util.List;
import shotwright.geom.Vec2;
import shotwright.geom.Vec3;
import shotwright.machining.contact.ExactPath;
import shotwright.machining.contour.Contour;
import shotwright.machining.contour.LevelContour;
import shotwright.progress.Progress;
import shotwright.region.Region;

/** Level loops down a wall. */
public final class Waterline {
    private static final double THIN_MM = 0.001;

    private Waterline() {}

    /**
     * What level loops found.
     *
     * @param paths from the top down, level after level, each closed one ending where it starts
     * @param splitCount where loops had to be opened because no exact line was found
     * @param raisedCount places the coarse map took for free and the drop-cutter did not
     */
    public record Loops(List<List<Vec3>> paths, int splitCount, int raisedCount) {
        public Loops {
            paths = List.copyOf(paths);
        }
    }

    /**
     * Loops from the top down to the bottom, which is always one of them.
     *
     * @param zone where the axis may stand: parts of loops outside are left out
     * @param fallMm most between two levels, see {@link shotwright.machining.feed.Cusp}
     */
    public static Loops loops(
            LevelContour contour, Region zone, double topZMm, double bottomZMm, double fallMm, Progress progress) {
        if (!(fallMm > 0) || !(topZMm > bottomZMm))
            throw new IllegalArgumentException(
                    "levels: from " + topZMm + " to " + bottomZMm + " mm by " + fallMm + " mm");
        int levels = (int) Math.ceil((topZMm - bottomZMm) / fallMm - 1e-9);
        List<List<Vec3>> paths = new ArrayList<>();
        int splits = 0, raised = 0;
        for (int k = 1; k <= levels; k++) {
            progress.at("level loops", k / (double) levels);
            double z = k == levels ? bottomZMm : topZMm + (bottomZMm - topZMm) * k / levels;
            LevelContour.Level level = contour.at(z);
            splits += level.splitCount();
            raised += level.raisedCount();
            for (Contour line : level.contours()) addInside(line, zone, z, paths);
        }
        return new Loops(paths, splits, raised);
    }

    private static void addInside(Contour line, Region zone, double z, List<List<Vec3>> paths) {
        List<Vec2> points = line.points();
        int n = points.size(), start = -1;
        for (int i = 0; i < n; i++) if (!zone.contains(points.get(i))) start = i;
        if (start < 0) {
            List<Vec2> all = new ArrayList<>(points);
            if (line.closed()) all.add(points.getFirst());
            add(all, z, paths);
            return;
        }
        List<Vec2> run = new ArrayList<>();
        int first = line.closed() ? start : 0, count = line.closed() ? n : n - 1;
        for (int k = 0; k <= count; k++) {
            Vec2 p = points.get((first + k) % n);
            if (zone.contains(p)) {
                run.add(p);
            } else {
                add(run, z, paths);
                run = new ArrayList<>();
            }
        }
        add(run, z, paths);
    }

    private static void add(List<Vec2> run, double z, List<List<Vec3>> paths) {
        if (run.size() > 1)
            paths.add(ExactPath.thin(run.stream().map(p -> p.atZ(z)).toList(), THIN_MM));
    }
}
