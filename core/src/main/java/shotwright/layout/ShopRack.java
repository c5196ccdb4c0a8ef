package shotwright.layout;

import java.util.List;
import java.util.OptionalDouble;
import shotwright.cutter.Cutter;
import shotwright.stock.Dowel;
import shotwright.stock.MoldMaterial;
import shotwright.stock.Screw;
import shotwright.stock.Stock;

/**
 * Sizes the shop owns or buys, as far as the layout chooses among them.
 *
 * @param flatsMm diameters of flat end mills
 * @param ballsMm diameters of ball end mills
 * @param tapers tapered end mills
 * @param bars bars and plates
 * @param pins dowels
 * @param bolts socket head screws
 */
public record ShopRack(
        List<Double> flatsMm,
        List<Double> ballsMm,
        List<Taper> tapers,
        List<Bar> bars,
        List<Pin> pins,
        List<Bolt> bolts) {
    /**
     * A tapered end mill.
     *
     * @param tipMm diameter at the tip
     * @param draftDeg taper per side
     * @param reachMm how deep it cuts
     */
    public record Taper(double tipMm, double draftDeg, double reachMm) {}

    /**
     * A bar or plate as sold.
     *
     * @param id id on the rack
     * @param name words
     * @param thicknessMm thickness as sold
     * @param widthMm width as sold; very large for plates sawn both ways
     * @param longestMm longest piece
     * @param sawMm allowance for the saw cut
     * @param faceMm allowance for facing on each side
     * @param modulusMpa stiffness
     * @param yieldMpa Rp0.2
     * @param workMpa stress a mold may work at
     * @param poissonRatio Poisson's ratio
     */
    public record Bar(
            String id,
            String name,
            double thicknessMm,
            double widthMm,
            double longestMm,
            double sawMm,
            double faceMm,
            double modulusMpa,
            double yieldMpa,
            double workMpa,
            double poissonRatio) {}

    /**
     * A dowel.
     *
     * @param id id on the rack
     * @param diameterMm nominal diameter
     * @param lengthMm length
     */
    public record Pin(String id, double diameterMm, double lengthMm) {}

    /**
     * A socket head screw.
     *
     * @param id id on the rack
     * @param diameterMm nominal thread
     * @param pitchMm thread pitch
     * @param lengthMm length below the head
     * @param headMm head diameter
     * @param headHeightMm head height
     * @param clearanceMm through hole
     * @param tapDrillMm hole to be tapped
     * @param proofMpa proof stress
     */
    public record Bolt(
            String id,
            double diameterMm,
            double pitchMm,
            double lengthMm,
            double headMm,
            double headHeightMm,
            double clearanceMm,
            double tapDrillMm,
            double proofMpa) {}

    /** Kerf and cleaning up of a sawn end. */
    private static final double SAW_MM = 3;

    /** Metal faced off each side: sawn or extruded bar, and plate sold milled (common practice). */
    private static final double BAR_FACE_MM = 0.5, PLATE_FACE_MM = 0.25;

    private static final List<Double> SCREW_LENGTHS_MM =
            List.of(10.0, 12.0, 16.0, 20.0, 25.0, 30.0, 35.0, 40.0, 50.0, 60.0);

    public ShopRack {
        flatsMm = List.copyOf(flatsMm);
        ballsMm = List.copyOf(ballsMm);
        tapers = List.copyOf(tapers);
        bars = List.copyOf(bars);
        pins = List.copyOf(pins);
        bolts = List.copyOf(bolts);
    }

    /** The rack's own records. A stock whose alloy is not among the materials is left out. */
    public static ShopRack of(
            List<Cutter> cutters,
            List<Stock> stock,
            List<MoldMaterial> materials,
            List<Dowel> dowels,
            List<Screw> screws) {
        return new ShopRack(
                diameters(cutters, Cutter.Shape.FLAT),
                diameters(cutters, Cutter.Shape.BALL),
                cutters.stream()
                        .filter(c -> c.shape() == Cutter.Shape.TAPER)
                        .map(c -> new Taper(
                                c.diaMm().value(),
                                c.taperDeg().value(),
                                c.fluteLengthMm().value()))
                        .toList(),
                stock.stream()
                        .flatMap(s -> materials.stream()
                                .filter(m -> m.id().equals(s.material()))
                                .map(m -> bar(s, m)))
                        .toList(),
                dowels.stream()
                        .flatMap(d -> d.lengths().valuesMm().stream()
                                .map(l -> new Pin(d.id(), d.diameterMm().value(), l)))
                        .toList(),
                screws.stream()
                        .flatMap(s -> SCREW_LENGTHS_MM.stream().map(l -> bolt(s, l)))
                        .toList());
    }

    private static List<Double> diameters(List<Cutter> cutters, Cutter.Shape shape) {
        return cutters.stream()
                .filter(c -> c.shape() == shape)
                .map(c -> c.diaMm().value())
                .toList();
    }

    private static Bar bar(Stock s, MoldMaterial m) {
        return new Bar(
                s.id(),
                s.name(),
                s.thicknessMm().value(),
                s.widthMm().value(),
                s.lengthMm().value(),
                SAW_MM,
                s.shape() == Stock.Shape.PLATE ? PLATE_FACE_MM : BAR_FACE_MM,
                1000 * m.modulusGpa().value(),
                m.yieldMpa().mid(),
                m.allowableMpa().mid(),
                m.poissonRatio().value());
    }

    private static Bolt bolt(Screw s, double lengthMm) {
        return new Bolt(
                s.id(),
                s.diameterMm().value(),
                s.pitchMm().value(),
                lengthMm,
                s.headDiaMm().value(),
                s.headHeightMm().value(),
                s.clearanceHoleMm().value(),
                s.tapDrillMm().value(),
                s.proofMpa().value());
    }

    /** The smallest flat end mill of 0.4 mm or more. */
    public double smallestFlatMm() {
        return flatsMm.stream().filter(d -> d >= 0.4).min(Double::compare).orElse(1.0);
    }

    /** The smallest ball end mill of at least this diameter. */
    public OptionalDouble ballFromMm(double atLeastMm) {
        return ballsMm.stream()
                .mapToDouble(Double::doubleValue)
                .filter(d -> d >= atLeastMm - 1e-6)
                .min();
    }
}
