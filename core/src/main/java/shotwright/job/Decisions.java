package shotwright.job;

import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import shotwright.cutter.Cutter;
import shotwright.geom.Box3;
import shotwright.geom.Vec3;
import shotwright.intake.IntakeOptions;
import shotwright.intake.Limits;
import shotwright.intake.Mend;
import shotwright.layout.Gate;
import shotwright.layout.Half;
import shotwright.layout.LayoutWishes;
import shotwright.layout.ShopRack;
import shotwright.machining.feed.Shopfloor;
import shotwright.machining.gcode.Dialect;
import shotwright.measure.LengthUnit;
import shotwright.mill.Mill;
import shotwright.press.Press;
import shotwright.rack.RackException;
import shotwright.resin.Resin;
import shotwright.stock.MoldMaterial;

/**
 * The job card with its ids looked up on the rack.
 *
 * @param card the card
 * @param resins resins asked for, never empty; the usual first one when the card names none
 * @param resinGiven false when the resin is the program's own choice
 * @param press press asked for, null to let sizing choose
 * @param secondPress second press asked for
 * @param material mold material
 * @param cutters cutters owned
 * @param mill the mill
 * @param control how its programs are written
 */
record Decisions(
        JobCard card,
        List<Resin> resins,
        boolean resinGiven,
        @Nullable Press press,
        @Nullable Press secondPress,
        MoldMaterial material,
        List<Cutter> cutters,
        Mill mill,
        Dialect control) {
    /** Resin reviewed with when none is named: common, easy to mold, in the middle of most ranges. */
    private static final String USUAL_RESIN = "abs";

    private static final String USUAL_MATERIAL = "6061-t6";

    /** Fast enough for small cutters, cutters changed by hand: what most small shops have. */
    private static final String USUAL_MILL = "bench-router-300";

    private static final String USUAL_CONTROL = "portable";

    /**
     * Looks everything up.
     *
     * @throws JobException naming the entry and what the rack has instead
     */
    static Decisions of(JobCard card, Shop shop) {
        try {
            List<Resin> resins = new ArrayList<>();
            for (String id : card.resins().isEmpty() ? List.of(USUAL_RESIN) : card.resins())
                resins.add(shop.resins().byId(id));
            List<Cutter> cutters = new ArrayList<>();
            for (String id : card.cutters()) cutters.add(shop.cutters().byId(id));
            return new Decisions(
                    card,
                    List.copyOf(resins),
                    !card.resins().isEmpty(),
                    card.press() == null ? null : shop.presses().byId(card.press()),
                    card.secondPress() == null ? null : shop.presses().byId(card.secondPress()),
                    shop.materials().byId(card.material() == null ? USUAL_MATERIAL : card.material()),
                    cutters.isEmpty() ? shop.cutters().all() : List.copyOf(cutters),
                    shop.mills().byId(card.mill() == null ? USUAL_MILL : card.mill()),
                    control(card, shop));
        } catch (RackException e) {
            throw new JobException(String.valueOf(e.getMessage()), e);
        }
    }

    /** A job whose pages are in inches gets its programs in inches. */
    private static Dialect control(JobCard card, Shop shop) {
        Dialect control = shop.dialects().byId(card.control() == null ? USUAL_CONTROL : card.control());
        return "in".equals(card.lengthsIn()) ? control.in(Dialect.Unit.INCH) : control;
    }

    /** What the mold is milled with. */
    Shopfloor shopfloor(Shop shop) {
        return new Shopfloor(
                cutters,
                mill,
                material,
                shop.feedTables().all().getFirst(),
                shop.stock().all());
    }

    Resin resin() {
        return resins.getFirst();
    }

    IntakeOptions intakeOptions() {
        Set<Mend> mends = EnumSet.noneOf(Mend.class);
        for (String m : card.mend()) mends.add(mend(m));
        return new IntakeOptions(unit(), mends, card.body(), Limits.USUAL);
    }

    private static Mend mend(String word) {
        for (Mend m : Mend.values()) {
            if (m.name().equalsIgnoreCase(word)) return m;
        }
        throw new JobException("mend: “" + word + "” is not known. What can be mended: flip, winding, holes.", null);
    }

    private @Nullable LengthUnit unit() {
        if (card.unit() == null) return null;
        return LengthUnit.parse(card.unit())
                .orElseThrow(() ->
                        new JobException("unit: “" + card.unit() + "” is not known. Take mm, cm, m or in.", null));
    }

    LayoutWishes wishes() {
        LayoutCard l = card.layout();
        List<Box3> clear = l.keepClearMm().stream()
                .map(b -> new Box3(new Vec3(b.get(0), b.get(1), b.get(2)), new Vec3(b.get(3), b.get(4), b.get(5))))
                .toList();
        List<Double> s = l.shrinkPercent(), g = l.gateAtMm();
        return new LayoutWishes(
                l.partingZMm(),
                g.isEmpty() ? null : new Vec3(g.get(0), g.get(1), g.get(2)),
                l.gateKind() == null ? null : gateKind(l.gateKind()),
                l.gateWidthMm(),
                l.gateDepthMm(),
                l.runnerMm(),
                clear,
                List.of(),
                null,
                s.isEmpty() ? null : s.get(0) / 100,
                s.isEmpty() ? null : s.get(1) / 100,
                s.isEmpty() ? null : s.get(2) / 100,
                l.keepsPart() == null ? null : Half.valueOf(l.keepsPart()),
                l.dowel(),
                null);
    }

    /** What the layout chooses sizes from. */
    ShopRack rack(Shop shop) {
        return ShopRack.of(
                cutters,
                shop.stock().all(),
                List.of(material),
                shop.dowels().all(),
                shop.screws().all());
    }

    private static Gate.Kind gateKind(String word) {
        for (Gate.Kind k : Gate.Kind.values()) {
            if (k.name().equalsIgnoreCase(word)) return k;
        }
        throw new JobException(
                "layout.gateKind: “" + word + "” is not known. Take edge, fan, tab, submarine or direct.", null);
    }
}
