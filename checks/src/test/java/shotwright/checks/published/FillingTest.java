package shotwright.checks.published;

import static shotwright.checks.published.Published.Mark.COMMON_PRACTICE;
import static shotwright.checks.published.Published.Mark.DERIVED;
import static shotwright.checks.published.Published.Mark.FROM_MEMORY;
import static shotwright.checks.published.Published.Mark.PUBLISHED;

import shotwright.fill.DiscFront;
import shotwright.fill.FlowLengthGuide;
import shotwright.fill.FrozenLayer;
import shotwright.fill.RamPower;
import shotwright.fill.StripFront;
import shotwright.layout.Shrink;
import shotwright.resin.ChannelFlow;
import shotwright.resin.Resin;
import shotwright.resin.ResinRack;
import shotwright.resin.Tait;

/** Flow through channels and fronts moving through strips and discs. */
class FillingTest {
    private static final String PRINTED = "printed digits";
    private static final String EXACT = "closed form";

    @Published(
            id = {"CV-20", "F27"},
            source = "ICME4",
            where = "solutions 2008, problem 3.1",
            mark = PUBLISHED)
    void sprueTaper() {
        double drop = ChannelFlow.taperDropPa(16e3, 0.3, 0.060, 0.0015, 0.003, 1e-5) * 1e-6;
        Check.relative("sprue 3 to 6 mm, 60 mm, m 16 kPa·sⁿ, n 0.3, 10 cm³/s", 8.96, drop, 0.005, "MPa", PRINTED);
        double inlet = ChannelFlow.tubeDropPa(16e3, 0.3, 1, 0.0015, 1e-5) * 1e-6;
        Check.relative("gradient at its mouth", 290, inlet, 0.005, "MPa/m", PRINTED);
    }

    @Published(
            id = {"CV-18", "F28"},
            source = "WHITE",
            where = "rectangular duct series",
            mark = FROM_MEMORY)
    void ductSides() {
        Check.absolute("drag factor, square", 0.4217, ChannelFlow.ductFactor(1, 1), 0.0002, "", PRINTED);
        Check.absolute("drag factor, 2 to 1", 0.6860, ChannelFlow.ductFactor(2, 1), 0.0002, "", PRINTED);
        Check.absolute("drag factor, 4 to 1", 0.8424, ChannelFlow.ductFactor(4, 1), 0.0002, "", PRINTED);
        Check.absolute("drag factor, 10 to 1", 0.9370, ChannelFlow.ductFactor(10, 1), 0.0002, "", PRINTED);
    }

    @Published(id = "F25", source = "closed form", where = "power law in a tube", mark = DERIVED)
    void tube() {
        double pl = ChannelFlow.tubeDropPa(2.38e4, 0.25, 0.050, 0.002, 5e-6) * 1e-6;
        Check.relative("tube 4 mm, 50 mm, m 2.38e4, n 0.25, 5 cm³/s", 7.269, pl, 2e-4, "MPa", PRINTED);
        double newton = ChannelFlow.tubeDropPa(100, 1, 0.050, 0.002, 5e-6) * 1e-6;
        Check.relative("the same, 100 Pa·s", 3.98, newton, 1e-3, "MPa", PRINTED);
    }

    @Published(id = "F26", source = "closed form", where = "power law in a slit", mark = DERIVED)
    void slit() {
        double pl = ChannelFlow.slitDropPa(2.38e4, 0.25, 0.060, 0.020, 0.002, 5e-6) * 1e-6;
        Check.relative("slit 20 × 2 × 60 mm, m 2.38e4, n 0.25, 5 cm³/s", 7.473, pl, 2e-4, "MPa", PRINTED);
        double newton = ChannelFlow.slitDropPa(100, 1, 0.060, 0.020, 0.002, 5e-6) * 1e-6;
        Check.relative("the same, 100 Pa·s", 2.25, newton, 1e-9, "MPa", EXACT);
    }

    @Published(id = "F32", source = "closed form", where = "2·n_B·τ_w, Bagley", mark = DERIVED)
    void entrance() {
        Check.relative(
                "entrance of 0.2 MPa wall stress, n_B 3", 1.2, ChannelFlow.entranceLossPa(3, 0.2), 1e-12, "MPa", EXACT);
    }

    @Published(id = "F33", source = "closed form", where = "Δp/(ρc)", mark = DERIVED)
    void shearHeat() {
        Check.absolute(
                "30 MPa at 950 kg/m³ and 2200 J/kgK",
                14.4,
                ChannelFlow.shearHeatingK(30e6, 950, 2200),
                0.05,
                "K",
                PRINTED);
    }

