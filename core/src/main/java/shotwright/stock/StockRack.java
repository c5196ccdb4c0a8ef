package shotwright.stock;

import shotwright.rack.Rack;

/** Bars and plates on the rack, and the alloys, dowels and screws that go with them. */
public final class StockRack {
    private static final Rack<Stock> STANDARD = Rack.shipped("stock", Stock.class);
    private static final Rack<MoldMaterial> MATERIALS = Rack.shipped("mold-material", MoldMaterial.class);
    private static final Rack<Dowel> DOWELS = Rack.shipped("dowel", Dowel.class);
    private static final Rack<Screw> SCREWS = Rack.shipped("screw", Screw.class);

    private StockRack() {}

    /** Bars and plates that ship with the program. */
    public static Rack<Stock> standard() {
        return STANDARD;
    }

    /** Mold alloys. */
    public static Rack<MoldMaterial> materials() {
        return MATERIALS;
    }

    /** Dowels. */
    public static Rack<Dowel> dowels() {
        return DOWELS;
    }

    /** Screws. */
    public static Rack<Screw> screws() {
        return SCREWS;
    }
}
