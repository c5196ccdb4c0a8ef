package shotwright.checks.published;

import static shotwright.checks.published.Published.Mark.FROM_MEMORY;
import static shotwright.checks.published.Published.Mark.PUBLISHED;

import java.math.BigDecimal;
import java.util.List;
import java.util.stream.Stream;
import shotwright.geom.Box3;
import shotwright.geom.Vec3;
import shotwright.machining.gcode.Dialect;
import shotwright.machining.gcode.GcodeException;
import shotwright.machining.gcode.GcodeReader;
import shotwright.machining.path.Arc;
import shotwright.machining.path.Line;
import shotwright.machining.path.Step;

/** What the words of a program mean, against what an interpreter of the RS274/NGC lineage was measured to make of them. */
class ProgramWordsTest {
    private static final Box3 STOCK = new Box3(new Vec3(-50, -50, -20), new Vec3(50, 50, 0));
    private static final String HEAD = "G21 G90 G17 G94 G54 G40 G49 G80\nT1 M6\nS900 M3\n";
    private static final String MEASURED = "interpreter rs274 of that lineage, measured";

    private static List<Step> steps(String lines) {
        return new GcodeReader(Dialect.DwellUnit.SECONDS)
                .read("check.nc", HEAD + lines + "\nM30\n", STOCK, 60).program().operations().stream()
                        .flatMap(o -> o.steps().stream())
                        .toList();
    }

    private static boolean isRead(String lines) {
        try {
            return !steps(lines).isEmpty();
        } catch (GcodeException e) {
            return false;
        }
    }

    @Published(id = "C16", source = "NGC", where = MEASURED, mark = PUBLISHED)
    void quarterTurn() {
        Arc arc = (Arc) steps("G0 X10 Y0\nG2 X0 Y-10 I-10 J0 F600").getLast();
        Check.absolute("centre of the arc, x", 0, arc.centre().x(), 1e-12, "mm", "printed digits");
        Check.absolute("centre of the arc, y", 0, arc.centre().y(), 1e-12, "mm", "printed digits");
        Check.exact("turns of G2", -1, arc.counterClockwise() ? 1 : -1);
    }

    @Published(id = "C17", source = "NGC", where = MEASURED, mark = PUBLISHED)
    void pecks() {
        List<Step> steps = steps("G0 Z5\nG98 G83 X5 Y5 Z-6 R1 Q2 F100");
        Check.exact(
                "ends of the pecks",
                List.of(-1.0, -3.0, -5.0, -6.0),
                steps.stream()
                        .filter(Line.class::isInstance)
                        .map(s -> s.to().z())
                        .toList());
        List<Double> again = steps.stream()
                .filter(Line.class::isInstance)
                .skip(1)
                .map(s -> s.from().z())
                .toList();
        for (int k = 0; k < 3; k++)
            Check.absolute("start of peck " + (k + 2), -0.746 - 2 * k, again.get(k), 1e-9, "mm", "0.010 in above");
    }

    private static double mostUnequalMm(double radiusMm) {
        double low = 0, high = 0.01 * radiusMm;
        for (int i = 0; i < 40; i++) {
            double off = (low + high) / 2;
            String end = BigDecimal.valueOf(-radiusMm - off)
                    .setScale(9, java.math.RoundingMode.HALF_UP)
                    .toPlainString();
            if (isRead("G0 X" + radiusMm + " Y0\nG2 X0 Y" + end + " I-" + radiusMm + " J0 F600")) low = off;
            else high = off;
        }
        return low;
    }

    @Published(
            id = {"C18", "G1"},
            source = "NGC",
            where = "radius limits of the interpreter's README, and measured",
            mark = PUBLISHED)
    void unequalRadii() {
        Check.absolute(
                "ends of an arc, r 10: radii may differ by", 0.02828, mostUnequalMm(10), 1e-4, "mm", "printed digits");
        Check.absolute(
                "ends of an arc, r 100: radii may differ by", 0.1001, mostUnequalMm(100), 1e-4, "mm", "printed digits");
        Check.relative(
                "ends of an arc, r 5000: radii may differ by",
                2.828,
                mostUnequalMm(5000),
                1e-3,
                "mm",
                "printed digits");
    }

    private static long refused(Stream<String> programs) {
        return programs.filter(p -> !isRead("G0 X10. Y0. Z3.\n" + p)).count();
    }

    @Published(id = "C19", source = "NGC", where = MEASURED + ": exit status 1", mark = PUBLISHED)
    void wrongPrograms() {
        String[] wrong = {
            "G1 X4.",
            "G1 X4. W2. F90.",
            "G79 X4.",
            "G1 G0 X4. F90.",
            "G0 Y1. Y2.",
            "G2 X0 Y-10.07 I-10. J0 F90.",
            "G2 X-6. Y1. R7. F90.",
            "G3 X10. Y0. R4. F90.",
            "G2 X3. Y2. F90.",
            "G2 X3. Y2. I1. R5. F90.",
            "G2 X10. Y0 Z-1. I4. K1. F90.",
            "G43 H7",
            "G81 X3. Y2. Z-3. F90.",
            "G99 G81 X3. Y2. Z2. R1.5 F90.",
            "G83 X3. Y2. Z-3. R1. F90.",
            "G80 X3.",
            "G80\nX7.",
            "M3 M5",
            "M8 M9",
            "M1 M0",
            "S-7",
            "F-7.",
            "G0 X7.1.2",
            "G0 X7,5",
            "G0 X2e-2",
            "(say (twice) it)",
            "(say it",
            "G4",
            "T2.5",
            "G20 G21",
            "G91 G90",
            "M98 P200",
            "G54.1 P2",
            "G70",
            "G0 X1." + "0".repeat(260)
        };
        Check.exact("wrong programs refused", (long) wrong.length, refused(Stream.of(wrong)));
        boolean endless;
        try {
            new GcodeReader(Dialect.DwellUnit.SECONDS).read("check.nc", HEAD + "G0 X3.\n", STOCK, 60);
            endless = true;
        } catch (GcodeException e) {
            endless = false;
        }
        Check.exact("a program without an end is read", false, endless);
        Check.exact("a sound one is read", true, isRead("G1 Z-1. F90."));
    }

    @Published(id = "G2", source = "NGC", where = "cases of the interpreter's public test tree", mark = FROM_MEMORY)
    void casesOfTheTestTree() {
        String[] wrong = {
            "G81 X3. Y2. Z-3. A4. R1. F90.",
            "G2 X0 Y-10.04 I-10. J0 F90.",
            "G2 X-190. Y-200.4 I-200. J0 F90.",
            "G2 X-5990. Y-6003.1 I-6000. J0 F90.",
            "G20\nG2 X-0.606299 Y-1.004 I-1. J0 F9.",
            "G41 D1\nG40 G2 X0 Y-10. I-10. J0 F90.",
            "G42 D1\nG1 X9. F90.\nG1 X9. Y9.",
            "G1 X4.",
            "G3 X3. Y2. F90.",
            "(a (b) c)",
            "G38.2 F90.",
            "G61 G0 X1. R4."
        };
        Check.exact("wrong programs refused", (long) wrong.length, refused(Stream.of(wrong)));
    }
}
