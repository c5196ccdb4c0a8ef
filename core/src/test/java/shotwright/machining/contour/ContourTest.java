package shotwright.machining.contour;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import shotwright.cutter.CutterProfile;
import shotwright.geom.Vec2;
import shotwright.geom.Vec3;
import shotwright.machining.DraftedPocket;
import shotwright.machining.contact.DropCutter;
import shotwright.machining.contact.LocationMap;
import shotwright.machining.contact.TopSurface;
import shotwright.machining.contact.TriangleTree;
import shotwright.machining.path.Arc;
import shotwright.machining.path.Feed;
import shotwright.mesh.Solids;
import shotwright.mesh.TriMesh;
import shotwright.region.Region;

class ContourTest {
    /** Chords of the corners stray 0.0007 mm, as in the measured body. */
    private static final TriMesh POCKET = DraftedPocket.NOTE.mesh(42);

    private static LevelContour contours(TriMesh mesh, CutterProfile p, double pitch) {
        TopSurface top = TopSurface.of(mesh, pitch, p.largestRadiusMm() + 2 * pitch);
        return new LevelContour(new DropCutter(TriangleTree.of(mesh), p), LocationMap.of(top, p));
    }

    private static Contour inPocket(LevelContour.Level level) {
        return level.contours().stream()
                .filter(c -> c.points().getFirst().length() < 34)
                .max(Comparator.comparingDouble(Contour::areaMm2))
                .orElseThrow();
    }

    /**
     * Closed form: at depth 4 the centre of a 4 mm flat end keeps 2 mm inside four lines and four arcs. The exact contour lies within
     * −0.0008 … +0.0001 mm of it and takes nine moves, give or take two, whatever the pitch of the map.
     */
    @ParameterizedTest
    @ValueSource(doubles = {0.1, 0.05, 0.02})
    void draftedPocketAtHalfDepth(double pitch) {
        TriMesh mesh = pitch < 0.03 ? DraftedPocket.NOTE.mesh(42) : POCKET;
        LevelContour.Level level = contours(mesh, CutterProfile.flat(2), pitch).at(-4);
        assertThat(level.splitCount()).isZero();
        Contour c = inPocket(level);
        assertThat(c.closed()).isTrue();
        for (int i = 0; i < c.points().size(); i++) {
            Vec2 a = c.points().get(i), b = c.points().get((i + 1) % c.points().size());
            for (double t : new double[] {0, 0.25, 0.5, 0.75}) {
                Vec2 p = a.plus(b.minus(a).times(t));
                assertThat(DraftedPocket.NOTE.inside(p.x(), p.y(), 4, 2)).isBetween(-0.0001, 0.0016);
            }
            assertThat(DraftedPocket.NOTE.inside(a.x(), a.y(), 4, 2)).isBetween(-0.0001, 0.0008);
        }
        List<Feed> moves = new ArcFit(ArcFit.TOLERANCE_MM).moves(c, -4, 400);
        assertThat(moves.size()).isBetween(7, 11);
        assertThat(moves.getFirst().from()).isEqualTo(moves.getLast().to());
        for (Feed m : moves)
            for (int k = 0; k <= 50; k++) {
                Vec3 p = m.at(k / 50.0);
                assertThat(DraftedPocket.NOTE.inside(p.x(), p.y(), 4, 2)).isBetween(-0.002, 0.003);
            }
        assertThat(c.areaMm2()).isGreaterThan(0);
    }

    /** Ball and taper in the same pocket: on a plane wall of 88° the ball's centre stands r·cos 2° off the wall at its contact. */
    @Test
    void otherCutters() {
        double a = Math.toRadians(2), r = 2;
        Contour ball = inPocket(contours(POCKET, CutterProfile.ball(r), 0.1).at(-4));
        double off = r / Math.cos(a) - r * Math.tan(a);
        for (Vec2 p : ball.points())
            assertThat(DraftedPocket.NOTE.inside(p.x(), p.y(), 4, off)).isBetween(-0.0002, 0.0009);
        CutterProfile taper = CutterProfile.tapered(0.5, a, 0.9);
        Contour foot = inPocket(contours(POCKET, taper, 0.1).at(-8 + 1e-6));
        for (Vec2 p : foot.points())
            assertThat(DraftedPocket.NOTE.inside(p.x(), p.y(), 8, 0.5)).isBetween(-0.0002, 0.0009);
        assertThat(new ArcFit(ArcFit.TOLERANCE_MM).moves(ball, -4, 400).size()).isBetween(7, 11);
        assertThat(new ArcFit(ArcFit.TOLERANCE_MM).moves(foot, -8, 400).size()).isBetween(7, 11);
    }

