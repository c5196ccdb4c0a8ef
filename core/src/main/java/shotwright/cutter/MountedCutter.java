package shotwright.cutter;

import java.util.ArrayList;
import java.util.List;

/**
 * A cutter as it stands in the spindle: its cutting end, and behind it flutes, neck, shank and holder as cylinders stacked over the tip.
 *
 * @param cutter the cutter
 * @param stickoutMm length out of the holder, tip to nose
 * @param holder what grips it
 */
public record MountedCutter(Cutter cutter, double stickoutMm, Holder holder) {
    public MountedCutter {
        double shortestMm = cutter.fluteLengthMm().value();
        if (!(stickoutMm >= shortestMm) || !Double.isFinite(stickoutMm))
            throw new IllegalArgumentException("stickout of cutter " + cutter.id() + ": " + stickoutMm
                    + " mm would put its flutes into the holder; let it stick out at least " + shortestMm + " mm");
    }

    /** What a stretch of the assembly is; only flutes cut. */
    public enum Part {
        FLUTES("flutes"),
        NECK("neck"),
        SHANK("shank"),
        HOLDER("holder");

        private final String words;

        Part(String words) {
            this.words = words;
        }

        public String words() {
            return words;
        }
    }

    /**
     * One cylinder of the assembly.
     *
     * @param part what it is
     * @param fromMm lower end, above the tip
     * @param toMm upper end, above the tip; infinite for the holder
     * @param radiusMm radius
     */
    public record Cylinder(Part part, double fromMm, double toMm, double radiusMm) {}

    /** The cutting end. */
    public CutterProfile profile() {
        return CutterProfile.of(cutter);
    }

    /**
     * What stands above the cutting end, lowest first and without gaps. A cutter without neck is as thick as its flutes down to its reach; a
     * shank thicker than that begins at the reach.
     */
    public List<Cylinder> cylinders() {
        CutterProfile end = profile();
        double cutMm = end.largestRadiusMm(), shankMm = cutter.shankMm().value() / 2;
        double flutesEndMm = cutter.fluteLengthMm().value();
        double reachMm = Math.min(stickoutMm, cutter.reachMm().value());
        var neck = cutter.neckMm();
        double neckMm = neck == null ? Math.min(cutMm, shankMm) : neck.value() / 2;
        List<Cylinder> stack = new ArrayList<>();
        add(stack, Part.FLUTES, end.endHeightMm(), flutesEndMm, cutMm);
        add(stack, Part.NECK, flutesEndMm, reachMm, neckMm);
        add(stack, Part.SHANK, reachMm, stickoutMm, shankMm);
        add(stack, Part.HOLDER, stickoutMm, Double.POSITIVE_INFINITY, holder.noseRadiusMm());
        return List.copyOf(stack);
    }

    private static void add(List<Cylinder> stack, Part part, double fromMm, double toMm, double radiusMm) {
        if (toMm > fromMm + 1e-9) stack.add(new Cylinder(part, fromMm, toMm, radiusMm));
    }

    /** Largest radius of the assembly up to a height above the tip: what a hole of that depth must let through. */
    public double widestBelowMm(double heightMm) {
        double widestMm = profile().radiusAtMm(heightMm);
        for (Cylinder c : cylinders()) if (c.fromMm() < heightMm) widestMm = Math.max(widestMm, c.radiusMm());
        return widestMm;
    }
}
