package shotwright.mold.exact;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import shotwright.mesh.TriMesh;

/** Heights of a parting surface made by hand. */
class LevelsTest {
    private static final double HEIGHT_MM = 16.08848667672197;

    /** A square at the given height, its last corner a hair off. */
    private static TriMesh square(double height) {
        double[] xyz = {0, 0, height, 2, 0, height, 2, 2, height, 0, 2, height + 4e-6};
        return new TriMesh(xyz, new int[] {0, 1, 2, 0, 2, 3});
    }

    @Test
    void heightOfAFlatPieceIsKeptToTheLastDigit() {
        assertThat(Levels.of(square(HEIGHT_MM))).containsExactly(0.0, HEIGHT_MM);
    }

    @Test
    void cornersAHairOffAreDrawnOntoTheHeight() {
        var levels = Levels.of(square(HEIGHT_MM));
        TriMesh drawn = Levels.onto(square(HEIGHT_MM), levels);
        assertThat(drawn.z(3)).isEqualTo(HEIGHT_MM);
        assertThat(Levels.on(drawn, levels)).containsExactly(true, true);
    }
}
