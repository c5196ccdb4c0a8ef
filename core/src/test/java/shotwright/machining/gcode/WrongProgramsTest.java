package shotwright.machining.gcode;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * Wrong programs are refused with their line. The first list follows the cases that an RS274/NGC interpreter refuses (handbook table 6.10,
 * measured; and the cases named in the public test tree of that lineage), each written anew here: none is excepted. The second list holds
 * what that interpreter runs without a word, what it cannot be asked about (radius compensation: its table is without diameters here), and
 * what we do not read.
 */
class WrongProgramsTest {
    /** Known words, the spindle turning, the tip at (10, 0). */
    private static final String HEAD = "G21 G90 G17 G94 G54 G40 G49 G80\nT1 M6\nS900 M3\nG0 X10. Y0. Z3.\n";

    private static final int FIRST = 5;

    /** A case: what is wrong, the lines behind the head, words the message must hold. */
    record Wrong(String name, String lines, String says) {
        @Override
        public String toString() {
            return name;
        }
    }

    static Stream<Wrong> refusedByBoth() {
        String zeros = "0".repeat(240);
        return Stream.of(
                new Wrong("no feed", "G1 X4.", "without a feed"),
                new Wrong("letter beyond the axes", "G1 X4. W2. F90.", "only X, Y and Z"),
                new Wrong("unknown G word", "G79 X4.", "G79 is not read"),
                new Wrong("two ways to move", "G1 G0 X4. F90.", "contradict"),
                new Wrong("one axis twice", "G0 Y1. Y2.", "Y stands twice"),
                new Wrong("arc end off by 0.07", "G2 X0 Y-10.07 I-10. J0 F90.", "one circle"),
                new Wrong("arc end off by 0.4 on a large radius", "G2 X-190. Y-200.4 I-200. J0 F90.", "one circle"),
                new Wrong("arc end off by 3.1 on a huge radius", "G2 X-5990. Y-6003.1 I-6000. J0 F90.", "one circle"),
                new Wrong("arc end off by 0.004 in", "G20\nG2 X-0.606299 Y-1.004 I-1. J0 F9.", "one circle"),
                new Wrong("arc end off by 0.02 in on 12 in", "G20\nG2 X-11.606299 Y-12.02 I-12. J0 F9.", "one circle"),
                new Wrong("arc radius too small the other way", "G2 X-6. Y1. R7. F90.", "too small"),
                new Wrong("R for a whole circle", "G3 X10. Y0. R4. F90.", "ends where it starts"),
                new Wrong("arc without centre", "G2 X3. Y2. F90.", "no centre"),
                new Wrong("arc with centre and radius", "G2 X3. Y2. I1. R5. F90.", "a radius R and a centre"),
                new Wrong("K in the plane", "G2 X10. Y0 Z-1. I4. K1. F90.", "seen from the side"),
                new Wrong("cycle without R", "G81 X3. Y2. Z-3. F90.", "no R word"),
                new Wrong("R below the depth", "G99 G81 X3. Y2. Z2. R1.5 F90.", "R lies below"),
                new Wrong("pecks without Q", "G83 X3. Y2. Z-3. R1. F90.", "no Q word"),
                new Wrong(
                        "a word that does not belong into a cycle", "G81 X3. Y2. Z-3. A4. R1. F90.", "only X, Y and Z"),
                new Wrong("G80 with a place", "G80 X3.", "G80 moves nothing"),
                new Wrong("a place and no way to go", "G80\nX7.", "no word says how"),
                new Wrong("spindle on and off", "M3 M5", "contradict"),
                new Wrong("coolant on and off", "M8 M9", "contradict"),
                new Wrong("two stops", "M1 M0", "contradict"),
                new Wrong("speed below zero", "S-7", "below zero"),
                new Wrong("feed below zero", "F-7.", "below zero"),
                new Wrong("two points in a number", "G0 X7.1.2", "not part of a word"),
                new Wrong("decimal comma", "G0 X7,5", "decimals with a point"),
                new Wrong("power of ten", "G0 X2e-2", "E"),
                new Wrong("comment in a comment", "(say (twice) it)", "inside a comment"),
                new Wrong("comment left open", "(say it", "not closed"),
                new Wrong("dwell without time", "G4", "no P word"),
                new Wrong("half a cutter", "T2.5", "whole number"),
                new Wrong("two units", "G20 G21", "contradict"),
                new Wrong("two ways to count", "G91 G90", "contradict"),
                new Wrong("call of another program", "M98 P200\nG0 Z4.", "M98 is not read"),
                new Wrong("further work offsets", "G54.1 P2", "G54.1 is not read"),
                new Wrong("another language's inches", "G70", "G70 is not read"),
                new Wrong("endless line", "G0 X1." + zeros + zeros.substring(0, 20), "characters"),
                new Wrong("a cutter that is not there", "G43 H7", "another cutter"),
                new Wrong("probing along no axis", "G38.2 F90.", "G38.2 is not read"),
                new Wrong("radius word on a rapid under exact stop", "G61 G0 X1. R4.", "belongs to no word"));
    }

