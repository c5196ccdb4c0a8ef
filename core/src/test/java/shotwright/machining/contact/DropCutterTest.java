package shotwright.machining.contact;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Random;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import shotwright.cutter.CutterProfile;
import shotwright.geom.Vec2;
import shotwright.geom.Vec3;
import shotwright.machining.DraftedPocket;
import shotwright.mesh.MassProperties;
import shotwright.mesh.Solids;
import shotwright.mesh.TriMesh;

class DropCutterTest {
    static final List<CutterProfile> CUTTERS = List.of(
            CutterProfile.flat(1.5),
            CutterProfile.ball(1.5),
            CutterProfile.bull(1.5, 0.4),
            CutterProfile.tapered(0.5, Math.toRadians(2), 0.8),
            CutterProfile.tapered(0.065, Math.toRadians(15), 1.5),
            CutterProfile.point(Math.toRadians(118), 1.5),
            new CutterProfile(0, 0.5, Math.toRadians(3), 1.2),
            new CutterProfile(0.3, 0.4, Math.toRadians(20), 1.4));

    private static double drop(TriMesh mesh, CutterProfile p, double x, double y) {
        return new DropCutter(TriangleTree.of(mesh), p).tipMm(x, y);
    }

    private static TriMesh plane(double slope) {
        Solids.Soup soup = new Solids.Soup();
        soup.quad(
                new Vec3(-20, -20, -20 * slope),
                new Vec3(20, -20, 20 * slope),
                new Vec3(20, 20, 20 * slope),
                new Vec3(-20, 20, -20 * slope));
        return soup.mesh();
    }

    /** Closed form r·(1/cos b − 1): 3 mm ball on 45° stands 1.242641 mm over the point under its axis. */
    @Test
    void ballOnAPlane() {
        assertThat(drop(plane(1), CutterProfile.ball(3), 0.3, 0.1) - 0.3).isCloseTo(1.242641, within(1e-6));
        double steep = Math.tan(Math.toRadians(80));
        double closed = 3 * (1 / Math.cos(Math.toRadians(80)) - 1);
        assertThat(drop(plane(steep), CutterProfile.ball(3), 0, 0)).isCloseTo(closed, within(1e-9));
    }

    /** Closed forms on a plane of slope m: flat r·m; bull r₀·m + r_c·(√(1+m²) − 1); cone steeper than the plane r_t·m. */
    @Test
    void othersOnAPlane() {
        assertThat(drop(plane(0.7), CutterProfile.flat(2), 0, 0)).isCloseTo(1.4, within(1e-9));
        assertThat(drop(plane(0.7), CutterProfile.bull(3, 1), 0, 0)).isCloseTo(1.4 + Math.sqrt(1.49) - 1, within(1e-9));
        CutterProfile taper = CutterProfile.tapered(0.5, Math.toRadians(15), 2);
        assertThat(drop(plane(0.7), taper, 0, 0)).isCloseTo(0.35, within(1e-9));
        double flank = 1.5 / Math.tan(Math.toRadians(15));
        assertThat(drop(plane(5), taper, 0, 0)).isCloseTo(5 * 2 - flank, within(1e-9));
    }

    private static TriMesh sphere(double radius, boolean hollow) {
        Solids.Soup soup = new Solids.Soup();
        int round = 720, up = 180;
        for (int i = 0; i < up; i++)
            for (int j = 0; j < round; j++) {
                Vec3 a = onSphere(radius, i, j, up, round, hollow), b = onSphere(radius, i, j + 1, up, round, hollow);
                Vec3 c = onSphere(radius, i + 1, j + 1, up, round, hollow),
                        d = onSphere(radius, i + 1, j, up, round, hollow);
                soup.quad(a, b, c, d);
            }
        return soup.mesh();
    }

    private static Vec3 onSphere(double radius, int i, int j, int up, int round, boolean hollow) {
        double lift = Math.PI / 2 * i / up, turn = 2 * Math.PI * j / round, z = radius * Math.sin(lift);
        return new Vec3(
                radius * Math.cos(lift) * Math.cos(turn), radius * Math.cos(lift) * Math.sin(turn), hollow ? -z : z);
    }

