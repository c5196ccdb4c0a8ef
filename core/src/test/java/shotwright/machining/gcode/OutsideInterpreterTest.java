package shotwright.machining.gcode;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import shotwright.geom.Box3;
import shotwright.geom.Vec3;
import shotwright.machining.path.Arc;
import shotwright.machining.path.Dwell;
import shotwright.machining.path.Line;
import shotwright.machining.path.Operation;
import shotwright.machining.path.Program;
import shotwright.machining.path.Rapid;
import shotwright.machining.path.Step;

/** Our programs and our reader against the interpreter of the RS274/NGC lineage; skipped where it is not installed. */
class OutsideInterpreterTest {
    private static final Box3 STOCK = Samples.STOCK;

    /** Where our reader takes the tip to stand until a program says otherwise; the interpreter starts at nought. */
    private static final double TOP_MM = 61.25;

    /** A small program in portable words only; the canonical calls are those the interpreter gave for it when the handbook was made. */
    private static final String PORTABLE = """
            %
            (POCKET SIDE, FIRST OPERATION)
            N10 G17 G21 G40 G49 G80 G90 G94
            N20 G54
            N30 T1 M6
            N40 G43 H1
            N50 S15000 M3
            N60 M8
            N70 G0 X0. Y0.
            N80 G0 Z5.
            N90 G1 Z0.5 F300.
            N100 G3 X0. Y0. Z-0.5 I1.5 J0. F600.
            N110 G3 X0. Y0. I1.5 J0.
            N120 G1 X10. F900.
            N130 G2 X15. Y-5. I0. J-5.
            N140 G0 Z5.
            N150 M5 M9
            N160 M30
            %
            """;

    private static Listing read(String text) {
        return new GcodeReader(Dialect.DwellUnit.SECONDS).read("test.nc", text, STOCK, TOP_MM);
    }

    private static List<Step> moving(Program program) {
        List<Step> out = new ArrayList<>();
        for (Operation o : program.operations()) for (Step s : o.steps()) if (!(s instanceof Dwell)) out.add(s);
        return out;
    }

    /** Property P8: same moves in the same order, rapids that go nowhere left out; end points and arc centres equal to 1e-4 in the program's unit. */
    private static void sameMoves(List<Step> all, Rs274.Heard heard, double unitMm) {
        List<Step> ours = all.stream()
                .filter(s -> !(s instanceof Rapid) || s.lengthMm() > 1e-9)
                .toList();
        List<Rs274.Call> theirs = new ArrayList<>();
        String before = "0.0000, 0.0000, 0.0000, 0.0000, 0.0000, 0.0000";
        for (Rs274.Call c : heard.moves()) {
            String end = c.name().equals("ARC_FEED") ? "" : c.arguments();
            if (!c.name().equals("STRAIGHT_TRAVERSE") || !end.equals(before)) theirs.add(c);
            before = end;
        }
        assertThat(theirs).hasSameSizeAs(ours);
        for (int i = 0; i < ours.size(); i++) {
            Step s = ours.get(i);
            Rs274.Call c = theirs.get(i);
            switch (s) {
                case Rapid r -> at(c, "STRAIGHT_TRAVERSE", r.to(), unitMm);
                case Line l -> at(c, "STRAIGHT_FEED", l.to(), unitMm);
                case Arc a -> {
                    assertThat(c.name()).isEqualTo("ARC_FEED");
                    double[] wanted = {
                        a.to().x(), a.to().y(), a.centre().x(), a.centre().y()
                    };
                    for (int k = 0; k < 4; k++) close(c.number(k), wanted[k] / unitMm);
                    assertThat(c.number(4)).isEqualTo(a.counterClockwise() ? 1 : -1);
                    close(c.number(5), a.to().z() / unitMm);
                }
                case Dwell d -> throw new AssertionError(d);
            }
        }
    }

    private static void at(Rs274.Call c, String name, Vec3 to, double unitMm) {
        assertThat(c.name()).isEqualTo(name);
        close(c.number(0), to.x() / unitMm);
        close(c.number(1), to.y() / unitMm);
        boolean told = to.z() != TOP_MM;
        if (told) close(c.number(2), to.z() / unitMm);
    }

    private static void close(double theirs, double ours) {
        assertThat(theirs).isCloseTo(ours, within(1.0001e-4));
    }

