package shotwright.machining.plan;

import java.util.ArrayList;
import java.util.BitSet;
import java.util.Comparator;
import java.util.List;
import shotwright.machining.choice.Candidate;
import shotwright.machining.contact.SurfaceKind;

/** Leaves out cutters that another one replaces: as fast or faster at everything, reaching all it reaches. No set gets worse without them. */
final class Pruning {
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
        return kept;
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
        return rest.isEmpty();
    }
}
