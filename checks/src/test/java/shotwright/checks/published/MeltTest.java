package shotwright.checks.published;

import static shotwright.checks.published.Published.Mark.DERIVED;
import static shotwright.checks.published.Published.Mark.FROM_MEMORY;
import static shotwright.checks.published.Published.Mark.PUBLISHED;

import shotwright.measure.Source;
import shotwright.resin.Carreau;
import shotwright.resin.CrossWlf;
import shotwright.resin.PowerLaw;
import shotwright.resin.Tait;

/** Viscosity and specific volume of melts. */
class MeltTest {
    private static final String PRINTED = "printed digits";

    @Published(
            id = {"CV-01", "F71"},
            source = "RAO",
            where = "§1.3.7.2 example",
            mark = PUBLISHED)
    void exponentialPowerLaw() {
        Check.absolute(
                "PE-LD, 200 °C, 500 1/s",
                373.1,
                PowerLaw.exponentialPaS(135_990, 0.00863, 0.3286, 500, 200),
                0.1,
                "Pa·s",
                PRINTED);
    }

    @Published(
            id = {"CV-09", "F70"},
            source = "CHW",
            where = "polystyrene, constants also in KRE",
            mark = FROM_MEMORY)
    void crossWlfOfPolystyrene() {
        Source source = Source.published("CHW polystyrene");
        CrossWlf ps = new CrossWlf(0.252, 30_800, 4.76e10, 373.15, 0, 25.7, 61.06, 1, 1e5, source, "");
        Check.relative("230 °C, 1000 1/s", 73.0, ps.viscosityPaS(1000, 230), 0.005, "Pa·s", PRINTED);
        Check.relative("200 °C, 100 1/s", 573.9, ps.viscosityPaS(100, 200), 0.005, "Pa·s", PRINTED);
        Check.relative("230 °C at rest", 1211, ps.zeroShearPaS(230, 0), 0.005, "Pa·s", PRINTED);
    }

    @Published(
            id = {"CV-10", "F69"},
            source = "DH",
            where = "p. 39, PMMA",
            mark = DERIVED)
    void taitOfPmma() {
        Check.relative(
                "PMMA, 159 °C, 200 MPa",
                8.2232e-4,
                Tait.meltM3PerKg(8.2396e-4, 3.0490e-7, 7.0201e-10, 2.9803e8, 4.3789e-3, 159, 200e6),
                2e-4,
                "m³/kg",
                PRINTED);
    }

    @Published(id = "CV-11", source = "DH", where = "p. 39, PP, PS and PE-HD", mark = DERIVED)
    void meltDensities() {
        density("PP, 230 °C", 737.9, 1.2033e-3, 4.8182e-7, 7.7589e-10, 1.4236e8, 4.0184e-3, 230, 0);
        density("PS, 200 °C", 969.9, 9.3805e-4, 3.3086e-7, 6.6910e-10, 2.5001e8, 4.1815e-3, 200, 0);
        density("PS, 200 °C, 100 MPa", 1030.2, 9.3805e-4, 3.3086e-7, 6.6910e-10, 2.5001e8, 4.1815e-3, 200, 100e6);
        density("PE-HD, 190 °C", 759.4, 1.1567e-3, 6.2888e-7, 1.1268e-9, 1.7867e8, 4.7254e-3, 190, 0);
    }

    private static void density(
            String melt, double kgPerM3, double a0, double a1, double a2, double b0, double b1, double c, double pa) {
        Check.relative(melt, kgPerM3, 1 / Tait.meltM3PerKg(a0, a1, a2, b0, b1, c, pa), 0.001, "kg/m³", PRINTED);
    }

    @Published(
            id = "A5",
            source = "OSS",
            where = "Carreau table (PP row read, the others from memory)",
            mark = FROM_MEMORY)
    void carreauFamilies() {
        String[] name = {"PS 200 °C", "PE-HD 200 °C", "PE-LD 189 °C", "PP 220 °C", "PA66 300 °C", "PC 320 °C"};
        double[][] k = {
            {1777, 0.064, 0.73},
            {24198, 1.38, 0.60},
            {317, 0.015, 0.61},
            {1386, 0.091, 0.68},
            {44, 0.00059, 0.40},
            {305, 0.00046, 0.48}
        };
        double[][] eta = {
            {412, 84.4, 15.9},
            {1253, 316, 79.4},
            {181, 58.4, 14.9},
            {288, 64.0, 13.5},
            {43.0, 36.6, 20.3},
            {298, 254, 133}
        };
        double[] rate = {100, 1000, 10_000};
        for (int i = 0; i < name.length; i++) {
            for (int j = 0; j < rate.length; j++) {
                Check.relative(
                        name[i] + ", " + (int) rate[j] + " 1/s",
                        eta[i][j],
                        Carreau.shiftedPaS(k[i][0], k[i][1], k[i][2], 1, rate[j]),
                        0.005,
                        "Pa·s",
                        PRINTED);
            }
        }
    }

    @Published(id = "A5b", source = "SASSE", where = "case files, PE-HD", mark = DERIVED)
    void carreauOfOneGrade() {
        double[] rate = {1, 10, 100, 1000, 1e4}, eta = {8465.8, 4747.3, 1344.1, 306.7, 68.1};
        for (int i = 0; i < rate.length; i++) {
            Check.relative("473 K, " + rate[i] + " 1/s", eta[i], sasse(473, rate[i]), 0.001, "Pa·s", PRINTED);
        }
        Check.relative("453.15 K, 100 1/s", 1550.7, sasse(453.15, 100), 0.001, "Pa·s", PRINTED);
        Check.relative("453.15 K, 1000 1/s", 350.5, sasse(453.15, 1000), 0.001, "Pa·s", PRINTED);
        Check.relative("493.15 K, 100 1/s", 1176.9, sasse(493.15, 100), 0.001, "Pa·s", PRINTED);
        Check.relative("493.15 K, 1000 1/s", 271.8, sasse(493.15, 1000), 0.001, "Pa·s", PRINTED);
    }

    private static double sasse(double kelvin, double rate) {
        double shift = Carreau.wlf(237 - 273.15, 473 - 273.15, kelvin - 273.15);
        return Carreau.shiftedPaS(9472.3, 0.1871, 0.655, shift, rate);
    }

    @Published(id = "A5c", source = "PIGEON", where = "case file, ABS, 12 138 K", mark = DERIVED)
    void slopeOfAbs() {
        double kjPerMol = 12_138 * 8.314462618e-3;
        Check.relative("ABS, 240 °C over 260 °C", 2.429, Carreau.arrhenius(kjPerMol, 260, 240), 0.01, "", PRINTED);
    }
}
