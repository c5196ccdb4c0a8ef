package shotwright.machining.feed;

import java.util.ArrayList;
import java.util.List;

/**
 * Feeds along a path whose engagement changes: each stretch as fast as the chosen thickest chip allows, slower where power, bending or stress
 * ask for it, never so slow that the chip is too thin to cut unless a limit needs it, and changing by no more than a factor 2 over half a
 * cutter diameter.
 */
public final class FeedSchedule {
    /** Largest change of feed over half a diameter. */
    private static final double MOST_CHANGE_FACTOR = 2;

    private FeedSchedule() {}

    /**
     * A stretch of path.
     *
     * @param lengthMm length
     * @param engagementRad angle a tooth spends in the metal, 0 in air
     * @param depthMm depth of cut, 0 in air
     */
    public record Stretch(double lengthMm, double engagementRad, double depthMm) {
        public Stretch {
            if (!(lengthMm >= 0 && engagementRad >= 0 && engagementRad <= 2 * Math.PI && depthMm >= 0))
                throw new IllegalArgumentException("stretch of " + lengthMm + " mm, engagement " + engagementRad
                        + " rad, depth " + depthMm + " mm");
        }
    }

    /**
     * The feed of a stretch.
     *
     * @param feedMmPerMin feed
     * @param limit what holds it there
     * @param rubs true when the limit makes the chip thinner than an edge can cut: the path needs less engagement there
     */
    public record StretchFeed(double feedMmPerMin, Limit limit, boolean rubs) {}

    /** Feeds for a path that is run with the speed and the chip of a chosen cut. */
    public static List<StretchFeed> of(CutData cut, List<Stretch> path) {
        CutModel model = new CutModel(cut.cut());
        List<StretchFeed> alone = new ArrayList<>(path.size());
        for (Stretch s : path) alone.add(alone(cut, model, s));
        return smooth(alone, path, cut.cut().cutter().diaMm().value());
    }

    private static StretchFeed alone(CutData cut, CutModel model, Stretch s) {
        int teeth = cut.cut().cutter().flutes();
        double rpm = cut.speedRpm(), perMm = teeth * rpm;
        double mostMm = cut.cut().mill().maxFeedMmPerMin().value() / perMm;
        double airMm = BallContact.MOST_THINNING_FACTOR * cut.feedPerToothMm();
        boolean air = s.engagementRad < 1e-6 || s.depthMm < 1e-9;
        double share = air ? 1 : Chip.largestShare(s.engagementRad);
        double chipMm = air ? airMm : Math.min(airMm, cut.largestChipMm() / share);
        double wishMm = Math.min(mostMm, chipMm);
        Limit limit = chipMm <= mostMm ? Limit.CHIP_LOAD : Limit.MACHINE_FEED;
        if (air) return new StretchFeed(wishMm * perMm, limit, false);
        double feedMm = model.feedPerToothMm(wishMm, s.depthMm, s.engagementRad, rpm);
        if (feedMm < wishMm) {
            feedMm = Math.max(feedMm, 0.01 * cut.feedPerToothMm());
            limit = model.tightest(model.load(feedMm, s.depthMm, s.engagementRad, rpm), rpm);
        }
        double thinnestMm = Math.min(CutModel.THINNEST_CHIP_MM, cut.largestChipMm());
        return new StretchFeed(feedMm * perMm, limit, feedMm * share < thinnestMm - 1e-12);
    }

    private static List<StretchFeed> smooth(List<StretchFeed> alone, List<Stretch> path, double diaMm) {
        double perMm = Math.log(MOST_CHANGE_FACTOR) / (diaMm / 2);
        StretchFeed[] out = alone.toArray(StretchFeed[]::new);
        for (int i = 1; i < out.length; i++) lower(out, i, i - 1, path, perMm);
        for (int i = out.length - 2; i >= 0; i--) lower(out, i, i + 1, path, perMm);
        return List.of(out);
    }

    private static void lower(StretchFeed[] out, int at, int beside, List<Stretch> path, double perMm) {
        double apartMm = (path.get(at).lengthMm + path.get(beside).lengthMm) / 2;
        double most = out[beside].feedMmPerMin * Math.exp(perMm * apartMm);
        if (out[at].feedMmPerMin > most) out[at] = new StretchFeed(most, Limit.SMOOTHING, out[at].rubs);
    }
}
