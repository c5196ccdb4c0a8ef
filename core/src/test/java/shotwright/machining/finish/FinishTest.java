package shotwright.machining.finish;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.BitSet;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.GeometryFactory;
import shotwright.cutter.CutterProfile;
import shotwright.geom.Vec2;
import shotwright.geom.Vec3;
import shotwright.machining.DraftedPocket;
import shotwright.machining.contact.DropCutter;
import shotwright.machining.contact.EdgeContact;
import shotwright.machining.contact.ExactPath;
import shotwright.machining.contact.LocationMap;
import shotwright.machining.contact.TopSurface;
import shotwright.machining.contact.TriangleTree;
import shotwright.machining.contour.Contour;
import shotwright.machining.contour.LevelContour;
import shotwright.machining.contour.MeshSlice;
import shotwright.machining.feed.Cusp;
import shotwright.machining.path.Feed;
import shotwright.machining.path.Line;
import shotwright.machining.path.Move;
import shotwright.mesh.Grid;
import shotwright.mesh.Solids;
import shotwright.mesh.TriMesh;
import shotwright.progress.Progress;
import shotwright.region.Region;

class FinishTest {
    /** Machining handbook, cusp geometry: printed values of closed forms, and two cutter makers' printed examples. */
    @Test
    void cusps() {
        assertThat(Cusp.ofBallMm(3, 0.5)).isCloseTo(0.010435, within(5e-7));
        assertThat(Cusp.ofBallMm(5, 0.5)).isCloseTo(0.006254, within(5e-7));
        assertThat(Cusp.stepOfBallMm(3, 0.005)).isCloseTo(0.346, within(5e-4));
        assertThat(Cusp.stepOfBallMm(1.5, 0.002)).isCloseTo(0.1548, within(1e-4));
        assertThat(Cusp.stepOnCurveMm(1.5, 0.002, -20)).isCloseTo(0.1611, within(5e-5));
        assertThat(Cusp.downStepOfFlatMm(0.003490, Math.toRadians(2))).isCloseTo(0.1, within(1e-5));
        assertThat(Cusp.ofBallMm(3, Cusp.downStepMm(3, 0.003757, Math.toRadians(88)) / Math.cos(Math.toRadians(2))))
                .isCloseTo(0.003757, within(1e-12));
        Random random = new Random(1);
        for (int i = 0; i < 100; i++) {
            double r = 0.2 + 3 * random.nextDouble(), h = r * random.nextDouble();
            assertThat(Cusp.ofBallMm(r, Cusp.stepOfBallMm(r, h))).isCloseTo(h, within(1e-12 * (1 + r)));
        }
        assertThatThrownBy(() -> Cusp.stepOnCurveMm(3, 0.002, -2)).hasMessageContaining("smaller one");
    }

    /** On a plane, level or leaning: the longest over-estimate is 1/cos of half the widest angle between directions less one. */
    @ParameterizedTest
    @CsvSource({"8, 8.3", "16, 2.8", "32, 1.4"})
    void distanceAlongAPlane(int directions, double mostPercent) {
        Grid grid = new Grid(0, 0, 0.1, 161, 161);
        BitSet all = new BitSet(), seed = new BitSet();
        all.set(0, grid.count());
        seed.set(grid.index(80, 80));
        float[] level = new float[grid.count()];
        float[] d = SurfaceDistance.from(grid, level, all, seed, directions);
        double worst = 0;
        for (int c = 0; c < d.length; c++) {
            double true2 = 0.1 * Math.hypot(c % 161 - 80, c / 161 - 80);
            assertThat(d[c]).isGreaterThanOrEqualTo((float) true2 - 1e-4f);
            if (true2 > 1) worst = Math.max(worst, d[c] / true2 - 1);
        }
        assertThat(100 * worst).isBetween(0.9 * mostPercent, mostPercent);
    }

    private static final double RHO = 20;
    /** How far the facets' chords stand into the hollow: (2·π·13.1/720)²/(8·20). */
    private static final double MESH_MM = 8e-5;

    /** A hollow of radius 20 about the origin, its lowest point at −20, over the ring where it leans by 14° to 41°. */
    private static TriMesh hollow() {
        Solids.Soup soup = new Solids.Soup();
        int round = 720, out = 120;
        for (int i = 0; i < out; i++)
            for (int j = 0; j < round; j++) soup.quad(at(i, j), at(i + 1, j), at(i + 1, j + 1), at(i, j + 1));
        return soup.mesh();
    }

