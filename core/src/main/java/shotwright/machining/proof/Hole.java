package shotwright.machining.proof;

import shotwright.geom.Vec2;

/**
 * A hole held against its exact circle, whatever facets the half's mesh has there.
 *
 * @param name what it is for
 * @param centre its axis
 * @param diameterMm diameter asked for
 * @param mouthZMm where it begins; what is cut above has another purpose
 * @param bottomZMm how deep the full diameter must reach
 * @param lowestZMm how deep a tip may go at most: what lies below must stay whole
 */
public record Hole(String name, Vec2 centre, double diameterMm, double mouthZMm, double bottomZMm, double lowestZMm) {
    public Hole {
        if (!(diameterMm > 0)) throw new IllegalArgumentException("diameterMm: " + diameterMm + " is not above zero");
        if (!(lowestZMm <= bottomZMm))
            throw new IllegalArgumentException("lowestZMm: " + lowestZMm + " is above the bottom " + bottomZMm);
    }
}
