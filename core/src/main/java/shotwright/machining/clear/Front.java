package shotwright.machining.clear;

import java.util.List;
import shotwright.machining.contour.Contour;
import shotwright.region.Region;

/**
 * One step of the wavefront: the lines along which the cleared region grows by one step.
 *
 * @param cleared where the centre has been before
 * @param lines the new border of it where that is not the wall, the cleared side on the left
 */
public record Front(Region cleared, List<Contour> lines) {
    public Front {
        lines = List.copyOf(lines);
    }
}
