package shotwright.layout.strength;

/** Plates held at their border under even pressure: the floor below a cavity. Sizes in mm, p and E in MPa. Source: Roark (from memory). */
public final class PlateUnderPressure {
    private static final double[] ASPECT = {1, 1.5, 2, 4};
    private static final double[] BETA = {0.0138, 0.0240, 0.0277, 0.0284};
    private static final double[] BETA_STRESS = {0.308, 0.454, 0.497, 0.5};

    private PlateUnderPressure() {}

    /** Middle of a clamped round plate, δ = 3·p·a⁴(1−ν²)/(16·E·t³); good for δ below t/5 and t below a/2. */
    public static double roundDeflectionMm(
            double pressureMpa, double radiusMm, double thicknessMm, double modulusMpa, double poissonRatio) {
        return 3
                * pressureMpa
                * Math.pow(radiusMm, 4)
                * (1 - poissonRatio * poissonRatio)
                / (16 * modulusMpa * Math.pow(thicknessMm, 3));
    }

    /** Rim of a clamped round plate, σ = 0.75·p·(a/t)². */
    public static double roundStressMpa(double pressureMpa, double radiusMm, double thicknessMm) {
        return 0.75 * pressureMpa * Math.pow(radiusMm / thicknessMm, 2);
    }

    /** Middle of a clamped rectangular plate with sides a ≤ b, δ = β(b/a)·p·a⁴/(E·t³). */
    public static double rectangleDeflectionMm(
            double pressureMpa, double side1Mm, double side2Mm, double thicknessMm, double modulusMpa) {
        double a = Math.min(side1Mm, side2Mm), b = Math.max(side1Mm, side2Mm);
        return between(BETA, b / a) * pressureMpa * Math.pow(a, 4) / (modulusMpa * Math.pow(thicknessMm, 3));
    }

    /** Middle of the longer border of a clamped rectangular plate, σ = β₁(b/a)·p·(a/t)². */
    public static double rectangleStressMpa(double pressureMpa, double side1Mm, double side2Mm, double thicknessMm) {
        double a = Math.min(side1Mm, side2Mm), b = Math.max(side1Mm, side2Mm);
        return between(BETA_STRESS, b / a) * pressureMpa * Math.pow(a / thicknessMm, 2);
    }

    private static double between(double[] table, double aspect) {
        for (int i = 1; i < ASPECT.length; i++) {
            if (aspect <= ASPECT[i]) {
                double s = (aspect - ASPECT[i - 1]) / (ASPECT[i] - ASPECT[i - 1]);
                return table[i - 1] + s * (table[i] - table[i - 1]);
            }
        }
        return table[table.length - 1];
    }
}