    @Published(id = "F13", source = "closed form", where = "power over pressure", mark = DERIVED)
    void ramPower() {
        Check.relative("100 W at 40 MPa", 2500, RamPower.flowMm3PerS(100, 40), 1e-12, "mm³/s", EXACT);
    }

    @Published(id = "F19", source = "closed form", where = "L ∝ h²·√(p/η)", mark = DERIVED)
    void flowLength() {
        Check.absolute(
                "share left at 30 MPa and 2 mm", 0.577, FlowLengthGuide.reachableRatio(1, 2, 30), 5e-4, "", PRINTED);
        Check.relative("share left at 1 mm", 0.5, FlowLengthGuide.reachableRatio(1, 1, 90), 1e-12, "", EXACT);
    }

    @Published(
            id = {"F04", "F72"},
            source = "closed form",
            where = "centre-gated disc, case D1",
            mark = DERIVED)
    void discAtConstantFlow() {
        DiscFront d = new DiscFront(2, 2, 100, 1);
        Check.absolute("time to 40 mm, 5 cm³/s", 2.0056, d.timeAtFlowS(5000, 40), 5e-5, "s", PRINTED);
        Check.absolute("radius then", 40, d.radiusAtFlowMm(5000, 2.0056), 0.001, "mm", PRINTED);
        Check.absolute("pressure, 100 Pa·s", 0.3576, d.pressureMpa(5000, 40), 5e-5, "MPa", PRINTED);
        DiscFront washer = new DiscFront(2, 2, 200, 1);
        double flow = Math.PI * 800;
        Check.absolute(
                "washer 40 × 2 mm, 200 Pa·s, 1 s: pressure", 0.276, washer.pressureMpa(flow, 20), 5e-4, "MPa", PRINTED);
        Check.absolute("opening force with the gate", 299.25, d.openingForceN(5000, 40), 0.01, "N", PRINTED);
    }

    @Published(
            id = {"F05", "F73"},
            source = "closed form",
            where = "power-law disc, case D2",
            mark = DERIVED)
    void discOfPowerLaw() {
        Check.absolute(
                "pressure, m 2.38e4, n 0.25",
                3.155,
                new DiscFront(2, 2, 2.38e4, 0.25).pressureMpa(5000, 40),
                5e-4,
                "MPa",
                PRINTED);
        Check.absolute("mean over gate pressure, n 0.3", 0.2593, DiscFront.meanPressureShare(0.3), 5e-5, "", PRINTED);
    }

    @Published(id = "F74", source = "closed form", where = "strip at constant pressure", mark = DERIVED)
    void stripAtConstantPressure() {
        StripFront s = new StripFront(20, 2, 100, 1);
        Check.absolute(
                "front after 0.05 s at 30 MPa, 2 mm, 100 Pa·s", 100, s.placeAtPressureMm(30, 0.05), 1e-9, "mm", EXACT);
    }

    @Published(id = "F76", source = "closed form", where = "power-law strip at constant pressure", mark = DERIVED)
    void powerLawStrip() {
        StripFront s = new StripFront(20, 2, 2.38e4, 0.25);
        Check.absolute(
                "front after 0.05 s at 30 MPa, m 2.38e4, n 0.25",
                160.1,
                s.placeAtPressureMm(30, 0.05),
                0.05,
                "mm",
                PRINTED);
        Check.relative("pressure at 60 mm, 5 cm³/s (case S2)", 7.473, s.pressureMpa(5000, 60), 2e-4, "MPa", PRINTED);
    }

    @Published(id = "F75", source = "closed form", where = "disc at constant pressure", mark = DERIVED)
    void discAtConstantPressure() {
        Check.absolute(
                "time to 40 mm at 20 MPa",
                0.02996,
                new DiscFront(2, 2, 100, 1).timeAtPressureS(20, 40),
                5e-6,
                "s",
                PRINTED);
    }

    @Published(
            id = {"A1", "A2"},
            source = "ADV",
            where = "Example 6.8(a), public companion code",
            mark = PUBLISHED)
    void discExampleAtPressure() {
        Check.relative("100 Pa·s, 0.5 MPa", 5.4228, example(100, 0.5), 1e-4, "s", PRINTED);
        Check.relative("500 Pa·s, 0.5 MPa", 27.1138, example(500, 0.5), 1e-4, "s", PRINTED);
        Check.relative("500 Pa·s, 1 MPa", 13.5569, example(500, 1), 1e-4, "s", PRINTED);
        Check.relative("1000 Pa·s, 1 MPa", 27.1138, example(1000, 1), 1e-4, "s", PRINTED);
    }

    private static double example(double viscosity, double pressureMpa) {
        return new DiscFront(10, 2, viscosity, 1).timeAtPressureS(pressureMpa, 100);
    }

