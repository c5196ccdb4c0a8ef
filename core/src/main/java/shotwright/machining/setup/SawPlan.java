package shotwright.machining.setup;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import shotwright.stock.Stock;

/**
 * Which blanks come off which bar: longest first, each into the first bar of its kind that has room (first fit decreasing).
 *
 * @param bars bars to buy, in the order they are sawn
 */
public record SawPlan(List<SawnBar> bars) {
    /**
     * One bar.
     *
     * @param bar what it is
     * @param blanks what comes off it, in order from one end
     */
    public record SawnBar(Stock bar, List<Blank> blanks) {
        public SawnBar {
            blanks = List.copyOf(blanks);
        }

        /** Used up: every blank and a kerf for each. */
        public double usedMm() {
            return blanks.stream()
                    .mapToDouble(b -> b.sawnLengthMm() + Blank.KERF_MM)
                    .sum();
        }

        /** What is left of a whole bar. */
        public double leftMm() {
            return bar.lengthMm().value() - usedMm();
        }

        /** What to buy and saw. */
        public String words() {
            StringBuilder s = new StringBuilder(bar.name())
                    .append(String.format(Locale.ROOT, ": %.0f mm needed; saw", Math.ceil(usedMm())));
            String between = " ";
            for (Blank b : blanks) {
                s.append(between)
                        .append(String.format(
                                Locale.ROOT,
                                "%.1f mm for %s",
                                b.sawnLengthMm(),
                                b.half().name()));
                between = ", ";
            }
            return s.append('.').toString();
        }
    }

    public SawPlan {
        bars = List.copyOf(bars);
    }

    /** Lays blanks into bars. Plates are taken one blank wide. */
    public static SawPlan of(List<Blank> blanks) {
        List<List<Blank>> bars = new ArrayList<>();
        List<Blank> longestFirst = blanks.stream()
                .sorted(Comparator.comparingDouble(Blank::sawnLengthMm).reversed())
                .toList();
        for (Blank b : longestFirst) {
            List<Blank> into = bars.stream()
                    .filter(l -> l.getFirst().bar().equals(b.bar()) && room(l) >= b.sawnLengthMm() + Blank.KERF_MM)
                    .findFirst()
                    .orElseGet(() -> {
                        List<Blank> fresh = new ArrayList<>();
                        bars.add(fresh);
                        return fresh;
                    });
            into.add(b);
        }
        return new SawPlan(
                bars.stream().map(l -> new SawnBar(l.getFirst().bar(), l)).toList());
    }

    private static double room(List<Blank> on) {
        return new SawnBar(on.getFirst().bar(), on).leftMm();
    }
}