    /** On rough ground, at seven places of every piece found: the cutter is free within 0.0012 mm beside or 0.001 mm above. */
    @ParameterizedTest
    @ValueSource(longs = {1, 2, 3})
    void neverInsideTheMetal(long seed) {
        Random random = new Random(seed);
        int n = 14;
        double[][] z = new double[n + 1][n + 1];
        for (double[] row : z) for (int i = 0; i <= n; i++) row[i] = -2 * random.nextDouble();
        Solids.Soup soup = new Solids.Soup();
        for (int i = 0; i < n; i++)
            for (int j = 0; j < n; j++)
                soup.quad(
                        new Vec3(i, j, z[i][j]), new Vec3(i + 1, j, z[i + 1][j]),
                        new Vec3(i + 1, j + 1, z[i + 1][j + 1]), new Vec3(i, j + 1, z[i][j + 1]));
        TriMesh mesh = soup.mesh();
        int found = 0;
        for (CutterProfile p :
                List.of(CutterProfile.flat(0.4), CutterProfile.ball(0.5), CutterProfile.bull(0.5, 0.2))) {
            LevelContour.Level level = contours(mesh, p, 0.1).at(-0.7);
            DropCutter drop = new DropCutter(TriangleTree.of(mesh), p);
            for (Contour c : level.contours())
                for (int i = c.closed() ? 0 : 1; i < c.points().size(); i++) {
                    Vec2
                            a =
                                    c.points()
                                            .get((i + c.points().size() - 1)
                                                    % c.points().size()),
                            b = c.points().get(i);
                    assertThat(drop.tipMm(b.x(), b.y())).isLessThanOrEqualTo(-0.7);
                    if (a.distance(b) < 0.002) continue;
                    Vec2 left = b.minus(a).unit().left();
                    for (double t : new double[] {0.1, 0.25, 0.4, 0.5, 0.6, 0.75, 0.9}) {
                        Vec2 q = a.plus(b.minus(a).times(t));
                        double least = Double.POSITIVE_INFINITY;
                        for (double s = 0; s <= 0.0012; s += 0.0002) {
                            Vec2 p2 = q.plus(left.times(s));
                            least = Math.min(least, drop.tipMm(p2.x(), p2.y()));
                        }
                        boolean beside = least <= -0.7 + 1e-9, over = drop.tipMm(q.x(), q.y()) <= -0.7 + 0.001;
                        assertThat(beside || over).isTrue();
                    }
                    found++;
                }
        }
        assertThat(found).isGreaterThan(300);
    }

    /** A level through saddles, where the line is not one: it is opened there instead of being looked for without end. */
    @Test
    void levelThroughSaddles() {
        int n = 60;
        Solids.Soup soup = new Solids.Soup();
        for (int i = 0; i < n; i++)
            for (int j = 0; j < n; j++) soup.quad(wave(i, j), wave(i + 1, j), wave(i + 1, j + 1), wave(i, j + 1));
        CutterProfile flat = CutterProfile.flat(3);
        LevelContour.Level level = contours(soup.mesh(), flat, 0.1).at(0);
        DropCutter drop = new DropCutter(TriangleTree.of(soup.mesh()), flat);
        assertThat(level.contours()).isNotEmpty();
        for (Contour c : level.contours())
            for (Vec2 p : c.points()) assertThat(drop.tipMm(p.x(), p.y())).isLessThanOrEqualTo(0);
    }

    private static Vec3 wave(int i, int j) {
        return new Vec3(i, j, 2 * Math.sin(0.35 * i) * Math.cos(0.3 * j));
    }

    /** Measured before with JTS alone: a square boss grown by 3 with 4, 8, 22, 40 chords to a quarter comes 2.9424 … 2.9994 near. */
    @ParameterizedTest
    @CsvSource({"4, 2.9424", "8, 2.9856", "22, 2.9981", "40, 2.9994"})
    void roundJoinsCutInside(int chords, double nearest) {
        Region boss = Region.rectangle(new Vec2(-20, -20), new Vec2(20, 20));
        assertThat(nearest(boss, boss.offset(3, Region.Join.ROUND, chords))).isCloseTo(nearest, within(1e-4));
        assertThat(nearest(boss, Offset.by(boss, 3))).isGreaterThanOrEqualTo(3 - 1e-9);
    }

