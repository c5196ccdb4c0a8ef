package shotwright.review.remedy;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import shotwright.brep.ExactBody;
import shotwright.brep.ExactEngine;
import shotwright.brep.ExactFace;
import shotwright.brep.ExactFailure;
import shotwright.brep.ExactShapes;
import shotwright.brep.FacedMesh;
import shotwright.brep.Solid;
import shotwright.geom.Vec3;
import shotwright.progress.Progress;
import shotwright.review.DraftRule;
import shotwright.review.FaceReview;
import shotwright.review.FaceReview.FormedBy;
import shotwright.review.FaceReview.Need;
import shotwright.review.RackCutters;
import shotwright.review.ReviewResult;
import shotwright.review.face.FaceBorders;
import shotwright.review.face.FaceFacets;
import shotwright.review.face.FaceLean;

/**
 * Leans the walls that lack draft. All of them at once first; when that fails, half of them, and so on down to the single chain of walls, so that
 * one that cannot lean keeps no other from it. Walls through which the parting runs are leaned both ways from it.
 */
public final class DraftMaker {
    private static final double DEFLECTION_MM = 0.02, TURN_RAD = 0.2;
    /** How much the file that was written may differ in volume. */
    private static final double SAME_VOLUME = 1e-6;

    private final ExactShapes x;
    private final byte[] step;
    private final ReviewResult review;
    private final DraftWish wish;
    private final Refusals refusals;
    private final Progress progress;
    private final Vec3 pull;
    private final ExactBody body;
    private final FaceBorders borders;
    private final Map<Integer, RefusedWall> refused = new LinkedHashMap<>();
    private final List<Chain> leaned = new ArrayList<>();
    private final List<Failed> failed = new ArrayList<>();
    private final List<Chain> parted = new ArrayList<>();

    private DraftMaker(
            ExactShapes x,
            byte[] step,
            ReviewResult review,
            ExactBody body,
            DraftWish wish,
            Refusals refusals,
            Progress progress) {
        this.x = x;
        this.step = step;
        this.review = review;
        this.body = body;
        this.wish = wish;
        this.refusals = refusals;
        this.progress = progress;
        this.pull = review.pulled().pull();
        this.borders = FaceBorders.of(body, review.pulled().edges());
    }

    /**
     * Makes a proposal.
     *
     * @param engine what works on exact solids
     * @param step the part's STEP file
     * @param review the review of that part
     * @param cutters what the shop could cut the draft with instead
     * @throws IllegalArgumentException when the part has no exact faces
     * @throws Progress.Cancelled when asked to stop
     */
    public static DraftRemedy make(
            ExactEngine engine,
            byte[] step,
            ReviewResult review,
            DraftWish wish,
            RackCutters cutters,
            Progress progress) {
        ExactBody body = review.pulled().part().exact();
        if (body == null) throw new IllegalArgumentException("part: it has no exact faces");
        Progress watch = (doing, s) -> progress.at("leaning walls", 0.5);
        try (ExactShapes x = new ExactShapes(engine, watch)) {
            return new DraftMaker(x, step, review, body, wish, new Refusals(wish, cutters), progress).make();
        } catch (ExactFailure e) {
            Vec3 size = review.pulled().part().box().size();
            double volume = body.mass().volumeMm3();
            return new DraftRemedy(
                    wish,
                    volume,
                    volume,
                    size,
                    size,
                    List.of(),
                    List.of(),
                    new byte[0],
                    List.of(DraftFindings.missing(e)));
        }
    }

    private DraftRemedy make() throws ExactFailure {
        List<FaceReview> faces = review.faces();
        List<Chain> chains = new ArrayList<>();
        Set<Integer> seen = new HashSet<>();
        for (FaceReview f : faces) {
            if (!lacks(f) || seen.contains(f.number())) continue;
            Optional<String> no = refusals.atOnce(f);
            if (no.isPresent()) {
                refuse(List.of(f), no.get());
                continue;
            }
            Chain c = Chain.of(f, faces, borders, wish.neutral());
            c.walls().forEach(w -> seen.add(w.number()));
            Optional<String> wrong = unfit(c);
            if (wrong.isPresent()) refuse(c.walls(), wrong.get());
            else chains.add(c);
        }
        chains.sort(Comparator.comparingDouble(Chain::areaMm2).reversed());
        Leaning part = Leaning.start(x, step, body.solid(), pull, wish.draftDeg(), progress);
        lean(part, chains.stream().filter(c -> c.by() != FormedBy.BOTH).toList());
        retry(part);
        for (Failed f : failed) refuse(f.chain.walls(), f.reason + hint(part, f.chain));
        return finished(
                part, chains.stream().filter(c -> c.by() == FormedBy.BOTH).toList());
    }

