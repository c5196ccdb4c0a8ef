package shotwright.layout.cavity;

import java.util.ArrayList;
import java.util.List;
import shotwright.geom.Vec2;
import shotwright.layout.LayoutResult.NozzleEntry;
import shotwright.layout.gate.GatePlace;
import shotwright.region.Region;

/**
 * Cavities round a hub, each turned so that its gate looks at the hub; all runners are equally long. Two lie in a row left and right of the
 * hub, more stand in a circle. A lying sprue keeps the way from the +y edge to the hub free.
 *
 * @param spokes one per cavity, hub at the origin
 * @param runnerMm way from the hub to each gate
 * @param gapMm smallest gap between cavities
 */
public record Arrangement(List<Spoke> spokes, double runnerMm, double gapMm) {
    private static final double STEP_MM = 0.5;
    private static final double FARTHEST_MM = 400;

    public Arrangement {
        spokes = List.copyOf(spokes);
    }

    /**
     * What has to be kept.
     *
     * @param cavities how many
     * @param shortestRunnerMm shortest way from hub to gate
     * @param betweenMm metal between cavities
     * @param besideFeedMm metal between a cavity and somebody else's runner or the lying sprue
     */
    public record Rules(int cavities, double shortestRunnerMm, double betweenMm, double besideFeedMm) {}

    /** Moves the cavities out from the hub until every gap is kept. */
    public static Arrangement of(CavityShape shape, GatePlace gate, NozzleEntry entry, Rules rules) {
        Region outline = shape.shadow().offset(0.05, Region.Join.BEVEL, 4).simplify(0.04);
        if (gate.rim() == null) {
            Vec2 move = gate.at().times(-1);
            Spoke only = new Spoke(1, 0, move, Vec2.ZERO, Vec2.ZERO, outline.move(move));
            return new Arrangement(List.of(only), 0, Double.POSITIVE_INFINITY);
        }
        double[] angles = angles(rules.cavities(), entry);
        for (double r = rules.shortestRunnerMm(); ; r += STEP_MM) {
            List<Spoke> spokes = new ArrayList<>();
            for (int k = 0; k < angles.length; k++) spokes.add(spoke(k + 1, angles[k], r, gate, outline));
            double gap = smallestGap(spokes);
            boolean clear = gap >= rules.betweenMm() && clearOfFeed(spokes, entry, rules.besideFeedMm());
            if (clear || r > FARTHEST_MM) return new Arrangement(spokes, r, gap);
        }
    }

    /** Directions from the hub to the cavities: even round a standing sprue; a lying sprue comes from +y. */
    static double[] angles(int cavities, NozzleEntry entry) {
        double[] a = new double[cavities];
        boolean lying = entry == NozzleEntry.PARTING_EDGE;
        for (int k = 0; k < cavities; k++) {
            a[k] = switch (cavities) {
                case 1 -> -Math.PI / 2;
                case 2 -> k * Math.PI;
                case 3 -> lying ? -Math.PI + k * Math.PI / 2 : Math.PI / 2 + k * 2 * Math.PI / 3;
                default -> lying ? Math.PI / 2 + (k + 1) * 2 * Math.PI / (cavities + 1) : k * 2 * Math.PI / cavities;
            };
        }
        return a;
    }

    private static Spoke spoke(int number, double angle, double r, GatePlace gate, Region outline) {
        double turn = angle + Math.PI - Math.atan2(gate.out().y(), gate.out().x());
        if (Math.abs(Math.IEEEremainder(turn, Math.PI / 2)) < 1e-9)
            turn = Math.rint(turn / (Math.PI / 2)) * (Math.PI / 2);
        Vec2 u = new Vec2(Math.cos(angle), Math.sin(angle));
        Vec2 gateAt = u.times(r);
        Vec2 turned = new Spoke(number, turn, Vec2.ZERO, Vec2.ZERO, u, Region.EMPTY).at(gate.at());
        Vec2 move = gateAt.minus(turned);
        return new Spoke(number, turn, move, gateAt, u, outline.place(turn, move));
    }

    private static double smallestGap(List<Spoke> spokes) {
        double gap = Double.POSITIVE_INFINITY;
        for (int i = 0; i < spokes.size(); i++) {
            for (int j = i + 1; j < spokes.size(); j++) {
                gap = Math.min(
                        gap, spokes.get(i).outline().distance(spokes.get(j).outline()));
            }
        }
        return gap;
    }

    private static boolean clearOfFeed(List<Spoke> spokes, NozzleEntry entry, double besideMm) {
        for (Spoke s : spokes) {
            if (s.outline().distance(Vec2.ZERO) < Math.min(besideMm, s.gateAt().length() - 1e-6)) return false;
            for (Spoke o : spokes) {
                if (o != s && s.outline().distance(line(o.gateAt())) < besideMm) return false;
            }
            if (entry == NozzleEntry.PARTING_EDGE && spokes.size() > 1) {
                if (s.outline().distance(line(new Vec2(0, FARTHEST_MM))) < besideMm) return false;
            }
        }
        return true;
    }

    private static Region line(Vec2 to) {
        Vec2 side = to.unit().left().times(0.05);
        return Region.of(List.of(side, side.times(-1), to.minus(side), to.plus(side)));
    }
}
