package shotwright.review;

import java.util.List;
import org.jspecify.annotations.Nullable;
import shotwright.cutter.Cutter;
import shotwright.geom.Vec3;
import shotwright.part.Part;
import shotwright.resin.Resin;

/**
 * What station 20 works with.
 *
 * @param part the part
 * @param pull direction half A moves off in, axes of the file, when the owner has set it; null to look for it
 * @param resin the first resin; null when none is chosen yet
 * @param cuttersOwned cutters on the rack
 * @param finish how the show faces are to look
 */
public record ReviewInput(
        Part part, @Nullable Vec3 pull, @Nullable Resin resin, List<Cutter> cuttersOwned, Finish finish) {
    public ReviewInput {
        cuttersOwned = List.copyOf(cuttersOwned);
    }

    MoldingLimits limits() {
        return resin == null ? MoldingLimits.ANY : MoldingLimits.of(resin);
    }
}
