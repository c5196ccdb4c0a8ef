package shotwright.layout.release;

import java.util.ArrayList;
import java.util.List;
import shotwright.geom.Vec2;
import shotwright.layout.Half;
import shotwright.layout.PinPlace;
import shotwright.layout.align.Fit;
import shotwright.layout.cavity.FlowGrid;
import shotwright.layout.cavity.Spoke;

/**
 * Ejector pins of one cavity: the smallest pins, three or more where they find room, that neither push through the part nor mark it nor
 * buckle. They stand under the tallest plastic, as far from one another as they can.
 */
public final class PinPlan {
    /** Pressure of a pin's face that leaves no mark on a warm part (common practice). */
    public static final double FACE_LIMIT_MPA = 8;

    /** Shear round a pin that a warm part stands (common practice). */
    public static final double PERFORATION_LIMIT_MPA = 5;

    private static final double[] SIZES_MM = {1.5, 2, 2.5, 3, 4, 5};
    private static final double STEEL_MPA = 210_000;
    private static final int MOST = 8;

    private PinPlan() {}

    /**
     * Pins that were found.
     *
     * @param places centres in the cavity frame
     * @param diameterMm diameter
     * @param forceN force on each
     * @param enough they carry the force within every limit
     */
    public record Pins(List<Vec2> places, double diameterMm, double forceN, boolean enough) {
        public Pins {
            places = List.copyOf(places);
        }
    }

    /** Chooses size, number and places for a force on one part. */
    public static Pins of(FlowGrid grid, Half half, double forceN, double wallMm, double pinLengthMm) {
        Pins best = new Pins(List.of(), SIZES_MM[0], forceN, false);
        for (double d : SIZES_MM) {
            int need = Math.max(3, count(forceN, d, wallMm, pinLengthMm));
            List<Vec2> room = places(grid, half, d, Math.min(need, MOST));
            if (room.isEmpty()) break;
            Pins p = new Pins(room, d, forceN / room.size(), room.size() >= count(forceN, d, wallMm, pinLengthMm));
            if (p.enough) return p;
            if (best.places.isEmpty() || p.forceN / (d * d) < best.forceN / (best.diameterMm * best.diameterMm))
                best = p;
        }
        return best;
    }

    /** How many pins of a size a force takes. */
    static int count(double forceN, double diameterMm, double wallMm, double lengthMm) {
        double face = forceN / (FACE_LIMIT_MPA * Math.PI * diameterMm * diameterMm / 4);
        double through = PinLoad.perforationMpa(forceN, diameterMm, wallMm) / PERFORATION_LIMIT_MPA;
        double slender = 2 * forceN / PinLoad.bucklingN(STEEL_MPA, diameterMm, lengthMm, PinLoad.FIXED_PINNED);
        return (int) Math.ceil(Math.max(face, Math.max(through, slender)));
    }

    private static List<Vec2> places(FlowGrid grid, Half half, double d, int n) {
        List<Integer> room = new ArrayList<>();
        double tallest = 0;
        for (int c = 0; c < grid.cells(); c++) {
            if (grid.thicknessMm(c) == 0 || !seats(grid, half, c, d)) continue;
            room.add(c);
            tallest = Math.max(tallest, grid.thicknessMm(c));
        }
        double floor = 0.6 * tallest;
        room.removeIf(c -> grid.thicknessMm(c) < floor);
        List<Vec2> chosen = new ArrayList<>();
        double[] away = new double[grid.cells()];
        for (int c : room) away[c] = grid.centre(c).length();
        while (chosen.size() < n && !room.isEmpty()) {
            int best = room.getFirst();
            for (int c : room) if (away[c] > away[best]) best = c;
            if (!chosen.isEmpty() && away[best] < 2 * d) break;
            Vec2 taken = grid.centre(best);
            boolean first = chosen.isEmpty();
            for (int c : room) {
                double apart = grid.centre(c).distance(taken);
                away[c] = first ? apart : Math.min(away[c], apart);
            }
            chosen.add(taken);
        }
        return chosen;
    }

    /** The whole face of the pin meets plastic at about one height. */
    private static boolean seats(FlowGrid grid, Half half, int cell, double d) {
        Vec2 p = grid.centre(cell);
        double r = d / 2 + 0.1, z = grid.faceMm(cell, half);
        for (int k = 0; k < 16; k++) {
            double a = k * Math.PI / 8;
            int c = grid.filledCell(p.x() + r * Math.cos(a), p.y() + r * Math.sin(a));
            if (c < 0 || Math.abs(grid.faceMm(c, half) - z) > 0.3) return false;
        }
        return true;
    }

    /** The pins of one placed cavity as they are cut. */
    public static List<PinPlace> placed(Pins pins, Spoke spoke, Half half) {
        double d = pins.diameterMm;
        return pins.places.stream()
                .map(p -> new PinPlace(spoke.at(p), half, d, Fit.H7.middleMm(d), 2.5 * d, d + 0.5))
                .toList();
    }
}
