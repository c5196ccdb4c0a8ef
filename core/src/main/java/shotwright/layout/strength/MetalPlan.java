package shotwright.layout.strength;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import org.jspecify.annotations.Nullable;
import shotwright.geom.Vec2;
import shotwright.geom.Vec3;
import shotwright.layout.LayoutResult.StrengthCheck;
import shotwright.layout.ShopRack.Bar;
import shotwright.layout.cavity.CavityShape;
import shotwright.layout.cavity.WallRay;
import shotwright.region.Region;

/**
 * Metal round the cavities: how far from the edge, how thick the floors, from which bar; and what it gives under the cavity pressure.
 * Minimum metal in aluminium (common practice): edge 15 mm or the depth, floor 10 mm, at most half the cavity's width is ever needed.
 */
public final class MetalPlan {
    /** Least metal between cavity and edge. */
    public static final double EDGE_MM = 15;

    /** Least metal between cavities. */
    public static final double BETWEEN_MM = 12;

    /** Least floor. */
    public static final double FLOOR_MM = 10;

    /** How far a wall or floor may give before it flashes or grips (common practice, 0.01 … 0.02 mm on the bench). */
    public static final double GIVE_MM = 0.02;

    private static final double WIDEST_EDGE_MM = 45;
    private static final double SMALLEST_CORE_MM = 0.5;

    private final CavityShape shape;
    private final double pressureMpa;
    private final Bar bar;

    public MetalPlan(CavityShape shape, double pressureMpa, Bar bar) {
        this.shape = shape;
        this.pressureMpa = pressureMpa;
        this.bar = bar;
    }

    private double depthMm() {
        return Math.max(shape.depthAMm(), shape.depthBMm());
    }

    /** Metal from a cavity to the edge: 15 mm, or the depth, or what keeps the wall within its limits. */
    public double edgeMm() {
        double edge = Math.max(EDGE_MM, Math.ceil(depthMm()));
        while (edge < WIDEST_EDGE_MM && !wall("", depthMm(), edge, true).holds()) edge += 1;
        return edge;
    }

    /** Metal between cavities: 12 mm, or 0.6 of the depth, or what keeps the wall within its limits. */
    public double betweenMm() {
        double between = Math.max(BETWEEN_MM, Math.ceil(0.6 * depthMm()));
        while (between < WIDEST_EDGE_MM && !wall("", depthMm(), between, false).holds()) between += 1;
        return between;
    }

    /** Floor under a cavity: 10 mm or what a clamped plate needs, never more than half the cavity's width. */
    public double floorMm() {
        Vec2 size = shape.shadow().max().minus(shape.shadow().min());
        double needed = FLOOR_MM, most = Math.max(FLOOR_MM, Math.min(size.x(), size.y()) / 2);
        while (needed < most && !floor("", needed).holds()) needed += 0.5;
        return Math.min(needed, most);
    }

    /** A check with its verdict. */
    private record Judged(StrengthCheck check) {
        boolean holds() {
            return check.deflectionMm() <= check.deflectionLimitMm() && check.stressMpa() <= check.stressLimitMpa();
        }
    }

    private Judged floor(String name, double thickness) {
        Vec2 size = shape.shadow().max().minus(shape.shadow().min());
        return new Judged(
                new StrengthCheck(
                        name,
                        thickness,
                        PlateUnderPressure.rectangleDeflectionMm(
                                pressureMpa, size.x(), size.y(), thickness, bar.modulusMpa()),
                        GIVE_MM,
                        PlateUnderPressure.rectangleStressMpa(pressureMpa, size.x(), size.y(), thickness),
                        bar.workMpa(),
                        words(
                                "rectangular plate held at its border, box of the cavity (Roark); a platen behind it makes it stiffer")));
    }

    private String words(String method) {
        return String.format(Locale.ROOT, "%s, %.0f MPa in the cavity", method, pressureMpa);
    }

