package shotwright.mesh;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Arrays;
import org.junit.jupiter.api.Test;
import shotwright.geom.Vec2;
import shotwright.geom.Vec3;
import shotwright.region.Region;

class EdgesTest {
    private static final TriMesh BOX = Solids.box(Vec3.ZERO, new Vec3(2, 3, 4));

    @Test
    void boxIsClosedAndItsEdgesAreOutsideCorners() {
        Edges e = Edges.of(BOX);
        assertThat(e.count()).isEqualTo(18);
        assertThat(e.isClosed()).isTrue();
        assertThat(e.open()).isEmpty();
        assertThat(e.nonManifold()).isEmpty();
        int square = 0, flat = 0;
        for (int i = 0; i < e.count(); i++) {
            if (Math.abs(e.turn(i)) < 1e-12) flat++;
            else if (Math.abs(e.turn(i) - Math.PI / 2) < 1e-12) square++;
        }
        assertThat(square).isEqualTo(12);
        assertThat(flat).isEqualTo(6);
        for (int f = 0; f < 12; f++)
            for (int k = 0; k < 3; k++) {
                int n = e.neighbour(f, k), edge = e.edge(f, k);
                assertThat(new int[] {e.facet(edge, 0), e.facet(edge, 1)}).containsExactlyInAnyOrder(f, n);
            }
    }

    @Test
    void insideCornerTurnsTheOtherWay() {
        Region ell = Region.rectangle(Vec2.ZERO, new Vec2(10, 10))
                .difference(Region.rectangle(new Vec2(4, 4), new Vec2(20, 20)));
        Edges e = Edges.of(Solids.prism(ell, 0, 5));
        int inside = 0;
        for (int i = 0; i < e.count(); i++) {
            if (e.turn(i) > -0.1) continue;
            inside++;
            assertThat(e.turn(i)).isEqualTo(-Math.PI / 2, within(1e-12));
            assertThat(e.length(i)).isEqualTo(5);
            assertThat(e.midpoint(i)).isEqualTo(new Vec3(4, 4, 2.5));
        }
        assertThat(inside).isEqualTo(1);
    }

    @Test
    void holeShowsItsRimCounterClockwiseFromOutside() {
        int[] tri = BOX.copyTri();
        TriMesh holed = new TriMesh(BOX.copyXyz(), Arrays.copyOfRange(tri, 6, 36));
        Edges e = Edges.of(holed);
        assertThat(e.isClosed()).isFalse();
        assertThat(e.unmatchedCount()).isEqualTo(4);
        assertThat(e.open()).hasSize(4);
        assertThat(e.boundaryLoops()).hasSize(1);
        int[] loop = e.boundaryLoops().getFirst();
        assertThat(loop).hasSize(4);
        int[] lid = {loop[0], loop[1], loop[2], loop[0], loop[2], loop[3]};
        int[] all = Arrays.copyOf(lid, 36);
        System.arraycopy(tri, 6, all, 6, 30);
        TriMesh closed = new TriMesh(BOX.copyXyz(), all);
        assertThat(Edges.of(closed).isClosed()).isTrue();
        assertThat(MassProperties.of(closed).volumeMm3()).isEqualTo(24, within(1e-12));
    }

    @Test
    void facetTurnedOverIsMisWoundNotOpen() {
        int[] tri = BOX.copyTri();
        int s = tri[0];
        tri[0] = tri[1];
        tri[1] = s;
        Edges e = Edges.of(new TriMesh(BOX.copyXyz(), tri));
        assertThat(e.open()).isEmpty();
        assertThat(e.misWound()).hasSize(3);
        assertThat(e.unmatchedCount()).isEqualTo(6);
        assertThat(e.turn(e.misWound()[0])).isNaN();
    }

    @Test
    void twoBoxesOnOneEdgeAreClosedButNotManifold() {
        Solids.Soup soup = new Solids.Soup();
        for (Vec3 at : new Vec3[] {Vec3.ZERO, new Vec3(1, 1, 0)}) {
            TriMesh b = Solids.box(at, at.plus(new Vec3(1, 1, 1)));
            for (int f = 0; f < 12; f++) soup.add(b.cornerPoint(f, 0), b.cornerPoint(f, 1), b.cornerPoint(f, 2));
        }
        Edges e = Edges.of(soup.mesh());
        assertThat(e.isClosed()).isTrue();
        assertThat(e.nonManifold()).hasSize(1);
        assertThat(e.sideCount(e.nonManifold()[0])).isEqualTo(4);
        assertThat(e.midpoint(e.nonManifold()[0])).isEqualTo(new Vec3(1, 1, 0.5));
    }

    @Test
    void collapsedFacetHasNoSides() {
        int[] tri = Arrays.copyOf(BOX.copyTri(), 39);
        tri[36] = 3;
        tri[37] = 3;
        tri[38] = 5;
        Edges e = Edges.of(new TriMesh(BOX.copyXyz(), tri));
        assertThat(e.collapsedCount()).isEqualTo(1);
        assertThat(e.isClosed()).isTrue();
        assertThat(e.edge(12, 0)).isEqualTo(Edges.NONE);
        assertThat(e.neighbour(12, 0)).isEqualTo(Edges.NONE);
    }

    @Test
    void countsTheHoleOfARealFile() {
        assertThat(Edges.of(SharedParts.read("bad_hole_in_surface.stl")).open()).hasSize(43);
        assertThat(Edges.of(SharedParts.read("nonmanifold_real_ribbed_cover.stl"))
                        .nonManifold())
                .hasSize(3);
        assertThat(Edges.of(SharedParts.read("rail_snap_clip.stl")).isClosed()).isTrue();
    }
}
