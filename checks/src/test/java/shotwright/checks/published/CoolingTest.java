package shotwright.checks.published;

import static shotwright.checks.published.Published.Mark.DERIVED;
import static shotwright.checks.published.Published.Mark.FROM_MEMORY;
import static shotwright.checks.published.Published.Mark.PUBLISHED;

import shotwright.cool.AirCooling;
import shotwright.cool.BallCooling;
import shotwright.cool.ContactTemperature;
import shotwright.cool.LumpedMold;
import shotwright.cool.PlateCooling;
import shotwright.cool.RodCooling;
import shotwright.cool.SlabSeries;
import shotwright.cool.WaterLine;

/** Conduction in walls and rods, heat of the mold, air and water. */
class CoolingTest {
    private static final String PRINTED = "printed digits";

    @Published(
            id = {"CV-12", "F38"},
            source = "RAO",
            where = "ch. 3 example",
            mark = FROM_MEMORY)
    void polyethyleneSlab() {
        double t = PlateCooling.centreTimeS(12.7, 0.129, 243.3, 21.1, 76.7);
        Check.absolute("centre, PE-LD 12.7 mm, one term", 206.1, t, 0.2, "s", PRINTED);
        Check.relative("the same against the book's chart", 203, t, 0.03, "s", "book reads 200 to 206");
    }

    @Published(id = "F39", source = "MEN", where = "plate, mean temperature", mark = FROM_MEMORY)
    void meanOfAWall() {
        Check.absolute("ABS 2 mm", 6.81, PlateCooling.meanTimeS(2, 0.085, 230, 50, 85), 0.005, "s", PRINTED);
        Check.absolute("PP 2 mm", 4.82, PlateCooling.meanTimeS(2, 0.090, 220, 40, 90), 0.005, "s", PRINTED);
        Check.absolute("POM 2 mm", 4.19, PlateCooling.meanTimeS(2, 0.090, 205, 80, 120), 0.005, "s", PRINTED);
        Check.absolute("PC 2 mm", 4.29, PlateCooling.meanTimeS(2, 0.130, 300, 80, 125), 0.005, "s", PRINTED);
        Check.absolute("PS 1.5 mm", 3.47, PlateCooling.meanTimeS(1.5, 0.085, 220, 40, 80), 0.005, "s", PRINTED);
        Check.absolute("PA66 1.5 mm", 1.61, PlateCooling.meanTimeS(1.5, 0.110, 285, 70, 150), 0.005, "s", PRINTED);
    }

    @Published(id = "F38", source = "MEN", where = "plate, centre line", mark = FROM_MEMORY)
    void centreOfAWall() {
        Check.absolute("ABS 2 mm", 8.96, PlateCooling.centreTimeS(2, 0.085, 230, 50, 85), 0.005, "s", PRINTED);
        Check.absolute("PP 2 mm", 6.86, PlateCooling.centreTimeS(2, 0.090, 220, 40, 90), 0.005, "s", PRINTED);
        Check.absolute("POM 2 mm", 6.22, PlateCooling.centreTimeS(2, 0.090, 205, 80, 120), 0.005, "s", PRINTED);
        Check.absolute("PC 2 mm", 5.70, PlateCooling.centreTimeS(2, 0.130, 300, 80, 125), 0.005, "s", PRINTED);
        Check.absolute("PS 1.5 mm", 4.68, PlateCooling.centreTimeS(1.5, 0.085, 220, 40, 80), 0.005, "s", PRINTED);
        Check.absolute("PA66 1.5 mm", 2.55, PlateCooling.centreTimeS(1.5, 0.110, 285, 70, 150), 0.005, "s", PRINTED);
        Check.absolute(
                "8 mm: not the 21.7 s of a slip in circulation",
                86.9,
                PlateCooling.centreTimeS(8, 0.10, 240, 60, 120),
                0.05,
                "s",
                PRINTED);
    }

    @Published(id = "F40", source = "MEN", where = "rod, axis", mark = FROM_MEMORY)
    void axisOfARod() {
        Check.absolute("PP sprue 6 mm", 30.3, RodCooling.centreTimeS(6, 0.090, 220, 40, 90), 0.05, "s", PRINTED);
    }

    @Published(id = "F41", source = "MEN", where = "rod, mean temperature", mark = FROM_MEMORY)
    void meanOfARod() {
        Check.absolute("PP sprue 6 mm", 15.8, RodCooling.meanTimeS(6, 0.090, 220, 40, 90), 0.05, "s", PRINTED);
    }

    @Published(
            id = {"CV-13", "F42"},
            source = "closed form",
            where = "Carslaw and Jaeger series",
            mark = DERIVED)
    void slabSeries() {
        double[] fo = {0.05, 0.1, 0.2}, centre = {0.77231, 0.47449, 0.17687}, mean = {0.49591, 0.30212, 0.11260};
        for (int i = 0; i < fo.length; i++) {
            Check.absolute("centre at Fo " + fo[i], centre[i], SlabSeries.centreShare(fo[i]), 1e-5, "", PRINTED);
            Check.absolute("mean at Fo " + fo[i], mean[i], SlabSeries.meanShare(fo[i]), 1e-5, "", PRINTED);
        }
    }

