package shotwright.press;

import shotwright.rack.Rack;

/** The presses on the rack. */
public final class PressRack {
    private static final Rack<Press> STANDARD = Rack.shipped("press", Press.class);

    private PressRack() {}

    /** The classes that ship with the program. */
    public static Rack<Press> standard() {
        return STANDARD;
    }
}
