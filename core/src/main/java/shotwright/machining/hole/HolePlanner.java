package shotwright.machining.hole;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.function.Predicate;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import shotwright.cutter.Cutter;
import shotwright.cutter.CutterProfile;
import shotwright.machining.feed.CutData;
import shotwright.machining.feed.CutKind;
import shotwright.machining.feed.Entry;
import shotwright.machining.feed.HoleData;
import shotwright.machining.feed.Shopfloor;
import shotwright.machining.path.Drilling;
import shotwright.machining.path.PathBuilder;
import shotwright.machining.workpiece.Hole;
import shotwright.machining.workpiece.Phase;
import shotwright.machining.workpiece.Task;
import shotwright.mesh.complex.Material;
import shotwright.mold.Purpose;
import shotwright.stock.Fit;
import shotwright.stock.HoleLimits;

/**
 * Chooses how holes are made. Fitted ones are spotted, drilled under size, then reamed where a reamer of that size is on the rack, else milled
 * round in tasks that leave room to measure and correct. The others are drilled to size where a drill comes near enough, else milled round.
 *
 * <p>Round milling goes by the passes of {@link BoreSteps}.
 */
public final class HolePlanner {
    /** How near a drill must be where nothing has to fit. */
    public static final double DRILL_MM = 0.1;

    /** A hole that only gives room may be so much larger. */
    public static final double ROOM_MM = 0.5;

    /** A reamer's lead: so much deeper it goes, and the drill before it. */
    private static final double LEAD_MM = 1;

    /** A drill that goes through goes so much further than its point. */
    private static final double BREAK_OUT_MM = 0.5;

    /** A pilot hole leaves a taper so much on the diameter at its small end. */
    private static final double PILOT_UNDER_MM = 0.05;

    static final double RETRACT_MM = 1.5;

    /** A cutter that mills a hole round may be so thick, for chips to get out. */
    private static final double MOST_OF_HOLE = 0.8;

    /** Path of the first helix over the cutter: a wider one leaves a core in the middle. */
    private static final double FIRST_HELIX_OF_CUTTER = Entry.WIDEST_HELIX_HOLE_FACTOR - 1;

    /** So much wider each next helix may run, over the cutter. */
    private static final double NEXT_HELIX_OF_CUTTER = 0.8;

    private static final double PITCH_OF_CUTTER = 0.1;
    private static final double SPARE_REACH_MM = 1;

    private final Shopfloor shop;

    public HolePlanner(Shopfloor shop) {
        this.shop = shop;
    }

    /**
     * The way to make a hole, seen with its mouth up.
     *
     * @param floorMm metal below the end of the hole; a drill point and a reamer's lead must stay in it. Infinite when the hole goes through
     */
    public HoleWay plan(Hole hole, double floorMm) {
        return new Way(hole, floorMm).plan();
    }

    /** The choice for one hole. */
    private final class Way {
        private final Hole hole;
        private final double floorMm;
        private final double depthMm;
        private final List<Task> tasks = new ArrayList<>();
        private final List<String> notes = new ArrayList<>();
        private String byHand = "";

        Way(Hole hole, double floorMm) {
            this.hole = hole;
            this.floorMm = floorMm;
            depthMm = hole.depthMm();
        }

        HoleWay plan() {
            if (hole.isTapered()) tapered();
            else if (hole.isFitted()) fitted();
            else plain();
            if (hole.use() == Purpose.THREAD) byHand += (byHand.isEmpty() ? "" : "; ") + "tap " + hole.name();
            return new HoleWay(hole, tasks, byHand, notes);
        }

        /** A task of a cutter whose tip goes down to a depth below the mouth. */
        private Task task(Phase phase, Cutter cutter, double deepMm, double speedRpm, Task.Path path) {
            return new Task(
                    phase,
                    phase.words() + " " + hole.name(),
                    cutter,
                    stickoutMm(cutter, deepMm),
                    speedRpm,
                    hole.atMm(),
                    path);
        }

