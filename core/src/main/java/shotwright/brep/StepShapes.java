package shotwright.brep;

import java.util.List;

/**
 * What a STEP file holds.
 *
 * @param solids closed bodies, in the order of the file
 * @param loose shells and faces beside them, which bound no body
 */
public record StepShapes(List<Solid> solids, List<Solid> loose) {
    public StepShapes {
        solids = List.copyOf(solids);
        loose = List.copyOf(loose);
    }
}