    /** Hwang and Chang's test bodies in closed form: ball r on a sphere S at q off its axis √((S+r)² − q²) − r; in a hollow −√((S−r)² − q²) − r. */
    @Test
    void ballOnAndInASphere() {
        TriMesh ball = sphere(5, false), bowl = sphere(5, true);
        CutterProfile r3 = CutterProfile.ball(3);
        assertThat(drop(ball, r3, 0, 0)).isCloseTo(5, within(1e-9));
        assertThat(drop(ball, r3, 2, 1)).isCloseTo(Math.sqrt(64 - 5) - 3, within(3e-4));
        assertThat(drop(bowl, r3, 1, 0)).isCloseTo(-4.73205, within(3e-4));
    }

    /** A ball of radius r over a 90° groove stops r·0.41421 above its bottom. */
    @Test
    void ballInAGroove() {
        Solids.Soup soup = new Solids.Soup();
        soup.quad(new Vec3(-9, -9, 9), new Vec3(0, -9, 0), new Vec3(0, 9, 0), new Vec3(-9, 9, 9));
        soup.quad(new Vec3(0, -9, 0), new Vec3(9, -9, 9), new Vec3(9, 9, 9), new Vec3(0, 9, 0));
        assertThat(drop(soup.mesh(), CutterProfile.ball(2), 0, 0.3)).isCloseTo(2 * 0.41421, within(1e-5));
    }

    /** Beside and over a box: what only its edges and corners carry. */
    @Test
    void onTheEdgesOfABox() {
        TriMesh box = Solids.box(new Vec3(0, 0, -5), new Vec3(10, 10, 0));
        CutterProfile ball = CutterProfile.ball(2);
        double overEdge = Math.sqrt(4 - 1) - 2;
        assertThat(drop(box, ball, -1, 5)).isCloseTo(overEdge, within(1e-12));
        assertThat(drop(box, ball, -Math.sqrt(0.5), -Math.sqrt(0.5))).isCloseTo(overEdge, within(1e-12));
        assertThat(drop(box, CutterProfile.flat(2), -1.9, 5)).isZero();
        assertThat(drop(box, CutterProfile.flat(2), -2.1, 5)).isEqualTo(Double.NEGATIVE_INFINITY);
        DropCutter floor = new DropCutter(TriangleTree.of(box), ball, -4);
        assertThat(floor.tipMm(-2.1, 5)).isEqualTo(-4);
        assertThatThrownBy(() -> TriangleTree.of(plane(1).flip())).hasMessageContaining("turn it over");
    }

    /** A rough landscape over a lattice whose points are pushed about. */
    static TriMesh rough(long seed, int n, double cell, double height) {
        Random random = new Random(seed);
        Vec3[][] p = new Vec3[n + 1][n + 1];
        for (int i = 0; i <= n; i++)
            for (int j = 0; j <= n; j++)
                p[i][j] = new Vec3(
                        cell * (i + 0.3 * (random.nextDouble() - 0.5)),
                        cell * (j + 0.3 * (random.nextDouble() - 0.5)),
                        height * random.nextDouble());
        Solids.Soup soup = new Solids.Soup();
        for (int i = 0; i < n; i++)
            for (int j = 0; j < n; j++) {
                if (random.nextBoolean()) soup.quad(p[i][j], p[i + 1][j], p[i + 1][j + 1], p[i][j + 1]);
                else soup.quad(p[i + 1][j], p[i + 1][j + 1], p[i][j + 1], p[i][j]);
            }
        return soup.mesh();
    }

