package shotwright.review;

import java.util.List;
import shotwright.geom.Vec3;

/**
 * Along which line the mold opens, and which end of it is half A.
 *
 * @param words how it is said, for example {@code "along z, rim to B"}
 * @param reason why, with the number that decided
 * @param given true when the owner set it
 * @param candidates directions looked at most closely, best first; the first is the one taken
 */
public record PullChoice(String words, String reason, boolean given, List<Candidate> candidates) {
    /**
     * One direction, either sign.
     *
     * @param direction unit vector, axes of the file
     * @param hiddenShare share of the shadow that lies under a further layer
     * @param depthMm how deep the part is along it
     * @param projectedAreaMm2 projected area; exact for the direction taken, from a raster for those far behind
     */
    public record Candidate(Vec3 direction, double hiddenShare, double depthMm, double projectedAreaMm2) {}

    public PullChoice {
        candidates = List.copyOf(candidates);
    }
}
