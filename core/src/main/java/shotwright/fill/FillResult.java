package shotwright.fill;

import java.util.List;
import shotwright.finding.Finding;
import shotwright.measure.Band;

/**
 * First-order answer of station 60.
 *
 * @param resin id of the resin
 * @param fillTimeS fill time chosen
 * @param fillWindowS times that fill without freezing off or burning, s
 * @param steps pressure drop piece by piece from the nozzle to the last corner
 * @param pressurePeakMpa sum of the steps at the end of fill
 * @param pressureBandMpa its band
 * @param pressureAvailableMpa what the press gives at the plunger face
 * @param flowLengthMm longest way from the gate
 * @param flowLengthRatio that way over the wall, summed along it
 * @param flowLengthLimitRatio what the resin does at this pressure and wall
 * @param frozenAtEndShare largest share of a wall frozen along the way when the last corner fills
 * @param gateSealS time until the gate is frozen
 * @param clampPeakKn force that opens the mold at the end of fill or under hold, whichever is more
 * @param clampFillKn that force at the end of fill
 * @param clampHoldKn that force under hold
 * @param meltWarmingK the most its own shear can warm the melt
 * @param scan pressure against fill time, the evidence for the window
 * @param ladder what short shots of growing size should look like, a sentence each
 * @param lastFills places that fill last, in the pulled frame of the part: where air wants out
 * @param verdict fills, doubtful or short
 * @param findings what has to be said
 */
public record FillResult(
        String resin,
        double fillTimeS,
        Band fillWindowS,
        List<PressureStep> steps,
        double pressurePeakMpa,
        Band pressureBandMpa,
        double pressureAvailableMpa,
        double flowLengthMm,
        double flowLengthRatio,
        double flowLengthLimitRatio,
        double frozenAtEndShare,
        double gateSealS,
        double clampPeakKn,
        double clampFillKn,
        double clampHoldKn,
        double meltWarmingK,
        List<ScanPoint> scan,
        List<String> ladder,
        List<FlowField.LastFill> lastFills,
        Verdict verdict,
        List<Finding> findings) {
    /** How the answer was made. */
    public static final String MODEL = "first-order";

    /** Will it fill. */
    public enum Verdict {
        FILLS,
        DOUBTFUL,
        SHORT;

        public String word() {
            return name().toLowerCase(java.util.Locale.ROOT);
        }
    }

    /**
     * One piece of the way.
     *
     * @param name which piece, in words
     * @param lengthMm its length
     * @param dropMpa pressure it takes
     * @param shearRatePerS apparent shear rate at the wall
     * @param shearStressMpa shear stress at the wall
     */
    public record PressureStep(
            String name, double lengthMm, double dropMpa, double shearRatePerS, double shearStressMpa) {}

    /**
     * One fill time tried.
     *
     * @param timeS fill time
     * @param pressureMpa pressure it takes; times at which the melt freezes on the way are left out of the list
     * @param frozenShare largest share of a wall frozen along the way
     */
    public record ScanPoint(double timeS, double pressureMpa, double frozenShare) {}

    public FillResult {
        scan = List.copyOf(scan);
        ladder = List.copyOf(ladder);
        lastFills = List.copyOf(lastFills);
        steps = List.copyOf(steps);
        findings = List.copyOf(findings);
    }

    /** The same with what has to be said, places in the pulled frame of the part or in the file's axes. */
    public FillResult withFindings(List<Finding> newFindings) {
        return new FillResult(
                resin,
                fillTimeS,
                fillWindowS,
                steps,
                pressurePeakMpa,
                pressureBandMpa,
                pressureAvailableMpa,
                flowLengthMm,
                flowLengthRatio,
                flowLengthLimitRatio,
                frozenAtEndShare,
                gateSealS,
                clampPeakKn,
                clampFillKn,
                clampHoldKn,
                meltWarmingK,
                scan,
                ladder,
                lastFills,
                verdict,
                newFindings);
    }
}
