package shotwright.sheet;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import shotwright.finding.Finding;
import shotwright.press.Press;
import shotwright.resin.Resin;

/**
 * In which order to try several resins on one press, so that least is purged and no two that must not meet follow one another. Every order of up
 * to eight resins is weighed: barrel contents of purge for each change, half of one more for each 20 °C the barrel must come down, a quarter
 * for each 20 °C it must rise; a forbidden neighbour weighs more than all else together.
 *
 * @param steps the resins in order
 * @param purgeG purge of the whole trial
 * @param findings what has to be said
 */
public record TrialOrder(List<Step> steps, double purgeG, List<Finding> findings) {
    private static final int MOST_RESINS = 8;
    private static final double FORBIDDEN_WEIGHT = 1e6;

    /**
     * One resin of the trial.
     *
     * @param resin its id
     * @param name its name
     * @param meltC melt temperature set
     * @param purgeG purge before it
     * @param change what to do before it, in a sentence; empty for the first
     */
    public record Step(String resin, String name, double meltC, double purgeG, String change) {}

    public TrialOrder {
        steps = List.copyOf(steps);
        findings = List.copyOf(findings);
    }

    /** The order that purges least. @throws IllegalArgumentException for none or more than eight resins */
    public static TrialOrder of(List<Resin> resins, Press press) {
        if (resins.isEmpty() || resins.size() > MOST_RESINS)
            throw new IllegalArgumentException("resins: " + resins.size() + ", give 1 to " + MOST_RESINS);
        Search search = new Search(resins);
        search.go(new ArrayList<>(), 0);
        return describe(search.best, press);
    }

    private static final class Search {
        private final List<Resin> resins;
        private List<Resin> best = List.of();
        private double least = Double.POSITIVE_INFINITY;

        Search(List<Resin> resins) {
            this.resins = resins;
        }

        void go(List<Resin> so, double weight) {
            if (weight >= least) return;
            if (so.size() == resins.size()) {
                best = List.copyOf(so);
                least = weight;
                return;
            }
            for (Resin r : resins) {
                if (so.contains(r)) continue;
                double more = so.isEmpty() ? 0 : weight(so.getLast(), r);
                so.add(r);
                go(so, weight + more);
                so.removeLast();
            }
        }
    }

    static double weight(Resin from, Resin to) {
        double up = to.settings().nozzleC().value() - from.settings().nozzleC().value();
        double heat = up < 0 ? 0.5 * -up / 20 : 0.25 * up / 20;
        return ChangeOver.barrels(from, to) + heat + (ChangeOver.forbidden(from, to) ? FORBIDDEN_WEIGHT : 0);
    }

    private static TrialOrder describe(List<Resin> order, Press press) {
        List<Step> steps = new ArrayList<>();
        List<Finding> findings = new ArrayList<>();
        double sum = 0;
        for (int i = 0; i < order.size(); i++) {
            Resin r = order.get(i);
            double purge = i == 0 ? 0 : ChangeOver.massG(order.get(i - 1), r, press);
            String change = "";
            if (i > 0) {
                Resin b = order.get(i - 1);
                change = String.format(
                        Locale.ROOT,
                        "After %s push about %.0f g of %s through at %.0f °C, then set %.0f °C.",
                        b.name(),
                        purge,
                        ChangeOver.between(b, r),
                        b.settings().nozzleC().value(),
                        SetPoints.meltC(r, press));
                if (ChangeOver.forbidden(b, r)) findings.add(meeting(b, r));
            }
            sum += purge;
            steps.add(new Step(r.id(), r.name(), SetPoints.meltC(r, press), purge, change));
        }
        addApart(order, findings);
        return new TrialOrder(steps, sum, findings);
    }

    private static Finding meeting(Resin a, Resin b) {
        return Finding.stop(
                        "must-never-meet",
                        String.format(
                                Locale.ROOT,
                                "%s and %s must never meet; no order of these resins keeps them apart.",
                                a.name(),
                                b.name()))
                .remedy(
                        "Run one of them on another press or another day, with barrel, nozzle, hopper and dryer taken apart and cleaned between.");
    }

    /** Two that must not meet in one trial at all, even with others between: said in any case. */
    private static void addApart(List<Resin> order, List<Finding> findings) {
        for (int i = 0; i < order.size(); i++) {
            for (int j = i + 2; j < order.size(); j++) {
                if (!ChangeOver.forbidden(order.get(i), order.get(j))) continue;
                findings.add(
                        Finding.ask(
                                        "kept-apart",
                                        String.format(
                                                Locale.ROOT,
                                                "%s and %s are in one trial. Others run between them, but not a grain of one may reach the other.",
                                                order.get(i).name(),
                                                order.get(j).name()))
                                .remedy(
                                        "Full purge through PE-HD or PP between, hopper, dryer and regrind bin cleaned, purge logged; better on two presses."));
            }
        }
    }
}
