package shotwright.machining.contact;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import shotwright.cutter.CutterProfile;
import shotwright.cutter.CutterRack;
import shotwright.cutter.Holder;
import shotwright.cutter.MountedCutter;
import shotwright.geom.Vec2;
import shotwright.geom.Vec3;
import shotwright.machining.DraftedPocket;
import shotwright.mesh.Grid;
import shotwright.mesh.Solids;
import shotwright.mesh.TriMesh;
import shotwright.progress.Progress;
import shotwright.region.Region;

class LocationMapTest {
    private static TriMesh slope(double rise, double turnRad) {
        double a = rise * Math.cos(turnRad), b = rise * Math.sin(turnRad);
        Solids.Soup soup = new Solids.Soup();
        soup.quad(corner(-9, -9, a, b), corner(9, -9, a, b), corner(9, 9, a, b), corner(-9, 9, a, b));
        return soup.mesh();
    }

    private static Vec3 corner(double x, double y, double a, double b) {
        return new Vec3(x, y, a * x + b * y);
    }

    /**
     * Heights on a grid come out low on a slope, never high, by no more than cell²/(4·r·cos³ b); the worst of 400 random phases, here of 400 directions, was measured
     * before with another program: .00217, .00291, .00571 and .00161 mm.
     */
    @ParameterizedTest
    @CsvSource({".5, .05, 45, .00217", "1, .1, 30, .00291", ".5, .05, 60, .00571", "3, .1, 45, .00161"})
    void gridsComeOutLow(double r, double cell, double slopeDeg, double measured) {
        double rise = Math.tan(Math.toRadians(slopeDeg)), exact = r * (Math.hypot(1, rise) - 1);
        double bound = cell * cell / (4 * r * Math.pow(Math.cos(Math.toRadians(slopeDeg)), 3)), worst = 0;
        Random random = new Random(7);
        int side = 2 * (int) Math.ceil(r / cell) + 5;
        for (int k = 0; k < 400; k++) {
            Grid grid = new Grid(random.nextDouble() * cell, random.nextDouble() * cell, cell, side, side);
            TopSurface surface = TopSurface.of(slope(rise, 2 * Math.PI * random.nextDouble()), grid);
            LocationMap map = LocationMap.of(surface, CutterProfile.ball(r));
            int middle = grid.index(side / 2, side / 2);
            double low = surface.heightMm(middle) + exact - map.tipMm(middle);
            assertThat(low).isGreaterThan(-1e-6);
            worst = Math.max(worst, low);
        }
        assertThat(worst).isLessThan(bound);
        assertThat(worst).isCloseTo(measured, within(0.25 * measured));
    }

    /**
     * Serra's closing: done twice it is the same, it never cuts, and a larger ball never leaves less (handbook properties 1 to 3); the last
     * but for what a grid of 0.1 mm takes from a ball of 0.4 mm on 60°, cell²/(4·r·cos³ b).
     */
    @ParameterizedTest
    @ValueSource(longs = {1, 2, 3, 4})
    void closing(long seed) {
        TriMesh mesh = DropCutterTest.rough(seed, 12, 0.8, 1);
        TopSurface surface = TopSurface.of(mesh, 0.1, 2);
        float[] smaller = null;
        for (double r : new double[] {0.4, 0.7, 1.3}) {
            LocationMap map = LocationMap.of(surface, CutterProfile.ball(r));
            float[] once = map.leftMm(),
                    again =
                            shotwright.mesh.GreyMorphology.close(
                                    once, surface.grid(), LocationMap.element(CutterProfile.ball(r), surface.grid()));
            for (int i = 0; i < once.length; i++) {
                if (surface.facet(i) < 0) continue;
                assertThat(again[i]).isCloseTo(once[i], within(1e-5f));
                assertThat(once[i]).isGreaterThanOrEqualTo(surface.heightMm(i) - 1e-6f);
                if (smaller != null) assertThat(once[i]).isGreaterThanOrEqualTo(smaller[i] - 0.05f);
            }
            smaller = once;
        }
    }

    /** Heights on the grid never stand above the exact ones. */
    @Test
    void neverAboveTheExactHeight() {
        TriMesh mesh = DropCutterTest.rough(11, 10, 0.8, 2);
        TopSurface surface = TopSurface.of(mesh, 0.08, 2);
        Grid g = surface.grid();
        for (CutterProfile p : DropCutterTest.CUTTERS) {
            LocationMap map = LocationMap.of(surface, p);
            DropCutter drop = new DropCutter(TriangleTree.of(mesh), p);
            for (int i = 0; i < g.count(); i += 37)
                assertThat(map.tipMm(i) - 1e-5).isLessThanOrEqualTo(drop.tipMm(g.x(i % g.nx()), g.y(i / g.nx())));
        }
    }

