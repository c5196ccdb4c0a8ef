package shotwright.demo;

import java.nio.ByteBuffer;
import java.nio.ByteOrder;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import shotwright.geom.Vec2;
import shotwright.geom.Vec3;
import shotwright.mesh.TriMesh;

/**
 * The knob that an invented loom maker, Ostrander Looms, wants 500 of: Ø35 × 14 with six lobes, hollow below, a centre boss for an M6 screw
 * and nut, six ribs, and a raised turning arrow on a slightly domed top. Made for a straight pull in two plates, parting line round the rim
 * at z = 0. It has faults a customer's part has: a nut pocket without draft, an inner wall and a boss with half a degree over 11.6, ribs with
 * a quarter of a degree, and a thick place where the boss meets the plate.
 */
public final class TensionKnob {
    /** Lobes, and points on the contour for each of them. */
    static final int LOBES = 6, PER_LOBE = 48;

    /** Contour at z = 0: radius over the lobes, in the hollows, and of a lobe. */
    static final double OUTERMOST = 17.5, INNERMOST = 15.1, LOBE = 6;

    static final LobedContour CONTOUR = LobedContour.of(LOBES, OUTERMOST, INNERMOST, LOBE);

    /** Heights from the rim: rib tips, step in the boss, nut seat, underside of the plate, top of the dome. */
    static final double RIB_TIP = 4.6, STEP = 5.0, SEAT = 10.5, PLATE = 11.6, HEIGHT = 14.0;

    /** Wall at the rim; radius of the dome and of its foot on the flat shoulder; round edge of the shoulder. */
    static final double WALL = 2.2, DOME = 360, DOME_FOOT = 13.2, EDGE = 1.2;

    static final double SHOULDER = domeZ(DOME_FOOT);

    /** Draft of the outer wall, inner wall and boss, ribs, hole, arrow. */
    static final double OUTER_DEG = 1, INNER_DEG = 0.5, RIB_DEG = 0.25, HOLE_DEG = 1, ARROW_DEG = 10;

    /** Radius of the boss at its end, of the hole at the top, of the round mouth; nut across flats; rib at its foot; arrow height. */
    static final double BOSS = 8.1, HOLE = 3.2, MOUTH = 5.95, FLATS = 10.1, RIB = 1.3, ARROW = 0.35;

    /** The arrow's middle line, half its band, half its head, its corners; where it begins, where the head begins and ends. */
    static final double ARROW_RADIUS = 9.6, ARROW_HALF = 0.5, ARROW_WIDE = 1.5, ARROW_CORNER = 0.4;

    static final double ARROW_FROM_DEG = 205, ARROW_NECK_DEG = 318, ARROW_TIP_DEG = 334;

    private static final int N = LOBES * PER_LOBE;
    private static final int EDGE_STEPS = 8;
    private static final int ARC = 24;
    private static final int ACROSS_RIB = 3;
    private static final int HOLE_SIDES = 72;

    private final DraftedSolid solid = new DraftedSolid();

    private TensionKnob() {}

    /** The knob, opening direction +z, hollow below, rim at z = 0. */
    public static TriMesh mesh() {
        TensionKnob k = new TensionKnob();
        int[] rim = k.outside();
        k.inside(rim);
        return k.solid.mesh();
    }

    /** The knob as binary STL in millimetres, byte for byte the file in {@code examples/parts}. */
    public static byte[] stl() {
        TriMesh m = mesh();
        ByteBuffer b = ByteBuffer.allocate(84 + 50 * m.facetCount()).order(ByteOrder.LITTLE_ENDIAN);
        b.put("tension knob LK-207 rev C, Ostrander Looms (invented), mm".getBytes(StandardCharsets.US_ASCII));
        b.position(80).putInt(m.facetCount());
        for (int f = 0; f < m.facetCount(); f++) {
            Vec3 n = m.doubleAreaNormal(f).unit();
            put(b, n);
            for (int c = 0; c < 3; c++) put(b, m.cornerPoint(f, c));
            b.putShort((short) 0);
        }
        return b.array();
    }

