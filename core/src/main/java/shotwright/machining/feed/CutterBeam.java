package shotwright.machining.feed;

import java.util.ArrayList;
import java.util.List;
import shotwright.cutter.Cutter;
import shotwright.measure.Source;

/**
 * A cutter as a bar held at one end, of stretches that are cylinders or cones, lowest first. Bending under a side force F at height a: tip
 * moves F·∫(x − a)·x/(E·I) dx from a to the holder, I = π·d⁴/64, x from the tip; stress 32·F·(x − a)/(π·d³). Key ROARK; a fluted stretch
 * counts as a bar of 0.8 of its diameter (key EQD).
 *
 * @param stretches lowest first
 * @param modulusMpa elastic modulus
 */
public record CutterBeam(List<Stretch> stretches, double modulusMpa) {
    /** Stiffness of the fluted part: as a solid bar of this share of the diameter. */
    public static final double FLUTED_SHARE = 0.8;

    /** Elastic moduli of cutter materials; middle of 580 … 620 and upper end of 200 … 210. */
    public static final double CARBIDE_MPA = 600_000;

    public static final double HSS_MPA = 210_000;
    public static final Source MODULUS = Source.fromMemory("carbide 580 to 620 GPa, high-speed steel 200 to 210 GPa");

    /** Cones flatter than this per side are cylinders: their closed form would lose its digits. */
    private static final double CYLINDER_SLOPE = 1e-4;

    /**
     * A cylinder or cone.
     *
     * @param lengthMm length
     * @param lowDiaMm stiff diameter at its lower end
     * @param highDiaMm stiff diameter at its upper end
     */
    public record Stretch(double lengthMm, double lowDiaMm, double highDiaMm) {
        public Stretch {
            if (!(lengthMm > 0 && lowDiaMm > 0 && highDiaMm > 0))
                throw new IllegalArgumentException(
                        "stretch " + lengthMm + " mm long, Ø" + lowDiaMm + " to Ø" + highDiaMm + " mm");
        }
    }

    public CutterBeam {
        stretches = List.copyOf(stretches);
        if (stretches.isEmpty()) throw new IllegalArgumentException("stretches: none");
        if (!(modulusMpa > 0)) throw new IllegalArgumentException("modulusMpa: " + modulusMpa + " is not above zero");
    }

    /** A plain fluted cutter. */
    public static CutterBeam plain(double diaMm, double lengthMm, double modulusMpa) {
        double d = FLUTED_SHARE * diaMm;
        return new CutterBeam(List.of(new Stretch(lengthMm, d, d)), modulusMpa);
    }

    /**
     * A cutter that stands out of its holder: flutes, neck to the reach, shank. A cutter without a neck keeps its cutting diameter to the
     * reach.
     */
    public static CutterBeam of(Cutter cutter, double stickoutMm) {
        if (!(stickoutMm > 0)) throw new IllegalArgumentException("stickoutMm: " + stickoutMm + " is not above zero");
        double flutesMm = Math.min(stickoutMm, cutter.fluteLengthMm().value());
        double reachMm = Math.clamp(cutter.reachMm().value(), flutesMm, stickoutMm);
        double shankMm = cutter.shankMm().value(), endMm = cutter.diaAtMm(flutesMm);
        var necked = cutter.neckMm();
        double neckMm = necked != null ? necked.value() : Math.min(endMm, shankMm);
        List<Stretch> out = new ArrayList<>();
        out.add(new Stretch(flutesMm, FLUTED_SHARE * cutter.diaMm().value(), FLUTED_SHARE * endMm));
        if (reachMm > flutesMm) out.add(new Stretch(reachMm - flutesMm, neckMm, neckMm));
        if (stickoutMm > reachMm) out.add(new Stretch(stickoutMm - reachMm, shankMm, shankMm));
        return new CutterBeam(out, cutter.material() == Cutter.Material.CARBIDE ? CARBIDE_MPA : HSS_MPA);
    }

    /** From the tip to the holder. */
    public double lengthMm() {
        return stretches.stream().mapToDouble(Stretch::lengthMm).sum();
    }

    /** How far the tip moves under a side force one above it, mm. */
    public double tipMm(double forceN, double forceHeightMm) {
        double sum = 0, fromMm = 0;
        for (Stretch s : stretches) {
            double toMm = fromMm + s.lengthMm;
            if (toMm > forceHeightMm)
                sum += compliance(s, fromMm, Math.max(fromMm, forceHeightMm), toMm, forceHeightMm);
            fromMm = toMm;
        }
        return forceN * 64 / (Math.PI * modulusMpa) * sum;
    }

    /** ∫(x − a)·x/d⁴ dx over a part of a stretch that begins at {@code startMm}. */
    private static double compliance(Stretch s, double startMm, double fromMm, double toMm, double aMm) {
        double slope = (s.highDiaMm - s.lowDiaMm) / s.lengthMm;
        if (Math.abs(slope) < CYLINDER_SLOPE) {
            double d = (s.lowDiaMm + s.highDiaMm) / 2;
            return (cubic(toMm, aMm) - cubic(fromMm, aMm)) / Math.pow(d, 4);
        }
        double atTip = s.lowDiaMm - slope * startMm, atForce = atTip + slope * aMm;
        return (cone(atTip + slope * toMm, atTip, atForce) - cone(atTip + slope * fromMm, atTip, atForce))
                / Math.pow(slope, 3);
    }

    private static double cubic(double x, double a) {
        return x * x * x / 3 - a * x * x / 2;
    }

    /** Antiderivative of (u − p)·(u − q)/u⁴. */
    private static double cone(double u, double p, double q) {
        return -1 / u + (p + q) / (2 * u * u) - p * q / (3 * u * u * u);
    }

    /** Greatest bending stress, MPa. */
    public double stressMpa(double forceN, double forceHeightMm) {
        double worst = 0, fromMm = 0;
        for (Stretch s : stretches) {
            double slope = (s.highDiaMm - s.lowDiaMm) / s.lengthMm, toMm = fromMm + s.lengthMm;
            double atTip = s.lowDiaMm - slope * fromMm;
            double[] places = {fromMm, toMm, slope > 0 ? (atTip + 3 * slope * forceHeightMm) / (2 * slope) : toMm};
            for (double x : places) {
                if (x < fromMm || x > toMm || x <= forceHeightMm) continue;
                double d = atTip + slope * x;
                worst = Math.max(worst, 32 * forceN * (x - forceHeightMm) / (Math.PI * d * d * d));
            }
            fromMm = toMm;
        }
        return worst;
    }
}
