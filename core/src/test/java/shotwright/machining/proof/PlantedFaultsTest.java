package shotwright.machining.proof;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.function.Predicate;
import org.junit.jupiter.api.Test;
import shotwright.cutter.Cutter;
import shotwright.cutter.MountedCutter;
import shotwright.geom.Box3;
import shotwright.geom.Transform;
import shotwright.geom.Vec3;
import shotwright.machining.gcode.Dialect;
import shotwright.machining.gcode.DialectRack;
import shotwright.machining.gcode.GcodeReader;
import shotwright.machining.gcode.GcodeWriter;
import shotwright.machining.gcode.Listing;
import shotwright.mesh.MassProperties;
import shotwright.mesh.TriMesh;
import shotwright.mill.MillRack;
import shotwright.progress.Progress;

/** A sound program of a small half proves clean as written; with one fault planted in its text, its cutters or its setup, that one is told. */
class PlantedFaultsTest {
    private static final String TEXT =
            new GcodeWriter(DialectRack.standard().byId("portable"), 4).write(SmallHalf.program());
    private static final double CELL_MM = 0.05;

    private static Listing read(String text) {
        return new GcodeReader(Dialect.DwellUnit.SECONDS).read("half.nc", text, SmallHalf.STOCK, 60);
    }

    private static ProofTask task(String text, Map<Integer, MountedCutter> cutters, TriMesh half) {
        return ProofTask.of(read(text).program(), cutters)
                .against(new Half(half))
                .around(SmallHalf.jaws())
                .with(SmallHalf.holes(), SmallHalf.levels())
                .on(MillRack.standard().byId("bench-router-300"));
    }

    private static Proof prove(ProofTask task) {
        return Proveout.run(task, StockHeights.block(SmallHalf.STOCK, CELL_MM), Progress.SILENT);
    }

    private static Proof prove(String text) {
        return prove(task(text, SmallHalf.cutters(), SmallHalf.mesh()));
    }

    /** Line, from 1, of the n-th line of the text that fits. */
    private static int lineOf(String text, Predicate<String> fits, int n) {
        int line = 0, seen = 0;
        for (String l : text.split("\n")) {
            line++;
            if (fits.test(l) && ++seen == n) return line;
        }
        throw new IllegalArgumentException("no such line");
    }

    private static String withLine(String text, int line, String from, String to) {
        String[] lines = text.split("\n", -1);
        assertThat(lines[line - 1]).contains(from);
        lines[line - 1] = lines[line - 1].replace(from, to);
        return String.join("\n", lines);
    }

    private static List<Integer> lines(Proof p, String text, Fault.Kind kind) {
        Listing l = read(text);
        return p.faults().stream()
                .filter(f -> f.kind() == kind)
                .map(f -> l.line(f.operation(), f.move()))
                .toList();
    }

    private static int operation(String text, int number) {
        return lineOf(text, l -> l.startsWith("(OP " + number + ":"), 1);
    }

    /** The n-th line that fits, behind the head of an operation. */
    private static int lineIn(String text, int operation, Predicate<String> fits, int n) {
        int head = operation(text, operation);
        String rest = text.lines().skip(head).reduce("", (a, b) -> a + b + "\n");
        return head + lineOf(rest, fits, n);
    }

    @Test
    void theHalfIsClosed() {
        double top = 0, floor = 20 * 12 - (4 - Math.PI) * 1.5 * 1.5, w = SmallHalf.DEPTH * SmallHalf.DRAFT;
        // Simpson's rule is exact for the quadratic area of the pocket's sections
        for (int k = 0; k <= 2; k++) {
            double out = w * k / 2, area = (20 + 2 * out) * (12 + 2 * out) - (4 - Math.PI) * (1.5 + out) * (1.5 + out);
            top += area * (k == 1 ? 4 : 1) / 6;
        }
        double volume = 40 * 30 * 12 - top * SmallHalf.DEPTH;
        assertThat(MassProperties.of(SmallHalf.mesh()).volumeMm3()).isCloseTo(volume, within(0.05));
        assertThat(floor).isLessThan(top);
    }

    @Test
    void aSoundProgramIsClean() {
        Proof p = prove(TEXT);
        assertThat(p.faults().stream().map(Fault::text)).isEmpty();
        Leftover left = p.leftover();
        assertThat(left).isNotNull();
        if (left == null) return;
        assertThat(left.deepestMm()).isLessThan(0.008);
        assertThat(left.worstMm()).isLessThan(0.0235);
        assertThat(left.share95Mm()).isLessThan(0.005);
        assertThat(left.areaMm2()).isBetween(1100.0, 1700.0);
    }

    @Test
    void aRapidThroughStock() {
        int line = lineIn(TEXT, 2, l -> l.contains("G0 Z1."), 1);
        String text = withLine(TEXT, line, "Z1.", "Z-1.");
        Proof p = prove(text);
        assertThat(lines(p, text, Fault.Kind.RAPID_IN_STOCK)).containsExactly(line);
        Fault f = p.faults().getFirst();
        assertThat(f.kind()).isEqualTo(Fault.Kind.RAPID_IN_STOCK);
        assertThat(f.found().value()).isCloseTo(1, within(1e-5));
        assertThat(f.text())
                .isEqualTo("A rapid runs into the stock: 1.00 mm, allowed 0.00 mm, at x "
                        + f.text().split("at x ")[1]);
    }

