package shotwright.layout.runner;

import shotwright.resin.ChannelFlow;

/** Diameter of a round runner by three published rules; sizes in mm, mass in g, flow in mm³/s, pressure in MPa. */
public final class RunnerSize {
    private RunnerSize() {}

    /**
     * D = √W·L^¼ / 3.7 from the mass W it feeds (g) and its length L (mm). Valid below 200 g and 3 mm wall, 2 … 10 mm; PVC and PMMA a quarter
     * more. Source: key of SOURCES.md: PYE §4.2.2.
     */
    public static double byMassMm(double massG, double lengthMm) {
        return Math.sqrt(massG) * Math.pow(lengthMm, 0.25) / 3.7;
    }

    /** The diameter that loses a given pressure with a power-law melt. Source: key of SOURCES.md: KAZ eq. 6.8. */
    public static double byPressureMm(
            double consistencyPaSn, double index, double lengthMm, double dropMpa, double flowMm3PerS) {
        return 2e3
                * ChannelFlow.runnerRadiusM(consistencyPaSn, index, lengthMm * 1e-3, dropMpa * 1e6, flowMm3PerS * 1e-9);
    }

    /** Smallest diameter that does not freeze before the part, wall + 1.5 mm. Source: common practice */
    public static double byWallMm(double wallMm) {
        return wallMm + 1.5;
    }

    /** Diameter of each of N branches of a balanced tree of least volume, d = d₀ / N^⅓. Source: key of SOURCES.md: RJRP. */
    public static double branchMm(double trunkMm, int branches) {
        if (branches < 1) throw new IllegalArgumentException("branches: " + branches + " is below 1");
        return trunkMm / Math.cbrt(branches);
    }
}