    private Judged wall(String name, double depth, double thickness, boolean outside) {
        Vec2 size = shape.shadow().max().minus(shape.shadow().min());
        double length = Math.max(size.x(), size.y());
        double e = bar.modulusMpa();
        double d = SideWall.cantileverDeflectionMm(pressureMpa, depth, thickness, e),
                s = SideWall.cantileverStressMpa(pressureMpa, depth, thickness);
        String method = "free-standing wall, as deep as the cavity (closed form)";
        double beam = SideWall.fixedBeamDeflectionMm(pressureMpa, length, thickness, e);
        if (beam < d) {
            d = beam;
            s = SideWall.fixedBeamStressMpa(pressureMpa, length, thickness);
            method = "wall held at both ends (closed form)";
        }
        if (outside && round()) {
            double ri = Math.sqrt(shape.shadow().convexHull().area() / Math.PI), ro = ri + thickness;
            double ring = SideWall.ringDeflectionMm(pressureMpa, ri, ro, e, bar.poissonRatio());
            if (ring < d) {
                d = ring;
                s = SideWall.ringStressMpa(pressureMpa, ri, ro);
                method = "round cavity as a thick ring (Lamé)";
            }
        }
        return new Judged(new StrengthCheck(name, thickness, d, GIVE_MM, s, bar.workMpa(), words(method)));
    }

    private boolean round() {
        Region hull = shape.shadow().convexHull();
        double p = hull.perimeter();
        return 4 * Math.PI * hull.area() / (p * p) > 0.93;
    }

    /** All checks of a finished block. */
    public List<StrengthCheck> checks(double edgeMm, double betweenMm, double floorAMm, double floorBMm) {
        List<StrengthCheck> out = new ArrayList<>();
        out.add(floor("floor of half A", floorAMm).check);
        out.add(floor("floor of half B", floorBMm).check);
        if (shape.depthAMm() > 0.5) out.add(wall("side wall of half A", shape.depthAMm(), edgeMm, true).check);
        if (shape.depthBMm() > 0.5) out.add(wall("side wall of half B", shape.depthBMm(), edgeMm, true).check);
        if (Double.isFinite(betweenMm)) out.add(wall("wall between cavities", depthMm(), betweenMm, false).check);
        StrengthCheck core = slenderestCore();
        if (core != null) out.add(core);
        return out;
    }

    /** The core in the smallest through hole, pushed aside by half the cavity pressure. */
    private @Nullable StrengthCheck slenderestCore() {
        StrengthCheck worst = null;
        for (List<Vec2> ring : shape.shadow().holes()) {
            Region hole = Region.of(ring);
            double width = 4 * hole.area() / hole.perimeter();
            if (!(width > SMALLEST_CORE_MM)) continue;
            double height = besideMm(ring);
            if (!(height > 0)) continue;
            double inertia = CoreBending.inertiaMm4(width, 0), dp = pressureMpa / 2;
            StrengthCheck c = new StrengthCheck(
                    String.format(Locale.ROOT, "core of the %.1f mm hole, %.1f mm tall", width, height),
                    width,
                    CoreBending.deflectionMm(dp, width, height, bar.modulusMpa(), inertia),
                    GIVE_MM,
                    CoreBending.stressMpa(dp, width, height, inertia),
                    bar.workMpa(),
                    "core fixed at its foot, half the cavity pressure from one side (KAZ p. 415); a seat in the other half holds its tip");
            if (worst == null || c.deflectionMm() > worst.deflectionMm()) worst = c;
        }
        return worst;
    }

    /** Height of the plastic round a hole, the median of a dozen places just outside its border. */
    private double besideMm(List<Vec2> ring) {
        WallRay ray = new WallRay(shape.tree());
        double low = shape.box().min().z() - 1, span = shape.box().size().z() + 2;
        Region around = Region.of(ring).offset(0.2);
        List<Vec2> border = around.isEmpty() ? ring : around.exteriors().getFirst();
        double[] heights = new double[12];
        for (int i = 0; i < heights.length; i++) {
            Vec2 p = border.get(i * border.size() / heights.length);
            WallRay.Piece piece = ray.first(p.atZ(low), Vec3.Z, span);
            heights[i] = Double.isFinite(piece.fromMm()) ? piece.lengthMm() : 0;
        }
        java.util.Arrays.sort(heights);
        return heights[heights.length / 2];
    }

    /** The thinnest bar that gives a finished thickness, or null when the rack has none. */
    public static @Nullable Bar barFor(
            List<Bar> bars, double finishedMm, double narrowSideMm, @Nullable String wished) {
        return bars.stream()
                .filter(b -> wished == null || b.id().equals(wished))
                .filter(b -> b.thicknessMm() - 2 * b.faceMm() >= finishedMm - 1e-6)
                .filter(b -> b.widthMm() + 1e-6 >= narrowSideMm)
                .min(Comparator.comparingDouble(Bar::thicknessMm).thenComparingDouble(Bar::widthMm))
                .orElse(null);
    }
}
