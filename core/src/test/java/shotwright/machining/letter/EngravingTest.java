package shotwright.machining.letter;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import shotwright.cutter.CutterProfile;
import shotwright.geom.Vec2;
import shotwright.geom.Vec3;
import shotwright.machining.contact.EdgeContact;
import shotwright.region.Region;

class EngravingTest {
    private static final double TIP = 0.1;
    private static final CutterProfile V60 = CutterProfile.tapered(TIP / 2, Math.toRadians(30), 1.5);

    private static Region box(double x0, double y0, double x1, double y1) {
        return Region.rectangle(new Vec2(x0, y0), new Vec2(x1, y1));
    }

    /** E, O and A of 3 mm with strokes of about 0.45 mm, drawn for this test. */
    static Stream<Region> letters() {
        Region e = box(0, 0, 0.45, 3)
                .union(box(0, 0, 1.8, 0.45))
                .union(box(0, 1.28, 1.5, 1.72))
                .union(box(0, 2.55, 1.8, 3));
        Region o = Region.disc(new Vec2(1.5, 1.5), 1.5, 120).difference(Region.disc(new Vec2(1.5, 1.5), 1.05, 120));
        Region a = Region.of(List.of(
                        new Vec2(0, 0),
                        new Vec2(0.48, 0),
                        new Vec2(1.35, 2.3),
                        new Vec2(2.22, 0),
                        new Vec2(2.7, 0),
                        new Vec2(1.59, 3),
                        new Vec2(1.11, 3)))
                .union(Region.of(
                        List.of(new Vec2(0.7, 0.75), new Vec2(2.0, 0.75), new Vec2(1.84, 1.2), new Vec2(0.86, 1.2))));
        return Stream.of(e, o, a);
    }

    /** Machining handbook: a stroke 0.6 wide, 60° included, tip 0.1: 0.4330 deep along its middle. */
    @Test
    void depthOfAStroke() {
        List<List<Vec3>> paths = Engraving.paths(box(0, 0, 5, 0.6), V60, 1);
        double deepest =
                paths.stream().flatMap(List::stream).mapToDouble(Vec3::z).min().orElse(0);
        assertThat(deepest).isCloseTo(-0.4330, within(5e-5));
        // the middle line reaches from where the corners' bisectors meet, 0.3 from the ends
        assertThat(paths.stream()
                        .flatMap(List::stream)
                        .filter(p -> p.z() < -0.432)
                        .mapToDouble(Vec3::x)
                        .min()
                        .orElse(9))
                .isCloseTo(0.3, within(0.02));
        assertThat(Engraving.paths(box(0, 0, 5, 0.6), V60, 0.2).stream()
                        .flatMap(List::stream)
                        .mapToDouble(Vec3::z)
                        .min()
                        .orElse(0))
                .isEqualTo(-0.2);
        assertThatThrownBy(() -> Engraving.paths(box(0, 0, 5, 0.6), CutterProfile.flat(1), 1))
                .hasMessageContaining("engraver");
    }

    /**
     * On a grid of 0.01 mm, against paths measured before: nothing is cut more than 0.012 mm outside the letter, nothing missed more than
     * 0.012 mm inside but for the width of the tip in corners; 97 % and more of the letter is cut.
     */
    @ParameterizedTest
    @MethodSource("letters")
    void lettersAreCutAndNothingElse(Region letter) {
        List<List<Vec3>> paths = Engraving.paths(letter, V60, 1.2);
        List<Vec3[]> pieces = new ArrayList<>();
        for (List<Vec3> p : paths) for (int i = 1; i < p.size(); i++) pieces.add(new Vec3[] {p.get(i - 1), p.get(i)});
        Vec2 lo = letter.min(), hi = letter.max();
        double cell = 0.01;
        int outside = 0, cutInside = 0, inside = 0;
        for (double x = lo.x() - 0.1; x < hi.x() + 0.1; x += cell)
            for (double y = lo.y() - 0.1; y < hi.y() + 0.1; y += cell) {
                boolean cut = false;
                for (Vec3[] s : pieces) {
                    if (Math.min(s[0].x(), s[1].x()) > x + 0.5 || Math.max(s[0].x(), s[1].x()) < x - 0.5) continue;
                    if (Math.min(s[0].y(), s[1].y()) > y + 0.5 || Math.max(s[0].y(), s[1].y()) < y - 0.5) continue;
                    if (EdgeContact.leftMm(V60, s[0].x(), s[0].y(), s[0].z(), s[1].x(), s[1].y(), s[1].z(), x, y)
                            < -1e-4) {
                        cut = true;
                        break;
                    }
                }
                boolean in = letter.contains(x, y);
                if (in) inside++;
                if (in && cut) cutInside++;
                if (!in && cut && letter.distance(new Vec2(x, y)) > 0.012) outside++;
            }
        assertThat(outside).isZero();
        assertThat(cutInside / (double) inside).isGreaterThan(0.97);
    }
}
