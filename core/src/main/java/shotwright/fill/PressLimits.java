package shotwright.fill;

import shotwright.measure.Quantity;
import shotwright.press.Press;

/**
 * What a press can do for filling.
 *
 * @param press id on the rack
 * @param name as a person calls it
 * @param meltPressureMpa highest pressure in the melt at the plunger or screw face
 * @param flowMm3PerS highest flow; infinite when not known
 * @param ramPowerW power of the ram; infinite when not known
 * @param clampKn clamp it really holds
 */
public record PressLimits(
        String press, String name, double meltPressureMpa, double flowMm3PerS, double ramPowerW, double clampKn) {
    /** What a press of the rack can do. */
    public static PressLimits of(Press p) {
        Quantity flow = p.maxFlowCm3PerS(), power = p.ramPowerW();
        return new PressLimits(
                p.id(),
                p.name(),
                p.maxMeltMpa().value(),
                flow == null ? Double.POSITIVE_INFINITY : flow.value() * 1000,
                power == null ? Double.POSITIVE_INFINITY : power.value(),
                p.usableKn());
    }

    public PressLimits {
        if (!(meltPressureMpa > 0))
            throw new IllegalArgumentException("melt pressure: " + meltPressureMpa + " MPa is not above zero");
    }
}
