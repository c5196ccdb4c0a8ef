package shotwright.review;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import org.jspecify.annotations.Nullable;
import shotwright.finding.Finding;
import shotwright.measure.Source;
import shotwright.part.PulledPart;

/**
 * Tall thin things: ribs of the part, thin metal standing in narrow slots of the part, and core pins in deep holes.
 *
 * <p>Limits: a rib no taller than three walls at 0.6 of the wall thick, so five times its thickness (published by several molders); standing
 * metal 0.3 of its height thick, so 3.3 (common practice for aluminium); pins 2.5 diameters where blind and 5 where they seat in the other
 * half (common practice).
 */
final class SlenderReview {
    static final double RIB_RATIO = 5, BLADE_RATIO = 3.3, BLIND_PIN_RATIO = 2.5, SEATED_PIN_RATIO = 5;
    private static final double RIB_FOOT_RATIO = 0.75;
    private static final double LEAST_HEIGHT = 1;
    private static final Source RIB_RULE = Source.commonPractice("rib no taller than five times its thickness");
    private static final Source FOOT_RULE =
            Source.commonPractice("largest circle at a rib's foot over the wall: 1.15 watch");
    private static final Source METAL_RULE = Source.commonPractice("standing aluminium 0.3 of its height thick");
    private static final Source PIN_RULE = Source.commonPractice("core pins 2.5 diameters blind, 5 seated");

    private final PulledPart pulled;
    private final double wallMm;

    SlenderReview(PulledPart pulled, double medianWallMm) {
        this.pulled = pulled;
        wallMm = medianWallMm;
    }

    List<Said<Slender>> review(List<FormedWall> walls) {
        List<Slender> found = new ArrayList<>();
        for (FormedWall w : walls) {
            double height = w.wall().depthMm();
            if (height < LEAST_HEIGHT) continue;
            if (w.shape() == WallShape.RIB)
                add(found, w, Slender.Kind.RIB, w.around().thickMm(), RIB_RATIO);
            if (w.shape() == WallShape.HOLE) {
                boolean seated = w.around().opensBothWays();
                add(found, w, Slender.Kind.CORE_PIN, w.acrossMm(), seated ? SEATED_PIN_RATIO : BLIND_PIN_RATIO);
            }
            boolean between = w.shape() != WallShape.HOLE
                    && w.wall().isFlat()
                    && Double.isFinite(w.around().gapMm());
            if (between) add(found, w, Slender.Kind.BLADE, w.around().gapMm(), BLADE_RATIO);
        }
        found.sort(Comparator.comparing(Slender::kind).thenComparing(s -> -s.ratio() / s.limitRatio()));
        return told(found);
    }

    /** Kept when it is at least near its limit; things alike are kept once. */
    private void add(List<Slender> found, FormedWall w, Slender.Kind kind, double thickMm, double limit) {
        if (!(thickMm > 0)) return;
        Slender s = new Slender(
                0,
                kind,
                pulled.toFile(pulled.mesh().centroid(w.wall().facets()[0])),
                w.wall().depthMm(),
                thickMm,
                limit);
        boolean tall = s.ratio() > 0.7 * limit;
        boolean thickFoot = kind == Slender.Kind.RIB && thickMm > RIB_FOOT_RATIO * wallMm;
        if (tall || thickFoot) found.add(s);
    }

    private List<Said<Slender>> told(List<Slender> found) {
        List<Said<Slender>> said = new ArrayList<>();
        List<Slender> firsts = new ArrayList<>();
        List<@Nullable Finding> words = new ArrayList<>();
        for (Slender s : found) {
            int alike = -1;
            for (int i = 0; i < firsts.size() && alike < 0; i++) if (isAlike(firsts.get(i), s)) alike = i;
            if (alike < 0) {
                alike = firsts.size();
                firsts.add(s);
                int count = (int) found.stream().filter(o -> isAlike(s, o)).count();
                words.add(finding(s, count));
            }
            said.add(new Said<>(s, words.get(alike)));
        }
        return said;
    }

    private static boolean isAlike(Slender a, Slender b) {
        return a.kind() == b.kind()
                && Math.abs(a.thickMm() - b.thickMm()) < 0.1 * a.thickMm()
                && Math.abs(a.heightMm() - b.heightMm()) < 0.1 * a.heightMm();
    }

    private @Nullable Finding finding(Slender s, int count) {
        return switch (s.kind()) {
            case RIB -> rib(s, Math.max(1, count / 2));
            case BLADE -> blade(s, Math.max(1, count / 2));
            case CORE_PIN -> pin(s, count);
        };
    }

    private @Nullable Finding rib(Slender s, int count) {
        String who = count == 1 ? "A rib " : count + " ribs ";
        if (s.ratio() > s.limitRatio())
            return Finding.watch(
                            "rib-slender",
                            who + Say.mm(s.heightMm()) + " tall and " + Say.mm(s.thickMm(), 2)
                                    + " thick may not fill to the tip and may stay in the mold.")
                    .at(s.at())
                    .measured(s.ratio(), s.limitRatio(), "1", RIB_RULE)
                    .remedy(
                            "Make it " + Say.mm(s.limitRatio() * s.thickMm()) + " tall, or "
                                    + Say.mm(s.heightMm() / s.limitRatio(), 2) + " thick.",
                            "",
                            "Venting at the tips.");
        double ball = JunctionCircle.diameterMm(wallMm, Math.min(s.thickMm(), 2 * wallMm), 0);
        if (ball / wallMm <= WallCheck.WATCH_RATIO) return null;
        double aim = 2 * wallMm * Math.sqrt(WallCheck.WATCH_RATIO - 1);
        return Finding.note(
                        "rib-foot",
                        who + Say.mm(s.thickMm(), 2) + " thick on a wall of " + Say.mm(wallMm, 2) + ": a circle of "
                                + Say.mm(ball, 2) + " fits in the joint and the face behind may show it.")
                .at(s.at())
                .measured(ball / wallMm, WallCheck.WATCH_RATIO, "1", FOOT_RULE)
                .remedy("Make ribs " + Say.mm(aim, 2) + " thick at the foot.", "", "");
    }

    private static @Nullable Finding blade(Slender s, int count) {
        if (s.ratio() <= s.limitRatio()) return null;
        return Finding.watch(
                        "metal-slender",
                        (count == 1 ? "A slot" : count + " slots") + " of the part, " + Say.mm(s.thickMm(), 2)
                                + " wide and " + Say.mm(s.heightMm())
                                + (count == 1 ? " deep, leaves" : " deep, leave")
                                + " mold metal that thin standing; it bends or breaks.")
                .at(s.at())
                .measured(s.ratio(), s.limitRatio(), "1", METAL_RULE)
                .remedy(
                        "Make it " + Say.mm(s.heightMm() / s.limitRatio(), 1) + " wide, or put a steel insert there.",
                        "The slot grows by " + Say.mm(s.heightMm() / s.limitRatio() - s.thickMm(), 1) + ".",
                        "A broken core.");
    }

    private static @Nullable Finding pin(Slender s, int count) {
        if (s.ratio() <= s.limitRatio()) return null;
        return Finding.watch(
                        "pin-slender",
                        (count == 1 ? "A hole" : count + " holes") + " of " + Say.mm(s.thickMm()) + ", "
                                + Say.mm(s.heightMm()) + " deep: the melt bends a milled pin that slender.")
                .at(s.at())
                .measured(s.ratio(), s.limitRatio(), "1", PIN_RULE)
                .remedy("A steel dowel as core pin, seated in the other half.", "", "A bent pin and an oval hole.");
    }
}
