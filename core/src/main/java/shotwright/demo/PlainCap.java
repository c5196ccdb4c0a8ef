package shotwright.demo;

import java.util.List;
import shotwright.mesh.TriMesh;

/**
 * A plain round cap, Ø24 × 10 with walls near 1.6 and 2° of draft inside and out: the simplest part that has everything a two-plate mold
 * needs. Its volume has a closed form (two frusta over regular polygons), so it is a measure for everything that reads volumes.
 */
public final class PlainCap {
    /** Points around. */
    public static final int SIDES = 96;

    /** Height, and height of the hollow below the plate. */
    static final double HEIGHT = 10, HOLLOW = 8.4;

    /** Radii at the open end, outside and inside, and draft of both walls. */
    static final double OUTSIDE = 12, INSIDE = 10.4, DRAFT_DEG = 2;

    private PlainCap() {}

    /** The cap, opening direction +z, hollow below, open end at z = 0. */
    public static TriMesh mesh() {
        double t = Rows.tanDeg(DRAFT_DEG);
        DraftedSolid s = new DraftedSolid();
        int[] foot = s.ring(Rows.atZ(Rows.circle(OUTSIDE, SIDES, 0), 0));
        int[] top = s.ring(Rows.atZ(Rows.circle(OUTSIDE - HEIGHT * t, SIDES, 0), HEIGHT));
        int[] mouth = s.ring(Rows.atZ(Rows.circle(INSIDE, SIDES, 0), 0).reversed());
        int[] roof = s.ring(
                Rows.atZ(Rows.circle(INSIDE - HOLLOW * t, SIDES, 0), HOLLOW).reversed());
        s.wall(foot, top);
        s.wall(mouth, roof);
        s.floor(true, top, List.of(), List.of());
        s.floor(false, roof, List.of(), List.of());
        s.floor(false, foot, List.of(mouth), List.of());
        return s.mesh();
    }
}