    @Test
    void aDepthOffByFiveHundredths() {
        int line = lineIn(TEXT, 3, l -> l.contains("Z-7."), 1);
        String text = withLine(TEXT, line, "Z-7.", "Z-7.05");
        Proof p = prove(text);
        assertThat(lines(p, text, Fault.Kind.GOUGE)).isNotEmpty().first().isEqualTo(line);
        assertThat(p.faults()).allMatch(f -> f.operation() == 2);
        assertThat(p.faults().stream()
                        .filter(f -> f.kind() == Fault.Kind.GOUGE)
                        .mapToDouble(f -> f.found().value())
                        .max())
                .hasValueCloseTo(0.05, within(1e-4));
    }

    @Test
    void aSwappedArcCentre() {
        int line = lineIn(TEXT, 3, l -> l.contains("G3"), 1);
        String text = withLine(TEXT, line, "I0. J0.5", "I0.5 J0.");
        Proof p = prove(text);
        assertThat(lines(p, text, Fault.Kind.GOUGE)).isNotEmpty().allMatch(l -> l == line);
        String unequal = withLine(TEXT, line, "I0. J0.5", "I0. J-0.5");
        assertThatThrownBy(() -> read(unequal))
                .hasMessageContaining("half.nc line " + line)
                .hasMessageContaining("I and J");
    }

    private static Map<Integer, MountedCutter> with(int number, MountedCutter other) {
        Map<Integer, MountedCutter> c = new TreeMap<>(SmallHalf.cutters());
        c.put(number, other);
        return c;
    }

    /** The pocket is 6.9 deep under a holder: 5 mm of stickout is 3 below what the sheet says. */
    @Test
    void aStickoutThreeMillimetresShort() {
        Proof p = prove(task(TEXT, with(2, Cutters.made(Cutter.Shape.FLAT, 4, 0, 0, 4, null, 4, 5)), SmallHalf.mesh()));
        List<Integer> told = lines(p, TEXT, Fault.Kind.BODY_CONTACT);
        int deep = lineIn(TEXT, 2, l -> l.contains("Z-5.25"), 1);
        assertThat(told).isNotEmpty();
        assertThat(told.getFirst()).isBetween(deep - 1, deep);
        assertThat(p.faults()).allMatch(f -> f.what().equals("holder") && f.operation() == 1);
        assertThat(p.faults().stream().mapToDouble(f -> f.found().value()).max())
                .hasValueCloseTo(1.9, within(1e-4));
    }

    @Test
    void aJawInTheWay() {
        KeepOut jaw = new KeepOut("fixed jaw", new Box3(new Vec3(-20, 15, -30), new Vec3(20, 30, 0.5)));
        Proof p = prove(task(TEXT, SmallHalf.cutters(), SmallHalf.mesh()).around(List.of(jaw)));
        int line = lineIn(TEXT, 1, l -> l.contains("Y14."), 1);
        assertThat(lines(p, TEXT, Fault.Kind.KEEP_OUT)).containsExactly(line + 1);
        assertThat(p.faults())
                .allMatch(f -> f.kind() == Fault.Kind.KEEP_OUT && f.what().startsWith("fixed jaw"));
    }

    private static void gougedBy(Proof p, int operation, double mm, double withinMm) {
        List<Fault> gouges =
                p.faults().stream().filter(f -> f.kind() == Fault.Kind.GOUGE).toList();
        assertThat(gouges).isNotEmpty().allMatch(f -> f.operation() == operation);
        assertThat(gouges.stream().mapToDouble(f -> f.found().value()).max()).hasValueCloseTo(mm, within(withinMm));
    }

    @Test
    void aCutterATenthTooThick() {
        Proof p = prove(task(TEXT, with(3, Cutters.taper(2.1, 2, 8, 4)), SmallHalf.mesh()));
        gougedBy(p, 2, 0.05, 0.003);
        int loop = lineIn(TEXT, 3, l -> l.contains("G3"), 1);
        assertThat(lines(p, TEXT, Fault.Kind.GOUGE)).allMatch(l -> l >= loop - 3);
    }

    @Test
    void aProgramShiftedByTwoTenths() {
        TriMesh shifted = SmallHalf.mesh().transform(Transform.translate(new Vec3(0.2, 0, 0)));
        gougedBy(prove(task(TEXT, SmallHalf.cutters(), shifted)), 2, 0.2, 0.01);
    }

    /** 7 mm · tan 0.1° = 0.0122 mm at the top of the wall. */
    @Test
    void aTaperATenthOfADegreeOff() {
        Proof p = prove(task(TEXT, with(3, Cutters.taper(2, 2.1, 8, 4)), SmallHalf.mesh()));
        gougedBy(p, 2, 0.0122, 0.0015);
    }

