package shotwright.machining.contour;

import java.util.ArrayList;
import java.util.List;
import shotwright.geom.Vec2;
import shotwright.region.Region;

/** Offsets of outlines for a cutter's centre, never nearer to the outline than told. */
public final class Offset {
    /** How much farther than told a round corner may run, mm. */
    public static final double CHORD_MM = 0.0005;

    private Offset() {}

    /** A region's borders as lines with the region on their left. */
    public static List<Contour> borders(Region region) {
        List<Contour> out = new ArrayList<>();
        for (List<Vec2> ring : region.exteriors()) out.add(new Contour(ring, true));
        for (List<Vec2> ring : region.holes()) out.add(new Contour(ring, true));
        return out;
    }

    /** The region grown (above zero) or shrunk, its new border between that distance and {@link #CHORD_MM} more from the old one. */
    public static Region by(Region region, double distanceMm) {
        return region.offsetWithin(distanceMm, CHORD_MM);
    }

    /**
     * The rings of a pocket for a cutter's centre, outermost first: the first one the first distance inside the outline, each further one a
     * step inside the last, until nothing is left.
     */
    public static List<Region> rings(Region pocket, double firstMm, double stepMm) {
        if (!(stepMm > 0)) throw new IllegalArgumentException("step: " + stepMm + " mm is not above zero");
        List<Region> rings = new ArrayList<>();
        for (Region r = by(pocket, -firstMm); !r.isEmpty(); r = by(r, -stepMm)) rings.add(r);
        return rings;
    }
}
