package shotwright.machining.plan;

import java.util.ArrayList;
import java.util.BitSet;
import java.util.Comparator;
import java.util.List;
import shotwright.machining.choice.Candidate;
import shotwright.machining.contact.SurfaceKind;

/**
 * Leaves out cutters that another one replaces: as fast or faster at everything, reaching all it reaches but for a few cells. Where many are
 * left, those that finish and rough most in their time are kept, and those without which something would not be reached.
 */
final class Pruning {
    /** Cells that count as none. */
    private static final int FEW_CELLS = 20;

    /** So many can be tried in every set. */
    private static final int MOST = 14;

    private Pruning() {}

    static List<Candidate> of(List<Candidate> rows) {
        List<Candidate> kept = new ArrayList<>();
        List<Candidate> order = rows.stream()
                .filter(c -> doesSomething(c))
                .sorted(Comparator.comparingDouble((Candidate c) -> -c.roughMm3PerMin())
                        .thenComparing(c -> -c.finishMm2PerMin().values().stream()
                                .mapToDouble(d -> d)
                                .max()
                                .orElse(0)))
                .toList();
        for (Candidate c : order) {
            if (kept.stream().anyMatch(k -> replaces(k, c))) continue;
            kept.removeIf(k -> replaces(c, k));
            kept.add(c);
        }
        return kept.size() <= MOST ? kept : best(kept);
    }

    private static List<Candidate> best(List<Candidate> rows) {
        List<Candidate> order = rows.stream()
                .sorted(Comparator.comparingDouble(Pruning::worth).reversed())
                .toList();
        List<Candidate> kept = new ArrayList<>(order.subList(0, MOST));
        for (Candidate c : order.subList(MOST, order.size())) {
            boolean needed = false;
            for (var kind : c.reached().entrySet()) {
                BitSet rest = (BitSet) kind.getValue().clone();
                for (Candidate k : kept) rest.andNot(k.reached().getOrDefault(kind.getKey(), new BitSet()));
                needed |= rest.cardinality() > FEW_CELLS;
            }
            if (needed) kept.add(c);
        }
        return kept;
    }

    /** What a cutter could do, in places times speed. */
    private static double worth(Candidate c) {
        double worth = c.roughMm3PerMin() * c.roughReached().cardinality();
        for (var kind : c.reached().entrySet())
            worth += c.finishMm2PerMin().getOrDefault(kind.getKey(), 0.0)
                    * kind.getValue().cardinality();
        return worth;
    }

    private static boolean doesSomething(Candidate c) {
        return c.roughMm3PerMin() > 0 && !c.roughReached().isEmpty()
                || c.reached().values().stream().anyMatch(b -> !b.isEmpty());
    }

    private static boolean replaces(Candidate a, Candidate b) {
        if (a.roughMm3PerMin() < b.roughMm3PerMin()) return false;
        if (b.roughMm3PerMin() > 0 && !contains(a.roughReached(), b.roughReached())) return false;
        for (var kind : b.reached().entrySet()) {
            if (kind.getValue().isEmpty()) continue;
            SurfaceKind k = kind.getKey();
            BitSet own = a.reached().get(k);
            if (own == null
                    || a.finishMm2PerMin().getOrDefault(k, 0.0)
                            < b.finishMm2PerMin().getOrDefault(k, 0.0)) return false;
            if (!contains(own, kind.getValue())) return false;
        }
        return true;
    }

    private static boolean contains(BitSet all, BitSet some) {
        BitSet rest = (BitSet) some.clone();
        rest.andNot(all);
        return rest.cardinality() <= Math.min(FEW_CELLS, some.cardinality() / 1000);
    }
}
