package shotwright.mold;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Objects;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import shotwright.finding.Finding;
import shotwright.geom.Box3;
import shotwright.geom.Plane;
import shotwright.geom.Transform;
import shotwright.geom.Vec3;
import shotwright.layout.Half;
import shotwright.mesh.SharedParts;
import shotwright.mesh.Solids;
import shotwright.mesh.TriMesh;
import shotwright.mesh.complex.ColumnTest;
import shotwright.mesh.complex.Complex;
import shotwright.mesh.complex.Grain;
import shotwright.mesh.complex.Level;
import shotwright.mesh.complex.Material;
import shotwright.mesh.pull.Parting;
import shotwright.mesh.pull.PulledMesh;
import shotwright.progress.Progress;

/** Flakes and cores of known volume in a block parted round a box. */
class SpecksTest {
    private static final Box3 BLOCK = new Box3(new Vec3(0, 0, -20), new Vec3(60, 40, 20));
    private static final Box3 PART = new Box3(new Vec3(20, 10, -3), new Vec3(40, 30, 5));

    private final Complex c = new Complex(new Grain(30));
    private int a;
    private int b;
    private int part;

    @BeforeEach
    void part() {
        b = c.newCell(Material.B);
        a = c.newCell(Material.A);
        part = c.newCell(Material.PART);
        c.insertBlock(BLOCK, b);
        c.insert(Solids.box(PART.min(), PART.max()), part, b);
        c.split(b, Level.of(new Plane(Vec3.Z, 0)), a);
    }

    /** Metal of half A between the part's wall and half B, below the parting. */
    private void flake(double thickMm) {
        Vec3 from = new Vec3(40 - thickMm, 15, -2), to = new Vec3(40 + thickMm, 16, -1);
        List<Plane> planes = List.of(
                new Plane(Vec3.X, to.x()),
                new Plane(Vec3.X.negate(), -from.x()),
                new Plane(Vec3.Y, to.y()),
                new Plane(Vec3.Y.negate(), -from.y()),
                new Plane(Vec3.Z, to.z()),
                new Plane(Vec3.Z.negate(), -from.z()));
        c.cut(b, planes, new Box3(from, to).grow(0.01), a);
    }

    private void assertSound() {
        double sum = c.volume(Material.A) + c.volume(Material.B) + c.volume(Material.PART);
        assertThat(sum / BLOCK.volume()).isEqualTo(1, within(1e-14));
        for (Material m : List.of(Material.A, Material.B, Material.PART))
            assertThat(c.openEdges(m)).isZero();
        assertThat(ColumnTest.overAll(c, 200).bad()).isZero();
    }

    @Test
    void aFlakeBetweenWallAndOtherHalfGoesToThatHalf() {
        double wasA = c.volume(a), wasB = c.volume(b);
        flake(0.002);
        assertThat(c.shells(a)).hasSize(2);
        assertThat(c.volume(a) - wasA).isEqualTo(0.002, within(1e-9));
        Specks specks = Specks.giveOver(c, a, b);
        assertThat(specks.count()).isEqualTo(1);
        assertThat(specks.volumeMm3()).isEqualTo(0.002, within(1e-12));
        assertThat(c.shells(a)).hasSize(1);
        assertThat(c.shells(b)).hasSize(1);
        assertThat(c.volume(a)).isEqualTo(wasA, within(1e-8));
        assertThat(c.volume(b)).isEqualTo(wasB, within(1e-8));
        assertThat(Specks.loose(c, a, Half.A)).isEmpty();
        assertSound();
    }

    @Test
    void aThickerPieceStaysAndIsSaid() {
        flake(0.5);
        assertThat(Specks.giveOver(c, a, b)).isEqualTo(Specks.NONE);
        assertThat(c.shells(a)).hasSize(2);
        List<Finding> said = Specks.loose(c, a, Half.A);
        assertThat(said).hasSize(1);
        assertThat(said.getFirst().code()).isEqualTo("half-in-pieces");
        Vec3 at = Objects.requireNonNull(said.getFirst().atMm());
        assertThat(at.distance(new Vec3(40.25, 15.5, -1.5))).isLessThan(1e-6);
        assertSound();
    }

    @Test
    void aCoreTrappedInThePartIsSaid() {
        c.insert(Solids.box(new Vec3(28, 18, 1), new Vec3(30, 20, 2)), b, part);
        assertThat(Specks.giveOver(c, a, b)).isEqualTo(Specks.NONE);
        List<Finding> said = Specks.loose(c, b, Half.B);
        assertThat(said).hasSize(1);
        assertThat(said.getFirst().text()).contains("half B, 4.00 mm³");
        assertSound();
    }

    @Test
    void aSpeckInsideThePartBecomesPart() {
        c.insert(Solids.box(new Vec3(28, 18, 1), new Vec3(28.05, 18.05, 1.05)), b, part);
        assertThat(Specks.giveOver(c, a, b).count()).isEqualTo(1);
        assertThat(c.volume(part)).isEqualTo(PART.volume(), within(1e-9));
        assertSound();
    }

    /** A real part with straight walls beside a stepped parting; the other test part with many specks is too large for every run. */
    @Test
    void halvesOfARealPartAreOnePieceEach() {
        TriMesh mesh = SharedParts.read("round_cut_push_button.stl").transform(Transform.bringToZ(Vec3.Y));
        Box3 block = mesh.box().grow(10);
        Parting p = Parting.of(
                PulledMesh.of(mesh, Progress.SILENT), List.of(Transform.IDENTITY), block, 0, Progress.SILENT);
        Complex parted = p.complex();
        assertThat(parted.shells(p.a()).size() + parted.shells(p.b()).size()).isGreaterThan(2);
        Specks specks = Specks.giveOver(parted, p.a(), p.b());
        assertThat(specks.count()).isPositive();
        assertThat(specks.volumeMm3()).isLessThan(0.01 * specks.count());
        assertThat(parted.shells(p.a())).hasSize(1);
        assertThat(parted.shells(p.b())).hasSize(1);
        double sum = parted.volume(Material.A) + parted.volume(Material.B) + parted.volume(Material.PART);
        assertThat(sum / block.volume()).isEqualTo(1, within(1e-12));
        assertThat(ColumnTest.overAll(parted, ColumnTest.SIDE).bad()).isZero();
    }
}
