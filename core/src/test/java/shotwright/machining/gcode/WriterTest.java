package shotwright.machining.gcode;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import shotwright.geom.Vec2;
import shotwright.geom.Vec3;
import shotwright.machining.path.Arc;
import shotwright.machining.path.Coolant;
import shotwright.machining.path.Drilling;
import shotwright.machining.path.Line;
import shotwright.machining.path.Move;
import shotwright.machining.path.Operation;
import shotwright.machining.path.Program;
import shotwright.machining.path.Rapid;
import shotwright.machining.path.WorkOffset;

class WriterTest {
    private static Program program(List<Operation> operations) {
        return new Program("half A, parting face", WorkOffset.G54, Samples.STOCK, 25, operations);
    }

    private static Operation helix(int number, int tool, String words) {
        Vec3 a = new Vec3(0, 0, 25), b = new Vec3(0, 0, 2), c = new Vec3(0, 0, -0.00004), d = new Vec3(0, 0, -1);
        List<Move> moves = List.of(
                new Rapid(a, b),
                new Line(b, c, 300),
                new Arc(c, d, new Vec2(1.5, 0), true, 600),
                new Line(d, new Vec3(10, 1.0 / 3, -1), 900),
                new Rapid(new Vec3(10, 1.0 / 3, -1), new Vec3(10, 1.0 / 3, 25)));
        return new Operation(number, words, tool, "flat-6.0x13", 22.5, 15000, Coolant.FLOOD, moves);
    }

    /** The safe start, block and end of the handbook's section 6.3, with nothing that a portable control would not know. */
    @Test
    void aWholeFileLineByLine() {
        Dialect dialect = DialectRack.standard().byId("portable");
        String text = new GcodeWriter(dialect, 4).write(program(List.of(helix(1, 1, "rough the pocket"))));
        assertThat(text).isEqualTo("""
                %
                (HALF A, PARTING FACE)
                (LENGTHS IN MILLIMETRES, ZERO IN G54)
                (STOCK EXPECTED: X -40. TO 40., Y -30. TO 30., Z -20. TO 0.5)
                (T1 FLAT-6.0X13, STICKOUT 22.5 AT LEAST)
                (CHECK CUTTERS, STICKOUT, ZERO AND CLAMPS. FIRST RUN IN AIR)
                N10 G21 G17 G40 G49 G80 G90 G94
                N20 G54
                (OP 1: ROUGH THE POCKET)
                (CUTTER T1 FLAT-6.0X13, STICKOUT 22.5 AT LEAST)
                N30 T1 M6
                N40 G43 H1
                N50 S15000 M3
                N60 G4 P4.
                N70 M8
                N80 G0 Z25.
                N90 G0 X0. Y0.
                N100 G0 Z2.
                N110 G1 Z0. F300.
                N120 G3 X3. Y0. Z-0.5 I1.5 J0. F600.
                N130 G3 X0. Y0. Z-1. I-1.5 J0.
                N140 G1 X10. Y0.333 F900.
                N150 G0 Z25.
                N160 M5
                N170 M9
                N180 M30
                %
                """);
    }

    @Test
    void inchesGetOneDecimalMore() {
        Dialect dialect = DialectRack.standard().byId("hand-change").in(Dialect.Unit.INCH);
        String text = new GcodeWriter(dialect, 4).write(program(List.of(helix(1, 1, "rough the pocket"))));
        assertThat(text)
                .contains(
                        "(LENGTHS IN INCHES, ZERO IN G54)", "N10 G20 G17 G40 G80 G90 G94", "G1 X0.3937 Y0.0131 F35.433")
                .contains("T1\n(PUT IN T1, TOUCH OFF Z, THEN GO ON)\nN40 M0\n")
                .doesNotContain("M6")
                .doesNotContain("G43");
    }

    @Test
    void noughtHasNoSignAndEveryLengthItsPoint() {
        for (String id : DialectRack.standard().ids()) {
            for (Dialect.Unit unit : Dialect.Unit.values()) {
                Dialect dialect = DialectRack.standard().byId(id).in(unit);
                for (long seed = 0; seed < 20; seed++) {
                    String text = new GcodeWriter(dialect, 4).write(Samples.random(seed));
                    String words = text.replaceAll("\\([^)]*\\)", "");
                    assertThat(words)
                            .doesNotContainPattern("-0\\.(?!\\d)")
                            .doesNotContainPattern("[XYZIJRQF]-?\\d+(?![\\d.])");
                    assertThat(text.chars()).allMatch(c -> c == '\n' || c >= ' ' && c <= '~');
                    assertThat(text.lines()).allMatch(l -> l.length() <= dialect.longestLine());
                }
            }
        }
    }

    @Test
    void commentsCannotActOnAControl() {
        String words = "msg, 10 % (half) Größe µm ×2 ;M30\nG0 Z-50 °" + " very".repeat(40);
        Dialect dialect = DialectRack.standard().byId("portable");
        Operation op = helix(1, 1, words);
        Program p = new Program("MSG,hello", WorkOffset.G54, Samples.STOCK, 25, List.of(op));
        String text = new GcodeWriter(dialect, 4).write(p);
        assertThat(text).contains("(- MSG,HELLO)", "(OP 1: MSG, 10 HALF GROSSE UM X2 M30 G0 Z-50 DEG VERY");
        long brackets = text.lines().filter(l -> l.startsWith("(")).count();
        assertThat(text.chars().filter(c -> c == '(').count()).isEqualTo(brackets);
        assertThat(text.lines().filter(l -> l.startsWith("("))).allMatch(l -> l.endsWith(")") && l.length() <= 80);
        assertThat(text.lines().filter(l -> l.contains("%"))).allMatch(l -> l.equals("%"));
    }

