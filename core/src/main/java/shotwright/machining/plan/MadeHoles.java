package shotwright.machining.plan;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import shotwright.cutter.Cutter;
import shotwright.cutter.MountedCutter;
import shotwright.geom.Vec2;
import shotwright.machining.hole.HolePlanner;
import shotwright.machining.path.Drilling;
import shotwright.machining.path.Feed;
import shotwright.machining.path.Move;
import shotwright.machining.path.Operation;
import shotwright.machining.path.Program;
import shotwright.machining.path.Step;
import shotwright.machining.workpiece.Hole;
import shotwright.mold.Purpose;

/**
 * Which circles a program's holes are held against. Where something fits, that is the circle asked for. Where nothing has to fit, a drill may
 * be a little off, and the circle is the drill's; further off than the planner of holes allows is a fault as before. Holes that the bench makes
 * and tapers are held against nothing.
 */
final class MadeHoles {
    /** Points of drills, and what runs out through the other side, go so far below the end of a hole. */
    private static final double POINT_MM = 4;

    /** Metal that must stay below the point of a blind hole. */
    private static final double BELOW_POINT_MM = 0.5;

    private static final double SAME_AXIS_MM = 0.01;

    private final List<Drilled> drilled = new ArrayList<>();
    private final List<String> benchHoles;

    /** A place a drill goes down at. */
    private record Drilled(Vec2 atMm, double diameterMm) {}

    MadeHoles(Program program, Map<Integer, MountedCutter> cutters, List<String> benchHoles) {
        this.benchHoles = benchHoles;
        for (Operation o : program.operations()) {
            MountedCutter m = cutters.get(o.toolNumber());
            if (m == null || m.cutter().shape() != Cutter.Shape.DRILL) continue;
            double diameterMm = m.cutter().diaMm().value();
            for (Move move : o.moves()) {
                if (move instanceof Drilling d) drilled.add(new Drilled(d.at(), diameterMm));
                else
                    for (Step s : move.steps())
                        if (s instanceof Feed) drilled.add(new Drilled(s.to().xy(), diameterMm));
            }
        }
    }

    /**
     * The circles.
     *
     * @param holes holes of one clamping in its axes, mouths up
     * @param otherSideZMm height of the side that lies down
     */
    List<shotwright.machining.proof.Hole> held(List<Hole> holes, double otherSideZMm) {
        return holes.stream()
                .filter(h -> !h.isTapered() && !isMadeByHand(h))
                .map(h -> circle(h, holes, otherSideZMm))
                .toList();
    }

    private boolean isMadeByHand(Hole h) {
        return benchHoles.contains(h.name());
    }

    private shotwright.machining.proof.Hole circle(Hole h, List<Hole> all, double otherSideZMm) {
        double end = Math.min(h.mouthZMm(), h.endZMm()), mouth = Math.max(h.mouthZMm(), h.endZMm());
        for (Hole wider : all)
            if (wider.diameterMm() > h.diameterMm() && wider.atMm().distance(h.atMm()) < SAME_AXIS_MM) {
                double reaches = Math.min(wider.mouthZMm(), wider.endZMm()) - POINT_MM;
                mouth = Math.max(end, Math.min(mouth, reaches));
            }
        double lowest = h.through() ? end - POINT_MM : Math.max(end - POINT_MM, otherSideZMm + BELOW_POINT_MM);
        return new shotwright.machining.proof.Hole(h.name(), h.atMm(), madeMm(h), mouth, end, Math.min(end, lowest));
    }

    private static boolean isRoom(Hole h) {
        return h.use() == Purpose.PIN_RELIEF || h.use() == Purpose.CLEARANCE;
    }

    private double madeMm(Hole h) {
        double wanted = h.diameterMm();
        if (h.isFitted()) return wanted;
        double most = wanted + (isRoom(h) ? HolePlanner.ROOM_MM : HolePlanner.DRILL_MM);
        return drilled.stream()
                .filter(d -> d.atMm.distance(h.atMm()) < SAME_AXIS_MM)
                .map(Drilled::diameterMm)
                .filter(d -> d >= wanted - HolePlanner.DRILL_MM && d <= most)
                .min(Comparator.comparingDouble(d -> Math.abs(d - wanted)))
                .orElse(wanted);
    }
}