    @ParameterizedTest
    @CsvSource({
        "portable,MM",
        "portable,INCH",
        "portable-cycles,MM",
        "portable-cycles,INCH",
        "lines-only,MM",
        "hand-change,MM"
    })
    void writtenProgramsAreReadTheSame(String id, Dialect.Unit unit, @TempDir Path folder) throws Exception {
        Dialect dialect = DialectRack.standard().byId(id).in(unit);
        for (long seed = 1000; seed < 1012; seed++) {
            Program wanted = Samples.random(seed);
            String text = new GcodeWriter(dialect, 4).write(wanted);
            Rs274.Heard heard = Rs274.run(folder, text);
            assertThat(heard.exit()).as(heard.errors()).isZero();
            List<Step> ours = moving(read(text).program());
            sameMoves(ours, heard, unit.length().mm());
            if (dialect.arcs()) {
                long arcs = heard.moves().stream()
                        .filter(c -> c.name().equals("ARC_FEED"))
                        .count();
                long lines = heard.moves().stream()
                        .filter(c -> c.name().equals("STRAIGHT_FEED"))
                        .count();
                assertThat(arcs).isEqualTo(halves(wanted));
                assertThat(lines)
                        .isEqualTo(moving(wanted).stream()
                                .filter(s -> s instanceof Line)
                                .count());
            }
        }
    }

    private static long halves(Program p) {
        return moving(p).stream()
                .filter(s -> s instanceof Arc)
                .mapToLong(s -> ((Arc) s).sweepRad() > 1.0001 * Math.PI ? 2 : 1)
                .sum();
    }

    /** The handbook's canonical text, C16 and section 6.8: measured on the interpreter, so it also runs where that is absent. */
    @Test
    void thePortableSampleMeansWhatItSays(@TempDir Path folder) throws Exception {
        Listing listing = read(PORTABLE);
        List<Step> ours = moving(listing.program());
        assertThat(ours).hasSize(8);
        Arc helix = (Arc) ours.get(3), quarter = (Arc) ours.get(6);
        assertThat(helix.to()).isEqualTo(new Vec3(0, 0, -0.5));
        assertThat(helix.sweepRad()).isEqualTo(2 * Math.PI);
        assertThat(quarter.centre().atZ(0)).isEqualTo(new Vec3(10, -5, 0));
        assertThat(quarter.to()).isEqualTo(new Vec3(15, -5, -0.5));
        assertThat(quarter.counterClockwise()).isFalse();
        assertThat(listing.line(0, 3)).isEqualTo(12);
        Operation op = listing.program().operations().getFirst();
        assertThat(op.speedRpm()).isEqualTo(15000);
        assertThat(listing.program().operations()).hasSize(1);
        Rs274.Heard heard = Rs274.run(folder, PORTABLE);
        assertThat(heard.exit()).isZero();
        assertThat(heard.moves().get(6).arguments())
                .isEqualTo("15.0000, -5.0000, 10.0000, -5.0000, -1, -0.5000, 0.0000, 0.0000, 0.0000");
        sameMoves(ours, heard, 1);
    }

    /** C16: the arc from (10, 0) about the origin to (0, −10) is one negative turn about (0, 0). */
    @Test
    void aQuarterTurnRight(@TempDir Path folder) throws Exception {
        String text = "G21 G90 G17 G94\nS1000 M3\nG0 X10 Y0\nG2 X0 Y-10 I-10 J0 F600\nM30\n";
        Arc ours = (Arc) moving(read(text).program()).getLast();
        assertThat(ours.sweepRad()).isCloseTo(Math.PI / 2, within(1e-12));
        Rs274.Heard heard = Rs274.run(folder, text);
        assertThat(heard.moves().getLast().arguments()).startsWith("0.0000, -10.0000, 0.0000, 0.0000, -1,");
    }

    /** C17: pecks of 2 mm from R1 to −6 end at −1, −3, −5, −6 and start again 0.254 mm above. */
    @Test
    void pecksAreExpandedTheSame(@TempDir Path folder) throws Exception {
        String text =
                "G21 G90 G17 G94\nS1000 M3\nG0 Z5\nG98 G83 X5 Y5 Z-6 R1 Q2 F100\nX9\nG99 G73 X2 Y1 Z-3 R1 Q1.5\nG80\nM30\n";
        List<Step> ours = moving(read(text).program());
        assertThat(ours.stream().filter(s -> s instanceof Line).limit(4).map(s -> s.to().z()))
                .containsExactly(-1.0, -3.0, -5.0, -6.0);
        sameMoves(ours, Rs274.run(folder, text), 1);
    }