    @Published(id = "F43", source = "closed form", where = "two half spaces in contact", mark = DERIVED)
    void contact() {
        double rise = ContactTemperature.contactC(550, 1, 20_100, 0);
        Check.absolute("polystyrene on 6061, share of the way to the melt", 2.7, 100 * rise, 0.05, "%", PRINTED);
    }

    private static LumpedMold mold(double lossWPerK) {
        return new LumpedMold(1.2, 896, 10e-3 * 2100 * 140, 60, lossWPerK, 0);
    }

    @Published(id = "F44", source = "closed form", where = "lumped capacity", mark = DERIVED)
    void lumpedMold() {
        Check.absolute(
                "rise of the first shot, 2940 J into 1.2 kg", 2.73, mold(0.48).risePerShotK(), 0.005, "K", PRINTED);
        Check.absolute("settles, air only", 102, mold(0.48).steadyRiseK(), 0.5, "K", PRINTED);
        Check.absolute("time constant, air only", 2240, mold(0.48).timeConstantS(), 1, "s", PRINTED);
        Check.absolute("settles with platens", 10.9, mold(4.48).steadyRiseK(), 0.05, "K", PRINTED);
        Check.absolute("time constant with platens", 240, mold(4.48).timeConstantS(), 0.5, "s", PRINTED);
    }

    @Published(id = "F45", source = "closed form", where = "lumped capacity", mark = DERIVED)
    void shotsToALimit() {
        Check.absolute("shots to 40 K, air only", 18.6, mold(0.48).shotsToRise(40), 0.05, "", PRINTED);
    }

    @Published(id = "F46", source = "closed form", where = "lumped capacity", mark = DERIVED)
    void shortestCycle() {
        Check.absolute("cycle that keeps 40 K, 4.48 W/K", 16.4, mold(4.48).shortestCycleS(40), 0.05, "s", PRINTED);
    }

    @Published(
            id = {"CV-14", "F47"},
            source = "LIEN",
            where = "Example 8.1, p. 410",
            mark = PUBLISHED)
    void stillAir() {
        double ra = AirCooling.rayleighRatio(313, 287, 0.4, 1.566e-5, 2.203e-5);
        Check.relative("Rayleigh number", 1.647e8, ra, 0.005, "", PRINTED);
        Check.relative(
                "plate 0.4 m", 4.06, AirCooling.squireEckertRatio(ra, 0.711) * 0.02614 / 0.4, 0.005, "W/m²K", PRINTED);
    }

    @Published(id = "F48", source = "INC", where = "Churchill and Chu", mark = FROM_MEMORY)
    void churchillChu() {
        double ra = AirCooling.rayleighRatio(313, 287, 0.4, 1.566e-5, 2.203e-5);
        Check.relative(
                "Nusselt number, plate 0.4 m", 70.9, AirCooling.churchillChuRatio(ra, 0.711), 0.002, "", PRINTED);
    }

    @Published(id = "F49", source = "closed form", where = "4εσT³", mark = DERIVED)
    void radiation() {
        Check.absolute("black, 298 K", 6.00, AirCooling.radiationWPerM2K(1, 298), 0.01, "W/m²K", PRINTED);
    }

    @Published(id = "F50", source = "INC", where = "Dittus and Boelter", mark = FROM_MEMORY)
    void dittusBoelter() {
        Check.relative("water, Re 11 886", 86.44, WaterLine.dittusBoelterRatio(11_886, 6.13), 5e-4, "", PRINTED);
    }

    @Published(id = "F51", source = "INC", where = "Gnielinski", mark = FROM_MEMORY)
    void gnielinski() {
        Check.absolute("friction factor", 0.03001, WaterLine.frictionFactor(11_886), 1e-5, "", PRINTED);
        Check.relative("water, Re 11 886", 88.53, WaterLine.gnielinskiRatio(11_886, 6.13), 5e-4, "", PRINTED);
    }

    @Published(id = "F52", source = "closed form", where = "Re·π·d·ν/4", mark = DERIVED)
    void waterFlow() {
        double nu = 8.9e-4 / 997;
        Check.absolute("6 mm, Re 10 000", 2.52, WaterLine.flowLitrePerMin(10_000, 6, nu), 0.005, "L/min", PRINTED);
        Check.absolute("6 mm, Re 4000", 1.01, WaterLine.flowLitrePerMin(4000, 6, nu), 0.005, "L/min", PRINTED);
    }

    @Published(id = "F53", source = "INC", where = "row of cylinders under a plane", mark = FROM_MEMORY)
    void rowOfLines() {
        Check.absolute(
                "6 mm bore, 10 mm deep, 20 mm pitch", 1.964, WaterLine.rowShapeFactor(6, 10, 20), 5e-4, "", PRINTED);
    }

    @Published(
            id = "F38",
            source = "closed form",
            where = "washer of the end-to-end case: ball and wall",
            mark = DERIVED)
    void thickSpots() {
        Check.trend(
                "a ball cools faster than a wall as thick",
                BallCooling.centreTimeS(3, 0.09, 205, 80, 120) < PlateCooling.centreTimeS(3, 0.09, 205, 80, 120));
    }
}
