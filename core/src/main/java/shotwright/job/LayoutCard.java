package shotwright.job;

import com.fasterxml.jackson.annotation.JsonInclude;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * Wishes about the layout on a job card; what is null is left to the program. Lengths in mm.
 *
 * @param partingZMm height of the parting plane in the pulled part's own frame
 * @param gateKind edge, fan, tab, submarine or direct
 * @param gateAtMm place of the gate on the part, file axes
 * @param gateWidthMm gate width
 * @param gateDepthMm gate depth
 * @param keepClearMm areas without a gate: boxes in file axes, six numbers each: smallest x, y, z, largest x, y, z
 * @param shrinkPercent shrink along x, y and the pull, in per cent
 * @param keepsPart A or B
 * @param dowel dowel by id of the rack
 * @param runnerMm runner diameter or width
 */
@JsonInclude(JsonInclude.Include.NON_EMPTY)
public record LayoutCard(
        @Nullable Double partingZMm,
        @Nullable String gateKind,
        List<Double> gateAtMm,
        @Nullable Double gateWidthMm,
        @Nullable Double gateDepthMm,
        List<List<Double>> keepClearMm,
        List<Double> shrinkPercent,
        @Nullable String keepsPart,
        @Nullable String dowel,
        @Nullable Double runnerMm) {

    /** No wishes. */
    public static final LayoutCard EMPTY =
            new LayoutCard(null, null, List.of(), null, null, List.of(), List.of(), null, null, null);

    @SuppressWarnings("ConstantValue") // a card read from JSON leaves out what it does not decide
    public LayoutCard {
        gateAtMm = gateAtMm == null ? List.of() : List.copyOf(gateAtMm);
        keepClearMm = keepClearMm == null ? List.of() : List.copyOf(keepClearMm);
        shrinkPercent = shrinkPercent == null ? List.of() : List.copyOf(shrinkPercent);
        if (!gateAtMm.isEmpty() && gateAtMm.size() != 3)
            throw new JobException(
                    "layout.gateAtMm: " + gateAtMm + " must be three numbers: x, y, z on the part.", null);
        for (List<Double> box : keepClearMm) {
            if (box.size() != 6)
                throw new JobException(
                        "layout.keepClearMm: " + box + " must be six numbers: smallest x, y, z, largest x, y, z.",
                        null);
        }
        if (!shrinkPercent.isEmpty() && shrinkPercent.size() != 3)
            throw new JobException(
                    "layout.shrinkPercent: " + shrinkPercent + " must be three numbers: along x, y and the pull.",
                    null);
        for (double s : shrinkPercent) {
            if (s < -1 || s > 8)
                throw new JobException(
                        "layout.shrinkPercent: " + s + " % is no shrink a plastic has (−1 to 8 %).", null);
        }
        if (keepsPart != null && !keepsPart.equals("A") && !keepsPart.equals("B"))
            throw new JobException("layout.keepsPart: '" + keepsPart + "' must be A or B.", null);
    }
}
