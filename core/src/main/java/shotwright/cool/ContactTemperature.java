package shotwright.cool;

/**
 * Temperature of the face where hot plastic first touches cold metal: T = (b₁T₁ + b₂T₂)/(b₁ + b₂), b = √(k·ρ·c).
 *
 * <p>Symbols: k W/(m·K), ρ kg/m³, c J/(kg·K), b W·√s/(m²·K), T °C. Range: the first milliseconds, both bodies thick against √(a·t).
 * Source: Carslaw and Jaeger (from memory). For plastics on aluminium the face rises 2 to 4 % of the way to the melt.
 */
public final class ContactTemperature {
    private ContactTemperature() {}

    /** Heat penetration coefficient √(k·ρ·c), W·√s/(m²·K). */
    public static double penetrationWSqrtSPerM2K(
            double conductivityWPerMK, double densityKgPerM3, double heatCapacityJPerKgK) {
        return Math.sqrt(conductivityWPerMK * densityKgPerM3 * heatCapacityJPerKgK);
    }

    /** The face temperature, °C. */
    public static double contactC(
            double penetrationPlasticWSqrtSPerM2K, double meltC, double penetrationMetalWSqrtSPerM2K, double metalC) {
        double sum = penetrationPlasticWSqrtSPerM2K + penetrationMetalWSqrtSPerM2K;
        return (penetrationPlasticWSqrtSPerM2K * meltC + penetrationMetalWSqrtSPerM2K * metalC) / sum;
    }
}
