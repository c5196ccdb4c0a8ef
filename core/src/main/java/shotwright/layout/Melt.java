package shotwright.layout;

import shotwright.layout.gate.EdgeGateSize;
import shotwright.measure.QuantityRange;
import shotwright.resin.Resin;

/**
 * What the layout needs to know of a resin at its set point.
 *
 * @param name name shown to people
 * @param crystalline POM, PP, PE, PA, PBT
 * @param lowShrinkShare lower end of the shrink range
 * @param highShrinkShare upper end
 * @param meltC melt temperature
 * @param moldC mold temperature
 * @param noFlowC temperature below which it does not flow
 * @param ejectC temperature at which the part is stiff enough to come out
 * @param diffusivityMm2PerS thermal diffusivity
 * @param consistencyPaS consistency m of the power law at the melt temperature, Pa·sⁿ
 * @param flowExponent index n of the power law
 * @param shearLimitPerS highest apparent shear rate
 * @param ventLowMm shallowest vent
 * @param ventHighMm deepest vent that does not flash
 * @param cavityMpa cavity pressure the mold is designed for
 * @param densityGPerCm3 solid density
 * @param meltGPerCm3 melt density
 * @param modulusMpa stiffness at ejection
 * @param poissonRatio Poisson's ratio
 * @param frictionRatio friction on milled and polished aluminium at ejection
 * @param gateFactor n of the classical edge gate rule
 */
public record Melt(
        String name,
        boolean crystalline,
        double lowShrinkShare,
        double highShrinkShare,
        double meltC,
        double moldC,
        double noFlowC,
        double ejectC,
        double diffusivityMm2PerS,
        double consistencyPaS,
        double flowExponent,
        double shearLimitPerS,
        double ventLowMm,
        double ventHighMm,
        double cavityMpa,
        double densityGPerCm3,
        double meltGPerCm3,
        double modulusMpa,
        double poissonRatio,
        double frictionRatio,
        double gateFactor) {
    private static final double RATE_PER_S = 1000;
    private static final double GLASSY_POISSON = 0.38, OTHER_POISSON = 0.42;

    /**
     * A resin of the rack at the middle of its windows and its usual mold temperature; the power law touches its viscosity at 1000 1/s. A
     * resin that shrinks differently across the flow gets the range that holds both. Poisson's ratio 0.38 glassy, 0.42 others (common
     * practice).
     */
    public static Melt of(Resin r) {
        boolean crystalline = r.kind() == Resin.Kind.CRYSTALLINE;
        double meltC = r.meltC().mid();
        double moldC = r.settings().moldC().value();
        QuantityRange cross = r.shrinkCrossPercent();
        double low = r.shrinkPercent().low(), high = r.shrinkPercent().high();
        return new Melt(
                r.name(),
                crystalline,
                (cross != null ? Math.min(low, cross.low()) : low) / 100,
                (cross != null ? Math.max(high, cross.high()) : high) / 100,
                meltC,
                moldC,
                Math.max(r.noFlowC().mid(), moldC + 1),
                r.ejectC().mid(),
                r.diffusivityMm2PerS().mid(),
                r.viscosity().consistencyAt(RATE_PER_S, meltC),
                Math.clamp(r.viscosity().indexAt(RATE_PER_S, meltC), 0.1, 1),
                r.maxShearRatePerS().value(),
                r.ventDepthMm().low(),
                r.ventDepthMm().high(),
                r.cavityMpa().high(),
                r.solidDensityGPerCm3().mid(),
                r.meltDensityGPerCm3().mid(),
                r.modulusMpa().mid() * r.hotModulusShare().mid(),
                r.kind() == Resin.Kind.AMORPHOUS ? GLASSY_POISSON : OTHER_POISSON,
                r.frictionCoefficient().mid(),
                EdgeGateSize.resinFactor(r.id()));
    }
}
