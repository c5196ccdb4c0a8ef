package shotwright.mesh.pull;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Objects;
import java.util.Random;
import org.junit.jupiter.api.Test;
import shotwright.geom.Box3;
import shotwright.geom.Transform;
import shotwright.geom.Vec2;
import shotwright.geom.Vec3;
import shotwright.mesh.MassProperties;
import shotwright.mesh.Solids;
import shotwright.mesh.TriMesh;
import shotwright.mesh.complex.Material;
import shotwright.progress.Progress;
import shotwright.region.Region;

/** Parts whose halves are known in closed form: block 10 mm larger than the part all round, parted at the bottom of the free band. */
class SyntheticPartingTest {
    private static final double TAN_2 = Math.tan(Math.toRadians(2));

    private static Parting part(TriMesh mesh, double planeZ) {
        PulledMesh pulled = PulledMesh.of(mesh, Progress.SILENT);
        Parting p = Parting.of(pulled, List.of(Transform.IDENTITY), mesh.box().grow(10), planeZ, Progress.SILENT);
        assertThat(p.failures()).isEmpty();
        assertThat(p.columns().bad()).isZero();
        double sum = 0;
        for (Material m : List.of(Material.A, Material.B, Material.PART)) {
            assertThat(p.complex().openEdges(m)).as("open edges of " + m).isZero();
            sum += p.complex().volume(m);
        }
        assertThat(sum / mesh.box().grow(10).volume()).isEqualTo(1, within(1e-13));
        assertThat(p.complex().volume(Material.PART) / MassProperties.of(mesh).volumeMm3())
                .isEqualTo(1, within(1e-12));
        return p;
    }

    private static Columns.FreeBand band(Parting p) {
        return choice(p).columns().outerBand();
    }

    private static Parting.Choice choice(Parting p) {
        Parting.Choice c = p.choice();
        assertThat(c).isNotNull();
        return Objects.requireNonNull(c);
    }

    private static double a(Parting p) {
        return p.complex().volume(Material.A);
    }

    private static double b(Parting p) {
        return p.complex().volume(Material.B);
    }

    /** A profile in x and z, pulled along y. */
    private static TriMesh profile(double width, double... xz) {
        List<Vec2> ring = new ArrayList<>();
        for (int i = 0; i < xz.length; i += 2) ring.add(new Vec2(xz[i], xz[i + 1]));
        TriMesh standing = Solids.prism(Region.of(ring), 0, width);
        return standing.transform(new Transform(Vec3.X, Vec3.Z, Vec3.Y, Vec3.ZERO));
    }

    @Test
    void boxPartsAnywhereAlongItsWalls() {
        Parting p = part(Solids.box(Vec3.ZERO, new Vec3(20, 10, 5)), Double.NaN);
        assertThat(band(p).low()).isZero();
        assertThat(band(p).high()).isEqualTo(5);
        assertThat(a(p)).isEqualTo(17000, within(1e-8));
        assertThat(b(p)).isEqualTo(12000, within(1e-8));
        Parting middle = part(Solids.box(Vec3.ZERO, new Vec3(20, 10, 5)), 2);
        assertThat(a(middle)).isEqualTo(40 * 30 * 13 - 200 * 3, within(1e-8));
    }

    @Test
    void washerShutsOffItsHole() {
        Parting p = part(Solids.washer(64, 10, 10, 4, 4, 0, 3), Double.NaN);
        double ring = 32 * Math.sin(2 * Math.PI / 64) * (100 - 16);
        assertThat(p.complex().volume(Material.PART))
                .isEqualTo(790.410220, within(1e-6))
                .isEqualTo(3 * ring, within(1e-9));
        double side = 20 + 2 * 10; // a corner of the 64-gon lies on each axis
        assertThat(a(p)).isEqualTo(side * side * 13 - 3 * ring, within(1e-8)).isEqualTo(20009.589780, within(1e-6));
        assertThat(b(p)).isEqualTo(16000, within(1e-8));
        assertThat(p.cap().loops()).isEqualTo(3);
    }

    @Test
    void washerWithDraftOpeningUpwardPartsAtItsFoot() {
        double out = 3 * TAN_2;
        Parting p = part(Solids.washer(64, 10, 10 - out, 4, 4 + out, 0, 3), Double.NaN);
        assertThat(band(p).low()).isZero();
        assertThat(band(p).high()).isZero();
        assertThat(p.complex().volume(Material.PART)).isEqualTo(776.609353, within(1e-6));
    }

    @Test
    void holeNarrowingUpwardShutsOffAtItsTop() {
        double in = 3 * TAN_2;
        Parting p = part(Solids.washer(64, 10, 10 - in, 4, 4 - in, 0, 3), Double.NaN);
        double gon = 32 * Math.sin(2 * Math.PI / 64), r = 4 - in;
        double frustum = gon * (16 + 4 * r + r * r);
        assertThat(b(p)).isEqualTo(16000 + frustum, within(1e-8)).isEqualTo(16146.645647, within(1e-6));
        PulledMesh pulled = PulledMesh.of(Solids.washer(64, 10, 10 - in, 4, 4 - in, 0, 3), Progress.SILENT);
        assertThat(pulled.shadow().area()).isEqualTo(266.064386, within(1e-6));
    }

