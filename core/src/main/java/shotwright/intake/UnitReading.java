package shotwright.intake;

import shotwright.geom.Vec3;
import shotwright.measure.LengthUnit;

/**
 * How large the part is when its numbers are read in one unit.
 *
 * @param unit the unit
 * @param sizeMm length, width and height of its box, millimetres
 */
public record UnitReading(LengthUnit unit, Vec3 sizeMm) {
    /** The longest side, millimetres. */
    public double longestMm() {
        return Math.max(sizeMm.x(), Math.max(sizeMm.y(), sizeMm.z()));
    }
}
