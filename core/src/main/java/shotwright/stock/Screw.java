package shotwright.stock;

import shotwright.measure.Quantity;
import shotwright.rack.Rack;

/**
 * A socket-head cap screw of one size.
 *
 * @param id id on the rack
 * @param name name shown
 * @param diameterMm thread diameter
 * @param pitchMm pitch
 * @param stressAreaMm2 tensile stress area
 * @param proofMpa proof stress
 * @param headDiaMm head diameter
 * @param headHeightMm head height
 * @param clearanceHoleMm through hole
 * @param tapDrillMm drill before tapping
 */
public record Screw(
        String id,
        String name,
        Quantity diameterMm,
        Quantity pitchMm,
        Quantity stressAreaMm2,
        Quantity proofMpa,
        Quantity headDiaMm,
        Quantity headHeightMm,
        Quantity clearanceHoleMm,
        Quantity tapDrillMm)
        implements Rack.Entry {
    /** Share of the proof stress a screw is tightened to (common practice). */
    public static final double PRELOAD_SHARE = 0.75;

    /** Preload 0.75·σ_proof·A_s, kN. */
    public double preloadKn() {
        return PRELOAD_SHARE * proofKn();
    }

    /** Proof force σ_proof·A_s, kN. */
    public double proofKn() {
        return proofMpa.value() * stressAreaMm2.value() / 1000;
    }

    /** Tightening torque 0.2·F·d for a force in kN, N·m. */
    public double torqueNm(double forceKn) {
        return 0.2 * forceKn * diameterMm.value();
    }
}
