package shotwright.machining.gcode;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import shotwright.geom.Vec3;
import shotwright.machining.path.Arc;
import shotwright.machining.path.Drilling;
import shotwright.machining.path.Dwell;
import shotwright.machining.path.Feed;
import shotwright.machining.path.Operation;
import shotwright.machining.path.Program;
import shotwright.machining.path.Step;

/** What is written is what is read back, to half the last digit: the handbook's property P7, on seeded random programs. */
class RoundTripTest {
    @ParameterizedTest
    @CsvSource({
        "portable,MM",
        "portable,INCH",
        "portable-cycles,MM",
        "portable-cycles,INCH",
        "hand-change,MM",
        "blended,INCH"
    })
    void readBackWithinHalfADigit(String id, Dialect.Unit unit) {
        Dialect dialect = DialectRack.standard().byId(id).in(unit);
        int compared = 0;
        for (long seed = 0; seed < 150; seed++) {
            Program wanted = Samples.random(seed);
            String text = new GcodeWriter(dialect, 4).write(wanted);
            Program read = read(text);
            assertThat(read.workOffset()).isEqualTo(wanted.workOffset());
            assertThat(read.operations()).as("seed %d", seed).hasSameSizeAs(wanted.operations());
            for (int n = 0; n < wanted.operations().size(); n++)
                compared +=
                        compare(wanted.operations().get(n), read.operations().get(n), dialect, seed);
        }
        assertThat(compared).isGreaterThan(10_000);
    }

    private static Program read(String text) {
        return new GcodeReader(Dialect.DwellUnit.SECONDS)
                .read("test.nc", text, Samples.STOCK, Samples.CLEARANCE_MM + 50)
                .program();
    }

    /** Steps with a feed and dwells, whole circles in halves; rapids are compared by the places they join. */
    private static List<Step> work(Operation o, boolean halved, boolean cycles) {
        List<Step> out = new ArrayList<>();
        List<Step> steps = o.moves().stream()
                .filter(m -> !cycles || m instanceof Step)
                .flatMap(m -> m.steps().stream())
                .toList();
        for (Step s : steps) {
            if (s instanceof Arc a && halved && a.sweepRad() > 1.0001 * Math.PI) {
                out.add(a.piece(0, 0.5));
                out.add(a.piece(0.5, 1));
            } else if (s instanceof Feed || s instanceof Dwell) out.add(s);
        }
        return out;
    }

    private static int compare(Operation wanted, Operation read, Dialect dialect, long seed) {
        assertThat(read.toolNumber()).isEqualTo(wanted.toolNumber());
        assertThat(read.speedRpm()).isEqualTo(wanted.speedRpm());
        assertThat(read.coolant()).isEqualTo(wanted.coolant());
        double halfDigitMm = 0.5 * dialect.digitMm() * (1 + 1e-6);
        List<Step> ours = work(wanted, true, dialect.cycles()), theirs = work(read, false, dialect.cycles());
        if (theirs.size() == ours.size() + 1) theirs = theirs.subList(1, theirs.size());
        assertThat(theirs).as("seed %d", seed).hasSameSizeAs(ours);
        for (int i = 0; i < ours.size(); i++) {
            Step a = ours.get(i), b = theirs.get(i);
            near(a.from(), b.from(), halfDigitMm);
            near(a.to(), b.to(), halfDigitMm);
            if (a instanceof Dwell d) assertThat(((Dwell) b).timeS()).isCloseTo(d.timeS(), within(5e-4));
            if (a instanceof Feed f) assertThat(((Feed) b).feedMmPerMin()).isCloseTo(f.feedMmPerMin(), within(0.051));
            if (!(a instanceof Arc arc)) continue;
            assertThat(b).isInstanceOf(Arc.class);
            Arc back = (Arc) b;
            double unequalMm = Math.abs(
                    back.from().xy().distance(back.centre()) - back.to().xy().distance(back.centre()));
            assertThat(unequalMm).isLessThan(0.0015 * dialect.digitMm() / 0.001);
            for (int k = 1; k < 16; k++)
                assertThat(arc.at(k / 16.0).distance(back.at(k / 16.0))).isLessThan(3 * dialect.digitMm());
        }
        return ours.size() + (dialect.cycles() ? holes(wanted, read, halfDigitMm) : 0);
    }

    /** Cycles keep their numbers; the pecks they stand for add the rounding of Q up and are not compared here. */
    private static int holes(Operation wanted, Operation read, double halfDigitMm) {
        List<Drilling> ours = drillings(wanted), theirs = drillings(read);
        assertThat(theirs).hasSameSizeAs(ours);
        for (int i = 0; i < ours.size(); i++) {
            Drilling a = ours.get(i), b = theirs.get(i);
            assertThat(b.kind()).isEqualTo(a.kind());
            assertThat(b.toRetract()).isEqualTo(a.toRetract());
            near(a.from(), b.from(), halfDigitMm);
            near(a.at().atZ(a.bottomZMm()), b.at().atZ(b.bottomZMm()), halfDigitMm);
            near(a.to(), b.to(), halfDigitMm);
            assertThat(b.peckMm()).isCloseTo(a.peckMm(), within(halfDigitMm));
            assertThat(b.retractZMm()).isCloseTo(a.retractZMm(), within(halfDigitMm));
            assertThat(b.dwellS()).isEqualTo(a.dwellS());
        }
        return ours.size();
    }

    private static List<Drilling> drillings(Operation o) {
        return o.moves().stream()
                .filter(m -> m instanceof Drilling)
                .map(m -> (Drilling) m)
                .toList();
    }

    private static void near(Vec3 a, Vec3 b, double mm) {
        assertThat(a.x()).isCloseTo(b.x(), within(mm));
        assertThat(a.y()).isCloseTo(b.y(), within(mm));
        assertThat(a.z()).isCloseTo(b.z(), within(mm));
    }

    /** Lines instead of arcs stay within the chord error and a digit of the arc, and end where it ends. */
    @Test
    void arcsBecomeLinesWithinTheChordError() {
        Dialect dialect = DialectRack.standard().byId("lines-only");
        double mostMm = dialect.arcChordMm().value() + dialect.digitMm();
        for (long seed = 0; seed < 30; seed++) {
            Program wanted = Samples.random(seed);
            String text = new GcodeWriter(dialect, 4).write(wanted);
            assertThat(text).doesNotContain("G2 ").doesNotContain("G3 ");
            Program read = read(text);
            for (int n = 0; n < wanted.operations().size(); n++) {
                List<Step> lines = work(read.operations().get(n), false, false);
                int at = lines.getFirst() instanceof Dwell ? 1 : 0;
                for (Step s : work(wanted.operations().get(n), false, false)) {
                    if (!(s instanceof Arc a)) {
                        assertThat(lines.get(at++).to().distance(s.to())).isLessThan(2 * dialect.digitMm());
                        continue;
                    }
                    double doneMm = 0;
                    while (doneMm < a.lengthMm() - 0.01) {
                        Step l = lines.get(at++);
                        doneMm += l.lengthMm();
                        double offMm = Math.abs(l.at(0.5).xy().distance(a.centre()) - a.radiusMm());
                        assertThat(offMm).isLessThan(mostMm);
                    }
                    assertThat(lines.get(at - 1).to().distance(a.to())).isLessThan(2 * dialect.digitMm());
                }
            }
        }
    }
}