    private static Vec3 at(int i, int j) {
        double lean = Math.toRadians(14 + 27.0 * i / 120), turn = 2 * Math.PI * j / 720, r = RHO * Math.sin(lean);
        return new Vec3(r * Math.cos(turn), r * Math.sin(turn), -RHO * Math.cos(lean));
    }

    private static final TriMesh HOLLOW = hollow();
    private static final CutterProfile BALL = CutterProfile.ball(1.5);

    /** What the paths leave at a place, along the normal of the sphere. */
    private static double left(List<List<Vec3>> paths, double x, double y) {
        double low = Double.POSITIVE_INFINITY;
        for (List<Vec3> path : paths)
            for (int i = 1; i < path.size(); i++) {
                Vec3 a = path.get(i - 1), b = path.get(i);
                if (Math.min(a.x(), b.x()) > x + 1.5 || Math.max(a.x(), b.x()) < x - 1.5) continue;
                if (Math.min(a.y(), b.y()) > y + 1.5 || Math.max(a.y(), b.y()) < y - 1.5) continue;
                low = Math.min(low, EdgeContact.leftMm(BALL, a.x(), a.y(), a.z(), b.x(), b.y(), b.z(), x, y));
            }
        return RHO - Math.sqrt(x * x + y * y + low * low);
    }

    private static double length(List<List<Vec3>> paths) {
        double sum = 0;
        for (List<Vec3> p : paths)
            for (int i = 1; i < p.size(); i++) sum += p.get(i - 1).distance(p.get(i));
        return sum;
    }

    /**
     * Closed form: in a hollow of radius 20 a ball of 1.5 leaves 0.002 at a step of 0.1611. Rings over sixteen directions leave no more, and
     * are as long as area over step, 2·π·20²·(cos 18° − cos 37°)/(0.1611·0.973), give or take two rings: one at the border, one where the
     * fronts meet.
     */
    @Test
    void ringsOfOneCusp() {
        TopSurface surface = TopSurface.of(HOLLOW, 0.05, 0.2);
        Grid g = surface.grid();
        BitSet zone = new BitSet();
        double inner = RHO * Math.sin(Math.toRadians(18)), outer = RHO * Math.sin(Math.toRadians(37));
        for (int c = 0; c < g.count(); c++) {
            double r = Math.hypot(g.x(c % g.nx()), g.y(c / g.nx()));
            if (r >= inner && r <= outer) zone.set(c);
        }
        double step = Cusp.stepOnCurveMm(1.5, 0.002, -RHO);
        ExactPath exact = new ExactPath(new DropCutter(TriangleTree.of(HOLLOW), BALL), 0.0001, 0.2);
        List<List<Vec3>> paths = new ArrayList<>();
        for (Contour c : CuspRings.lines(surface, zone, BALL, step)) {
            List<Vec2> line = new ArrayList<>(c.points());
            if (c.closed()) line.add(c.points().getFirst());
            paths.add(exact.thinned(line));
        }
        double area = 2 * Math.PI * RHO * RHO * (Math.cos(Math.toRadians(18)) - Math.cos(Math.toRadians(37)));
        // the tip runs a radius nearer to the sphere's centre than the touch: shorter by (20 - 1.5)/20
        double expected = area / (step * 0.973) * (RHO - 1.5) / RHO;
        assertThat(length(paths)).isCloseTo(expected, within(2 * 2 * Math.PI * outer));
        Random random = new Random(3);
        double worst = 0, deepest = 0;
        for (int k = 0; k < 1500; k++) {
            double r = inner + 0.4 + (outer - inner - 0.8) * random.nextDouble(), t = 2 * Math.PI * random.nextDouble();
            double over = left(paths, r * Math.cos(t), r * Math.sin(t));
            worst = Math.max(worst, over);
            deepest = Math.min(deepest, over);
        }
        assertThat(worst).isLessThanOrEqualTo(0.002 + MESH_MM);
        assertThat(deepest).isGreaterThan(-0.002);
    }

    /** The same hollow by lines with a step of their own each: no more than the cusp asked and a hundredth of it. */
    @Test
    void rasterOfOneCusp() {
        Region zone = Region.rectangle(new Vec2(6.5, -2), new Vec2(10.5, 2));
        double step = Cusp.tipStepMm(Cusp.stepOnCurveMm(1.5, 0.002, -RHO), 1.5, -RHO);
        ExactPath exact = new ExactPath(new DropCutter(TriangleTree.of(HOLLOW), BALL), 0.00001, 0.1);
        for (double turn : new double[] {0, Math.PI / 2, 0.6}) {
            List<List<Vec3>> paths = RasterLines.paths(zone, turn, step, exact);
            Random random = new Random(4);
            double worst = 0;
            for (int k = 0; k < 600; k++) {
                // where the tip is in the zone it touches 1.5·sin(lean) farther out
                double x = 8 + 2.5 * random.nextDouble(), y = 3 * random.nextDouble() - 1.5;
                worst = Math.max(worst, left(paths, x, y));
            }
            assertThat(worst).isLessThanOrEqualTo(0.00203 + MESH_MM);
            assertThat(worst).isGreaterThan(0.0008);
        }
    }