    /** Against the highest place of z − g over every facet, sought by nested trisection: that function is concave on a facet. */
    @ParameterizedTest
    @ValueSource(longs = {1, 2, 3})
    void agreesWithSearchingEveryFacet(long seed) {
        TriMesh mesh = rough(seed, 6, seed == 3 ? 0.25 : 0.9, seed == 2 ? 6 : 1.5);
        TriangleTree tree = TriangleTree.of(mesh);
        Random random = new Random(seed + 100);
        double side = mesh.box().max().x();
        for (CutterProfile p : CUTTERS) {
            DropCutter drop = new DropCutter(tree, p);
            DropCutter.Cursor cursor = new DropCutter.Cursor();
            for (int k = 0; k < 25; k++) {
                double x = side * random.nextDouble() * 1.2 - 0.1 * side,
                        y = side * random.nextDouble() * 1.2 - 0.1 * side;
                double exact = drop.tipMm(x, y, cursor), found = FacetSearch.highest(mesh, p, x, y);
                assertThat(exact).describedAs(p + " at " + x + "," + y).isCloseTo(found, within(2e-6));
                assertThat(drop.tipMm(x, y)).isEqualTo(exact);
            }
        }
    }

    /** The edge alone against 200 000 places along it: never lower, and hardly higher. */
    @Test
    void edgeContactIsTheHighestPlace() {
        Random random = new Random(5);
        for (int k = 0; k < 400; k++) {
            CutterProfile p = CUTTERS.get(k % CUTTERS.size());
            double[] e = random.doubles(6, -2, 2).toArray();
            if (k % 3 == 0) e[5] *= 20;
            double x = random.nextDouble() - 0.5, y = random.nextDouble() - 0.5, best = Double.NEGATIVE_INFINITY;
            for (int i = 0; i <= 20_000; i++) {
                double t = i / 20_000.0;
                double px = e[0] + t * (e[3] - e[0]), py = e[1] + t * (e[4] - e[1]), pz = e[2] + t * (e[5] - e[2]);
                best = Math.max(best, pz - p.heightMm(Math.hypot(px - x, py - y)));
            }
            double exact = EdgeContact.tipMm(p, e[0], e[1], e[2], e[3], e[4], e[5], x, y);
            if (best == Double.NEGATIVE_INFINITY) continue;
            assertThat(exact).isGreaterThanOrEqualTo(best - 1e-9);
            double stepMm = new Vec3(e[3] - e[0], e[4] - e[1], e[5] - e[2]).length() / 20_000;
            double steepest = p.halfAngleRad() == 0 ? 60 : p.coneSlope();
            assertThat(exact).isLessThanOrEqualTo(best + 0.02 + stepMm * steepest);
        }
    }

    /** The same upside down: a ball moved along a slope of b leaves a groove whose lowest line lies r·(1/cos b − 1) below the tip's. */
    @Test
    void surfaceLeftByASlopedMove() {
        double left = EdgeContact.leftMm(CutterProfile.ball(3), -10, 0, -10, 10, 0, 10, 0, 0);
        assertThat(left).isCloseTo(-1.242641, within(1e-6));
        assertThat(EdgeContact.leftMm(CutterProfile.flat(3), -10, 0, -10, 10, 0, 10, 0, 0))
                .isCloseTo(-3, within(1e-9));
        assertThat(EdgeContact.leftMm(CutterProfile.flat(3), -10, 0, 0, 10, 0, 0, 0, 3.1))
                .isInfinite();
    }

    /** On a drafted pocket a flat end stands at a depth exactly when its centre is its radius away from the outline at that depth. */
    @Test
    void flatEndInADraftedPocket() {
        DraftedPocket pocket = DraftedPocket.NOTE;
        DropCutter drop = new DropCutter(TriangleTree.of(pocket.mesh(48)), CutterProfile.flat(2));
        assertThat(MassProperties.of(new DraftedPocket(30, 20, 3, 5, Math.toRadians(2), 4).mesh(200))
                        .volumeMm3())
                .isCloseTo(38 * 28 * 7 - 2920.1286, within(0.02));
        int onWall = 0;
        for (double x = 26; x < 29; x += 0.013)
            for (double y = 13; y < 18; y += 0.37) {
                double tip = drop.tipMm(x, y), off = pocket.inside(x, y, -tip, 2);
                if (tip < -8 + 1e-9 || tip > -1e-9) continue;
                onWall++;
                assertThat(off).isBetween(-1e-6, 0.0008);
            }
        assertThat(onWall).isGreaterThan(50);
    }

