package shotwright.machining.choice;

import java.util.ArrayList;
import java.util.BitSet;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import shotwright.cutter.Cutter;
import shotwright.cutter.Holder;
import shotwright.cutter.MountedCutter;
import shotwright.machining.contact.LocationMap;
import shotwright.machining.contact.SurfaceKind;
import shotwright.machining.contact.TopSurface;
import shotwright.machining.feed.Cusp;
import shotwright.machining.feed.CutData;
import shotwright.machining.feed.CutKind;
import shotwright.machining.feed.Shopfloor;
import shotwright.progress.Parallel;

/**
 * What each cutter could do on a half: where it gets down to the surface, and how fast it roughs and finishes. Floors are finished by flat
 * cutters, curved ground by balls, walls by a cone of their own lean in one pass or by balls and flat cutters in steps.
 */
public final class CandidateTable {
    /** What may be left and still counts as finished, along the normal. */
    public static final double TOLERANCE_MM = 0.01;

    /** A cone this near to a wall's lean cuts it in one pass. */
    private static final double SAME_LEAN_DEG = 0.06;

    /** Roughing gets near enough where no more is left than this, along the normal. */
    private static final double ROUGH_LEFT_MM = 0.4;

    private static final double FLOOR_STEP_OF_CUTTER = 0.6;
    private static final double CLEAR_WIDTH_OF_CUTTER = 0.15;

    /** A finished wall pass runs twice. */
    private static final int WALL_PASSES = 2;

    private static final double NOSE_CLEAR_MM = 2;

    /** Cuts are asked for at least so deep and wide. */
    private static final double LEAST_CUT_MM = 0.02;

    private final TopSurface top;
    private final double stockTopZMm;
    private final double depthMm;
    private final Shopfloor shop;
    private final double cuspMm;
    private final Map<SurfaceKind, BitSet> cells = new EnumMap<>(SurfaceKind.class);

    /**
     * @param top the half from above, its grid wider by the largest cutter's radius
     * @param stockTopZMm top of the metal before
     * @param cuspMm ridges allowed on finished ground and walls
     */
    public CandidateTable(TopSurface top, double stockTopZMm, Shopfloor shop, double cuspMm) {
        this.top = top;
        this.stockTopZMm = stockTopZMm;
        this.shop = shop;
        this.cuspMm = cuspMm;
        float low = Float.POSITIVE_INFINITY, high = Float.NEGATIVE_INFINITY;
        for (int i = 0; i < top.grid().count(); i++) {
            if (top.facet(i) < 0) continue;
            low = Math.min(low, top.heightMm(i));
            high = Math.max(high, top.heightMm(i));
        }
        for (int i = 0; i < top.grid().count(); i++) {
            if (top.facet(i) < 0) continue;
            SurfaceKind kind = SurfaceKind.of(top.normalZ(i), high - top.heightMm(i));
            if (kind != SurfaceKind.FACE)
                cells.computeIfAbsent(kind, k -> new BitSet()).set(i);
        }
        depthMm = high - low;
    }

    /** What has to be milled. */
    public Surface surface() {
        int n = top.grid().count();
        float[] area = new float[n], volume = new float[n];
        double cell = top.grid().cell() * top.grid().cell();
        for (int i = 0; i < n; i++) {
            if (top.facet(i) < 0) continue;
            area[i] = (float) (cell / Math.max(1e-3, top.normalZ(i)));
            volume[i] = (float) (cell * Math.max(0, stockTopZMm - top.heightMm(i)));
        }
        return new Surface(area, volume, cells);
    }

    /** A cutter held so that its holder stays clear of the half. */
    public MountedCutter mounted(Cutter c) {
        double out = Math.max(c.fluteLengthMm().value() + 1, depthMm + NOSE_CLEAR_MM);
        return new MountedCutter(c, out, Holder.forShank(c.shankMm().value()));
    }

    /** One row for each cutter that can do something. */
    public List<Candidate> rows() {
        List<Cutter> cutters = shop.cutters();
        Candidate[] rows = new Candidate[cutters.size()];
        Parallel.run(rows.length, () -> i -> rows[i] = row(cutters.get(i)));
        List<Candidate> out = new ArrayList<>();
        for (Candidate r : rows) if (r != null) out.add(r);
        return out;
    }

    private @Nullable Candidate row(Cutter c) {
        if (!c.shape().mills() || c.shape() == Cutter.Shape.FACE) return null;
        MountedCutter mounted = mounted(c);
        Map<SurfaceKind, Double> rates = rates(mounted);
        double rough = roughMm3PerMin(mounted);
        if (rates.isEmpty() && rough <= 0) return null;
        float[] left = LocationMap.of(top, mounted).leftoverMm();
        Map<SurfaceKind, BitSet> reached = new EnumMap<>(SurfaceKind.class);
        for (SurfaceKind kind : rates.keySet()) reached.put(kind, reached(c, kind, left));
        BitSet roughed = new BitSet();
        for (int i = 0; i < left.length; i++) if (top.facet(i) >= 0 && left[i] <= ROUGH_LEFT_MM) roughed.set(i);
        return new Candidate(mounted, rough, roughed, rates, reached);
    }

