package shotwright.checks.published;

import static shotwright.checks.published.Published.Mark.DERIVED;
import static shotwright.checks.published.Published.Mark.FROM_MEMORY;
import static shotwright.checks.published.Published.Mark.PUBLISHED;

import shotwright.layout.Shrink;
import shotwright.layout.release.CoreGrip;
import shotwright.layout.release.PinLoad;
import shotwright.layout.strength.BoltPreload;
import shotwright.layout.strength.CoreBending;
import shotwright.layout.strength.PlateUnderPressure;
import shotwright.layout.strength.SideWall;
import shotwright.stock.Fit;

/** Ejection, mold strength, fits and shrink. */
class ReleaseAndStrengthTest {
    private static final String PRINTED = "printed digits";
    private static final String EXACT = "closed form";

    @Published(
            id = {"CV-04", "F62"},
            source = "KAZ",
            where = "p. 415",
            mark = PUBLISHED)
    void coreBending() {
        double inertia = CoreBending.inertiaMm4(60, 40);
        Check.relative("second moment, 60/40 mm", 5.1e5, inertia, 0.01, "mm⁴", PRINTED);
        Check.absolute(
                "deflection, 40 MPa on 58 mm, 205 GPa",
                0.0324,
                CoreBending.deflectionMm(40, 60, 58, 205_000, inertia),
                0.0003,
                "mm",
                "book rounds to 0.03");
    }

    @Published(
            id = {"CV-21", "F59"},
            source = "PT",
            where = "September 2018, table 2, fixed at both ends",
            mark = PUBLISHED)
    void pinBuckling() {
        double[] lengthIn = {3, 1.5, 0.5}, lbf = {98.6, 394.3, 3548};
        for (int i = 0; i < lbf.length; i++) {
            double n = PinLoad.bucklingN(30e6 * 0.006894757, 25.4 / 16, lengthIn[i] * 25.4, 0.5);
            Check.relative("1/16 in pin, " + lengthIn[i] + " in long", lbf[i], n / 4.4482216, 0.005, "lbf", PRINTED);
        }
    }

    @Published(id = "F54", source = "MEN", where = "closed sleeve on a core, also GD", mark = FROM_MEMORY)
    void closedCore() {
        double p = CoreGrip.pressureMpa(2, 1800, 90e-6 * 60, 30, 0.35);
        Check.absolute("pressure on the core", 1.571, p, 0.001, "MPa", PRINTED);
        Check.absolute(
                "ejection force, Ø30 × 20, μ 0.4", 1184, CoreGrip.forceN(0.4, p, Math.PI * 30 * 20), 1, "N", PRINTED);
    }

    @Published(id = "F55", source = "KAZ", where = "ejection by wall section", mark = FROM_MEMORY)
    void closedCoreBySection() {
        // a thin ring of wall t and length L pulled round a core carries the hoop force E·ε·t·L on each side: p·d·L =
        // 2·E·ε·t·L
        double p = CoreGrip.pressureMpa(2, 1800, 0.0054, 30, 0);
        double ours = CoreGrip.bySectionN(0.4, 0, 1800, 0.0054, 2 * Math.PI * 2 * 20);
        Check.relative("same ring both ways, ν 0", CoreGrip.forceN(0.4, p, Math.PI * 30 * 20), ours, 1e-9, "N", EXACT);
    }

    @Published(id = "F56", source = "POU", where = "draft factor", mark = FROM_MEMORY)
    void draftRelief() {
        Check.absolute("μ 0.4 at 2°", 0.360, CoreGrip.draftFactor(0.4, 2), 0.0005, "", PRINTED);
        Check.absolute(
                "μ 0.4 at atan 0.4", 0, CoreGrip.draftFactor(0.4, Math.toDegrees(Math.atan(0.4))), 1e-9, "", EXACT);
    }

    @Published(id = "F57", source = "closed form", where = "one atmosphere on a Ø30 core", mark = DERIVED)
    void vacuum() {
        Check.absolute("Ø30 core", 71.6, CoreGrip.vacuumN(Math.PI * 225), 0.05, "N", PRINTED);
    }

    @Published(id = "F58", source = "closed form", where = "shear around a pin", mark = DERIVED)
    void perforation() {
        Check.absolute("50 N on Ø2 through 2 mm", 3.98, PinLoad.perforationMpa(50, 2, 2), 0.005, "MPa", PRINTED);
    }

    @Published(id = "F60", source = "ROARK", where = "clamped circular plate, even load", mark = FROM_MEMORY)
    void clampedDisc() {
        Check.absolute(
                "a 20, t 12, 40 MPa, E 70 GPa, ν 0.33",
                8.84e-3,
                PlateUnderPressure.roundDeflectionMm(40, 20, 12, 70_000, 0.33),
                5e-6,
                "mm",
                PRINTED);
        Check.absolute("its stress", 83.3, PlateUnderPressure.roundStressMpa(40, 20, 12), 0.05, "MPa", PRINTED);
        Check.absolute(
                "E 69 GPa",
                8.97e-3,
                PlateUnderPressure.roundDeflectionMm(40, 20, 12, 69_000, 0.33),
                5e-6,
                "mm",
                PRINTED);
    }

