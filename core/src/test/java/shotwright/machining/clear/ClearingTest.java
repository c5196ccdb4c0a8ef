package shotwright.machining.clear;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import shotwright.geom.Vec2;
import shotwright.geom.Vec3;
import shotwright.machining.contour.Contour;
import shotwright.machining.contour.Offset;
import shotwright.machining.path.Arc;
import shotwright.machining.path.Feed;
import shotwright.machining.path.Line;
import shotwright.machining.path.Move;
import shotwright.machining.path.Rapid;
import shotwright.progress.Progress;
import shotwright.region.Region;

class ClearingTest {
    private static final double R = 3;
    private static final double ENTER = 300;
    /** The measured pocket: 56 × 36, corners 4. */
    private static final Region POCKET =
            Region.rectangle(new Vec2(-24, -14), new Vec2(24, 14)).offset(4, Region.Join.ROUND, 40);

    private static final Region ALLOWED = Offset.by(POCKET, -R);

    private static RoughRules rules(double step) {
        return new RoughRules(R, step, Math.toRadians(3), 0, 2, 1000, ENTER, 2000);
    }

    private static LevelClearing clear(Region allowed, double step) {
        return LevelClearing.of(allowed, Region.EMPTY, -1, rules(step), null, Progress.SILENT);
    }

    /** The last hundredth of a millimetre to the wall is not asked: the meter's steps leave ridges there that the path does not. */
    private static EngagementMeter measured(Region allowed, LevelClearing clearing) {
        EngagementMeter meter = new EngagementMeter(allowed.offset(R - 0.01, Region.Join.ROUND, 40), R);
        meter.follow(clearing.moves(), -1);
        return meter;
    }

    private static void joined(List<Move> moves) {
        Vec3 at = moves.getFirst().from();
        for (Move m : moves) {
            assertThat(m.from().distance(at)).isLessThan(1e-9);
            at = m.to();
        }
    }

    /**
     * Measured before with a finer map and without the ways onto a front: step .6 stays within 60° over 99 % of the way (straight front
     * acos(1 − .6/3) = 36.9°), nothing is left. The ways onto a front from a wall, at the feed of an entry, may reach more.
     */
    @Test
    void theWavefrontBoundsTheEngagement() {
        LevelClearing clearing = clear(ALLOWED, 0.6);
        joined(clearing.moves());
        EngagementMeter meter = measured(ALLOWED, clearing);
        assertThat(meter.quantileDeg(0.99, s -> s.feedMmPerMin() > ENTER)).isLessThanOrEqualTo(60);
        assertThat(meter.quantileDeg(0.95)).isLessThanOrEqualTo(50);
        assertThat(clearing.linksUp()).isZero();
        assertThat(meter.quantileDeg(0.5)).isCloseTo(36.87, within(4.0));
        assertThat(meter.leftMm2()).isLessThan(0.05);
    }

    @Test
    void wideSteps() {
        EngagementMeter meter = measured(ALLOWED, clear(ALLOWED, 2.4));
        // measured before: 80, 90, 100 degrees
        assertThat(meter.quantileDeg(0.95)).isLessThan(100);
        assertThat(meter.leftMm2()).isLessThan(0.05);
    }

    /** Rings cut from the outside in bury the cutter: measured before p95 178°. Shows that the meter tells. */
    @Test
    void ringsFromOutsideDoNot() {
        EngagementMeter meter = new EngagementMeter(POCKET, R);
        List<Move> moves = new ArrayList<>();
        for (Region ring : Offset.rings(POCKET, R, 2.4))
            for (Contour c : Offset.borders(ring))
                for (int i = 0; i < c.points().size(); i++)
                    moves.add(new Line(
                            c.points().get(i).atZ(-1),
                            c.points().get((i + 1) % c.points().size()).atZ(-1),
                            1000));
        meter.follow(moves, -1);
        assertThat(meter.quantileDeg(0.95)).isGreaterThan(150);
    }