    private static void put(ByteBuffer b, Vec3 p) {
        b.putFloat((float) p.x()).putFloat((float) p.y()).putFloat((float) p.z());
    }

    /** Outer wall, rounded edge, dome with arrow and hole; gives the ring at the rim. */
    private int[] outside() {
        List<List<Vec3>> rows = new ArrayList<>();
        for (int k = 0; k <= EDGE_STEPS + 1; k++) rows.add(new ArrayList<>());
        for (int i = 0; i < N; i++) {
            double angle = 360.0 * i / N;
            List<Vec3> profile = profile(contour(angle), normal(angle));
            for (int k = 0; k < profile.size(); k++) rows.get(k).add(profile.get(k));
        }
        int[] rim = solid.ring(rows.getFirst());
        int[] below = rim;
        for (int k = 1; k < rows.size(); k++) {
            int[] above = solid.ring(rows.get(k));
            solid.wall(below, above);
            below = above;
        }
        top(below);
        return rim;
    }

    /** Points from the rim up the outer wall and round the edge, in the plane that stands on the contour. */
    private static List<Vec3> profile(Vec2 foot, Vec2 out) {
        double lean = StrictMath.toRadians(OUTER_DEG), centreZ = SHOULDER - EDGE;
        double centreIn = centreZ * Rows.tanDeg(OUTER_DEG) + EDGE / StrictMath.cos(lean);
        List<Vec3> row = new ArrayList<>();
        row.add(foot.atZ(0));
        for (int k = 0; k <= EDGE_STEPS; k++) {
            double a = lean + (Math.PI / 2 - lean) * k / EDGE_STEPS;
            Vec2 p = foot.minus(out.times(centreIn - EDGE * StrictMath.cos(a)));
            row.add(p.atZ(k == EDGE_STEPS ? SHOULDER : centreZ + EDGE * StrictMath.sin(a)));
        }
        return row;
    }

    private void top(int[] edge) {
        int[] foot = solid.ring(Rows.atZ(Rows.circle(DOME_FOOT, HOLE_SIDES, 0), SHOULDER));
        solid.floor(true, edge, List.of(foot), List.of());
        List<Vec2> band = arrow();
        List<Vec2> raised = Rows.inward(band, ARROW * Rows.tanDeg(ARROW_DEG));
        int[] low = solid.ring(onDome(band, 0)), high = solid.ring(onDome(raised, ARROW));
        solid.wall(low, high);
        solid.floor(true, high, List.of(), List.of());
        int[] hole = solid.ring(holeRow(HEIGHT, HOLE));
        int[] seat = solid.ring(holeRow(SEAT, HOLE + (HEIGHT - SEAT) * Rows.tanDeg(HOLE_DEG)));
        solid.wall(seat, hole);
        List<Vec2> between = new ArrayList<>();
        for (double r = HOLE + 1.2; r < DOME_FOOT - 0.6; r += 1.2) {
            int count = 12 * (int) Math.max(2, Math.round(r / 3));
            for (Vec2 p : Rows.circle(r, count, 180.0 / count)) {
                if (band.stream().allMatch(q -> q.distance(p) > 0.7)) between.add(p);
            }
        }
        solid.floor(true, foot, List.of(hole, low), onDome(between, 0));
        nutPocket(seat);
    }

    private static List<Vec3> holeRow(double z, double radius) {
        return Rows.atZ(Rows.circle(radius, HOLE_SIDES, 0), z).reversed();
    }

