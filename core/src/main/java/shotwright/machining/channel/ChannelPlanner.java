package shotwright.machining.channel;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import org.jspecify.annotations.Nullable;
import shotwright.cutter.Cutter;
import shotwright.geom.Vec2;
import shotwright.geom.Vec3;
import shotwright.machining.feed.Cusp;
import shotwright.machining.feed.CutData;
import shotwright.machining.feed.CutKind;
import shotwright.machining.feed.Entry;
import shotwright.machining.feed.Shopfloor;
import shotwright.machining.path.PathBuilder;
import shotwright.machining.workpiece.Channel;
import shotwright.machining.workpiece.Phase;
import shotwright.machining.workpiece.Task;
import shotwright.mesh.complex.Material;
import shotwright.mold.Purpose;

/**
 * Chooses cutters for channels and lays their passes. Passes run along the flow, so that the lines they leave do. A cutter as wide as the channel
 * takes it in one track, level by level; a narrower one in tracks side by side. Where a channel widens or deepens along its length the tracks
 * do the same.
 */
public final class ChannelPlanner {
    /** A ball or flat so near to the width counts as the width. */
    private static final double SAME_WIDTH_MM = 0.011;

    /** A cone so near to the lean of a wall counts as the same. */
    private static final double SAME_LEAN_DEG = 0.01;

    /** Ridges a narrower ball may leave along a runner. */
    private static final double RIDGE_MM = 0.004;

    /** Tracks of flat cutters overlap by so much of their diameter. */
    private static final double OVERLAP = 0.4;

    private static final double OVERRUN_MM = 1;

    /** Vent lands begin at a rim that may be hollow: a small cutter stays within them there. */
    private static final double LAND_CUTTER_MM = 2;

    private static final double OVER_METAL_MM = 0.5;
    private static final double SPARE_REACH_MM = 0.2;

    private final Shopfloor shop;

    public ChannelPlanner(Shopfloor shop) {
        this.shop = shop;
    }

    /** The way to mill a channel. */
    public ChannelWay plan(Channel channel) {
        List<String> notes = new ArrayList<>();
        @Nullable Chosen chosen = channel.round() ? ball(channel) : flat(channel, notes);
        if (chosen == null) {
            notes.add(String.format(
                    Locale.ROOT,
                    "No cutter on the rack is slim and long enough for %s, %.2f mm wide and %.3f mm deep.",
                    channel.name(),
                    leastWidthMm(channel),
                    mostDepthMm(channel)));
            return new ChannelWay(channel, List.of(), notes);
        }
        Phase phase =
                switch (channel.use()) {
                    case VENT_LAND, VENT_CHANNEL -> Phase.VENT;
                    case GATE -> Phase.GATE;
                    default -> Phase.FEED;
                };
        Tracks tracks = new Tracks(channel, chosen);
        Task task = new Task(
                phase,
                "mill " + channel.name(),
                chosen.cutter,
                Math.max(
                        chosen.cutter.reachMm().value(),
                        chosen.cutter.fluteLengthMm().value()),
                chosen.data.speedRpm(),
                channel.fromMm().xy(),
                tracks::write);
        return new ChannelWay(channel, List.of(task), notes);
    }

    private record Chosen(Cutter cutter, CutData data, List<Track> tracks) {}

    /**
     * One track along the channel.
     *
     * @param fromSideMm how far left of the middle at the start
     * @param toSideMm the same at the end
     * @param fromDepthMm depth of the tip at the start
     * @param toDepthMm the same at the end
     */
    private record Track(double fromSideMm, double toSideMm, double fromDepthMm, double toDepthMm) {}

    private static double leastWidthMm(Channel c) {
        return Math.min(c.fromWidthMm(), c.toWidthMm());
    }

    private static double mostDepthMm(Channel c) {
        return Math.max(c.fromDepthMm(), c.toDepthMm());
    }

    private @Nullable CutData data(Cutter c, double depthMm) {
        double stickoutMm = Math.max(c.reachMm().value(), c.fluteLengthMm().value());
        return shop.cut(c, stickoutMm, CutKind.SLOT, depthMm, c.diaMm().value());
    }

    private boolean reaches(Cutter c, double depthMm) {
        return c.reachMm().value() >= depthMm + SPARE_REACH_MM;
    }

