package shotwright.machining.choice;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.BitSet;
import java.util.List;
import java.util.Map;
import java.util.Random;
import org.junit.jupiter.api.Test;
import shotwright.cutter.CutterRack;
import shotwright.cutter.Holder;
import shotwright.cutter.MountedCutter;
import shotwright.machining.contact.SurfaceKind;

/** The search against every order and subset written out plainly, on seeded random reaches. */
class CutterSearchTest {
    private static final int CELLS = 200;

    private static final List<String> IDS =
            List.of("flat-6.0x18", "flat-3.0x9", "flat-2.0x6", "ball-2.0x10", "ball-1.0x6", "flat-1.0x3", "flat-0.4x2");

    private static Candidate candidate(String id, double rough, Random random, int reach) {
        var cutter = CutterRack.standard().byId(id);
        MountedCutter mounted = new MountedCutter(cutter, cutter.reachMm().value() + 1, Holder.ER11);
        BitSet floor = new BitSet(), curved = new BitSet(), roughed = new BitSet();
        for (int i = 0; i < CELLS; i++) {
            if (random.nextInt(100) < reach) floor.set(i);
            if (random.nextInt(100) < reach) curved.set(i);
            if (random.nextInt(100) < reach) roughed.set(i);
        }
        floor.clear(CELLS / 2, CELLS);
        curved.clear(0, CELLS / 2);
        return new Candidate(
                mounted,
                rough,
                roughed,
                Map.of(
                        SurfaceKind.FLOOR,
                        10 + 100 * random.nextDouble(),
                        SurfaceKind.CURVED,
                        5 + 50 * random.nextDouble()),
                Map.of(SurfaceKind.FLOOR, floor, SurfaceKind.CURVED, curved));
    }

    @Test
    void findsWhatTryingEverythingFinds() {
        Random random = new Random(4711);
        for (int run = 0; run < 20; run++) {
            float[] area = new float[CELLS], volume = new float[CELLS];
            for (int i = 0; i < CELLS; i++) {
                area[i] = random.nextFloat();
                volume[i] = 10 * random.nextFloat();
            }
            BitSet floor = new BitSet(), curved = new BitSet();
            floor.set(0, CELLS / 2);
            curved.set(CELLS / 2, CELLS);
            Surface surface = new Surface(area, volume, Map.of(SurfaceKind.FLOOR, floor, SurfaceKind.CURVED, curved));
            List<Candidate> all = new ArrayList<>();
            for (int i = 0; i < IDS.size(); i++)
                all.add(candidate(IDS.get(i), i < 3 ? 500 + 3000 * random.nextDouble() : 0, random, 55 + 6 * i));
            CutterSearch.Result r =
                    new CutterSearch(all, surface, 30, 5).search().orElseThrow();
            double[] plain = plainly(all, surface, 30);
            assertThat(r.best().timeS())
                    .isEqualTo(Arrays.stream(plain, 1, 6).min().orElseThrow(), within(1e-6));
            int n = r.best().count();
            if (n > 1) assertThat(r.fewer().map(CutterSet::timeS).orElse(1e9)).isEqualTo(plain[n - 1], within(1e-6));
            assertThat(r.more().map(CutterSet::timeS).orElse(1e9)).isEqualTo(plain[n + 1], within(1e-6));
        }
    }

    /** Least time of the sets of each size that miss no more than all together do. */
    private static double[] plainly(List<Candidate> all, Surface s, double changeS) {
        double[] best = new double[8];
        Arrays.fill(best, 1e9);
        double least = missed((1 << all.size()) - 1, all, s) + 0.05;
        for (int set = 1; set < 1 << all.size(); set++) {
            int n = Integer.bitCount(set);
            if (n > 6 || missed(set, all, s) > least) continue;
            double minutes = 0;
            boolean roughs = false;
            for (int i = 0; i < CELLS; i++) {
                SurfaceKind kind = i < CELLS / 2 ? SurfaceKind.FLOOR : SurfaceKind.CURVED;
                double rate = 0, rough = 0;
                for (int c = 0; c < all.size(); c++) {
                    if ((set >> c & 1) == 0) continue;
                    Candidate k = all.get(c);
                    if (reached(k, kind).get(i))
                        rate = Math.max(rate, k.finishMm2PerMin().getOrDefault(kind, 0.0));
                    if (k.roughReached().get(i)) rough = Math.max(rough, k.roughMm3PerMin());
                    roughs |= k.roughMm3PerMin() > 0;
                }
                if (rate > 0) minutes += s.areaMm2()[i] / rate;
                if (rough > 0) minutes += s.volumeMm3()[i] / rough;
            }
            if (roughs) best[n] = Math.min(best[n], 60 * minutes + n * changeS);
        }
        return best;
    }

    private static BitSet reached(Candidate c, SurfaceKind kind) {
        return c.reached().getOrDefault(kind, new BitSet());
    }

    private static double missed(int set, List<Candidate> all, Surface s) {
        double missed = 0;
        for (int i = 0; i < CELLS; i++) {
            boolean reached = false;
            for (int c = 0; c < all.size(); c++)
                reached |= (set >> c & 1) == 1
                        && reached(all.get(c), i < CELLS / 2 ? SurfaceKind.FLOOR : SurfaceKind.CURVED)
                                .get(i);
            if (!reached) missed += s.areaMm2()[i];
        }
        return missed;
    }
}