    @Test
    void aHoleTwoHundredthsTooWide() {
        Proof p = prove(task(TEXT, with(4, Cutters.drill(3.02)), SmallHalf.mesh()));
        assertThat(p.faults()).hasSize(2).allMatch(f -> f.kind() == Fault.Kind.HOLE_SIZE && f.operation() == 3);
        assertThat(p.faults().getFirst().found().value()).isCloseTo(3.02, within(1e-9));
        int line = lineIn(TEXT, 4, l -> l.contains("G1 Z-1."), 1);
        assertThat(lines(p, TEXT, Fault.Kind.HOLE_SIZE)).first().isEqualTo(line);
    }

    @Test
    void aHoleNotDeepEnough() {
        String text = TEXT.replace("G1 Z-9.", "G1 Z-8.");
        Proof p = prove(text);
        assertThat(p.faults()).hasSize(2).allMatch(f -> f.kind() == Fault.Kind.HOLE_DEPTH);
    }

    @Test
    void aHoleTooDeep() {
        int line = lineIn(TEXT, 4, l -> l.contains("G1 Z-9."), 1);
        String text = withLine(TEXT, line, "Z-9.", "Z-11.");
        Proof p = prove(text);
        assertThat(p.faults()).hasSize(1);
        assertThat(p.faults().getFirst().what()).isEqualTo("dowel left, too deep");
        assertThat(lines(p, text, Fault.Kind.HOLE_DEPTH)).containsExactly(line);
    }

    @Test
    void aVentAHundredthTooDeep() {
        int line = lineIn(TEXT, 5, l -> l.contains("Z-0.02"), 1);
        String text = withLine(TEXT, line, "Z-0.02", "Z-0.03");
        Proof p = prove(text);
        assertThat(p.faults()).hasSize(1);
        assertThat(p.faults().getFirst().kind()).isEqualTo(Fault.Kind.LEVEL);
        assertThat(lines(p, text, Fault.Kind.LEVEL)).first().satisfies(l -> assertThat(l)
                .isBetween(line, line + 1));
    }

    /** Turned over the other way, what lay left lies right. */
    @Test
    void aHalfTurnedAboutTheWrongAxis() {
        TriMesh m = SmallHalf.mesh();
        double[] xyz = m.copyXyz();
        for (int i = 0; i < xyz.length; i += 3) xyz[i] = -xyz[i];
        Proof p = prove(task(TEXT, SmallHalf.cutters(), new TriMesh(xyz, m.copyTri()).flip()));
        assertThat(p.faults().stream()
                        .filter(f -> f.kind() == Fault.Kind.GOUGE)
                        .mapToDouble(f -> f.found().value())
                        .max()
                        .orElse(0))
                .isGreaterThan(1);
    }

    @Test
    void aSpindleThatStandsOrRunsTooFast() {
        Proof p = prove(TEXT.replaceFirst("S9000 M3", "S90000 M3"));
        assertThat(p.faults()).hasSize(1).allMatch(f -> f.kind() == Fault.Kind.SPEED && f.operation() == 0);
        int line = lineIn(TEXT, 4, l -> l.contains("M3"), 1);
        Proof q = prove(withLine(TEXT, line, "S9000 M3", "S9000"));
        assertThat(q.faults()).hasSize(1).allMatch(f -> f.kind() == Fault.Kind.SPINDLE_STANDS && f.operation() == 3);
    }

    /** A tile of fine cells over one corner of the pocket tells of the taper what the coarse grid tells, with more digits. */
    @Test
    void aFineTileSeesMore() {
        ProofTask task = task(TEXT, with(3, Cutters.taper(2, 2.1, 8, 4)), SmallHalf.mesh());
        Box3 corner = new Box3(new Vec3(8, 3, -12), new Vec3(14, 9, 0.3));
        Proof tile = Proveout.run(task, StockHeights.block(corner, 0.02), Progress.SILENT);
        gougedBy(tile, 2, SmallHalf.DEPTH * Math.tan(Math.toRadians(0.1)), 0.0008);
        assertThat(tile.stock().grid().count()).isEqualTo(300 * 300);
    }

    /** Where the spindle stands before the program and how far it rises to the machine's top is no way of the program. */
    @Test
    void travelIsCountedFromTheFirstCut() {
        String text = TEXT.replace("M30", "G53 G0 Z0.\nM30");
        Listing far = new GcodeReader(Dialect.DwellUnit.SECONDS).read("half.nc", text, SmallHalf.STOCK, 500);
        ProofTask task = ProofTask.of(far.program(), SmallHalf.cutters())
                .on(MillRack.standard().byId("bench-router-300"));
        assertThat(prove(task).faults().stream().map(Fault::text)).isEmpty();
    }

    @Test
    void anAxisThatEndsTooSoon() {
        int line = lineIn(TEXT, 1, l -> l.contains("X26."), 1);
        String text = withLine(TEXT, line, "X26.", "X326.");
        Proof p = prove(text);
        assertThat(lines(p, text, Fault.Kind.TRAVEL)).contains(line);
    }
}
