package shotwright.layout.gate;

import java.util.Locale;
import shotwright.layout.Melt;
import shotwright.measure.Digits;
import shotwright.resin.ChannelFlow;

/**
 * The smallest rectangular gate that passes three tests, in steps of 0.05 mm of depth: the melt is not sheared beyond the resin's limit, the
 * gate is still open when the cavity is full and for a share of the part's own freezing, and it takes no more than its share of the
 * pressure. Metal can come off later, never back on.
 */
public final class GateSizing {
    /** Step of the depth, mm. */
    public static final double STEP_MM = 0.05;

    /** Widest gate tried over its depth. */
    private static final double[] WIDTH_OVER_DEPTH = {2.5, 3, 3.5, 4};

    private static final double LAND_MM = 0.8;
    private static final double SMALLEST_MM = 0.4;
    private static final double DEEPEST_OVER_WALL = 0.8;
    private static final double HOLD_SHARE = 0.25;

    private GateSizing() {}

    /**
     * A size and what decided it.
     *
     * @param widthMm width to start with
     * @param depthMm depth to start with
     * @param largestWidthMm how far it may be opened
     * @param largestDepthMm how far it may be opened
     * @param landMm length of the passage
     * @param shearPerS apparent shear rate at the start size
     * @param sealS time until it is frozen, by conduction
     * @param dropMpa pressure it takes
     * @param passes all three tests pass
     * @param reason what decided, with the number
     */
    public record Size(
            double widthMm,
            double depthMm,
            double largestWidthMm,
            double largestDepthMm,
            double landMm,
            double shearPerS,
            double sealS,
            double dropMpa,
            boolean passes,
            String reason) {}

    /**
     * What a gate has to do.
     *
     * @param wallMm wall it enters
     * @param packedWallMm wall that must be packed through it: the part's usual wall where the rim is thicker
     * @param heightMm height of that wall in the half the gate is cut into
     * @param cavitySurfaceMm2 surface of the cavity, for the classical rule
     * @param flowMm3PerS flow through this gate
     * @param fillS time to fill the cavity
     * @param pressureMpa pressure the press gives
     * @param pressureShare share of it the gate may take
     * @param narrowestMm narrowest cutter on the rack
     * @param widestMm widest opening the edge allows
     */
    public record Task(
            double wallMm,
            double packedWallMm,
            double heightMm,
            double cavitySurfaceMm2,
            double flowMm3PerS,
            double fillS,
            double pressureMpa,
            double pressureShare,
            double narrowestMm,
            double widestMm) {}

    /** Pressure through the passage and its mouth (taken as 2.5 depths more of passage), MPa. */
    public static double dropMpa(Melt melt, double flowMm3PerS, double widthMm, double depthMm, double landMm) {
        double w = widthMm * 1e-3, h = depthMm * 1e-3;
        return ChannelFlow.channelDropPa(
                        ChannelFlow.CrossSection.rectangle(w, h),
                        melt.consistencyPaS(),
                        melt.flowExponent(),
                        (landMm + 2.5 * depthMm) * 1e-3,
                        w * h,
                        2 * (w + h),
                        flowMm3PerS * 1e-9)
                / 1e6;
    }

    /** The smallest size that passes; when none does, the largest tried, marked as not passing. */
    public static Size of(Task task, Melt melt) {
        double deepest = Math.max(Math.min(DEEPEST_OVER_WALL * task.wallMm, task.heightMm), SMALLEST_MM);
        double hold = Math.max(1.2 * task.fillS, HOLD_SHARE * partSealS(task.packedWallMm, melt));
        Size last = null;
        for (int i = 0; ; i++) {
            double depth = SMALLEST_MM + i * STEP_MM;
            if (depth > deepest + 1e-9 && last != null) return last;
            for (double ratio : WIDTH_OVER_DEPTH) {
                last = sized(task, melt, depth, ratio * depth, hold);
                if (last.passes) return last;
            }
        }
    }

    /** A size that a person asked for, judged by the same tests. */
    public static Size judge(Task task, Melt melt, double widthMm, double depthMm) {
        double hold = Math.max(1.2 * task.fillS, HOLD_SHARE * partSealS(task.packedWallMm, melt));
        return sized(task, melt, depthMm, widthMm, hold);
    }

    private static double partSealS(double wallMm, Melt melt) {
        return GateFreeze.slotS(wallMm, melt.diffusivityMm2PerS(), melt.meltC(), melt.moldC(), melt.noFlowC());
    }

    private static Size sized(Task task, Melt melt, double depth, double wanted, double holdS) {
        double width =
                Math.ceil(10 * Math.clamp(wanted, Math.min(task.narrowestMm, task.widestMm), task.widestMm) - 1e-9)
                        / 10;
        double shear = GateShear.slotPerS(task.flowMm3PerS, width, depth);
        double seal = GateFreeze.slotS(depth, melt.diffusivityMm2PerS(), melt.meltC(), melt.moldC(), melt.noFlowC());
        double drop = dropMpa(melt, task.flowMm3PerS, width, depth, LAND_MM);
        boolean shearOk = shear <= melt.shearLimitPerS(),
                sealOk = seal >= holdS,
                dropOk = drop <= task.pressureShare * task.pressureMpa;
        double largestDepth = Math.max(
                depth, roundDown(Math.min(EdgeGateSize.depthMm(melt.gateFactor(), task.wallMm), task.heightMm)));
        double classical = EdgeGateSize.widthMm(melt.gateFactor(), task.cavitySurfaceMm2);
        double largestWidth = Math.max(width, Math.min(task.widestMm, Math.max(classical, 4 * largestDepth)));
        return new Size(
                width,
                depth,
                Math.floor(10 * largestWidth + 1e-9) / 10,
                largestDepth,
                LAND_MM,
                shear,
                seal,
                drop,
                shearOk && sealOk && dropOk,
                reason(task, melt, shear, seal, holdS, drop, shearOk, sealOk, dropOk));
    }

    private static double roundDown(double mm) {
        return Math.floor(mm / STEP_MM + 1e-9) * STEP_MM;
    }

    private static String reason(
            Task task,
            Melt melt,
            double shear,
            double seal,
            double hold,
            double drop,
            boolean shearOk,
            boolean sealOk,
            boolean dropOk) {
        String how = shearOk && sealOk && dropOk ? "Smallest that passes: " : "Does not pass: ";
        return String.format(
                Locale.ROOT,
                "%ssheared at %s 1/s (limit %s)%s, frozen after %.2f s (at least %.2f s wanted)%s, takes %.1f MPa of %.0f MPa%s.",
                how,
                Digits.figures(shear, 2),
                Digits.figures(melt.shearLimitPerS(), 2),
                shearOk ? "" : ": too fast",
                seal,
                hold,
                sealOk ? "" : ": too early",
                drop,
                task.pressureMpa,
                dropOk ? "" : ": too much");
    }
}
