package shotwright.machining.path;

import java.util.List;
import shotwright.geom.Box3;
import shotwright.geom.Vec3;

/** One movement of the cutter's tip, with the place where it starts and the place where it ends, millimetres. */
public sealed interface Move permits Step, Drilling {
    Vec3 from();

    Vec3 to();

    /** The single steps it is made of: itself, or the steps of a drilling cycle. */
    List<Step> steps();

    /** Way of the tip through space, mm. */
    default double lengthMm() {
        double sumMm = 0;
        for (Step s : steps()) sumMm += s.lengthMm();
        return sumMm;
    }

    /** The smallest box around the way of the tip. */
    default Box3 box() {
        Box3 box = new Box3(from(), from());
        for (Step s : steps()) box = box.join(s.box());
        return box;
    }

    /** Refuses a place with a coordinate that is not a number. */
    static void check(String what, Vec3 p) {
        if (!Double.isFinite(p.x()) || !Double.isFinite(p.y()) || !Double.isFinite(p.z()))
            throw new IllegalArgumentException(what + ": " + p + " is not a place");
    }
}
