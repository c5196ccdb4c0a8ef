package shotwright.machining.workpiece;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import shotwright.geom.Box3;
import shotwright.geom.Vec2;
import shotwright.geom.Vec3;
import shotwright.layout.Block;
import shotwright.layout.Half;
import shotwright.layout.LayoutResult;
import shotwright.mesh.Solids;
import shotwright.mesh.TriMesh;
import shotwright.mold.ConvexTool;
import shotwright.mold.ExactCircle;
import shotwright.mold.MoldHalf;
import shotwright.mold.MoldResult;
import shotwright.mold.Opening;
import shotwright.mold.Purpose;
import shotwright.mold.SampleLayout;
import shotwright.mold.Specks;
import shotwright.mold.Tools;
import shotwright.part.PulledPart;

/** Halves on the table: what rigid turning of plane geometry says of their edges, holes and channels. */
class WorkpieceTest {
    private static final PulledPart PART = SampleLayout.part("box", Solids.box(Vec3.ZERO, new Vec3(20, 10, 5)), Vec3.Z);
    private static final LayoutResult LAYOUT = SampleLayout.of(PART, 2, 2);
    private static final Block BLOCK = LAYOUT.block();

    private static double thickness(Half half) {
        return half == Half.A ? BLOCK.thicknessAMm() : BLOCK.thicknessBMm();
    }

    private static TriMesh block(Half half) {
        double w = BLOCK.widthMm() / 2, h = BLOCK.heightMm() / 2, t = thickness(half);
        return half == Half.A
                ? Solids.box(new Vec3(-w, -h, 0), new Vec3(w, h, t))
                : Solids.box(new Vec3(-w, -h, -t), new Vec3(w, h, 0));
    }

    private static MoldHalf half(Half half) {
        return new MoldHalf(half, block(half), block(half), 1, 0, 0, Opening.FREE);
    }

    private static Workpiece workpiece(Half half, boolean turned) {
        List<ExactCircle> circles = new ArrayList<>();
        for (ConvexTool t : Tools.of(LAYOUT, 0, List.of())) circles.addAll(t.circles());
        MoldResult mold = new MoldResult(
                half(Half.A),
                half(Half.B),
                block(Half.B),
                0,
                1,
                1,
                1,
                0,
                0,
                1,
                "plane",
                List.of(),
                circles,
                Specks.NONE,
                List.of());
        return Workpiece.of(half, LAYOUT, mold, turned);
    }

    private static void same(Vec3 a, Vec3 b) {
        assertThat(a.distance(b)).as("%s and %s", a, b).isLessThan(1e-9);
    }

    /** Stop on the left, fixed jaw at the back, Z0 on the parting face; a proper turn, no mirror. */
    @ParameterizedTest
    @ValueSource(booleans = {false, true})
    void halvesLieInTheCornerOfStopAndFixedJaw(boolean turned) {
        double along = turned ? BLOCK.heightMm() : BLOCK.widthMm(),
                across = turned ? BLOCK.widthMm() : BLOCK.heightMm();
        for (Half h : Half.values()) {
            Workpiece w = workpiece(h, turned);
            assertThat(w.toTable().determinant()).isEqualTo(1, within(1e-12));
            for (Box3 box : List.of(w.metal(), w.finished().box(), w.plain().box())) {
                same(box.min(), new Vec3(0, -across, -thickness(h)));
                same(box.max(), new Vec3(along, 0, 0));
            }
        }
    }

    /** The edge of the mold on the fixed jaw is one and the same for both halves. */
    @ParameterizedTest
    @ValueSource(booleans = {false, true})
    void bothHalvesHaveTheSameEdgeOnTheFixedJaw(boolean turned) {
        Vec3 jaw = Vec3.Y;
        Vec3 edgeA = workpiece(Half.A, turned).toTable().inverse().applyToDirection(jaw);
        Vec3 edgeB = workpiece(Half.B, turned).toTable().inverse().applyToDirection(jaw);
        same(edgeA, edgeB);
    }

    /** The same dowel program for both, mirrored end for end: x from the other end, y the same; put together they are on one axis. */
    @ParameterizedTest
    @ValueSource(booleans = {false, true})
    void dowelHolesMeetWhenTheHalvesAreClosed(boolean turned) {
        Workpiece a = workpiece(Half.A, turned), b = workpiece(Half.B, turned);
        double along = a.metal().max().x();
        assertThat(LAYOUT.dowels()).isNotEmpty();
        for (int i = 0; i < LAYOUT.dowels().size(); i++) {
            Hole inA = hole(a, "dowel " + (i + 1)), inB = hole(b, "dowel " + (i + 1));
            assertThat(inA.atMm().x()).isEqualTo(along - inB.atMm().x(), within(1e-9));
            assertThat(inA.atMm().y()).isEqualTo(inB.atMm().y(), within(1e-9));
            Vec2 mold = LAYOUT.dowels().get(i).atMm();
            same(a.toTable().inverse().apply(inA.atMm().atZ(0)), mold.atZ(0));
            same(b.toTable().inverse().apply(inB.atMm().atZ(0)), mold.atZ(0));
        }
    }

    private static Hole hole(Workpiece w, String name) {
        return w.holes().stream()
                .filter(h -> h.name().startsWith(name))
                .findFirst()
                .orElseThrow();
    }

