package shotwright.job;

import shotwright.geom.Vec2;
import shotwright.layout.FeedSegment;
import shotwright.layout.LayoutResult;

/** What the feed adds to the area the melt pushes open. */
final class LayoutFeed {
    private LayoutFeed() {}

    /** Shadow of the pieces that lie in the parting plane, plus the foot of a standing sprue where nothing lies under it, mm². */
    static double areaMm2(LayoutResult layout) {
        double sum = 0;
        for (FeedSegment s : layout.feed()) {
            Vec2 from = s.fromMm().xy(), to = s.toMm().xy();
            double width = (s.from().widthMm() + s.to().widthMm()) / 2;
            sum += from.distance(to) * width;
        }
        return sum;
    }
}