    /** The deepest the flank of a tapered cutter goes into the pocket's wall along its normal, in closed form at nine heights. */
    private static double deepest(List<List<Feed>> loops, CutterProfile cutter, double floorZ) {
        double worst = Double.POSITIVE_INFINITY;
        for (List<Feed> loop : loops)
            for (Feed m : loop)
                for (int k = 0; k <= 30; k++) {
                    Vec3 p = m.at(k / 30.0);
                    for (int h = 0; h <= 8; h++) {
                        double depth = -p.z() - (-floorZ) * h / 8.0;
                        if (depth < 0) continue;
                        double r = cutter.radiusAtMm(-p.z() - depth);
                        worst = Math.min(worst, DraftedPocket.NOTE.inside(p.x(), p.y(), depth, r));
                    }
                }
        return worst * Math.cos(Math.toRadians(2));
    }

    /** Measured before: no gouge with the wall's own angle; 0.1° too much on 8 mm cuts 0.0139 mm deep at the top. */
    @Test
    void wallByATaperedCutter() {
        DraftedPocket pocket = DraftedPocket.NOTE;
        Region solid = MeshSlice.at(pocket.mesh(400), -8 + 1e-6);
        Region floor = Region.rectangle(new Vec2(-34, -24), new Vec2(34, 24)).difference(solid);
        CutterProfile right = CutterProfile.tapered(0.5, Math.toRadians(2), 0.5 + 9 * Math.tan(Math.toRadians(2)));
        List<List<Feed>> loops = TaperWall.loops(floor, right, -8, 8, 8, 500);
        assertThat(loops).hasSize(1);
        assertThat(deepest(loops, right, -8)).isBetween(-1e-5, 0.002);
        CutterProfile wrong = CutterProfile.tapered(0.5, Math.toRadians(2.1), 0.5 + 9 * Math.tan(Math.toRadians(2.1)));
        assertThat(deepest(TaperWall.loops(floor, wrong, -8, 8, 8, 500), wrong, -8))
                .isCloseTo(-0.0139, within(0.0003));
        List<List<Feed>> stepped = TaperWall.loops(floor, right, -8, 8, 3, 500);
        assertThat(stepped).hasSize(3);
        assertThat(deepest(stepped, right, -8)).isBetween(-1e-5, 0.002);
        assertThat(stepped.getFirst().getFirst().from().z()).isCloseTo(-8 + 16.0 / 3, within(1e-9));
        for (List<Feed> loop : stepped) {
            Vec3 at = loop.getFirst().from();
            for (Feed m : loop) {
                assertThat(m.from().distance(at)).isLessThan(1e-9);
                at = m.to();
            }
        }
        assertThatThrownBy(() -> TaperWall.loops(floor, right, -12, 12, 3, 500)).hasMessageContaining("longer one");
    }

    /** Where the floor rises in the middle the tip rides on it: never below, and the wall is not cut. */
    @Test
    void wavyFloorLine() {
        TriMesh mesh = DraftedPocket.NOTE.mesh(24, 20, s -> 3 * (1 - s * s));
        CutterProfile taper = CutterProfile.tapered(0.5, Math.toRadians(2), 0.8);
        DropCutter drop = new DropCutter(TriangleTree.of(mesh), taper);
        Region floor = Region.rectangle(new Vec2(-34, -24), new Vec2(34, 24)).difference(MeshSlice.at(mesh, -8 + 1e-4));
        Region whole = Region.of(floor.pieces().getFirst().exteriors().getFirst());
        Contour ring = new Contour(whole.offset(-0.51).exteriors().getFirst(), true);
        List<Vec3> path = TaperWall.overWavyFloor(ring, new ExactPath(drop));
        for (Vec3 p : path) assertThat(p.z()).isCloseTo(drop.tipMm(p.x(), p.y()), within(1e-9));
        assertThat(path.stream().mapToDouble(Vec3::z).max().orElse(0)).isGreaterThan(-7.9);
    }

