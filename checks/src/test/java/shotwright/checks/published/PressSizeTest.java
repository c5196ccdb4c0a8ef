package shotwright.checks.published;

import static shotwright.checks.published.Published.Mark.COMMON_PRACTICE;
import static shotwright.checks.published.Published.Mark.DERIVED;
import static shotwright.checks.published.Published.Mark.FROM_MEMORY;
import static shotwright.checks.published.Published.Mark.PUBLISHED;

import shotwright.measure.Units;
import shotwright.sizing.ClampForce;
import shotwright.sizing.EccentricLoad;
import shotwright.sizing.MeltPressure;
import shotwright.sizing.Shot;

/** Clamp, shot, pressure and off-centre load of a press. */
class PressSizeTest {
    private static final String PRINTED = "printed digits";
    private static final String EXACT = "closed form";

    @Published(
            id = {"CV-02", "F02", "F03"},
            source = "CRAW",
            where = "Ex. 4.6(a), pp. 295–296",
            mark = PUBLISHED)
    void fourCupsWithRunner() {
        Check.absolute(
                "pressure before the book rounds to 120 MPa",
                120,
                ClampForce.chartMpa(75, 1.4, 1.15),
                1,
                "MPa",
                "book rounds");
        double cup = ClampForce.meanPressureKn(120, ClampForce.discMm2(90));
        double runner = ClampForce.meanPressureKn(120, 4 * 40 * 6);
        Check.absolute("one cup Ø90", 763, cup, 1, "kN", PRINTED);
        Check.absolute("runner 4 × 40 × 6 mm", 115, runner, 1, "kN", PRINTED);
        Check.absolute("four cups and runner", 3167, 4 * cup + runner, 5, "kN", PRINTED);
    }

    @Published(id = "CV-03", source = "CRAW", where = "Ex. 4.6(b), p. 296", mark = PUBLISHED)
    void cupsWithPinGate() {
        double mpa = ClampForce.chartMpa(50, 1.4, 1.15);
        Check.absolute(
                "one cup Ø90, centre gate",
                512,
                ClampForce.meanPressureKn(mpa, ClampForce.discMm2(90)),
                1,
                "kN",
                PRINTED);
    }

    @Published(id = "CV-17", source = "MDT", where = "worked clamp example", mark = PUBLISHED)
    void clampRuleTurnedRound() {
        double left = ClampForce.usableKn(Units.shortTonsToKn(250), 0.10);
        Check.absolute("250 short tons less 10 %", 225, Units.knToShortTons(left), 1e-9, "short tons", EXACT);
        double in2 = Units.mm2ToIn2(ClampForce.areaMm2(left, 2));
        Check.absolute("area at 2 short tons per in²", 112.5, in2, 1e-9, "in²", EXACT);
        double mpa = Units.shortTonsToKn(220) * 1000 / Units.in2ToMm2(110);
        Check.absolute("220 short tons on 110 in²", 27.6, mpa, 0.05, "MPa", PRINTED);
        Check.absolute("the same", 4000, mpa * 1e6 / Units.PA_PER_PSI, 1e-6, "psi", EXACT);
    }

    @Published(id = "F01", source = "common practice", where = "2.5 short tons per in²", mark = COMMON_PRACTICE)
    void clampRule() {
        Check.absolute("1 in²", 22.24, ClampForce.ruleKn(Units.MM2_PER_IN2, 2.5), 0.005, "kN", PRINTED);
        double[] tons = {2, 3, 5, 7.5, 10, 15, 20, 30}, cm2 = {4.7, 7.0, 11.7, 17.6, 23.5, 35.2, 46.9, 70.4};
        for (int i = 0; i < tons.length; i++) {
            Check.absolute(
                    "area that opens " + tons[i] + " short tons at 2.5, allowance 1.1",
                    cm2[i],
                    ClampForce.areaMm2(Units.shortTonsToKn(tons[i]), 2.5 * 1.1) / 100,
                    0.06,
                    "cm²",
                    PRINTED);
        }
    }

    @Published(id = "A11", source = "TBC", where = "Example 16.11", mark = PUBLISHED)
    void deepPart() {
        Check.absolute(
                "200 cm², 25 MPa, 2 MPa per cm, 4 cm deep",
                660,
                ClampForce.withDepthKn(200 * 100, 25, 0.2, 40),
                1e-9,
                "kN",
                EXACT);
    }

    @Published(id = "F06", source = "closed form", where = "lever rule on two supports", mark = FROM_MEMORY)
    void twoSupports() {
        Check.absolute("in the middle", 0.5, EccentricLoad.nearShare(0, 200), 1e-12, "", EXACT);
        Check.absolute("over one support", 1, EccentricLoad.nearShare(100, 200), 1e-12, "", EXACT);
        Check.absolute("and nothing on the other", 0, EccentricLoad.farShare(100, 200), 1e-12, "", EXACT);
    }

    @Published(id = "F07", source = "closed form", where = "kern of a rectangle", mark = FROM_MEMORY)
    void kern() {
        Check.absolute("face 60 mm long", 10, EccentricLoad.kernMm(60), 1e-12, "mm", EXACT);
    }

    @Published(id = "F08", source = "common practice", where = "mass over melt density", mark = COMMON_PRACTICE)
    void meltToInject() {
        Check.absolute("10 g of PP at 0.738 g/cm³", 13.55, Shot.injectedCm3(10, 0.738, 0), 0.005, "cm³", PRINTED);
    }

    @Published(id = "F10", source = "PT", where = "ratings are in polystyrene", mark = DERIVED)
    void ratingInAnotherResin() {
        Check.absolute("20 g of polystyrene in PP", 15.2, Shot.ratingG(20, 0.738, 0.97), 0.05, "g", PRINTED);
    }

    @Published(
            id = {"CV-25", "F11"},
            source = "HOWTO",
            where = "worked example",
            mark = PUBLISHED)
    void residence() {
        Check.absolute(
                "barrel 200 g, factor 1.4, shot 100 g, 15 s", 42, Shot.residenceS(200, 1.4, 100, 15), 1e-9, "s", EXACT);
    }

    @Published(id = "F12", source = "closed form", where = "force over plunger area", mark = DERIVED)
    void plunger() {
        Check.absolute("10 kN on Ø20, 0.75", 23.9, MeltPressure.plungerMpa(10, 20, 0.75), 0.05, "MPa", PRINTED);
    }
}
