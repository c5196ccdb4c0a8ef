package shotwright.sizing;

import java.util.List;
import org.jspecify.annotations.Nullable;
import shotwright.finding.Finding;
import shotwright.measure.Band;
import shotwright.measure.Units;
import shotwright.press.Press;
import shotwright.resin.Resin;

/**
 * What station 30 leaves behind.
 *
 * @param resin the resin that counts
 * @param press our press
 * @param pressGiven true when the owner set it
 * @param secondPress the press the mold must fit as well; null when there is none
 * @param cavities how many up
 * @param cavitiesGiven true when the owner set it
 * @param projectedAreaShotMm2 projected area of all cavities, with the feed once the layout has told it
 * @param feedKnown true when the feed comes from the layout
 * @param feedAreaMm2 projected area of the feed, estimated before the layout
 * @param feedVolumeMm3 volume of the feed, estimated before the layout
 * @param clamp clamp three ways
 * @param shotG mass of one shot with feed
 * @param shotVolumeMm3 cold volume of one shot with feed
 * @param injectedCm3 melt volume to inject, leak included
 * @param strokeMm injection stroke it takes
 * @param utilisationShare share of the press's rating
 * @param residenceS time in the barrel
 * @param cycleS cycle it was reckoned with
 * @param roughMpa melt pressure, rough (±40 %)
 * @param mold least block
 * @param verdict our press and the second one together
 * @param ours what our press says
 * @param second what the second press says; null when there is none
 * @param presses what every press of the rack says, smallest clamp first
 * @param cavityRows one, two, four … up
 * @param resinRows the other resins
 * @param findings what has to be said
 */
public record SizingResult(
        Resin resin,
        Press press,
        boolean pressGiven,
        @Nullable Press secondPress,
        int cavities,
        boolean cavitiesGiven,
        double projectedAreaShotMm2,
        boolean feedKnown,
        double feedAreaMm2,
        double feedVolumeMm3,
        ClampNeed clamp,
        double shotG,
        double shotVolumeMm3,
        double injectedCm3,
        double strokeMm,
        double utilisationShare,
        double residenceS,
        double cycleS,
        double roughMpa,
        MoldEstimate mold,
        Verdict verdict,
        PressVerdict ours,
        @Nullable PressVerdict second,
        List<PressVerdict> presses,
        List<CavityRow> cavityRows,
        List<ResinRow> resinRows,
        List<Finding> findings) {
    public SizingResult {
        presses = List.copyOf(presses);
        cavityRows = List.copyOf(cavityRows);
        resinRows = List.copyOf(resinRows);
        findings = List.copyOf(findings);
    }

    /** Clamp needed, kN: the bare rule, no allowance on top. */
    public double clampNeededKn() {
        return clamp.neededKn();
    }

    /** The same in short tons. */
    public double clampNeededShortTons() {
        return Units.knToShortTons(clamp.neededKn());
    }

    /** Lowest to highest of all ways to the clamp, kN. */
    public Band clampBandKn() {
        return clamp.bandKn();
    }
}
