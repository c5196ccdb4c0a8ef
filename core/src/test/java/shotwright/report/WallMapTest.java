package shotwright.report;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.awt.image.BufferedImage;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import shotwright.drawing.Body;
import shotwright.drawing.ColourMap;
import shotwright.drawing.ColourScale;
import shotwright.drawing.FacetPaint;
import shotwright.drawing.Picture;
import shotwright.drawing.Scene;
import shotwright.drawing.View;
import shotwright.geom.Vec3;
import shotwright.mesh.Bvh;
import shotwright.mesh.Edges;
import shotwright.mesh.TriMesh;
import shotwright.mesh.WallThickness;
import shotwright.progress.Progress;

/** A plate of two thicknesses: its wall is known in closed form, 4 mm on one side of the step and 2 mm on the other. */
class WallMapTest {
    private static TriMesh plate;
    private static WallMap map;

    @BeforeAll
    static void measure() {
        plate = StepPlate.mesh();
        Bvh tree = Bvh.of(plate);
        map = WallMap.of(tree, WallThickness.of(tree, 6000, 7, Progress.SILENT));
    }

    /** Cutting keeps surface and closure; 2 · (40 · 30) + 30 · (4 + 2 + 2) + 2 · (20 · 4 + 20 · 2) mm². */
    @Test
    void cuttingFineKeepsTheSurface() {
        Edges edges = FineMesh.of(Edges.of(plate), 0.8, Integer.MAX_VALUE);
        TriMesh fine = edges.mesh();
        double longest = 0, area = 0;
        for (int e = 0; e < edges.count(); e++) longest = Math.max(longest, edges.length(e));
        for (int f = 0; f < fine.facetCount(); f++) area += fine.area(f);
        assertThat(longest).isLessThanOrEqualTo(0.8);
        assertThat(edges.isClosed()).isTrue();
        assertThat(edges.nonManifold()).isEmpty();
        assertThat(area).isCloseTo(2 * 1200 + 30 * 8 + 2 * 120, within(1e-6));
        assertThatThrownBy(() -> FineMesh.of(Edges.of(plate), 0, Integer.MAX_VALUE))
                .hasMessageContaining("longest edge");
    }

    /**
     * Away from the step by the radius of the thick ball, tops and floor have the wall of their side: balls are true to two parts in a
     * hundred; along the outer edges, where few samples have a ball that reaches, to eight.
     */
    @Test
    void topsAndFloorHaveTheWallOfTheirSide() {
        int thin = 0, thick = 0;
        TriMesh mesh = map.mesh();
        for (int f = 0; f < mesh.facetCount(); f++) {
            if (Math.abs(mesh.doubleAreaNormal(f).unit().z()) < 0.9) continue;
            for (int k = 0; k < 3; k++) {
                Vec3 p = mesh.cornerPoint(f, k);
                if (Math.abs(p.x()) < 2.5) continue;
                double wall = p.x() > 0 ? 2 : 4;
                boolean edge = 15 - Math.abs(p.y()) < 1 || 20 - Math.abs(p.x()) < 1;
                assertThat(map.cornersMm()[3 * f + k])
                        .as("at " + p)
                        .isCloseTo(wall, within((edge ? 0.08 : 0.03) * wall));
                if (p.x() > 0) thin++;
                else thick++;
            }
        }
        assertThat(thin).isGreaterThan(10_000);
        assertThat(thick).isGreaterThan(10_000);
    }

    /** Seen from the floor, thick and thin meet along the step: a straight line as long as the plate is wide. */
    @Test
    void bordersBetweenWallsAreSmooth() {
        TriMesh mesh = map.mesh();
        double length = 0;
        for (int f = 0; f < mesh.facetCount(); f++)
            if (mesh.doubleAreaNormal(f).unit().z() < -0.9) length += crossing(f, 3);
        assertThat(length).isBetween(30.0, 1.1 * 30);
    }

    /** Length of the line on a facet where the wall, linear over it, has a value. */
    private static double crossing(int f, double value) {
        java.util.List<Vec3> ends = new java.util.ArrayList<>();
        for (int k = 0; k < 3; k++) {
            double a = map.cornersMm()[3 * f + k] - value, b = map.cornersMm()[3 * f + (k + 1) % 3] - value;
            if (a < 0 == b < 0) continue;
            ends.add(map.mesh().cornerPoint(f, k).toward(map.mesh().cornerPoint(f, (k + 1) % 3), a / (a - b)));
        }
        return ends.size() < 2 ? 0 : ends.get(0).distance(ends.get(1));
    }

    /** From above the light gives a level face its full colour, so a pixel is the colour of the band its wall lies in. */
    @Test
    void aPixelHasTheColourOfTheBandOfItsWall() {
        ColourScale scale =
                new ColourScale(ColourMap.THICKNESS, java.util.List.of(1.25, 4.25), java.util.List.of(0.0, 1.0), 6);
        Scene scene = Scene.of(Body.part(map.surface(), new FacetPaint.ByCorner(map.cornersMm(), scale)))
                .from(View.fromA());
        BufferedImage image = Picture.pixels(scene, 440, 340);
        double pixelsPerMm = (440 - 2 * 0.04 * 340) / 40;
        for (double y : new double[] {-14.5, -7, 3, 11, 14.5}) {
            for (double x : new double[] {-19.5, -12, -4, 4, 12, 19.5}) {
                int px = (int) (220 + x * pixelsPerMm), py = (int) (170 - y * pixelsPerMm);
                assertThat(image.getRGB(px, py) & 0xffffff)
                        .as("at " + x + ", " + y)
                        .isEqualTo(scale.rgb(x < 0 ? 4 : 2));
            }
        }
    }
}
