package shotwright.job;

import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.ArrayList;
import java.util.HexFormat;
import java.util.List;
import java.util.function.BiFunction;
import java.util.function.Function;
import org.jspecify.annotations.Nullable;
import shotwright.brep.ExactEngine;
import shotwright.cool.CoolResult;
import shotwright.fill.FillResult;
import shotwright.geom.Vec3;
import shotwright.intake.Intake;
import shotwright.intake.IntakeResult;
import shotwright.layout.LayoutInput;
import shotwright.layout.LayoutResult;
import shotwright.machining.MachiningResult;
import shotwright.machining.feed.Shopfloor;
import shotwright.machining.plan.MoldPlanner;
import shotwright.mold.Halves;
import shotwright.mold.HalvesRefused;
import shotwright.mold.MoldResult;
import shotwright.mold.exact.ExactHalves;
import shotwright.mold.exact.ExactMold;
import shotwright.part.Part;
import shotwright.press.Press;
import shotwright.progress.Progress;
import shotwright.quote.PriceBand;
import shotwright.quote.QuoteResult;
import shotwright.quote.Rates;
import shotwright.review.Finish;
import shotwright.review.RackCutters;
import shotwright.review.Review;
import shotwright.review.ReviewInput;
import shotwright.review.ReviewResult;
import shotwright.review.remedy.DraftMaker;
import shotwright.review.remedy.DraftRemedy;
import shotwright.review.remedy.DraftWish;
import shotwright.sheet.PressSheet;
import shotwright.sizing.Sizing;
import shotwright.sizing.SizingInput;
import shotwright.sizing.SizingResult;

/**
 * The line: ten stations in working order. Each station gets values of the ones before; none calls another. Results that took long are kept in
 * the job folder under the key of all they were made from, and taken up again when nothing of that changed.
 */
public final class Line {
    /** First lot priced when the card names no quantity. */
    private static final int USUAL_FIRST_LOT = 50;

    private final Shop shop;
    private final ExactEngine engine;

    /** A line that reads meshes only. */
    public Line(Shop shop) {
        this(shop, ExactEngine.NONE);
    }

    /**
     * A line.
     *
     * @param shop the rack and its rates
     * @param engine what works on exact solids; stays open
     */
    public Line(Shop shop, ExactEngine engine) {
        this.shop = shop;
        this.engine = engine;
    }

    /**
     * Runs a job up to a station.
     *
     * @param file the part file
     * @param card what was decided
     * @param last where to stop
     * @param folder where long results are kept; null to keep nothing
     * @param progress told how far it is; may stop the work
     * @throws shotwright.intake.IntakeException when the file cannot be read
     * @throws JobException when the card names something the rack does not have
     */
    public JobResult run(Path file, JobCard card, Station last, @Nullable JobFolder folder, Progress progress) {
        Decisions decisions = Decisions.of(card, shop);
        IntakeResult intake = Intake.read(file, decisions.intakeOptions(), engine, progress.part(0, 0.1));
        Part part = intake.part();
        if (part == null || last == Station.INTAKE) return JobResult.of(card, intake);
        return new Run(decisions, intake, part, file, last, folder, progress.part(0.1, 1)).go();
    }

    /** One pass down the line. */
    private final class Run {
        private final Decisions decisions;
        private final IntakeResult intake;
        private final Part part;
        private final Path file;
        private final Station last;
        private final Progress progress;
        private final @Nullable ResultStore store;
        private final List<Station> takenUp = new ArrayList<>();
        private String key;

        Run(
                Decisions decisions,
                IntakeResult intake,
                Part part,
                Path file,
                Station last,
                @Nullable JobFolder folder,
                Progress progress) {
            this.decisions = decisions;
            this.intake = intake;
            this.part = part;
            this.file = file;
            this.last = last;
            this.progress = progress;
            this.store = folder == null ? null : new ResultStore(folder);
            this.key = store == null
                    ? ""
                    : ResultStore.key(
                            ProgramVersion.key(),
                            contentKey(file),
                            intake.facts().unitTaken(),
                            intake.facts().notes());
        }

