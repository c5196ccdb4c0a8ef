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

class ShadowTest {
    @Test
    void washerCoversItsRing() {
        Shadow s = Shadow.of(Solids.washer(64, 10, 10, 4, 4, 0, 3), Progress.SILENT);
        double ring = 32 * Math.sin(2 * Math.PI / 64) * (100 - 16);
        assertThat(s.area()).isEqualTo(ring, within(1e-9));
        assertThat(s.freeSum()).isEqualTo(ring, within(1e-9));
        assertThat(s.region().holes()).hasSize(1);
        assertThat(s.region().centroid().length()).isLessThan(1e-9);
    }

    @Test
    void layersAreCountedOnceAndShowAsHidden() {
        TriMesh two = Solids.together(
                Solids.box(Vec3.ZERO, new Vec3(10, 10, 1)), Solids.box(new Vec3(5, 0, 4), new Vec3(15, 10, 5)));
        Shadow s = Shadow.of(two, Progress.SILENT);
        assertThat(s.area()).isEqualTo(150, within(1e-9));
        assertThat(s.hiddenShare()).isEqualTo(50.0 / 150, within(1e-12));
        assertThat(s.region().centroid()).isEqualTo(new Vec2(7.5, 5));
    }

    @ParameterizedTest
    @CsvSource({
        "drafted_sensor_shell_bottom.stl, 1095.2100",
        "drafted_square_face_shell.stl, 537.4817",
        "relay_box_bottom_shell.stl, 3610.5727",
        "button_pair_bar.stl, 146.4094",
        "lobed_thumb_nut.stl, 168.6554",
        "ear_speculum_cone.stl, 204.1452",
        "snap_ring_thin_lip.stl, 572.5262",
        "hobbed_gear_with_hub.stl, 2574.9520",
        "rail_snap_clip.stl, 497.8630",
        "battery_cup_side_openings.obj, 566.2921",
        "grip_trigger_lever_fine.stl, 1112.1787"
    })
    void areaOfRealParts(String name, double area) {
        TriMesh mesh = SharedParts.read(name);
        Shadow s = Shadow.of(mesh, Progress.SILENT);
        assertThat(s.area()).isEqualTo(area, within(6e-5));
        assertThat(s.freeSum()).isGreaterThan(s.area() * (1 - 1e-6));
        double rows = RowScan.shadowArea(mesh, 4000);
        assertThat(rows).isEqualTo(s.area(), within(s.area() * 3e-4));
    }

    @Test
    void sameAreaHoweverTheMeshIsTurnedAndScaled() {
        TriMesh mesh = SharedParts.read("relay_box_bottom_shell.stl");
        for (double scale : new double[] {0.01, 1, 100}) {
            Transform t = Transform.turnZ(0.7 + scale)
                    .then(Transform.scale(scale, scale, scale))
                    .then(Transform.translate(new Vec3(3 * scale, 50 * scale, 0)));
            double area = Shadow.of(mesh.transform(t), Progress.SILENT).area() / (scale * scale);
            assertThat(area).isEqualTo(3610.5727, within(1e-4));
        }
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "battery_cup_side_openings.obj",
                "wallet_case_front.stl",
                "rail_snap_clip.stl",
                "self_intersecting_real_tube.obj",
                "panel_hinge_half.stl",
                "snap_ring_thin_lip.stl"
            })
    void agreesWithRowsFromAnyDirection(String name) {
        TriMesh mesh = SharedParts.read(name);
        Random random = new Random(7);
        for (int i = 0; i < 12; i++) {
            Vec3 axis = new Vec3(random.nextGaussian(), random.nextGaussian(), random.nextGaussian()).unit();
            Transform tilt = Transform.turn(axis, random.nextDouble(3));
            Transform flat = Transform.turnZ(random.nextDouble(6)).then(Transform.turn(Vec3.X, i * Math.PI / 2));
            TriMesh turned = rounded(mesh.transform(i % 2 == 0 ? tilt : flat));
            Shadow s = Shadow.of(turned, Progress.SILENT);
            double rows = RowScan.shadowArea(turned, 3000);
            assertThat(s.area()).as("turn %d", i).isEqualTo(rows, within(2e-3 * rows));
            assertThat(s.region().geometry().isValid()).isTrue();
        }
    }

    private static TriMesh rounded(TriMesh m) {
        double[] p = m.copyXyz();
        for (int i = 0; i < p.length; i++) p[i] = (float) p[i];
        return new TriMesh(p, m.copyTri());
    }

    @Test
    void stopsWhenAsked() {
        TriMesh ball = Solids.sphere(Vec3.ZERO, 1, 3);
        Progress stop = (doing, share) -> {
            throw new Progress.Cancelled();
        };
        assertThatThrownBy(() -> Shadow.of(ball, stop)).isInstanceOf(Progress.Cancelled.class);
    }
}
