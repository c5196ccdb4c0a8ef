package shotwright.fill;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

/** What short shots of growing size should look like, so that the first shots can be held against the estimate. */
final class ShortShots {
    private ShortShots() {}

    /** A sentence each for 60, 80 and 95 %. */
    static List<String> sentences(FlowField field, double shotG) {
        List<String> out = new ArrayList<>();
        for (double share : new double[] {0.6, 0.8, 0.95}) {
            double at = 0;
            for (FlowField.Slice s : field.way()) if (s.arrivalShare() <= share) at = s.fromGateMm();
            out.add(String.format(
                    Locale.ROOT,
                    "%.0f %% full, parts about %.1f g together: the front stands about %.0f mm from the gate on the longest way, %.0f mm to go.",
                    100 * share,
                    share * shotG,
                    at,
                    Math.max(0, field.wayLengthMm() - at)));
        }
        return out;
    }
}
