package shotwright.sizing;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import org.jspecify.annotations.Nullable;
import shotwright.press.Press;
import shotwright.resin.Resin;

/**
 * Station 30: which press, how many up. Without a decision the smallest press with room to spare is taken, then the smallest that is tight; more
 * cavities than one only where they save enough.
 */
public final class Sizing {
    private Sizing() {}

    /** Sizes the job on every press of the rack. Trouble is told in the findings. */
    public static SizingResult size(SizingInput input) {
        Resin resin = input.resin();
        List<Press> rack = ordered(input);
        Press given = input.press();
        Press press = given != null ? given : chosen(input, rack, resin);
        List<CavityRow> rows = CavityTable.rows(input, press);
        Integer givenCavities = input.cavities();
        int cavities = givenCavities != null
                ? givenCavities
                : rows.stream()
                        .filter(CavityRow::chosen)
                        .findFirst()
                        .orElseThrow()
                        .cavitiesCount();
        Load load = Load.of(input, press, resin, cavities);
        ClampNeed clamp = ClampNeed.of(load, input.fillClampKn());
        PressVerdict ours = PressChecks.of(load, clamp, null);
        Press secondPress = input.secondPress();
        PressVerdict second =
                secondPress == null ? null : verdict(input, secondPress, resin, cavities, press.nozzleMeets());
        List<PressVerdict> presses = new ArrayList<>();
        for (Press p : rack) presses.add(verdict(input, p, resin, cavities, null));
        Verdict both = second == null ? ours.verdict() : ours.verdict().and(second.verdict());
        SizingResult bare = new SizingResult(
                resin,
                press,
                given != null,
                secondPress,
                cavities,
                givenCavities != null,
                load.cavityAreaMm2() + load.knownFeedAreaMm2(),
                input.feedAreaMm2() != null,
                load.feedAreaMm2(),
                load.feed().volumeMm3(),
                clamp,
                load.shotG(),
                load.shotVolumeMm3(),
                load.injectedCm3(),
                Shot.strokeMm(load.injectedCm3(), press.plungerDiaMm().value()),
                load.utilisationShare(),
                load.residenceS(),
                load.cycleS(),
                load.roughMpa(),
                load.mold(),
                both,
                ours,
                second,
                presses,
                rows,
                resinRows(input, press, cavities),
                List.of());
        return SizingFindings.addTo(bare, input);
    }

    /** What one press says to a number of cavities. */
    static PressVerdict verdict(
            SizingInput input, Press press, Resin resin, int cavities, Press.@Nullable NozzleMeets ours) {
        Load load = Load.of(input, press, resin, cavities);
        return PressChecks.of(load, ClampNeed.of(load, input.fillClampKn()), ours);
    }

    private static List<Press> ordered(SizingInput input) {
        List<Press> rack = new ArrayList<>(input.presses());
        Press given = input.press();
        if (given != null && rack.stream().noneMatch(p -> p.id().equals(given.id()))) rack.add(given);
        rack.sort(Comparator.comparingDouble(Press::nameplateKn));
        return rack;
    }

    private static Press chosen(SizingInput input, List<Press> rack, Resin resin) {
        Integer given = input.cavities();
        Press tight = null, second = input.secondPress();
        Press.@Nullable NozzleMeets entry = second == null ? null : second.nozzleMeets();
        for (Press p : rack) {
            Verdict v =
                    verdict(input, p, resin, given == null ? 1 : given, entry).verdict();
            if (v == Verdict.FITS) return p;
            if (v == Verdict.TIGHT && tight == null) tight = p;
        }
        return tight != null ? tight : leastFar(input, rack, resin, given == null ? 1 : given);
    }

    /** When no press serves: the one that fails in the fewest respects, and there by the least. */
    private static Press leastFar(SizingInput input, List<Press> rack, Resin resin, int cavities) {
        return rack.stream()
                .min(Comparator.comparingDouble(
                        p -> verdict(input, p, resin, cavities, null).shortfallScore()))
                .orElseThrow();
    }

    private static List<ResinRow> resinRows(SizingInput input, Press press, int cavities) {
        List<ResinRow> rows = new ArrayList<>();
        Resin first = input.resin();
        for (Resin r : input.resins().subList(1, input.resins().size())) {
            Load load = Load.of(input, press, r, cavities);
            ClampNeed clamp = ClampNeed.of(load, null);
            PressVerdict v = PressChecks.of(load, clamp, null);
            double change = (1 - r.shrinkPercent().mid() / 100)
                            / (1 - first.shrinkPercent().mid() / 100)
                    - 1;
            rows.add(new ResinRow(
                    r,
                    v.verdict(),
                    clamp.neededKn(),
                    clamp.bandKn(),
                    load.shotG(),
                    load.roughMpa(),
                    100 * change,
                    v.firstReason()));
        }
        return rows;
    }
}
