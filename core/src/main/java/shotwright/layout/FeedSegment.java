package shotwright.layout;

import org.jspecify.annotations.Nullable;
import shotwright.geom.Vec3;

/**
 * One straight piece of the way from the nozzle to a cavity.
 *
 * @param number counted from 1; flow order, parents before children
 * @param parent number of the piece before it, 0 for the first
 * @param cavity the cavity it serves alone, 0 when it serves several or is a well
 * @param kind what it is
 * @param fromMm start of its centre line on the parting plane (lying) or its axis (standing), mold frame
 * @param toMm end of it; for a gate this lies 0.2 mm or more inside the cavity wall, the cavity trims it
 * @param half the half it is cut into; null when it is round and lies in both
 * @param from cross-section at the start
 * @param to cross-section at the end; differs from {@code from} on a taper
 */
public record FeedSegment(
        int number,
        int parent,
        int cavity,
        Kind kind,
        Vec3 fromMm,
        Vec3 toMm,
        @Nullable Half half,
        Section from,
        Section to) {
    /** Pieces of a feed. */
    public enum Kind {
        SPRUE,
        RUNNER,
        GATE,
        /** Dead end that catches the cold front; no flow passes on. */
        COLD_SLUG,
        /** Undercut or reverse-tapered well that pulls the sprue. */
        PULLER
    }

    /** Length of the centre line, mm. */
    public double lengthMm() {
        return fromMm.distance(toMm);
    }

    /** Volume of the straight or tapered piece between its ends (frustum rule for area varying as a square), mm³. */
    public double volumeMm3() {
        double a = from.areaMm2(), b = to.areaMm2();
        return lengthMm() * (a + b + Math.sqrt(a * b)) / 3;
    }
}
