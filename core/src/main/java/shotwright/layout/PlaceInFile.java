package shotwright.layout;

import java.util.Comparator;
import java.util.List;
import shotwright.geom.Vec3;
import shotwright.part.PulledPart;

/**
 * Says a place of the mold in the axes of the customer's file: taken back through the cavity whose part lies nearest.
 *
 * @param part the part, pulled frame
 * @param cavities where its copies stand
 */
public record PlaceInFile(PulledPart part, List<Cavity> cavities) {
    /** A place of the mold frame, mm, in the axes of the file, mm. */
    public Vec3 of(Vec3 moldMm) {
        Vec3 middle = part.mesh().box().centre();
        Vec3 pulled = cavities.stream()
                .map(c -> c.place().inverse().apply(moldMm))
                .min(Comparator.comparingDouble(p -> p.distance(middle)))
                .orElseThrow();
        return part.toFile(pulled);
    }
}
