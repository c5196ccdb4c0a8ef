package shotwright.cool;

import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import org.jspecify.annotations.Nullable;
import shotwright.layout.FeedSegment;
import shotwright.measure.Band;
import shotwright.resin.Resin;

/**
 * How fast can it run, first order: cooling by wall class and feed, the mold's own temperature shot by shot, and the cycle. The mold settles
 * where the heat of the shots leaves through air and platens; where the resin wants it hotter it is heated, where it gets too hot a pause is
 * put into the cycle. Accuracy ±25 % (common practice).
 */
public final class FirstOrderCool {
    private static final double BAND_SHARE = 0.25;
    private static final double SETTLED_K = 2;
    /** The mold stays this far below the temperature the part comes out at. */
    private static final double BELOW_EJECT_K = 5;

    private static final int ROUNDS = 30;
    private static final int MOST_SHOTS = 1000;

    private FirstOrderCool() {}

    /** Where the mold runs and how that is kept. */
    enum Held {
        BY_ITSELF,
        HEATED,
        BY_PAUSES
    }

    /**
     * The settled run.
     *
     * @param moldC where the mold runs
     * @param held how that is kept
     * @param coolingS cooling time there
     * @param pauseS pause per shot
     * @param lump heat balance without pause and heater
     */
    record Run(double moldC, Held held, double coolingS, double pauseS, LumpedMold lump) {}

    /** Answers station 70. */
    public static CoolResult cool(CoolInput in) {
        Run run = settle(in);
        List<CoolResult.Region> regions = regions(in, run.moldC());
        List<CoolResult.CyclePiece> cycle = cycle(in, run);
        double cycleS = cycle.stream().mapToDouble(CoolResult.CyclePiece::timeS).sum();
        List<Double> byShot = byShot(in, run, cycleS);
        CoolResult bare = new CoolResult(
                in.resin().id(),
                run.coolingS(),
                Band.plusMinus(run.coolingS(), BAND_SHARE),
                regions,
                cycleS,
                cycle,
                run.lump().steadyC(),
                in.resin().settings().moldC().value(),
                warmUp(byShot),
                byShot,
                run.pauseS(),
                List.of());
        return new CoolFindings(in, run, bare).complete();
    }

    /** Mold temperature, cooling time and cycle depend on each other; a few rounds settle them. */
    private static Run settle(CoolInput in) {
        Resin resin = in.resin();
        double limit = Math.max(in.roomC() + 2, Math.min(resin.moldC().high(), ejectC(resin) - BELOW_EJECT_K));
        double heatJ = in.shotG() * resin.enthalpyKjPerKg().mid();
        double moldC = Math.clamp(resin.settings().moldC().value(), Math.min(in.roomC() + 1, limit - 1), limit);
        @Nullable Run run = null;
        for (int i = 0; i < ROUNDS; i++) {
            double cooling = coolingS(in, moldC);
            double busy = in.fillTimeS() + Math.max(cooling, in.holdTimeS()), cycle = busy + handlingS(in);
            LumpedMold lump = lump(in, heatJ, cycle, busy / cycle);
            double steady = lump.steadyC();
            Held held = Held.BY_ITSELF;
            double next = steady, pause = 0;
            if (steady < resin.moldC().low()) {
                held = Held.HEATED;
                next = Math.min(limit, resin.settings().moldC().value());
            } else if (steady > limit) {
                held = Held.BY_PAUSES;
                next = limit;
                pause = pause(in, heatJ, cycle, busy, limit);
            }
            boolean done = run != null && Math.abs(next - moldC) < 0.05;
            moldC = moldC + 0.6 * (next - moldC);
            run = new Run(next, held, cooling, pause, lump);
            if (done) break;
        }
        return Objects.requireNonNull(run, "at least one round");
    }

    private static double pause(CoolInput in, double heatJ, double cycle, double busy, double limit) {
        double pause = 0;
        // the longer the pause the more of it the mold stands open, so its heat path is worked out again
        for (int i = 0; i < ROUNDS; i++) {
            double whole = cycle + pause;
            pause = Math.max(0, lump(in, heatJ, whole, busy / whole).shortestCycleS(limit) - cycle);
        }
        return pause;
    }