    @Test
    void bandsThatOverlapArePartedFlat() {
        Parting p = part(profile(10, 0, 0, 10, 0, 10, 2, 20, 2, 20, 5, 10, 5, 10, 3, 0, 3), Double.NaN);
        assertThat(band(p).low()).isEqualTo(2);
        assertThat(band(p).high()).isEqualTo(3);
        SteepRisers steep = SteepRisers.of(p.complex(), p.a(), p.b(), 5);
        assertThat(steep.area()).isZero();
        assertThat(choice(p).heights().outerFlat()).isTrue();
    }

    @Test
    void bandsApartStepOverTheRampBetweenThem() {
        Parting p = part(profile(10, 0, 0, 8, 0, 12, 4, 20, 4, 20, 6, 12, 6, 8, 2, 0, 2), Double.NaN);
        assertThat(band(p).low()).isGreaterThan(band(p).high());
        assertThat(choice(p).heights().outerFlat()).isFalse();
        assertThat(a(p) + b(p)).isEqualTo(30800, within(1e-8));
        assertThat(p.complex().volume(Material.PART)).isEqualTo(400, within(1e-10));
        SteepRisers steep = SteepRisers.of(p.complex(), p.a(), p.b(), 5);
        assertThat(steep.area()).isZero();
        // 26.6° is the ramp's own slope, atan(2/4); how the flat triangles beside it lie is left to the triangulation
        assertThat(90 - steep.worstDeg()).isEqualTo(26.6, within(2.0));
        assertThat(a(p)).isEqualTo(15956, within(25.0));
    }

    @Test
    void channelLyingOnItsSideIsLocked() {
        TriMesh c = profile(10, 0, 0, 20, 0, 20, 2, 4, 2, 4, 6, 20, 6, 20, 8, 0, 8);
        Parting p = part(c, Double.NaN);
        assertThat(p.complex().volume(Material.PART)).isEqualTo(960, within(1e-9));
        assertThat(p.columns().hiddenShare()).isEqualTo(0.8, within(0.005));
        assertThat(p.columns().lockShareA()).isEqualTo(0.8, within(0.005));
        assertThat(p.columns().lockShareB()).isZero();
        assertThat(choice(p).hidden().patches()).hasSize(2);
        assertThat(choice(p).hidden().patches().getFirst().shadow()).isEqualTo(160, within(1e-9));
    }

    @Test
    void turningScalingAndShufflingChangeNothing() {
        double in = 3 * TAN_2;
        TriMesh washer = Solids.washer(64, 10, 10 - in, 4, 4 - in, 0, 3);
        Parting plain = part(washer, Double.NaN);
        Random random = new Random(7);
        for (double scale : new double[] {0.01, 0.3, 1, 100}) {
            Transform t = Transform.turnZ(random.nextDouble() * 6)
                    .then(Transform.scale(scale, scale, scale))
                    .then(Transform.translate(new Vec3(random.nextDouble(), 50 * scale, -7 * scale)));
            TriMesh moved = shuffled(washer.transform(t), random);
            PulledMesh pulled = PulledMesh.of(moved, Progress.SILENT);
            Parting p = Parting.of(
                    pulled, List.of(Transform.IDENTITY), moved.box().grow(10 * scale), Double.NaN, Progress.SILENT);
            assertThat(p.isSound()).isTrue();
            assertThat(p.columns().bad()).isZero();
            double floor = moved.box().size().x() + 20 * scale,
                    depth = moved.box().size().y() + 20 * scale;
            double metalB = (p.complex().volume(Material.B) - floor * depth * 10 * scale) / Math.pow(scale, 3);
            assertThat(metalB).isEqualTo(b(plain) - 16000, within(1e-6));
        }
    }

    @Test
    void copiesInOneBlockEachGetTheirOwnCavity() {
        TriMesh washer = Solids.washer(64, 10, 10, 4, 4, 0, 3);
        PulledMesh pulled = PulledMesh.of(washer, Progress.SILENT);
        List<Transform> places = List.of(
                Transform.translate(new Vec3(-15, 0, -1)),
                Transform.turnZ(0.4).then(Transform.translate(new Vec3(15, 3, -1))));
        Box3 block = new Box3(new Vec3(-40, -20, -12), new Vec3(40, 20, 15));
        Parting p = Parting.of(pulled, places, block, 1, Progress.SILENT);
        double ring = 790.410220 / 3;
        assertThat(p.complex().volume(Material.PART)).isEqualTo(2 * 790.410220, within(1e-5));
        assertThat(a(p)).isEqualTo(80 * 40 * 15 - 2 * 2 * ring, within(1e-5));
        assertThat(p.columns().bad()).isZero();
        assertThat(p.cap().loops()).isEqualTo(5);
        assertThat(p.complex().openEdges(Material.PART)).isZero();
    }

    private static TriMesh shuffled(TriMesh m, Random random) {
        List<Integer> order = new ArrayList<>();
        for (int f = 0; f < m.facetCount(); f++) order.add(f);
        Collections.shuffle(order, random);
        int[] tri = new int[3 * m.facetCount()];
        for (int i = 0; i < order.size(); i++) {
            int turn = random.nextInt(3);
            for (int k = 0; k < 3; k++) tri[3 * i + k] = m.corner(order.get(i), (k + turn) % 3);
        }
        return new TriMesh(m.copyXyz(), tri);
    }
}
