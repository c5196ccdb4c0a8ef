package shotwright.quote;

import java.nio.file.Path;
import java.util.Set;
import java.util.TreeSet;
import shotwright.rack.Rack;
import shotwright.rack.RackException;

/** The rates on the rack: one set, the typical small shop's until the shop's own file replaces it. */
public final class RatesRack {
    /** The one id: a shop has one set of rates. */
    public static final String ID = "shop";

    private static final Rack<Rates> STANDARD = Rack.shipped("rates", Rates.class);

    private RatesRack() {}

    /** The typical small shop. */
    public static Rack<Rates> standard() {
        return STANDARD;
    }

    /**
     * The rates of a shop's rack folder: {@code <folder>/rates/shop.json} laid over the typical ones.
     *
     * @throws RackException when the file cannot be used, or when there is another one that would never be read
     */
    public static Rack<Rates> withFolder(Path folder) {
        Rack<Rates> rack = STANDARD.withFolder(folder);
        Set<String> others = new TreeSet<>(rack.ids());
        others.remove(ID);
        if (!others.isEmpty())
            throw new RackException("Folder " + folder.resolve("rates") + " holds " + String.join(", ", others)
                    + "; a shop has one set of rates: call its file " + ID + ".json.");
        return rack;
    }
}