    static Stream<Wrong> refusedByUs() {
        return Stream.of(
                new Wrong("leaving radius compensation on an arc", "G41 D1\nG40 G2 X0 Y-10. I-10. J0 F90.", "G41"),
                new Wrong("radius compensation that gouges", "G42 D1\nG1 X9. F90.\nG1 X9. Y9.", "G42"),
                new Wrong("M6 without T", "M6", "changes to no cutter"),
                new Wrong("length of another cutter", "G43 H2", "another cutter"),
                new Wrong("length of no cutter", "G43", "no H word"),
                new Wrong("line that hangs on a switch", "/G0 X3.", "slash"),
                new Wrong("words behind the end", "M30\nG0 X3.", "behind the end"),
                new Wrong("two zeros in one program", "G55", "work offset changes"),
                new Wrong("way through an unknown point", "G28", "G53 G0 Z0."),
                new Wrong("place of the machine", "G53 G0 X3. Y2.", "up to the top"),
                new Wrong("offset set in the program", "G92 X0", "at the control"),
                new Wrong("variable", "G0 X#4", "no number"),
                new Wrong("formula", "G0 X[2+3]", "no number"),
                new Wrong("named program", "O<pocket> CALL", "no number"),
                new Wrong("other plane", "G18", "G17"),
                new Wrong("feed per turn", "G95", "per minute"),
                new Wrong("spindle left", "M4", "use M3"),
                new Wrong("tapping", "G84 X3. Y2. Z-3. R1. F90.", "tap"),
                new Wrong("more than one turn", "G3 X10. Y0 I-3. P3 F90.", "more than once"),
                new Wrong("cycle in steps", "G91 G81 X3. Y2. Z-3. R1. F90.", "G90"),
                new Wrong("beyond all travel", "G0 X1234567.", "farther away"),
                new Wrong("sign in the middle", "G0 X1. %", "per-cent"));
    }

    private static GcodeException refusal(String text) {
        try {
            new GcodeReader(Dialect.DwellUnit.SECONDS).read("wrong.nc", text, Samples.STOCK, 60);
        } catch (GcodeException e) {
            return e;
        }
        throw new AssertionError("read without a word:\n" + text);
    }

    private static String program(Wrong w) {
        return HEAD + w.lines() + "\nM30\n";
    }

    @ParameterizedTest
    @MethodSource({"refusedByBoth", "refusedByUs"})
    void isRefusedWithItsLine(Wrong w) {
        GcodeException e = refusal(program(w));
        int last = FIRST + (int) w.lines().chars().filter(c -> c == '\n').count();
        assertThat(e.line()).isBetween(FIRST, last);
        assertThat(e).hasMessageContaining("wrong.nc line " + e.line() + " \"").hasMessageContaining(w.says());
        assertThat(e.getMessage()).as("what to do").contains("; ");
    }

    /** C19: all of them end the outside interpreter with exit status 1. */
    @Test
    void theOutsideInterpreterRefusesThemToo(@TempDir Path folder) throws Exception {
        List<String> taken = new ArrayList<>();
        for (Wrong w : refusedByBoth().toList())
            if (Rs274.run(folder, program(w)).exit() != 1) taken.add(w.name());
        assertThat(taken).isEmpty();
    }

    @Test
    void aProgramMustEnd(@TempDir Path folder) throws Exception {
        String open = HEAD + "G0 X3.\n";
        assertThat(refusal(open)).hasMessageContaining("does not end").hasMessageContaining("M30");
        assertThat(refusal("%\n" + open + "%\n")).hasMessageContaining("does not end");
        assertThat(Rs274.run(folder, open).exit()).isEqualTo(1);
    }

    @Test
    void theStockMustLieBelowTheTop() {
        assertThatThrownBy(
                        () -> new GcodeReader(Dialect.DwellUnit.SECONDS).read("a.nc", HEAD + "M30", Samples.STOCK, 0))
                .hasMessageContaining("topZMm");
        assertThat(refusal("G21\nM30\n")).hasMessageContaining("moves nothing");
    }
}
