package shotwright.layout.strength;

/** The wall between a cavity and the block's edge. Sizes in mm, p and E in MPa. */
public final class SideWall {
    private SideWall() {}

    /** Top of a wall that stands free, depth H, thickness t: δ = 12·p·H⁴/(8·E·t³). Source: cantilever under even load, closed form. */
    public static double cantileverDeflectionMm(
            double pressureMpa, double depthMm, double thicknessMm, double modulusMpa) {
        return 12 * pressureMpa * Math.pow(depthMm, 4) / (8 * modulusMpa * Math.pow(thicknessMm, 3));
    }

    /** Foot of a wall that stands free, σ = 3·p·(H/t)². */
    public static double cantileverStressMpa(double pressureMpa, double depthMm, double thicknessMm) {
        return 3 * pressureMpa * Math.pow(depthMm / thicknessMm, 2);
    }

    /** Middle of a wall held at both ends over a length L, δ = p·L⁴/(32·E·t³). Source: fixed beam w·L⁴/(384·E·I), closed form. */
    public static double fixedBeamDeflectionMm(
            double pressureMpa, double lengthMm, double thicknessMm, double modulusMpa) {
        return pressureMpa * Math.pow(lengthMm, 4) / (32 * modulusMpa * Math.pow(thicknessMm, 3));
    }

    /** Ends of a wall held at both ends, σ = p·L²/(2·t²). */
    public static double fixedBeamStressMpa(double pressureMpa, double lengthMm, double thicknessMm) {
        return pressureMpa * lengthMm * lengthMm / (2 * thicknessMm * thicknessMm);
    }

    /** Middle of a beam fixed at both ends under load w per length, δ = w·L⁴/(384·E·I). */
    public static double beamDeflectionMm(double loadNPerMm, double lengthMm, double modulusMpa, double inertiaMm4) {
        return loadNPerMm * Math.pow(lengthMm, 4) / (384 * modulusMpa * inertiaMm4);
    }

    /** Widening of the radius of a round cavity in a ring, u = (p·ri/E)·[(ro²+ri²)/(ro²−ri²)+ν]. Source: Lamé. */
    public static double ringDeflectionMm(
            double pressureMpa, double innerMm, double outerMm, double modulusMpa, double poissonRatio) {
        return pressureMpa * innerMm / modulusMpa * (ringRatio(innerMm, outerMm) + poissonRatio);
    }

    /** Hoop stress at the bore, σ = p·(ro²+ri²)/(ro²−ri²). Source: Lamé. */
    public static double ringStressMpa(double pressureMpa, double innerMm, double outerMm) {
        return pressureMpa * ringRatio(innerMm, outerMm);
    }

    private static double ringRatio(double ri, double ro) {
        if (!(ro > ri)) throw new IllegalArgumentException("ring: outer radius " + ro + " is not above " + ri);
        return (ro * ro + ri * ri) / (ro * ro - ri * ri);
    }
}
