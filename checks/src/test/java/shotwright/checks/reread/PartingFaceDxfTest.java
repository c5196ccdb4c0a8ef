package shotwright.checks.reread;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.stream.IntStream;
import org.assertj.core.data.Percentage;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestInstance;
import shotwright.checks.Repository;
import shotwright.geom.Vec2;
import shotwright.job.JobCard;
import shotwright.job.JobResult;
import shotwright.job.Line;
import shotwright.job.Shop;
import shotwright.job.Station;
import shotwright.layout.DowelPlace;
import shotwright.layout.Gate;
import shotwright.layout.Half;
import shotwright.layout.LayoutResult;
import shotwright.layout.PinPlace;
import shotwright.layout.Vent;
import shotwright.progress.Progress;
import shotwright.region.Region;
import shotwright.report.half.FaceReader;
import shotwright.report.half.HalfDxf;

/** Parting faces written and read again: what stands in the file is what the layout placed. */
@TestInstance(TestInstance.Lifecycle.PER_CLASS)
class PartingFaceDxfTest {
    private LayoutResult layout;
    private DxfReader a;
    private DxfReader b;
    private Region shadow;

    @BeforeAll
    void demoPart() {
        JobResult job = new Line(Shop.standard())
                .run(
                        Repository.root().resolve("examples/parts/tension-knob.stl"),
                        JobCard.empty(),
                        Station.HALVES,
                        null,
                        Progress.SILENT);
        layout = Objects.requireNonNull(job.layout());
        var pulled = Objects.requireNonNull(job.review()).pulled();
        shadow = pulled.exactShadow().region();
        var mold = Objects.requireNonNull(job.mold());
        a = new DxfReader(HalfDxf.text(FaceReader.of(Half.A, layout, mold, pulled), "knob Ø35"));
        b = new DxfReader(HalfDxf.text(FaceReader.of(Half.B, layout, mold, pulled), "knob Ø35"));
    }

    private DxfReader of(Half half) {
        return half == Half.A ? a : b;
    }

    /** From the block's middle to the datum corner; half A is turned over, so its x changes sign. */
    private Vec2 seen(Half half, Vec2 mold) {
        double x = mold.x() + layout.block().widthMm() / 2,
                y = mold.y() + layout.block().heightMm() / 2;
        return new Vec2(half == Half.A ? -x : x, y);
    }

    private static void holdsCircle(List<DxfReader.Entity> circles, Vec2 at, double diameterMm) {
        assertThat(circles)
                .anyMatch(c -> Math.abs(2 * c.radius() - diameterMm) < 1e-4
                        && Math.hypot(c.x().getFirst() - at.x(), c.y().getFirst() - at.y()) < 1e-4);
    }

    @Test
    void unitVersionAndExtents() {
        for (Half h : Half.values()) {
            DxfReader f = of(h);
            assertThat(f.header("$ACADVER", 1)).isEqualTo("AC1015");
            assertThat(f.header("$INSUNITS", 70)).as("millimetres").isEqualTo("4");
            double low = Double.parseDouble(f.header("$EXTMIN", 10)),
                    high = Double.parseDouble(f.header("$EXTMAX", 10));
            for (DxfReader.Entity e : f.all()) assertThat(e.x()).allMatch(x -> x >= low - 1e-4 && x <= high + 1e-4);
        }
    }

    @Test
    void outlinesAreClosedAndTheBlockIsWhole() {
        for (Half h : Half.values()) {
            assertThat(of(h).all())
                    .filteredOn(e -> e.kind().equals("LWPOLYLINE"))
                    .allMatch(DxfReader.Entity::closed)
                    .allMatch(e -> e.areaMm2() > 0.01);
            assertThat(of(h).on("BLOCK", "LWPOLYLINE").getFirst().areaMm2())
                    .isCloseTo(layout.block().widthMm() * layout.block().heightMm(), within(1e-3));
        }
    }

