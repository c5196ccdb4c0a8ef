package shotwright.cutter;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

class CutterProfileTest {
    static Stream<Cutter> rack() {
        return CutterRack.standard().all().stream();
    }

    private static CutterProfile rackProfile(String id) {
        return CutterProfile.of(CutterRack.standard().byId(id));
    }

    /** Trade drill tables: point length of 118° is 0.300 D, of 135° 0.207 D, of a 90° spot 0.5 D. */
    @Test
    void pointLengths() {
        assertThat(CutterProfile.point(Math.toRadians(118), 0.5).endHeightMm()).isCloseTo(0.3004, within(5e-5));
        assertThat(CutterProfile.point(Math.toRadians(135), 0.5).endHeightMm()).isCloseTo(0.2071, within(5e-5));
        assertThat(CutterProfile.point(Math.toRadians(90), 0.5).endHeightMm()).isCloseTo(0.5, within(1e-12));
    }

    /** Closed form t + 2·d·tan(A/2): 30° included, tip 0.1, depth 0.2 leaves a line 0.2072 wide. */
    @Test
    void engraverWidth() {
        assertThat(2 * rackProfile("engraver-30deg-0.1").radiusAtMm(0.2)).isCloseTo(0.2072, within(5e-5));
    }

    /** Closed form of the tapered end mill: a degree on 10 mm adds 0.349 mm to the diameter. */
    @Test
    void taperAddsToDiameter() {
        CutterProfile taper = rackProfile("taper-1deg-tip1");
        assertThat(2 * taper.largestRadiusMm() - 1).isCloseTo(0.349, within(5e-4));
        assertThat(taper.endHeightMm()).isCloseTo(10, within(1e-9));
    }

    /** Closed form of the tangent point of a circle and a line: the arc meets the cone at r·cos a, height r·(1 − sin a). */
    @Test
    void taperedBallMeetsItsConeTangentially() {
        double a = Math.toRadians(2), r = 0.5;
        CutterProfile p = rackProfile("taper-ball-2deg-tip1");
        double join = r * Math.cos(a);
        assertThat(p.heightMm(join)).isCloseTo(r * (1 - Math.sin(a)), within(1e-9));
        assertThat(p.slope(join - 1e-9)).isCloseTo(1 / Math.tan(a), within(1e-3));
        assertThat(p.heightMm(join + 0.1)).isCloseTo(r * (1 - Math.sin(a)) + 0.1 / Math.tan(a), within(1e-9));
        assertThat(p.endHeightMm()).isCloseTo(10, within(1e-9));
    }

    /** Pythagoras on the circle: at half the radius of a ball the surface is r·(1 − √3/2) up; on a bull the same from where its arc starts. */
    @Test
    void ballAndBull() {
        assertThat(rackProfile("ball-6.0x25").heightMm(1.5)).isCloseTo(3 * (1 - Math.sqrt(3) / 2), within(1e-12));
        CutterProfile bull = rackProfile("bull-6.0r1x24");
        assertThat(bull.heightMm(2)).isZero();
        assertThat(bull.heightMm(2.5)).isCloseTo(1 - Math.sqrt(3) / 2, within(1e-12));
        assertThat(bull.endHeightMm()).isCloseTo(1, within(1e-12));
        assertThat(rackProfile("flat-6.0x18").endHeightMm()).isZero();
        assertThat(bull.heightMm(3.01)).isInfinite();
    }

    /** The definition of a convex function, at every pair of 60 places. */
    @ParameterizedTest
    @MethodSource("rack")
    void convexAndRising(Cutter cutter) {
        CutterProfile p = CutterProfile.of(cutter);
        double end = p.largestRadiusMm();
        for (int i = 0; i <= 60; i++)
            for (int j = i + 1; j <= 60; j++) {
                double a = end * i / 60, b = end * j / 60;
                assertThat(p.heightMm((a + b) / 2)).isLessThanOrEqualTo((p.heightMm(a) + p.heightMm(b)) / 2 + 1e-12);
                assertThat(p.heightMm(a)).isLessThanOrEqualTo(p.heightMm(b) + 1e-12);
                assertThat(p.slope(a)).isLessThanOrEqualTo(p.slope(b));
            }
    }

