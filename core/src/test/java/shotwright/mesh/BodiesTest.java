package shotwright.mesh;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Test;
import shotwright.geom.Vec3;

class BodiesTest {
    @Test
    void splitsWhatDoesNotShareAnEdge() {
        TriMesh big = Solids.box(Vec3.ZERO, new Vec3(10, 10, 10));
        TriMesh hollow = Solids.box(new Vec3(2, 2, 2), new Vec3(5, 5, 5)).flip();
        TriMesh cone = Solids.frustum(12, 3, 0, 20, 25);
        Bodies bodies = Bodies.of(Edges.of(Solids.together(big, hollow, cone)));
        assertThat(bodies.count()).isEqualTo(3);
        List<TriMesh> m = bodies.meshes();
        assertThat(m.get(0)).isEqualTo(big);
        assertThat(MassProperties.of(m.get(1)).volumeMm3()).isEqualTo(-27, within(1e-12));
        assertThat(m.get(2).vertexCount()).isEqualTo(cone.vertexCount());
        assertThat(bodies.facets().get(1)).hasSize(12).startsWith(12);
        assertThat(bodies.body(24)).isEqualTo(2);
        assertThat(Bodies.part(big, new int[] {3, 1}).facetCount()).isEqualTo(2);
    }

    @Test
    void boxesTouchingAlongAnEdgeAreTwo() {
        Solids.Soup soup = new Solids.Soup();
        for (Vec3 at : new Vec3[] {Vec3.ZERO, new Vec3(1, 1, 0)}) {
            TriMesh b = Solids.box(at, at.plus(new Vec3(1, 1, 1)));
            for (int f = 0; f < 12; f++) soup.add(b.cornerPoint(f, 0), b.cornerPoint(f, 1), b.cornerPoint(f, 2));
        }
        assertThat(Bodies.of(Edges.of(soup.mesh())).count()).isEqualTo(2);
    }

    /** Two boxes stood on one another, their common face there twice: four sides on each of its edges, and no facet of it closed alone. */
    @Test
    void everyBodyIsClosedByItself() {
        Solids.Soup soup = new Solids.Soup();
        for (double z : new double[] {0, 1}) {
            TriMesh b = Solids.box(new Vec3(0, 0, z), new Vec3(1, 1, z + 1));
            for (int f = 0; f < 12; f++) soup.add(b.cornerPoint(f, 0), b.cornerPoint(f, 1), b.cornerPoint(f, 2));
        }
        double volume = 0;
        for (TriMesh body : Bodies.of(Edges.of(soup.mesh())).meshes()) {
            assertThat(Edges.of(body).isClosed()).isTrue();
            volume += MassProperties.of(body).volumeMm3();
        }
        assertThat(volume).isEqualTo(2, within(1e-12));
    }

    @Test
    void countsBodiesOfRealParts() {
        assertThat(Bodies.of(Edges.of(SharedParts.read("rail_snap_clip.stl"))).count())
                .isEqualTo(1);
        assertThat(Bodies.of(Edges.of(SharedParts.read("grip_trigger_lever_fine.stl")))
                        .count())
                .isEqualTo(1);
    }
}