    @Published(id = "A3", source = "ADV", where = "Example 6.8(b), public companion code", mark = PUBLISHED)
    void discExampleAtFlow() {
        DiscFront d = new DiscFront(10, 2, 100, 1);
        double[] flow = {1000, 2000, 5000},
                time = {62.2035, 31.1018, 12.4407},
                pressure = {0.054970, 0.109940, 0.274851};
        for (int i = 0; i < flow.length; i++) {
            Check.relative(
                    "time at " + flow[i] / 1000 + " cm³/s", time[i], d.timeAtFlowS(flow[i], 100), 1e-4, "s", PRINTED);
            Check.relative(
                    "pressure at " + flow[i] / 1000 + " cm³/s",
                    pressure[i],
                    d.pressureMpa(flow[i], 100),
                    1e-4,
                    "MPa",
                    PRINTED);
        }
    }

    @Published(id = "A4", source = "ADV", where = "ratio of the two examples", mark = DERIVED)
    void ratioOfTimesIsFreeOfGapAndViscosity() {
        DiscFront d = new DiscFront(7, 1.3, 321, 1);
        double p = d.pressureMpa(900, 70);
        Check.relative(
                "time at pressure over time at flow, k = 10",
                0.79295,
                d.timeAtPressureS(p, 70) / d.timeAtFlowS(900, 70),
                1e-4,
                "",
                PRINTED);
    }

    @Published(
            id = "A6",
            source = "OSS",
            where = "guard against the activation energy printed a thousand times too large",
            mark = DERIVED)
    void viscosityFallsPlausiblyWithTemperature() {
        for (Resin r : ResinRack.standard().all()) {
            double mid = r.meltC().mid();
            double fall = r.viscosityPaS(1000, mid - 10) / r.viscosityPaS(1000, mid + 10);
            Check.band("viscosity over 20 K, " + r.name(), 1.05, 5, fall, "", "any melt");
        }
    }

    @Published(id = "F77", source = "closed form", where = "half space, erf λ = 1/3", mark = DERIVED)
    void frozenLayer() {
        Check.absolute("2λ, 230/50/110 °C", 0.6091, FrozenLayer.growthFactor(230, 50, 110), 5e-5, "", PRINTED);
        Check.absolute(
                "skin after 1 s, a 0.09", 0.183, FrozenLayer.thicknessMm(1, 0.09, 230, 50, 110), 5e-4, "mm", PRINTED);
        Check.absolute(
                "skin after 0.25 s", 0.091, FrozenLayer.thicknessMm(0.25, 0.09, 230, 50, 110), 5e-4, "mm", PRINTED);
        Check.absolute(
                "skin after 1 s, 220/40/130 °C",
                0.286,
                FrozenLayer.thicknessMm(1, 0.09, 220, 40, 130),
                5e-4,
                "mm",
                PRINTED);
    }

    @Published(id = "F67", source = "ISO294", where = "definition", mark = DERIVED)
    void measuredShrink() {
        double s = Shrink.measuredShare(49.12, 50.30);
        Check.absolute("mold 50.30, part 49.12 mm", 2.346, 100 * s, 5e-4, "%", PRINTED);
        Check.absolute("new mold size for 50.00", 51.201, Shrink.moldLengthMm(50, s), 5e-4, "mm", PRINTED);
    }

    @Published(id = "F68", source = "DH", where = "p. 39, polystyrene", mark = DERIVED)
    void shrinkFromVolumes() {
        double room = 1 / 1.050;
        Check.absolute("freezes at 110 °C, 40 MPa", 0.359, percent(room, 110, 40e6), 5e-4, "%", PRINTED);
        Check.absolute("freezes at 130 °C, 40 MPa", 0.636, percent(room, 130, 40e6), 5e-4, "%", PRINTED);
        Check.absolute("freezes at 110 °C, no pressure", 1.034, percent(room, 110, 0), 5e-4, "%", PRINTED);
    }

    private static double percent(double roomCm3PerG, double freezeC, double pressurePa) {
        double freeze = Tait.meltM3PerKg(9.3805e-4, 3.3086e-7, 6.6910e-10, 2.5001e8, 4.1815e-3, freezeC, pressurePa);
        return 100 * Shrink.fromVolumesShare(roomCm3PerG, 1000 * freeze);
    }

    @Published(
            id = "A8",
            source = "common practice",
            where = "slip in circulation: cavity 250 mm, part 98.2 mm",
            mark = COMMON_PRACTICE)
    void absurdShrinkIsRefused() {
        boolean refused = false;
        try {
            Shrink.measuredShare(98.2, 250);
        } catch (IllegalArgumentException e) {
            refused = true;
        }
        Check.exact("a shrink of 60.7 % is refused", true, refused);
    }
}
