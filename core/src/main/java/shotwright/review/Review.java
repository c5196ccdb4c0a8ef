package shotwright.review;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.IntFunction;
import java.util.function.ToIntFunction;
import org.jspecify.annotations.Nullable;
import shotwright.finding.Finding;
import shotwright.geom.Vec2;
import shotwright.geom.Vec3;
import shotwright.mesh.Bvh;
import shotwright.part.PulledPart;
import shotwright.progress.Progress;

/** The door of station 20: can this part be molded in two plates, and what should change first? */
public final class Review {
    private final ReviewInput input;
    private final Progress progress;
    private final List<Finding> findings = new ArrayList<>();

    private Review(ReviewInput input, Progress progress) {
        this.input = input;
        this.progress = progress;
    }

    /**
     * Reviews a part.
     *
     * @throws Progress.Cancelled when asked to stop
     */
    public static ReviewResult review(ReviewInput input, Progress progress) {
        return new Review(input, progress).run();
    }

    private ReviewResult run() {
        PullChoice pull = choosePull();
        PulledPart pulled = PulledPart.of(input.part(), chosen(pull), progress.part(0.15, 0.35));
        MoldingLimits limits = input.limits();
        RackCutters cutters = RackCutters.of(input.cuttersOwned());
        WallCheck check = new WallCheck(pulled, limits, progress.part(0.35, 0.55));
        WallCheck.Outcome wall = check.review();
        Walls walls = Walls.of(pulled, progress.part(0.55, 0.6));
        List<FormedWall> formed = WallNames.of(pulled, walls, check.medianMm(), progress.part(0.6, 0.7));
        FaceTable faces = FaceTable.of(pulled, walls, formed, limits, input.finish());
        var draft = new DraftReview(pulled, walls, limits, input.finish(), cutters, faces).review(formed);
        progress.at("looking for undercuts", 0.7);
        var undercuts = UndercutReview.review(pulled, limits, faces);
        var corners = new CornerReview(pulled, cutters).review(progress.part(0.75, 0.9));
        progress.at("looking for lettering", 0.9);
        var lettering = new LetteringReview(pulled).review();
        var slender = new SlenderReview(pulled, check.medianMm()).review(formed);
        hear(undercuts);
        hear(draft);
        hear(wall.spots());
        hear(wall.steps());
        hear(corners);
        hear(slender);
        hear(lettering);
        findings.sort(Comparator.comparing(Finding::severity));
        ToIntFunction<Said<?>> number = numbers();
        WallReview w = wall.review();
        WallReview numbered = new WallReview(
                w.medianMm(),
                w.minMm(),
                w.maxMm(),
                w.samples(),
                rows(wall.spots(), number, s -> s::withFinding),
                rows(wall.steps(), number, s -> s::withFinding));
        List<Finding> placed = findings.stream().map(faces::placed).toList();
        List<DraftRegion> draftRows = rows(draft, number, d -> d::withFinding);
        progress.at("done", 1);
        return new ReviewResult(
                pulled,
                pull,
                pulled.shadow().area(),
                pulled.shadow().isEmpty() ? Vec2.ZERO : pulled.shadow().centroid(),
                pulled.exactShadow().hiddenShare(),
                numbered,
                draftRows,
                rows(undercuts, number, u -> u::withFinding),
                HoleReview.of(pulled),
                rows(corners, number, c -> c::withFinding),
                rows(lettering, number, l -> l::withFinding),
                rows(slender, number, s -> s::withFinding),
                faces.told(draftRows),
                Questions.of(input.part(), input.resin() != null, pull, placed),
                placed);
    }

    private <T> void hear(List<Said<T>> said) {
        for (Said<T> s : said) {
            Finding f = s.finding();
            if (f != null && findings.stream().noneMatch(g -> g == f)) findings.add(f);
        }
    }

    /** The place of a row's finding in the sorted list, counted from 1. */
    private ToIntFunction<Said<?>> numbers() {
        Map<Finding, Integer> place = new IdentityHashMap<>();
        for (Finding f : findings) place.put(f, place.size() + 1);
        return said -> said.finding() == null ? 0 : place.getOrDefault(said.finding(), 0);
    }

    private static <T> List<T> rows(
            List<Said<T>> said, ToIntFunction<Said<?>> number, java.util.function.Function<T, IntFunction<T>> with) {
        return said.stream()
                .map(s -> with.apply(s.row()).apply(number.applyAsInt(s)))
                .toList();
    }

    private Vec3 chosen(PullChoice pull) {
        return pull.candidates().getFirst().direction();
    }

    private PullChoice choosePull() {
        Vec3 asked = input.pull();
        if (asked != null) return given(asked.unit());
        var mesh = input.part().mesh();
        List<PullChoice.Candidate> found = PullSearch.search(mesh, progress.part(0, 0.1));
        progress.at("choosing the halves", 0.1);
        PullSide side = PullSide.of(mesh, Bvh.of(mesh), found.getFirst().direction());
        PullChoice.Candidate first = turned(found.getFirst(), side.up());
        List<PullChoice.Candidate> all = new ArrayList<>(List.of(first));
        all.addAll(found.subList(1, found.size()));
        return new PullChoice(words(first.direction(), side), reason(first, found, side), false, all);
    }

    private PullChoice given(Vec3 unit) {
        PullChoice.Candidate c = PullSearch.settle(input.part().mesh(), unit, progress.part(0, 0.1));
        String hidden = c.hiddenShare() < 5e-4
                ? "Nothing is hidden along it."
                : Say.percent(c.hiddenShare(), 1) + " of the shadow is hidden along it.";
        return new PullChoice("along " + direction(unit), "Set by you. " + hidden, true, List.of(c));
    }

    private static PullChoice.Candidate turned(PullChoice.Candidate c, Vec3 direction) {
        return new PullChoice.Candidate(direction, c.hiddenShare(), c.depthMm(), c.projectedAreaMm2());
    }

    private static String words(Vec3 d, PullSide side) {
        String way = "along " + direction(d);
        return side.opensToBMm2() > 0 ? way + ", hollow to B" : way;
    }

    private static String reason(PullChoice.Candidate first, List<PullChoice.Candidate> found, PullSide side) {
        StringBuilder s = new StringBuilder(
                first.hiddenShare() < 5e-4
                        ? "No undercut this way"
                        : "Least is undercut this way, " + Say.percent(first.hiddenShare(), 1)
                                + " of the projected area");
        if (found.size() > 1) {
            PullChoice.Candidate next = found.get(1);
            s.append("; along ")
                    .append(direction(next.direction()))
                    .append(" it would stand ")
                    .append(Say.mm(next.depthMm()))
                    .append(" deep");
            if (next.hiddenShare() > 5e-4) s.append(" and be undercut");
        }
        s.append(". ");
        if (side.opensToBMm2() > 1.05 * side.opensToAMm2())
            s.append("Hollows open to B, so the part shrinks onto its cores.");
        else if (side.opensToBMm2() > 0) s.append("Hollows open to both sides alike; the flatter end lies in B.");
        else s.append("There is no hollow; the flatter end lies in B.");
        return s.toString();
    }

    private static String direction(@Nullable Vec3 d) {
        if (d == null) return "";
        String[] names = {"x", "y", "z"};
        double[] c = {d.x(), d.y(), d.z()};
        for (int i = 0; i < 3; i++) if (Math.abs(c[i]) == 1) return (c[i] < 0 ? "−" : "") + names[i];
        return "(" + Say.number(d.x(), 2) + ", " + Say.number(d.y(), 2) + ", " + Say.number(d.z(), 2) + ")";
    }
}
