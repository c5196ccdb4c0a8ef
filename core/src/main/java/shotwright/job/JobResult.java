package shotwright.job;

import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import shotwright.cool.CoolResult;
import shotwright.fill.FillResult;
import shotwright.finding.Finding;
import shotwright.finding.Severity;
import shotwright.intake.IntakeResult;
import shotwright.layout.LayoutResult;
import shotwright.machining.MachiningResult;
import shotwright.mold.MoldResult;
import shotwright.mold.exact.ExactMold;
import shotwright.quote.PriceBand;
import shotwright.quote.QuoteResult;
import shotwright.review.ReviewResult;
import shotwright.review.remedy.DraftRemedy;
import shotwright.sheet.PressSheet;
import shotwright.sheet.ResinComparison;
import shotwright.sheet.TrialOrder;
import shotwright.sizing.SizingResult;

/**
 * Everything the line answered for one job. A station that was not reached, or could not go on, is null.
 *
 * @param card the decisions as they were used, filled in where the program decided
 * @param intake what the file held
 * @param review moldability
 * @param draft a proposed part with more draft; null when none was asked for
 * @param firstPrice price and lead time from defaults, for the first answer
 * @param sizing presses and cavities
 * @param layout places and sizes
 * @param mold the halves
 * @param exactMold the halves as exact solids; null when the part came as triangles
 * @param fill first-order filling with the first resin
 * @param cool first-order cooling with the first resin
 * @param resins the same mold in every resin of the card
 * @param trialOrder in which order to try them, when there are several
 * @param machining programs of both halves, timed and proved
 * @param quote prices
 * @param sheet press sheet of the first resin
 * @param takenUp stations whose results were still valid and taken up from the job folder
 * @param refusals why a station could not go on
 */
public record JobResult(
        JobCard card,
        IntakeResult intake,
        @Nullable ReviewResult review,
        @Nullable DraftRemedy draft,
        @Nullable PriceBand firstPrice,
        @Nullable SizingResult sizing,
        @Nullable LayoutResult layout,
        @Nullable MoldResult mold,
        @Nullable ExactMold exactMold,
        @Nullable FillResult fill,
        @Nullable CoolResult cool,
        @Nullable ResinComparison resins,
        @Nullable TrialOrder trialOrder,
        @Nullable MachiningResult machining,
        @Nullable QuoteResult quote,
        @Nullable PressSheet sheet,
        List<Station> takenUp,
        List<Finding> refusals) {

    public JobResult {
        takenUp = List.copyOf(takenUp);
        refusals = List.copyOf(refusals);
    }

    /** A job that did not get past the intake. */
    static JobResult of(JobCard card, IntakeResult intake) {
        return new JobResult(
                card, intake, null, null, null, null, null, null, null, null, null, null, null, null, null, null,
                List.of(), List.of());
    }

    /** Every finding of every station, in working order. */
    public List<Finding> findings() {
        List<Finding> all = new ArrayList<>(intake.findings());
        if (review != null) all.addAll(review.findings());
        if (draft != null) all.addAll(draft.findings());
        if (sizing != null) all.addAll(sizing.findings());
        if (layout != null) all.addAll(layout.findings());
        if (mold != null) all.addAll(mold.findings());
        if (exactMold != null) all.addAll(exactMold.findings());
        if (fill != null) all.addAll(fill.findings());
        if (cool != null) all.addAll(cool.findings());
        if (resins != null) all.addAll(resins.findings());
        if (trialOrder != null) all.addAll(trialOrder.findings());
        if (machining != null) all.addAll(machining.findings());
        if (quote != null) all.addAll(quote.findings());
        if (sheet != null) all.addAll(sheet.findings());
        all.addAll(refusals);
        return all;
    }

    /** The part or the plan cannot go on as it is. */
    public boolean hasStop() {
        return findings().stream().anyMatch(f -> f.severity() == Severity.STOP);
    }

    /** Whether lengths go in inches first. */
    public boolean inch() {
        return "in".equals(card.lengthsIn());
    }
}
