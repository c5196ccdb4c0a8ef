package shotwright.checks.published;

import static shotwright.checks.published.Published.Mark.DERIVED;
import static shotwright.checks.published.Published.Mark.FROM_MEMORY;
import static shotwright.checks.published.Published.Mark.PUBLISHED;

import shotwright.layout.gate.EdgeGateSize;
import shotwright.layout.gate.GateFreeze;
import shotwright.layout.gate.GateShear;
import shotwright.layout.runner.RunnerSize;
import shotwright.layout.runner.SprueTaper;
import shotwright.layout.vent.VentFlow;

/** Sizes of gate, runner, sprue and vent. */
class FeedAndGateTest {
    private static final String PRINTED = "printed digits";
    private static final String EXACT = "closed form";

    @Published(id = "CV-15", source = "PYE", where = "§4.2.2, eq. 4.1", mark = PUBLISHED)
    void runnerByMass() {
        Check.absolute("runner diameter, 120 g over 50 mm", 7.87, RunnerSize.byMassMm(120, 50), 0.01, "mm", PRINTED);
    }

    @Published(id = "F29", source = "PYE", where = "§4.2.2, eq. 4.1", mark = PUBLISHED)
    void runnerByMassTakesTheNextCutter() {
        double cutterMm = Math.ceil(RunnerSize.byMassMm(120, 50));
        Check.absolute("next whole cutter above, 120 g over 50 mm", 8, cutterMm, 0.07, "mm", "book prints 5/16 in");
    }

    @Published(
            id = {"CV-16", "F31"},
            source = "RJRP",
            where = "abstract: minimum-volume rule",
            mark = DERIVED)
    void balancedBranches() {
        Check.absolute("each of 2 branches of a 6 mm runner", 4.762, RunnerSize.branchMm(6, 2), 0.001, "mm", PRINTED);
        Check.absolute("each of 4 branches of a 6 mm runner", 3.780, RunnerSize.branchMm(6, 4), 0.001, "mm", PRINTED);
    }

    @Published(id = "F30", source = "KAZ", where = "eq. 6.8, p. 167", mark = DERIVED)
    void runnerByPressure() {
        double ours = RunnerSize.byPressureMm(2.38e4, 0.25, 50, 7.269, 5000);
        Check.relative(
                "runner that loses 7.269 MPa, m 2.38e4, n 0.25, 50 mm, 5 cm³/s", 4.000, ours, 2e-4, "mm", PRINTED);
    }

    @Published(
            id = {"CV-24", "F35"},
            source = "PT",
            where = "sprue bushings, 2017: 0.042 in per in",
            mark = PUBLISHED)
    void standardSprueTaper() {
        Check.absolute(
                "growth in diameter per inch",
                0.0417 * 25.4,
                SprueTaper.growthMm(25.4, SprueTaper.STANDARD_INCLUDED_DEG),
                0.0002 * 25.4,
                "mm",
                PRINTED);
        Check.absolute("included angle", 2.38, SprueTaper.STANDARD_INCLUDED_DEG, 0.01, "°", "printed 2.38°");
    }

    @Published(
            id = {"F20", "F21"},
            source = "PYE",
            where = "edge gate rule, h = n·t and w = n·√A/30",
            mark = FROM_MEMORY)
    void edgeGate() {
        Check.absolute(
                "gate width, 3600 mm² of cavity, n 0.6", 1.2, EdgeGateSize.widthMm(0.6, 3600), 1e-9, "mm", EXACT);
        Check.absolute("gate depth, wall 2 mm, n 0.6", 1.2, EdgeGateSize.depthMm(0.6, 2), 1e-9, "mm", EXACT);
    }

    @Published(id = "F22", source = "PT", where = "gates: round gate of equal area", mark = PUBLISHED)
    void roundGateOfEqualArea() {
        Check.absolute("diameter equal to 1 × 2 mm", 1.596, EdgeGateSize.roundDiameterMm(1, 2), 0.0005, "mm", PRINTED);
    }

    @Published(
            id = {"F23", "F24"},
            source = "closed form",
            where = "Newtonian slot and tube",
            mark = DERIVED)
    void shearRates() {
        Check.relative("slot 2 × 1 mm, 5 cm³/s", 15_000, GateShear.slotPerS(5000, 2, 1), 1e-9, "1/s", EXACT);
        Check.relative("round 1 mm, 5 cm³/s", 50_930, GateShear.roundPerS(5000, 1), 1e-4, "1/s", PRINTED);
    }

    @Published(id = "F34", source = "closed form", where = "first term of the slab and rod series", mark = DERIVED)
    void gateFreeze() {
        double[] depth = {0.5, 0.8, 1.0, 1.5}, time = {0.40, 1.02, 1.60, 3.59};
        for (int i = 0; i < depth.length; i++) {
            double ours = GateFreeze.slotS(depth[i], 0.085, 230, 50, 110);
            Check.absolute("slab gate " + depth[i] + " mm, a 0.085, 230/50/110 °C", time[i], ours, 0.006, "s", PRINTED);
        }
        Check.absolute("round gate 1.0 mm", 0.80, GateFreeze.roundS(1, 0.085, 230, 50, 110), 0.006, "s", PRINTED);
        Check.absolute("round gate 1.5 mm", 1.80, GateFreeze.roundS(1.5, 0.085, 230, 50, 110), 0.006, "s", PRINTED);
    }

    @Published(id = "F36", source = "closed form", where = "laminar slot with choking cap", mark = DERIVED)
    void ventFlow() {
        Check.relative(
                "vent 5 × 0.025 mm, land 1 mm, 0.1 MPa, not capped",
                29.6e3,
                VentFlow.laminarMm3PerS(5, 0.025, 1, 0.1),
                2e-3,
                "mm³/s",
                PRINTED);
        Check.relative("same vent, capped", 24.7e3, VentFlow.flowMm3PerS(5, 0.025, 1, 0.1), 3e-3, "mm³/s", PRINTED);
    }

    @Published(
            id = "F37",
            source = "closed form",
            where = "adiabatic compression of air, 1 to 30 bar from 27 °C",
            mark = DERIVED)
    void trappedAir() {
        Check.absolute("trapped air, 27 °C, 30 to 1", 520, VentFlow.trappedAirC(27, 30), 1.5, "°C", "printed to 10 °C");
    }
}