        private void tapered() {
            double smallMm = Math.min(hole.diameterMm(), hole.endDiameterMm());
            boolean pilot = drilled(d -> d <= smallMm - PILOT_UNDER_MM, smallMm);
            byHand = String.format(
                    Locale.ROOT,
                    "%sream %s to its taper, %.2f to %.2f mm",
                    pilot ? "" : "drill it first, no drill on the rack is slim and long enough; ",
                    hole.name(),
                    smallMm,
                    Math.max(hole.diameterMm(), hole.endDiameterMm()));
        }

        private void fitted() {
            switch (FittedHole.of(limits(), depthMm + LEAD_MM, shop.cutters(), shop.feeds())) {
                case FittedHole.Reamed r
                when floorMm > LEAD_MM + pointOf(r.drill())
                        && !drilling(r.drill()).tooFast()
                        && !reaming(r.reamer()).tooFast() -> {
                    drilled(r.drill());
                    ream(r.reamer());
                }
                case FittedHole.Reamed r -> bored();
                case FittedHole.Bored b -> bore(b);
                case FittedHole.NotPossible n -> byHand = "make " + hole.name() + " on the bench: " + n.why();
            }
        }

        /** The usual tolerance of small fitted holes, grade 7 of ISO 286, about the size wanted; holes below 1 mm go by its first row. */
        private HoleLimits limits() {
            double grade = Fit.H7.highUm(Math.max(1, hole.diameterMm())) / 1000.0;
            return new HoleLimits(hole.diameterMm() - grade / 2, hole.diameterMm() + grade / 2);
        }

        private void bored() {
            List<Cutter> mills = shop.cutters().stream()
                    .filter(c -> c.shape() == Cutter.Shape.FLAT)
                    .toList();
            switch (FittedHole.of(limits(), milledDepthMm(), mills, shop.feeds())) {
                case FittedHole.Bored b -> bore(b);
                case FittedHole.NotPossible n -> byHand = "make " + hole.name() + " on the bench: " + n.why();
                case FittedHole.Reamed r -> throw new IllegalStateException("an end mill does not ream");
            }
        }

        private void plain() {
            double diaMm = hole.diameterMm();
            boolean flatFloor = hole.use() == Purpose.COUNTERBORE;
            boolean room = hole.use() == Purpose.CLEARANCE || hole.use() == Purpose.PIN_RELIEF;
            double overMm = room ? ROOM_MM : DRILL_MM, underMm = room ? 0 : DRILL_MM;
            if (!flatFloor && drilled(d -> d >= diaMm - underMm - 1e-9 && d <= diaMm + overMm, diaMm)) return;
            round();
        }

        private Stream<Cutter> of(Cutter.Shape shape) {
            return shop.cutters().stream().filter(c -> c.shape() == shape);
        }

        private boolean reaches(Cutter c, double deepMm) {
            boolean slim = c.shankMm().value() <= diaMm(c) + 1e-9;
            return c.reachMm().value() >= deepMm || slim && c.reachMm().value() + SPARE_REACH_MM >= deepMm;
        }

        /** Spots and drills with the drill nearest to a size among those allowed; false when none serves. */
        private boolean drilled(Predicate<Double> allowed, double wishMm) {
            Cutter drill = of(Cutter.Shape.DRILL)
                    .filter(c -> allowed.test(diaMm(c)))
                    .filter(c -> reaches(c, drilledDepthMm()) && !drilling(c).tooFast())
                    .filter(c -> hole.through() || pointOf(c) + leadMm() < floorMm)
                    .min(Comparator.comparingDouble(c -> Math.abs(diaMm(c) - wishMm)))
                    .orElse(null);
            if (drill == null) return false;
            drilled(drill);
            return true;
        }

