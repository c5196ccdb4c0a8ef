package shotwright.machining.feed;

import shotwright.cutter.Cutter;
import shotwright.measure.Band;
import shotwright.mill.Mill;

/**
 * Loads of a cut as functions of feed, depth and engagement, and how much of them is allowed.
 *
 * <p>Greatest force of one tooth: F = kc(h)·A. A helical edge is in the metal over a window of angle δ = 2·ap·tan λ/D at most; the largest area
 * it cuts there is A = fz·D/(2·tan λ)·(cos ψ₁ − cos ψ₂), ψ₂ = min(φ, π/2 + δ/2), ψ₁ = max(0, ψ₂ − δ), and h = fz·(cos ψ₁ − cos ψ₂)/(ψ₂ − ψ₁) its
 * mean chip; without a helix A = ap·h with the thickest chip h. As many teeth cut as fit into φ + δ. The side force is 1.1 to 1.3 times the
 * tangential one (from memory). Integrals of the power-law force along the edge.
 */
final class CutModel {
    /** Run-out of a cutter in a small collet when the mill's file says nothing (common practice). */
    private static final double RUN_OUT_MM = 0.01;

    /** Thinnest chip a fresh edge still cuts (common practice: half of an edge radius of 4 µm). */
    static final double THINNEST_CHIP_MM = 0.002;

    /** Bending stress carbide stands turn after turn: a fifth of its rupture strength of 3500 MPa (from memory). */
    static final double MOST_STRESS_MPA = 700;

    /** Share of the motor's power that is used (common practice). */
    static final double POWER_SHARE = 0.7;

    /** Bending allowed where the surface stays (common practice). */
    static final double FINISH_BENDING_MM = 0.008;

    /** Bending allowed in roughing: 0.3 of 0.25 mm left (common practice). */
    static final double ROUGH_BENDING_MM = 0.075;

    /** Spindle and collet when the mill's file says nothing (common practice). */
    private static final Band COMPLIANCE_UM_PER_N = new Band(0.05, 0.1, 0.2);

    private static final Band SIDE_OVER_TANGENTIAL = new Band(1.1, 1.2, 1.3);

    /** Helix of end mills for aluminium, the least usual (common practice). */
    private static final double HELIX_RAD = Math.toRadians(30);

    private final Cut cut;
    private final CutterBeam beam;
    private final Band complianceUmPerN;
    private final double runOutMm;

    CutModel(Cut cut) {
        this.cut = cut;
        this.beam = CutterBeam.of(cut.cutter(), cut.stickoutMm());
        Mill.Frame frame = cut.mill().frame();
        this.runOutMm = frame == null ? RUN_OUT_MM : frame.runOutMm().value();
        this.complianceUmPerN = frame == null
                ? COMPLIANCE_UM_PER_N
                : new Band(
                        frame.complianceUmPerN().low(),
                        frame.complianceUmPerN().mid(),
                        frame.complianceUmPerN().high());
    }

    /** Total reading of an indicator on the cutter. */
    double runOutMm() {
        return runOutMm;
    }

    /** Diameter that cuts: of balls at the depth, of cones at half the depth. */
    double cuttingDiaMm(double depthMm) {
        Cutter c = cut.cutter();
        double dia = c.diaMm().value();
        return switch (c.shape()) {
            case BALL, TAPER_BALL -> depthMm < dia / 2 ? BallContact.effectiveDiaMm(dia, depthMm) : dia;
            case TAPER, ENGRAVER, V ->
                c.diaAtMm(Math.min(depthMm, c.fluteLengthMm().value()) / 2);
            default -> dia;
        };
    }

    /** Widest diameter in the cut. */
    double fastestDiaMm(double depthMm) {
        Cutter c = cut.cutter();
        double d = Math.min(depthMm, c.fluteLengthMm().value());
        return c.taperDeg().value() > 0 ? Math.max(c.diaAtMm(d), cuttingDiaMm(depthMm)) : cuttingDiaMm(depthMm);
    }

    /** Chip of a ball's side over that of a straight edge. */
    private double leadShare(double depthMm) {
        Cutter c = cut.cutter();
        boolean ball = c.shape() == Cutter.Shape.BALL || c.shape() == Cutter.Shape.TAPER_BALL;
        return ball ? Math.min(1, cuttingDiaMm(depthMm) / c.diaMm().value()) : 1;
    }

    private double helixRad() {
        return switch (cut.cutter().shape()) {
            case ENGRAVER, V, FACE -> 0;
            default -> HELIX_RAD;
        };
    }

