package shotwright.cool;

import java.util.ArrayList;
import java.util.List;
import shotwright.geom.Vec3;
import shotwright.mesh.WallThickness;

/** Sorts the wall samples of a part into thin walls, the usual wall, thick walls and the thickest place. */
final class WallClasses {
    /** Walls within this of the median are the usual wall. */
    private static final double USUAL = 0.25;
    /** The thickest place is the ball that this share of the samples does not reach. */
    private static final double THICKEST_SHARE = 0.98;
    /** Less thick surface than this belongs to lumps, more to thick walls. */
    private static final double WALL_SHARE = 0.1;

    /**
     * One class.
     *
     * @param name which, in words
     * @param wallMm wall that stands for it: the mean of the samples, for the thickest place the wall itself
     * @param areaShare share of the surface
     * @param atMm a place of it
     * @param lump true for a thick place with little thick wall about it: it cools like a rod, not like a wall
     */
    record WallClass(String name, double wallMm, double areaShare, Vec3 atMm, boolean lump) {}

    private WallClasses() {}

    static List<WallClass> of(WallThickness walls) {
        int[] order = walls.thinnestFirst();
        if (order.length == 0) throw new IllegalArgumentException("walls: no sample could be measured");
        double usual = walls.sphere(order[order.length / 2]);
        int thin = firstAbove(walls, order, usual * (1 - USUAL)), thick = firstAbove(walls, order, usual * (1 + USUAL));
        List<WallClass> out = new ArrayList<>();
        add(out, "thin walls and edges", walls, order, 0, thin);
        add(out, "usual wall", walls, order, thin, thick);
        add(out, "thick walls", walls, order, thick, order.length);
        int top = order[(int) Math.min(order.length - 1.0, THICKEST_SHARE * order.length)];
        if (walls.sphere(top) > usual * (1 + USUAL))
            out.add(new WallClass(
                    "thickest place",
                    walls.sphere(top),
                    1 - THICKEST_SHARE,
                    walls.point(top),
                    order.length - thick < WALL_SHARE * order.length));
        return out;
    }

    private static int firstAbove(WallThickness walls, int[] order, double wall) {
        int i = 0;
        while (i < order.length && walls.sphere(order[i]) <= wall) i++;
        return i;
    }

    private static void add(List<WallClass> out, String name, WallThickness walls, int[] order, int from, int to) {
        if (to - from < 0.02 * order.length) return;
        double sum = 0;
        for (int i = from; i < to; i++) sum += walls.sphere(order[i]);
        double share = (to - from) / (double) order.length;
        out.add(new WallClass(name, sum / (to - from), share, walls.point(order[to - 1]), false));
    }
}