    @ParameterizedTest
    @ValueSource(booleans = {false, true})
    void holesBeginWhereTheyOpen(boolean turned) {
        for (Half half : Half.values()) {
            Workpiece w = workpiece(half, turned);
            double t = thickness(half);
            assertThat(w.holes()).isNotEmpty();
            for (Hole h : w.holes()) {
                Box3 m = w.metal();
                assertThat(h.atMm().x()).isBetween(m.min().x(), m.max().x());
                assertThat(h.atMm().y()).isBetween(m.min().y(), m.max().y());
                assertThat(h.isTapered()).isFalse();
                switch (h.use()) {
                    case DOWEL_HELD -> is(h, true, false, 6.0, 0, -10);
                    case DOWEL_SLIDING -> is(h, true, false, 6.01, 0, -8);
                    case CLEARANCE -> is(h, true, true, 5.5, 0, -t);
                    case COUNTERBORE -> is(h, false, false, 9.5, -t, -t + 5.5);
                    case THREAD -> is(h, true, false, 4.2, 0, -10);
                    default -> throw new AssertionError(h);
                }
                assertThat(h.isFitted()).isEqualTo(h.use() == Purpose.DOWEL_HELD || h.use() == Purpose.DOWEL_SLIDING);
            }
        }
        assertThat(workpiece(Half.A, turned).holes())
                .extracting(Hole::use)
                .contains(Purpose.COUNTERBORE, Purpose.CLEARANCE);
        assertThat(workpiece(Half.B, turned).holes())
                .extracting(Hole::use)
                .contains(Purpose.THREAD, Purpose.DOWEL_HELD);
    }

    private static void is(Hole h, boolean fromParting, boolean through, double dia, double mouth, double end) {
        assertThat(h.fromParting()).as(h.name()).isEqualTo(fromParting);
        assertThat(h.through()).as(h.name()).isEqualTo(through);
        assertThat(h.diameterMm()).isEqualTo(dia, within(1e-9));
        assertThat(h.mouthZMm()).isEqualTo(mouth, within(1e-9));
        assertThat(h.endZMm()).isEqualTo(end, within(1e-9));
    }

    /** With the back up a hole from there begins at Z0 and goes down; turned twice it is where it was. */
    @Test
    void withTheBackUpHolesGoDownFromIt() {
        Workpiece a = workpiece(Half.A, false);
        double l = a.metal().max().x(), t = thickness(Half.A);
        for (Hole h : a.holes()) {
            Hole up = h.backUp(l, t), again = up.backUp(l, t);
            if (!h.fromParting()) {
                assertThat(up.mouthZMm()).isEqualTo(0, within(1e-9));
                assertThat(up.endZMm()).isLessThan(0);
            }
            assertThat(up.depthMm()).isEqualTo(h.depthMm(), within(1e-9));
            same(again.atMm().atZ(again.mouthZMm()), h.atMm().atZ(h.mouthZMm()));
        }
    }

    @ParameterizedTest
    @ValueSource(booleans = {false, true})
    void channelsLieOnThePartingFaceAndOpenAtTheEdges(boolean turned) {
        List<String> names = new ArrayList<>();
        for (Half half : Half.values()) {
            Workpiece w = workpiece(half, turned);
            Box3 m = w.metal();
            for (Channel c : w.channels()) {
                names.add(c.name());
                for (Vec3 p : List.of(c.fromMm(), c.toMm())) {
                    assertThat(p.z()).isEqualTo(0, within(1e-9));
                    assertThat(p.x()).isBetween(m.min().x() - 1e-9, m.max().x() + 1e-9);
                    assertThat(p.y()).isBetween(m.min().y() - 1e-9, m.max().y() + 1e-9);
                }
                assertThat(c.openBefore()).isEqualTo(onEdge(c.fromMm(), m));
                assertThat(c.openAfter()).isEqualTo(onEdge(c.toMm(), m));
                Vec3 mold = w.toTable().inverse().applyToDirection(c.toMm().minus(c.fromMm()));
                assertThat(mold.length()).isEqualTo(c.lengthMm(), within(1e-9));
            }
        }
        // the sprue from the edge is half in each half, runners and gates in B, vents in A, the pocket in B
        assertThat(names.stream().filter(n -> n.startsWith("sprue"))).hasSize(2);
        assertThat(names.stream().filter(n -> n.startsWith("runner"))).hasSize(4);
        assertThat(names.stream().filter(n -> n.startsWith("gate"))).hasSize(2);
        assertThat(names.stream().filter(n -> n.startsWith("pry"))).hasSize(1);
        assertThat(workpiece(Half.A, turned).channels().stream()
                        .filter(c -> c.use() == Purpose.VENT_LAND && c.fromDepthMm() < 0.1))
                .hasSize(2)
                .allMatch(c -> Math.abs(c.fromDepthMm() - 0.02) < 1e-9 && Math.abs(c.fromWidthMm() - 4) < 1e-9);
    }

    private static boolean onEdge(Vec3 p, Box3 m) {
        return Math.min(
                        Math.min(p.x() - m.min().x(), m.max().x() - p.x()),
                        Math.min(p.y() - m.min().y(), -p.y()))
                < 1e-6;
    }
}
