package shotwright.mold;

import java.util.List;
import shotwright.geom.Box3;
import shotwright.geom.Plane;

/** What a cutter leaves: a straight channel, a round hole or channel, the round end of one. Convex. */
public sealed interface ToolShape permits BallShape, ChannelShape, RoundShape {
    /** Flat faces, normals outward; where the shape is round, those of the many-sided body inscribed in it. */
    List<Plane> planes();

    /** A box around it, a little larger. */
    Box3 around();

    /** Volume of the body with flat faces between its ends, mm³. */
    double volumeMm3();
}