    /** The cavity's mouth is the part's shadow without its holes, grown by the shrink: by 1 / ((1 − sx)(1 − sy)). */
    @Test
    void theCavityIsTheShadowOfThePart() {
        double whole = shadow.exteriors().stream()
                .map(Region::of)
                .mapToDouble(Region::area)
                .sum();
        double grown = whole / (1 - layout.shrinkX()) / (1 - layout.shrinkY());
        List<DxfReader.Entity> cavity = a.on("CAVITY", "LWPOLYLINE");
        assertThat(cavity).hasSize(1);
        // chords of the mesh lie up to 0.01 mm inside the arcs found
        assertThat(cavity.getFirst().areaMm2()).isCloseTo(grown, Percentage.withPercentage(0.06));
        DxfReader.Entity outline = cavity.getFirst();
        List<Double> radii = new ArrayList<>();
        for (int i = 0; i < outline.x().size(); i++) {
            double bulge = outline.bulge().get(i);
            int j = (i + 1) % outline.x().size();
            double chord = Math.hypot(
                    outline.x().get(j) - outline.x().get(i),
                    outline.y().get(j) - outline.y().get(i));
            if (bulge != 0) radii.add(chord * (1 + bulge * bulge) / 4 / bulge);
        }
        // lobes of 6 and hollows of 13.668 that touch them, six each
        assertThat(radii).hasSize(12);
        assertThat(radii.stream()
                        .sorted()
                        .mapToDouble(r -> r * (1 - layout.shrinkX()))
                        .toArray())
                .containsExactly(hollowsAndLobes(), within(1e-3));
    }

    private static double[] hollowsAndLobes() {
        return IntStream.range(0, 12).mapToDouble(i -> i < 6 ? -13.66786 : 6).toArray();
    }

    /** Rim radius 17.5 less the wall of 2.2, boss 8.1 and mouth 5.95 of the part, grown. */
    @Test
    void theCoreIsTheHollowOfThePart() {
        double growth = 1 / (1 - layout.shrinkX());
        assertThat(b.on("CAVITY", "LWPOLYLINE")).isEmpty();
        assertThat(b.on("CORE", "LWPOLYLINE")).hasSize(1);
        assertThat(b.on("CORE", "CIRCLE").stream()
                        .mapToDouble(DxfReader.Entity::radius)
                        .sorted())
                .usingElementComparator((p, q) -> Math.abs(p - q) < 1e-3 ? 0 : Double.compare(p, q))
                .containsExactly(5.95 * growth, 8.1 * growth);
    }

    @Test
    void holesStandWhereTheLayoutPutThem() {
        for (DowelPlace d : layout.dowels()) {
            for (Half h : Half.values())
                holdsCircle(
                        of(h).on("DOWEL", "CIRCLE"),
                        seen(h, d.atMm()),
                        h == d.holdHalf() ? d.holdHoleMm() : d.slipHoleMm());
        }
        for (PinPlace p : layout.release().pins()) {
            holdsCircle(of(p.half()).on("PIN", "CIRCLE"), seen(p.half(), p.atMm()), p.holeMm());
            holdsCircle(of(p.half()).on("PIN_BACK", "CIRCLE"), seen(p.half(), p.atMm()), p.reliefMm());
        }
        assertThat(layout.release().pins()).isNotEmpty();
    }

    @Test
    void gateAndVentsHaveTheirSizes() {
        Gate g = layout.gates().getFirst();
        DxfReader.Entity gate = of(g.half()).on("GATE", "LWPOLYLINE").getFirst();
        assertThat(gate.areaMm2() / g.widthMm()).isGreaterThan(g.landMm());
        Vec2 at = seen(g.half(), new Vec2(g.atMm().x(), g.atMm().y()));
        assertThat(Region.of(corners(gate)).contains(at)).isTrue();
        for (Half h : Half.values()) {
            List<Vent> vents =
                    layout.vents().stream().filter(v -> v.half() == h).toList();
            List<DxfReader.Entity> lands = of(h).on("VENT", "LWPOLYLINE");
            assertThat(lands).hasSameSizeAs(vents);
            for (Vent v : vents) {
                Vec2 mouth = seen(h, new Vec2(v.atMm().x(), v.atMm().y()));
                assertThat(lands)
                        .anyMatch(e -> Region.of(corners(e)).contains(mouth) && e.areaMm2() > v.widthMm() * v.landMm());
            }
        }
    }

    private static List<Vec2> corners(DxfReader.Entity e) {
        return IntStream.range(0, e.x().size())
                .mapToObj(i -> new Vec2(e.x().get(i), e.y().get(i)))
                .toList();
    }
}
