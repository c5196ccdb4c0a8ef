package shotwright.fill;

import shotwright.measure.Band;
import shotwright.measure.Source;
import shotwright.resin.Resin;

/**
 * What filling needs to know of a resin at its set-points.
 *
 * @param resin id on the rack
 * @param name as a person calls it
 * @param viscosity of the melt
 * @param viscositySpreadShare how far grades of the family lie to either side, as a share
 * @param grade true when the viscosity is that of the grade in the bag, false for generic data
 * @param meltC melt temperature
 * @param hottestMeltC highest melt temperature allowed
 * @param moldC mold wall during filling
 * @param noFlowC below it the melt does not move
 * @param diffusivityMm2PerS effective thermal diffusivity of melt to ejection
 * @param densityGPerCm3 of the melt
 * @param heatCapacityJPerKgK of the melt
 * @param shearRateLimitPerS highest apparent shear rate
 * @param shearStressLimitMpa highest shear stress
 * @param flowLengthRatio flow length over wall it reaches at 2 mm and about 90 MPa
 * @param source where the viscosity comes from
 */
public record Melt(
        String resin,
        String name,
        MeltViscosity viscosity,
        double viscositySpreadShare,
        boolean grade,
        double meltC,
        double hottestMeltC,
        double moldC,
        double noFlowC,
        double diffusivityMm2PerS,
        double densityGPerCm3,
        double heatCapacityJPerKgK,
        double shearRateLimitPerS,
        double shearStressLimitMpa,
        double flowLengthRatio,
        Source source) {
    public Melt {
        if (!(moldC < noFlowC && noFlowC < meltC))
            throw new IllegalArgumentException("no-flow temperature of " + name + ": " + noFlowC
                    + " °C does not lie between mold " + moldC + " °C and melt " + meltC + " °C");
        if (!(diffusivityMm2PerS > 0)) throw new IllegalArgumentException("diffusivity: " + diffusivityMm2PerS);
    }

    /** A resin of the rack at a melt and a mold temperature. */
    public static Melt of(Resin r, double meltC, double moldC) {
        Band eta = r.viscosityBandPaS(1000, meltC);
        double spread = Math.max(eta.high() / eta.nominal() - 1, 1 - eta.low() / eta.nominal());
        return new Melt(
                r.id(),
                r.name(),
                r::viscosityPaS,
                spread,
                !r.generic(),
                meltC,
                r.maxMeltC().value(),
                Math.min(moldC, r.noFlowC().mid() - 5),
                r.noFlowC().mid(),
                r.diffusivityMm2PerS().mid(),
                r.meltDensityGPerCm3(meltC, 50),
                r.heatCapacityJPerKgK().value(),
                r.maxShearRatePerS().value(),
                r.maxShearStressMpa().high(),
                r.flowLengthRatio().mid(),
                r.viscosity().source());
    }

    /** The same resin run hotter or colder. */
    public Melt atMelt(double newMeltC) {
        return new Melt(
                resin,
                name,
                viscosity,
                viscositySpreadShare,
                grade,
                newMeltC,
                hottestMeltC,
                moldC,
                noFlowC,
                diffusivityMm2PerS,
                densityGPerCm3,
                heatCapacityJPerKgK,
                shearRateLimitPerS,
                shearStressLimitMpa,
                flowLengthRatio,
                source);
    }

    /** Power index about 1000 1/s at the melt temperature, brought to what {@link FlowField} takes. */
    public double indexRatio() {
        return Math.clamp(viscosity.indexRatio(1000, meltC), 0.15, 1);
    }
}
