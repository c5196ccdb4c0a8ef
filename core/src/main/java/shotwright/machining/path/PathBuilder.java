package shotwright.machining.path;

import java.util.ArrayList;
import java.util.List;
import shotwright.geom.Vec2;
import shotwright.geom.Vec3;

/** Writes down moves one after the other, each from where the one before ended. Moves that go nowhere are left out. */
public final class PathBuilder {
    private static final double NOWHERE_MM = 1e-9;

    private final List<Move> moves = new ArrayList<>();
    private Vec3 tip;

    /** Starts with the tip at a place. */
    public PathBuilder(Vec3 tip) {
        this.tip = tip;
    }

    /** Where the tip stands now. */
    public Vec3 tip() {
        return tip;
    }

    public boolean isEmpty() {
        return moves.isEmpty();
    }

    public List<Move> moves() {
        return List.copyOf(moves);
    }

    /** Adds moves that start where the tip stands. */
    public PathBuilder add(List<? extends Move> more) {
        for (Move m : more) {
            moves.add(m);
            tip = m.to();
        }
        return this;
    }

    public PathBuilder rapid(Vec3 to) {
        return to.distance(tip) <= NOWHERE_MM ? this : add(List.of(new Rapid(tip, to)));
    }

    /** Up or down at the rapid. */
    public PathBuilder rapidZ(double zMm) {
        return rapid(new Vec3(tip.x(), tip.y(), zMm));
    }

    /** Up to a height unless the tip stands higher, across, and down: the way over everything that stands lower than the height. */
    public PathBuilder over(Vec3 to, double heightMm) {
        double heldMm = Math.max(heightMm, tip.z());
        rapidZ(heldMm);
        rapid(new Vec3(to.x(), to.y(), Math.max(heldMm, to.z())));
        return rapid(to);
    }

    public PathBuilder line(Vec3 to, double feedMmPerMin) {
        return to.distance(tip) <= NOWHERE_MM ? this : add(List.of(new Line(tip, to, feedMmPerMin)));
    }

    /** Straight up or down at a feed. */
    public PathBuilder lineZ(double zMm, double feedMmPerMin) {
        return line(new Vec3(tip.x(), tip.y(), zMm), feedMmPerMin);
    }

    public PathBuilder arc(Vec3 to, Vec2 centre, boolean counterClockwise, double feedMmPerMin) {
        return add(List.of(new Arc(tip, to, centre, counterClockwise, feedMmPerMin)));
    }

    /** A full turn about a centre, rising or falling to a height. */
    public PathBuilder turn(Vec2 centre, double toZMm, boolean counterClockwise, double feedMmPerMin) {
        return arc(new Vec3(tip.x(), tip.y(), toZMm), centre, counterClockwise, feedMmPerMin);
    }

    /**
     * A helix down about a centre, from where the tip stands, in turns of no more than the pitch, and a last turn at the bottom.
     *
     * @param counterClockwise which way round, seen from above
     */
    public PathBuilder helix(
            Vec2 centre, double bottomZMm, double mostPitchMm, boolean counterClockwise, double feedMmPerMin) {
        double fromZMm = tip.z();
        int turns = (int) Math.ceil(Math.max(0, fromZMm - bottomZMm) / mostPitchMm);
        for (int i = 1; i <= turns; i++)
            turn(centre, fromZMm + (bottomZMm - fromZMm) * i / turns, counterClockwise, feedMmPerMin);
        return turn(centre, bottomZMm, counterClockwise, feedMmPerMin);
    }
}
