package shotwright.resin;

/**
 * Steady flow of melt through straight channels: shear rate at the wall, pressure lost, and the radius that loses a given pressure.
 *
 * <p>SI units throughout (m, m³/s, Pa, Pa·s). Power law η = m·γ̇^(n−1) with consistency m in Pa·sⁿ and index n in 0 … 1; n = 1 and m = η is
 * the Newtonian case. Assumes a full, isothermal channel without slip; valid inside the shear range for which m and n were fitted.
 *
 * <p>Sources: keys of SOURCES.md KAZ (eq. 6.7, 6.8), White <i>Viscous Fluid Flow</i> for the duct series (from memory), Bird, Stewart, Lightfoot
 * for tube and slit (from memory), W. Kozicki, C. H. Chou, C. Tiu, Chem. Eng. Sci. 21 (1966) 665 for other cross-sections (from memory).
 */
public final class ChannelFlow {
    private ChannelFlow() {}

    /** Apparent shear rate at the wall of a slot, γ̇ = 6Q/(w·h²), 1/s; for w/h above 3. */
    public static double slotShearRatePerS(double flowM3PerS, double widthM, double heightM) {
        return 6 * flowM3PerS / (above0("width", widthM) * heightM * above0("height", heightM));
    }

    /** Apparent shear rate at the wall of a round channel, γ̇ = 4Q/(πr³), 1/s. */
    public static double roundShearRatePerS(double flowM3PerS, double radiusM) {
        return 4 * flowM3PerS / (Math.PI * Math.pow(above0("radius", radiusM), 3));
    }

    /** True over apparent shear rate at the wall of a slot (Rabinowitsch), (2n+1)/(3n). */
    public static double slotTrueShearFactor(double index) {
        return (2 * index + 1) / (3 * above0("index", index));
    }

    /** True over apparent shear rate at the wall of a tube (Rabinowitsch), (3n+1)/(4n). */
    public static double roundTrueShearFactor(double index) {
        return (3 * index + 1) / (4 * above0("index", index));
    }

    /** Pressure lost in a tube, ΔP = (2mL/R)·[(3n+1)/n·Q/(πR³)]ⁿ, Pa. */
    public static double tubeDropPa(
            double consistencyPaSn, double index, double lengthM, double radiusM, double flowM3PerS) {
        double rate = (3 * index + 1)
                / above0("index", index)
                * flowM3PerS
                / (Math.PI * Math.pow(above0("radius", radiusM), 3));
        return 2 * consistencyPaSn * lengthM / radiusM * Math.pow(rate, index);
    }

    /** Pressure lost in a wide slit, ΔP = (2mL/H)·[(2n+1)/n·2Q/(WH²)]ⁿ, Pa; side walls ignored, for W/H above 10. */
    public static double slitDropPa(
            double consistencyPaSn, double index, double lengthM, double widthM, double heightM, double flowM3PerS) {
        double rate = (2 * index + 1)
                / above0("index", index)
                * 2
                * flowM3PerS
                / (above0("width", widthM) * heightM * above0("height", heightM));
        return 2 * consistencyPaSn * lengthM / heightM * Math.pow(rate, index);
    }

    /**
     * Pressure lost in a straight taper of radius r1 to r2, ΔP = (2mL/(3n(r2−r1)))·[(3n+1)/n·Q/π]ⁿ·(r1^(−3n) − r2^(−3n)), Pa; lubrication
     * approximation, for tapers below 15°. Nearly equal radii give the tube formula.
     */
    public static double taperDropPa(
            double consistencyPaSn, double index, double lengthM, double radius1M, double radius2M, double flowM3PerS) {
        above0("radius 1", radius1M);
        above0("radius 2", radius2M);
        if (Math.abs(radius2M - radius1M) < 1e-6 * radius1M)
            return tubeDropPa(consistencyPaSn, index, lengthM, (radius1M + radius2M) / 2, flowM3PerS);
        double rate = (3 * index + 1) / above0("index", index) * flowM3PerS / Math.PI;
        double ends = Math.pow(radius1M, -3 * index) - Math.pow(radius2M, -3 * index);
        return 2 * consistencyPaSn * lengthM / (3 * index * (radius2M - radius1M)) * Math.pow(rate, index) * ends;
    }

    /**
     * Side-wall factor F of a rectangular duct in Q = F·W·H³·ΔP/(12ηL): F = 1 − (192H/(π⁵W))·Σ tanh((2k+1)πW/(2H))/(2k+1)⁵. The longer side
     * is taken as W whichever way it is given; F runs from 0.4217 (square) to 1 (wide slit).
     */
    public static double ductFactor(double widthM, double heightM) {
        double w = Math.max(above0("width", widthM), above0("height", heightM)), h = Math.min(widthM, heightM);
        double sum = 0;
        for (int k = 0; k < 20; k++) {
            int odd = 2 * k + 1;
            sum += Math.tanh(odd * Math.PI * w / (2 * h)) / Math.pow(odd, 5);
        }
        return 1 - 192 * h / (Math.pow(Math.PI, 5) * w) * sum;
    }

