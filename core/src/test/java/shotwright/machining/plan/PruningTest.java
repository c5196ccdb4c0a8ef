package shotwright.machining.plan;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.BitSet;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Random;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import shotwright.cutter.CutterRack;
import shotwright.cutter.Holder;
import shotwright.cutter.MountedCutter;
import shotwright.machining.choice.Candidate;
import shotwright.machining.choice.CutterSearch;
import shotwright.machining.choice.Surface;
import shotwright.machining.contact.SurfaceKind;

/**
 * Leaving out replaced cutters against the search over all of them, on seeded random reaches in finishing. All that rough reach everything: the
 * search counts no time for metal a set does not rough, so that there a cutter of longer reach may weigh more than the one it replaces.
 */
class PruningTest {
    private static final int CELLS = 120;
    private static final List<String> IDS = List.of(
            "flat-6.0x18",
            "flat-4.0x12",
            "flat-3.0x9",
            "flat-2.0x6",
            "ball-2.0x10",
            "ball-1.0x6",
            "flat-1.0x3",
            "flat-0.4x2");

    private static BitSet random(Random random, int from, int to, int percent) {
        BitSet b = new BitSet();
        for (int i = from; i < to; i++) if (random.nextInt(100) < percent) b.set(i);
        return b;
    }

    /** Cutters of which some do part of what another does, no faster. */
    private static List<Candidate> candidates(Random random) {
        List<Candidate> all = new ArrayList<>();
        for (int i = 0; i < IDS.size(); i++) {
            var cutter = CutterRack.standard().byId(IDS.get(i));
            MountedCutter m = new MountedCutter(cutter, cutter.reachMm().value() + 1, Holder.ER11);
            Candidate of = i > 2 && random.nextInt(3) > 0 ? all.get(random.nextInt(all.size())) : null;
            Map<SurfaceKind, Double> rates = new HashMap<>();
            Map<SurfaceKind, BitSet> reached = new HashMap<>();
            for (SurfaceKind k : List.of(SurfaceKind.FLOOR, SurfaceKind.CURVED)) {
                if (of == null) {
                    int from = k == SurfaceKind.FLOOR ? 0 : CELLS / 2;
                    reached.put(k, random(random, from, from + CELLS / 2, 60 + 5 * i));
                    rates.put(k, 5 + 80 * random.nextDouble());
                } else if (random.nextInt(4) > 0 && of.reached().containsKey(k)) {
                    BitSet part = (BitSet) of.reached().get(k).clone();
                    part.and(random(random, 0, CELLS, 80));
                    reached.put(k, part);
                    rates.put(k, of.finishMm2PerMin().getOrDefault(k, 0.0) * random.nextDouble());
                }
            }
            double rate = of == null
                    ? i < 5 ? 300 + 2000 * random.nextDouble() : 0
                    : random.nextBoolean() ? of.roughMm3PerMin() * random.nextDouble() : 0;
            all.add(new Candidate(m, rate, random(random, 0, CELLS, 100), rates, reached));
        }
        return all;
    }

    @ParameterizedTest
    @ValueSource(longs = {1, 2, 3, 4, 5})
    void theBestSetTakesNoLongerWithoutWhatIsLeftOut(long seed) {
        Random random = new Random(seed);
        int left = 0;
        for (int run = 0; run < 40; run++) {
            float[] area = new float[CELLS], volume = new float[CELLS];
            for (int i = 0; i < CELLS; i++) {
                area[i] = 0.1f + random.nextFloat();
                volume[i] = 10 * random.nextFloat();
            }
            BitSet floor = new BitSet(), curved = new BitSet();
            floor.set(0, CELLS / 2);
            curved.set(CELLS / 2, CELLS);
            Surface surface = new Surface(area, volume, Map.of(SurfaceKind.FLOOR, floor, SurfaceKind.CURVED, curved));
            List<Candidate> all = candidates(random), kept = Pruning.of(all);
            assertThat(all).containsAll(kept);
            left += all.size() - kept.size();
            CutterSearch.Result whole =
                    new CutterSearch(all, surface, 30, 5).search().orElseThrow();
            CutterSearch.Result pruned =
                    new CutterSearch(kept, surface, 30, 5).search().orElseThrow();
            assertThat(pruned.best().timeS()).isEqualTo(whole.best().timeS(), within(1e-6));
        }
        assertThat(left).isGreaterThan(20);
    }
}