    /** The ball of the channel's own width, else the largest that goes in, in tracks. */
    private @Nullable Chosen ball(Channel channel) {
        double widthMm = leastWidthMm(channel);
        boolean straight = channel.isStraight();
        List<Cutter> balls = shop.cutters().stream()
                .filter(c -> c.shape() == Cutter.Shape.BALL)
                .filter(c -> c.diaMm().value() <= widthMm + SAME_WIDTH_MM)
                .filter(c -> reaches(c, mostDepthMm(channel)))
                .sorted(Comparator.comparingDouble((Cutter c) -> -c.diaMm().value()))
                .toList();
        for (Cutter c : balls) {
            boolean own = straight && Math.abs(c.diaMm().value() - widthMm) <= SAME_WIDTH_MM;
            CutData data = data(c, mostDepthMm(channel));
            if (data == null) continue;
            if (own) return new Chosen(c, data, List.of(new Track(0, 0, channel.fromDepthMm(), channel.toDepthMm())));
            return new Chosen(c, data, roundTracks(channel, c.radiusMm()));
        }
        return null;
    }

    /** Tracks of a ball whose middle runs on the cone that lies its radius inside the channel. */
    private static List<Track> roundTracks(Channel channel, double ballMm) {
        double fromMm = channel.fromWidthMm() / 2, toMm = channel.toWidthMm() / 2;
        double largestMm = Math.max(fromMm, toMm), slope = (toMm - fromMm) / channel.lengthMm();
        double awayMm = ballMm * Math.sqrt(1 + slope * slope);
        double inner = largestMm - ballMm;
        if (inner < SAME_WIDTH_MM) return List.of(new Track(0, 0, fromMm, toMm));
        // ridges on a hollow round of radius R, ball r: step = √(8 h r R/(R − r)) along the wall
        double stepMm = Cusp.stepOnCurveMm(ballMm, RIDGE_MM, -largestMm);
        int n = Math.max(2, (int) Math.ceil(Math.PI * largestMm / stepMm));
        List<Track> tracks = new ArrayList<>();
        for (int i = 0; i <= n; i++) {
            double angle = Math.PI * i / n, cos = Math.cos(angle), sin = Math.sin(angle);
            double a = Math.max(0, fromMm - awayMm), b = Math.max(0, toMm - awayMm);
            tracks.add(new Track(a * cos, b * cos, a * sin + ballMm, b * sin + ballMm));
        }
        // from the middle outward: the first tracks open the way
        tracks.sort(Comparator.comparingDouble(t -> Math.abs(t.fromSideMm)));
        return tracks;
    }

    /** A flat cutter, or one whose cone is the lean of the walls. */
    private @Nullable Chosen flat(Channel channel, List<String> notes) {
        double leanDeg = channel.wallDraftDeg(), lean = Math.tan(Math.toRadians(leanDeg));
        double floorMm = Math.min(
                channel.fromWidthMm() - 2 * channel.fromDepthMm() * lean,
                channel.toWidthMm() - 2 * channel.toDepthMm() * lean);
        boolean land = channel.use() == Purpose.VENT_LAND;
        double widestMm = land ? Math.min(floorMm, LAND_CUTTER_MM) : floorMm;
        Cutter.Shape shape = leanDeg > SAME_LEAN_DEG ? Cutter.Shape.TAPER : Cutter.Shape.FLAT;
        List<Cutter> fit = shop.cutters().stream()
                .filter(c -> c.shape() == shape)
                .filter(c -> Math.abs(c.taperDeg().value() - leanDeg) <= SAME_LEAN_DEG)
                .filter(c -> c.diaMm().value() <= widestMm + SAME_WIDTH_MM)
                .filter(c -> reaches(c, mostDepthMm(channel)))
                .sorted(Comparator.comparingDouble((Cutter c) -> -c.diaMm().value()))
                .toList();
        for (Cutter c : fit) {
            CutData data = data(c, mostDepthMm(channel));
            if (data != null)
                return new Chosen(c, data, flatTracks(channel, c.diaMm().value(), lean));
        }
        if (shape == Cutter.Shape.TAPER) {
            notes.add(String.format(
                    Locale.ROOT,
                    "No tapered cutter of %.1f° per side on the rack: %s gets upright walls in a floor of the right width.",
                    leanDeg,
                    channel.name()));
            return flat(upright(channel, lean), notes);
        }
        return null;
    }