    @Test
    void oneFileForEachCutter() {
        Dialect dialect = DialectRack.standard().byId("portable");
        Program p =
                program(List.of(helix(1, 1, "rough"), helix(2, 2, "rest"), helix(3, 2, "floor"), helix(4, 1, "edge")));
        List<GcodeFile> files = new GcodeWriter(dialect, 4).write(p, GcodeWriter.FilePer.CUTTER);
        assertThat(files.stream().map(GcodeFile::fileName))
                .containsExactly(
                        "half-a-parting-face-1-t1.nc", "half-a-parting-face-2-t2.nc", "half-a-parting-face-3-t1.nc");
        assertThat(files)
                .allMatch(
                        f -> f.text().split("M6\n", -1).length == 2 && f.text().endsWith("M30\n%\n"));
        assertThat(files.get(1).text()).contains("FILE 2 OF 3", "RUN THEM FIRST", "OP 2: REST", "OP 3: FLOOR");
        assertThat(new GcodeWriter(dialect, 4).write(p, GcodeWriter.FilePer.SETUP))
                .hasSize(1);
    }

    /** A second cutter is put in only with the spindle standing, high above everything. */
    @Test
    void cuttersAreChangedAtRest() {
        Dialect dialect = DialectRack.standard().byId("portable");
        String text = new GcodeWriter(dialect, 4).write(program(List.of(helix(1, 1, "rough"), helix(2, 2, "rest"))));
        assertThat(text.replaceAll("N\\d+ ", ""))
                .contains("G0 Z25.\n(OP 2: REST)\nM5\nM9\n(CUTTER T2 FLAT-6.0X13, STICKOUT 22.5 AT LEAST)\nT2 M6\n"
                        + "G43 H2\nS15000 M3\nG4 P4.\nM8\nG0 Z25.\nG0 X0. Y0.\n");
    }

    @Test
    void holesAreCyclesWhereTheControlKnowsThem() {
        Vec3 a = new Vec3(0, 0, 25), at = new Vec3(0, 0, 5);
        Move down = new Rapid(a, at);
        Move one = new Drilling(Drilling.Kind.PECK, at, new Vec2(5, 5), 1, -6, 2, 0, true, 100);
        Move two = new Drilling(Drilling.Kind.PECK, one.to(), new Vec2(9, 5), 1, -6, 2, 0, false, 100);
        Operation op = new Operation(1, "drill", 1, "drill-3.0", 30, 5000, Coolant.OFF, List.of(down, one, two));
        String cycles = new GcodeWriter(DialectRack.standard().byId("portable-cycles"), 0).write(program(List.of(op)));
        assertThat(cycles.replaceAll("N\\d+ ", ""))
                .contains("G99 G83 X5. Y5. Z-6. R1. Q2. F100.\nG80\nG98 G83 X9. Y5. Z-6. R1. Q2.\nG80\nG0 Z25.\n");
        String single = new GcodeWriter(DialectRack.standard().byId("portable"), 0).write(program(List.of(op)));
        assertThat(single.replaceAll("N\\d+ ", ""))
                .contains("G0 X5. Y5.\nG0 Z1.\nG1 Z-1. F100.\nG0 Z1.\nG0 Z-0.746\nG1 Z-3.\n")
                .doesNotContain("G83");
    }

    /** Up before across, across before down: a rapid on a slant is not straight on every control. */
    @Test
    void slantedRapidsAreTakenApart() {
        Vec3 a = new Vec3(0, 0, 25), b = new Vec3(5, 5, 1), c = new Vec3(9, 9, 25);
        Operation op =
                new Operation(1, "move", 1, "x", 0, 5000, Coolant.OFF, List.of(new Rapid(a, b), new Rapid(b, c)));
        String text = new GcodeWriter(DialectRack.standard().byId("lines-only"), 0).write(program(List.of(op)));
        assertThat(text).contains("G0 X5. Y5.\nG0 Z1.\nG0 Z25.\nG0 X9. Y9.\n");
    }

    @Test
    void lineNumbersGiveWayBeforeTheyRunOut() {
        List<Move> moves = new ArrayList<>();
        Vec3 at = new Vec3(0, 0, 1);
        for (int i = 1; i <= 100_000; i++) {
            Vec3 to = new Vec3(i % 7, i % 5, -(i % 3));
            moves.add(new Line(at, to, 100));
            at = to;
            if (i == 15_000 || i == 100_000) {
                Operation op = new Operation(1, "many", 1, "x", 0, 5000, Coolant.OFF, moves);
                String text = new GcodeWriter(DialectRack.standard().byId("portable"), 0).write(program(List.of(op)));
                assertThat(text).contains(i == 15_000 ? "\nN1 G21" : "\nG21");
            }
        }
    }

    @Test
    void aDialectThatContradictsItselfIsRefused() {
        Dialect d = DialectRack.standard().byId("portable");
        assertThatThrownBy(() -> new Dialect(
                        d.id(),
                        d.name(),
                        d.unit(),
                        9,
                        d.lineNumberStep(),
                        true,
                        true,
                        d.toolChange(),
                        true,
                        true,
                        true,
                        true,
                        d.arcChordMm(),
                        true,
                        d.dwellUnit(),
                        d.comment(),
                        80,
                        d.following(),
                        d.blendMm(),
                        d.end()))
                .hasMessageContaining("decimals");
    }
}
