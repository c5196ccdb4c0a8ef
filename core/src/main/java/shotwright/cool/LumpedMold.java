package shotwright.cool;

/**
 * Mean temperature of an uncooled mold shot by shot, the mold taken as one lump.
 *
 * <p>M·c·dT/dt = q/t_cyc − G·(T − T∞), so T_n = T∞ + ΔT_ss·(1 − e^(−n·t_cyc/τ)) with ΔT_ss = q/(t_cyc·G) and τ = M·c/G.
 *
 * <p>Symbols: M mold mass, kg; c its heat capacity, J/(kg·K); q heat of one shot, J; t_cyc cycle, s; G heat loss to air and platens, W/K;
 * T∞ room, °C. Range: Biot number below 0.1, always so for aluminium; heat per shot spread over the cycle. Source: INC lumped capacitance
 * method (from memory); worked case of a mold heat balance.
 *
 * @param massKg metal of both halves
 * @param heatCapacityJPerKgK of the metal
 * @param heatPerShotJ heat one shot leaves in the mold
 * @param cycleS time from shot to shot
 * @param lossWPerK to air and platens together
 * @param roomC air and platens
 */
public record LumpedMold(
        double massKg, double heatCapacityJPerKgK, double heatPerShotJ, double cycleS, double lossWPerK, double roomC) {
    public LumpedMold {
        Excess.positive("mold mass", massKg, "kg");
        Excess.positive("heat capacity", heatCapacityJPerKgK, "J/(kg·K)");
        Excess.positive("heat per shot", heatPerShotJ, "J");
        Excess.positive("cycle", cycleS, "s");
        Excess.positive("heat loss", lossWPerK, "W/K");
    }

    /** How far the mold settles above the room, K. */
    public double steadyRiseK() {
        return heatPerShotJ / (cycleS * lossWPerK);
    }

    /** Where the mold settles, °C. */
    public double steadyC() {
        return roomC + steadyRiseK();
    }

    /** Time constant, s. */
    public double timeConstantS() {
        return massKg * heatCapacityJPerKgK / lossWPerK;
    }

    /** Rise of the first shot, K. */
    public double risePerShotK() {
        return heatPerShotJ / (massKg * heatCapacityJPerKgK);
    }

    /** Temperature after a number of shots from a cold start at room temperature, °C. */
    public double afterC(double shotCount) {
        return afterC(shotCount, roomC);
    }

    /** Temperature after a number of shots from a mold that was brought to {@code startC}, °C. */
    public double afterC(double shotCount, double startC) {
        return steadyC() + (startC - steadyC()) * Math.exp(-shotCount * cycleS / timeConstantS());
    }

    /** Shots until a rise is reached: n = −τ/t·ln(1 − ΔT/ΔT_ss). Endless when the mold settles below it. */
    public double shotsToRise(double riseK) {
        if (riseK <= 0) return 0;
        if (riseK >= steadyRiseK()) return Double.POSITIVE_INFINITY;
        return -timeConstantS() / cycleS * Math.log(1 - riseK / steadyRiseK());
    }

    /** Shots from {@code startC} until the mold lies within {@code withinK} of where it settles; whole shots. */
    public int shotsToSettle(double startC, double withinK) {
        double away = Math.abs(startC - steadyC());
        if (away <= withinK) return 0;
        return (int) Math.ceil(timeConstantS() / cycleS * Math.log(away / withinK));
    }

    /** Shortest cycle that keeps the steady mold at or below a temperature: t = q/(G·ΔT), s. */
    public double shortestCycleS(double limitC) {
        if (!(limitC > roomC))
            throw new IllegalArgumentException(
                    "limit: " + limitC + " °C is not above the room at " + roomC + " °C, no cycle is slow enough");
        return heatPerShotJ / (lossWPerK * (limitC - roomC));
    }
}