    /**
     * A drafted pocket with corners of 2.8 mm at its floor: a flat end of 2 mm radius reaches all of the floor, one of 4 mm does not, a ball
     * stays off its border.
     */
    @Test
    void reachOfTheRackInADraftedPocket() {
        TriMesh half = new DraftedPocket(30, 20, 3, 5, Math.toRadians(2), 4).mesh(24);
        TopSurface surface = TopSurface.of(half, 0.1, 15);
        var rack = CutterRack.standard();
        List<Reach> table = Reach.table(
                surface,
                List.of(
                        new MountedCutter(rack.byId("flat-8.0x24"), 26, Holder.ER16),
                        new MountedCutter(rack.byId("flat-4.0x12"), 14, Holder.ER16),
                        new MountedCutter(rack.byId("ball-2.0x10"), 12, Holder.ER16),
                        new MountedCutter(rack.byId("taper-2deg-tip1"), 12, Holder.ER16)),
                0.01,
                Progress.SILENT);
        Reach.Part thick = table.get(0).part(SurfaceKind.FLOOR),
                fits = table.get(1).part(SurfaceKind.FLOOR);
        assertThat(fits.share()).isGreaterThan(0.999);
        assertThat(thick.share()).isLessThan(fits.share());
        // Machining handbook: pocket floor 29.650792 x 19.650792 with corners of 2.825396 is 575.8090 mm2; half a cell
        // along its border
        assertThat(fits.areaMm2()).isCloseTo(575.8090, within(94 * 0.05));
        Reach.Part ball = table.get(2).part(SurfaceKind.FLOOR);
        // a ball of 1 mm in the foot of a wall at 92 degrees touches the floor 1/tan(46 degrees) = 0.966 mm from it;
        // 0.01 mm is left 0.141 mm
        // nearer: the floor within is 28.0 x 18.0 of 29.65 x 19.65
        assertThat(ball.share()).isCloseTo(28.0 * 18.0 / 575.8, within(0.02));
        assertThat(table.get(3).below().share()).isGreaterThan(0.99);
        assertThat(table.get(3).below().deepestMm()).isLessThan(0.06);
    }

    /** Held up by its holder: a cutter that sticks out 3 mm less than the pocket is deep stops 3 mm above the floor. */
    @Test
    void theHolderHoldsItUp() {
        TriMesh half = new DraftedPocket(15, 12, 3, 16, Math.toRadians(1), 12).mesh(12);
        TopSurface surface = TopSurface.of(half, 0.2, 15);
        var cutter = CutterRack.standard().byId("flat-4.0x12");
        int middle =
                surface.grid().index(surface.grid().nx() / 2, surface.grid().ny() / 2);
        assertThat(LocationMap.of(surface, new MountedCutter(cutter, 13, Holder.ER16))
                        .tipMm(middle))
                .isCloseTo(-13f, within(1e-4f));
        assertThat(LocationMap.of(surface, new MountedCutter(cutter, 17, Holder.ER16))
                        .tipMm(middle))
                .isCloseTo(-16f, within(1e-4f));
    }

    /** A lid over a trough: 4 mm by 10 mm of it in plan lie under themselves, and nothing else does. */
    @Test
    void overhangsAreFound() {
        Region profile = Region.of(List.of(
                new Vec2(0, 0),
                new Vec2(20, 0),
                new Vec2(20, 8),
                new Vec2(8, 8),
                new Vec2(8, 6),
                new Vec2(12, 6),
                new Vec2(12, 3),
                new Vec2(4, 3),
                new Vec2(4, 8),
                new Vec2(0, 8)));
        TriMesh lying = Solids.prism(profile, 0, 10);
        TriMesh half = lying.transform(shotwright.geom.Transform.bringToZ(new Vec3(0, 1, 0)));
        List<Overhang> found = Overhang.in(half, Grid.around(half.box(), 0.1));
        assertThat(found).hasSize(1);
        assertThat(found.getFirst().areaMm2()).isCloseTo(40, within(2.1));
        assertThat(found.getFirst().upperMm() - found.getFirst().lowerMm()).isCloseTo(3, within(1e-5));
        TriMesh open = DraftedPocket.NOTE.mesh(8);
        assertThat(Overhang.in(open, Grid.around(open.box(), 0.2))).isEmpty();
    }

    /** What shows from above, against the columns of the same mesh. */
    @Test
    void topSurfaceAgreesWithColumns() {
        TriMesh half = DraftedPocket.NOTE.mesh(12, 6, s -> 3 * (1 - s * s));
        Grid grid = Grid.around(half.box(), 0.17);
        TopSurface top = TopSurface.of(half, grid);
        float[] upper = shotwright.mesh.HeightMap.of(half, grid).upper(Float.NEGATIVE_INFINITY);
        for (int i = 0; i < upper.length; i++)
            if (upper[i] > -99) assertThat(top.heightMm(i)).isCloseTo(upper[i], within(2e-6f));
    }
}