    /** Two islands and a channel of 9 mm: measured before p95 56°, p99 102°. */
    @Test
    void islandsAndAChannel() {
        Region islands = Region.disc(new Vec2(-12, 0), 5, 90).union(Region.disc(new Vec2(10, 3), 4, 90));
        Region pocket = POCKET.difference(islands).union(Region.rectangle(new Vec2(20, -4.5), new Vec2(45, 4.5)));
        Region allowed = Offset.by(pocket, -R);
        LevelClearing clearing = clear(allowed, 0.6);
        joined(clearing.moves());
        EngagementMeter meter = measured(allowed, clearing);
        assertThat(meter.quantileDeg(0.99, s -> s.feedMmPerMin() > ENTER)).isLessThanOrEqualTo(102);
        assertThat(meter.quantileDeg(0.95)).isLessThanOrEqualTo(62);
        assertThat(meter.leftMm2()).isLessThan(0.05);
        for (Move m : clearing.moves())
            if (m instanceof Feed f && f.to().z() == -1)
                // a straight way of up to one and a half steps along an island of 7 mm radius: length2/(8 r)
                for (int k = 0; k <= 8; k++)
                    assertThat(allowed.distance(f.at(k / 8.0).xy())).isLessThan(0.81 / 56 + 0.001);
    }

    /** Rapids never go through metal: below the top only straight up or down where the centre has been. */
    @Test
    void rapidsStayOutOfTheMetal() {
        for (Move m : clear(ALLOWED, 1.2).moves())
            if (m instanceof Rapid) {
                boolean level = Math.abs(m.from().z() - m.to().z()) < 1e-9;
                if (level) assertThat(m.from().z()).isGreaterThanOrEqualTo(2);
            }
    }

    /** A channel 6.4 wide for a 6 mm cutter is narrower than the step allows for: told, and entered by a ramp along it. */
    @Test
    void narrowChannels() {
        Region channel = Region.rectangle(new Vec2(0, 0), new Vec2(30, 6.4));
        Region allowed = Offset.by(channel, -R);
        LevelClearing clearing = clear(allowed, 0.6);
        joined(clearing.moves());
        assertThat(clearing.narrow().area()).isCloseTo(allowed.area(), within(0.3));
        assertThat(clearing.slotLengthMm()).isGreaterThan(40);
        double steepest = 0;
        for (Move m : clearing.moves())
            if (m instanceof Feed f
                    && f.from().z() > f.to().z()
                    && f.from().xy().distance(f.to().xy()) > 1e-6)
                steepest = Math.max(
                        steepest, (f.from().z() - f.to().z()) / f.from().xy().distance(f.to().xy()));
        assertThat(steepest)
                .isLessThanOrEqualTo(Math.tan(Math.toRadians(3)) + 1e-9)
                .isGreaterThan(0.01);
        assertThat(Wavefront.narrow(ALLOWED, 0.6).area()).isLessThan(0.6);
    }

    /** Handbook X10: a helix of 3 mm path diameter that falls 0.5 mm a turn leans 3.037°. */
    @ParameterizedTest
    @CsvSource({"1.5, 3.037, 0.5"})
    void helix(double radius, double rampDeg, double perTurn) {
        List<Feed> helix = Entry.helix(Vec2.ZERO, radius, 0, -5, Math.toRadians(rampDeg), 300);
        assertThat(helix).allMatch(f -> f instanceof Arc);
        assertThat(helix.size()).isEqualTo(2 + (int) Math.round(2 * 5 / perTurn));
        double first = helix.getFirst().from().z() - helix.getFirst().to().z();
        assertThat(2 * first).isLessThanOrEqualTo(perTurn * 1.0002);
        assertThat(helix.getLast().from().z()).isEqualTo(-5);
    }

    /** What a 6 mm cutter leaves in corners of 4 − 3: nothing; of a sharp rectangle: four corners, cleared by a 2 mm cutter from the cleared side. */
    @Test
    void restFromAMask() {
        Region pocket = Region.rectangle(new Vec2(-15, -10), new Vec2(15, 10));
        Region big = Offset.by(pocket, -R), gone = big.offset(R, Region.Join.ROUND, 60);
        Region mask = pocket.difference(gone);
        // Handbook X2: each corner leaves 0.21460 r2
        assertThat(mask.area()).isCloseTo(4 * 0.2146 * 9, within(0.08));
        Region small = Offset.by(pocket, -1);
        RoughRules rules = new RoughRules(1, 0.3, Math.toRadians(3), 0, 2, 500, 200, 1500);
        LevelClearing rest = LevelClearing.rest(small, mask, -1, rules, null, Progress.SILENT);
        joined(rest.moves());
        EngagementMeter meter = new EngagementMeter(mask, 1);
        meter.follow(rest.moves(), -1);
        assertThat(meter.leftMm2()).isCloseTo(4 * 0.2146, within(0.08));
        assertThat(meter.quantileDeg(0.99)).isLessThan(110);
    }
}
