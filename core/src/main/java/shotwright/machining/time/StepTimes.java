package shotwright.machining.time;

import java.util.Arrays;
import java.util.List;
import shotwright.geom.Vec2;
import shotwright.geom.Vec3;
import shotwright.machining.path.Arc;
import shotwright.machining.path.Dwell;
import shotwright.machining.path.Feed;
import shotwright.machining.path.Line;
import shotwright.machining.path.Rapid;
import shotwright.machining.path.Step;

/**
 * Times of the steps of a path. The tip stands still where feed and rapid meet and at dwells; in between it rounds corners within the mill's
 * deviation, and never faster than the arc of half the shorter neighbour through the corner, so that a curve made of short lines is run no
 * faster than the arc it stands for. An axis that carries only part of a straight move lets the path go faster by that share.
 */
public final class StepTimes {
    private StepTimes() {}

    /** Seconds of each step. */
    public static double[] ofS(List<Step> steps, MotionLimits limits) {
        double[] out = new double[steps.size()];
        int from = 0;
        while (from < out.length) {
            int to = from + 1;
            while (to < out.length && kind(steps.get(to)) == kind(steps.get(from))) to++;
            chain(steps, from, to, limits, out);
            from = to;
        }
        return out;
    }

    private enum Kind {
        FEED,
        RAPID,
        DWELL
    }

    private static Kind kind(Step s) {
        if (s instanceof Feed) return Kind.FEED;
        return s instanceof Rapid ? Kind.RAPID : Kind.DWELL;
    }

    private static void chain(List<Step> steps, int from, int to, MotionLimits limits, double[] out) {
        int n = to - from, moving = 0;
        double[] length = new double[n], speed = new double[n], acceleration = new double[n], joint = new double[n];
        int[] at = new int[n];
        Vec3 direction = Vec3.ZERO;
        for (int i = from; i < to; i++) {
            Step s = steps.get(i);
            if (s instanceof Dwell d) out[i] = d.timeS();
            double mm = s.lengthMm();
            if (!(mm > 0)) continue;
            length[moving] = mm;
            speed[moving] = Math.min(speedMmPerS(s, limits), mm * limits.blocksPerS());
            acceleration[moving] = limits.accelerationMmPerS2() / share(s);
            if (moving > 0)
                joint[moving] = jointMmPerS(direction, direction(s, false), Math.min(length[moving - 1], mm), limits);
            direction = direction(s, true);
            at[moving++] = i;
        }
        double[] times = Motion.timesS(
                Arrays.copyOf(length, moving),
                Arrays.copyOf(speed, moving),
                Arrays.copyOf(acceleration, moving),
                Arrays.copyOf(joint, moving));
        for (int k = 0; k < moving; k++) out[at[k]] = times[k];
    }

    private static double speedMmPerS(Step s, MotionLimits limits) {
        return switch (s) {
            case Rapid r -> limits.rapidMmPerMin() / 60 / share(r);
            case Line l -> Math.min(limits.maxFeedMmPerMin(), l.feedMmPerMin()) / 60;
            case Arc a ->
                Math.min(
                        Math.min(limits.maxFeedMmPerMin(), a.feedMmPerMin()) / 60,
                        Motion.arcMmPerS(limits.accelerationMmPerS2(), a.radiusMm()));
            default -> 0;
        };
    }

    /** Share of the busiest axis in a straight move; 1 on arcs. */
    static double share(Step s) {
        if (s instanceof Arc) return 1;
        Vec3 d = s.to().minus(s.from());
        return Math.max(Math.abs(d.x()), Math.max(Math.abs(d.y()), Math.abs(d.z()))) / d.length();
    }

    private static double jointMmPerS(Vec3 before, Vec3 after, double shorterMm, MotionLimits limits) {
        double turnRad = Math.atan2(before.cross(after).length(), before.dot(after));
        double corner = Motion.cornerMmPerS(limits.accelerationMmPerS2(), limits.junctionMm(), Math.PI - turnRad);
        double radiusMm = shorterMm / 2 / Math.tan(turnRad / 2);
        return Math.min(corner, Motion.arcMmPerS(limits.accelerationMmPerS2(), radiusMm));
    }

    /** Direction of the tip at the start or the end of a step. */
    private static Vec3 direction(Step s, boolean atEnd) {
        if (!(s instanceof Arc a)) return s.to().minus(s.from()).unit();
        Vec2 out = (atEnd ? a.to() : a.from()).xy().minus(a.centre());
        double turn = a.counterClockwise() ? 1 : -1, r = out.length();
        double rise = (a.to().z() - a.from().z()) / (a.sweepRad() * r);
        return new Vec3(-turn * out.y() / r, turn * out.x() / r, rise).unit();
    }
}