    /** Pressure lost by a Newtonian melt in a rectangular duct, ΔP = 12ηLQ/(W·H³·F), Pa. */
    public static double ductDropPa(
            double viscosityPaS, double lengthM, double widthM, double heightM, double flowM3PerS) {
        double w = Math.max(widthM, heightM), h = Math.min(widthM, heightM);
        return 12 * viscosityPaS * lengthM * flowM3PerS / (w * h * h * h * ductFactor(widthM, heightM));
    }

    /**
     * The two numbers by which Kozicki describes a cross-section, so that the mean wall shear stress is m·[(8v/Dh)·(b + a/n)]ⁿ with the mean
     * speed v and Dh = 4·area/perimeter. 16(a + b) is the Newtonian friction constant f·Re.
     *
     * @param aFactor weight of the shear-thinning part
     * @param bFactor the rest
     */
    public record CrossSection(double aFactor, double bFactor) {
        /** A full circle: exact, a = ¼, b = ¾. */
        public static final CrossSection ROUND = new CrossSection(0.25, 0.75);

        /** A half circle: split like the circle, scaled to its Newtonian constant 15.767; good to a few per cent for n above 0.2. */
        public static final CrossSection HALF_ROUND = new CrossSection(0.25 * 15.767 / 16, 0.75 * 15.767 / 16);

        /** A rectangle, exact for a Newtonian melt and for the wide slit, within 3 % between. */
        public static CrossSection rectangle(double widthM, double heightM) {
            double aspect = Math.min(widthM, heightM) / Math.max(widthM, heightM);
            double sum = 0;
            for (int k = 0; k < 20; k++) {
                double beta = (2 * k + 1) * Math.PI / 2;
                if (beta / aspect > 700) break;
                sum += (k % 2 == 0 ? -1 : 1) / (beta * beta * beta * Math.cosh(beta / aspect));
            }
            double square = (1 + aspect) * (1 + aspect);
            double a = 1 / (2 * square * (1 + 4 * sum));
            return new CrossSection(a, 3 / (2 * square * ductFactor(widthM, heightM)) - a);
        }
    }

    /**
     * Pressure lost in a channel of any cross-section, ΔP = (4L/Dh)·m·[(8v/Dh)·(b + a/n)]ⁿ, Pa.
     *
     * @param areaM2 free area
     * @param perimeterM wetted perimeter
     */
    public static double channelDropPa(
            CrossSection shape,
            double consistencyPaSn,
            double index,
            double lengthM,
            double areaM2,
            double perimeterM,
            double flowM3PerS) {
        double dh = 4 * above0("area", areaM2) / above0("perimeter", perimeterM);
        double rate = 8 * flowM3PerS / areaM2 / dh * (shape.bFactor() + shape.aFactor() / above0("index", index));
        return 4 * lengthM / dh * consistencyPaSn * Math.pow(rate, index);
    }

    /** Loss at the mouth of a narrow passage, 2·n_B·τ_w, Pa; n_B is 3 … 8 (Bagley). */
    public static double entranceLossPa(double bagleyFactor, double wallShearStressPa) {
        return 2 * bagleyFactor * wallShearStressPa;
    }

    /** Shear stress at the wall of a tube that loses a pressure over a length, ΔP·R/(2L), Pa. */
    public static double tubeWallStressPa(double dropPa, double lengthM, double radiusM) {
        return dropPa * radiusM / (2 * lengthM);
    }

    /** Shear stress at the wall of a slit that loses a pressure over a length, ΔP·H/(2L), Pa. */
    public static double slitWallStressPa(double dropPa, double lengthM, double heightM) {
        return dropPa * heightM / (2 * lengthM);
    }

    /**
     * Radius of a round runner that loses no more than a given pressure, R = {(2mL/ΔP)^(1/n)·[(3+1/n)·Q/π]}^(1/(3+1/n)), m. The tube formula
     * turned round (KAZ eq. 6.8; with n = 1 eq. 6.7).
     */
    public static double runnerRadiusM(
            double consistencyPaSn, double index, double lengthM, double dropPa, double flowM3PerS) {
        double inverse = 1 / above0("index", index);
        double base = Math.pow(2 * consistencyPaSn * lengthM / above0("drop", dropPa), inverse)
                * (3 + inverse)
                * flowM3PerS
                / Math.PI;
        return Math.pow(base, 1 / (3 + inverse));
    }

    /** Greatest warming of the melt by its own pressure loss, ΔT = ΔP/(ρ·c), K; no heat lost to the wall. */
    public static double shearHeatingK(double dropPa, double densityKgPerM3, double heatJPerKgK) {
        return dropPa / (densityKgPerM3 * heatJPerKgK);
    }

    private static double above0(String name, double value) {
        if (!(value > 0)) throw new IllegalArgumentException(name + ": " + value + " is not above zero");
        return value;
    }
}
