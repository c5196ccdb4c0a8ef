package shotwright.cutter;

import org.jspecify.annotations.Nullable;
import shotwright.measure.Quantity;
import shotwright.rack.Rack;

/**
 * A cutter.
 *
 * @param id id on the rack
 * @param name name shown
 * @param shape shape of the cutting end
 * @param diaMm cutting diameter; of tapered cutters, engravers and spot drills the diameter at the tip
 * @param cornerRadiusMm radius at the end: half the diameter of a ball, 0 when sharp
 * @param taperDeg taper per side; half the included angle of engravers, V cutters and spot drills; 0 when straight
 * @param pointAngleDeg included angle of a drill's point; null unless a drill
 * @param fluteLengthMm cutting length
 * @param reachMm how deep it may go before neck or shank would touch; at least the cutting length
 * @param neckMm neck diameter behind the flutes; null when there is no neck
 * @param shankMm shank diameter
 * @param flutes teeth
 * @param material what it is made of
 * @param soldIn inch or metric
 * @param maxRpm highest speed; null when the spindle sets it
 * @param price neutral money
 */
public record Cutter(
        String id,
        String name,
        Shape shape,
        Quantity diaMm,
        Quantity cornerRadiusMm,
        Quantity taperDeg,
        @Nullable Quantity pointAngleDeg,
        Quantity fluteLengthMm,
        Quantity reachMm,
        @Nullable Quantity neckMm,
        Quantity shankMm,
        int flutes,
        Material material,
        SoldIn soldIn,
        @Nullable Quantity maxRpm,
        Quantity price)
        implements Rack.Entry {
    /** Shape of the cutting end. */
    public enum Shape {
        FLAT("flat end mill"),
        BALL("ball end mill"),
        BULL("end mill with corner radius"),
        TAPER("tapered end mill"),
        TAPER_BALL("tapered ball end mill"),
        ENGRAVER("engraver"),
        SPOT("spot drill"),
        DRILL("drill"),
        REAMER("reamer"),
        FACE("face mill"),
        V("V cutter");

        private final String words;

        Shape(String words) {
            this.words = words;
        }

        public String words() {
            return words;
        }

        /** True for cutters that make surfaces, false for those that only make holes. */
        public boolean mills() {
            return this != DRILL && this != REAMER && this != SPOT;
        }
    }

    /** What it is made of. */
    public enum Material {
        CARBIDE,
        HSS
    }

    /** Inch or metric. */
    public enum SoldIn {
        INCH,
        MM
    }

    public Cutter {
        if (!(diaMm.value() > 0)) throw new IllegalArgumentException("diaMm: " + diaMm.value() + " is not above zero");
        if (!(fluteLengthMm.value() > 0)) throw new IllegalArgumentException("fluteLengthMm must be above zero");
        if (reachMm.value() < fluteLengthMm.value())
            throw new IllegalArgumentException(
                    "reachMm: " + reachMm.value() + " is less than the cutting length " + fluteLengthMm.value());
        if (flutes < 1) throw new IllegalArgumentException("flutes: " + flutes + " is below one");
        if (taperDeg.value() < 0 || taperDeg.value() >= 90)
            throw new IllegalArgumentException("taperDeg: " + taperDeg.value() + " is not between 0 and 90");
    }

    /** Half the diameter at the tip. */
    public double radiusMm() {
        return diaMm.value() / 2;
    }

    /** Diameter at a height above the tip, without the corner: d + 2·z·tan(taper), no more than the shank allows. */
    public double diaAtMm(double heightMm) {
        return diaMm.value() + 2 * heightMm * Math.tan(Math.toRadians(taperDeg.value()));
    }

    /** Largest diameter of the cutting part. */
    public double largestDiaMm() {
        return diaAtMm(fluteLengthMm.value());
    }

    /** Smallest inside corner it leaves in plan at its tip: half the tip diameter. */
    public double insideRadiusMm() {
        return radiusMm();
    }
}
