package shotwright.machining.gcode;

import shotwright.rack.Rack;

/** The dialects on the rack. */
public final class DialectRack {
    private static final Rack<Dialect> STANDARD = Rack.shipped("dialect", Dialect.class);

    private DialectRack() {}

    /** The dialects that ship with the program; the first is the one that most controls take. */
    public static Rack<Dialect> standard() {
        return STANDARD;
    }
}
