package shotwright.sizing;

/** What goes into one shot. Sources: common practice for leak and utilisation, PT for the rating in polystyrene. */
public final class Shot {
    /** Melt density of polystyrene that ratings are made with, g/cm³ (from memory: 0.94 to 0.97; DH gives 0.97 at 200 °C). */
    public static final double POLYSTYRENE_G_PER_CM3 = 0.97;

    /** Share of the shot lost past a plunger (common practice: 2 to 5 %). */
    public static final double PLUNGER_LEAK_SHARE = 0.035;

    /** Share lost past a screw with check ring (common practice: 1 to 3 %). */
    public static final double SCREW_LEAK_SHARE = 0.02;

    private Shot() {}

    /** Mass of what fills the cavities and the feed, V·ρ_solid in g. */
    public static double massG(double volumeMm3, double solidGPerCm3) {
        return volumeMm3 / 1000 * solidGPerCm3;
    }

    /** Melt volume to inject, m/ρ_melt·(1 + leak) in cm³. */
    public static double injectedCm3(double massG, double meltGPerCm3, double leakShare) {
        return massG / meltGPerCm3 * (1 + leakShare);
    }

    /** A rating in grams of polystyrene turned into another resin by melt density, g. */
    public static double ratingG(double polystyreneG, double meltGPerCm3, double polystyreneGPerCm3) {
        return polystyreneG * meltGPerCm3 / polystyreneGPerCm3;
    }

    /** Share of the rating that a shot uses. */
    public static double utilisationShare(double shotG, double ratingG) {
        return shotG / ratingG;
    }

    /** Plunger or screw travel for a volume, 4V/(πD²) in mm. */
    public static double strokeMm(double volumeCm3, double diameterMm) {
        return 4000 * volumeCm3 / (Math.PI * diameterMm * diameterMm);
    }

    /** Time a pellet spends in the barrel, (m_barrel·c/m_shot)·t_cycle in s; c is 1.4 for usual barrels, 2 for short ones (HOWTO). */
    public static double residenceS(double barrelG, double inventoryFactor, double shotG, double cycleS) {
        return barrelG * inventoryFactor / shotG * cycleS;
    }
}
