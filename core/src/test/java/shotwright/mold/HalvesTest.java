package shotwright.mold;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Test;
import shotwright.finding.Finding;
import shotwright.geom.Vec2;
import shotwright.geom.Vec3;
import shotwright.layout.Block;
import shotwright.layout.Half;
import shotwright.layout.LayoutResult;
import shotwright.layout.PinPlace;
import shotwright.mesh.Bodies;
import shotwright.mesh.Edges;
import shotwright.mesh.MassProperties;
import shotwright.mesh.Solids;
import shotwright.mesh.TriMesh;
import shotwright.part.PulledPart;
import shotwright.progress.Progress;
import shotwright.region.Region;

class HalvesTest {
    private static final double GROWN = 1.006;

    private static PulledPart box() {
        return SampleLayout.part("box", Solids.box(Vec3.ZERO, new Vec3(20, 10, 5)), Vec3.Z);
    }

    private static MoldResult make(PulledPart part, LayoutResult layout) {
        MoldResult m = Halves.make(part, layout, List.of(), Progress.SILENT);
        assertThat(m.balanceError()).isLessThan(1e-12);
        assertThat(m.badColumns()).isZero();
        for (MoldHalf h : List.of(m.a(), m.b())) {
            assertThat(h.openEdges()).isZero();
            assertThat(Edges.of(h.mesh()).isClosed()).isTrue();
            assertThat(Bodies.of(Edges.of(h.mesh())).count())
                    .as("pieces of metal")
                    .isEqualTo(1);
            assertThat(MassProperties.of(h.mesh()).volumeMm3()).isEqualTo(h.volumeMm3(), within(1e-9 * h.volumeMm3()));
        }
        return m;
    }

    private static CutOut cutOut(MoldResult m, String name) {
        return m.cutOuts().stream()
                .filter(c -> c.name().equals(name))
                .findFirst()
                .orElseThrow();
    }

    @Test
    void cutOutsHaveTheVolumesOfTheirFormulas() {
        PulledPart part = box();
        MoldResult m = make(part, SampleLayout.of(part, 1, 2));
        assertThat(m.findings()).isEmpty();
        assertThat(m.partVolumeMm3()).isEqualTo(1000 * Math.pow(GROWN, 3), within(1e-8));
        for (String name : List.of(
                "sprue 1",
                "vent 1, land",
                "vent 1, channel",
                "dowel 1, fixed",
                "dowel 2, sliding",
                "screw 1, clearance",
                "screw 2, thread",
                "pry pocket 1")) {
            CutOut c = cutOut(m, name);
            assertThat(c.measuredMm3() / c.closedFormMm3()).as(name).isEqualTo(1, within(1e-10));
            assertThat(c.trimmed()).as(name).isFalse();
        }
        assertThat(cutOut(m, "vent 1, land").closedFormMm3()).isEqualTo(4 * 0.02 * 1.5, within(1e-12));
        assertThat(cutOut(m, "pry pocket 1").closedFormMm3()).isEqualTo(5 * 14 * 2, within(1e-12));
        double sum = m.cutOuts().stream().mapToDouble(CutOut::measuredMm3).sum();
        assertThat(sum).isEqualTo(m.cutVolumeMm3(), within(1e-8));
    }

    @Test
    void roundHolesComeCloseToTheCircleTheyStandFor() {
        PulledPart part = box();
        MoldResult m = make(part, SampleLayout.of(part, 1, 2));
        ExactCircle dowel = m.circles().stream()
                .filter(c -> c.name().equals("dowel 1, fixed"))
                .findFirst()
                .orElseThrow();
        assertThat(dowel.diameterMm()).isEqualTo(6);
        assertThat(dowel.half()).isEqualTo(Half.B);
        assertThat(dowel.axis().z()).isEqualTo(-1);
        double cylinder = Math.PI * 9 * 10, gon = cutOut(m, "dowel 1, fixed").measuredMm3();
        // flats no deeper than 0.004 mm take less than 2 · 0.004 / r of the section
        assertThat(gon).isLessThan(cylinder).isGreaterThan(cylinder * (1 - 2 * 0.004 / 3));
        double r = 3;
        int n = RoundShape.sides(r);
        assertThat(r * (1 - Math.cos(Math.PI / n))).isLessThanOrEqualTo(0.004);
    }