    private boolean lacks(FaceReview f) {
        boolean wall = f.need() == Need.LACKS || f.need() == Need.ENOUGH || f.need() == Need.CANNOT_HELP;
        return wall && f.leastDraftDeg() < wish.draftDeg() - DraftRule.BAND_DEG;
    }

    /** Why a chain must not be leaned as a whole. */
    private Optional<String> unfit(Chain c) {
        for (FaceReview w : c.walls()) {
            String into = "It runs smoothly into face " + w.number() + ", ";
            if (w.leastDraftDeg() > wish.draftDeg() + DraftRule.BAND_DEG)
                return Optional.of(into + "which has more draft already.");
            if (w.formedBy() == FormedBy.NEITHER) return Optional.of(into + "which neither half reaches.");
            boolean wrongSide = c.by() == FormedBy.BOTH
                    && !Chain.isParted(w)
                    && !(w.formedBy() == FormedBy.A
                            ? w.lowMm() > c.neutralMm() - SLACK_MM
                            : w.highMm() < c.neutralMm() + SLACK_MM);
            if (wrongSide) return Optional.of(into + "which the other half makes.");
        }
        return Optional.empty();
    }

    private static final double SLACK_MM = 0.01;

    private void refuse(List<FaceReview> walls, String reason) {
        for (FaceReview w : walls)
            if (lacks(w)) refused.putIfAbsent(w.number(), new RefusedWall(w, reason, refusals.remedy(w)));
    }

    /** A chain that did not lean alone, and how many had been leaned then. */
    private record Failed(Chain chain, String reason, int leanedCount) {}

    private void lean(Leaning part, List<Chain> chains) throws ExactFailure {
        if (chains.isEmpty()) return;
        Optional<String> wrong = part.lean(chains, true);
        if (wrong.isEmpty()) leaned.addAll(chains);
        else if (chains.size() == 1) failed.add(new Failed(chains.getFirst(), wrong.get(), leaned.size()));
        else {
            int half = chains.size() / 2;
            lean(part, chains.subList(0, half));
            lean(part, chains.subList(half, chains.size()));
        }
    }

    /** Once more those whose neighbours have been leaned since, until nothing changes. */
    private void retry(Leaning part) throws ExactFailure {
        while (true) {
            List<Chain> again = failed.stream()
                    .filter(f -> leaned.subList(f.leanedCount, leaned.size()).stream()
                            .anyMatch(c -> touch(c, f.chain)))
                    .map(Failed::chain)
                    .toList();
            if (again.isEmpty()) return;
            failed.removeIf(f -> again.contains(f.chain));
            for (Chain c : again) lean(part, List.of(c));
        }
    }

    private boolean touch(Chain a, Chain b) {
        return a.walls().stream()
                .flatMap(w -> borders.of(w.number() - 1).stream())
                .anyMatch(n -> b.holds(n.neighbour()));
    }

    /** Whether it would lean with its other end kept. */
    private String hint(Leaning part, Chain c) throws ExactFailure {
        NeutralEnd end = wish.neutral().other();
        Chain other = Chain.of(c.walls().getFirst(), review.faces(), borders, end);
        boolean would = other.neutralMm() != c.neutralMm()
                && part.branch().lean(List.of(other), true).isEmpty();
        return would ? " It leans when it keeps its size " + end.words() + "." : "";
    }

    private DraftRemedy finished(Leaning part, List<Chain> through) throws ExactFailure {
        Leaning above = part.branch(), below = part.branch();
        for (Chain c : through) {
            Leaning up = above.branch(), down = below.branch();
            Optional<String> wrong = up.lean(List.of(c), true);
            if (wrong.isEmpty()) wrong = down.lean(List.of(c), false);
            if (wrong.isPresent()) {
                refuse(c.walls(), wrong.get());
                continue;
            }
            above = up;
            below = down;
            parted.add(c);
        }
        Solid whole = part.solid();
        if (!parted.isEmpty()) {
            Optional<Solid> joined = new PartingJoin(x, pull)
                    .join(above, below, parted.getFirst().neutralMm());
            if (joined.isEmpty()) {
                for (Chain c : parted) refuse(c.walls(), "Its two ends could not be joined at the parting.");
                parted.clear();
                above = part;
                below = part;
            } else whole = joined.get();
        }
        return leaned.isEmpty() && parted.isEmpty() ? nothing() : written(whole, above, below);
    }

    private DraftRemedy nothing() {
        Vec3 size = review.pulled().part().box().size();
        double volume = body.mass().volumeMm3();
        List<RefusedWall> no = List.copyOf(refused.values());
        return new DraftRemedy(
                wish, volume, volume, size, size, List.of(), no, new byte[0], DraftFindings.of(wish, List.of(), no, 0));
    }

