package shotwright.resin;

import shotwright.rack.Rack;

/** The resins on the rack. */
public final class ResinRack {
    private static final Rack<Resin> STANDARD = Rack.shipped("resin", Resin.class);

    private ResinRack() {}

    /** The families that ship with the program. */
    public static Rack<Resin> standard() {
        return STANDARD;
    }
}
