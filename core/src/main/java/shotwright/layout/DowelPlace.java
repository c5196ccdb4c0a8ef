package shotwright.layout;

import shotwright.geom.Vec2;

/**
 * A dowel that lines the halves up.
 *
 * @param dowel id on the rack
 * @param atMm centre on the parting plane, mold frame
 * @param diameterMm nominal diameter of the pin
 * @param holdHalf the half that keeps the pin
 * @param holdDepthMm depth of the hole in the half that keeps it
 * @param proudMm how far the pin stands out of the parting plane
 * @param slipDepthMm depth of the hole in the other half
 * @param holdHoleMm diameter of the hole that keeps it
 * @param slipHoleMm diameter of the hole it slides in
 * @param fit the fit in words
 */
public record DowelPlace(
        String dowel,
        Vec2 atMm,
        double diameterMm,
        Half holdHalf,
        double holdDepthMm,
        double proudMm,
        double slipDepthMm,
        double holdHoleMm,
        double slipHoleMm,
        String fit) {}
