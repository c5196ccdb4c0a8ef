package shotwright.region;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Test;
import shotwright.geom.Vec2;

class RegionTest {
    private static final Region PLATE = Region.rectangle(Vec2.ZERO, new Vec2(40, 20));
    private static final Region HOLED = PLATE.difference(Region.rectangle(new Vec2(10, 5), new Vec2(20, 15)));

    @Test
    void areaCentroidAndBorders() {
        assertThat(HOLED.area()).isEqualTo(700);
        assertThat(HOLED.perimeter()).isEqualTo(160);
        assertThat(HOLED.centroid().x()).isEqualTo((800 * 20 - 100 * 15) / 700.0, within(1e-12));
        assertThat(HOLED.centroid().y()).isEqualTo(10, within(1e-12));
        assertThat(HOLED.min()).isEqualTo(Vec2.ZERO);
        assertThat(HOLED.max()).isEqualTo(new Vec2(40, 20));
    }

    @Test
    void ringsRunCounterClockwiseOutsideAndClockwiseInside() {
        assertThat(HOLED.exteriors()).hasSize(1);
        assertThat(HOLED.holes()).hasSize(1);
        assertThat(twiceArea(HOLED.exteriors().getFirst())).isEqualTo(1600);
        assertThat(twiceArea(HOLED.holes().getFirst())).isEqualTo(-200);
    }

    private static double twiceArea(List<Vec2> ring) {
        double sum = 0;
        for (int i = 0; i < ring.size(); i++) sum += ring.get(i).cross(ring.get((i + 1) % ring.size()));
        return sum;
    }

    @Test
    void setOperations() {
        Region shifted = PLATE.move(new Vec2(30, 10));
        assertThat(PLATE.union(shifted).area()).isEqualTo(1600 - 100);
        assertThat(PLATE.intersection(shifted).area()).isEqualTo(100);
        assertThat(PLATE.intersection(PLATE.move(new Vec2(40, 0))).isEmpty()).isTrue();
        assertThat(PLATE.touches(PLATE.move(new Vec2(40, 0)))).isTrue();
        assertThat(Region.unionOf(List.of(PLATE, shifted, PLATE.move(new Vec2(100, 0))))
                        .pieces())
                .hasSize(2);
        assertThat(Region.unionOf(List.of()).isEmpty()).isTrue();
        assertThat(PLATE.contains(HOLED)).isTrue();
        assertThat(HOLED.contains(PLATE)).isFalse();
    }

    @Test
    void offsetRoundMitredAndInward() {
        assertThat(PLATE.offset(2, Region.Join.MITRE, 8).area()).isEqualTo(44 * 24, within(1e-9));
        double corner = 32 * Math.sin(Math.PI / 32) * 4 / 2 * 2;
        assertThat(PLATE.offset(2).area()).isEqualTo(800 + 240 + corner, within(0.01));
        assertThat(PLATE.offset(-2).area()).isEqualTo(36 * 16, within(1e-9));
        assertThat(PLATE.offset(-11).isEmpty()).isTrue();
        assertThat(HOLED.offset(5.1).holes()).isEmpty();
    }

    @Test
    void pointsAndDistances() {
        assertThat(HOLED.contains(new Vec2(5, 5))).isTrue();
        assertThat(HOLED.contains(new Vec2(15, 10))).isFalse();
        assertThat(HOLED.contains(new Vec2(40, 20))).isTrue();
        assertThat(HOLED.distance(new Vec2(15, 10))).isEqualTo(5);
        assertThat(HOLED.distance(new Vec2(5, 5))).isZero();
        assertThat(HOLED.borderDistance(new Vec2(5, 6))).isEqualTo(5);
        assertThat(PLATE.distance(PLATE.move(new Vec2(43, 24)))).isEqualTo(5);
        assertThat(Region.EMPTY.distance(Vec2.ZERO)).isInfinite();
        assertThat(Region.EMPTY.contains(Vec2.ZERO)).isFalse();
    }

    @Test
    void turnedAndMoved() {
        Region turned = PLATE.place(Math.PI / 2, new Vec2(100, 0));
        assertThat(turned.centroid().x()).isEqualTo(90, within(1e-12));
        assertThat(turned.centroid().y()).isEqualTo(20, within(1e-12));
        assertThat(turned.convexHull().area()).isEqualTo(800, within(1e-9));
        assertThat(Region.disc(Vec2.ZERO, 3, 360).area()).isEqualTo(Math.PI * 9, within(0.002));
        assertThat(Region.disc(Vec2.ZERO, 3, 360).simplify(0.1).exteriors().getFirst())
                .hasSizeLessThan(40);
    }

    @Test
    void refusesWhatHasNoExtent() {
        assertThatThrownBy(Region.EMPTY::centroid).hasMessageContaining("empty");
        assertThatThrownBy(Region.EMPTY::min).hasMessageContaining("empty");
        assertThatThrownBy(() -> Region.of(List.of(Vec2.ZERO, new Vec2(1, 0)))).hasMessageContaining("2 points");
    }
}