    private static LumpedMold lump(CoolInput in, double heatJ, double cycleS, double clampedShare) {
        double massKg = in.metalVolumeMm3() * in.material().densityGPerCm3().value() * 1e-6;
        double loss = MoldHeat.of(in.layout().block(), in.press(), clampedShare, in.roomC())
                .wPerK();
        return new LumpedMold(massKg, in.material().heatCapacityJPerKgK().value(), heatJ, cycleS, loss, in.roomC());
    }

    /** Bulk temperature the part comes out at: the middle of what the resin allows. */
    static double ejectC(Resin resin) {
        return resin.ejectC().mid();
    }

    private static double handlingS(CoolInput in) {
        return in.press().handlingS().value();
    }

    private static double coolingS(CoolInput in, double moldC) {
        return regions(in, moldC).stream()
                .filter(r -> !r.name().startsWith("feed"))
                .mapToDouble(CoolResult.Region::timeS)
                .max()
                .orElse(0);
    }

    /** Wall classes by their centre line (a lump like a rod), the feed by its mean (a strong skin is enough to take it out). */
    static List<CoolResult.Region> regions(CoolInput in, double moldC) {
        Resin r = in.resin();
        double a = r.diffusivityMm2PerS().mid(), eject = ejectC(r);
        List<CoolResult.Region> out = new ArrayList<>();
        for (WallClasses.WallClass w : WallClasses.of(in.walls())) {
            double t = w.lump()
                    ? RodCooling.centreTimeS(w.wallMm(), a, in.meltC(), moldC, eject)
                    : PlateCooling.centreTimeS(w.wallMm(), a, in.meltC(), moldC, eject);
            out.add(new CoolResult.Region(w.name(), w.wallMm(), w.areaShare(), t));
        }
        double thickest = 0;
        for (FeedSegment s : in.layout().feed()) {
            if (s.kind() == FeedSegment.Kind.GATE) continue;
            double diameter = Math.max(
                    4 * s.from().areaMm2() / s.from().perimeterMm(), 4 * s.to().areaMm2() / s.to().perimeterMm());
            thickest = Math.max(thickest, diameter);
        }
        if (thickest > 0)
            out.add(new CoolResult.Region(
                    "feed, its thickest piece",
                    thickest,
                    0,
                    RodCooling.meanTimeS(thickest, a, in.meltC(), moldC, eject)));
        return out;
    }

    private static List<CoolResult.CyclePiece> cycle(CoolInput in, Run run) {
        double hold = Math.min(in.holdTimeS(), Math.max(run.coolingS(), in.holdTimeS()));
        List<CoolResult.CyclePiece> out = new ArrayList<>();
        out.add(new CoolResult.CyclePiece("inject", in.fillTimeS()));
        out.add(new CoolResult.CyclePiece("hold", hold));
        out.add(new CoolResult.CyclePiece("cool on", Math.max(0, run.coolingS() - hold)));
        out.add(new CoolResult.CyclePiece("open, take out, close", handlingS(in)));
        if (run.pauseS() > 0) out.add(new CoolResult.CyclePiece("pause for the mold", run.pauseS()));
        return out;
    }

    /** Mold temperature after each shot from a cold start; a heated mold starts at its set-point. */
    private static List<Double> byShot(CoolInput in, Run run, double cycleS) {
        List<Double> out = new ArrayList<>();
        LumpedMold l = run.lump();
        double start = run.held() == Held.HEATED ? run.moldC() : in.roomC();
        LumpedMold cold = new LumpedMold(
                l.massKg(), l.heatCapacityJPerKgK(), l.heatPerShotJ(), cycleS - run.pauseS(), l.lossWPerK(), l.roomC());
        for (int n = 1; n <= MOST_SHOTS; n++) {
            double free = cold.afterC(n, start);
            double t =
                    switch (run.held()) {
                        case HEATED -> run.moldC();
                        case BY_PAUSES -> Math.min(run.moldC(), free);
                        case BY_ITSELF -> free;
                    };
            out.add(t);
            boolean settled = n > 12 && Math.abs(t - run.moldC()) < 0.1;
            if (settled) break;
        }
        return out;
    }

    /** Shots until every later one lies within 2 K of the last. */
    private static int warmUp(List<Double> byShot) {
        double last = byShot.getLast();
        int n = byShot.size();
        while (n > 0 && Math.abs(byShot.get(n - 1) - last) <= SETTLED_K) n--;
        return n;
    }
}
