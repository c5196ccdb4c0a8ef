package shotwright.mill;

import shotwright.rack.Rack;

/** The mills on the rack. */
public final class MillRack {
    private static final Rack<Mill> STANDARD = Rack.shipped("mill", Mill.class);

    private MillRack() {}

    /** The classes that ship with the program. */
    public static Rack<Mill> standard() {
        return STANDARD;
    }
}
