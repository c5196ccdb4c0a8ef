package shotwright.review;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Function;
import shotwright.finding.Finding;
import shotwright.finding.Severity;
import shotwright.geom.Vec3;
import shotwright.measure.Digits;
import shotwright.measure.Source;
import shotwright.mesh.Bvh;
import shotwright.mesh.Probe;
import shotwright.mesh.WallThickness;
import shotwright.part.PulledPart;
import shotwright.progress.Progress;

/**
 * Wall thickness: its middle, its ends, and the places that are too thin to fill, thick enough to sink, or that step too fast from one to the
 * other. Samples nearer to an outside edge than half the wall there are left aside; where two faces run out to an edge, the edge is spoken
 * of and not the wall. Thin is judged straight through the wall, thick by the
 * largest ball that fits (inscribed sphere over the middle wall: watch above 1.15, sinks above 1.25, may hold voids above 1.5; common
 * practice).
 */
final class WallCheck {
    static final double WATCH_RATIO = 1.15, SINK_RATIO = 1.25, VOID_RATIO = 1.5;
    private static final Source SPOT_RULE =
            Source.commonPractice("largest ball over middle wall: 1.15 watch, 1.25 sink, 1.5 void");
    private static final Source STEP_RULE = Source.commonPractice("thick over thin: 1.25 crystalline, 1.5 others");
    /** Faces of one wall lean no more than this to each other, as measured on tapered ribs and drafted walls. */
    private static final double EVEN_WALL_DEG = 8;

    private static final double LEAST_WEDGE_DEG = 3;

    /** Below this share of the least wall that fills it is no wall at all. */
    private static final double SLIVER_SHARE = 0.1;

    /** Two faces that meet at less are a feather edge, more is a plain corner (common practice). */
    private static final double FEATHER_DEG = 40;

    private static final int SAMPLES = 12_000;
    private static final long SEED = 20;
    private static final double RIB_SHARE = 0.75;
    private static final int MOST_SPOTS = 5;
    private static final int MANY = 10;
    private static final int MOST_CLUSTERED = 3000;
    /** Spots smaller than this share of the surface are the noise of single samples. */
    private static final double LEAST_SPOT_SHARE = 3e-4;

    private final PulledPart pulled;
    private final MoldingLimits limits;
    private final WallThickness samples;
    private final double medianMm;
    private final double areaEachMm2;
    /** Samples that mean something, by number. */
    private final int[] sound;
    /** Samples on a wedge that runs out to an outside edge, by number; their wall is nothing but their distance from the edge. */
    private final List<Integer> onWedges = new ArrayList<>();
    /** Angle between the two faces of such a wedge, by sample. */
    private final double[] wedgeDeg;

    WallCheck(PulledPart pulled, MoldingLimits limits, Progress progress) {
        this.pulled = pulled;
        this.limits = limits;
        samples = WallThickness.of(pulled.tree(), SAMPLES, SEED, progress);
        medianMm = samples.rayQuantile(0.5);
        areaEachMm2 = pulled.part().mass().surfaceAreaMm2() / samples.count();
        OutsideEdges edges = OutsideEdges.of(pulled.mesh(), pulled.edges(), medianMm);
        wedgeDeg = new double[samples.count()];
        Probe probe = new Probe();
        int[] kept = new int[samples.count()];
        int n = 0;
        for (int i = 0; i < samples.count(); i++) {
            double local = Math.min(samples.ray(i), 2 * medianMm);
            if (!(local > 0) || edges.isNear(samples.point(i), local / 2)) continue;
            wedgeDeg[i] = through(i) < limits.leastWallMm() ? wedgeDeg(probe, i) : 0;
            if (runsOut(edges, i)) onWedges.add(i);
            else kept[n++] = i;
        }
        sound = Arrays.copyOf(kept, n);
    }

    /** The angle between the face of a sample and the face straight behind it; 0 on an even wall. */
    private double wedgeDeg(Probe probe, int i) {
        var s = samples.sample(i);
        Vec3 p = s.point(), n = s.normal();
        double diagonal = pulled.mesh().box().diagonal();
        probe.aim(p.x(), p.y(), p.z(), -n.x(), -n.y(), -n.z());
        int hit = pulled.tree().firstHit(probe, 1e-7 * diagonal, 2 * diagonal, s.facet());
        if (hit == Bvh.NONE) return 0;
        double cos = -n.dot(pulled.mesh().doubleAreaNormal(hit).unit());
        return Math.toDegrees(Math.acos(Math.clamp(cos, -1, 1)));
    }

