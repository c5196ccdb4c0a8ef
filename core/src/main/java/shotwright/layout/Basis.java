package shotwright.layout;

import java.util.Comparator;
import java.util.function.Predicate;
import org.jspecify.annotations.Nullable;
import shotwright.geom.Box3;
import shotwright.geom.Transform;
import shotwright.geom.Vec3;
import shotwright.layout.cavity.CavityShape;
import shotwright.layout.cavity.FlowGrid;
import shotwright.layout.cavity.Rim;
import shotwright.layout.cavity.RimSteps;
import shotwright.layout.release.Grip;
import shotwright.mesh.MassProperties;
import shotwright.progress.Progress;

/**
 * What is settled before anything is placed: shrink, parting, the cavity's shape, how fast it fills, how hard it is held.
 *
 * @param in the input
 * @param shrink shares along x, y and the pull
 * @param parting where the halves part
 * @param shape the scaled cavity
 * @param rim its outer parting loop
 * @param steps how far the parting surface leaves its plane
 * @param grid ways of the melt
 * @param cavityMm3 volume of one cavity
 * @param surfaceMm2 surface of one cavity
 * @param fillS fill time planned
 * @param flowMm3PerS flow into one cavity
 * @param designMpa cavity pressure the metal is designed for
 * @param grip hold of both halves on one part
 * @param keeps the half that keeps the part
 */
record Basis(
        LayoutInput in,
        Vec3 shrink,
        PartingChoice parting,
        CavityShape shape,
        Rim rim,
        RimSteps steps,
        FlowGrid grid,
        double cavityMm3,
        double surfaceMm2,
        double fillS,
        double flowMm3PerS,
        double designMpa,
        Grip grip,
        Half keeps) {

    private static final double FILL_PER_WALL2 = 0.03;
    private static final double SLOWEST_FRONT_MM_PER_S = 25;

    static Basis of(LayoutInput in, Progress progress) {
        Melt melt = in.melt();
        double usual =
                Shrink.fromRangeShare(melt.lowShrinkShare(), melt.highShrinkShare(), in.wallMm(), melt.crystalline());
        LayoutWishes w = in.wishes();
        Vec3 shrink = new Vec3(or(w.shrinkX(), usual), or(w.shrinkY(), usual), or(w.shrinkZ(), usual));
        Vec3 factors =
                new Vec3(Shrink.moldFactor(shrink.x()), Shrink.moldFactor(shrink.y()), Shrink.moldFactor(shrink.z()));
        progress.at("choosing the parting line", 0);
        PartingChoice parting = PartingRule.of(in);
        CavityShape shape = CavityShape.of(in.part().mesh(), in.part().shadow(), parting.pulledZMm(), factors);
        progress.at("walking round the rim", 0.2);
        RimSteps steps = RimSteps.of(in.part(), shape, parting.pulledZMm());
        Rim rim = Rim.of(shape, parting.kind() == PartingChoice.Kind.PLANE ? steps.levelRim() : steps);
        FlowGrid grid = FlowGrid.of(shape, progress.part(0.3, 0.6));
        MassProperties mass = MassProperties.of(shape.mesh());
        double shot = mass.volumeMm3() * in.cavities();
        double freezing = FILL_PER_WALL2 * in.wallMm() * in.wallMm() / melt.diffusivityMm2PerS();
        double byWall = Math.clamp(Math.min(freezing, shape.box().diagonal() / SLOWEST_FRONT_MM_PER_S), 0.3, 5);
        double fill = or(w.fillTimeS(), Math.max(byWall, shot / in.press().flowMm3PerS()));
        Grip grip = Grip.of(shape, melt, in.wallMm(), progress.part(0.6, 1));
        Half keeps = w.keepsPart() != null ? w.keepsPart() : grip.inBN() >= grip.inAN() ? Half.B : Half.A;
        return new Basis(
                in,
                shrink,
                parting,
                shape,
                rim,
                steps,
                grid,
                mass.volumeMm3(),
                mass.surfaceAreaMm2(),
                fill,
                mass.volumeMm3() / fill,
                Math.min(melt.cavityMpa(), in.press().pressureMpa()),
                grip,
                keeps);
    }

    private static double or(@Nullable Double wish, double usual) {
        return wish != null ? wish : usual;
    }

    /** Hold of a half on one part, N. */
    double gripN(Half half) {
        return half == Half.A ? grip.inAN() : grip.inBN();
    }

    /** Mass of one part, g. */
    double partG() {
        return cavityMm3 / 1000 * in.melt().densityGPerCm3();
    }

    /** Points of the cavity frame that the customer keeps clear. */
    Predicate<Vec3> keepClear() {
        Transform toFile = toFile();
        double slack = in.part().part().tolerance().shopMm();
        return p -> {
            Vec3 q = toFile.apply(p);
            for (Box3 b : in.wishes().keepClear()) if (b.grow(slack).contains(q)) return true;
            return false;
        };
    }

    /** From the cavity frame to the axes of the file. */
    Transform toFile() {
        return shape.fromPulled().inverse().then(in.part().toPulled().inverse());
    }

    /** From the axes of the file to the cavity frame. */
    Transform fromFile() {
        return in.part().toPulled().then(shape.fromPulled());
    }

    /** The bar that is thickest on the rack: for design values before one is chosen; a plain 6061 plate when the rack is empty. */
    ShopRack.Bar designBar() {
        String wish = in.wishes().stock();
        return in.shop().bars().stream()
                .filter(b -> wish == null || b.id().equals(wish))
                .max(Comparator.comparingDouble(ShopRack.Bar::thicknessMm))
                .orElse(new ShopRack.Bar("", "6061-T6", 0, 0, 0, 3, 0.5, 69_000, 275, 90, 0.33));
    }
}
