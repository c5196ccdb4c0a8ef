package shotwright.machining.workpiece;

import java.util.ArrayList;
import java.util.List;
import shotwright.geom.Box3;
import shotwright.geom.Transform;
import shotwright.geom.Vec3;
import shotwright.layout.Block;
import shotwright.layout.Half;
import shotwright.layout.LayoutResult;
import shotwright.mesh.TriMesh;
import shotwright.mold.ChannelShape;
import shotwright.mold.ConvexTool;
import shotwright.mold.ExactCircle;
import shotwright.mold.MoldHalf;
import shotwright.mold.MoldResult;
import shotwright.mold.RoundShape;
import shotwright.mold.Tools;

/**
 * A half under the spindle with its parting face up, in the frame of its parting-face setup: x from the stop on the left, y 0 at the fixed
 * jaw at the back, z 0 on the finished parting face. The fixed jaw holds the same side of the mold for both halves.
 *
 * @param half which half
 * @param toTable from the mold frame to the frame of the programs
 * @param finished the half as it shall be
 * @param plain the half before feed, vents and holes are cut
 * @param metal the block it is cut from, skin taken off
 * @param holes its round holes along the spindle
 * @param channels its channels
 */
public record Workpiece(
        Half half,
        Transform toTable,
        TriMesh finished,
        TriMesh plain,
        Box3 metal,
        List<Hole> holes,
        List<Channel> channels) {
    private static final double SAME_MM = 1e-6;

    public Workpiece {
        holes = List.copyOf(holes);
        channels = List.copyOf(channels);
    }

    /**
     * One half of a mold.
     *
     * @param turned true when the half's height in the mold, not its width, lies along x
     */
    public static Workpiece of(Half half, LayoutResult layout, MoldResult mold, boolean turned) {
        Block block = layout.block();
        Transform toTable = toTable(half, block, turned);
        MoldHalf h = half == Half.A ? mold.a() : mold.b();
        double thickness = half == Half.A ? block.thicknessAMm() : block.thicknessBMm();
        double rise = half == Half.A ? block.riseAMm() : block.riseBMm();
        double along = turned ? block.heightMm() : block.widthMm(),
                across = turned ? block.widthMm() : block.heightMm();
        Box3 metal = new Box3(new Vec3(0, -across, -thickness), new Vec3(along, 0, rise));
        List<Hole> holes = new ArrayList<>();
        for (ExactCircle c : mold.circles())
            if (c.half() == half && isAlongSpindle(c)) holes.add(hole(c, toTable, metal));
        List<Channel> channels = new ArrayList<>();
        for (ConvexTool t : Tools.channels(layout)) if (t.half() == half) addChannel(channels, t, toTable, metal);
        return new Workpiece(
                half, toTable, h.mesh().transform(toTable), h.plain().transform(toTable), metal, holes, channels);
    }

    /** B lies as it does in the mold; A is turned about the axis that runs across the jaws, so that it keeps its edge on the fixed one. */
    private static Transform toTable(Half half, Block block, boolean turned) {
        Transform up = half == Half.B ? Transform.IDENTITY : Transform.turn(turned ? Vec3.X : Vec3.Y, Math.PI);
        Transform level = turned ? up.then(Transform.turnZ(Math.PI / 2)) : up;
        double along = turned ? block.heightMm() : block.widthMm(),
                across = turned ? block.widthMm() : block.heightMm();
        return level.then(Transform.translate(new Vec3(along / 2, -across / 2, 0)));
    }

    private static boolean isAlongSpindle(ExactCircle c) {
        return Math.abs(c.axis().z()) > 1 - SAME_MM;
    }

    private static Hole hole(ExactCircle c, Transform toTable, Box3 metal) {
        Vec3 start = toTable.apply(c.centreMm());
        Vec3 end = toTable.apply(c.centreMm().plus(c.axis().times(c.depthMm())));
        double back = metal.min().z();
        boolean startsHigher = start.z() >= end.z();
        Vec3 high = startsHigher ? start : end, low = startsHigher ? end : start;
        boolean opensUp = high.z() > -SAME_MM, opensDown = low.z() < back + SAME_MM;
        boolean fromParting = opensUp && opensDown ? startsHigher : !opensDown;
        Vec3 mouth = fromParting ? high : low, inner = fromParting ? low : high;
        boolean mouthFirst = fromParting == startsHigher;
        return new Hole(
                c.name(),
                c.use(),
                mouth.xy(),
                fromParting,
                opensUp && opensDown,
                mouthFirst ? c.diameterMm() : c.endDiameterMm(),
                mouthFirst ? c.endDiameterMm() : c.diameterMm(),
                mouth.z(),
                inner.z());
    }

    private static void addChannel(List<Channel> all, ConvexTool t, Transform toTable, Box3 metal) {
        if (t.shape() instanceof ChannelShape s) {
            all.add(new Channel(
                    t.name(),
                    t.purpose(),
                    toTable.apply(s.fromMm()),
                    toTable.apply(s.toMm()),
                    false,
                    s.fromWidthMm(),
                    s.toWidthMm(),
                    s.fromDepthMm(),
                    s.toDepthMm(),
                    s.wallDraftDeg(),
                    atEdge(toTable.apply(s.fromMm()), metal),
                    atEdge(toTable.apply(s.toMm()), metal),
                    s.beforeMm(),
                    s.afterMm()));
        } else if (t.shape() instanceof RoundShape s && Math.abs(s.axis().z()) < SAME_MM) {
            all.add(new Channel(
                    t.name(),
                    t.purpose(),
                    toTable.apply(s.fromMm()),
                    toTable.apply(s.toMm()),
                    true,
                    2 * s.fromRadiusMm(),
                    2 * s.toRadiusMm(),
                    s.fromRadiusMm(),
                    s.toRadiusMm(),
                    0,
                    atEdge(toTable.apply(s.fromMm()), metal),
                    atEdge(toTable.apply(s.toMm()), metal),
                    s.beforeMm(),
                    s.afterMm()));
        }
    }

    private static boolean atEdge(Vec3 p, Box3 metal) {
        return p.x() < metal.min().x() + SAME_MM
                || p.x() > metal.max().x() - SAME_MM
                || p.y() < metal.min().y() + SAME_MM
                || p.y() > metal.max().y() - SAME_MM;
    }

    /** Thickness between back and parting face. */
    public double thicknessMm() {
        return -metal.min().z();
    }
}