    private static Channel upright(Channel c, double lean) {
        return new Channel(
                c.name(),
                c.use(),
                c.fromMm(),
                c.toMm(),
                false,
                c.fromWidthMm() - 2 * c.fromDepthMm() * lean,
                c.toWidthMm() - 2 * c.toDepthMm() * lean,
                c.fromDepthMm(),
                c.toDepthMm(),
                0,
                c.openBefore(),
                c.openAfter(),
                c.beforeMm(),
                c.afterMm());
    }

    private static List<Track> flatTracks(Channel channel, double tipMm, double lean) {
        double from = (channel.fromWidthMm() - 2 * channel.fromDepthMm() * lean - tipMm) / 2;
        double to = (channel.toWidthMm() - 2 * channel.toDepthMm() * lean - tipMm) / 2;
        double widest = Math.max(0, Math.max(from, to));
        int n = (int) Math.ceil(2 * widest / ((1 - OVERLAP) * tipMm));
        List<Track> tracks = new ArrayList<>();
        if (2 * widest <= SAME_WIDTH_MM) n = 0;
        for (int i = 0; i <= n; i++) {
            double t = n == 0 ? 0 : 2.0 * i / n - 1;
            tracks.add(
                    new Track(t * Math.max(0, from), t * Math.max(0, to), channel.fromDepthMm(), channel.toDepthMm()));
        }
        return tracks;
    }

    /** Writes the tracks of a channel, level by level. */
    private static final class Tracks {
        private final Channel channel;
        private final Chosen chosen;
        private final Vec3 along;
        private final Vec3 left;

        Tracks(Channel channel, Chosen chosen) {
            this.channel = channel;
            this.chosen = chosen;
            along = channel.toMm().minus(channel.fromMm()).unit();
            left = Vec3.Z.cross(along);
        }

        void write(PathBuilder pen, double clearZMm) {
            double deepest = chosen.tracks.stream()
                    .mapToDouble(t -> Math.max(t.fromDepthMm, t.toDepthMm))
                    .max()
                    .orElseThrow();
            int levels = Math.max(1, (int) Math.ceil(deepest / chosen.data.depthMm() - 1e-9));
            boolean back = false;
            for (int k = 1; k <= levels; k++) {
                double share = (double) k / levels;
                for (Track t : chosen.tracks) {
                    Vec3 a = start(t, share), b = end(t, share);
                    Vec3 first = back ? b : a, last = back ? a : b;
                    enter(pen, first, last, clearZMm);
                    pen.line(last, chosen.data.feedMmPerMin());
                    back = !back;
                }
            }
            pen.rapidZ(clearZMm);
            if (hasRoundEnds()) roundEnds(pen, clearZMm, levels);
        }

        /** A runner with a flat floor ends in half circles of its full width. */
        private boolean hasRoundEnds() {
            return channel.use() == Purpose.RUNNER && !channel.round() && chosen.tracks.size() > 1;
        }

        private void roundEnds(PathBuilder pen, double clearZMm, int levels) {
            double feed = chosen.data.feedMmPerMin();
            for (int end = 0; end < 2; end++) {
                if (end == 0 ? channel.openBefore() : channel.openAfter()) continue;
                Vec3 middle = end == 0 ? channel.fromMm() : channel.toMm();
                Vec3 out = end == 0 ? along.negate() : along;
                for (int k = 1; k <= levels; k++) {
                    double z = middle.z() - deepestMm() * k / levels;
                    Vec2 c = middle.xy();
                    pen.over(c.atZ(clearZMm), clearZMm);
                    pen.rapidZ(middle.z() - deepestMm() * (k - 1) / levels + OVER_METAL_MM);
                    pen.lineZ(z, chosen.data.plungeMmPerMin());
                    for (Track t : chosen.tracks) {
                        double r = end == 0 ? t.fromSideMm : t.toSideMm;
                        if (r <= 1e-9) continue;
                        Vec2 side = left.xy().times(r);
                        boolean ccw = out.xy().cross(left.xy()) > 0;
                        pen.line(c.minus(side).atZ(z), feed);
                        pen.arc(c.plus(side).atZ(z), c, ccw, feed);
                        pen.line(c.atZ(z), feed);
                    }
                    pen.rapidZ(clearZMm);
                }
            }
        }

