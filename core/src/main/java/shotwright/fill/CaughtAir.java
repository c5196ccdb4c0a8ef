package shotwright.fill;

import java.util.ArrayList;
import java.util.List;
import shotwright.geom.Vec3;
import shotwright.layout.LayoutResult;
import shotwright.layout.Vent;

/**
 * A place that fills late with no vent in reach.
 *
 * @param place the place, in the pulled frame of the part
 * @param atMm the same place in the first cavity, mold frame
 * @param nearestMm way to the nearest vent
 * @param reachMm how far a vent reaches
 */
public record CaughtAir(FlowField.LastFill place, Vec3 atMm, double nearestMm, double reachMm) {
    private static final double LATE_SHARE = 0.85;
    private static final double REACH_MM = 10, REACH_WALLS = 5;

    /** All of a layout, latest first. A vent reaches ten millimetres or five walls (common practice). */
    public static List<CaughtAir> of(LayoutResult layout, FlowField field) {
        List<CaughtAir> out = new ArrayList<>();
        for (FlowField.LastFill l : field.lastFills()) {
            CaughtAir c = of(layout, field, l, layout.vents());
            if (l.arrivalShare() >= LATE_SHARE && c.nearestMm > c.reachMm) out.add(c);
        }
        return List.copyOf(out);
    }

    /**
     * What filling proposes to the layout: vent these. The very last place leads when the layout's leading vent does not reach it, whatever
     * else reaches it; then follow the places no vent reaches.
     */
    public static List<CaughtAir> proposals(LayoutResult layout, FlowField field) {
        List<CaughtAir> out = new ArrayList<>();
        if (!field.lastFills().isEmpty()) {
            CaughtAir last = of(
                    layout,
                    field,
                    field.lastFills().getFirst(),
                    layout.vents().stream().limit(1).toList());
            if (last.nearestMm > last.reachMm) out.add(last);
        }
        for (CaughtAir c : of(layout, field))
            if (out.isEmpty() || !out.getFirst().place.equals(c.place)) out.add(c);
        return List.copyOf(out);
    }

    private static CaughtAir of(LayoutResult layout, FlowField field, FlowField.LastFill l, List<Vent> vents) {
        Vec3 at = layout.cavities().getFirst().place().apply(l.atMm());
        double nearest =
                vents.stream().mapToDouble(v -> v.atMm().distance(at)).min().orElse(Double.POSITIVE_INFINITY);
        return new CaughtAir(l, at, nearest, Math.max(REACH_MM, REACH_WALLS * field.medianWallMm()));
    }
}
