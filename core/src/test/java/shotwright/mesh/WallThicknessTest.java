package shotwright.mesh;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import shotwright.geom.Vec2;
import shotwright.geom.Vec3;
import shotwright.progress.Progress;
import shotwright.region.Region;

class WallThicknessTest {
    private static WallThickness of(TriMesh mesh, int count) {
        return WallThickness.of(Bvh.of(mesh), count, 1, Progress.SILENT);
    }

    /** On a face of a slab the ball is as wide as the slab, until the nearest side wall is closer: then it touches that one. */
    @Test
    void slab() {
        WallThickness w = of(Solids.box(Vec3.ZERO, new Vec3(60, 40, 2)), 4000);
        assertThat(w.rayQuantile(0.5)).isEqualTo(2, within(1e-12));
        int onFaces = 0;
        for (int i = 0; i < w.count(); i++) {
            WallThickness.Sample s = w.sample(i);
            if (Math.abs(s.normal().z()) < 0.5) continue;
            onFaces++;
            Vec3 p = s.point();
            double side = Math.min(Math.min(p.x(), 60 - p.x()), Math.min(p.y(), 40 - p.y()));
            assertThat(s.ray()).isEqualTo(2, within(1e-9));
            assertThat(s.sphere()).isEqualTo(Math.min(2, 2 * side), within(0.02));
        }
        assertThat(onFaces / (double) w.count()).isEqualTo(4800.0 / 5200, within(0.001));
    }

    @Test
    void rod() {
        WallThickness w = of(Solids.frustum(256, 3, 3, 0, 50), 4000);
        for (int i = 0; i < w.count(); i++) {
            WallThickness.Sample s = w.sample(i);
            if (Math.abs(s.normal().z()) > 0.5 || s.point().z() < 3 || s.point().z() > 47) continue;
            assertThat(s.ray()).isEqualTo(6, within(2e-3));
            assertThat(s.sphere()).isEqualTo(6, within(0.12));
        }
    }

    /**
     * L-bar of legs 3 thick. The ball on one outer wall at distance u from the outer edge: beyond u = 3 it spans the leg; below, it is held
     * by the other outer wall or by the inside corner, whichever comes first.
     */
    @Test
    void ellBar() {
        Region ell = Region.rectangle(Vec2.ZERO, new Vec2(20, 20))
                .difference(Region.rectangle(new Vec2(3, 3), new Vec2(30, 30)));
        WallThickness w = of(Solids.prism(ell, 0, 40), 20_000);
        int inCorner = 0;
        for (int i = 0; i < w.count(); i++) {
            WallThickness.Sample s = w.sample(i);
            Vec3 p = s.point();
            if (Math.abs(s.normal().y() + 1) > 1e-9 || p.z() < 4 || p.z() > 36 || p.x() > 16) continue;
            double u = p.x();
            assertThat(s.ray()).isEqualTo(u < 3 ? 20 : 3, within(1e-9));
            // ball touching y = 0 at (u, 0), centre (u, r): held by the wall x = 0 at r = u, or by the corner (3, 3)
            double byCorner = ((3 - u) * (3 - u) + 9) / 6;
            double r = u < 3 ? Math.min(u, byCorner) : 1.5;
            assertThat(s.sphere()).isEqualTo(2 * r, within(0.02 * r));
            if (u < 3) inCorner++;
        }
        assertThat(inCorner).isGreaterThan(100);
    }

    @ParameterizedTest
    @CsvSource({
        "drafted_sensor_shell_bottom.stl, 1.100",
        "side_push_button.stl, 2.800",
        "lobed_thumb_nut.stl, 4.504",
        "ear_speculum_cone.stl, 0.497",
        "relay_box_bottom_shell.stl, 1.809",
        "snap_ring_thin_lip.stl, 1.500",
        "battery_cup_side_openings.obj, 1.800"
    })
    void medianOfRealParts(String name, double median) {
        TriMesh mesh = SharedParts.read(name);
        assertThat(of(mesh, 60_000).rayQuantile(0.5)).isEqualTo(median, within(0.005 * median));
    }

    @Test
    void sameSeedSameSamples() {
        TriMesh mesh = Solids.washer(64, 10, 9, 4, 5, 0, 3);
        WallThickness a = of(mesh, 5000), b = of(mesh, 5000);
        for (int i = 0; i < a.count(); i++) assertThat(a.sample(i)).isEqualTo(b.sample(i));
        assertThat(a.thinnestFirst()).isEqualTo(b.thinnestFirst()).hasSize(5000);
        assertThat(a.sphereQuantile(0)).isEqualTo(a.sphere(a.thinnestFirst()[0]));
        WallThickness other = WallThickness.of(Bvh.of(mesh), 5000, 2, Progress.SILENT);
        assertThat(other.sample(7)).isNotEqualTo(a.sample(7));
    }

    @Test
    void stopsWhenAsked() {
        Bvh bvh = Bvh.of(Solids.sphere(Vec3.ZERO, 1, 3));
        Progress stop = (doing, share) -> {
            throw new Progress.Cancelled();
        };
        assertThatThrownBy(() -> WallThickness.of(bvh, 100_000, 1, stop)).isInstanceOf(Progress.Cancelled.class);
    }

    @Test
    void quantiles() {
        double[] v = {4, 1, Double.NaN, 3, 2};
        assertThat(WallThickness.quantile(v, 0.5)).isEqualTo(2.5);
        assertThat(WallThickness.quantile(v, 1)).isEqualTo(4);
        assertThat(WallThickness.quantile(new double[0], 0.5)).isNaN();
    }
}
