package shotwright.layout;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import shotwright.geom.Vec2;
import shotwright.layout.strength.BoltPreload;
import shotwright.region.Region;

/**
 * Screws that hold the halves together where the press does not: the smallest size of which two to six, preloaded to three quarters of
 * proof, carry one and a half times the opening force. They stand in the corners without dowels, then at the middles of the sides.
 */
final class ScrewPlan {
    private static final double OVER_OPENING_FORCE = 1.5;
    private static final double METAL_MM = 4;
    private static final double BELOW_HEAD_MM = 6;
    private static final double THREAD_OVER_DIAMETER = 2;

    private ScrewPlan() {}

    static List<ScrewPlace> of(MoldPlan plan) {
        double needN = OVER_OPENING_FORCE * plan.basis.designMpa() * plan.projectedMm2();
        List<ScrewPlace> best = List.of();
        double bestN = 0;
        List<ShopRack.Bolt> sizes = plan.in.shop().bolts().stream()
                .sorted(Comparator.comparingDouble(ShopRack.Bolt::diameterMm).thenComparing(ShopRack.Bolt::lengthMm))
                .toList();
        for (ShopRack.Bolt b : sizes) {
            double grip = b.lengthMm() - THREAD_OVER_DIAMETER * b.diameterMm();
            double bore = plan.thicknessA - grip;
            if (bore < b.headHeightMm() || plan.thicknessA - bore < BELOW_HEAD_MM) continue;
            if (plan.thicknessB < THREAD_OVER_DIAMETER * b.diameterMm() + 3) continue;
            List<ScrewPlace> places = places(plan, b, bore);
            double n = places.size()
                    * BoltPreload.preloadN(b.proofMpa(), BoltPreload.stressAreaMm2(b.diameterMm(), b.pitchMm()));
            if (n > bestN) {
                bestN = n;
                best = places;
            }
            if (n >= needN) return enough(places, needN, n);
        }
        return best;
    }

    private static List<ScrewPlace> enough(List<ScrewPlace> all, double needN, double haveN) {
        int n = (int) Math.ceil(all.size() * needN / haveN);
        n = Math.max(2, n + n % 2);
        return all.subList(0, Math.min(n, all.size()));
    }

    private static List<ScrewPlace> places(MoldPlan plan, ShopRack.Bolt b, double bore) {
        double head = b.headMm() + 1, in = head / 2 + METAL_MM;
        double x = plan.widthMm / 2 - in, y = plan.heightMm / 2 - in;
        List<Vec2> tried = List.of(
                new Vec2(x, -y),
                new Vec2(-x, y),
                new Vec2(-x, -y),
                new Vec2(x, y),
                new Vec2(x, 0),
                new Vec2(-x, 0),
                new Vec2(0, -y));
        List<ScrewPlace> out = new ArrayList<>();
        Ground taken = new Ground();
        for (Vec2 p : tried) {
            Region room = Region.disc(p, head / 2, 32);
            if (!plan.ground.free(room, METAL_MM) || !taken.free(room, METAL_MM)) continue;
            taken.take("screw", room);
            out.add(new ScrewPlace(
                    b.id(),
                    p,
                    Half.A,
                    b.clearanceMm(),
                    head,
                    bore,
                    b.tapDrillMm(),
                    THREAD_OVER_DIAMETER * b.diameterMm() + 2));
        }
        return out;
    }

    /** Preload of the screws placed, N. */
    static double preloadN(MoldPlan plan) {
        double sum = 0;
        for (ScrewPlace s : plan.screws) {
            for (ShopRack.Bolt b : plan.in.shop().bolts()) {
                if (b.id().equals(s.screw()))
                    sum += BoltPreload.preloadN(b.proofMpa(), BoltPreload.stressAreaMm2(b.diameterMm(), b.pitchMm()));
            }
        }
        return sum;
    }
}
