package shotwright.machining.path;

import java.util.ArrayList;
import java.util.List;
import shotwright.geom.Vec2;
import shotwright.geom.Vec3;

/**
 * One hole made by a drilling cycle, as RS274/NGC defines G73 and G81 to G83: across at the height held, rapid to the R plane, down at the
 * feed, out at the rapid.
 *
 * @param kind which cycle
 * @param from where the tip stands before
 * @param at the hole in plan
 * @param retractZMm the R plane, just above the metal
 * @param bottomZMm the tip at the bottom
 * @param peckMm how deep at once; only for the cycles that peck, else 0
 * @param dwellS stay at the bottom; only for the cycle that dwells, else 0
 * @param toRetract out to the R plane only (G99) instead of the height held before (G98)
 * @param feedMmPerMin feed down
 */
public record Drilling(
        Kind kind,
        Vec3 from,
        Vec2 at,
        double retractZMm,
        double bottomZMm,
        double peckMm,
        double dwellS,
        boolean toRetract,
        double feedMmPerMin)
        implements Move {
    /** How far the drill goes back up before the next peck, and how far above the last depth it stops, mm: 0.010 in. */
    public static final double PECK_CLEARANCE_MM = 0.254;

    /** The most pecks of one hole. */
    private static final int MOST_PECKS = 10_000;

    /** The cycle. */
    public enum Kind {
        /** G81: down in one. */
        DRILL(81),
        /** G82: down in one, stay, out. */
        SPOT(82),
        /** G83: out to the R plane after every peck. */
        PECK(83),
        /** G73: a little up after every peck, to break the chip. */
        CHIP_BREAK(73);

        private final int code;

        Kind(int code) {
            this.code = code;
        }

        /** Number of the G word. */
        public int code() {
            return code;
        }

        /** True for the cycles that go down in pecks. */
        public boolean pecks() {
            return this == PECK || this == CHIP_BREAK;
        }
    }

    public Drilling {
        Move.check("from", from);
        Move.check("at", at.atZ(0));
        Feed.check(feedMmPerMin);
        if (!(retractZMm >= bottomZMm) || !Double.isFinite(retractZMm - bottomZMm))
            throw new IllegalArgumentException("retractZMm: " + retractZMm + " is below the bottom " + bottomZMm);
        if (kind.pecks() != (peckMm > 0))
            throw new IllegalArgumentException("peckMm: " + peckMm + " does not suit " + kind);
        if (kind.pecks() && (retractZMm - bottomZMm) / peckMm > MOST_PECKS)
            throw new IllegalArgumentException("peckMm: " + peckMm + " makes more than " + MOST_PECKS + " pecks");
        if (!(dwellS >= 0) || dwellS > 0 && kind != Kind.SPOT)
            throw new IllegalArgumentException("dwellS: " + dwellS + " does not suit " + kind);
    }

    /** The height held above the holes: where the tip came from, at least the R plane. */
    private double heldZMm() {
        return Math.max(from.z(), retractZMm);
    }

    @Override
    public Vec3 to() {
        return at.atZ(toRetract ? retractZMm : heldZMm());
    }

    @Override
    public List<Step> steps() {
        List<Step> out = new ArrayList<>();
        Vec3 held = at.atZ(heldZMm()), top = at.atZ(retractZMm);
        if (from.z() < retractZMm) out.add(new Rapid(from, new Vec3(from.x(), from.y(), retractZMm)));
        out.add(new Rapid(new Vec3(from.x(), from.y(), heldZMm()), held));
        if (heldZMm() > retractZMm) out.add(new Rapid(held, top));
        Vec3 tip = kind.pecks() ? pecks(out, top) : down(out, top, bottomZMm);
        if (dwellS > 0) out.add(new Dwell(tip, dwellS));
        out.add(new Rapid(tip, to()));
        return out;
    }

    private Vec3 down(List<Step> out, Vec3 tip, double zMm) {
        Vec3 deep = at.atZ(zMm);
        out.add(new Line(tip, deep, feedMmPerMin));
        return deep;
    }

    private Vec3 pecks(List<Step> out, Vec3 top) {
        Vec3 tip = top;
        for (double zMm = retractZMm - peckMm; zMm > bottomZMm; zMm -= peckMm) {
            tip = down(out, tip, zMm);
            Vec3 again = at.atZ(zMm + PECK_CLEARANCE_MM);
            Vec3 up = kind == Kind.PECK ? top : again;
            out.add(new Rapid(tip, up));
            if (kind == Kind.PECK) out.add(new Rapid(top, again));
            tip = again;
        }
        return down(out, tip, bottomZMm);
    }
}