    private BitSet reached(Cutter c, SurfaceKind kind, float[] left) {
        BitSet all = cells.getOrDefault(kind, new BitSet()), out = new BitSet();
        boolean cone = kind == SurfaceKind.WALL && c.shape() == Cutter.Shape.TAPER;
        for (int i = all.nextSetBit(0); i >= 0; i = all.nextSetBit(i + 1)) {
            if (left[i] > TOLERANCE_MM) continue;
            double leanDeg = Math.toDegrees(Math.asin(Math.min(1, top.normalZ(i))));
            if (!cone || Math.abs(leanDeg - c.taperDeg().value()) <= SAME_LEAN_DEG) out.set(i);
        }
        return out;
    }

    private double roughMm3PerMin(MountedCutter m) {
        Cutter c = m.cutter();
        if (c.shape() != Cutter.Shape.FLAT && c.shape() != Cutter.Shape.BULL) return 0;
        double width = CLEAR_WIDTH_OF_CUTTER * c.diaMm().value();
        CutData d = tried(m, CutKind.CLEAR, Math.min(depthMm, c.fluteLengthMm().value()), width);
        return d == null ? 0 : d.depthMm() * d.widthMm() * d.feedMmPerMin();
    }

    private Map<SurfaceKind, Double> rates(MountedCutter m) {
        Map<SurfaceKind, Double> rates = new EnumMap<>(SurfaceKind.class);
        Cutter c = m.cutter();
        double dia = c.diaMm().value();
        switch (c.shape()) {
            case FLAT, BULL -> {
                double width = FLOOR_STEP_OF_CUTTER * dia;
                put(rates, SurfaceKind.FLOOR, tried(m, CutKind.FLOOR, 0.15, width), d -> width * d.feedMmPerMin());
                put(rates, SurfaceKind.WALL, tried(m, CutKind.WALL, 0.15, 0.1), d -> steps(m) * d.feedMmPerMin());
            }
            case BALL, TAPER_BALL -> {
                double step = Cusp.stepOfBallMm(
                        c.cornerRadiusMm().value() > 0 ? c.cornerRadiusMm().value() : dia / 2, cuspMm);
                put(rates, SurfaceKind.CURVED, tried(m, CutKind.CURVED, 0.1, step), d -> step * d.feedMmPerMin());
                put(rates, SurfaceKind.WALL, tried(m, CutKind.CURVED, 0.1, step), d -> step * d.feedMmPerMin());
            }
            case TAPER ->
                put(
                        rates,
                        SurfaceKind.WALL,
                        tried(
                                m,
                                CutKind.DRAFT_WALL,
                                Math.min(depthMm, c.fluteLengthMm().value()),
                                0.1),
                        d -> d.depthMm() * d.feedMmPerMin() / WALL_PASSES);
            default -> {}
        }
        return rates;
    }

    /** Step down on the walls of this half that leaves the cusp allowed, the cutter being flat. */
    private double steps(MountedCutter m) {
        BitSet walls = cells.getOrDefault(SurfaceKind.WALL, new BitSet());
        double sum = 0;
        int n = 0;
        for (int i = walls.nextSetBit(0); i >= 0; i = walls.nextSetBit(i + 1), n++) sum += top.normalZ(i);
        double lean = n == 0 ? 0 : Math.asin(Math.min(1, sum / n));
        double most = Math.min(
                0.5 * m.cutter().diaMm().value(), m.cutter().fluteLengthMm().value());
        return lean <= 0 ? most : Math.min(most, Cusp.downStepOfFlatMm(cuspMm, lean));
    }

    private interface Rate {
        double of(CutData d);
    }

    private void put(Map<SurfaceKind, Double> rates, SurfaceKind kind, @Nullable CutData d, Rate rate) {
        if (d != null && cells.containsKey(kind)) rates.put(kind, rate.of(d));
    }

    /**
     * How a cut of a chosen cutter is run.
     *
     * @throws IllegalArgumentException when it cannot be made
     */
    public CutData data(MountedCutter m, CutKind kind, double depthMm, double widthMm) {
        CutData d = tried(m, kind, depthMm, widthMm);
        if (d == null) throw new IllegalArgumentException("cutter " + m.cutter().id() + ": cannot " + kind.words());
        return d;
    }

    private @Nullable CutData tried(MountedCutter m, CutKind kind, double depthMm, double widthMm) {
        return shop.cut(
                m.cutter(), m.stickoutMm(), kind, Math.max(LEAST_CUT_MM, depthMm), Math.max(LEAST_CUT_MM, widthMm));
    }
}
