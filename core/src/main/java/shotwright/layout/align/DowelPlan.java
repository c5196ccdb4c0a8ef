package shotwright.layout.align;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import shotwright.geom.Vec2;
import shotwright.layout.DowelPlace;
import shotwright.layout.Ground;
import shotwright.layout.Half;
import shotwright.layout.ShopRack;
import shotwright.region.Region;
import shotwright.stock.Fit;

/**
 * Two dowels on a far diagonal, one moved in so that the halves go together one way only. Hand-opened molds: slip fit in both halves, held
 * deep in B by a removable retaining compound, standing proud only as far as a tilted half does not jam. Guided presses: press fit in B, long
 * engagement.
 */
public final class DowelPlan {
    /** How far one dowel leaves the diagonal, mm. */
    public static final double OFFSET_MM = 4;

    /** Tilt of a half that is lifted off by hand, degrees. */
    public static final double HAND_TILT_DEG = 0.5;

    private static final double METAL_MM = 6;
    private static final double BOTTOM_MM = 3;

    private DowelPlan() {}

    /** The pin for a block: 4 mm up to 60, 6 mm up to 110, 8 mm up to 160, then 10 mm; the nearest size on the rack. */
    public static Optional<ShopRack.Pin> pin(
            List<ShopRack.Pin> pins, double blockMm, double holdHalfMm, double slipHalfMm, boolean guided) {
        double wanted = blockMm <= 60 ? 4 : blockMm <= 110 ? 6 : blockMm <= 160 ? 8 : 10;
        return pins.stream()
                .filter(p -> fits(p, holdHalfMm, slipHalfMm, guided))
                .min((p, q) -> {
                    int c = Double.compare(Math.abs(p.diameterMm() - wanted), Math.abs(q.diameterMm() - wanted));
                    double length = guided ? 3.5 * wanted + 2 : 2 * wanted + 2.5;
                    return c != 0
                            ? c
                            : Double.compare(Math.abs(p.lengthMm() - length), Math.abs(q.lengthMm() - length));
                });
    }

    private static boolean fits(ShopRack.Pin p, double holdHalfMm, double slipHalfMm, boolean guided) {
        double proud = proudMm(p.diameterMm(), guided);
        double held = p.lengthMm() - proud;
        return held >= 1.5 * p.diameterMm() && held <= holdHalfMm - BOTTOM_MM && proud + 1 <= slipHalfMm - BOTTOM_MM;
    }

    /** How far a pin stands out: by the no-jam rule within 1.5 … 3 mm when opened by hand; 1.5 diameters and a lead-in when guided. */
    public static double proudMm(double diameterMm, boolean guided) {
        if (guided) return Math.ceil(1.5 * diameterMm + 2);
        double clearance = slipHoleMm(diameterMm) - Fit.M6_PIN.middleMm(diameterMm);
        return Math.clamp(Math.floor(2 * DowelLoad.noJamMm(clearance, HAND_TILT_DEG)) / 2, 1.5, 3);
    }

    /** Hole a hardened m6 pin slides in: F7, the middle of its limits, never less than 0.015 mm over the pin. */
    public static double slipHoleMm(double diameterMm) {
        double pin = Fit.M6_PIN.middleMm(diameterMm);
        return Math.max(Fit.F7.middleMm(diameterMm), pin + 0.015);
    }

    /** Hole that keeps it: N7 in a guided press, the slip hole with compound in a hand-opened mold. */
    public static double holdHoleMm(double diameterMm, boolean guided) {
        return guided ? Fit.N7.middleMm(diameterMm) : slipHoleMm(diameterMm);
    }

    /**
     * Two places on one of the diagonals of a block, clear of everything on the ground; empty when both diagonals are blocked. The second is
     * moved along the longer side.
     */
    public static Optional<List<Vec2>> places(double widthMm, double heightMm, double diameterMm, Ground ground) {
        double in = Math.max(1.5 * diameterMm, diameterMm / 2 + 5);
        double x = widthMm / 2 - in, y = heightMm / 2 - in;
        if (x < in / 2 || y < in / 2) return Optional.empty();
        Vec2 shift = widthMm >= heightMm ? new Vec2(OFFSET_MM, 0) : new Vec2(0, OFFSET_MM);
        for (int flip = -1; flip <= 1; flip += 2) {
            Vec2 one = new Vec2(-x, -flip * y);
            Vec2 two = new Vec2(x, flip * y);
            Vec2 moved = two.minus(new Vec2(shift.x() * Math.signum(two.x()), shift.y() * Math.signum(two.y())));
            if (free(one, diameterMm, ground) && free(moved, diameterMm, ground))
                return Optional.of(List.of(one, moved));
        }
        return Optional.empty();
    }

    private static boolean free(Vec2 p, double diameterMm, Ground ground) {
        return ground.free(disc(p, diameterMm), METAL_MM);
    }

    /** The hole's outline. */
    public static Region disc(Vec2 p, double diameterMm) {
        return Region.disc(p, diameterMm / 2, 48);
    }

    /** The dowels as they are cut. */
    public static List<DowelPlace> of(ShopRack.Pin pin, List<Vec2> places, boolean guided) {
        double d = pin.diameterMm(), proud = proudMm(d, guided);
        String fit = guided
                ? "press fit N7 with an m6 pin in B, slip fit F7 in A"
                : String.format(
                        Locale.ROOT,
                        "slip fit in both halves (%.3f mm), kept deep in B by a removable retaining compound; stands %.1f mm proud so that a half"
                                + " tilted by %.1f° does not jam",
                        slipHoleMm(d),
                        proud,
                        HAND_TILT_DEG);
        List<DowelPlace> out = new ArrayList<>();
        for (Vec2 p : places) {
            out.add(new DowelPlace(
                    pin.id(),
                    p,
                    d,
                    Half.B,
                    pin.lengthMm() - proud,
                    proud,
                    proud + 1,
                    holdHoleMm(d, guided),
                    slipHoleMm(d),
                    fit));
        }
        return List.copyOf(out);
    }

    /** True when the halves would also go together after a half or quarter turn: some turned pattern of the pins falls on the pattern itself. */
    public static boolean closesWrongWayRound(List<DowelPlace> dowels) {
        for (int quarter = 1; quarter < 4; quarter++) {
            boolean all = true;
            for (DowelPlace d : dowels) {
                Vec2 p = d.atMm();
                for (int k = 0; k < quarter; k++) p = p.left();
                Vec2 q = p;
                double slack = d.slipHoleMm() - d.diameterMm() + 0.5;
                all &= dowels.stream().anyMatch(o -> o.atMm().distance(q) < slack && o.diameterMm() == d.diameterMm());
            }
            if (all) return true;
        }
        return false;
    }
}
