package shotwright.mesh;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import shotwright.geom.Transform;
import shotwright.geom.Vec2;
import shotwright.geom.Vec3;
import shotwright.progress.Progress;
import shotwright.region.Region;

class HeightMapTest {
    @Test
    void boxFillsItsColumnsExactly() {
        HeightMap map = HeightMap.of(Solids.box(new Vec3(1, 2, 3), new Vec3(5, 5, 4)), 0.5);
        assertThat(map.grid().nx()).isEqualTo(8);
        assertThat(map.grid().ny()).isEqualTo(6);
        assertThat(map.coveredArea()).isEqualTo(12);
        assertThat(map.volume()).isEqualTo(12, within(1e-12));
        assertThat(map.hiddenShare()).isZero();
        assertThat(map.unbalancedCount()).isZero();
        assertThat(map.low(0, 0)).isEqualTo(3);
        assertThat(map.high(0, 0)).isEqualTo(4);
    }

    /** Channel 20 × 10 × 8 with a slot 16 × 4 through its side: four fifths of the shadow hide a gap of 16 × 10 × 4. */
    @ParameterizedTest
    @ValueSource(doubles = {0.25, 0.02})
    void channelShowsItsGap(double cell) {
        Region profile = Region.rectangle(Vec2.ZERO, new Vec2(20, 8))
                .difference(Region.rectangle(new Vec2(4, 2), new Vec2(20, 6)));
        TriMesh channel = Solids.prism(profile, 0, 10).transform(Transform.turn(Vec3.X, Math.PI / 2));
        HeightMap map = HeightMap.of(channel, cell);
        Grid grid = map.grid();
        assertThat(map.hiddenShare()).isEqualTo(0.8);
        assertThat(map.gapVolume()).isEqualTo(640, within(1e-9));
        assertThat(map.volume()).isEqualTo(960, within(1e-9));
        assertThat(map.unbalancedCount()).isZero();
        for (int c = 0; c < grid.count(); c++) {
            boolean slotted = grid.x(c % grid.nx()) > 4;
            if (map.intervalCount(c) != (slotted ? 2 : 1)) throw new AssertionError("column " + c);
            if (slotted && (Math.abs(map.high(c, 0) - 2) > 1e-12 || Math.abs(map.low(c, 1) - 6) > 1e-12))
                throw new AssertionError("slot in column " + c);
        }
    }

    @Test
    void bodiesThatOverlapOrTouchAreOnePieceAndKnifeEdgesNone() {
        TriMesh stack = Solids.together(
                Solids.box(Vec3.ZERO, new Vec3(4, 4, 2)),
                Solids.box(new Vec3(0, 0, 2), new Vec3(4, 4, 5)),
                Solids.box(new Vec3(0, 0, 4), new Vec3(4, 4, 6)));
        HeightMap map = HeightMap.of(stack, 1);
        assertThat(map.hiddenShare()).isZero();
        assertThat(map.high(5, 0)).isEqualTo(6);
        // the middle lines of the outermost cells run exactly along the rim of a double cone
        TriMesh rim = Solids.together(Solids.frustum(4, 4, 0, 0, 3), Solids.frustum(4, 0, 4, -3, 0));
        HeightMap edge = HeightMap.of(rim, new Grid(-4.5, -4.5, 1, 9, 9));
        assertThat(edge.unbalancedCount()).isZero();
        for (int c = 0; c < edge.grid().count(); c++)
            assertThat(edge.intervalCount(c)).isLessThan(2);
        assertThat(edge.high(edge.grid().index(4, 4), 0)).isEqualTo(3);
    }