    /** A band along a circle with a head, corners rounded for a 0.6 cutter. */
    private static List<Vec2> arrow() {
        double radius = ARROW_RADIUS, half = ARROW_HALF, wide = ARROW_WIDE;
        double from = ARROW_FROM_DEG, neck = ARROW_NECK_DEG, tip = ARROW_TIP_DEG;
        List<Vec2> p = new ArrayList<>();
        int steps = 40;
        for (int i = 0; i <= steps; i++) p.add(Rows.polar(radius + half, from + (neck - from) * i / steps));
        p.add(Rows.polar(radius + wide, neck));
        p.add(Rows.polar(radius, tip));
        p.add(Rows.polar(radius - wide, neck));
        for (int i = steps; i >= 0; i--) p.add(Rows.polar(radius - half, from + (neck - from) * i / steps));
        double[] r = new double[p.size()];
        for (int corner : new int[] {0, steps + 1, steps + 2, steps + 3, p.size() - 1}) r[corner] = ARROW_CORNER;
        return Rows.rounded(p, r, 6);
    }

    private static List<Vec3> onDome(List<Vec2> row, double above) {
        return row.stream().map(p -> p.atZ(domeZ(p.length()) + above)).toList();
    }

    /** Height of the dome at a distance from the middle: a ball that passes the edge of the hole at full height. */
    static double domeZ(double radius) {
        return HEIGHT + StrictMath.sqrt(DOME * DOME - radius * radius) - StrictMath.sqrt(DOME * DOME - HOLE * HOLE);
    }

    /** Nut pocket and round mouth up to the ring at the seat; the boss joins at the mouth's lower ring. */
    private void nutPocket(int[] seat) {
        double corner = FLATS / 2 / StrictMath.cos(Math.PI / 6);
        List<Vec2> hex = Rows.circle(corner, 6, 30).reversed();
        int[] hexLow = solid.ring(Rows.atZ(hex, STEP)), hexHigh = solid.ring(Rows.atZ(hex, SEAT));
        solid.wall(hexLow, hexHigh);
        solid.floor(false, hexHigh, List.of(seat), List.of());
        double t = Rows.tanDeg(INNER_DEG);
        int[] mouth = solid.ring(Rows.atZ(Rows.circle(MOUTH, HOLE_SIDES, 0), 0).reversed());
        int[] step = solid.ring(
                Rows.atZ(Rows.circle(MOUTH - STEP * t, HOLE_SIDES, 0), STEP).reversed());
        solid.wall(mouth, step);
        solid.floor(false, step, List.of(hexLow), List.of());
        this.mouth = mouth;
    }

    private int[] mouth = new int[0];

    /** Inner wall, boss, ribs and the underside of the plate. */
    private void inside(int[] rim) {
        List<Vec3> wallLow = new ArrayList<>(), wallTip = new ArrayList<>();
        List<Vec3> bossLow = new ArrayList<>(), bossTip = new ArrayList<>();
        for (int chamber = 0; chamber < LOBES; chamber++) {
            for (double angle : wallAngles(chamber, RIB_TIP)) {
                wallLow.add(innerWall(angle, 0).atZ(0));
                wallTip.add(innerWall(angle, RIB_TIP).atZ(RIB_TIP));
            }
            for (double angle : bossAngles(chamber, RIB_TIP)) {
                bossLow.add(Rows.polar(bossRadius(0), angle).atZ(0));
                bossTip.add(Rows.polar(bossRadius(RIB_TIP), angle).atZ(RIB_TIP));
            }
        }
        int[] wall0 = solid.ring(wallLow), wall1 = solid.ring(wallTip);
        int[] boss0 = solid.ring(bossLow), boss1 = solid.ring(bossTip);
        solid.wall(reversed(wall0), reversed(wall1));
        solid.wall(boss0, boss1);
        solid.floor(false, rim, List.of(wall0), List.of());
        solid.floor(false, boss0, List.of(mouth), List.of());
        int span = ARC + ACROSS_RIB;
        for (int chamber = 0; chamber < LOBES; chamber++) {
            int first = chamber * span;
            int[] low = around(slice(wall1, first, ARC + 1), slice(boss1, first, ARC + 1));
            List<Vec3> outer = new ArrayList<>(), inner = new ArrayList<>();
            for (double a : chamberAngles(chamber, wallEnd(PLATE), ARC))
                outer.add(innerWall(a, PLATE).atZ(PLATE));
            for (double a : chamberAngles(chamber, bossEnd(PLATE), ARC))
                inner.add(Rows.polar(bossRadius(PLATE), a).atZ(PLATE));
            int[] high = around(solid.ring(outer), solid.ring(inner));
            solid.wall(low, high);
            solid.floor(false, high, List.of(), List.of());
            int rib = first + ARC;
            int[] tip = around(slice(wall1, rib, ACROSS_RIB + 1), slice(boss1, rib, ACROSS_RIB + 1));
            solid.floor(false, tip, List.of(), List.of());
        }
    }