    /** radiusAt is the inverse of height: on the rising part both ways round, by definition. */
    @ParameterizedTest
    @MethodSource("rack")
    void radiusAndHeightAreInverse(Cutter cutter) {
        CutterProfile p = CutterProfile.of(cutter);
        for (int i = 0; i <= 200; i++) {
            double rho = p.flatRadiusMm() + (p.largestRadiusMm() - p.flatRadiusMm()) * i / 200;
            assertThat(p.radiusAtMm(p.heightMm(rho))).isCloseTo(rho, within(1e-7));
            double h = p.endHeightMm() * i / 200;
            assertThat(p.heightMm(p.radiusAtMm(h))).isCloseTo(h, within(1e-7));
        }
        assertThat(p.radiusAtMm(p.endHeightMm() + 1)).isEqualTo(p.largestRadiusMm());
    }

    /** The contact with a plane is where slope·ρ − g is greatest: against a search over 2000 places. */
    @ParameterizedTest
    @MethodSource("rack")
    void contactIsTheHighestPlace(Cutter cutter) {
        CutterProfile p = CutterProfile.of(cutter);
        for (double slope : new double[] {0, 0.01, 0.3, 1, 3, 11, 30, 57, 400}) {
            double rho = p.contactRadiusMm(slope), found = slope * rho - p.heightMm(rho), best = 0;
            for (int i = 0; i <= 2000; i++) {
                double r = p.largestRadiusMm() * i / 2000;
                best = Math.max(best, slope * r - p.heightMm(r));
            }
            assertThat(found).isGreaterThanOrEqualTo(best - 1e-9);
        }
    }

    /** Shrinking the cutter makes it lie inside: no lower anywhere; the flat loses just the amount. */
    @ParameterizedTest
    @MethodSource("rack")
    void aShrunkCutterLiesInside(Cutter cutter) {
        CutterProfile p = CutterProfile.of(cutter), q = p.widenedMm(-0.005);
        for (int i = 0; i <= 200; i++) {
            double rho = p.largestRadiusMm() * i / 200;
            assertThat(q.heightMm(rho)).isGreaterThanOrEqualTo(p.heightMm(rho) - 1e-12);
        }
        assertThat(q.largestRadiusMm()).isCloseTo(p.largestRadiusMm() - 0.005, within(1e-9));
    }

    @Test
    void nonsenseIsRefused() {
        assertThatThrownBy(() -> new CutterProfile(3, 1, 0, 3)).hasMessageContaining("beyond the largest radius");
        assertThatThrownBy(() -> new CutterProfile(1, 1, 0, 3)).hasMessageContaining("leave a gap");
        assertThatThrownBy(() -> new CutterProfile(1, 0, 2, 3)).hasMessageContaining("half angle");
        assertThatThrownBy(() -> CutterProfile.flat(0)).hasMessageContaining("not above zero");
        assertThatThrownBy(() -> CutterProfile.flat(1).radiusAtMm(-1)).hasMessageContaining("below the tip");
    }

    /** The stack is what the rack file says, without gaps, and the holder starts at the stickout. */
    @ParameterizedTest
    @MethodSource("rack")
    void theStackHasNoGaps(Cutter cutter) {
        double stickout = cutter.reachMm().value() + 2;
        MountedCutter m = new MountedCutter(cutter, stickout, Holder.ER16);
        double at = m.profile().endHeightMm();
        for (MountedCutter.Cylinder c : m.cylinders()) {
            assertThat(c.fromMm()).isCloseTo(at, within(1e-8));
            at = c.toMm();
        }
        assertThat(at).isInfinite();
        assertThat(m.widestBelowMm(stickout + 1))
                .isEqualTo(Math.max(14.5, m.profile().largestRadiusMm()));
        double below = Math.max(m.profile().largestRadiusMm(), cutter.shankMm().value() / 2);
        assertThat(m.widestBelowMm(stickout - 1)).isEqualTo(below);
    }

    @Test
    void aBallWithNeckByHeight() {
        Cutter ball = CutterRack.standard().byId("bull-6.0r1x24");
        MountedCutter m = new MountedCutter(ball, 26, Holder.ER11);
        List<MountedCutter.Cylinder> c = m.cylinders();
        assertThat(c)
                .containsExactly(
                        new MountedCutter.Cylinder(MountedCutter.Part.FLUTES, 1, 14, 3),
                        new MountedCutter.Cylinder(MountedCutter.Part.NECK, 14, 24, 2.96),
                        new MountedCutter.Cylinder(MountedCutter.Part.SHANK, 24, 26, 3),
                        new MountedCutter.Cylinder(MountedCutter.Part.HOLDER, 26, Double.POSITIVE_INFINITY, 10));
        assertThatThrownBy(() -> new MountedCutter(ball, 10, Holder.ER11)).hasMessageContaining("at least 14");
    }
}
