package shotwright.mesh.complex;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import shotwright.geom.Box3;
import shotwright.geom.Plane;
import shotwright.geom.Vec3;

class ComplexTest {
    private static final Box3 BLOCK = new Box3(new Vec3(0, 0, -20), new Vec3(60, 40, 20));

    /** Two halves parted at z = 0. */
    private static Complex parted() {
        Complex c = new Complex(new Grain(50));
        int b = c.newCell(Material.B), a = c.newCell(Material.A);
        c.insertBlock(BLOCK, b);
        c.split(b, Level.of(new Plane(Vec3.Z, 0)), a);
        return c;
    }

    /** A standing prism with n sides, from z0 to z1. */
    static List<Plane> prism(double x, double y, double radius, int n, double z0, double z1) {
        List<Plane> planes = new ArrayList<>();
        double inner = radius * Math.cos(Math.PI / n);
        for (int i = 0; i < n; i++) {
            double t = 2 * Math.PI * (i + 0.5) / n;
            Vec3 normal = new Vec3(Math.cos(t), Math.sin(t), 0);
            planes.add(Plane.through(new Vec3(x, y, 0).plus(normal.times(inner)), normal));
        }
        planes.add(new Plane(Vec3.Z.negate(), -z0));
        planes.add(new Plane(Vec3.Z, z1));
        return planes;
    }

    @Test
    void aPlaneDividesABlock() {
        Complex c = parted();
        assertThat(c.volume(Material.A)).isEqualTo(48000, within(1e-9));
        assertThat(c.volume(Material.B)).isEqualTo(48000, within(1e-9));
        assertThat(c.openEdges(Material.A)).isZero();
        assertThat(c.openEdges(Material.B)).isZero();
        ColumnTest t = ColumnTest.overAll(c, 50);
        assertThat(t.columns()).isEqualTo(2500);
        assertThat(t.bad()).isZero();
    }

    @Test
    void aRoundHoleThroughBothHalvesHasTheVolumeOfItsPolygonAndLeavesFewFacets() {
        Complex c = parted();
        int before = c.facetCount();
        double area = 32 / 2.0 * 9 * Math.sin(2 * Math.PI / 32);
        int holeA = c.newCell(Material.HOLE), holeB = c.newCell(Material.HOLE);
        c.cut(2, prism(15, 12, 3, 32, -0.5, 10), new Box3(new Vec3(11, 8, -0.5), new Vec3(19, 16, 10)), holeA);
        c.cut(1, prism(15, 12, 3, 32, -12, 0.5), new Box3(new Vec3(11, 8, -12), new Vec3(19, 16, 0.5)), holeB);
        assertThat(c.volume(holeA) / (area * 10)).isEqualTo(1, within(1e-12));
        assertThat(c.volume(holeB) / (area * 12)).isEqualTo(1, within(1e-12));
        for (Material m : List.of(Material.A, Material.B, Material.HOLE))
            assertThat(c.openEdges(m)).isZero();
        // walls 2 × 64, floors 2 × 30, disc between the holes 30, parting face 34 more
        assertThat(c.facetCount() - before).isLessThan(300);
        double sum = c.volume(Material.A) + c.volume(Material.B) + c.volume(Material.HOLE);
        assertThat(sum / BLOCK.volume()).isEqualTo(1, within(1e-14));
        assertThat(ColumnTest.overAll(c, 100).bad()).isZero();
    }

    @Test
    void manyToolsKeepTheComplexSmall() {
        Complex c = parted();
        for (int i = 0; i < 12; i++) {
            int hole = c.newCell(Material.HOLE);
            double x = 5 + 10 * (i % 6), y = 10 + 20 * (i / 6);
            c.cut(
                    2,
                    prism(x, y, 2, 24, -0.5, 5 + i),
                    new Box3(new Vec3(x - 3, y - 3, -0.5), new Vec3(x + 3, y + 3, 5 + i)),
                    hole);
            assertThat(c.volume(hole)).isEqualTo(24 / 2.0 * 4 * Math.sin(2 * Math.PI / 24) * (5 + i), within(1e-10));
        }
        assertThat(c.facetCount()).isLessThan(12 * 24 * 5 + 200);
        assertThat(c.openEdges(Material.A)).isZero();
        assertThat(ColumnTest.overAll(c, 100).bad()).isZero();
    }

    @Test
    void aToolThatReachesIntoAPartIsTrimmedByIt() {
        Complex c = new Complex(new Grain(50));
        int b = c.newCell(Material.B), a = c.newCell(Material.A), part = c.newCell(Material.PART);
        c.insertBlock(BLOCK, b);
        c.insert(Boxes.mesh(new Box3(new Vec3(20, 10, -3), new Vec3(40, 30, 5))), part, b);
        c.split(b, Level.of(new Plane(Vec3.Z, 0)), a);
        int gate = c.newCell(Material.FEED);
        c.cut(
                a,
                Boxes.planes(new Box3(new Vec3(10, 18, -0.5), new Vec3(25, 20, 0.8))),
                new Box3(new Vec3(9, 17, -0.5), new Vec3(26, 21, 1)),
                gate);
        assertThat(c.volume(gate)).isEqualTo(10 * 2 * 0.8, within(1e-11));
        assertThat(c.volume(Material.PART)).isEqualTo(20 * 20 * 8, within(1e-10));
        for (Material m : Material.values())
            assertThat(c.openEdges(m)).as(m.name()).isZero();
        assertThat(ColumnTest.overAll(c, 200).bad()).isZero();
    }

    @Test
    void anInsideOutPartIsSeenByTheColumnsThoughVolumesAddUp() {
        Complex c = new Complex(new Grain(50));
        int b = c.newCell(Material.B), a = c.newCell(Material.A), part = c.newCell(Material.PART);
        c.insertBlock(BLOCK, b);
        c.insert(Boxes.mesh(new Box3(new Vec3(20, 10, -3), new Vec3(40, 30, 5))).flip(), part, b);
        c.split(b, Level.of(new Plane(Vec3.Z, 10)), a);
        double sum = c.volume(Material.A) + c.volume(Material.B) + c.volume(Material.PART);
        assertThat(sum / BLOCK.volume()).isEqualTo(1, within(1e-14));
        assertThat(ColumnTest.overAll(c, 100).bad()).isGreaterThan(1000);
    }

    @Test
    void sourcesSurviveTheCut() {
        Complex c = new Complex(new Grain(50));
        int b = c.newCell(Material.B), a = c.newCell(Material.A), part = c.newCell(Material.PART);
        c.insertBlock(BLOCK, b);
        int first = c.insert(Boxes.mesh(new Box3(new Vec3(20, 10, -3), new Vec3(40, 30, 5))), part, b);
        c.split(b, Level.of(new Plane(Vec3.Z, 0)), a);
        double[] area = new double[12];
        for (int f = 0; f < c.facetCount(); f++) {
            int s = c.source(f) - first;
            if (s >= 0 && s < 12) area[s] += c.doubleAreaNormal(f).length() / 2;
        }
        assertThat(area[0]).isEqualTo(200, within(1e-10));
        assertThat(area[4]).isEqualTo(80, within(1e-10));
    }
}