        private void drilled(Cutter drill) {
            spot(drill);
            HoleData data = drilling(drill);
            double deepMm = drilledDepthMm() + pointOf(drill), bottomMm = hole.mouthZMm() - deepMm;
            boolean pecks = data.firstPeckMm() < drilledDepthMm();
            tasks.add(task(Phase.DRILL, drill, deepMm, data.speedRpm(), (pen, clearZMm) -> {
                approach(pen, clearZMm);
                pen.add(List.of(new Drilling(
                        pecks ? Drilling.Kind.PECK : Drilling.Kind.DRILL,
                        pen.tip(),
                        hole.atMm(),
                        hole.mouthZMm() + RETRACT_MM,
                        bottomMm,
                        pecks ? data.nextPeckMm() : 0,
                        0,
                        false,
                        data.feedMmPerMin())));
            }));
        }

        private HoleData drilling(Cutter drill) {
            return shop.drill(drill, diaMm(drill), drilledDepthMm());
        }

        private HoleData reaming(Cutter reamer) {
            return shop.ream(reamer, depthMm);
        }

        private double leadMm() {
            return hole.isFitted() ? LEAD_MM : 0;
        }

        private double pointOf(Cutter drill) {
            return CutterProfile.of(drill).endHeightMm();
        }

        /** Depth of the drill's full diameter. */
        private double drilledDepthMm() {
            return hole.through() ? depthMm + BREAK_OUT_MM : depthMm + leadMm();
        }

        private void spot(Cutter drill) {
            Cutter spot = of(Cutter.Shape.SPOT)
                    .min(Comparator.comparingDouble(c -> Math.abs(c.shankMm().value() - diaMm(drill) - 1)))
                    .orElse(null);
            if (spot == null) {
                notes.add("No spot drill on the rack: start " + hole.name() + " with a centre punch or a short drill.");
                return;
            }
            CutterProfile end = CutterProfile.of(spot);
            double wishMm = Math.min(diaMm(drill) + 0.3, 2 * end.largestRadiusMm() - 0.1);
            boolean keepEdge = hole.isFitted() || hole.use().material() == Material.FEED;
            double spotMm = Math.min(wishMm, hole.diameterMm() - (keepEdge ? 0.2 : 0));
            double deepMm = Math.max(0.1, end.heightMm(Math.max(spotMm / 2, end.flatRadiusMm())));
            HoleData data = shop.drill(spot, Math.max(spotMm, 1), deepMm);
            tasks.add(task(Phase.SPOT, spot, deepMm, data.speedRpm(), (pen, clearZMm) -> {
                approach(pen, clearZMm);
                pen.add(List.of(new Drilling(
                        Drilling.Kind.DRILL,
                        pen.tip(),
                        hole.atMm(),
                        hole.mouthZMm() + RETRACT_MM,
                        hole.mouthZMm() - deepMm,
                        0,
                        0,
                        false,
                        data.feedMmPerMin())));
            }));
        }

        private void ream(Cutter reamer) {
            HoleData data = reaming(reamer);
            double bottomMm = hole.mouthZMm() - depthMm - LEAD_MM;
            tasks.add(task(Phase.REAM, reamer, depthMm + LEAD_MM, data.speedRpm(), (pen, clearZMm) -> {
                approach(pen, clearZMm);
                pen.rapidZ(hole.mouthZMm() + RETRACT_MM);
                pen.lineZ(bottomMm, data.feedMmPerMin());
                pen.lineZ(hole.mouthZMm() + RETRACT_MM, 2 * data.feedMmPerMin());
                pen.rapidZ(clearZMm);
            }));
            notes.add(
                    "Ream " + hole.name() + " with the spindle turning forward in and out; never turn a reamer back.");
        }