    /** Writes the proposal, reads it back and measures every wall in what was read. */
    private DraftRemedy written(Solid whole, Leaning above, Leaning below) throws ExactFailure {
        byte[] file = x.writeStep("part with draft, proposed", List.of(whole));
        List<Solid> back = x.readStep(file).solids();
        if (back.size() != 1 || !x.check(back.getFirst()).isOneClosedSolid())
            throw new ExactFailure(ExactFailure.Why.REFUSED, "The leaned part is not sound when it is read back.");
        Solid read = back.getFirst();
        double volume = x.volumeMm3(read);
        if (Math.abs(volume / x.volumeMm3(whole) - 1) > SAME_VOLUME)
            throw new ExactFailure(ExactFailure.Why.REFUSED, "The leaned part changes when it is read back.");
        Reread reread = new Reread(x, read);
        List<LeanedWall> walls = new ArrayList<>();
        for (Chain c : leaned) for (FaceReview w : c.walls()) walls.add(wall(c, w, List.of(above), reread));
        for (Chain c : parted) for (FaceReview w : c.walls()) walls.add(wall(c, w, sides(w, c, above, below), reread));
        walls.sort(Comparator.comparingInt(w -> w.face().number()));
        List<RefusedWall> no = refused.values().stream()
                .sorted(Comparator.comparingInt(r -> r.face().number()))
                .toList();
        return new DraftRemedy(
                wish,
                body.mass().volumeMm3(),
                volume,
                review.pulled().part().box().size(),
                x.box(read).size(),
                walls,
                no,
                file,
                DraftFindings.of(wish, walls, no, volume - body.mass().volumeMm3()));
    }

    private static List<Leaning> sides(FaceReview w, Chain c, Leaning above, Leaning below) {
        if (Chain.isParted(w)) return List.of(above, below);
        return w.lowMm() > c.neutralMm() - SLACK_MM ? List.of(above) : List.of(below);
    }

    private LeanedWall wall(Chain c, FaceReview w, List<Leaning> sides, Reread reread) throws ExactFailure {
        double least = Double.POSITIVE_INFINITY, shift = 0;
        ExactFace before = body.faces().get(w.number() - 1);
        boolean both = sides.size() > 1;
        for (int s = 0; s < sides.size(); s++) {
            ExactFace now = sides.get(s).faces().get(w.number() - 1);
            boolean up = both
                    ? s == 0
                    : c.by() == FormedBy.BOTH ? w.lowMm() > c.neutralMm() - SLACK_MM : c.by() == FormedBy.A;
            least = Math.min(least, reread.leastDraftDeg(now, up ? pull : pull.negate()));
            shift = Math.max(
                    shift,
                    Surfaces.neutralShiftMm(
                            before, now, pull, c.neutralMm(), w.size().widthMm() / 2));
        }
        return new LeanedWall(w, both, least, c.neutralMm(), moves(c, w), shift);
    }

    /** The end farther from the neutral height moves by depth times the change of tangent; plastic is added on the side away from the draw. */
    private double moves(Chain c, FaceReview w) {
        double up = w.highMm() - c.neutralMm(), down = w.lowMm() - c.neutralMm();
        double far = Math.abs(up) > Math.abs(down) ? up : down;
        double change = Math.tan(Math.toRadians(wish.draftDeg())) - Math.tan(Math.toRadians(w.leastDraftDeg()));
        if (Chain.isParted(w)) return -Math.abs(far) * change;
        boolean towardsA = c.by() == FormedBy.BOTH ? far > 0 : c.by() == FormedBy.A;
        return (towardsA ? -far : far) * change;
    }

    /** Faces found again in a solid that was read back. */
    private static final class Reread {
        private final List<FaceFacets> facets;

        Reread(ExactShapes x, Solid solid) throws ExactFailure {
            FacedMesh mesh = x.mesh(solid, DEFLECTION_MM, TURN_RAD);
            facets = FaceFacets.of(
                    new ExactBody(0, x.measure(solid), x.faces(solid), mesh.faceOf(), mesh.normals()), mesh.mesh());
        }

        /** The least draft of the faces that lie on a surface. */
        double leastDraftDeg(ExactFace surface, Vec3 draw) throws ExactFailure {
            return facets.stream()
                    .filter(f -> Surfaces.same(surface, f.face()))
                    .mapToDouble(f -> FaceLean.of(f, draw).lowDeg())
                    .min()
                    .orElseThrow(() -> new ExactFailure(
                            ExactFailure.Why.REFUSED,
                            "A leaned wall is not found again in the file that was written."));
        }
    }
}
