package shotwright.fill;

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
    public PressLimits {
        if (!(meltPressureMpa > 0))
            throw new IllegalArgumentException("melt pressure: " + meltPressureMpa + " MPa is not above zero");
    }
}
