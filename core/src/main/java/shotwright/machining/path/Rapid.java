package shotwright.machining.path;

import shotwright.geom.Box3;
import shotwright.geom.Vec3;

/**
 * A straight move at the machine's rapid. Many controls reach the corner of the box by another way than the straight one, so planners go up,
 * across and down in separate moves.
 */
public record Rapid(Vec3 from, Vec3 to) implements Step {
    public Rapid {
        Move.check("from", from);
        Move.check("to", to);
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
    public Rapid reversed() {
        return new Rapid(to, from);
    }
}
