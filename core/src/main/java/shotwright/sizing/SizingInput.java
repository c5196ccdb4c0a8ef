package shotwright.sizing;

import java.util.List;
import org.jspecify.annotations.Nullable;
import shotwright.geom.Box3;
import shotwright.geom.Vec2;
import shotwright.geom.Vec3;
import shotwright.press.Press;
import shotwright.resin.Resin;
import shotwright.review.ReviewResult;

/**
 * What station 30 needs to know.
 *
 * @param partVolumeMm3 volume of one part
 * @param projectedAreaMm2 exact projected area of one part, holes taken out
 * @param centreOffMm centre of that area from the middle of its outline box
 * @param sizeMm outline box in the pulled frame, z along the pull
 * @param wallMm median wall
 * @param wallMaxMm thickest wall
 * @param resins resins to look at; the first counts
 * @param presses presses of the rack
 * @param press the press decided on; null when the station shall choose
 * @param secondPress a press the mold must fit as well; null when there is none
 * @param cavities cavities decided on; null when the station shall choose
 * @param quantity parts the cavity table is weighed for
 * @param prices prices of the cavity table
 * @param feedAreaMm2 projected area of the feed outside the cavities' shadow; null before the layout
 * @param feedVolumeMm3 volume of the feed; null before the layout
 * @param cycleS cycle; null before cooling is known
 * @param fillClampKn highest clamp the fill saw; null before it ran
 */
public record SizingInput(
        double partVolumeMm3,
        double projectedAreaMm2,
        Vec2 centreOffMm,
        Vec3 sizeMm,
        double wallMm,
        double wallMaxMm,
        List<Resin> resins,
        List<Press> presses,
        @Nullable Press press,
        @Nullable Press secondPress,
        @Nullable Integer cavities,
        int quantity,
        CavityPrices prices,
        @Nullable Double feedAreaMm2,
        @Nullable Double feedVolumeMm3,
        @Nullable Double cycleS,
        @Nullable Double fillClampKn) {
    /** Quantity the cavity table is weighed for when none is given. */
    public static final int USUAL_QUANTITY = 500;

    public SizingInput {
        resins = List.copyOf(resins);
        presses = List.copyOf(presses);
        if (resins.isEmpty()) throw new IllegalArgumentException("resins: at least one is needed");
        if (presses.isEmpty() && press == null) throw new IllegalArgumentException("presses: at least one is needed");
        positive("partVolumeMm3", partVolumeMm3);
        positive("projectedAreaMm2", projectedAreaMm2);
        positive("wallMm", wallMm);
        positive("wallMaxMm", wallMaxMm);
        if (cavities != null && cavities < 1)
            throw new IllegalArgumentException("cavities: " + cavities + " is below one");
        if (quantity < 1) throw new IllegalArgumentException("quantity: " + quantity + " is below one");
    }

    /** The first question, straight from the review: nothing of feed, cycle or fill is known yet. */
    public static SizingInput of(ReviewResult review, List<Resin> resins, List<Press> presses, CavityPrices prices) {
        Box3 box = review.pulled().mesh().box();
        Vec3 middle = box.centre();
        Vec2 off = new Vec2(
                review.projectedCentroidMm().x() - middle.x(),
                review.projectedCentroidMm().y() - middle.y());
        return new SizingInput(
                review.pulled().part().mass().volumeMm3(),
                review.projectedAreaMm2(),
                off,
                box.size(),
                review.wall().medianMm(),
                review.wall().maxMm(),
                resins,
                presses,
                null,
                null,
                null,
                USUAL_QUANTITY,
                prices,
                null,
                null,
                null,
                null);
    }

    /** The same job with what a person decided; null leaves a choice to the station. */
    public SizingInput decided(@Nullable Press newPress, @Nullable Press newSecond, @Nullable Integer newCavities) {
        return new SizingInput(
                partVolumeMm3,
                projectedAreaMm2,
                centreOffMm,
                sizeMm,
                wallMm,
                wallMaxMm,
                resins,
                presses,
                newPress,
                newSecond,
                newCavities,
                quantity,
                prices,
                feedAreaMm2,
                feedVolumeMm3,
                cycleS,
                fillClampKn);
    }

    /** The same job for another quantity. */
    public SizingInput quantity(int newQuantity) {
        return new SizingInput(
                partVolumeMm3,
                projectedAreaMm2,
                centreOffMm,
                sizeMm,
                wallMm,
                wallMaxMm,
                resins,
                presses,
                press,
                secondPress,
                cavities,
                newQuantity,
                prices,
                feedAreaMm2,
                feedVolumeMm3,
                cycleS,
                fillClampKn);
    }

    /** The same job with prices that know more. */
    public SizingInput priced(CavityPrices newPrices) {
        return new SizingInput(
                partVolumeMm3,
                projectedAreaMm2,
                centreOffMm,
                sizeMm,
                wallMm,
                wallMaxMm,
                resins,
                presses,
                press,
                secondPress,
                cavities,
                quantity,
                newPrices,
                feedAreaMm2,
                feedVolumeMm3,
                cycleS,
                fillClampKn);
    }

    /** The same job after layout, cooling and fill; null where a station did not run. */
    public SizingInput known(
            @Nullable Double newFeedAreaMm2,
            @Nullable Double newFeedVolumeMm3,
            @Nullable Double newCycleS,
            @Nullable Double newFillClampKn) {
        return new SizingInput(
                partVolumeMm3,
                projectedAreaMm2,
                centreOffMm,
                sizeMm,
                wallMm,
                wallMaxMm,
                resins,
                presses,
                press,
                secondPress,
                cavities,
                quantity,
                prices,
                newFeedAreaMm2,
                newFeedVolumeMm3,
                newCycleS,
                newFillClampKn);
    }

    /** How deep the part is along the pull, mm. */
    public double depthMm() {
        return sizeMm.z();
    }

    /** The resin that counts. */
    public Resin resin() {
        return resins.getFirst();
    }

    private static void positive(String name, double value) {
        if (!(value > 0) || !Double.isFinite(value))
            throw new IllegalArgumentException(name + ": " + value + " is not above zero");
    }
}