    /** Greatest side force of a feed, N. */
    Band forceN(double feedPerToothMm, double depthMm, double engagementRad) {
        double dia = cuttingDiaMm(depthMm), tan = Math.tan(helixRad()), lag = 2 * depthMm * tan / dia;
        double chip, area;
        if (lag < 1e-6) {
            chip = feedPerToothMm * Chip.largestShare(engagementRad);
            area = chip * depthMm;
        } else {
            double last = Math.min(engagementRad, Math.PI / 2 + lag / 2), first = Math.max(0, last - lag);
            double swept = Math.cos(first) - Math.cos(last);
            chip = feedPerToothMm * swept / (last - first);
            area = feedPerToothMm * dia / (2 * tan) * swept;
        }
        int teeth = Chip.teethInCut(
                Math.min(2 * Math.PI, engagementRad + lag), cut.cutter().flutes());
        Band kc = SpecificForce.bandNPerMm2(cut.alloy().machinability(), chip * leadShare(depthMm));
        return new Band(
                SIDE_OVER_TANGENTIAL.low() * kc.low() * area * teeth,
                SIDE_OVER_TANGENTIAL.nominal() * kc.nominal() * area * teeth,
                SIDE_OVER_TANGENTIAL.high() * kc.high() * area * teeth);
    }

    /** Everything a cut does. */
    CutLoad load(double feedPerToothMm, double depthMm, double engagementRad, double speedRpm) {
        int teeth = cut.cutter().flutes();
        double widthMm = Chip.widthMm(engagementRad, cuttingDiaMm(depthMm));
        double feed = FeedRate.mmPerMin(feedPerToothMm, teeth, speedRpm);
        double meanMm = feedPerToothMm * Chip.meanShare(engagementRad) * leadShare(depthMm);
        double perKcW = CuttingPower.powerW(depthMm, widthMm, feed, 1);
        Band power =
                SpecificForce.bandNPerMm2(cut.alloy().machinability(), meanMm).times(perKcW);
        Band force = forceN(feedPerToothMm, depthMm, engagementRad);
        double longToothMm = Chip.withRunOutMm(feedPerToothMm, teeth, runOutMm);
        double at = Math.min(depthMm / 2, beam.lengthMm() / 2);
        double beamMmPerN = beam.tipMm(1, at), mpaPerN = beam.stressMpa(1, at);
        Band bending = new Band(
                force.low() * (beamMmPerN + complianceUmPerN.low() / 1000),
                force.nominal() * (beamMmPerN + complianceUmPerN.nominal() / 1000),
                force.high() * (beamMmPerN + complianceUmPerN.high() / 1000));
        Band stress = forceN(longToothMm, depthMm, engagementRad).times(mpaPerN);
        return new CutLoad(force, power, power.times(CuttingPower.torqueNm(1, speedRpm)), bending, stress);
    }

    /** Power a cut may take at a speed, W. */
    double powerAllowedW(double speedRpm) {
        return POWER_SHARE * CuttingPower.EFFICIENCY * cut.mill().powerAtW(speedRpm);
    }

    double bendingAllowedMm() {
        return cut.kind().finishes() ? FINISH_BENDING_MM : ROUGH_BENDING_MM;
    }

    /** How much of the tightest allowance a load uses: power and bending by the power law, stress by the way that gives most. */
    double use(CutLoad load, double speedRpm) {
        return Math.max(
                use(load, speedRpm, Limit.POWER),
                Math.max(use(load, speedRpm, Limit.BENDING), use(load, speedRpm, Limit.BREAKAGE)));
    }

    private double use(CutLoad load, double speedRpm, Limit limit) {
        return switch (limit) {
            case POWER -> load.powerW().nominal() / powerAllowedW(speedRpm);
            case BENDING -> load.deflectionMm().nominal() / bendingAllowedMm();
            case BREAKAGE -> load.stressMpa().high() / MOST_STRESS_MPA;
            default -> 0;
        };
    }

    /** Which allowance is used most. */
    Limit tightest(CutLoad load, double speedRpm) {
        Limit tightest = Limit.POWER;
        for (Limit l : new Limit[] {Limit.BENDING, Limit.BREAKAGE})
            if (use(load, speedRpm, l) > use(load, speedRpm, tightest)) tightest = l;
        return tightest;
    }

    /** Largest feed per tooth up to a wish that all allowances bear; 0 when none does. */
    double feedPerToothMm(double wishMm, double depthMm, double engagementRad, double speedRpm) {
        return largest(wishMm, fz -> use(load(fz, depthMm, engagementRad, speedRpm), speedRpm) <= 1);
    }

    /** The largest number up to a wish that a falling test accepts, to one part in a million of the wish. */
    static double largest(double wish, java.util.function.DoublePredicate accepts) {
        if (accepts.test(wish)) return wish;
        double good = 0, bad = wish;
        for (int i = 0; i < 20; i++) {
            double middle = (good + bad) / 2;
            if (accepts.test(middle)) good = middle;
            else bad = middle;
        }
        return good;
    }
}
