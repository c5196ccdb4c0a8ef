package shotwright.machining.proof;

import java.util.Locale;
import org.jspecify.annotations.Nullable;
import shotwright.cutter.Cutter;
import shotwright.cutter.Holder;
import shotwright.cutter.MountedCutter;
import shotwright.measure.Quantity;
import shotwright.measure.Source;

/** Cutters of any size for the tests. */
final class Cutters {
    private Cutters() {}

    private static Quantity number(double v) {
        return new Quantity(v, "", Source.computed("for a test"));
    }

    static MountedCutter flat(double diaMm) {
        return made(Cutter.Shape.FLAT, diaMm, 0, 0, 3 * diaMm, null, diaMm, 4 * diaMm + 10);
    }

    static MountedCutter ball(double diaMm) {
        return made(Cutter.Shape.BALL, diaMm, diaMm / 2, 0, 3 * diaMm, null, diaMm, 4 * diaMm + 10);
    }

    static MountedCutter bull(double diaMm, double cornerMm) {
        return made(Cutter.Shape.BULL, diaMm, cornerMm, 0, 3 * diaMm, null, diaMm, 4 * diaMm + 10);
    }

    /** A cone on a flat: tapered end mill, V cutter, engraver. */
    static MountedCutter taper(double tipMm, double degrees, double fluteMm, double shankMm) {
        return made(Cutter.Shape.TAPER, tipMm, 0, degrees, fluteMm, null, shankMm, fluteMm + 20);
    }

    static MountedCutter taperBall(double tipMm, double degrees, double fluteMm, double shankMm) {
        return made(Cutter.Shape.TAPER_BALL, tipMm, tipMm / 2, degrees, fluteMm, null, shankMm, fluteMm + 20);
    }

    static MountedCutter drill(double diaMm) {
        return made(Cutter.Shape.DRILL, diaMm, 0, 0, 10 * diaMm, 118.0, diaMm, 10 * diaMm + 5);
    }

    static MountedCutter made(
            Cutter.Shape shape,
            double diaMm,
            double cornerMm,
            double taperDeg,
            double fluteMm,
            @Nullable Double pointDeg,
            double shankMm,
            double stickoutMm) {
        Cutter cutter = new Cutter(
                shape.name().toLowerCase(Locale.ROOT) + "-" + diaMm,
                "test",
                shape,
                number(diaMm),
                number(cornerMm),
                number(taperDeg),
                pointDeg == null ? null : number(pointDeg),
                number(fluteMm),
                number(fluteMm),
                null,
                number(shankMm),
                2,
                Cutter.Material.CARBIDE,
                Cutter.SoldIn.MM,
                null,
                number(1));
        return new MountedCutter(cutter, stickoutMm, Holder.ER16);
    }
}
