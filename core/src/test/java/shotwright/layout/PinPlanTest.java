package shotwright.layout;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Test;
import shotwright.demo.TensionKnob;
import shotwright.geom.Transform;
import shotwright.geom.Vec2;
import shotwright.geom.Vec3;
import shotwright.layout.cavity.CavityShape;
import shotwright.layout.cavity.FlowGrid;
import shotwright.layout.release.PinPlan;
import shotwright.mesh.Bvh;
import shotwright.mesh.Probe;
import shotwright.mesh.Shadow;
import shotwright.mesh.Solids;
import shotwright.mesh.TriMesh;
import shotwright.mold.Halves;
import shotwright.mold.MoldHalf;
import shotwright.mold.MoldResult;
import shotwright.progress.Progress;
import shotwright.region.Region;

/** Pins leave metal standing beside their holes. Rule: at least 1 mm, wanted one diameter up to 2.5 mm (common practice). */
class PinPlanTest {
    private static PinPlan.Pins pins(TriMesh mesh, double forceN) {
        Region shadow = Shadow.of(mesh, Progress.SILENT).region();
        CavityShape shape = CavityShape.of(mesh, shadow, 0, new Vec3(1, 1, 1));
        FlowGrid grid = FlowGrid.of(shape, Progress.SILENT);
        return PinPlan.of(shape, grid, Half.B, new PinPlan.Load(forceN, 2, 30));
    }

    /** A channel upside down, open at both ends: top plate 2 mm, two long walls, a core of half B in between, 10 mm tall. */
    private static TriMesh channel(double coreMm, double wallMm) {
        double in = coreMm / 2, out = in + wallMm;
        Region section = Region.rectangle(new Vec2(-out, 0), new Vec2(out, 12))
                .difference(Region.rectangle(new Vec2(-in, -1), new Vec2(in, 10)));
        return Solids.prism(section, 0, 40).transform(Transform.bringToZ(Vec3.Y));
    }

    /** Walls of 1.4 mm carry no pin of 1.5 mm, so all stand on the core. */
    @Test
    void aWideCoreKeepsTheMetalWanted() {
        PinPlan.Pins p = pins(channel(12, 1.4), 60);
        assertThat(p.enough()).isTrue();
        assertThat(p.metalMm()).isBetween(Math.min(p.diameterMm(), 2.5) - 1e-9, 6.0);
        for (Vec2 at : p.places())
            assertThat(Math.abs(at.y()) + p.diameterMm() / 2 + p.metalMm()).isLessThan(6.01);
    }

    /** Walls of 2.4 mm are rims wide enough for small pins, and nothing stands beside those. */
    @Test
    void aRimCarriesItsPins() {
        PinPlan.Pins p = pins(channel(12, 2.4), 60);
        assertThat(p.enough()).isTrue();
        assertThat(p.metalMm()).isInfinite();
        for (Vec2 at : p.places()) assertThat(Math.abs(at.y())).isBetween(6.75, 7.65);
    }

    /** Core of 6 mm: Ø4 fits between the walls and would leave 1 mm at best; Ø5 fits on the grid and must not be taken. */
    @Test
    void aNarrowCoreGetsSmallerPinsAndNeverSlivers() {
        PinPlan.Pins p = pins(channel(6, 2), 2000);
        assertThat(p.enough()).isFalse();
        assertThat(p.places()).isNotEmpty();
        assertThat(p.diameterMm()).isLessThan(4.01);
        assertThat(p.metalMm()).isGreaterThanOrEqualTo(1);
    }

    /** Core of 3.4 mm between walls of 1 mm: no pin leaves a millimetre on both sides and no rim is wide enough for one. */
    @Test
    void saysWhenNoPlaceIsFound() {
        PinPlan.Pins p = pins(channel(3.4, 1), 200);
        assertThat(p.places()).isEmpty();
        assertThat(p.enough()).isFalse();
    }

    /** A block in half B: the pin pushes on its bottom, and nothing stands beside the hole. */
    @Test
    void aFlatBottomHasNoWallBeside() {
        PinPlan.Pins p = pins(Solids.box(new Vec3(0, 0, -6), new Vec3(30, 20, 0)), 100);
        assertThat(p.enough()).isTrue();
        assertThat(p.metalMm()).isInfinite();
    }

    /** Looks through the finished half with rays from each pin's axis: hole wall first, molding surface second. */
    @Test
    void theKnobsHalfShowsNoSliverBesideAPin() {
        LayoutInput in =
                Fixtures.input(TensionKnob.mesh(), Vec3.Z, Fixtures.ABS, Fixtures.COLUMN, 1, LayoutWishes.NONE);
        LayoutResult layout = Layout.lay(in, Progress.SILENT);
        assertThat(layout.release().pins()).isNotEmpty();
        MoldResult mold = Halves.make(in.part(), layout, List.of(), Progress.SILENT);
        MoldHalf b = mold.b();
        double thinnest = Double.POSITIVE_INFINITY;
        Bvh tree = Bvh.of(b.mesh());
        Probe probe = new Probe();
        for (PinPlace pin : layout.release().pins()) {
            for (double z = -5; z < 11; z += 0.5) {
                for (int k = 0; k < 72; k++) {
                    double a = k * Math.PI / 36 + 0.01;
                    probe.aim(pin.atMm().atZ(z), new Vec3(Math.cos(a), Math.sin(a), 0));
                    int n = tree.allHits(probe, 0, 60, -1);
                    assertThat(probe.hitT(0)).isCloseTo(pin.holeMm() / 2, within(0.3));
                    if (n > 1) thinnest = Math.min(thinnest, probe.hitT(1) - probe.hitT(0));
                }
            }
        }
        assertThat(thinnest).isGreaterThan(1 - 0.01).isLessThan(5);
    }
}
