package shotwright.sizing;

import org.jspecify.annotations.Nullable;
import shotwright.press.Press;
import shotwright.resin.Resin;

/**
 * What a number of cavities in one resin asks of one press.
 *
 * @param input the job
 * @param press the press
 * @param resin the resin
 * @param cavitiesCount how many up
 * @param mold block estimated for this press
 * @param feed feed, from the layout or estimated
 */
record Load(SizingInput input, Press press, Resin resin, int cavitiesCount, MoldEstimate mold, FeedEstimate feed) {
    /** Share of the injection pressure a feed may use up on a benchtop press (common practice). */
    static final double FEED_SHARE = 0.3;

    static Load of(SizingInput input, Press press, Resin resin, int cavities) {
        MoldEstimate mold = MoldEstimate.of(
                cavities,
                input.sizeMm().x(),
                input.sizeMm().y(),
                input.depthMm(),
                press.moldMinMm(),
                press.moldMaxMm());
        FeedEstimate feed = FeedEstimate.of(press, cavities, mold);
        Double area = input.feedAreaMm2(), volume = input.feedVolumeMm3();
        if (area != null || volume != null)
            feed = new FeedEstimate(area == null ? feed.areaMm2() : area, volume == null ? feed.volumeMm3() : volume);
        return new Load(input, press, resin, cavities, mold, feed);
    }

    double cavityAreaMm2() {
        return cavitiesCount * input.projectedAreaMm2();
    }

    double feedAreaMm2() {
        return feed.areaMm2();
    }

    /** The feed's area where the layout told it, else nothing. */
    double knownFeedAreaMm2() {
        return input.feedAreaMm2() == null ? 0 : feed.areaMm2();
    }

    double shotVolumeMm3() {
        return cavitiesCount * input.partVolumeMm3() + feed.volumeMm3();
    }

    double shotG() {
        return Shot.massG(shotVolumeMm3(), resin.solidDensityGPerCm3().mid());
    }

    double meltGPerCm3() {
        return resin.meltDensityGPerCm3().mid();
    }

    double injectedCm3() {
        double leak = plunger() ? Shot.PLUNGER_LEAK_SHARE : Shot.SCREW_LEAK_SHARE;
        return Shot.injectedCm3(shotG(), meltGPerCm3(), leak);
    }

    double ratingG() {
        return Shot.ratingG(press.shotGPs().value(), meltGPerCm3(), Shot.POLYSTYRENE_G_PER_CM3);
    }

    double utilisationShare() {
        return Shot.utilisationShare(shotG(), ratingG());
    }

    /** Melt temperature to start at, °C: a plunger's chamber needs a little more than a nozzle. */
    double meltC() {
        double more = plunger() ? 5 : 0;
        return resin.meltC().clamp(resin.settings().nozzleC().value() + more);
    }

    /** Longest way from the gate, mm: across the outline from an edge, from its middle through the back. */
    double flowLengthMm() {
        double across = Math.hypot(input.sizeMm().x(), input.sizeMm().y());
        return press.nozzleMeets() == Press.NozzleMeets.PARTING_EDGE || cavitiesCount > 1
                ? across
                : across / 2 + input.depthMm() / 2;
    }

    /** Melt pressure in front of the feed, rough, MPa. */
    double roughMpa() {
        double cavity = MeltPressure.roughMpa(
                flowLengthMm(), input.wallMm(), resin.flowLengthRatio().mid());
        return cavity / (1 - FEED_SHARE);
    }

    /** Shortest filling time: the melt over the flow the drive keeps up at two thirds of its pressure, s. */
    double leastFillS() {
        return injectedCm3() / press.flowCm3PerS(press.maxMeltMpa().value() * 2 / 3);
    }

    /** Time until the middle of the median wall no longer moves, s. */
    double freezeS() {
        return centreS(input.wallMm(), resin.noFlowC().mid());
    }

    /**
     * Cycle, s: the one the cooling station gave, else handling, filling and holding (5 s) and the time the thickest wall takes on its centre
     * line, and half as much again for a mold that is not cooled.
     */
    double cycleS() {
        @Nullable Double given = input.cycleS();
        if (given != null) return given;
        double cool = centreS(input.wallMaxMm(), resin.ejectC().mid());
        return press.handlingS().value() + 5 + 1.5 * Math.max(1, cool);
    }

    /** Centre line of a wall down to a temperature, s²/(π²a)·ln(4Θ/π) in s, first term of the slab series. */
    private double centreS(double wallMm, double toC) {
        double mold = resin.settings().moldC().value();
        double theta = (meltC() - mold) / (toC - mold);
        return wallMm * wallMm / (Math.PI * Math.PI * resin.diffusivityMm2PerS().mid()) * Math.log(4 / Math.PI * theta);
    }

    /** How many shots the melt in the chamber may be charged for before it stays too long; a plunger press is charged by hand. */
    int chargeShots() {
        return (int) Math.floor(resin.residenceMin().value() * 60 / cycleS());
    }

    boolean plunger() {
        return press.injection() == Press.Injection.PLUNGER;
    }

    /**
     * Time in the barrel, s: a screw's barrel is always full; a plunger's chamber is charged for three shots at most, or for as many as the
     * resin bears.
     */
    double residenceS() {
        double barrel = Shot.ratingG(press.barrelG().value(), meltGPerCm3(), Shot.POLYSTYRENE_G_PER_CM3);
        if (!plunger()) return Math.max(cycleS(), Shot.residenceS(barrel, 1.4, shotG(), cycleS()));
        double charged = Math.min(barrel, Math.clamp(chargeShots(), 1, 3) * shotG());
        return Math.max(cycleS(), Shot.residenceS(charged, 1, shotG(), cycleS()));
    }
}
