package shotwright.layout;

import java.util.List;
import org.jspecify.annotations.Nullable;
import shotwright.geom.Box3;
import shotwright.geom.Vec3;
import shotwright.layout.Gate.Kind;

/**
 * What a person, or a later station's proposal, has decided; everything left null is chosen by the layout. Places are in the axes of the file.
 *
 * @param partingZMm height of the parting plane in the pulled frame of the unscaled part
 * @param gateAtMm where the plastic shall enter
 * @param gateKind how it shall enter
 * @param gateWidthMm gate width
 * @param gateDepthMm gate depth
 * @param runnerMm diameter of the runner
 * @param keepClear boxes in which the customer wants no gate mark
 * @param ventsAtMm places that must be vented besides the usual ones
 * @param fillTimeS fill time
 * @param shrinkX shrink along x of the pulled frame, as a share
 * @param shrinkY along y
 * @param shrinkZ along the pull
 * @param keepsPart half that shall keep the part
 * @param dowel id of the dowel on the rack
 * @param stock id of the bar on the rack
 */
public record LayoutWishes(
        @Nullable Double partingZMm,
        @Nullable Vec3 gateAtMm,
        @Nullable Kind gateKind,
        @Nullable Double gateWidthMm,
        @Nullable Double gateDepthMm,
        @Nullable Double runnerMm,
        List<Box3> keepClear,
        List<Vec3> ventsAtMm,
        @Nullable Double fillTimeS,
        @Nullable Double shrinkX,
        @Nullable Double shrinkY,
        @Nullable Double shrinkZ,
        @Nullable Half keepsPart,
        @Nullable String dowel,
        @Nullable String stock) {
    /** Nothing decided. */
    public static final LayoutWishes NONE = new LayoutWishes(
            null, null, null, null, null, null, List.of(), List.of(), null, null, null, null, null, null, null);

    public LayoutWishes {
        keepClear = List.copyOf(keepClear);
        ventsAtMm = List.copyOf(ventsAtMm);
    }

    /** The same with another gate: a person's or a station's proposal. */
    public LayoutWishes gate(
            @Nullable Vec3 atMm, @Nullable Kind kind, @Nullable Double widthMm, @Nullable Double depthMm) {
        return new LayoutWishes(
                partingZMm,
                atMm,
                kind,
                widthMm,
                depthMm,
                runnerMm,
                keepClear,
                ventsAtMm,
                fillTimeS,
                shrinkX,
                shrinkY,
                shrinkZ,
                keepsPart,
                dowel,
                stock);
    }

    /** The same with another parting height. */
    public LayoutWishes parting(@Nullable Double zMm) {
        return new LayoutWishes(
                zMm,
                gateAtMm,
                gateKind,
                gateWidthMm,
                gateDepthMm,
                runnerMm,
                keepClear,
                ventsAtMm,
                fillTimeS,
                shrinkX,
                shrinkY,
                shrinkZ,
                keepsPart,
                dowel,
                stock);
    }

    /** The same with another fill time and further vents. */
    public LayoutWishes filling(@Nullable Double timeS, List<Vec3> vents) {
        return new LayoutWishes(
                partingZMm,
                gateAtMm,
                gateKind,
                gateWidthMm,
                gateDepthMm,
                runnerMm,
                keepClear,
                vents,
                timeS,
                shrinkX,
                shrinkY,
                shrinkZ,
                keepsPart,
                dowel,
                stock);
    }
}
