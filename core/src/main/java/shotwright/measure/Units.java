package shotwright.measure;

/** The one place where units are converted. Factors are exact by definition unless a comment says otherwise. */
public final class Units {
    /** Millimetres in one inch (exact, 1959). */
    public static final double MM_PER_IN = 25.4;

    /** Square millimetres in one square inch (exact). */
    public static final double MM2_PER_IN2 = MM_PER_IN * MM_PER_IN;

    /** Newtons in one pound-force: 0.45359237 kg at 9.80665 m/s² (exact). */
    public static final double N_PER_LBF = 0.45359237 * 9.80665;

    /** Kilonewtons in one short ton-force of 2000 lbf. */
    public static final double KN_PER_SHORT_TON = 2000 * N_PER_LBF / 1000;

    /** Pascals in one pound-force per square inch. */
    public static final double PA_PER_PSI = N_PER_LBF / (MM2_PER_IN2 * 1e-6);

    /** Megapascals in one short ton-force per square inch. */
    public static final double MPA_PER_SHORT_TON_PER_IN2 = 2000 * PA_PER_PSI / 1e6;

    /** Megapascals in one metric ton-force per square centimetre. */
    public static final double MPA_PER_TF_PER_CM2 = 98.0665;

    /** Zero degrees Celsius in kelvin. */
    public static final double ZERO_C_IN_K = 273.15;

    private Units() {}

    /** Millimetres to inches. */
    public static double mmToIn(double mm) {
        return mm / MM_PER_IN;
    }

    /** Inches to millimetres. */
    public static double inToMm(double in) {
        return in * MM_PER_IN;
    }

    /** Square millimetres to square inches. */
    public static double mm2ToIn2(double mm2) {
        return mm2 / MM2_PER_IN2;
    }

    /** Square inches to square millimetres. */
    public static double in2ToMm2(double in2) {
        return in2 * MM2_PER_IN2;
    }

    /** Feet to metres. */
    public static double ftToM(double ft) {
        return 12 * MM_PER_IN * ft / 1000;
    }

    /** Mechanical horsepower (550 ft·lbf/s) for one cubic inch a minute to joules for one cubic millimetre. */
    public static double hpPerIn3PerMinToJPerMm3(double hpPerIn3PerMin) {
        return hpPerIn3PerMin * 550 * ftToM(N_PER_LBF) * 60 / (MM2_PER_IN2 * MM_PER_IN);
    }

    /** Kilonewtons to short tons-force. */
    public static double knToShortTons(double kn) {
        return kn / KN_PER_SHORT_TON;
    }

    /** Short tons-force to kilonewtons. */
    public static double shortTonsToKn(double shortTons) {
        return shortTons * KN_PER_SHORT_TON;
    }

    /** Megapascals to pounds per square inch. */
    public static double mpaToPsi(double mpa) {
        return mpa * 1e6 / PA_PER_PSI;
    }

    /** Degrees Celsius to degrees Fahrenheit. */
    public static double cToF(double c) {
        return c * 9 / 5 + 32;
    }

    /** Degrees Celsius to kelvin. */
    public static double cToK(double c) {
        return c + ZERO_C_IN_K;
    }

    /** Grams to ounces avoirdupois (28.349523125 g, exact). */
    public static double gToOz(double g) {
        return g / 28.349523125;
    }
}