        JobResult go() {
            JobCard card = decisions.card();
            ReviewResult review = kept(
                    Station.REVIEW,
                    ReviewResult.class,
                    0,
                    0.3,
                    List.of(card.pull(), decisions.resin(), decisions.cutters()),
                    p -> Review.review(
                            new ReviewInput(
                                    part, card.pullDirection(), decisions.resin(), decisions.cutters(), Finish.SMOOTH),
                            p));
            draft = draft(review);
            Flow flow = new Flow(decisions);
            Prices prices = new Prices(decisions, shop, review);
            SizingInput asked = SizingInput.of(
                            review, decisions.resins(), shop.presses().all(), prices)
                    .decided(decisions.press(), decisions.secondPress(), card.cavities())
                    .quantity(firstLot(card));
            SizingResult sizing = Sizing.size(asked);
            PriceBand price = firstPrice(review, sizing, card, prices.rates());
            JobCard full = filledIn(review, sizing);
            if (!reaches(Station.LAYOUT)) return result(full, review, price, sizing, null, null, null, null);

            PressChoice choice = new PressChoice(asked, prices, sizing);
            Laid laid = kept(
                    Station.LAYOUT,
                    Laid.class,
                    0.3,
                    0.4,
                    List.of(
                            card.layout(),
                            decisions.material(),
                            sizing.press(),
                            String.valueOf(sizing.secondPress()),
                            sizing.cavities(),
                            decisions.press() == null ? shop.presses().all() : List.of()),
                    p -> laid(choice, (s, q) -> layout(review, s, flow, q), p));
            LayoutResult layout = laid.layout();
            return afterLayout(review, choice.with(laid.press()), flow, layout);
        }

        private JobResult afterLayout(ReviewResult review, PressChoice choice, Flow flow, LayoutResult layout) {
            SizingResult sizing = choice.sizing();
            Prices prices = choice.prices();
            JobCard full = filledIn(review, sizing);
            PriceBand price = firstPrice(review, sizing, decisions.card(), prices.rates());
            if (!reaches(Station.HALVES)) return result(full, review, price, sizing, layout, null, null, null);

            MoldResult mold = mold(review, layout);
            if (mold != null && part.exact() != null) exactMold = exactMold(review, layout, mold);
            String keyOfHalves = key;
            if (!reaches(Station.FILL))
                return result(full, review, price, choice.known(layout, null), layout, mold, null, null);

            Flow.Answer flowed = kept(
                    Station.FILL,
                    Flow.Answer.class,
                    0.5,
                    0.6,
                    List.of(decisions.resins(), sizing.press(), decisions.material()),
                    p -> flow.answer(review, sizing, layout, mold, p));
            if (mold != null && reaches(Station.MILLING)) {
                key = keyOfHalves;
                machining = machining(layout, mold);
            }
            SizingResult settled = choice.known(layout, flowed, programH());
            if (!reaches(Station.QUOTE)) return result(full, review, price, settled, layout, mold, flowed, null);
            progress.at("working out the price", 0.96);
            Papers papers = Papers.of(decisions, prices, part, settled, layout, flowed, programH());
            return result(full, review, price, settled, layout, mold, flowed, papers);
        }

        /** The card with what the program chose where it was left open. */
        private JobCard filledIn(ReviewResult review, SizingResult sizing) {
            return decisions
                    .card()
                    .filledIn(
                            review.pulled().pull(),
                            sizing.resin().id(),
                            sizing.press().id(),
                            sizing.cavities());
        }

        private LayoutResult layout(ReviewResult review, SizingResult sizing, Flow flow, Progress progress) {
            return new VentReturn(
                            LayoutInput.of(review, sizing, decisions.resin(), decisions.rack(shop), decisions.wishes()))
                    .settle((l, q) -> flow.picture(review, sizing, l, q), progress);
        }

        /**
         * The layout; once more for another press when the program chose the press itself, the real feed shows that it does not serve, and
         * another one does.
         */
        private Laid laid(
                PressChoice choice, BiFunction<SizingResult, Progress, LayoutResult> work, Progress progress) {
            LayoutResult layout = work.apply(choice.sizing(), progress);
            Press other = decisions.press() == null ? choice.better(layout) : null;
            if (other == null) return new Laid(choice.sizing().press().id(), layout);
            return new Laid(other.id(), work.apply(choice.with(other.id()).sizing(), progress));
        }

        private @Nullable MoldResult mold(ReviewResult review, LayoutResult layout) {
            Kept<MoldResult> halves = new Kept<>(Station.HALVES, MoldResult.class, List.of());
            try {
                return halves.get(0.4, 0.48, p -> Halves.make(review.pulled(), layout, review.undercuts(), p));
            } catch (HalvesRefused e) {
                refused = e.finding();
                return null;
            }
        }

        private @Nullable DraftRemedy draft(ReviewResult review) {
            DraftWish wish = decisions.card().draftWish();
            if (wish == null) return null;
            if (part.exact() == null)
                throw new JobException(
                        "Draft can be added to a part from a STEP file only; this one came as triangles. Leave --add-draft away.",
                        null);
            RackCutters cutters = RackCutters.of(decisions.cutters());
            return DraftMaker.make(engine, bytes(file), review, wish, cutters, progress.part(0.25, 0.3));
        }

