package shotwright.layout.release;

import java.util.ArrayList;
import java.util.List;
import shotwright.geom.Vec2;
import shotwright.layout.Half;
import shotwright.layout.PinPlace;
import shotwright.layout.cavity.CavityShape;
import shotwright.layout.cavity.FlowGrid;
import shotwright.layout.cavity.Spoke;
import shotwright.stock.Fit;

/**
 * Ejector pins of one cavity: the smallest pins, three or more where they find room, that neither push through the part nor mark it nor
 * buckle, and leave metal standing beside their holes. They stand under the tallest plastic, as far from one another as they can. Where the
 * metal wanted does not leave room, the least is taken; where that leaves none, there are no pins.
 */
public final class PinPlan {
    /** Pressure of a pin's face that leaves no mark on a warm part (common practice). */
    public static final double FACE_LIMIT_MPA = 8;

    /** Shear round a pin that a warm part stands (common practice). */
    public static final double PERFORATION_LIMIT_MPA = 5;

    private static final double[] SIZES_MM = {1.5, 2, 2.5, 3, 4, 5};
    private static final double STEEL_MPA = 210_000;
    private static final int MOST = 12;
    private static final double ALIKE_MM = 1e-6;

    private final FlowGrid grid;
    private final Half half;
    private final CoreMetal metal;

    private PinPlan(CavityShape shape, FlowGrid grid, Half half) {
        this.grid = grid;
        this.half = half;
        metal = new CoreMetal(shape.mesh(), half);
    }

    /**
     * What is pushed.
     *
     * @param forceN force on one part
     * @param wallMm its wall
     * @param pinLengthMm length of the pins
     */
    public record Load(double forceN, double wallMm, double pinLengthMm) {
        /** So many pins of a size push it off within every limit. */
        public boolean enough(double diameterMm, int pins) {
            return pins >= pins(diameterMm);
        }

        /** How many pins of a size it takes. */
        int pins(double diameterMm) {
            double face = forceN / carriesN(diameterMm);
            double through = PinLoad.perforationMpa(forceN, diameterMm, wallMm) / PERFORATION_LIMIT_MPA;
            double slender = 2 * forceN / PinLoad.bucklingN(STEEL_MPA, diameterMm, pinLengthMm, PinLoad.FIXED_PINNED);
            return (int) Math.ceil(Math.max(face, Math.max(through, slender)));
        }
    }

    /**
     * Pins that were found.
     *
     * @param places centres in the cavity frame
     * @param diameterMm diameter
     * @param forceN force on each
     * @param metalMm thinnest metal beside a hole; infinite when nothing stands beside any
     * @param enough they carry the force within every limit
     */
    public record Pins(List<Vec2> places, double diameterMm, double forceN, double metalMm, boolean enough) {
        public Pins {
            places = List.copyOf(places);
        }

        /** Less metal stands beside a hole than is wanted. */
        public boolean thin() {
            return metalMm < CoreMetal.wantedMm(diameterMm);
        }

        private double loadedMpa() {
            return forceN / (diameterMm * diameterMm);
        }
    }

    /** Chooses size, number and places for a force on one part. */
    public static Pins of(CavityShape shape, FlowGrid grid, Half half, Load load) {
        return new PinPlan(shape, grid, half).choose(load);
    }

    private Pins choose(Load load) {
        Pins best = new Pins(List.of(), SIZES_MM[0], load.forceN, Double.POSITIVE_INFINITY, false);
        for (boolean wanted : new boolean[] {true, false}) {
            for (double d : SIZES_MM) {
                Pins p = pins(load, d, wanted ? CoreMetal.wantedMm(d) : CoreMetal.LEAST_MM);
                if (p.enough) return p;
                if (!p.places.isEmpty() && (best.places.isEmpty() || p.loadedMpa() < best.loadedMpa())) best = p;
            }
        }
        return best;
    }