    @Test
    void halvesFillTheBlockUpToThePartingPlane() {
        PulledPart part = box();
        LayoutResult l = SampleLayout.of(part, 2, 2);
        MoldResult m = make(part, l);
        Block b = l.block();
        for (CutOut c : m.cutOuts()) assertThat(c.measuredMm3()).isPositive();
        assertThat(m.a().volumeMm3())
                .isLessThan(b.widthMm() * b.heightMm() * b.thicknessAMm() - 2 * 600 * Math.pow(GROWN, 3));
        assertThat(m.a().volumeMm3() + m.b().volumeMm3() + m.cutVolumeMm3() + m.partVolumeMm3())
                .isEqualTo(b.volumeMm3(), within(1e-6));
        assertThat(m.a().mesh().box().min().z()).isEqualTo(0, within(1e-12));
        assertThat(m.b().mesh().box().max().z()).isEqualTo(0, within(1e-12));
        assertThat(m.partingUsed()).isEqualTo("plane");
    }

    @Test
    void aPinHoleEndsAtTheCavityAndIsRelievedBelow() {
        PulledPart part = box();
        LayoutResult l = SampleLayout.withPin(
                SampleLayout.of(part, 1, 2), new PinPlace(new Vec2(3, 1), Half.B, 3, 3.01, 7.5, 3.5));
        MoldResult m = make(part, l);
        CutOut pin = cutOut(m, "pin 1"), relief = cutOut(m, "pin 1, relief");
        double floor = 2 * GROWN, face = l.block().thicknessBMm();
        assertThat(pin.measuredMm3()).isEqualTo(pin.closedFormMm3(), within(1e-9));
        assertThat(pin.closedFormMm3()).isEqualTo(Math.PI * 1.505 * 1.505 * (face - floor), within(0.5));
        assertThat(relief.measuredMm3()).isPositive().isLessThan(relief.closedFormMm3());
        assertThat(m.a().openEdges()).isZero();
    }

    @Test
    void anUndercutLocksItsHalfAndSaysWhere() {
        TriMesh channel = Solids.prism(
                Region.of(List.of(
                        new Vec2(0, 0),
                        new Vec2(20, 0),
                        new Vec2(20, 2),
                        new Vec2(4, 2),
                        new Vec2(4, 6),
                        new Vec2(20, 6),
                        new Vec2(20, 8),
                        new Vec2(0, 8))),
                0,
                10);
        PulledPart part = SampleLayout.part("channel", channel, Vec3.Y);
        MoldResult m = make(part, SampleLayout.of(part, 1, SampleLayout.plane(part)));
        assertThat(m.a().canOpen() && m.b().canOpen()).isFalse();
        Finding f = m.findings().stream()
                .filter(x -> x.code().equals("half-cannot-open"))
                .findFirst()
                .orElseThrow();
        assertThat(f.atMm()).isNotNull();
        assertThat(f.value()).isEqualTo(80.0, within(0.5));
        PulledPart upright = SampleLayout.part("channel", channel, Vec3.Z);
        MoldResult open = make(upright, SampleLayout.of(upright, 1, SampleLayout.plane(upright)));
        assertThat(open.a().canOpen()).isTrue();
        assertThat(open.b().canOpen()).isTrue();
    }

    @Test
    void aBlockThatIsTooSmallIsRefused() {
        PulledPart part = box();
        LayoutResult l = SampleLayout.of(part, 1, 2);
        LayoutResult thin = SampleLayout.withBlock(
                l, new Block(l.block().widthMm(), l.block().heightMm(), 2, 20, "a", "b", 2));
        assertThatThrownBy(() -> Halves.make(part, thin, List.of(), Progress.SILENT))
                .isInstanceOf(HalvesRefused.class)
                .hasMessageContaining("comes out of the block by 1.0");
    }
}
