package shotwright.job;

import com.fasterxml.jackson.annotation.JsonInclude;
import com.fasterxml.jackson.annotation.JsonPropertyOrder;
import java.util.List;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import shotwright.geom.Vec3;
import shotwright.review.remedy.DraftWish;
import shotwright.review.remedy.NeutralEnd;

/**
 * The decisions of a job and nothing else; what is null or empty is left to the program. Its schema is published in
 * {@code docs/job-card.schema.json}.
 *
 * @param card always {@code "shotwright job card 1"}
 * @param job a name for the job, shown on every page
 * @param customer who it is for, shown on quote and summary
 * @param unit unit of a file that states none: mm, cm, m or in
 * @param mend what may be mended: flip, winding, holes
 * @param body which body of a file with several, counted from 1
 * @param pull opening direction in the file's axes, three numbers
 * @param resins resins by id of the rack, the first sets the shrink
 * @param press press by id of the rack
 * @param secondPress the press the mold must fit as well, for example the customer's own
 * @param cavities how many up
 * @param quantities quantities to price
 * @param material mold material by id of the rack
 * @param cutters cutters the shop owns by id of the rack; empty for the whole rack
 * @param mill mill by id of the rack
 * @param control dialect the mill's control reads, by id of the rack
 * @param layout wishes about parting, gate, runner, dowels and block
 * @param addDraftDeg draft that walls of a proposed part shall have; null for no proposal
 * @param draftNeutral which end of a wall keeps its size in it: parting or open-edge
 * @param lengthsIn mm or in: what summaries put first
 * @param currency word or sign put behind money
 */
@JsonPropertyOrder({
    "card",
    "job",
    "customer",
    "unit",
    "mend",
    "body",
    "pull",
    "resins",
    "press",
    "secondPress",
    "cavities",
    "quantities",
    "material",
    "cutters",
    "mill",
    "control",
    "layout",
    "addDraftDeg",
    "draftNeutral",
    "lengthsIn",
    "currency"
})
@JsonInclude(JsonInclude.Include.NON_EMPTY)
public record JobCard(
        String card,
        @Nullable String job,
        @Nullable String customer,
        @Nullable String unit,
        Set<String> mend,
        @Nullable Integer body,
        List<Double> pull,
        List<String> resins,
        @Nullable String press,
        @Nullable String secondPress,
        @Nullable Integer cavities,
        List<Integer> quantities,
        @Nullable String material,
        List<String> cutters,
        @Nullable String mill,
        @Nullable String control,
        LayoutCard layout,
        @Nullable Double addDraftDeg,
        @Nullable String draftNeutral,
        @Nullable String lengthsIn,
        @Nullable String currency) {

    /** First line of every card. */
    public static final String KIND = "shotwright job card 1";

    @SuppressWarnings("ConstantValue") // a card read from JSON leaves out what it does not decide
    public JobCard {
        if (card == null || !card.equals(KIND))
            throw new JobException(
                    "card: this is '" + card + "', not a job card of this program. Its first entry must be \"card\": \""
                            + KIND + "\".",
                    null);
        mend = mend == null ? Set.of() : Set.copyOf(mend);
        pull = pull == null ? List.of() : List.copyOf(pull);
        resins = resins == null ? List.of() : List.copyOf(resins);
        quantities = quantities == null ? List.of() : List.copyOf(quantities);
        cutters = cutters == null ? List.of() : List.copyOf(cutters);
        layout = layout == null ? LayoutCard.EMPTY : layout;
        if (!pull.isEmpty()
                && (pull.size() != 3
                        || pull.stream().allMatch(v -> v == 0)
                        || !pull.stream().allMatch(Double::isFinite)))
            throw new JobException(
                    "pull: " + pull + " must be three numbers, not all zero, for example [0, 0, 1].", null);
        if (cavities != null && (cavities < 1 || cavities > 16))
            throw new JobException("cavities: " + cavities + " must be between 1 and 16.", null);
        for (int q : quantities) {
            if (q < 1) throw new JobException("quantities: " + q + " must be 1 or more.", null);
        }
        if (addDraftDeg != null && !(addDraftDeg >= DraftWish.LEAST_DEG && addDraftDeg <= DraftWish.MOST_DEG))
            throw new JobException(
                    "addDraftDeg: " + addDraftDeg + "° cannot be added (--add-draft). Take " + DraftWish.LEAST_DEG
                            + "° to " + DraftWish.MOST_DEG + "°.",
                    null);
        if (draftNeutral != null && NeutralEnd.named(draftNeutral).isEmpty())
            throw new JobException(
                    "“" + draftNeutral
                            + "” is not known for the end that keeps its size (--neutral, or draftNeutral on the job card). Take"
                            + " parting or open-edge.",
                    null);
        if (lengthsIn != null && !Set.of("mm", "in").contains(lengthsIn))
            throw new JobException(
                    "“" + lengthsIn
                            + "” is not known for lengths (--lengths, or lengthsIn on the job card). Take mm or in.",
                    null);
    }

    /** A card that decides nothing. */
    public static JobCard empty() {
        return new JobCard(
                KIND,
                null,
                null,
                null,
                Set.of(),
                null,
                List.of(),
                List.of(),
                null,
                null,
                null,
                List.of(),
                null,
                List.of(),
                null,
                null,
                LayoutCard.EMPTY,
                null,
                null,
                null,
                null);
    }

    /** The draft to propose, or null. */
    public @Nullable DraftWish draftWish() {
        if (addDraftDeg == null) return null;
        NeutralEnd end = draftNeutral == null
                ? NeutralEnd.PARTING
                : NeutralEnd.named(draftNeutral).orElseThrow();
        return new DraftWish(addDraftDeg, end);
    }

    /** The pull as a unit direction, or null when it is left to the review. */
    public @Nullable Vec3 pullDirection() {
        return pull.isEmpty() ? null : new Vec3(pull.get(0), pull.get(1), pull.get(2)).unit();
    }

    /** The same with what the program took where the card leaves it open; pull, press and number of cavities as taken. */
    JobCard filledIn(Vec3 pullTaken, String resin, String pressTaken, int cavitiesTaken) {
        return new JobCard(
                card,
                job,
                customer,
                unit,
                mend,
                body,
                List.of(pullTaken.x(), pullTaken.y(), pullTaken.z()),
                resins.isEmpty() ? List.of(resin) : resins,
                pressTaken,
                secondPress,
                cavitiesTaken,
                quantities,
                material,
                cutters,
                mill,
                control,
                layout,
                addDraftDeg,
                draftNeutral,
                lengthsIn,
                currency);
    }
}