    private Pins pins(Load load, double d, double metalMm) {
        int need = load.pins(d);
        List<Vec2> places = new ArrayList<>();
        double thinnest = Double.POSITIVE_INFINITY;
        for (int c : places(d, Math.clamp(need, 3, MOST), metalMm)) {
            places.add(grid.centre(c));
            thinnest = Math.min(thinnest, metal.besideMm(grid.centre(c), grid.faceMm(c, half), d));
        }
        return new Pins(places, d, load.forceN / Math.max(places.size(), 1), thinnest, places.size() >= need);
    }

    private List<Integer> places(double d, int n, double metalMm) {
        List<Integer> room = new ArrayList<>();
        double tallest = 0;
        for (int c = 0; c < grid.cells(); c++) {
            if (grid.thicknessMm(c) == 0 || !seats(c, d) || !mayKeepMetal(c, d, metalMm)) continue;
            room.add(c);
            tallest = Math.max(tallest, grid.thicknessMm(c));
        }
        double floor = 0.6 * tallest;
        room.removeIf(c -> grid.thicknessMm(c) < floor);
        List<Integer> chosen = new ArrayList<>();
        double[] away = new double[grid.cells()];
        for (int c : room) away[c] = grid.centre(c).length();
        while (chosen.size() < n && !room.isEmpty()) {
            int best = room.getFirst();
            for (int c : room) if (away[c] > away[best] + ALIKE_MM) best = c;
            if (!chosen.isEmpty() && away[best] < 2 * d) break;
            room.remove((Integer) best);
            Vec2 taken = grid.centre(best);
            if (metal.besideMm(taken, grid.faceMm(best, half), d) < metalMm) continue;
            boolean first = chosen.isEmpty();
            for (int c : room) {
                double apart = grid.centre(c).distance(taken);
                away[c] = first ? apart : Math.min(away[c], apart);
            }
            chosen.add(best);
        }
        return chosen;
    }

    /** The whole face of the pin meets plastic at about one height. */
    private boolean seats(int cell, double d) {
        Vec2 p = grid.centre(cell);
        double r = d / 2 + 0.1, z = grid.faceMm(cell, half);
        for (int k = 0; k < 16; k++) {
            double a = k * Math.PI / 8;
            int c = grid.filledCell(p.x() + r * Math.cos(a), p.y() + r * Math.sin(a));
            if (c < 0 || Math.abs(grid.faceMm(c, half) - z) > CoreMetal.SAME_FACE_MM) return false;
        }
        return true;
    }

    /** A quick look on the grid, never stricter than the facets: no cell within the metal's reach lies deeper in the half. */
    private boolean mayKeepMetal(int cell, double d, double metalMm) {
        double reach = holeMm(d) / 2 + metalMm - grid.cellMm(), z = grid.faceMm(cell, half);
        for (int c : grid.around(cell, reach)) {
            if (half.sign() * (grid.faceMm(c, half) - z) > CoreMetal.SAME_FACE_MM) return false;
        }
        return true;
    }

    /** What a pin pushes without leaving a mark, N. */
    public static double carriesN(double pinMm) {
        return FACE_LIMIT_MPA * Math.PI * pinMm * pinMm / 4;
    }

    /** The hole a pin slides in. */
    static double holeMm(double pinMm) {
        return Fit.H7.middleMm(pinMm);
    }

    /** Fitted length below the cavity: two to three diameters (common practice). */
    static double guideMm(double pinMm) {
        return 2.5 * pinMm;
    }

    /** The wider rest behind the fitted length (common practice). */
    static double reliefMm(double pinMm) {
        return pinMm + 0.5;
    }

    /** The pins of one placed cavity as they are cut. */
    public static List<PinPlace> placed(Pins pins, Spoke spoke, Half half) {
        double d = pins.diameterMm;
        return pins.places.stream()
                .map(p -> new PinPlace(spoke.at(p), half, d, holeMm(d), guideMm(d), reliefMm(d)))
                .toList();
    }
}
