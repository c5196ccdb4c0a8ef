package shotwright.machining.choice;

import java.util.ArrayList;
import java.util.BitSet;
import java.util.Comparator;
import java.util.EnumMap;
import java.util.HashMap;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import shotwright.machining.contact.SurfaceKind;

/**
 * Tries every set of cutters up to a size. In a set the fastest goes first wherever it reaches and each next one takes what is left: roughing by
 * metal removed, finishing by surface and kind. A set counts when it finishes as much as all candidates together would, to a trifle; of those the
 * one that takes the least time with its changes is taken.
 */
public final class CutterSearch {
    /** So much surface a set may miss more than all candidates together. */
    private static final double TRIFLE_MM2 = 0.05;

    private static final int MOST_CANDIDATES = 24;

    private final List<Candidate> candidates;
    private final double changeS;
    private final int most;
    private final Map<SurfaceKind, Map<Long, Double>> areas = new EnumMap<>(SurfaceKind.class);
    private final Map<Long, Double> volumes = new HashMap<>();
    private final Map<Candidate, Integer> number = new IdentityHashMap<>();

    /**
     * @param candidates cutters to choose from, at most 24
     * @param changeS time to put one in
     * @param most largest set
     */
    public CutterSearch(List<Candidate> candidates, Surface surface, double changeS, int most) {
        if (candidates.size() > MOST_CANDIDATES)
            throw new IllegalArgumentException("candidates: " + candidates.size() + " are too many");
        this.candidates = candidates.stream()
                .sorted(Comparator.comparingDouble(
                        (Candidate c) -> -c.cutter().cutter().largestDiaMm()))
                .toList();
        for (Candidate c : this.candidates) number.put(c, number.size());
        this.changeS = changeS;
        this.most = most;
        surface.cells().forEach((kind, cells) -> {
            Map<Long, Double> sums = new HashMap<>();
            for (int i = cells.nextSetBit(0); i >= 0; i = cells.nextSetBit(i + 1))
                sums.merge(reachers(kind, i), (double) surface.areaMm2()[i], Double::sum);
            areas.put(kind, sums);
        });
        for (int i = 0; i < surface.volumeMm3().length; i++) {
            long reachers = 0;
            for (int c = 0; c < this.candidates.size(); c++)
                if (this.candidates.get(c).roughReached().get(i)) reachers |= 1L << c;
            if (surface.volumeMm3()[i] > 0) volumes.merge(reachers, (double) surface.volumeMm3()[i], Double::sum);
        }
    }

    /** The candidates that finish a cell, one bit each. */
    private long reachers(SurfaceKind kind, int cell) {
        long found = 0;
        for (int c = 0; c < candidates.size(); c++) {
            BitSet r = candidates.get(c).reached().get(kind);
            if (r != null && r.get(cell)) found |= 1L << c;
        }
        return found;
    }

    /**
     * The best set, and the best ones of one cutter fewer and more that finish as much.
     *
     * @param best the set taken
     * @param fewer with one cutter fewer, where any of that size serves
     * @param more with one cutter more
     */
    public record Result(CutterSet best, Optional<CutterSet> fewer, Optional<CutterSet> more) {}

    /** @return empty when there is nothing to choose from */
    public Optional<Result> search() {
        if (candidates.isEmpty()) return Optional.empty();
        double least = TRIFLE_MM2;
        for (Map<Long, Double> kind : areas.values()) least += left(kind, -1);
        CutterSet[] best = new CutterSet[most + 2];
        List<Candidate> set = new ArrayList<>();
        grow(0, set, least, best);
        CutterSet taken = null;
        for (int n = 1; n <= most; n++) {
            if (best[n] != null && (taken == null || best[n].timeS() < taken.timeS())) taken = best[n];
        }
        if (taken == null) return Optional.empty();
        return Optional.of(new Result(
                taken, Optional.ofNullable(best[taken.count() - 1]), Optional.ofNullable(best[taken.count() + 1])));
    }

