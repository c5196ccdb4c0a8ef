package shotwright.layout.strength;

/** Screws that hold the halves against the melt. Source: tensile areas ISO 898-1 (from memory); preload 0.75 of proof. */
public final class BoltPreload {
    private BoltPreload() {}

    /** Tensile stress area of a coarse metric thread, A = π/4·(d − 0.9382·P)², mm² (ISO 898-1). */
    public static double stressAreaMm2(double nominalMm, double pitchMm) {
        double d = nominalMm - 0.9382 * pitchMm;
        return Math.PI / 4 * d * d;
    }

    /** Preload 0.75·σ_proof·A, N. */
    public static double preloadN(double proofMpa, double stressAreaMm2) {
        return 0.75 * proofMpa * stressAreaMm2;
    }

    /** Tightening torque T = 0.2·F·d, N·m. */
    public static double torqueNm(double preloadN, double nominalMm) {
        return 0.2 * preloadN * nominalMm / 1000;
    }
}