    /** Many threads and one thread find the same. */
    @Test
    void threadsAgree() {
        DropCutter drop = new DropCutter(TriangleTree.of(rough(9, 40, 0.5, 2)), CutterProfile.bull(1.5, 0.4));
        double[] one = IntStream.range(0, 4000)
                .mapToDouble(i -> drop.tipMm(i % 80 * 0.25, i / 80 * 0.4))
                .toArray();
        double[] many = IntStream.range(0, 4000)
                .parallel()
                .mapToDouble(i -> drop.tipMm(i % 80 * 0.25, i / 80 * 0.4))
                .toArray();
        assertThat(many).isEqualTo(one);
    }

    /** Midpoints until the chord holds: checked at 40 places of every piece; a fixed 0.1 mm sampling gouges the wall's foot, as measured. */
    @Test
    void refinedPathHoldsItsChord() {
        TriMesh body = DraftedPocket.NOTE.mesh(16, 12, s -> 3 * (1 - s * s));
        DropCutter drop = new DropCutter(TriangleTree.of(body), CutterProfile.ball(1.5));
        ExactPath exact = new ExactPath(drop);
        List<Vec2> line = List.of(new Vec2(-33, 7.3), new Vec2(33, 7.9));
        assertThat(worstGouge(drop, exact.along(line))).isLessThan(0.001);
        assertThat(worstGouge(drop, exact.thinned(line))).isLessThan(0.0018);
        List<Vec3> fixed = IntStream.rangeClosed(0, 660)
                .mapToObj(i -> exact.seat(-33 + i * 0.1, 7.3 + i * 0.1 * 0.6 / 66))
                .toList();
        assertThat(worstGouge(drop, fixed)).isGreaterThan(0.008);
        assertThat(exact.thinned(line).size()).isLessThan(fixed.size());
    }

    /** How far a path lies from the nearest place where the cutter is free, looked for up and along the path. */
    private static double worstGouge(DropCutter drop, List<Vec3> path) {
        double worst = 0;
        for (int i = 1; i < path.size(); i++)
            for (int k = 1; k < 40; k++) {
                Vec3 p = path.get(i - 1).toward(path.get(i), k / 40.0);
                if (drop.tipMm(p.x(), p.y()) - p.z() > worst) worst = Math.max(worst, toFree(drop, p, path.get(i)));
            }
        return worst;
    }

    private static double toFree(DropCutter drop, Vec3 p, Vec3 ahead) {
        Vec3 along = new Vec3(ahead.x() - p.x(), ahead.y() - p.y(), 0);
        double nearest = drop.tipMm(p.x(), p.y()) - p.z();
        if (along.length() == 0) return nearest;
        for (int s = -200; s <= 200; s++) {
            Vec3 q = p.plus(along.unit().times(s * 1e-4));
            nearest = Math.min(nearest, Math.hypot(s * 1e-4, Math.max(0, drop.tipMm(q.x(), q.y()) - q.z())));
        }
        return nearest;
    }

    /** At an upright step the path rises beside it and never lies below the exact height. */
    @Test
    void uprightStep() {
        TriMesh box = Solids.box(new Vec3(0, 0, -5), new Vec3(10, 10, 0));
        DropCutter drop = new DropCutter(TriangleTree.of(box), CutterProfile.flat(1), -5);
        List<Vec3> path = new ExactPath(drop).along(List.of(new Vec2(-4, 5), new Vec2(4, 5)));
        assertThat(worstGouge(drop, path)).isLessThan(1e-9);
        assertThat(path.getFirst().z()).isEqualTo(-5);
        assertThat(path.getLast().z()).isZero();
    }
}