    private void grow(int from, List<Candidate> set, double missedMm2, CutterSet[] best) {
        if (!set.isEmpty()) {
            CutterSet s = weighed(set);
            CutterSet known = best[set.size()];
            if (s.missedMm2() <= missedMm2 && isRoughed(set) && (known == null || s.timeS() < known.timeS()))
                best[set.size()] = s;
        }
        if (set.size() > most) return;
        for (int i = from; i < candidates.size(); i++) {
            set.add(candidates.get(i));
            grow(i + 1, set, missedMm2, best);
            set.removeLast();
        }
    }

    private static boolean isRoughed(List<Candidate> set) {
        return set.stream().anyMatch(c -> c.roughMm3PerMin() > 0);
    }

    /** What each cutter of a set does and how long it takes. */
    CutterSet weighed(List<Candidate> set) {
        Map<Candidate, Map<SurfaceKind, Double>> finish = new IdentityHashMap<>();
        Map<Candidate, Double> rough = new IdentityHashMap<>(), minutes = new IdentityHashMap<>();
        double missed = 0;
        for (SurfaceKind kind : areas.keySet()) missed += finish(kind, set, finish, minutes);
        rough(set, rough, minutes);
        List<CutterSet.Share> shares = new ArrayList<>();
        for (Candidate c : set)
            shares.add(new CutterSet.Share(
                    c,
                    rough.getOrDefault(c, 0.0),
                    finish.getOrDefault(c, Map.of()),
                    60 * minutes.getOrDefault(c, 0.0)));
        return new CutterSet(shares, changeS * set.size(), missed);
    }

    private double finish(
            SurfaceKind kind,
            List<Candidate> set,
            Map<Candidate, Map<SurfaceKind, Double>> finish,
            Map<Candidate, Double> minutes) {
        List<Candidate> order = set.stream()
                .filter(c -> c.finishMm2PerMin().containsKey(kind))
                .sorted(Comparator.comparingDouble((Candidate c) -> -rate(c, kind)))
                .toList();
        Map<Long, Double> sums = Objects.requireNonNull(areas.get(kind));
        long before = 0;
        double leftMm2 = left(sums, 0);
        for (Candidate c : order) {
            before |= bit(c);
            double left = left(sums, before), areaMm2 = leftMm2 - left;
            leftMm2 = left;
            if (areaMm2 <= 0) continue;
            finish.computeIfAbsent(c, k -> new EnumMap<>(SurfaceKind.class)).put(kind, areaMm2);
            minutes.merge(c, areaMm2 / rate(c, kind), Double::sum);
        }
        return leftMm2;
    }

    /** What no cutter of a group reaches. */
    private static double left(Map<Long, Double> sums, long group) {
        double sum = 0;
        for (var s : sums.entrySet()) if ((s.getKey() & group) == 0) sum += s.getValue();
        return sum;
    }

    private static double rate(Candidate c, SurfaceKind kind) {
        return c.finishMm2PerMin().getOrDefault(kind, 0.0);
    }

    private long bit(Candidate c) {
        return 1L << Objects.requireNonNull(number.get(c));
    }

    private void rough(List<Candidate> set, Map<Candidate, Double> rough, Map<Candidate, Double> minutes) {
        List<Candidate> order = set.stream()
                .filter(c -> c.roughMm3PerMin() > 0)
                .sorted(Comparator.comparingDouble((Candidate c) -> -c.roughMm3PerMin()))
                .toList();
        long before = 0;
        double leftMm3 = left(volumes, 0);
        for (Candidate c : order) {
            before |= bit(c);
            double left = left(volumes, before), volumeMm3 = leftMm3 - left;
            leftMm3 = left;
            if (volumeMm3 <= 0) continue;
            rough.put(c, volumeMm3);
            minutes.merge(c, volumeMm3 / c.roughMm3PerMin(), Double::sum);
        }
    }
}
