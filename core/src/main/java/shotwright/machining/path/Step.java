package shotwright.machining.path;

import java.util.List;
import shotwright.geom.Box3;
import shotwright.geom.Vec3;

/** A movement that cannot be taken apart: straight, along one arc, or none at all. */
public sealed interface Step extends Move permits Rapid, Feed, Dwell {
    /** The tip between start (0) and end (1). */
    Vec3 at(double share);

    /** The same way run backwards. */
    Step reversed();

    @Override
    double lengthMm();

    @Override
    Box3 box();

    @Override
    default List<Step> steps() {
        return List.of(this);
    }
}
