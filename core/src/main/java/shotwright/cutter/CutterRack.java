package shotwright.cutter;

import shotwright.rack.Rack;

/** The cutters on the rack. */
public final class CutterRack {
    private static final Rack<Cutter> STANDARD = Rack.shipped("cutter", Cutter.class);

    private CutterRack() {}

    /** The cutters that ship with the program. */
    public static Rack<Cutter> standard() {
        return STANDARD;
    }
}
