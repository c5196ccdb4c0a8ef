package shotwright.machining.proof;

import shotwright.geom.Box3;

/** A box nothing that turns may touch: a jaw, a clamp, the table. */
public record KeepOut(String name, Box3 box) {
    public KeepOut {
        if (name.isBlank()) throw new IllegalArgumentException("name: say what must not be touched");
    }
}
