package shotwright.layout.strength;

/**
 * A standing core pushed to one side by uneven filling, fixed at its foot: δ = Δp·D·H⁴/(8·E·I), σ = (Δp·D·H²/2)·(D/2)/I. Sizes in mm, MPa.
 * Source: key of SOURCES.md: KAZ p. 415. The pressure difference is about half the filling pressure for a gate on one side.
 */
public final class CoreBending {
    private CoreBending() {}

    /** Second moment of a round core with a bore, I = π(Do⁴ − Di⁴)/64, mm⁴. */
    public static double inertiaMm4(double outerMm, double boreMm) {
        return Math.PI * (Math.pow(outerMm, 4) - Math.pow(boreMm, 4)) / 64;
    }

    public static double deflectionMm(
            double pressureDifferenceMpa, double widthMm, double heightMm, double modulusMpa, double inertiaMm4) {
        return pressureDifferenceMpa * widthMm * Math.pow(heightMm, 4) / (8 * modulusMpa * inertiaMm4);
    }

    public static double stressMpa(double pressureDifferenceMpa, double widthMm, double heightMm, double inertiaMm4) {
        return pressureDifferenceMpa * widthMm * heightMm * heightMm / 2 * (widthMm / 2) / inertiaMm4;
    }
}
