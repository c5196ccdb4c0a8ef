package shotwright.machining.contour;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import shotwright.cutter.CutterProfile;
import shotwright.geom.Box3;
import shotwright.geom.Vec2;
import shotwright.machining.contact.DropCutter;
import shotwright.machining.contact.LocationMap;
import shotwright.machining.contact.TopSurface;
import shotwright.machining.contact.TriangleTree;
import shotwright.mesh.SharedParts;
import shotwright.mesh.TriMesh;

/** On real parts, seen from above: every end and every middle of every piece is free for the cutter, made 5 µm smaller in radius. */
class RealPartsContourTest {
    @ParameterizedTest
    @ValueSource(strings = {"drafted_sensor_shell_bottom.stl", "lobed_thumb_nut.stl", "relay_box_bottom_shell.stl"})
    void endsAndMiddlesAreFree(String name) {
        TriMesh part = SharedParts.read(name);
        Box3 box = part.box();
        TriangleTree tree = TriangleTree.of(part);
        TopSurface top = TopSurface.of(part, 0.1, 3);
        int checked = 0;
        for (CutterProfile p : List.of(
                CutterProfile.flat(1.5),
                CutterProfile.flat(0.4),
                CutterProfile.ball(1),
                CutterProfile.tapered(0.5, Math.toRadians(2), 0.8))) {
            DropCutter drop = new DropCutter(tree, p), smaller = drop.with(p.widenedMm(-0.005));
            LevelContour contour = new LevelContour(drop, LocationMap.of(top, p));
            DropCutter.Cursor cursor = new DropCutter.Cursor();
            for (double share : new double[] {0.3, 0.55, 0.8}) {
                double z = box.min().z() + share * box.size().z();
                for (Contour c : contour.at(z).contours())
                    for (int i = c.closed() ? 0 : 1; i < c.points().size(); i++) {
                        Vec2 b = c.points().get(i),
                                a =
                                        c.points()
                                                .get((i + c.points().size() - 1)
                                                        % c.points().size());
                        Vec2 m = a.plus(b).times(0.5);
                        assertThat(drop.tipMm(b.x(), b.y(), cursor)).isLessThanOrEqualTo(z);
                        assertThat(smaller.tipMm(m.x(), m.y(), cursor)).isLessThanOrEqualTo(z + 1e-6);
                        checked++;
                    }
            }
        }
        assertThat(checked).isGreaterThan(2000);
    }
}