    private static double nearest(Region from, Region offset) {
        double least = Double.POSITIVE_INFINITY;
        for (Contour c : Offset.borders(offset))
            for (int i = 0; i < c.points().size(); i++) {
                Vec2 a = c.points().get(i),
                        b = c.points().get((i + 1) % c.points().size());
                for (int k = 0; k < 20; k++)
                    least = Math.min(
                            least, from.borderDistance(a.plus(b.minus(a).times(k / 20.0))));
            }
        return least;
    }

    /** Handbook: a pocket of 40 × 40 and a cutter of radius 3 by steps of 3 makes six rings of 456.0 mm. */
    @Test
    void squareRings() {
        Region pocket = Region.rectangle(new Vec2(0, 0), new Vec2(40, 40));
        List<Region> rings = Offset.rings(pocket, 3, 3);
        assertThat(rings).hasSize(6);
        assertThat(rings.stream().mapToDouble(Region::perimeter).sum())
                .isCloseTo(456, within(6 * 8 * 6 * Offset.CHORD_MM));
    }

    /** Handbook property 6: whatever the outline, the offset keeps its distance everywhere, to a thousandth of it. */
    @ParameterizedTest
    @ValueSource(longs = {1, 2, 3, 4, 5, 6})
    void offsetsKeepTheirDistance(long seed) {
        Random random = new Random(seed);
        List<Vec2> ring = new ArrayList<>();
        for (int i = 0; i < 24; i++) {
            double r = 6 + 10 * random.nextDouble(), t = 2 * Math.PI * i / 24;
            ring.add(new Vec2(r * Math.cos(t), r * Math.sin(t)));
        }
        Region star = Region.of(ring);
        for (double d : new double[] {-1.5, -0.2, 0.2, 3}) {
            assertThat(nearest(star, Offset.by(star, d))).isGreaterThanOrEqualTo(Math.abs(d) * 0.999);
        }
    }

    /** Handbook property 9: lines and arcs stay within the tolerance of what they replace. */
    @ParameterizedTest
    @ValueSource(longs = {1, 2, 3, 4})
    void fittedMovesStayNear(long seed) {
        Random random = new Random(seed);
        double[] size = random.doubles(5, 0.2, 1).toArray();
        List<Vec2> line = new ArrayList<>();
        for (int i = 0; i < 900; i++) {
            double t = 2 * Math.PI * i / 900, r = 8;
            for (int k = 0; k < size.length; k++) r += size[k] * Math.sin((k + 2) * t + 3 * size[k]);
            line.add(new Vec2(r * Math.cos(t), r * Math.sin(t)));
        }
        Region shape = Region.of(line);
        List<Feed> moves = new ArcFit(0.005).moves(new Contour(line, true), 0, 100);
        assertThat(moves.size()).isLessThan(200);
        assertThat(moves.stream().anyMatch(m -> m instanceof Arc)).isTrue();
        Vec3 at = moves.getFirst().from();
        for (Feed m : moves) {
            assertThat(m.from()).isEqualTo(at);
            at = m.to();
            for (int k = 0; k <= 40; k++)
                assertThat(shape.borderDistance(m.at(k / 40.0).xy())).isLessThan(0.005 + 1e-9 + 0.0003);
        }
        assertThat(at).isEqualTo(moves.getFirst().from());
    }

    /** A slice of the pocket's block: the outline less the mouth moved inward, in closed form. */
    @Test
    void slice() {
        Region solid = MeshSlice.at(POCKET, -4 + 1e-4);
        double x = 4 * Math.tan(Math.toRadians(2)), r = 4 - x;
        double mouth = (60 - 2 * x) * (40 - 2 * x) - (4 - Math.PI) * r * r;
        assertThat(solid.area()).isCloseTo(68 * 48 - mouth, within(0.03));
        assertThat(solid.holes()).hasSize(1);
        assertThat(MeshSlice.at(POCKET, -9).area()).isCloseTo(68 * 48, within(1e-9));
        assertThat(MeshSlice.at(POCKET, 5).isEmpty()).isTrue();
    }

    /** Two ways to the same line: the exact contour of a flat end and the slice moved inward. */
    @Test
    void sliceAndContourAgree() {
        Region free = Region.rectangle(new Vec2(-34, -24), new Vec2(34, 24)).difference(MeshSlice.at(POCKET, -4));
        Region moved = Offset.by(free, -2);
        Contour exact = inPocket(contours(POCKET, CutterProfile.flat(2), 0.1).at(-4));
        for (Vec2 p : exact.points()) assertThat(moved.borderDistance(p)).isLessThan(0.001);
    }
}
