package shotwright.brep;

import java.util.List;

/**
 * A solid with leaned faces. Its faces come in the order they had before.
 *
 * @param solid the solid
 * @param moved numbers of the faces that lie on another surface than before
 */
public record Drafted(Solid solid, List<Integer> moved) {
    public Drafted {
        moved = List.copyOf(moved);
    }
}