        /** Milled round with the thickest cutter that goes in and reaches: down on helices from the middle outward, then once round to size. */
        private void round() {
            @Nullable Chosen best = null;
            for (Cutter c : shop.cutters()) {
                if (c.shape() != Cutter.Shape.FLAT) continue;
                if (diaMm(c) > MOST_OF_HOLE * hole.diameterMm() || !reaches(c, milledDepthMm())) continue;
                CutData data = boring(c);
                if (data != null && (best == null || diaMm(c) > diaMm(best.cutter))) best = new Chosen(c, data);
            }
            if (best == null) {
                byHand = String.format(
                        Locale.ROOT,
                        "make %s, %.3f mm, on the bench: no cutter on the rack is slim and long enough",
                        hole.name(),
                        hole.diameterMm());
                return;
            }
            bore(best, opening(diaMm(best.cutter)));
        }

        private List<BoreSteps.Pass> opening(double cutterMm) {
            double roughMm = hole.diameterMm() - BoreSteps.ROUGH_LEFT_MM - cutterMm;
            double firstMm = Math.min(roughMm, FIRST_HELIX_OF_CUTTER * cutterMm);
            int more = (int) Math.ceil((roughMm - firstMm) / (NEXT_HELIX_OF_CUTTER * cutterMm) - 1e-9);
            List<BoreSteps.Pass> passes = new ArrayList<>();
            for (int i = 0; i <= more; i++) {
                double pathMm = more == 0 ? roughMm : firstMm + (roughMm - firstMm) * i / more;
                passes.add(new BoreSteps.Pass("rough", pathMm + cutterMm, pathMm, PITCH_OF_CUTTER * cutterMm));
            }
            passes.add(new BoreSteps.Pass("finish", hole.diameterMm(), hole.diameterMm() - cutterMm, 0));
            return passes;
        }

        private double milledDepthMm() {
            return depthMm + (hole.through() ? BREAK_OUT_MM : 0);
        }

        private @Nullable CutData boring(Cutter c) {
            return shop.cut(
                    c,
                    stickoutMm(c, milledDepthMm()),
                    CutKind.WALL,
                    Math.min(depthMm, PITCH_OF_CUTTER * diaMm(c)),
                    BoreSteps.ROUGH_LEFT_MM / 2);
        }

        private void bore(FittedHole.Bored b) {
            CutData data = boring(b.cutter());
            if (data == null) {
                byHand = "make " + hole.name() + " on the bench: " + b.cutter().name() + " is not stiff enough";
                return;
            }
            List<BoreSteps.Pass> passes = new ArrayList<>(b.steps().beforeGauging());
            passes.addAll(b.steps().afterGauging(hole.diameterMm() - BoreSteps.GAUGE_LEFT_MM));
            bore(new Chosen(b.cutter(), data), passes);
            notes.add(String.format(
                    Locale.ROOT,
                    "Stop before the last turns of %s and gauge it: it stands %.2f mm under size. Put half of what is wrong into the cutter's radius.",
                    hole.name(),
                    BoreSteps.GAUGE_LEFT_MM));
        }

        private void bore(Chosen c, List<BoreSteps.Pass> passes) {
            tasks.add(task(
                    Phase.BORE,
                    c.cutter,
                    milledDepthMm(),
                    c.data.speedRpm(),
                    new BoredPath(
                                    hole,
                                    hole.mouthZMm() - milledDepthMm(),
                                    diaMm(c.cutter),
                                    c.data.feedMmPerMin(),
                                    passes)::write));
        }

        private void approach(PathBuilder pen, double clearZMm) {
            pen.over(hole.atMm().atZ(clearZMm), clearZMm);
        }
    }

    private record Chosen(Cutter cutter, CutData data) {}

    private static double diaMm(Cutter c) {
        return c.diaMm().value();
    }

    /** How far a cutter stands out to reach a depth: its reach where it has a neck or slim shank, at least its flutes. */
    static double stickoutMm(Cutter c, double depthMm) {
        return Math.max(c.reachMm().value(), Math.max(c.fluteLengthMm().value(), depthMm + SPARE_REACH_MM));
    }
}
