package shotwright.resin;

import java.util.List;
import org.jspecify.annotations.Nullable;
import shotwright.measure.Band;
import shotwright.measure.Quantity;
import shotwright.measure.QuantityRange;
import shotwright.rack.Rack;

/**
 * One resin family (unfilled natural unless its name says otherwise) or one grade of the shop. The grade's own data sheet always wins.
 *
 * @param id id on the rack
 * @param name name shown
 * @param kind how it solidifies
 * @param generic true while no data sheet of a grade stands behind it
 * @param solidDensityGPerCm3 at 23 °C
 * @param meltDensityGPerCm3 at mid melt temperature, no pressure
 * @param shrinkPercent linear, along the flow, walls of 2 to 3 mm
 * @param shrinkCrossPercent linear, across the flow, where it differs much; null when it does not
 * @param meltC melt temperature window
 * @param moldC mold temperature window
 * @param ejectC highest mean temperature at which the part may be taken out
 * @param noFlowC below it the melt no longer moves
 * @param dryC drying temperature
 * @param dryH drying time
 * @param maxMoisturePercent water it may hold by mass; null when water does not matter
 * @param dryNeed how much drying matters, in words
 * @param dryMethod how to dry, in words
 * @param conductivityWPerMK melt to ejection
 * @param heatCapacityJPerKgK melt average
 * @param diffusivityMm2PerS effective, for cooling times
 * @param transitionC glass transition of amorphous and elastomer resins, melting range of crystalline ones
 * @param deflectionC heat deflection at 1.8 MPa (low) and 0.45 MPa (high); null when not defined
 * @param expansionPerK linear
 * @param enthalpyKjPerKg heat to take out from melt to ejection
 * @param ventDepthMm depth of a vent that air passes and melt does not
 * @param maxShearRatePerS guideline at the gate
 * @param maxShearStressMpa guideline in the part
 * @param clampShortTonsPerIn2 clamp per projected area, bare of allowances
 * @param cavityMpa typical mean cavity pressure
 * @param wallMm usual walls
 * @param minDraftDeg least draft on smooth walls
 * @param viscosityFactor factor on the chart of easy-flowing resins; null when the source gives none
 * @param flowLengthRatio flow length over wall at 80 to 100 MPa and 2 mm
 * @param viscosity the set calculations use
 * @param secondViscosity a second opinion; null when there is none
 * @param spreadShare how far sources on the viscosity of this family differ, to either side
 * @param tait density law; null when no set is trustworthy
 * @param frictionCoefficient on a milled mold wall at ejection
 * @param modulusMpa tensile modulus at 23 °C
 * @param hotModulusShare share of it left at ejection
 * @param settings start settings
 * @param residenceMin longest time in the barrel at usual melt temperature
 * @param maxMeltC never hotter
 * @param hazards what can hurt, in sentences
 * @param forbiddenWith ids of resins it must never meet, hot or as pellets
 * @param purge purging and change-over, in sentences
 * @param benchtopClass A easy, B moderate, C hard, D expert, E avoid
 * @param minUsefulMpa melt pressure a press should reach for it
 * @param pricePerKg neutral money
 * @param stripStrainPercent strain an undercut may be stripped with; null when it must not be stripped
 */
public record Resin(
        String id,
        String name,
        Kind kind,
        boolean generic,
        QuantityRange solidDensityGPerCm3,
        QuantityRange meltDensityGPerCm3,
        QuantityRange shrinkPercent,
        @Nullable QuantityRange shrinkCrossPercent,
        QuantityRange meltC,
        QuantityRange moldC,
        QuantityRange ejectC,
        QuantityRange noFlowC,
        QuantityRange dryC,
        QuantityRange dryH,
        @Nullable QuantityRange maxMoisturePercent,
        String dryNeed,
        String dryMethod,
        QuantityRange conductivityWPerMK,
        Quantity heatCapacityJPerKgK,
        QuantityRange diffusivityMm2PerS,
        QuantityRange transitionC,
        @Nullable QuantityRange deflectionC,
        QuantityRange expansionPerK,
        QuantityRange enthalpyKjPerKg,
        QuantityRange ventDepthMm,
        Quantity maxShearRatePerS,
        QuantityRange maxShearStressMpa,
        QuantityRange clampShortTonsPerIn2,
        QuantityRange cavityMpa,
        QuantityRange wallMm,
        QuantityRange minDraftDeg,
        @Nullable QuantityRange viscosityFactor,
        QuantityRange flowLengthRatio,
        Viscosity viscosity,
        @Nullable Viscosity secondViscosity,
        Quantity spreadShare,
        @Nullable Tait tait,
        QuantityRange frictionCoefficient,
        QuantityRange modulusMpa,
        QuantityRange hotModulusShare,
        Settings settings,
        Quantity residenceMin,
        Quantity maxMeltC,
        List<String> hazards,
        List<String> forbiddenWith,
        List<String> purge,
        BenchtopClass benchtopClass,
        QuantityRange minUsefulMpa,
        QuantityRange pricePerKg,
        @Nullable QuantityRange stripStrainPercent)
        implements Rack.Entry {
    /** How a resin solidifies. */
    public enum Kind {
        CRYSTALLINE("semi-crystalline"),
        AMORPHOUS("amorphous"),
        ELASTOMER("elastomer");

        private final String words;

        Kind(String words) {
            this.words = words;
        }

        /** The kind in words. */
        public String words() {
            return words;
        }
    }

    /** How well it suits a benchtop press. */
    public enum BenchtopClass {
        A("easy, a resin for first trials"),
        B("moderate, dry as needed"),
        C("hard, fast fill and a hot mold"),
        D("expert, high temperature and pressure"),
        E("avoid on a benchtop press");

        private final String words;

        BenchtopClass(String words) {
            this.words = words;
        }

        /** The class in words. */
        public String words() {
            return words;
        }
    }

    public Resin {
        hazards = List.copyOf(hazards);
        forbiddenWith = List.copyOf(forbiddenWith);
        purge = List.copyOf(purge);
    }

    /** Viscosity of the set calculations use, Pa·s. */
    public double viscosityPaS(double shearRatePerS, double meltC) {
        return viscosity.viscosityPaS(shearRatePerS, meltC);
    }

    /** Viscosity with its doubt: the spread of the family, widened to hold the second opinion. */
    public Band viscosityBandPaS(double shearRatePerS, double meltC) {
        double eta = viscosityPaS(shearRatePerS, meltC);
        double spread = spreadShare.value();
        double low = eta / (1 + spread), high = eta * (1 + spread);
        Viscosity second = secondViscosity;
        if (second != null) {
            double other = second.viscosityPaS(shearRatePerS, meltC);
            low = Math.min(low, other);
            high = Math.max(high, other);
        }
        return new Band(low, eta, high);
    }

    /** Melt density at a pressure, g/cm³: from the density law where there is one, else the middle of the range. */
    public double meltDensityGPerCm3(double temperatureC, double pressureMpa) {
        Tait law = tait;
        return law == null ? meltDensityGPerCm3.mid() : law.densityGPerCm3(temperatureC, pressureMpa * 1e6);
    }
}
