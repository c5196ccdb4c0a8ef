package shotwright.machining.clear;

/**
 * How a level is roughed.
 *
 * @param radiusMm the cutter's radius
 * @param stepMm how far the front advances at once, radially
 * @param rampRad steepest way down when entering
 * @param startZMm height from which metal may be met: top of this level's metal
 * @param retractZMm height for moving across metal
 * @param cutMmPerMin feed along the front
 * @param enterMmPerMin feed on the way down
 * @param linkMmPerMin feed across cleared ground
 */
public record RoughRules(
        double radiusMm,
        double stepMm,
        double rampRad,
        double startZMm,
        double retractZMm,
        double cutMmPerMin,
        double enterMmPerMin,
        double linkMmPerMin) {
    public RoughRules {
        if (!(radiusMm > 0) || !(stepMm > 0) || stepMm > 2 * radiusMm)
            throw new IllegalArgumentException("step: " + stepMm + " mm does not suit a radius of " + radiusMm + " mm");
        if (!(rampRad > 0 && rampRad < Math.PI / 4))
            throw new IllegalArgumentException("ramp: " + Math.toDegrees(rampRad) + "° is not between 0 and 45°");
        if (!(retractZMm >= startZMm))
            throw new IllegalArgumentException(
                    "retract: " + retractZMm + " mm is below the metal at " + startZMm + " mm");
    }
}
