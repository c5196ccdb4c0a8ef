package shotwright.mold;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import shotwright.finding.Finding;
import shotwright.layout.Half;
import shotwright.mesh.complex.Complex;
import shotwright.mesh.complex.Material;
import shotwright.mesh.complex.Shell;

/**
 * Specks of metal that hang on nothing, left where a wall that leans by a hair passes the parting. No cutter can leave them standing, so they
 * belong to what they touch: the other half where it touches them, else the neighbour with the most surface.
 *
 * @param count how many were given over
 * @param volumeMm3 how much they hold together
 */
public record Specks(int count, double volumeMm3) {
    public static final Specks NONE = new Specks(0, 0);

    /** A grain of 0.2 mm: less than the smallest cutter can leave standing or a mold maker can hold. */
    private static final double SPECK_MM3 = 0.01;

    /** Gives over the specks of both halves. */
    static Specks giveOver(Complex c, int a, int b) {
        return giveOver(c, a).and(giveOver(c, b));
    }

    private static Specks giveOver(Complex c, int cell) {
        List<Shell> specks = c.shells(cell).stream().filter(Specks::isSpeck).toList();
        c.give(cell, specks, specks.stream().map(s -> neighbour(c, s)).toList());
        return new Specks(
                specks.size(),
                specks.stream().mapToDouble(s -> Math.abs(s.volumeMm3())).sum());
    }

    private static boolean isSpeck(Shell s) {
        return Math.abs(s.volumeMm3()) <= SPECK_MM3;
    }

    private static int neighbour(Complex c, Shell s) {
        Comparator<Map.Entry<Integer, Double>> metalFirst = Comparator.comparing(e -> isMetal(c, e.getKey()));
        return s.touchedMm2().entrySet().stream()
                .max(metalFirst.thenComparing(Map.Entry.comparingByValue()))
                .orElseThrow()
                .getKey();
    }

    private static boolean isMetal(Complex c, int cell) {
        return c.material(cell) == Material.A || c.material(cell) == Material.B;
    }

    private Specks and(Specks o) {
        return new Specks(count + o.count, volumeMm3 + o.volumeMm3);
    }

    /** What has to be said of metal too large for a speck that hangs on nothing. */
    static List<Finding> loose(Complex c, int cell, Half half) {
        List<Shell> bodies =
                c.shells(cell).stream().filter(s -> s.volumeMm3() > 0).skip(1).toList();
        List<Finding> out = new ArrayList<>();
        for (Shell s : bodies)
            out.add(Finding.stop(
                            "half-in-pieces",
                            String.format(
                                    Locale.ROOT,
                                    "A piece of half %s, %.3g mm³, hangs on nothing: the part or a cut-out closes it in all round.",
                                    half,
                                    s.volumeMm3()))
                    .at(s.place())
                    .remedy("Open the part there so that the metal joins its half, or fill the hollow."));
        return out;
    }
}
