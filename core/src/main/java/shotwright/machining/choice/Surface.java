package shotwright.machining.choice;

import java.util.BitSet;
import java.util.Map;
import shotwright.machining.contact.SurfaceKind;

/**
 * What has to be milled, as cells in plan.
 *
 * @param areaMm2 true area of each cell's piece of surface
 * @param volumeMm3 metal above each cell
 * @param cells the cells of each kind of surface to finish
 */
@SuppressWarnings("ArrayRecordComponent")
public record Surface(float[] areaMm2, float[] volumeMm3, Map<SurfaceKind, BitSet> cells) {
    public Surface {
        cells = Map.copyOf(cells);
    }
}
