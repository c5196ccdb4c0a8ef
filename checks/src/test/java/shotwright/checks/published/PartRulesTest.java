package shotwright.checks.published;

import static shotwright.checks.published.Published.Mark.DERIVED;
import static shotwright.checks.published.Published.Mark.PUBLISHED;

import shotwright.layout.release.CoreGrip;
import shotwright.review.DraftRule;
import shotwright.review.JunctionCircle;
import shotwright.review.StripStrain;
import shotwright.stock.Dowel;
import shotwright.stock.StockRack;

/** Draft, texture, joints and pins. */
class PartRulesTest {
    private static final String PRINTED = "printed digits";
    private static final String EXACT = "closed form";

    @Published(id = "F14", source = "closed form", where = "L·tan φ", mark = DERIVED)
    void draftLoss() {
        Check.absolute("25 mm at 1°", 0.436, DraftRule.sideChangeMm(25, 1), 5e-4, "mm", PRINTED);
    }

    @Published(
            id = {"F15", "C14"},
            source = "MOLDERS",
            where = "1.5° for each 0.001 in of texture",
            mark = PUBLISHED)
    void textureDraft() {
        Check.absolute("0.025 mm deep", 1.5, DraftRule.textureDraftDeg(0.025), 1e-9, "°", EXACT);
        Check.absolute("0.05 mm deep", 3, DraftRule.textureDraftDeg(0.05), 1e-9, "°", EXACT);
        Check.absolute("0.125 mm deep", 7.5, DraftRule.textureDraftDeg(0.125), 1e-9, "°", EXACT);
    }

    @Published(
            id = {"CV-23", "F16", "C13"},
            source = "VDI3400",
            where = "table of grades",
            mark = PUBLISHED)
    void gradesOfRoughness() {
        Check.absolute("grade of Ra 1.00 µm", 20, DraftRule.gradeOfRa(1.00), 0.2, "", "table rounds");
        Check.absolute("grade of Ra 3.2 µm", 30.1, DraftRule.gradeOfRa(3.2), 0.2, "", "table rounds");
        Check.absolute("grade of Ra 10.0 µm", 40, DraftRule.gradeOfRa(10), 0.2, "", "table rounds");
        double[] grade = {12, 18, 24, 30, 36}, ra = {0.40, 0.80, 1.60, 3.2, 6.3};
        for (int i = 0; i < grade.length; i++)
            Check.relative(
                    "Ra of grade " + (int) grade[i], ra[i], DraftRule.gradeRaUm(grade[i]), 0.02, "µm", "table rounds");
    }

    /** A closed rim that slips over a bead is a ring made longer: hoop strain is the change of its own circumference over that circumference. */
    @Published(id = "F18", source = "closed form", where = "hoop strain (πD − πd) / πd", mark = DERIVED)
    void stripStrain() {
        double before = Math.PI * 40, after = Math.PI * 41;
        Check.relative(
                "40 mm rim over a 41 mm bead",
                100 * (after - before) / before,
                StripStrain.percent(41, 40),
                1e-9,
                "%",
                EXACT);
    }

    @Published(id = "F17", source = "closed form", where = "circle in the corner of rib and wall", mark = DERIVED)
    void junction() {
        Check.absolute(
                "wall 2, rib 1.2, fillet 0.5", 2.403, JunctionCircle.diameterMm(2, 1.2, 0.5), 5e-4, "mm", PRINTED);
        Check.absolute("without fillet", 2.18, JunctionCircle.diameterMm(2, 1.2, 0), 1e-9, "mm", EXACT);
    }

    @Published(id = "M-C7", source = "ISO8734", where = "sizes in a public table of standard parts", mark = PUBLISHED)
    void metricDowels() {
        String[] size = {"1.5", "2", "2.5", "3", "4", "5", "6", "8", "10", "12"};
        double[] chamfer = {0.3, 0.35, 0.4, 0.5, 0.63, 0.8, 1.2, 1.6, 2, 2.5};
        int[] shortest = {4, 5, 6, 8, 10, 12, 14, 18, 22, 26}, longest = {16, 20, 24, 30, 40, 50, 60, 80, 100, 100};
        int[] sold = {4, 5, 6, 8, 10, 12, 16, 20, 24, 30, 40, 50, 60, 80, 100};
        for (int i = 0; i < size.length; i++) {
            Dowel d = StockRack.dowels().byId("dowel-" + size[i]);
            int low = shortest[i], high = longest[i];
            Check.exact(
                    "chamfer of Ø" + size[i] + ", mm", chamfer[i], d.chamferMm().value());
            Check.exact(
                    "lengths of Ø" + size[i] + ", mm",
                    java.util.Arrays.stream(sold)
                            .filter(l -> l >= low && l <= high)
                            .mapToObj(l -> (double) l)
                            .toList(),
                    d.lengths().valuesMm());
        }
    }

    @Published(id = "B1", source = "MACIA", where = "abstract: more draft, always less force", mark = PUBLISHED)
    void draftLowersForce() {
        boolean falls = true;
        for (double deg = 0; deg < 10; deg += 0.5)
            falls &= CoreGrip.draftFactor(0.3, deg + 0.5) < CoreGrip.draftFactor(0.3, deg);
        Check.trend("more draft, less force, friction 0.3, 0° to 10°", falls);
    }

    @Published(id = "B2", source = "SHEN", where = "abstract: thin cones, force and geometry", mark = PUBLISHED)
    void thinCones() {
        Check.relative("twice the wall, times", 2, sleeveN(2, 20, 30) / sleeveN(1, 20, 30), 1e-9, "", EXACT);
        Check.relative("twice the length, times", 2, sleeveN(1, 20, 60) / sleeveN(1, 20, 30), 1e-9, "", EXACT);
        Check.relative("twice the radius, times", 1, sleeveN(1, 40, 30) / sleeveN(1, 20, 30), 1e-9, "", EXACT);
        double angle = Math.toDegrees(Math.atan(0.2));
        Check.absolute(
                "lets go where the tangent is the friction", 0, CoreGrip.draftFactor(0.2, angle), 1e-12, "", EXACT);
    }

    private static double sleeveN(double wallMm, double diameterMm, double lengthMm) {
        double mpa = CoreGrip.pressureMpa(wallMm, 1500, 0.01, diameterMm, 0.35);
        return CoreGrip.forceN(0.3, mpa, Math.PI * diameterMm * lengthMm);
    }
}
