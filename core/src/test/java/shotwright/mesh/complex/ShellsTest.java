package shotwright.mesh.complex;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import shotwright.geom.Box3;
import shotwright.geom.Vec3;

/** Volumes and surfaces against closed forms of boxes. */
class ShellsTest {
    private static final Box3 BLOCK = new Box3(Vec3.ZERO, new Vec3(20, 20, 10));

    private static Complex block() {
        Complex c = new Complex(new Grain(30));
        c.insertBlock(BLOCK, c.newCell(Material.B));
        return c;
    }

    private static void cutBox(Complex c, Box3 box, int into) {
        c.cut(1, Boxes.planes(box), box.grow(0.1), into);
    }

    @Test
    void aHollowAndTheCoreInItAreShellsOfTheirOwn() {
        Complex c = block();
        int part = c.newCell(Material.PART);
        c.insert(Boxes.mesh(new Box3(new Vec3(5, 5, 2), new Vec3(15, 15, 8))), part, 1);
        c.insert(Boxes.mesh(new Box3(new Vec3(8, 8, 4), new Vec3(12, 12, 6))), 1, part);
        List<Shell> shells = c.shells(1);
        assertThat(shells).hasSize(3);
        assertThat(shells.get(0).volumeMm3()).isEqualTo(4000, within(1e-9));
        Shell core = shells.get(1);
        assertThat(core.volumeMm3()).isEqualTo(32, within(1e-12));
        assertThat(core.areaMm2()).isEqualTo(2 * 16 + 4 * 8, within(1e-12));
        assertThat(core.touchedMm2()).isEqualTo(Map.of(part, core.areaMm2()));
        assertThat(core.place().distance(new Vec3(10, 10, 5))).isLessThan(1e-12);
        assertThat(shells.get(2).volumeMm3()).isEqualTo(-600, within(1e-10));
    }

    @Test
    void bodiesThatTouchAlongAnEdgeAreTwo() {
        Complex c = block();
        int hole = c.newCell(Material.HOLE);
        cutBox(c, new Box3(new Vec3(-1, -1, -1), new Vec3(10, 10, 11)), hole);
        cutBox(c, new Box3(new Vec3(10, 10, -1), new Vec3(21, 21, 11)), hole);
        List<Shell> shells = c.shells(1);
        assertThat(shells).hasSize(2);
        for (Shell s : shells) assertThat(s.volumeMm3()).isEqualTo(1000, within(1e-9));
        assertThat(c.shells(hole)).hasSize(2);
    }

    @Test
    void aBridgeMakesThemOne() {
        Complex c = block();
        int hole = c.newCell(Material.HOLE);
        cutBox(c, new Box3(new Vec3(-1, -1, -1), new Vec3(10, 10, 9)), hole);
        cutBox(c, new Box3(new Vec3(10, 10, -1), new Vec3(21, 21, 11)), hole);
        assertThat(c.shells(1)).hasSize(1);
        assertThat(c.shells(1).getFirst().volumeMm3()).isEqualTo(2000 + 100, within(1e-9));
    }

    @Test
    void whatIsGivenOverIsGainedByItsNeighbour() {
        Complex c = block();
        int part = c.newCell(Material.PART);
        c.insert(Boxes.mesh(new Box3(new Vec3(5, 5, 2), new Vec3(15, 15, 8))), part, 1);
        c.insert(Boxes.mesh(new Box3(new Vec3(8, 8, 4), new Vec3(12, 12, 6))), 1, part);
        c.give(1, List.of(c.shells(1).get(1)), List.of(part));
        assertThat(c.volume(part)).isEqualTo(600, within(1e-10));
        assertThat(c.volume(1)).isEqualTo(3400, within(1e-9));
        assertThat(c.facetCount()).isEqualTo(24);
    }
}