        private ExactMold exactMold(ReviewResult review, LayoutResult layout, MoldResult mold) {
            return ExactHalves.make(engine, bytes(file), review.pulled(), layout, mold, progress.part(0.48, 0.5));
        }

        /** What the programs depend on beside the halves: not resins, not presses. */
        private MachiningResult machining(LayoutResult layout, MoldResult mold) {
            Shopfloor floor = decisions.shopfloor(shop);
            return kept(
                    Station.MILLING,
                    MachiningResult.class,
                    0.6,
                    0.95,
                    List.of(floor, decisions.control()),
                    p -> new MoldPlanner(floor, decisions.control()).plan(layout, mold, p));
        }

        /** Hours of the programs; 0 while there are none that are proved. */
        private double programH() {
            MachiningResult m = machining;
            return m != null && m.proved() ? m.timeH() : 0;
        }

        private @Nullable MachiningResult machining;
        private shotwright.finding.@Nullable Finding refused;
        private @Nullable ExactMold exactMold;
        private @Nullable DraftRemedy draft;

        private boolean reaches(Station s) {
            progress.at(s.title().toLowerCase(java.util.Locale.ROOT), 0.3);
            return last.compareTo(s) >= 0;
        }

        private JobResult result(
                JobCard full,
                ReviewResult review,
                PriceBand price,
                SizingResult sizing,
                @Nullable LayoutResult layout,
                @Nullable MoldResult mold,
                Flow.@Nullable Answer flow,
                @Nullable Papers papers) {
            FillResult fill = flow == null ? null : flow.fill();
            CoolResult cool = flow == null ? null : flow.cool();
            QuoteResult quote = papers == null ? null : papers.quote();
            PressSheet sheet = papers == null ? null : papers.sheet();
            return new JobResult(
                    full,
                    intake,
                    review,
                    draft,
                    price,
                    sizing,
                    layout,
                    mold,
                    exactMold,
                    fill,
                    cool,
                    flow == null ? null : flow.comparison(),
                    papers == null ? null : papers.order(),
                    machining,
                    quote,
                    sheet,
                    takenUp,
                    refused == null ? List.of() : List.of(refused));
        }

        private <T> T kept(
                Station station, Class<T> type, double from, double to, List<?> madeFrom, Function<Progress, T> work) {
            return new Kept<>(station, type, madeFrom).get(from, to, work);
        }

        /** A station's result, taken up from the folder or worked out and kept. */
        private final class Kept<T> {
            private final Station station;
            private final Class<T> type;

            Kept(Station station, Class<T> type, List<?> madeFrom) {
                this.station = station;
                this.type = type;
                if (store != null) key = ResultStore.key(key, station, madeFrom);
            }

            T get(double from, double to, Function<Progress, T> work) {
                String name = station.number() + "-" + station.name().toLowerCase(java.util.Locale.ROOT);
                T found = store == null ? null : store.load(name, key, type).orElse(null);
                if (found != null) {
                    takenUp.add(station);
                    return found;
                }
                T made = work.apply(progress.part(from, to));
                if (store != null) store.save(name, key, made);
                return made;
            }
        }
    }

    /** A layout and the press it is for. */
    private record Laid(String press, LayoutResult layout) {}

    private static PriceBand firstPrice(ReviewResult review, SizingResult sizing, JobCard card, Rates rates) {
        Vec3 size = review.pulled().mesh().box().size();
        return PriceBand.first(
                review.pulled().part().mass().volumeMm3(),
                review.pulled().part().mass().surfaceAreaMm2(),
                new double[] {size.x(), size.y(), size.z()},
                review.undercuts().size(),
                sizing.resin(),
                sizing.press(),
                card.quantities().stream().min(Integer::compare).orElse(USUAL_FIRST_LOT),
                rates);
    }

    private static int firstLot(JobCard card) {
        return card.quantities().stream().max(Integer::compare).orElse(SizingInput.USUAL_QUANTITY);
    }

    private static byte[] bytes(Path file) {
        try {
            return Files.readAllBytes(file);
        } catch (IOException e) {
            throw new JobException("“" + file + "” changed or vanished while it was read. Run it again.", e);
        }
    }

    private static String contentKey(Path file) {
        try (InputStream in = Files.newInputStream(file)) {
            MessageDigest sha = MessageDigest.getInstance("SHA-256");
            byte[] buffer = new byte[1 << 16];
            for (int n; (n = in.read(buffer)) > 0; ) sha.update(buffer, 0, n);
            return HexFormat.of().formatHex(sha.digest());
        } catch (IOException | NoSuchAlgorithmException e) {
            throw new JobException("“" + file + "” changed or vanished while it was read. Run it again.", e);
        }
    }
}
