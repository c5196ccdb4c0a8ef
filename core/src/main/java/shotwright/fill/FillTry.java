package shotwright.fill;

import java.util.ArrayList;
import java.util.List;
import shotwright.layout.FeedSegment;
import shotwright.layout.Section;

/**
 * One try at filling: a melt, a fill time, and what was changed against the plan.
 *
 * @param melt the melt
 * @param timeS fill time
 * @param viscosityFactor stiffer (above 1) or thinner than the data say
 * @param wallFactor walls of the part against the drawing
 * @param gateWidthMm width the gates are opened to, 0 as planned
 * @param gateDepthMm depth the gates are opened to, 0 as planned
 * @param slit the cold slit of this melt
 */
record FillTry(
        Melt melt,
        double timeS,
        double viscosityFactor,
        double wallFactor,
        double gateWidthMm,
        double gateDepthMm,
        ColdWallSlit slit) {
    /** Pieces the cavity's way is shown in. */
    private static final List<String> THIRDS =
            List.of("cavity, first third of the way", "cavity, middle third", "cavity, last third");

    static FillTry of(Melt melt, double timeS, double viscosityFactor) {
        return new FillTry(melt, timeS, viscosityFactor, 1, 0, 0, new ColdWallSlit(melt, viscosityFactor));
    }

    FillTry wall(double factor) {
        return new FillTry(melt, timeS, viscosityFactor, factor, gateWidthMm, gateDepthMm, slit);
    }

    FillTry gate(double widthMm, double depthMm) {
        return new FillTry(melt, timeS, viscosityFactor, wallFactor, widthMm, depthMm, slit);
    }

    /** The section of a piece, gates opened when this try opens them. */
    Section sized(FeedSegment s, Section planned) {
        if (s.kind() != FeedSegment.Kind.GATE || !(gateWidthMm > 0)) return planned;
        return new Section(planned.shape(), gateWidthMm, gateDepthMm, planned.wallDraftDeg());
    }

    /**
     * The pressure this try takes.
     *
     * @param steps piece by piece
     * @param cavityMpa what of it the cavity takes
     * @param frozenShare largest share of a wall frozen along the way when the last corner fills
     */
    record Outcome(List<FillResult.PressureStep> steps, double cavityMpa, double frozenShare) {
        double peakMpa() {
            return steps.stream().mapToDouble(FillResult.PressureStep::dropMpa).sum();
        }

        double feedMpa() {
            return peakMpa() - cavityMpa;
        }
    }

    Outcome through(FeedWay feed, FlowField field, double cavityVolumeMm3, int cavities) {
        double cavityFlow = cavityVolumeMm3 * wallFactor / timeS;
        List<FillResult.PressureStep> steps = new ArrayList<>(feed.steps(this, cavityFlow * cavities));
        double total = Math.max(1e-9, field.wayLengthMm()), frozen = 0, cavity = 0;
        double[] drop = new double[3], length = new double[3], rate = new double[3], stress = new double[3];
        for (FlowField.Slice s : field.way()) {
            int third = (int) Math.min(2, 3 * (s.fromGateMm() - s.lengthMm() / 2) / total);
            double gap = s.wallMm() * wallFactor, speed = s.speedPerFlowPerMm2() * cavityFlow / wallFactor;
            double shear = 6 * speed / gap, passed = timeS * Math.max(0, FlowField.FULL_SHARE - s.arrivalShare());
            double layer = slit.layerMm(passed, s.fromGateMm(), shear);
            double slope = slit.slopeMpaPerMm(gap, speed, s.narrowFactor(), layer);
            drop[third] += slope * s.lengthMm();
            length[third] += s.lengthMm();
            rate[third] = Math.max(rate[third], shear);
            stress[third] = Math.max(stress[third], slope * gap / 2);
            frozen = Math.max(frozen, slit.frozenShare(gap, layer));
        }
        for (int k = 0; k < 3; k++) {
            cavity += drop[k];
            if (length[k] > 0)
                steps.add(new FillResult.PressureStep(THIRDS.get(k), length[k], drop[k], rate[k], stress[k]));
        }
        return new Outcome(List.copyOf(steps), cavity, frozen);
    }
}
