package shotwright.layout.runner;

import java.util.Comparator;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;
import org.jspecify.annotations.Nullable;
import shotwright.layout.Half;
import shotwright.layout.Melt;
import shotwright.layout.Section;
import shotwright.layout.ShopRack;

/**
 * The runner's size and shape: the largest of what the mass asks (PYE), what the pressure asks (KAZ) and what the wall asks (so that it does
 * not freeze before the part), rounded up to a cutter that is on the rack.
 *
 * @param diameterMm diameter of the round runner it stands for
 * @param section its cross-section
 * @param half the half it is cut into; null when round in both
 * @param reason what decided, with the numbers
 */
public record RunnerChoice(
        double diameterMm, Section section, @Nullable Half half, String reason) {
    private static final double SMALLEST_MM = 2, LARGEST_MM = 10;
    private static final double LARGEST_FOR_WALL_MM = 6;

    /**
     * What the runner has to do.
     *
     * @param massG mass it feeds
     * @param lengthMm its length
     * @param flowMm3PerS its flow
     * @param dropMpa pressure it may take
     * @param wallMm wall of the part
     */
    public record Task(double massG, double lengthMm, double flowMm3PerS, double dropMpa, double wallMm) {}

    /**
     * Sizes a runner.
     *
     * @param bothHalves true to cut it round in both halves, false to keep it in one
     * @param half the half when it is kept in one
     */
    public static RunnerChoice of(Task task, Melt melt, ShopRack rack, boolean bothHalves, Half half) {
        double mass = RunnerSize.byMassMm(task.massG, task.lengthMm);
        double pressure = RunnerSize.byPressureMm(
                melt.consistencyPaS(), melt.flowExponent(), task.lengthMm, task.dropMpa, task.flowMm3PerS);
        double wall = Math.min(RunnerSize.byWallMm(task.wallMm), LARGEST_FOR_WALL_MM);
        double need = Math.clamp(Math.max(Math.max(mass, pressure), wall), SMALLEST_MM, LARGEST_MM);
        String which = wall >= Math.max(mass, pressure)
                ? "wall + 1.5 mm so that it stays open as long as the part"
                : pressure >= mass ? "pressure" : "mass";
        String why = String.format(
                Locale.ROOT,
                "%.1f mm by mass, %.1f mm by pressure (%.1f MPa over %.0f mm), %.1f mm by wall; decided by %s",
                mass,
                pressure,
                task.dropMpa,
                task.lengthMm,
                wall,
                which);
        return cut(need, why, rack, bothHalves, half);
    }

    private static RunnerChoice cut(double need, String why, ShopRack rack, boolean bothHalves, Half half) {
        OptionalDouble ball = rack.ballFromMm(need);
        if (bothHalves && ball.isPresent())
            return new RunnerChoice(
                    ball.getAsDouble(),
                    Section.round(ball.getAsDouble()),
                    null,
                    why
                            + String.format(
                                    Locale.ROOT,
                                    "; round, half in each half, with the %.1f\u00a0mm ball",
                                    ball.getAsDouble()));
        double d = Math.ceil(2 * need - 1e-9) / 2;
        Optional<ShopRack.Taper> taper = rack.tapers().stream()
                .filter(t -> t.draftDeg() >= 3
                        && t.draftDeg() <= 15
                        && t.reachMm() >= d
                        && t.tipMm() <= footMm(d, t.draftDeg()) + 1e-9)
                .max(Comparator.comparingDouble(ShopRack.Taper::tipMm));
        if (taper.isPresent()) {
            double draft = taper.get().draftDeg();
            return new RunnerChoice(
                    d,
                    new Section(Section.Shape.TRAPEZOID, 1.25 * d, d, draft),
                    half,
                    why
                            + String.format(
                                    Locale.ROOT,
                                    "; trapezoid in half %s, one tapered cutter, nothing to match across the face",
                                    half));
        }
        double wide = rack.ballFromMm(need * 1.3).orElse(Math.ceil(2 * need * 1.3) / 2);
        return new RunnerChoice(
                need,
                new Section(Section.Shape.HALF_ROUND, wide, wide / 2, 0),
                half,
                why
                        + String.format(
                                Locale.ROOT,
                                "; half round in half %s with the %.1f\u00a0mm ball, a third wider to make up",
                                half,
                                wide));
    }

    /** Width at the foot of the trapezoid 1.25 d wide and d deep. */
    private static double footMm(double d, double draftDeg) {
        return 1.25 * d - 2 * d * Math.tan(Math.toRadians(draftDeg));
    }
}
