package shotwright.machining.finish;

import java.util.ArrayList;
import java.util.List;
import shotwright.geom.Vec2;
import shotwright.geom.Vec3;
import shotwright.machining.contour.Contour;
import shotwright.machining.contour.Offset;
import shotwright.region.Region;

/** Rings over a level floor, from the inside out, so that the cutter always has a free side. */
public final class FloorRings {
    /** How far the last ring keeps off a wall, mm. */
    public static final double OFF_WALL_MM = 0.02;
    /** Step in diameters of the flat: below one half, so that the middle of the last ring is covered too. */
    private static final double STEP_SHARE = 0.48;

    private FloorRings() {}

    /**
     * The rings as closed paths at the floor's height, the innermost first.
     *
     * @param allowed where the axis may stand at that height
     * @param flatDiaMm diameter of the cutter's flat
     */
    public static List<List<Vec3>> paths(Region allowed, double zMm, double flatDiaMm) {
        if (!(flatDiaMm > 0)) throw new IllegalArgumentException("cutter: has no flat; a level floor needs one");
        List<List<Vec3>> paths = new ArrayList<>();
        for (Region piece : allowed.pieces()) {
            List<Region> rings = Offset.rings(piece, OFF_WALL_MM, STEP_SHARE * flatDiaMm);
            for (Region ring : rings.reversed())
                for (Contour c : Offset.borders(ring)) {
                    List<Vec3> path = new ArrayList<>();
                    for (Vec2 p : c.points()) path.add(p.atZ(zMm));
                    path.add(path.getFirst());
                    paths.add(path);
                }
        }
        return paths;
    }
}