        /** To the start of a track: on through the air before the block, from the end of the last one, or down a ramp along the track. */
        private void enter(PathBuilder pen, Vec3 first, Vec3 last, double clearZMm) {
            double tipMm = chosen.cutter.diaMm().value();
            boolean near = pen.tip().xy().distance(first.xy()) < 0.7 * tipMm
                    && pen.tip().z() <= first.z() + deepestMm();
            if (near) {
                ramp(pen, first, last);
                return;
            }
            double overMm = channel.fromMm().z() + OVER_METAL_MM;
            pen.over(first.xy().atZ(clearZMm), clearZMm);
            boolean inAir = pen.tip().xy().distance(first.xy()) < 1e-9 && startsInAir(first);
            if (inAir) {
                pen.rapidZ(Math.max(first.z(), overMm));
                pen.lineZ(first.z(), chosen.data.plungeMmPerMin());
                return;
            }
            pen.rapidZ(overMm);
            ramp(pen, first, last);
        }

        private double deepestMm() {
            return Math.max(channel.fromDepthMm(), channel.toDepthMm());
        }

        private boolean startsInAir(Vec3 p) {
            double s = p.minus(channel.fromMm()).dot(along);
            return s < 0 && channel.openBefore() || s > channel.lengthMm() && channel.openAfter();
        }

        /** Down to the start of a track on a ramp to and fro along it. */
        private void ramp(PathBuilder pen, Vec3 first, Vec3 last) {
            double feed = chosen.data.feedMmPerMin() * Entry.RAMP_FEED_SHARE;
            pen.lineZ(Math.max(pen.tip().z(), first.z()), feed);
            double dropMm = pen.tip().z() - first.z();
            double angle = Math.tan(Math.toRadians(chosen.data.rampDeg()));
            double runMm =
                    Math.min(first.distance(last), 4 * chosen.cutter.diaMm().value());
            pen.line(first.xy().atZ(pen.tip().z()), feed);
            if (dropMm <= 1e-9) return;
            if (runMm < 1e-6) {
                pen.line(first, chosen.data.plungeMmPerMin());
                return;
            }
            Vec3 way = last.minus(first).times(runMm / first.distance(last));
            int legs = Math.max(1, (int) Math.ceil(dropMm / (2 * runMm * angle)));
            double topMm = pen.tip().z();
            for (int i = 0; i < legs; i++) {
                double mid = topMm - dropMm * (i + 0.5) / legs, low = topMm - dropMm * (i + 1) / legs;
                Vec3 out = first.plus(way);
                pen.line(new Vec3(out.x(), out.y(), Math.max(mid, out.z())), feed);
                pen.line(new Vec3(first.x(), first.y(), Math.max(low, first.z())), feed);
            }
        }

        private Vec3 start(Track t, double share) {
            double more = overrun(channel.openBefore(), channel.beforeMm());
            return at(t, -more / channel.lengthMm(), share);
        }

        private Vec3 end(Track t, double share) {
            boolean intoChannel = channel.use() == Purpose.VENT_LAND;
            double more = intoChannel ? channel.afterMm() : overrun(channel.openAfter(), channel.afterMm());
            return at(t, 1 + more / channel.lengthMm(), share);
        }

        /** How far the tip's axis runs beyond an end. A flat channel closed by a wall ends there with the cutter's edge. */
        private double overrun(boolean open, double prolongedMm) {
            if (open) return chosen.cutter.largestDiaMm() / 2 + OVERRUN_MM;
            boolean walled = !channel.round() && channel.use().material() != Material.FEED;
            return walled ? prolongedMm - chosen.cutter.radiusMm() : prolongedMm;
        }

        private Vec3 at(Track t, double s, double share) {
            double side = t.fromSideMm + (t.toSideMm - t.fromSideMm) * s;
            double depth = t.fromDepthMm + (t.toDepthMm - t.fromDepthMm) * s;
            Vec3 middle = channel.fromMm().plus(along.times(s * channel.lengthMm()));
            return middle.plus(left.times(side)).minus(Vec3.Z.times(share * depth));
        }
    }
}
