package shotwright.layout.cavity;

import shotwright.geom.Transform;
import shotwright.geom.Vec2;
import shotwright.geom.Vec3;
import shotwright.region.Region;

/**
 * One cavity in its place.
 *
 * @param number counted from 1
 * @param turnRad turn about the pull from the cavity frame
 * @param move shift after the turn
 * @param gateAt where its gate meets the wall
 * @param flow unit direction of the melt through the gate; zero for a direct gate
 * @param outline its outline there
 */
public record Spoke(int number, double turnRad, Vec2 move, Vec2 gateAt, Vec2 flow, Region outline) {
    /** The whole block moved. */
    public Spoke moved(Vec2 by) {
        return new Spoke(number, turnRad, move.plus(by), gateAt.plus(by), flow, outline.move(by));
    }

    /** From the cavity frame to this place. */
    public Transform place() {
        return Transform.turnZ(turnRad).then(Transform.translate(move.atZ(0)));
    }

    /** A point of the cavity frame, in place. */
    public Vec2 at(Vec2 inCavity) {
        return place().apply(inCavity.atZ(0)).xy();
    }

    /** A direction of the cavity frame, in place. */
    public Vec2 direction(Vec2 inCavity) {
        Vec3 d = Transform.turnZ(turnRad).apply(inCavity.atZ(0));
        return d.xy();
    }
}
