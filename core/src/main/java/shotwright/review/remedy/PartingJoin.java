package shotwright.review.remedy;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import shotwright.brep.ExactFailure;
import shotwright.brep.ExactShapes;
import shotwright.brep.Outline;
import shotwright.brep.Solid;
import shotwright.geom.Box3;
import shotwright.geom.Vec3;

/** Puts the upper end of one solid on the lower end of another; at the level between them both are alike. */
final class PartingJoin {
    private static final double SAME_VOLUME = 1e-6;
    private static final double AROUND = 2;

    private final ExactShapes x;
    private final Vec3 pull;

    PartingJoin(ExactShapes x, Vec3 pull) {
        this.x = x;
        this.pull = pull;
    }

    /** One sound solid, or nothing. */
    Optional<Solid> join(Leaning above, Leaning below, double levelMm) throws ExactFailure {
        Box3 box = x.box(above.solid()).join(x.box(below.solid()));
        double far = AROUND * box.diagonal();
        Vec3 middle = box.centre(), foot = middle.plus(pull.times(levelMm - middle.dot(pull)));
        try {
            List<Solid> pieces = new ArrayList<>(x.common(List.of(above.solid()), List.of(beyond(foot, far, pull))));
            int upper = pieces.size();
            pieces.addAll(x.common(List.of(below.solid()), List.of(beyond(foot, far, pull.negate()))));
            double sum = x.volumeMm3(pieces);
            List<Solid> one = x.fuse(pieces.subList(0, upper), pieces.subList(upper, pieces.size()));
            if (one.size() != 1) return Optional.empty();
            Solid whole = x.tidy(one.getFirst());
            boolean sound = x.check(whole).isOneClosedSolid() && Math.abs(x.volumeMm3(whole) / sum - 1) < SAME_VOLUME;
            return sound ? Optional.of(whole) : Optional.empty();
        } catch (ExactFailure e) {
            if (e.why() == ExactFailure.Why.REFUSED) return Optional.empty();
            throw e;
        }
    }

    private Solid beyond(Vec3 foot, double far, Vec3 way) throws ExactFailure {
        Vec3 u = way.across().times(far), v = way.cross(way.across()).times(far);
        return x.prism(
                Outline.polygon(List.of(
                        foot.plus(u).plus(v),
                        foot.minus(u).plus(v),
                        foot.minus(u).minus(v),
                        foot.plus(u).minus(v))),
                way.times(far));
    }
}
