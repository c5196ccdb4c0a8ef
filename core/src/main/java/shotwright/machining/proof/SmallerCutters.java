package shotwright.machining.proof;

import java.util.ArrayList;
import java.util.List;
import shotwright.cutter.CutterProfile;
import shotwright.geom.Vec3;
import shotwright.machining.contact.DropCutter;

/** One cutter in smaller and smaller sizes, to see how much too wide it is for a place. Made as they are asked for; for one thread. */
final class SmallerCutters {
    private static final double FIRST_MM = 0.004;
    private static final double FACTOR = 1.5;

    private final Half half;
    private final CutterProfile profile;
    private final double mostMm;
    private final List<DropCutter> tips = new ArrayList<>();
    private final DropCutter.Cursor cursor = new DropCutter.Cursor();

    SmallerCutters(Half half, CutterProfile profile, double mostMm) {
        this.half = half;
        this.profile = profile;
        this.mostMm = mostMm;
    }

    /**
     * By how much the cutter's radius is too large for its tip at a place: on a wall what the tip lacks in height falls in proportion, so the
     * last two sizes that do not fit tell it. Where none fits, the most.
     */
    double tooWideMm(Vec3 place) {
        double firstMm = 0, firstLow = 0, beforeMm = 0, beforeLow = Double.NaN;
        for (int k = 0; ; k++) {
            double byMm = FIRST_MM * Math.pow(FACTOR, k);
            if (byMm >= mostMm) return mostMm;
            double low = tip(k).tipMm(place.x(), place.y(), cursor) - place.z();
            if (low <= 0) {
                if (Double.isNaN(beforeLow)) return byMm;
                double perMm = (firstLow - beforeLow) / (beforeMm - firstMm);
                double guess = perMm > 0 ? beforeMm + beforeLow / perMm : byMm;
                return Math.clamp(guess, beforeMm, byMm);
            }
            firstMm = Double.isNaN(beforeLow) ? byMm : beforeMm;
            firstLow = Double.isNaN(beforeLow) ? low : beforeLow;
            beforeMm = byMm;
            beforeLow = low;
        }
    }

    private DropCutter tip(int k) {
        while (tips.size() <= k) {
            tips.add(half.under(profile.widenedMm(-FIRST_MM * Math.pow(FACTOR, tips.size()))));
        }
        return tips.get(k);
    }
}
