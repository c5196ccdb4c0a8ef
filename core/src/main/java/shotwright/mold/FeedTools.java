package shotwright.mold;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import shotwright.geom.Vec3;
import shotwright.layout.Block;
import shotwright.layout.FeedSegment;
import shotwright.layout.FeedSegment.Kind;
import shotwright.layout.Half;
import shotwright.layout.Section.Shape;

/**
 * The pieces of the feed as cut-outs. Channels get the round ends their cutter leaves; a runner that meets a gate ends its cutter's radius before
 * it, and the gate is prolonged back into that round end.
 */
final class FeedTools {
    private static final double INCLINED = 0.3;

    private final List<FeedSegment> feed;
    private final Block block;
    private final List<ConvexTool> tools = new ArrayList<>();
    private final Set<String> ends = new HashSet<>();

    private FeedTools(List<FeedSegment> feed, Block block) {
        this.feed = feed;
        this.block = block;
    }

    static List<ConvexTool> of(List<FeedSegment> feed, Block block) {
        FeedTools t = new FeedTools(feed, block);
        for (FeedSegment s : feed) t.add(s);
        return t.tools;
    }

    private void add(FeedSegment s) {
        if (s.lengthMm() < 1e-9) return;
        Vec3 run = s.toMm().minus(s.fromMm());
        double level = Math.hypot(run.x(), run.y());
        if (Math.abs(run.z()) > INCLINED * level) standing(s);
        else if (s.kind() == Kind.GATE) gate(s);
        else lying(s);
    }

    private static Purpose purpose(FeedSegment s) {
        return switch (s.kind()) {
            case SPRUE -> Purpose.SPRUE;
            case RUNNER -> Purpose.RUNNER;
            case GATE -> Purpose.GATE;
            case COLD_SLUG, PULLER -> Purpose.WELL;
        };
    }

    private static String name(FeedSegment s) {
        String word =
                switch (s.kind()) {
                    case SPRUE -> "sprue";
                    case RUNNER -> "runner";
                    case GATE -> "gate";
                    case COLD_SLUG -> "cold slug well";
                    case PULLER -> "sprue puller";
                };
        return word + " " + s.number();
    }

    private void standing(FeedSegment s) {
        Half half = s.half() != null ? s.half() : s.fromMm().z() + s.toMm().z() >= 0 ? Half.A : Half.B;
        RoundShape shape = RoundShape.of(
                s.fromMm(), s.toMm(), s.from().widthMm(), s.to().widthMm(), opening(s.fromMm()), opening(s.toMm()));
        round(name(s), purpose(s), half, shape, shape.volumeMm3(), true);
    }

    /** A piece stands out where it opens: at the parting plane and at the block's faces. */
    private double opening(Vec3 end) {
        boolean open = Math.abs(end.z()) < 1e-6 || atFace(end);
        return open ? ChannelShape.STAND_OUT_MM : 0;
    }

    private boolean atFace(Vec3 p) {
        return Math.abs(p.x()) > block.widthMm() / 2 - 1e-6
                || Math.abs(p.y()) > block.heightMm() / 2 - 1e-6
                || p.z() > block.thicknessAMm() - 1e-6
                || p.z() < 1e-6 - block.thicknessBMm();
    }

    private void lying(FeedSegment s) {
        Vec3 along = s.toMm().minus(s.fromMm()).unit();
        boolean meetsGate = feed.stream().anyMatch(g -> g.kind() == Kind.GATE && g.parent() == s.number());
        double radius = s.to().widthMm() / 2;
        Vec3 to = meetsGate && s.lengthMm() > 1.5 * radius ? s.toMm().minus(along.times(radius)) : s.toMm();
        boolean fromFace = atFace(s.fromMm());
        for (Half half : s.half() == null ? Half.values() : new Half[] {s.half()}) {
            channel(s, name(s), half, s.fromMm(), to, fromFace ? ChannelShape.STAND_OUT_MM : 0);
            if (!fromFace) end(s, half, s.fromMm(), s.from().widthMm(), s.from().depthMm(), along);
            end(s, half, to, s.to().widthMm(), s.to().depthMm(), along);
        }
    }

    private void channel(FeedSegment s, String name, Half half, Vec3 from, Vec3 to, double before) {
        if (isRound(s)) {
            RoundShape shape = RoundShape.of(from, to, s.from().widthMm(), s.to().widthMm(), before, 0);
            round(name, purpose(s), half, shape, shape.volumeMm3() / 2, false);
            return;
        }
        ChannelShape shape = new ChannelShape(
                half,
                from,
                to,
                s.from().widthMm(),
                s.to().widthMm(),
                s.from().depthMm(),
                s.to().depthMm(),
                s.from().wallDraftDeg(),
                before,
                0);
        tools.add(new ConvexTool(name, purpose(s), half, shape, shape.volumeMm3(), List.of()));
    }

    private static boolean isRound(FeedSegment s) {
        return s.from().shape() == Shape.ROUND || s.from().shape() == Shape.HALF_ROUND;
    }

    /** The round end of a channel, once for every place and size. */
    private void end(FeedSegment s, Half half, Vec3 at, double width, double depth, Vec3 along) {
        if (!ends.add(String.format(Locale.ROOT, "%s %.4f %.4f %.4f %s", half, at.x(), at.y(), width, isRound(s))))
            return;
        String name = name(s) + ", round end";
        if (isRound(s)) {
            BallShape ball = new BallShape(half, at, width / 2);
            tools.add(new ConvexTool(name, purpose(s), half, ball, ball.volumeMm3(), List.of()));
            return;
        }
        double narrow = width - 2 * depth * Math.tan(Math.toRadians(s.from().wallDraftDeg()));
        Vec3 floor = at.plus(Vec3.Z.times(half.sign() * depth));
        RoundShape shape = RoundShape.of(at, floor, width, narrow, ChannelShape.STAND_OUT_MM, 0)
                .turned(along.cross(Vec3.Z).unit());
        round(name, purpose(s), half, shape, shape.volumeMm3(), false);
    }

    private void gate(FeedSegment s) {
        FeedSegment parent =
                feed.stream().filter(p -> p.number() == s.parent()).findFirst().orElse(null);
        double back = parent == null ? 0 : parent.to().widthMm() / 2;
        Vec3 along = s.toMm().minus(s.fromMm()).unit();
        for (Half half : s.half() == null ? Half.values() : new Half[] {s.half()}) {
            boolean fan = Math.abs(s.from().widthMm() - s.to().widthMm()) > 1e-9;
            channel(s, name(s), half, s.fromMm(), s.toMm(), fan ? 0 : back);
            if (!fan || back == 0) continue;
            ChannelShape mouth = ChannelShape.box(
                    half,
                    s.fromMm().minus(along.times(back)),
                    s.fromMm(),
                    s.from().widthMm(),
                    s.from().depthMm(),
                    0,
                    0);
            tools.add(new ConvexTool(name(s) + ", mouth", Purpose.GATE, half, mouth, mouth.volumeMm3(), List.of()));
        }
    }

    private void round(String name, Purpose purpose, Half half, RoundShape shape, double volume, boolean bored) {
        List<ExactCircle> circles = bored ? List.of(HoleTools.circle(name, purpose, half, shape)) : List.of();
        tools.add(new ConvexTool(name, purpose, half, shape, volume, circles));
    }
}
