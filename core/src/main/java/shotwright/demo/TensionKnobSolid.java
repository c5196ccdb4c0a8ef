package shotwright.demo;

import static shotwright.demo.TensionKnob.ARROW;
import static shotwright.demo.TensionKnob.ARROW_CORNER;
import static shotwright.demo.TensionKnob.ARROW_DEG;
import static shotwright.demo.TensionKnob.ARROW_FROM_DEG;
import static shotwright.demo.TensionKnob.ARROW_HALF;
import static shotwright.demo.TensionKnob.ARROW_NECK_DEG;
import static shotwright.demo.TensionKnob.ARROW_RADIUS;
import static shotwright.demo.TensionKnob.ARROW_TIP_DEG;
import static shotwright.demo.TensionKnob.ARROW_WIDE;
import static shotwright.demo.TensionKnob.BOSS;
import static shotwright.demo.TensionKnob.CONTOUR;
import static shotwright.demo.TensionKnob.DOME_FOOT;
import static shotwright.demo.TensionKnob.EDGE;
import static shotwright.demo.TensionKnob.FLATS;
import static shotwright.demo.TensionKnob.HEIGHT;
import static shotwright.demo.TensionKnob.HOLE;
import static shotwright.demo.TensionKnob.HOLE_DEG;
import static shotwright.demo.TensionKnob.INNER_DEG;
import static shotwright.demo.TensionKnob.LOBES;
import static shotwright.demo.TensionKnob.MOUTH;
import static shotwright.demo.TensionKnob.OUTERMOST;
import static shotwright.demo.TensionKnob.OUTER_DEG;
import static shotwright.demo.TensionKnob.PLATE;
import static shotwright.demo.TensionKnob.RIB;
import static shotwright.demo.TensionKnob.RIB_DEG;
import static shotwright.demo.TensionKnob.RIB_TIP;
import static shotwright.demo.TensionKnob.SEAT;
import static shotwright.demo.TensionKnob.SHOULDER;
import static shotwright.demo.TensionKnob.STEP;
import static shotwright.demo.TensionKnob.WALL;
import static shotwright.demo.TensionKnob.domeZ;

import java.util.ArrayList;
import java.util.List;
import shotwright.brep.ExactFailure;
import shotwright.brep.ExactShapes;
import shotwright.brep.Outline;
import shotwright.brep.Solid;
import shotwright.geom.Vec2;
import shotwright.geom.Vec3;

/** The tension knob with its true faces: planes, cones, round edges, a ball's cap. */
public final class TensionKnobSolid {
    /** Name in the STEP file. */
    public static final String NAME = "tension knob LK-207 rev C, Ostrander Looms (invented)";

    /** How far bodies that are taken away stand out of what they are taken from. */
    private static final double OUT = 1;

    private final ExactShapes x;

    private TensionKnobSolid(ExactShapes x) {
        this.x = x;
    }

    /** The knob as in {@link TensionKnob}, opening direction +z, hollow below, rim at z = 0. */
    public static Solid of(ExactShapes x) throws ExactFailure {
        return new TensionKnobSolid(x).solid();
    }

    private Solid solid() throws ExactFailure {
        Solid sharp = x.cut(List.of(lobed(0, OUTER_DEG, 0, HEIGHT + OUT)), List.of(above(0)))
                .getFirst();
        Vec3 edge = Rows.polar(OUTERMOST - SHOULDER * Rows.tanDeg(OUTER_DEG), 0).atZ(SHOULDER);
        Solid body = x.round(sharp, EDGE, List.of(edge));
        Solid outside = x.fuse(List.of(body), List.of(arrow())).getFirst();
        List<Solid> air = new ArrayList<>(hollow());
        air.add(frustum(0, MOUTH, STEP, MOUTH - STEP * Rows.tanDeg(INNER_DEG), OUT, 0));
        air.add(nut());
        return x.tidy(x.cut(List.of(outside), air).getFirst());
    }

    /** The contour with a wall that leans inward going up, between two heights. */
    private Solid lobed(double inwardMm, double draftDeg, double fromZ, double toZ) throws ExactFailure {
        double t = Rows.tanDeg(draftDeg);
        return x.loft(contour(inwardMm + fromZ * t, fromZ), contour(inwardMm + toZ * t, toZ));
    }

    private static Outline contour(double inwardMm, double z) {
        List<LobedContour.Arc> arcs = CONTOUR.arcs(inwardMm);
        Outline o = Outline.from(arcs.getFirst().from().atZ(z));
        for (LobedContour.Arc a : arcs) o.arc(a.over().atZ(z), a.to().atZ(z));
        return o;
    }

    /** The air over dome and shoulder, with the hole down to the nut, moved up. */
    private Solid above(double upMm) throws ExactFailure {
        double out = OUTERMOST + OUT, ceiling = HEIGHT + 3, low = SEAT - OUT + upMm;
        Vec3 lip = new Vec3(HOLE, 0, HEIGHT + upMm), foot = new Vec3(DOME_FOOT, 0, SHOULDER + upMm);
        double middle = (HOLE + DOME_FOOT) / 2, wide = HOLE + (HEIGHT - SEAT + OUT) * Rows.tanDeg(HOLE_DEG);
        return x.revolve(
                Outline.from(new Vec3(0, 0, low))
                        .line(new Vec3(wide, 0, low))
                        .line(lip)
                        .arc(new Vec3(middle, 0, domeZ(middle) + upMm), foot)
                        .line(new Vec3(out, 0, foot.z()))
                        .line(new Vec3(out, 0, ceiling))
                        .line(new Vec3(0, 0, ceiling))
                        .line(new Vec3(0, 0, low)),
                Vec3.ZERO,
                Vec3.Z);
    }

