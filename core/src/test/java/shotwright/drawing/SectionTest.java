package shotwright.drawing;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Arrays;
import org.junit.jupiter.api.Test;
import shotwright.demo.PlainCap;
import shotwright.geom.Plane;
import shotwright.geom.Vec2;
import shotwright.geom.Vec3;
import shotwright.mesh.TriMesh;

class SectionTest {
    private static final double T = Math.tan(Math.toRadians(2));

    /** A regular polygon of n sides in a circle: n r² sin(2π/n) / 2. */
    private static double polygon(double radius) {
        return 96 * radius * radius * Math.sin(2 * Math.PI / 96) / 2;
    }

    @Test
    void ringAcrossZIsExact() {
        Section s = Section.acrossZ(PlainCap.mesh(), 3);
        double expected = polygon(12 - 3 * T) - polygon(10.4 - 3 * T);
        assertThat(s.region().area()).isCloseTo(expected, within(1e-4));
        assertThat(s.region().holes()).hasSize(1);
        assertThat(s.gaps()).isZero();
    }

    @Test
    void aCutAlongAFlatFaceShowsTheMaterialBehindIt() {
        TriMesh cap = PlainCap.mesh();
        assertThat(Section.acrossZ(cap, 10).region().area()).isCloseTo(polygon(12 - 10 * T), within(1e-3));
        assertThat(Section.acrossZ(cap, 10.001).region().isEmpty()).isTrue();
    }

    /** Upright cut through the axis: trapezium outside less trapezium inside. */
    @Test
    void uprightCutsHaveTheAreaOfTheirTrapezia() {
        double expected = 10 * (24 - 10 * T) - 8.4 * (20.8 - 8.4 * T);
        assertThat(Section.acrossY(PlainCap.mesh(), 0).region().area()).isCloseTo(expected, within(1e-3));
        assertThat(Section.acrossX(PlainCap.mesh(), 0).region().area()).isCloseTo(expected, within(1e-3));
    }

    @Test
    void seenFromTheFrontXRunsRightAndZUp() {
        Section s = Section.acrossY(PlainCap.mesh(), 0);
        assertThat(s.inCut(new Vec3(3, 0, 7))).isEqualTo(new Vec2(3, 7));
        assertThat(s.inSpace(new Vec2(3, 7))).isEqualTo(new Vec3(3, 0, 7));
    }

    @Test
    void aMissingFacetIsClosedAndSaid() {
        TriMesh cap = PlainCap.mesh();
        int[] tri = cap.copyTri();
        TriMesh open = new TriMesh(cap.copyXyz(), Arrays.copyOfRange(tri, 3, tri.length));
        Section s = Section.of(open, new Plane(Vec3.Z, 3));
        assertThat(s.gaps()).isEqualTo(1);
        assertThat(s.region().area()).isCloseTo(Section.acrossZ(cap, 3).region().area(), within(0.5));
    }
}
