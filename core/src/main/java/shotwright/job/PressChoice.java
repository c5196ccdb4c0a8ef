package shotwright.job;

import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import shotwright.layout.LayoutResult;
import shotwright.press.Press;
import shotwright.sizing.PressVerdict;
import shotwright.sizing.Sizing;
import shotwright.sizing.SizingInput;
import shotwright.sizing.SizingResult;
import shotwright.sizing.Verdict;

/**
 * The press a job is sized for, and what becomes of it once the feed is known.
 *
 * @param asked what sizing was asked
 * @param prices prices of numbers of cavities
 * @param sizing its answer
 */
record PressChoice(SizingInput asked, Prices prices, SizingResult sizing) {
    /** The same for another press of the rack, by its id. */
    PressChoice with(String press) {
        if (sizing.press().id().equals(press)) return this;
        Press other = sizing.presses().stream()
                .map(PressVerdict::press)
                .filter(p -> p.id().equals(press))
                .findFirst()
                .orElseThrow();
        SizingResult again = Sizing.size(asked.decided(other, asked.secondPress(), asked.cavities()));
        return new PressChoice(asked, prices, again);
    }

    /** The smallest press that serves where the one taken does not, now that the feed is known; null to stay. */
    @Nullable Press better(LayoutResult layout) {
        SizingResult after = known(layout, null);
        if (after.ours().verdict() != Verdict.NO) return null;
        return Stream.of(Verdict.FITS, Verdict.TIGHT)
                .flatMap(v -> after.presses().stream().filter(p -> p.verdict() == v))
                .map(PressVerdict::press)
                .filter(p -> with(p.id()).sizing().verdict() != Verdict.NO)
                .findFirst()
                .orElse(null);
    }

    /** Sized again with the real feed, and with filling and cooling where they are known. */
    SizingResult known(LayoutResult layout, Flow.@Nullable Answer flow) {
        return known(layout, flow, 0);
    }

    /**
     * The same with the time of the programs in the prices.
     *
     * @param programH hours of the proved programs; 0 while there are none
     */
    SizingResult known(LayoutResult layout, Flow.@Nullable Answer flow, double programH) {
        return Sizing.size(asked.decided(sizing.press(), sizing.secondPress(), sizing.cavities())
                .priced(prices.settled(sizing.cavities(), layout, flow, programH))
                .known(
                        LayoutFeed.areaMm2(layout),
                        layout.feedVolumeMm3(),
                        flow == null ? null : flow.cool().cycleTimeS(),
                        flow == null ? null : flow.fill().clampPeakKn()));
    }
}