    /** One way along the first row and back along the second: clockwise round the air of a chamber. */
    private static int[] around(int[] outer, int[] inner) {
        int[] r = new int[outer.length + inner.length];
        for (int i = 0; i < outer.length; i++) r[i] = outer[outer.length - 1 - i];
        System.arraycopy(inner, 0, r, outer.length, inner.length);
        return r;
    }

    private static int[] slice(int[] ring, int first, int count) {
        int[] s = new int[count];
        for (int i = 0; i < count; i++) s[i] = ring[(first + i) % ring.length];
        return s;
    }

    private static int[] reversed(int[] ring) {
        return slice(around(ring, new int[0]), 0, ring.length);
    }

    /** Angles along one chamber and across the rib after it, the next chamber's first angle left out. */
    private static double[] wallAngles(int chamber, double z) {
        return withRib(chamber, wallEnd(z));
    }

    private static double[] bossAngles(int chamber, double z) {
        return withRib(chamber, bossEnd(z));
    }

    private static double[] withRib(int chamber, double end) {
        double[] a = new double[ARC + ACROSS_RIB];
        System.arraycopy(chamberAngles(chamber, end, ARC), 0, a, 0, ARC + 1);
        double gap = 60 - 2 * end;
        for (int k = 1; k < ACROSS_RIB; k++) a[ARC + k] = 60.0 * chamber + end + gap * k / ACROSS_RIB;
        return a;
    }

    private static double[] chamberAngles(int chamber, double end, int steps) {
        double[] a = new double[steps + 1];
        for (int i = 0; i <= steps; i++) a[i] = 60.0 * chamber - end + 2 * end * i / steps;
        return a;
    }

    private static double ribHalf(double z) {
        return RIB / 2 - (PLATE - z) * Rows.tanDeg(RIB_DEG);
    }

    private static double bossRadius(double z) {
        return BOSS + z * Rows.tanDeg(INNER_DEG);
    }

    /** Angle from the middle of a lobe to where the boss meets the rib's side. */
    private static double bossEnd(double z) {
        return 30 - StrictMath.toDegrees(StrictMath.asin(ribHalf(z) / bossRadius(z)));
    }

    /** Contour angle from the middle of a lobe to where the inner wall meets the rib's side, by halving. */
    private static double wallEnd(double z) {
        Vec2 along = Rows.polar(1, 30);
        double lo = 20, hi = 30;
        for (int i = 0; i < 60; i++) {
            double mid = (lo + hi) / 2;
            if (innerWall(mid, z).cross(along) > ribHalf(z)) lo = mid;
            else hi = mid;
        }
        return (lo + hi) / 2;
    }

    private static Vec2 innerWall(double angleDeg, double z) {
        return contour(angleDeg).minus(normal(angleDeg).times(WALL + z * Rows.tanDeg(INNER_DEG)));
    }

    private static Vec2 contour(double angleDeg) {
        return CONTOUR.at(angleDeg);
    }

    private static Vec2 normal(double angleDeg) {
        return CONTOUR.normal(angleDeg);
    }
}
