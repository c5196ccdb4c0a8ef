package shotwright.mesh.pull;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Objects;
import java.util.Random;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import shotwright.geom.Transform;
import shotwright.geom.Vec3;
import shotwright.mesh.Edges;
import shotwright.mesh.SharedParts;
import shotwright.mesh.TriMesh;
import shotwright.mesh.complex.Material;
import shotwright.progress.Progress;

/**
 * Real parts, each parted in a block 10 mm larger all round. Hidden shares were measured beforehand by another method (rasters of 1000 columns a
 * side and rays); wallet_case_front stands with the exact value of its shadow, which columns and rays here agree on. Skipped where the
 * parts are absent.
 */
class RealPartsPartingTest {
    private static Parting part(TriMesh mesh, PulledMesh pulled) {
        Parting p = Parting.of(pulled, List.of(Transform.IDENTITY), mesh.box().grow(10), Double.NaN, Progress.SILENT);
        assertThat(p.columns().badShare()).isLessThanOrEqualTo(Parting.BAD_SHARE_LIMIT);
        double sum = 0;
        for (Material m : List.of(Material.A, Material.B, Material.PART)) {
            assertThat(p.complex().openEdges(m)).as("open edges of " + m).isZero();
            sum += p.complex().volume(m);
        }
        assertThat(sum / mesh.box().grow(10).volume()).isEqualTo(1, within(1e-12));
        assertThat(Edges.of(p.complex().extract(Material.A)).isClosed()).isTrue();
        assertThat(Edges.of(p.complex().extract(Material.B)).isClosed()).isTrue();
        return p;
    }

    @ParameterizedTest
    @CsvSource({
        "drafted_sensor_shell_bottom.stl, z, 0.0048, plane, 5",
        "drafted_square_face_shell.stl, z, 0, stepped, 12",
        "side_push_button.stl, x, 0, plane, 2",
        "relay_box_bottom_shell.stl, z, 0.0014, plane, 11",
        "button_pair_bar.stl, z, 0, plane, 2",
        "lobed_thumb_nut.stl, z, 0, plane, 3",
        "ear_speculum_cone.stl, z, 0, stepped, 3",
        "snap_ring_thin_lip.stl, z, 0, plane, 3",
        "hobbed_gear_with_hub.stl, z, 0, plane, 3",
        "rail_snap_clip.stl, z, 0.0697, plane, 4",
        "battery_cup_side_openings.obj, z, 0.0637, plane, 5",
        "gear_sector_lever.stl, z, 0, stepped, 6",
        "wallet_case_front.stl, z, 0.0277, plane, 5",
        "round_cut_push_button.stl, y, 0.0001, stepped, 2",
        "sculpted_keycap_wide.stl, z, 0, plane, 2",
        "cable_strain_relief_half.stl, z, 0.0711, stepped, 3",
        "panel_hinge_half.stl, z, 0.0548, stepped, 4"
    })
    void realPart(String name, String axis, double hiddenShare, String kind, int loops) {
        TriMesh mesh = SharedParts.read(name).transform(Transform.bringToZ(axis(axis)));
        PulledMesh pulled = PulledMesh.of(mesh, Progress.SILENT);
        Parting p = part(mesh, pulled);
        assertThat(p.failures()).isEmpty();
        assertThat(p.columns().hiddenShare()).isEqualTo(hiddenShare, within(0.003));
        assertThat(pulled.shadow().hiddenShare()).isEqualTo(p.columns().hiddenShare(), within(0.001));
        double lock = Math.max(p.columns().lockShareA(), p.columns().lockShareB());
        assertThat(lock).isEqualTo(p.columns().hiddenShare(), within(0.001));
        assertThat(p.cap().loops()).isEqualTo(loops);
        Columns.FreeBand band = Objects.requireNonNull(p.choice()).columns().outerBand();
        assertThat(band.low() <= band.high() ? "plane" : "stepped").isEqualTo(kind);
    }

    /** The other way up the same undercuts hide the same share, and the parting may lie where the first one lay. */
    @ParameterizedTest
    @CsvSource({
        "wallet_case_front.stl, 0.0277",
        "battery_cup_side_openings.obj, 0.0637",
        "panel_hinge_half.stl, 0.0548",
        "drafted_sensor_shell_bottom.stl, 0.0048"
    })
    void realPartUpsideDown(String name, double hiddenShare) {
        TriMesh mesh = SharedParts.read(name).transform(Transform.bringToZ(Vec3.Z.negate()));
        Parting p = part(mesh, PulledMesh.of(mesh, Progress.SILENT));
        assertThat(p.failures()).isEmpty();
        assertThat(p.isPlaneFallBack()).isFalse();
        assertThat(p.columns().bad()).isZero();
        assertThat(p.columns().hiddenShare()).isEqualTo(hiddenShare, within(0.003));
    }

    @Test
    @Tag("slow")
    void finePartOfManyFacets() {
        TriMesh mesh = SharedParts.read("grip_trigger_lever_fine.stl");
        PulledMesh pulled = PulledMesh.of(mesh, Progress.SILENT);
        Parting p = part(mesh, pulled);
        assertThat(p.isPlaneFallBack()).isFalse();
        assertThat(p.columns().lockShareA()).isLessThan(5e-4);
        assertThat(p.columns().lockShareB()).isLessThan(5e-4);
    }

    /** Turned at random, scaled over four decades, shifted far, rounded to single precision and turned back: nothing may give way. */
    @ParameterizedTest
    @CsvSource({"button_pair_bar.stl", "rail_snap_clip.stl", "sculpted_keycap_wide.stl", "side_push_button.stl"})
    void roundedToSinglePrecisionElsewhere(String name) {
        TriMesh mesh = SharedParts.read(name);
        Random random = new Random(name.hashCode());
        for (int i = 0; i < 3; i++) {
            double scale = Math.pow(10, random.nextDouble(-2, 2));
            Vec3 shift =
                    new Vec3(random.nextGaussian(), random.nextGaussian(), random.nextGaussian()).times(30 * scale);
            Transform there = Transform.turn(
                            new Vec3(random.nextGaussian(), random.nextGaussian(), 0.3).unit(), random.nextDouble(3))
                    .then(Transform.scale(scale, scale, scale))
                    .then(Transform.translate(shift));
            TriMesh turned = rounded(mesh.transform(there)).transform(there.inverse());
            PulledMesh pulled = PulledMesh.of(turned, Progress.SILENT);
            Transform place = Transform.turnZ(random.nextDouble(6));
            Parting p = Parting.of(
                    pulled, List.of(place), turned.transform(place).box().grow(10), Double.NaN, Progress.SILENT);
            assertThat(p.isPlaneFallBack()).as("seed %s, run %d", name, i).isFalse();
            assertThat(p.isSound()).isTrue();
        }
    }

    private static TriMesh rounded(TriMesh m) {
        double[] p = m.copyXyz();
        for (int i = 0; i < p.length; i++) p[i] = (float) p[i];
        return new TriMesh(p, m.copyTri());
    }

    private static Vec3 axis(String name) {
        return name.equals("x") ? Vec3.X : name.equals("y") ? Vec3.Y : Vec3.Z;
    }
}
