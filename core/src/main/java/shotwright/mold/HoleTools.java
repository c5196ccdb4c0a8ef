package shotwright.mold;

import java.util.ArrayList;
import java.util.List;
import shotwright.geom.Vec2;
import shotwright.geom.Vec3;
import shotwright.layout.Block;
import shotwright.layout.DowelPlace;
import shotwright.layout.Half;
import shotwright.layout.LayoutResult;
import shotwright.layout.PinPlace;
import shotwright.layout.PryRelief;
import shotwright.layout.ScrewPlace;
import shotwright.mesh.TriMesh;

/** Holes and pockets of the mold: dowels, screws, pins, pry pockets. */
final class HoleTools {
    private static final double INTO_PART_MM = 0.2;

    private final Block block;
    private final double mouthMm;
    private final List<ConvexTool> tools = new ArrayList<>();

    private HoleTools(Block block, double mouthMm) {
        this.block = block;
        this.mouthMm = mouthMm;
    }

    /**
     * All holes and pockets.
     *
     * @param stepMm how far the parting surface leaves its plane anywhere; holes reach beyond it
     * @param parts the parts in the mold frame, to find where a pin meets them
     */
    static List<ConvexTool> of(LayoutResult layout, double stepMm, List<TriMesh> parts) {
        HoleTools t = new HoleTools(layout.block(), stepMm + ChannelShape.STAND_OUT_MM);
        for (int i = 0; i < layout.dowels().size(); i++)
            t.dowel("dowel " + (i + 1), layout.dowels().get(i));
        for (int i = 0; i < layout.screws().size(); i++)
            t.screw("screw " + (i + 1), layout.screws().get(i));
        t.pryPockets(layout.pry());
        List<PinPlace> pins = layout.release().pins();
        for (int i = 0; i < pins.size(); i++) t.pin("pin " + (i + 1), pins.get(i), parts);
        return t.tools;
    }

    /** The pockets to open the mold. */
    static List<ConvexTool> pockets(LayoutResult layout) {
        HoleTools t = new HoleTools(layout.block(), ChannelShape.STAND_OUT_MM);
        t.pryPockets(layout.pry());
        return t.tools;
    }

    private void pryPockets(List<PryRelief> pockets) {
        for (int i = 0; i < pockets.size(); i++) pry("pry pocket " + (i + 1), pockets.get(i));
    }

    /** The exact circle behind a bored shape; a feed's smaller end may be its mouth. */
    static ExactCircle circle(String name, Purpose use, Half half, RoundShape s) {
        return new ExactCircle(
                name,
                use,
                half,
                s.fromMm(),
                s.toMm().minus(s.fromMm()).unit(),
                2 * s.fromRadiusMm(),
                2 * s.toRadiusMm(),
                s.fromMm().distance(s.toMm()));
    }

    private double thickness(Half half) {
        return half == Half.A ? block.thicknessAMm() : block.thicknessBMm();
    }

    private Vec3 in(Vec2 at, Half half, double depth) {
        return at.atZ(half.sign() * depth);
    }

    /** A hole from the parting surface into a half; a hole as deep as the half goes through. */
    private void fromParting(String name, Purpose use, Half half, Vec2 at, double diameter, double depth) {
        boolean through = depth >= thickness(half) - 1e-6;
        double deep = Math.min(depth, thickness(half));
        add(
                name,
                use,
                half,
                RoundShape.cylinder(
                        in(at, half, 0),
                        in(at, half, deep),
                        diameter,
                        mouthMm,
                        through ? ChannelShape.STAND_OUT_MM : 0));
    }

    /** A hole from the outer face of a half. */
    private void fromOutside(String name, Purpose use, Half half, Vec2 at, double diameter, double depth) {
        double face = thickness(half);
        add(
                name,
                use,
                half,
                RoundShape.cylinder(
                        in(at, half, face), in(at, half, face - depth), diameter, ChannelShape.STAND_OUT_MM, 0));
    }

    private void add(String name, Purpose use, Half half, RoundShape shape) {
        tools.add(new ConvexTool(name, use, half, shape, shape.volumeMm3(), List.of(circle(name, use, half, shape))));
    }

    private void dowel(String name, DowelPlace d) {
        fromParting(name + ", fixed", Purpose.DOWEL_HELD, d.holdHalf(), d.atMm(), d.holdHoleMm(), d.holdDepthMm());
        fromParting(
                name + ", sliding",
                Purpose.DOWEL_SLIDING,
                d.holdHalf().other(),
                d.atMm(),
                d.slipHoleMm(),
                d.slipDepthMm());
    }