    /** C18: ends whose radii differ by 0.02828 mm are taken up to r = 28 mm, 0.1 % beyond; a hair more is refused. */
    @ParameterizedTest
    @CsvSource({"10,0.0282,0.0284", "28,0.0282,0.0284", "50,0.0499,0.0502", "100,0.0999,0.1003"})
    void theLimitOfUnequalRadiiIsTheSame(double rMm, double takenMm, double refusedMm, @TempDir Path folder)
            throws Exception {
        for (double offMm : new double[] {takenMm, refusedMm}) {
            String end = java.math.BigDecimal.valueOf(-rMm - offMm).toPlainString();
            String text =
                    "G21 G90 G17 G94\nS1000 M3\nG0 X" + rMm + " Y0\nG2 X0 Y" + end + " I-" + rMm + " J0 F600\nM30\n";
            boolean wanted = offMm == takenMm;
            assertThat(isRead(text)).as("ours, %s", end).isEqualTo(wanted);
            assertThat(Rs274.run(folder, text).exit() == 0)
                    .as("theirs, %s", end)
                    .isEqualTo(wanted);
        }
    }

    private static boolean isRead(String text) {
        try {
            read(text);
            return true;
        } catch (GcodeException e) {
            return false;
        }
    }

    /** Both directions of every R arc: up to half a turn, and beyond it with a negative R. */
    @Test
    void radiusArcsFindTheSameCentre(@TempDir Path folder) throws Exception {
        StringBuilder text = new StringBuilder("G20 G90 G17 G94\nS1000 M3\nG0 X0 Y0 Z1\n");
        double[][] ends = {{1, 0}, {0.3, 0.9}, {-0.8, -0.1}, {0.2, -0.7}};
        for (double[] e : ends)
            for (String g : new String[] {"G2", "G3"})
                for (String r : new String[] {"0.75", "-0.75"})
                    text.append(g)
                            .append(" X")
                            .append(e[0])
                            .append(" Y")
                            .append(e[1])
                            .append(" R")
                            .append(r)
                            .append(" F9\nG0 X0 Y0\n");
        text.append("M30\n");
        sameMoves(moving(read(text.toString()).program()), Rs274.run(folder, text.toString()), 25.4);
    }

    /**
     * Handbook 13.2: a square pocket of 40 mm by a cutter of 6 mm, six rings 3 mm apart from a helix of radius 1.5 outwards. Lines 484.27476 mm,
     * arcs 37.71679 mm, rapids 12.5 mm by closed form; our moves, our text read back and the interpreter's calls all add up to them.
     */
    @Test
    void aSquarePocketIsAsLongAsItsClosedForm(@TempDir Path folder) throws Exception {
        StringBuilder text = new StringBuilder("G21 G90 G17 G94 G54\nS9000 M3\nG0 X1.5\nG0 Z5.\nG1 Z0. F300.\n");
        for (String z : new String[] {"-0.3333", "-0.6667", "-1.", "-1."})
            text.append("G3 X1.5 Y0. Z" + z + " I-1.5 J0.\n");
        for (int k = 0; k < 6; k++) {
            double half = 2 + 3 * k;
            double[][] ring = {{half, half}, {-half, half}, {-half, -half}, {half, -half}, {half, half}};
            for (double[] p : ring) text.append("G1 X" + p[0] + " Y" + p[1] + " F900.\n");
        }
        text.append("G0 Z5.\nM30\n");
        List<Step> ours = moving(read(text.toString()).program());
        double linesMm = sum(ours, Line.class), arcsMm = sum(ours, Arc.class);
        assertThat(linesMm).isCloseTo(484.27476, within(1e-5));
        assertThat(arcsMm).isCloseTo(37.71679, within(1e-5));
        double rapidsMm = sum(ours, Rapid.class) - (TOP_MM - 5) + 5;
        assertThat(rapidsMm).isCloseTo(12.5, within(1e-9));
        sameMoves(ours, Rs274.run(folder, text.toString()), 1);
    }

    private static double sum(List<Step> steps, Class<? extends Step> kind) {
        return steps.stream()
                .filter(kind::isInstance)
                .mapToDouble(Step::lengthMm)
                .sum();
    }

    @Test
    void stepsAndStickyWordsAreReadTheSame(@TempDir Path folder) throws Exception {
        String text = """
                %
                O1234
                g21 g90 g17 g94 g54
                t2 m6
                s1000 m3 m8
                g0 x 1 . 5 y2
                z3
                g1 z-1 f50
                g91 x1 y1
                x.5
                g3 x2 y0 i1 j0
                g90 g64 p.01
                x0 y0 i-1.5 j0.25 (back, about another centre)
                g61
                g0 z4
                m5 m9
                m2
                %
                what stands here is not read
                """.replace("x0 y0 i-1.5 j0.25", "x5 y3 i-1 j0");
        sameMoves(moving(read(text).program()), Rs274.run(folder, text), 1);
    }
}
