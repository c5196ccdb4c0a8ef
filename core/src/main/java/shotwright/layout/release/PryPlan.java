package shotwright.layout.release;

import java.util.ArrayList;
import java.util.List;
import shotwright.geom.Vec2;
import shotwright.layout.Ground;
import shotwright.layout.Half;
import shotwright.layout.PryRelief;
import shotwright.region.Region;

/** Two pockets at opposite edges in which a brass or aluminium bar opens the halves; off the sealing land, clear of vents, dowels and feed. */
public final class PryPlan {
    private static final double DEEP_MM = 2;
    private static final double LAND_MM = 4;

    private PryPlan() {}

    /** Pockets on the two sides along x, or where those are taken, on the side away from the nozzle; each takes its ground. */
    public static List<PryRelief> of(double widthMm, double heightMm, Ground ground) {
        double along = Math.min(14, 0.2 * Math.min(widthMm, heightMm)), in = 5;
        List<PryRelief> found = new ArrayList<>();
        for (int side = 0; side < 3 && found.size() < 2; side++) {
            double length = side < 2 ? heightMm : widthMm;
            for (int k = 0; k <= 60; k++) {
                double s = (k % 2 == 0 ? 1 : -1) * ((k + 1) / 2) * length / 64;
                if (Math.abs(s) > length / 2 - along) break;
                Vec2 lo, hi;
                if (side == 2) {
                    lo = new Vec2(s - along / 2, -heightMm / 2);
                    hi = new Vec2(s + along / 2, -heightMm / 2 + in);
                } else {
                    double edge = side == 0 ? -widthMm / 2 : widthMm / 2 - in;
                    lo = new Vec2(edge, s - along / 2);
                    hi = new Vec2(edge + in, s + along / 2);
                }
                Region pocket = Region.rectangle(lo, hi);
                if (ground.free(pocket, LAND_MM, "vent") && ground.free(pocket, 1)) {
                    ground.take("pry pocket", pocket);
                    found.add(new PryRelief(lo, hi, Half.B, DEEP_MM));
                    break;
                }
            }
        }
        return List.copyOf(found);
    }
}