    @ParameterizedTest
    @CsvSource({"rail_snap_clip.stl", "battery_cup_side_openings.obj", "panel_hinge_half.stl", "lobed_thumb_nut.stl"})
    void agreesWithRaysInAnyDirection(String name) {
        TriMesh mesh = SharedParts.read(name);
        Random random = new Random(3);
        Probe p = new Probe();
        for (int turn = 0; turn < 4; turn++) {
            Vec3 axis = new Vec3(random.nextGaussian(), random.nextGaussian(), random.nextGaussian()).unit();
            TriMesh turned = mesh.transform(Transform.turn(axis, turn * 0.9));
            Bvh bvh = Bvh.of(turned);
            HeightMap map = HeightMap.of(turned, Grid.around(turned.box(), 61 + 13 * turn));
            Grid g = map.grid();
            double below = turned.box().min().z() - 1;
            int differing = 0;
            for (int j = 0; j < g.ny(); j++)
                for (int i = 0; i < g.nx(); i++) {
                    int hits = bvh.allHits(p.aim(g.x(i), g.y(j), below, 0, 0, 1), 0, 1e9, Bvh.NONE);
                    int c = g.index(i, j);
                    boolean same = hits == 2 * map.intervalCount(c);
                    for (int k = 0; same && k < hits; k += 2)
                        same = Math.abs(below + p.hitT(k) - map.low(c, k / 2)) < 1e-6
                                && Math.abs(below + p.hitT(k + 1) - map.high(c, k / 2)) < 1e-6;
                    if (!same) differing++;
                }
            // a line through an edge meets both facets there as a ray: such columns may differ
            assertThat(differing).isLessThanOrEqualTo(turn == 0 ? 60 : 2);
            assertThat(map.unbalancedCount()).isLessThanOrEqualTo(2);
        }
    }

    @ParameterizedTest
    @CsvSource({
        "drafted_sensor_shell_bottom.stl, .0042",
        "relay_box_bottom_shell.stl, .0017",
        "rail_snap_clip.stl, .0704",
        "battery_cup_side_openings.obj, .0659",
        "lobed_thumb_nut.stl, 0",
        "snap_ring_thin_lip.stl, 0"
    })
    void hiddenShareAndVolumeOfRealParts(String name, double hidden) {
        TriMesh mesh = SharedParts.read(name);
        HeightMap map = HeightMap.of(mesh, Grid.around(mesh.box(), 1000));
        assertThat(map.hiddenShare()).isEqualTo(hidden, within(name.startsWith("rail") ? 3e-3 : 6e-4));
        double volume = MassProperties.of(mesh).volumeMm3();
        assertThat(map.volume()).isEqualTo(volume, within(2e-3 * volume));
        double area = Shadow.of(mesh, Progress.SILENT).area();
        assertThat(map.coveredArea()).isEqualTo(area, within(3e-3 * area));
    }

    @Test
    void alongADirectionSeesTheSameSolid() {
        TriMesh mesh = Solids.washer(48, 10, 9, 4, 5, 0, 3);
        double volume = MassProperties.of(mesh).volumeMm3();
        for (Vec3 d : new Vec3[] {Vec3.X, Vec3.Y.negate(), Vec3.Z.negate(), new Vec3(1, 2, 3).unit()})
            assertThat(HeightMap.along(mesh, d, 400).volume()).isEqualTo(volume, within(0.01 * volume));
        assertThat(HeightMap.along(mesh, Vec3.X, 128).hiddenShare()).isGreaterThan(0.3);
    }

    @Test
    void surfacesAndLimits() {
        HeightMap map = HeightMap.of(Solids.frustum(64, 5, 3, 0, 2), new Grid(-8, -8, 1, 16, 16));
        assertThat(map.upper(-9)[0]).isEqualTo(-9);
        assertThat(map.lower(-9)[map.grid().index(8, 8)]).isZero();
        assertThat(map.upper(-9)[map.grid().index(8, 8)]).isEqualTo(2);
        assertThatThrownBy(() -> new Grid(0, 0, 0, 4, 4)).hasMessageContaining("cell 0");
        assertThatThrownBy(() -> new Grid(0, 0, 1, 100_000, 100_000)).hasMessageContaining("at most");
    }
}
