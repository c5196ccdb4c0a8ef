package shotwright.report;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Test;
import shotwright.drawing.Body;
import shotwright.drawing.Creases;
import shotwright.drawing.Drawing;
import shotwright.drawing.Ink;
import shotwright.drawing.Mark;
import shotwright.geom.Plane;
import shotwright.geom.Transform;
import shotwright.geom.Vec2;
import shotwright.geom.Vec3;
import shotwright.layout.Half;
import shotwright.mesh.Solids;
import shotwright.mesh.TriMesh;
import shotwright.mesh.complex.Material;
import shotwright.mold.ChannelShape;
import shotwright.mold.ConvexTool;
import shotwright.mold.Purpose;
import shotwright.region.Region;

/** Two bars of metal, notched as by a runner 4 × 2, a vent 5 × 0.5 and a pry slot 6 × 3 mm, and cut across the notches. */
class MoldCutTest {
    private static final Plane ACROSS = new Plane(new Vec3(0, -1, 0), 0);

    /** A profile in x and z, 20 mm long along y. */
    private static TriMesh bar(Vec2... profile) {
        Transform upright = new Transform(Vec3.X, new Vec3(0, 0, -1), Vec3.Y, Vec3.ZERO);
        return Solids.prism(Region.of(List.of(profile)), -10, 10).transform(upright);
    }

    private static ConvexTool notch(String name, Purpose purpose, Half half, double x, double width, double depth) {
        ChannelShape s = new ChannelShape(
                half, new Vec3(x, -10, 0), new Vec3(x, 10, 0), width, width, depth, depth, 0, 0.5, 0.5);
        return new ConvexTool(name, purpose, half, s, s.volumeMm3(), List.of());
    }

    private static MoldCut cut() {
        TriMesh a = bar(
                new Vec2(0, 0),
                new Vec2(8, 0),
                new Vec2(8, 2),
                new Vec2(12, 2),
                new Vec2(12, 0),
                new Vec2(20, 0),
                new Vec2(20, 0.5),
                new Vec2(25, 0.5),
                new Vec2(25, 0),
                new Vec2(40, 0),
                new Vec2(40, 10),
                new Vec2(0, 10));
        TriMesh b = bar(
                new Vec2(0, -10),
                new Vec2(40, -10),
                new Vec2(40, -3),
                new Vec2(34, -3),
                new Vec2(34, 0),
                new Vec2(0, 0));
        List<ConvexTool> tools = List.of(
                notch("runner 1", Purpose.RUNNER, Half.A, 10, 4, 2),
                notch("vent 1, land", Purpose.VENT_LAND, Half.A, 22.5, 5, 0.5),
                notch("pry pocket 1", Purpose.PRY_POCKET, Half.B, 37, 6, 3));
        return new MoldCut(Body.halfA(Creases.of(a)), Body.halfB(Creases.of(b)), List.of(), tools, ACROSS);
    }

    @Test
    void everyNotchIsFilledAsWhatItIs() {
        MoldCut cut = cut();
        assertThat(cut.room(Material.FEED).area()).isCloseTo(4 * 2, within(1e-9));
        assertThat(cut.room(Material.VENT).area()).isCloseTo(5 * 0.5, within(1e-9));
        assertThat(cut.room(Material.HOLE).area()).isCloseTo(6 * 3, within(1e-9));
    }

    @Test
    void theKeyNamesWhatIsSeenAndNoMore() {
        Drawing d = cut().drawing("cut", 170, 110);
        List<String> words = d.marks().stream()
                .filter(Mark.Text.class::isInstance)
                .map(m -> ((Mark.Text) m).text())
                .toList();
        assertThat(words).contains("sprue, runner, gate", "vent", "pry slot").noneMatch(w -> w.contains("dowel"));
        // two fills of the feed's grey: in the cut and in its key
        assertThat(d.marks().stream().filter(m -> m instanceof Mark.Fill f && f.rgb() == Ink.METAL_DARK))
                .hasSize(2);
    }
}
