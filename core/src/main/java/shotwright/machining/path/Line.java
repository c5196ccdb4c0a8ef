package shotwright.machining.path;

import shotwright.geom.Box3;
import shotwright.geom.Vec3;

/** A straight move at a feed. */
public record Line(Vec3 from, Vec3 to, double feedMmPerMin) implements Feed {
    public Line {
        Move.check("from", from);
        Move.check("to", to);
        Feed.check(feedMmPerMin);
    }

    @Override
    public Vec3 at(double share) {
        return from.toward(to, share);
    }

    @Override
    public double lengthMm() {
        return from.distance(to);
    }

    @Override
    public Box3 box() {
        return new Box3(from, from).join(new Box3(to, to));
    }

    @Override
    public Line reversed() {
        return new Line(to, from, feedMmPerMin);
    }

    @Override
    public Line withFeed(double mmPerMin) {
        return new Line(from, to, mmPerMin);
    }
}