    /**
     * Leaning faces alone may be a tapered wall; a wedge has the edge they meet in where their lean says. What is far thinner than any wall
     * that fills is the end of a wedge even where its faces meet like a curve and its tangent.
     */
    private boolean runsOut(OutsideEdges edges, int i) {
        boolean sliver = samples.ray(i) < SLIVER_SHARE * limits.leastWallMm();
        if (!(wedgeDeg[i] > EVEN_WALL_DEG) && !sliver) return false;
        double away = samples.ray(i) / Math.tan(Math.toRadians(Math.clamp(wedgeDeg[i], LEAST_WEDGE_DEG, 80)));
        return edges.isNear(samples.point(i), 1.5 * away + medianMm / 10);
    }

    double medianMm() {
        return medianMm;
    }

    /** The review of the walls with what is said about spots and steps. */
    record Outcome(WallReview review, List<Said<WallReview.Spot>> spots, List<Said<WallReview.Step>> steps) {}

    Outcome review() {
        double[] through = Arrays.stream(sound).mapToDouble(this::through).toArray();
        double[] ball = Arrays.stream(sound).mapToDouble(samples::sphere).toArray();
        boolean none = sound.length < 20;
        double least = none ? samples.rayQuantile(0.05) : WallThickness.quantile(through, 0.005);
        double most = none ? samples.sphereQuantile(0.99) : WallThickness.quantile(ball, 0.99);
        List<Said<WallReview.Spot>> spots = new ArrayList<>(thinSpots());
        spots.addAll(featherEdges());
        spots.addAll(thickSpots());
        List<Said<WallReview.Step>> steps = steps(Said.rows(spots));
        WallReview review = new WallReview(
                medianMm,
                Math.min(least, medianMm),
                Math.max(most, medianMm),
                samples,
                Said.rows(spots),
                Said.rows(steps));
        return new Outcome(review, spots, steps);
    }

    /** Through the wall; where the ball is far smaller the wall is slanted, and the ball says more. */
    private double through(int i) {
        double ray = samples.ray(i), ball = samples.sphere(i);
        return ball > 0.7 * ray ? Math.min(ray, ball / 0.98) : ray;
    }

    private List<Said<WallReview.Spot>> thinSpots() {
        double limit = limits.leastWallMm();
        List<Integer> thin = Arrays.stream(sound)
                .filter(i -> through(i) < limit * 0.98 && samples.sphere(i) > 0.5 * samples.ray(i))
                .boxed()
                .sorted(Comparator.comparingDouble(this::through))
                .toList();
        List<WallReview.Spot> spots = new ArrayList<>();
        for (List<Integer> cluster : clusters(thin)) {
            int worst = worst(cluster, i -> -through(i));
            spots.add(spot(false, worst, through(worst), cluster));
        }
        return gathered(spots, s -> true, all -> thinFinding(all, thin.size() * areaEachMm2));
    }

    private WallReview.Spot spot(boolean thick, int worst, double wallMm, List<Integer> cluster) {
        return new WallReview.Spot(0, thick, place(worst), wallMm, wallMm / medianMm, cluster.size() * areaEachMm2);
    }

    /** Spots of which the same has to be said share one finding; all are counted, the worst few are kept as rows. */
    private static List<Said<WallReview.Spot>> gathered(
            List<WallReview.Spot> worstFirst,
            Function<WallReview.Spot, ?> sameWords,
            Function<List<WallReview.Spot>, Finding> finding) {
        Map<Object, List<WallReview.Spot>> alike = new LinkedHashMap<>();
        for (WallReview.Spot s : worstFirst)
            alike.computeIfAbsent(sameWords.apply(s), k -> new ArrayList<>()).add(s);
        List<Said<WallReview.Spot>> said = new ArrayList<>();
        alike.values().forEach(all -> {
            Finding f = finding.apply(all);
            all.stream().limit(MOST_SPOTS).forEach(s -> said.add(new Said<>(s, f)));
        });
        return said;
    }