    @Published(id = "F61", source = "closed form", where = "cantilever under even load", mark = DERIVED)
    void sideWall() {
        Check.absolute(
                "H 12, t 12, 40 MPa, 70 GPa",
                10.3e-3,
                SideWall.cantileverDeflectionMm(40, 12, 12, 70_000),
                5e-5,
                "mm",
                PRINTED);
        Check.absolute("its stress", 120, SideWall.cantileverStressMpa(40, 12, 12), 1e-9, "MPa", EXACT);
    }

    @Published(id = "F63", source = "closed form", where = "beam fixed at both ends", mark = DERIVED)
    void fixedBeam() {
        double inertia = 60 * Math.pow(20, 3) / 12;
        Check.absolute(
                "t 20, b 60, L 80, 30 MPa on 40 wide, 70 GPa",
                0.046,
                SideWall.beamDeflectionMm(30 * 40, 80, 70_000, inertia),
                0.0005,
                "mm",
                PRINTED);
        double wall = 12 * Math.pow(12, 3) / 12;
        Check.relative(
                "side wall between corners as that beam, H 12, t 12, L 30",
                SideWall.beamDeflectionMm(40 * 12, 30, 70_000, wall),
                SideWall.fixedBeamDeflectionMm(40, 30, 12, 70_000),
                1e-9,
                "mm",
                EXACT);
    }

    @Published(id = "F64", source = "closed form", where = "Lamé, thick ring", mark = DERIVED)
    void thickRing() {
        Check.absolute(
                "ri 10, ro 20, 40 MPa, 69 GPa, ν 0.33",
                11.6e-3,
                SideWall.ringDeflectionMm(40, 10, 20, 69_000, 0.33),
                5e-5,
                "mm",
                PRINTED);
    }

    @Published(id = "F65", source = "ISO898", where = "M6 of class 12.9: 20.1 mm², proof 970 MPa", mark = FROM_MEMORY)
    void boltPreload() {
        Check.absolute("stress area M6", 20.1, BoltPreload.stressAreaMm2(6, 1), 0.05, "mm²", PRINTED);
        Check.absolute("stress area M4", 8.78, BoltPreload.stressAreaMm2(4, 0.7), 0.01, "mm²", PRINTED);
        Check.absolute("preload M6 12.9", 14.6, BoltPreload.preloadN(970, 20.1) / 1000, 0.05, "kN", PRINTED);
    }

    @Published(id = "F66", source = "ISO294", where = "part 4, definition of molding shrinkage", mark = DERIVED)
    void shrink() {
        Check.absolute("50 mm at 2 %", 51.0204, Shrink.moldLengthMm(50, 0.02), 5e-5, "mm", PRINTED);
    }

    @Published(
            id = {"CV-07", "CV-08"},
            source = "ISO286",
            where = "part 1 worked example; table of h shafts",
            mark = PUBLISHED)
    void fits() {
        Check.exact(
                "Ø50 H7/g6 clearance, µm",
                "9 … 50",
                Fit.H7.leastClearanceUm(Fit.G6_PIN, 50) + " … " + Fit.H7.mostClearanceUm(Fit.G6_PIN, 50));
        Check.exact(
                "Ø50 H7/p6 interference, µm",
                "1 … 42",
                -Fit.H7.mostClearanceUm(Fit.P6_PIN, 50) + " … " + -Fit.H7.leastClearanceUm(Fit.P6_PIN, 50));
        Check.exact("Ø8 h6, µm", "0/−9", Fit.H6_PIN.highUm(8) + "/−" + -Fit.H6_PIN.lowUm(8));
        Check.exact("Ø8 h7 and h9, µm", "0/−15 0/−36", "0/−" + -Fit.H7_PIN.lowUm(8) + " 0/−" + -Fit.H9_PIN.lowUm(8));
        Check.exact("Ø12 h6, h7, µm", "0/−11 0/−18", "0/−" + -Fit.H6_PIN.lowUm(12) + " 0/−" + -Fit.H7_PIN.lowUm(12));
    }

    @Published(id = "C09", source = "ISO286", where = "part 2, hole H7", mark = PUBLISHED)
    void holeH7() {
        double[] size = {2, 5, 8, 12};
        int[] upper = {10, 12, 15, 18};
        for (int i = 0; i < size.length; i++)
            Check.exact("H7 upper limit at Ø" + size[i] + ", µm", upper[i], Fit.H7.highUm(size[i]));
    }

    @Published(id = "C10", source = "ISO286", where = "part 2, shafts h6 and m6", mark = PUBLISHED)
    void pins() {
        double[] size = {2, 5, 8, 12};
        String[] rows = {"-6/0 2/8", "-8/0 4/12", "-9/0 6/15", "-11/0 7/18"};
        for (int i = 0; i < size.length; i++) {
            double d = size[i];
            Check.exact(
                    "h6 and m6 at Ø" + d + ", µm",
                    rows[i],
                    Fit.H6_PIN.lowUm(d) + "/" + Fit.H6_PIN.highUm(d) + " " + Fit.M6_PIN.lowUm(d) + "/"
                            + Fit.M6_PIN.highUm(d));
        }
    }
}