    private void screw(String name, ScrewPlace s) {
        fromParting(
                name + ", clearance",
                Purpose.CLEARANCE,
                s.headHalf(),
                s.atMm(),
                s.clearanceMm(),
                thickness(s.headHalf()));
        if (s.counterboreDepthMm() > 0)
            fromOutside(
                    name + ", counterbore",
                    Purpose.COUNTERBORE,
                    s.headHalf(),
                    s.atMm(),
                    s.counterboreMm(),
                    s.counterboreDepthMm());
        if (s.threadDepthMm() > 0)
            fromParting(
                    name + ", thread",
                    Purpose.THREAD,
                    s.headHalf().other(),
                    s.atMm(),
                    s.threadDrillMm(),
                    s.threadDepthMm());
    }

    /** A box from the parting plane; where it reaches an edge of the block it stands out. */
    private void pry(String name, PryRelief p) {
        double y = (p.minMm().y() + p.maxMm().y()) / 2;
        Vec3 from = new Vec3(p.minMm().x(), y, 0), to = new Vec3(p.maxMm().x(), y, 0);
        double width = p.maxMm().y() - p.minMm().y();
        if (edge(p.minMm().y(), block.heightMm()) || edge(p.maxMm().y(), block.heightMm())) {
            double x = (p.minMm().x() + p.maxMm().x()) / 2;
            from = new Vec3(x, p.minMm().y(), 0);
            to = new Vec3(x, p.maxMm().y(), 0);
            width = p.maxMm().x() - p.minMm().x();
        }
        boolean first = edge(from.x(), block.widthMm()) || edge(from.y(), block.heightMm());
        boolean last = edge(to.x(), block.widthMm()) || edge(to.y(), block.heightMm());
        ChannelShape box = ChannelShape.box(
                p.half(),
                from,
                to,
                width,
                p.depthMm(),
                first ? ChannelShape.STAND_OUT_MM : 0,
                last ? ChannelShape.STAND_OUT_MM : 0);
        tools.add(new ConvexTool(name, Purpose.PRY_POCKET, p.half(), box, box.volumeMm3(), List.of()));
    }

    private static boolean edge(double at, double size) {
        return Math.abs(at) > size / 2 - 1e-6;
    }

    /** The fitted length below the cavity and the wider rest; without plastic at its place a pin goes through to the parting plane. */
    private void pin(String name, PinPlace p, List<TriMesh> parts) {
        double floor = depthOfPart(p, parts), face = thickness(p.half());
        if (Double.isNaN(floor)) {
            fromParting(name, Purpose.PIN, p.half(), p.atMm(), p.holeMm(), face);
            return;
        }
        Vec3 tip = in(p.atMm(), p.half(), floor - INTO_PART_MM), outside = in(p.atMm(), p.half(), face);
        RoundShape fitted = RoundShape.cylinder(outside, tip, p.holeMm(), ChannelShape.STAND_OUT_MM, 0);
        double gon = fitted.volumeMm3() / fitted.fromMm().distance(tip);
        tools.add(new ConvexTool(
                name,
                Purpose.PIN,
                p.half(),
                fitted,
                gon * (face - floor),
                List.of(circle(name, Purpose.PIN, p.half(), fitted))));
        double rest = face - floor - p.guideMm();
        if (rest > 0 && p.reliefMm() > p.holeMm())
            fromOutside(name + ", relief", Purpose.PIN_RELIEF, p.half(), p.atMm(), p.reliefMm(), rest);
    }

    /** How deep in its half the part reaches at a pin's place: the outermost facet over it; NaN where there is none. */
    private static double depthOfPart(PinPlace p, List<TriMesh> parts) {
        double best = Double.NaN, x = p.atMm().x(), y = p.atMm().y();
        for (TriMesh m : parts) {
            for (int f = 0; f < m.facetCount(); f++) {
                double z = heightAt(m, f, x, y) * p.half().sign();
                if (!Double.isNaN(z) && !(z <= best)) best = z;
            }
        }
        return best;
    }

    private static double heightAt(TriMesh m, int f, double x, double y) {
        Vec3 a = m.cornerPoint(f, 0),
                u = m.cornerPoint(f, 1).minus(a),
                v = m.cornerPoint(f, 2).minus(a);
        double det = u.x() * v.y() - u.y() * v.x(), px = x - a.x(), py = y - a.y();
        double s = (px * v.y() - py * v.x()) / det, t = (u.x() * py - u.y() * px) / det;
        return s >= 0 && t >= 0 && s + t <= 1 ? a.z() + s * u.z() + t * v.z() : Double.NaN;
    }
}