    /** How many, in words; more than a handful are not worth counting. */
    private static String places(int count) {
        return count < MANY ? count + " places" : "many places";
    }

    private Finding thinFinding(List<WallReview.Spot> alike, double allMm2) {
        WallReview.Spot s = alike.getFirst();
        double limit = limits.leastWallMm();
        boolean one = alike.size() == 1;
        double area = one ? s.areaMm2() : allMm2;
        String where = one ? " here; " : " at the thinnest of " + places(alike.size()) + "; ";
        return Finding.of(
                        s.wallMm() < 0.75 * limit ? Severity.ASK : Severity.WATCH,
                        "wall-thin",
                        "The wall is only " + Say.mm(s.wallMm(), 2) + where + limits.resin()
                                + " may freeze before it gets through.")
                .at(s.at())
                .measured(s.wallMm(), limit, "mm", limits.wallSource())
                .remedy(
                        "Make it " + Say.mm(limit, 2) + " thick over " + Digits.figures(area, 2) + " mm² of surface"
                                + (one ? "." : " in all."),
                        "The wall grows by " + (one ? "" : "up to ") + Say.mm(limit - s.wallMm(), 2) + " there.",
                        "Short shots, and pressure to fill.");
    }

    /** Where two faces meet at a sharp angle; a plain corner is nothing to speak of. */
    private List<Said<WallReview.Spot>> featherEdges() {
        List<Integer> sharp = onWedges.stream()
                .filter(i -> wedgeDeg[i] < FEATHER_DEG)
                .sorted(Comparator.comparingDouble(this::through))
                .toList();
        record Edge(WallReview.Spot spot, double wedgeDeg) {}
        List<Edge> edges = new ArrayList<>();
        for (List<Integer> cluster : clusters(sharp)) {
            int worst = worst(cluster, i -> -wedgeDeg[i]);
            edges.add(new Edge(spot(false, worst, through(worst), cluster), wedgeDeg[worst]));
        }
        edges.sort(Comparator.comparingDouble(Edge::wedgeDeg));
        return gathered(
                edges.stream().map(Edge::spot).toList(),
                e -> true,
                all -> featherFinding(all, edges.getFirst().wedgeDeg()));
    }

    private static Finding featherFinding(List<WallReview.Spot> alike, double sharpestDeg) {
        boolean one = alike.size() == 1;
        return Finding.watch(
                        "feather-edge",
                        "The part runs out to a feather edge " + (one ? "here" : "in " + places(alike.size()))
                                + ": two faces meet at " + Say.number(sharpestDeg, 0) + "°"
                                + (one ? "" : " at the sharpest") + ". The edge comes out ragged and chips.")
                .at(alike.getFirst().at())
                .remedy(
                        "End the edge in a small flat or a radius.",
                        "The edge gets a little shorter.",
                        "Trimming, and a sharp groove in the mold.");
    }

    private List<Said<WallReview.Spot>> thickSpots() {
        List<Integer> thick = Arrays.stream(sound)
                .filter(i -> samples.sphere(i) > WATCH_RATIO * medianMm)
                .boxed()
                .sorted(Comparator.comparingDouble(i -> -samples.sphere(i)))
                .toList();
        List<WallReview.Spot> spots = new ArrayList<>();
        for (List<Integer> cluster : clusters(thick)) {
            int worst = worst(cluster, samples::sphere);
            spots.add(spot(true, worst, samples.sphere(worst), cluster));
        }
        return gathered(spots, s -> thickWords(s.toMedianRatio()), this::thickFinding);
    }

    private String thickWords(double ratio) {
        return ratio > VOID_RATIO && limits.crystalline()
                ? "It cools last: the face will sink or the inside will tear open."
                : ratio > SINK_RATIO ? "The face above it will sink." : "The face above it may show.";
    }

