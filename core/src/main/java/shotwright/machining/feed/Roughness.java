package shotwright.machining.feed;

/** What ridges of passes read as on a roughness tester. Ridges are taken as parabolas; key MILLF. */
public final class Roughness {
    /** Real roughness over the one of perfect ridges, middle of 1.5 … 3: bending, run-out and built-up edge add to it. */
    public static final double REAL_FACTOR = 2;

    /** Ra of parabolic ridges of height one: 4/(9·√3). */
    private static final double RA_SHARE = 4 / (9 * Math.sqrt(3));

    private Roughness() {}

    /** Ideal peak height of round ridges, µm: s²/(8·R). */
    public static double idealRzUm(double radiusMm, double stepMm) {
        return 1000 * stepMm * stepMm / (8 * radiusMm);
    }

    /** Ideal mean roughness of round ridges, µm: 4/(9·√3) of the peak height. */
    public static double idealRaUm(double radiusMm, double stepMm) {
        return RA_SHARE * idealRzUm(radiusMm, stepMm);
    }

    /** Height of ridges for a real mean roughness wanted, mm. */
    public static double cuspForRaMm(double raUm) {
        if (!(raUm > 0)) throw new IllegalArgumentException("raUm: " + raUm + " is not above zero");
        return raUm / 1000 / (REAL_FACTOR * RA_SHARE);
    }

    /** Mean roughness to expect of ridges of a height, µm. */
    public static double raOfCuspUm(double cuspMm) {
        return REAL_FACTOR * RA_SHARE * 1000 * cuspMm;
    }
}
