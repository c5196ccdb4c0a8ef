package shotwright.cool;

import shotwright.layout.Block;
import shotwright.press.Press;

/**
 * Heat paths of a mold in a press: bare faces to air, clamped faces to the platens.
 *
 * <p>G = h·A_air + G_platen·share of the cycle the mold is clamped; one platen: 1/(1/(h_c·A) + R), insulated: h_i·A. Still air h from
 * {@link AirCooling} about 40 K above the room, a fan 40 W/(m²·K) (25 to 60, common practice); dry machined contact h_c 4000 W/(m²·K) (2 to
 * 10 thousand, INC table order, from memory); a platen of 5 to 10 kg to the room R = 1 K/W (0.5 to 1.5, common practice); a 6 mm insulating board
 * h_i = 40 W/(m²·K) (worked out from k 0.25).
 *
 * @param airWPerK to air
 * @param platenWPerK to the platens, averaged over the cycle
 */
record MoldHeat(double airWPerK, double platenWPerK) {
    private static final double FAN_W_PER_M2K = 40;
    private static final double CONTACT_W_PER_M2K = 4000;
    private static final double PLATEN_K_PER_W = 1;
    private static final double BOARD_W_PER_M2K = 40;
    private static final double BARE_ALUMINIUM = 0.1;

    static MoldHeat of(Block block, Press press, double clampedShare, double roomC) {
        double w = block.widthMm() / 1000, h = block.heightMm() / 1000;
        double t = (block.thicknessAMm() + block.thicknessBMm()) / 1000, face = w * h, rim = 2 * (w + h) * t;
        double still = AirCooling.stillAirWPerM2K(roomC + 40, roomC, Math.max(10, block.heightMm()), BARE_ALUMINIUM);
        double air = press.fan() ? FAN_W_PER_M2K : still;
        double onePlaten = press.platenInsulated()
                ? BOARD_W_PER_M2K * face
                : 1 / (1 / (CONTACT_W_PER_M2K * face) + PLATEN_K_PER_W);
        double open = 1 - clampedShare;
        return new MoldHeat(air * (rim + 2 * face * open), 2 * onePlaten * clampedShare);
    }

    double wPerK() {
        return airWPerK + platenWPerK;
    }
}