    /** A turned body between two heights, its taper going on beyond both. */
    private Solid frustum(double fromZ, double fromRadius, double toZ, double toRadius, double below, double over)
            throws ExactFailure {
        double lean = (toRadius - fromRadius) / (toZ - fromZ);
        double low = fromZ - below, high = toZ + over;
        return x.revolve(
                Outline.polygon(List.of(
                        new Vec3(0, 0, low),
                        new Vec3(fromRadius - lean * below, 0, low),
                        new Vec3(toRadius + lean * over, 0, high),
                        new Vec3(0, 0, high))),
                Vec3.ZERO,
                Vec3.Z);
    }

    private Solid nut() throws ExactFailure {
        double corner = FLATS / 2 / StrictMath.cos(Math.PI / 6);
        return x.prism(
                Outline.polygon(Rows.atZ(Rows.circle(corner, 6, 30), STEP - OUT)), new Vec3(0, 0, SEAT - STEP + OUT));
    }

    /** The air round the boss, without the ribs. */
    private List<Solid> hollow() throws ExactFailure {
        double t = Rows.tanDeg(INNER_DEG);
        List<Solid> metal = new ArrayList<>();
        metal.add(frustum(0, BOSS, PLATE, BOSS + PLATE * t, 2 * OUT, OUT));
        for (int k = 0; k < LOBES; k++) metal.add(rib(30 + 60.0 * k));
        return x.cut(List.of(lobed(WALL, INNER_DEG, -OUT, PLATE)), metal);
    }

    /** A rib from inside the boss to inside the wall, thinner toward its tip. */
    private Solid rib(double angleDeg) throws ExactFailure {
        double over = PLATE + OUT, tip = RIB / 2 - (PLATE - RIB_TIP) * Rows.tanDeg(RIB_DEG);
        double foot = RIB / 2 + OUT * Rows.tanDeg(RIB_DEG);
        return x.loft(bar(angleDeg, tip, RIB_TIP), bar(angleDeg, foot, over));
    }

    private static Outline bar(double angleDeg, double half, double z) {
        Vec2 along = Rows.polar(1, angleDeg), side = along.left().times(half);
        Vec2 in = along.times(BOSS - 2), out = along.times(OUTERMOST);
        return Outline.polygon(Rows.atZ(List.of(in.minus(side), out.minus(side), out.plus(side), in.plus(side)), z));
    }

    /** The raised arrow: a band round the middle and a three-cornered head, standing in the dome, as high above it everywhere. */
    private Solid arrow() throws ExactFailure {
        double low = HEIGHT - OUT, high = HEIGHT + ARROW + 0.05;
        Solid sharp = x.tidy(
                x.fuse(List.of(band(low, high)), List.of(head(low, high))).getFirst());
        double z = domeZ(ARROW_RADIUS);
        List<Vec3> corners = new ArrayList<>(Rows.atZ(headCorners(), z));
        corners.add(Rows.polar(ARROW_RADIUS - ARROW_HALF, ARROW_FROM_DEG).atZ(z));
        corners.add(Rows.polar(ARROW_RADIUS + ARROW_HALF, ARROW_FROM_DEG).atZ(z));
        Solid raw = x.round(sharp, ARROW_CORNER, corners);
        return x.cut(List.of(raw), List.of(above(ARROW))).getFirst();
    }

    /** How far the arrow's walls have leant inward at a height; their outline holds on the dome. */
    private static double inward(double z) {
        return (z - domeZ(ARROW_RADIUS)) * Rows.tanDeg(ARROW_DEG);
    }

    private Solid band(double low, double high) throws ExactFailure {
        double r = ARROW_RADIUS, half = ARROW_HALF;
        Solid ring = x.revolve(
                Outline.polygon(List.of(
                        new Vec3(r - half + inward(low), 0, low),
                        new Vec3(r + half - inward(low), 0, low),
                        new Vec3(r + half - inward(high), 0, high),
                        new Vec3(r - half + inward(high), 0, high))),
                Vec3.ZERO,
                Vec3.Z);
        Solid wedge = x.loft(sector(low - OUT), sector(high + OUT));
        return x.common(List.of(ring), List.of(wedge)).getFirst();
    }

    /** The part of the plane from the arrow's tail on, moved inward there, to the middle of its head. */
    private static Outline sector(double z) {
        double from = ARROW_FROM_DEG, to = (ARROW_NECK_DEG + ARROW_TIP_DEG) / 2;
        Vec2 tail = Rows.polar(1, from), in = tail.left().times(inward(z));
        Vec2 middle = Rows.polar(20, (from + to) / 2);
        return Outline.polygon(Rows.atZ(
                List.of(tail.times(5).plus(in), tail.times(20).plus(in), middle, Rows.polar(20, to), Rows.polar(5, to)),
                z));
    }

    private Solid head(double low, double high) throws ExactFailure {
        List<Vec3> corners = new ArrayList<>(Rows.atZ(Rows.inward(headCorners(), inward(low)), low));
        corners.addAll(Rows.atZ(Rows.inward(headCorners(), inward(high)), high));
        return x.polyhedron(
                corners,
                List.of(
                        new int[] {2, 1, 0},
                        new int[] {3, 4, 5},
                        new int[] {0, 1, 4, 3},
                        new int[] {1, 2, 5, 4},
                        new int[] {2, 0, 3, 5}));
    }

    /** On the dome, counter-clockwise. */
    private static List<Vec2> headCorners() {
        return List.of(
                Rows.polar(ARROW_RADIUS - ARROW_WIDE, ARROW_NECK_DEG),
                Rows.polar(ARROW_RADIUS + ARROW_WIDE, ARROW_NECK_DEG),
                Rows.polar(ARROW_RADIUS, ARROW_TIP_DEG));
    }
}