    /** Loops of a flat end down the drafted wall: each point keeps its radius off the wall at its depth, and the last lies on the floor. */
    @Test
    void waterline() {
        TriMesh mesh = DraftedPocket.NOTE.mesh(42);
        CutterProfile flat = CutterProfile.flat(1);
        TopSurface top = TopSurface.of(mesh, 0.1, 1.2);
        LevelContour contour = new LevelContour(new DropCutter(TriangleTree.of(mesh), flat), LocationMap.of(top, flat));
        Region mouth = Region.rectangle(new Vec2(-33, -23), new Vec2(33, 23));
        Waterline.Loops loops = Waterline.loops(contour, mouth, 0, -8, 0.5, Progress.SILENT);
        assertThat(loops.paths()).hasSize(16);
        assertThat(loops.splitCount()).isZero();
        for (List<Vec3> path : loops.paths()) {
            assertThat(path.getFirst()).isEqualTo(path.getLast());
            for (Vec3 p : path)
                assertThat(DraftedPocket.NOTE.inside(p.x(), p.y(), -p.z(), 1)).isBetween(-0.0002, 0.0012);
        }
        assertThat(loops.paths().getLast().getFirst().z()).isEqualTo(-8);
    }

    /** The rings of a level floor cover all of it but the strip left to the wall. */
    @Test
    void floorRings() {
        Region floor =
                Region.rectangle(new Vec2(0, 0), new Vec2(40, 25)).difference(Region.disc(new Vec2(14, 12), 4, 80));
        Region allowed = floor.offset(-2.0005, Region.Join.ROUND, 40);
        List<List<Vec3>> paths = FloorRings.paths(allowed, -3, 4);
        GeometryFactory factory = new GeometryFactory();
        Geometry swept = factory.createPolygon();
        for (List<Vec3> p : paths) {
            assertThat(p).allMatch(q -> q.z() == -3 && allowed.distance(q.xy()) < 1e-9);
            Coordinate[] c = p.stream().map(q -> new Coordinate(q.x(), q.y())).toArray(Coordinate[]::new);
            swept = swept.union(factory.createLineString(c).buffer(2, 40));
        }
        Region round = allowed.offset(2 - 0.03, Region.Join.ROUND, 40);
        assertThat(round.difference(Region.of(swept)).area()).isLessThan(1e-3);
    }

    /** A pocket with corners of 3 mm after a cutter of 5 mm radius: four corners are left, no more. */
    @Test
    void restZones() {
        TriMesh half = new DraftedPocket(30, 20, 3, 5, Math.toRadians(2), 4).mesh(24);
        TopSurface surface = TopSurface.of(half, 0.05, 5);
        Region rest = RestZones.of(
                LocationMap.of(surface, CutterProfile.flat(5)), LocationMap.of(surface, CutterProfile.flat(1.5)), 0.02);
        assertThat(rest.pieces()).hasSize(4);
        for (Region piece : rest.pieces()) {
            Vec2 c = piece.centroid();
            assertThat(Math.abs(c.x())).isBetween(12.5, 15.0);
            assertThat(Math.abs(c.y())).isBetween(7.5, 10.0);
        }
        assertThat(RestZones.of(
                                LocationMap.of(surface, CutterProfile.flat(2)),
                                LocationMap.of(surface, CutterProfile.flat(1)),
                                0.02)
                        .isEmpty())
                .isTrue();
    }

    /** Lines joined over the surface: every move keeps to it, and what is too far apart lifts. */
    @Test
    void links() {
        TriMesh mesh = DraftedPocket.NOTE.mesh(24, 20, s -> 3 * (1 - s * s));
        DropCutter drop = new DropCutter(TriangleTree.of(mesh), BALL);
        ExactPath exact = new ExactPath(drop);
        Region zone = Region.rectangle(new Vec2(-20, -10), new Vec2(20, 10))
                .difference(Region.rectangle(new Vec2(-5, -4), new Vec2(5, 4)));
        Linking linking = new Linking(exact, 3, 3, 5, 800, 200);
        List<Move> moves = linking.chain(RasterLines.paths(zone, 0, 0.8, exact));
        assertThat(linking.downCount()).isGreaterThan(20);
        assertThat(linking.upCount()).isGreaterThan(5);
        Vec3 at = moves.getFirst().from();
        for (Move m : moves) {
            assertThat(m.from().distance(at)).isLessThan(1e-9);
            at = m.to();
            if (m instanceof Line l)
                for (int k = 0; k <= 4; k++) {
                    Vec3 p = l.at(k / 4.0);
                    assertThat(p.z()).isGreaterThan(drop.tipMm(p.x(), p.y()) - 0.0019);
                }
        }
    }
}
