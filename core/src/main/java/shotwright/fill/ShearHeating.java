package shotwright.fill;

/**
 * Warming of the melt by its own shear, all of it kept: ΔT = Δp/(ρ·c).
 *
 * <p>Symbols: Δp pressure spent, MPa; ρ melt density, g/cm³; c heat capacity of the melt, J/(kg·K); ΔT K. Range: adiabatic upper bound.
 * Source: energy balance of plug flow (worked out).
 */
public final class ShearHeating {
    private ShearHeating() {}

    public static double riseK(double dropMpa, double densityGPerCm3, double heatCapacityJPerKgK) {
        return dropMpa * 1e6 / (densityGPerCm3 * 1000 * heatCapacityJPerKgK);
    }
}