    private Finding thickFinding(List<WallReview.Spot> alike) {
        WallReview.Spot s = alike.getFirst();
        double ratio = s.toMedianRatio();
        boolean tooThick = s.wallMm() > limits.mostWallMm();
        String places = alike.size() == 1 ? "Thick here" : "Thick in " + places(alike.size());
        String most = alike.size() == 1 ? "a ball of " : "a ball of up to ";
        Severity severity = ratio > SINK_RATIO ? Severity.WATCH : Severity.NOTE;
        if (ratio > VOID_RATIO && tooThick) severity = Severity.ASK;
        double aim = SINK_RATIO * medianMm;
        return Finding.of(
                        severity,
                        "wall-thick",
                        places + ": " + most + Say.mm(s.wallMm(), 2) + " fits where the wall is " + Say.mm(medianMm, 2)
                                + ". " + thickWords(ratio))
                .at(s.at())
                .measured(ratio, ratio > SINK_RATIO ? SINK_RATIO : WATCH_RATIO, "1", SPOT_RULE)
                .remedy(
                        ratio > SINK_RATIO ? "Core it out until no more than " + Say.mm(aim, 2) + " fits." : "",
                        ratio > SINK_RATIO ? "Outside sizes can stay." : "",
                        ratio > SINK_RATIO ? "Cooling and hold time." : "");
    }

    /** Samples that lie within a ball of each other gathered together; the worst first. */
    private List<List<Integer>> clusters(List<Integer> ordered) {
        List<Integer> some = ordered.size() > MOST_CLUSTERED ? ordered.subList(0, MOST_CLUSTERED) : ordered;
        List<Integer> open = new ArrayList<>(some);
        List<List<Integer>> all = new ArrayList<>();
        int least = Math.max(3, (int) (LEAST_SPOT_SHARE * samples.count()));
        while (!open.isEmpty()) {
            List<Integer> cluster = new ArrayList<>(List.of(open.removeFirst()));
            for (int k = 0; k < cluster.size(); k++) {
                Vec3 p = samples.point(cluster.get(k));
                double reach = Math.max(samples.sphere(cluster.get(k)), medianMm);
                for (int i = open.size() - 1; i >= 0; i--) {
                    if (samples.point(open.get(i)).distance(p) > reach) continue;
                    cluster.add(open.get(i));
                    open.set(i, open.getLast());
                    open.removeLast();
                }
            }
            if (cluster.size() >= least) all.add(cluster);
        }
        return all;
    }

    /**
     * Cells of two walls' width, each with the middle of its samples; neighbours whose middles differ too much are steps. Nothing is said
     * where a thick spot has been told of, or where the thin side is a rib.
     */
    private List<Said<WallReview.Step>> steps(List<WallReview.Spot> spots) {
        WallSteps found = WallSteps.of(samples, sound, 2 * medianMm);
        double limit = limits.stepLimitRatio();
        List<Said<WallReview.Step>> said = new ArrayList<>();
        for (WallSteps.Pair p : found.worst(limit, MOST_SPOTS)) {
            var step = new WallReview.Step(0, pulled.toFile(p.place()), p.thickMm(), p.thinMm());
            double ratio = step.stepRatio();
            boolean told = spots.stream().anyMatch(s -> s.thick() && s.at().distance(step.at()) < 5 * p.thickMm());
            if (told || p.thinMm() < RIB_SHARE * medianMm) {
                said.add(new Said<>(step, null));
                continue;
            }
            Finding f = Finding.of(
                            ratio > 2 ? Severity.WATCH : Severity.NOTE,
                            "wall-step",
                            "The wall goes from " + Say.mm(p.thickMm(), 2) + " to " + Say.mm(p.thinMm(), 2)
                                    + " at once; the thick side shrinks more and pulls the part out of true.")
                    .at(step.at())
                    .measured(ratio, limit, "1", STEP_RULE)
                    .remedy(
                            "Run it out over " + Say.mm(3 * (p.thickMm() - p.thinMm())) + " or more.",
                            "",
                            "Warp, and hold time.");
            said.add(new Said<>(step, f));
        }
        return said;
    }

    private static int worst(List<Integer> cluster, java.util.function.IntToDoubleFunction weight) {
        int best = cluster.getFirst();
        for (int i : cluster) if (weight.applyAsDouble(i) > weight.applyAsDouble(best)) best = i;
        return best;
    }

    private Vec3 place(int i) {
        return pulled.toFile(samples.point(i));
    }
}
