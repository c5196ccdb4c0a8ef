package shotwright.review;

import java.util.Comparator;
import java.util.List;
import shotwright.cutter.Cutter;

/**
 * The end mills owned, as far as the review asks after them.
 *
 * @param tools flat, ball and tapered end mills
 */
public record RackCutters(List<Tool> tools) {
    /**
     * @param name as shown
     * @param kind shape of the end
     * @param radiusMm half its diameter, at the tip when tapered
     * @param reachMm how deep it may go
     * @param taperDeg lean of its flank, each side
     */
    public record Tool(String name, Kind kind, double radiusMm, double reachMm, double taperDeg) {}

    /** Shape of the end. */
    public enum Kind {
        FLAT,
        BALL
    }

    public RackCutters {
        tools = List.copyOf(tools);
    }

    /** Flat, ball and tapered end mills among the cutters; others make no walls. */
    public static RackCutters of(List<Cutter> owned) {
        return new RackCutters(owned.stream()
                .filter(c -> c.shape() == Cutter.Shape.FLAT
                        || c.shape() == Cutter.Shape.BALL
                        || c.shape() == Cutter.Shape.TAPER)
                .map(c -> new Tool(
                        spoken(c),
                        c.shape() == Cutter.Shape.BALL ? Kind.BALL : Kind.FLAT,
                        c.radiusMm(),
                        c.reachMm().value(),
                        c.taperDeg().value()))
                .toList());
    }

    private static String spoken(Cutter c) {
        return c.name().substring(0, 1).toLowerCase(java.util.Locale.ROOT)
                + c.name().substring(1);
    }

    /** Name of the tapered cutter with the least lean that makes at least this draft, the stoutest first; empty when there is none. */
    public String taperAtLeast(double draftDeg) {
        return tools.stream()
                .filter(t -> t.taperDeg > 0 && t.taperDeg >= draftDeg)
                .min(Comparator.comparingDouble(Tool::taperDeg).thenComparing(t -> -t.radiusMm))
                .map(Tool::name)
                .orElse("");
    }

    /** Radii of straight flat and ball end mills, largest first, none twice. */
    double[] radiiMm() {
        return tools.stream()
                .filter(t -> t.taperDeg == 0)
                .mapToDouble(Tool::radiusMm)
                .distinct()
                .map(r -> -r)
                .sorted()
                .map(r -> -r)
                .toArray();
    }

    /** Straight tools of a radius, deepest reach first. */
    List<Tool> ofRadius(double radiusMm) {
        return tools.stream()
                .filter(t -> t.taperDeg == 0 && t.radiusMm == radiusMm)
                .sorted(Comparator.comparingDouble(Tool::reachMm).reversed())
                .toList();
    }
}
