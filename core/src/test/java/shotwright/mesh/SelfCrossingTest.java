package shotwright.mesh;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.math.BigDecimal;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import shotwright.geom.Transform;
import shotwright.geom.Vec3;
import shotwright.progress.Progress;

class SelfCrossingTest {
    private static SelfCrossing of(TriMesh mesh) {
        return SelfCrossing.of(Bvh.of(mesh), Progress.SILENT);
    }

    @Test
    void solidsByThemselvesAreClean() {
        for (TriMesh m : new TriMesh[] {
            Solids.box(Vec3.ZERO, new Vec3(1, 2, 3)),
            Solids.sphere(Vec3.ZERO, 5, 4),
            Solids.washer(200, 10, 10, 9.9, 9.95, 0, 30),
            Solids.frustum(500, 3, 0, 0, 1e-3)
        }) {
            SelfCrossing s = of(m);
            assertThat(s.crossingCount()).isZero();
            assertThat(s.overlapCount()).isZero();
            assertThat(s.crosses()).isFalse();
        }
    }

    @Test
    void bodiesThroughEachOtherAreFoundWhereTheyCross() {
        TriMesh a = Solids.box(Vec3.ZERO, new Vec3(10, 10, 10));
        TriMesh b = Solids.box(new Vec3(4, 4, -5), new Vec3(6, 6, 15)).transform(Transform.turnZ(0.01));
        SelfCrossing s = of(Solids.together(a, b));
        assertThat(s.crosses()).isTrue();
        assertThat(s.overlapCount()).isZero();
        for (SelfCrossing.Place p : s.places()) {
            assertThat(p.facet()).isLessThan(12);
            assertThat(p.other()).isGreaterThanOrEqualTo(12);
            assertThat(Math.min(Math.abs(p.at().z()), Math.abs(p.at().z() - 10)))
                    .isLessThan(1e-9);
            assertThat(p.at().x()).isBetween(3.8, 6.2);
            assertThat(p.depth()).isGreaterThan(0.01);
        }
    }

    @Test
    void depthIsTheShiftThatPartsThem() {
        double[] xyz = {0, 0, 0, 10, 0, 0, 0, 10, 0, 2, 2, -0.3, 3, 2, 5, 2, 3, 5};
        SelfCrossing s =
                SelfCrossing.of(Bvh.of(new TriMesh(xyz, new int[] {0, 1, 2, 3, 4, 5})), 0.01, 5, Progress.SILENT);
        assertThat(s.places()).hasSize(1);
        assertThat(s.places().getFirst().depth()).isEqualTo(0.3, within(1e-12));
        assertThat(s.places().getFirst().at().distance(new Vec3(2, 2, 0))).isLessThan(0.1);
        assertThat(SelfCrossing.of(Bvh.of(new TriMesh(xyz, new int[] {0, 1, 2, 3, 4, 5})), 0.31, 5, Progress.SILENT)
                        .crosses())
                .isFalse();
    }

    @Test
    void facesLyingOnEachOtherAreCountedApart() {
        TriMesh a = Solids.box(Vec3.ZERO, new Vec3(10, 10, 10));
        SelfCrossing s = of(Solids.together(a, Solids.box(new Vec3(3, 3, 10), new Vec3(6, 6, 12))));
        assertThat(s.crosses()).isFalse();
        assertThat(s.overlapCount()).isPositive();
        assertThat(s.places().getFirst().inOnePlane()).isTrue();
        assertThat(of(Solids.together(a, a)).overlapCount()).isGreaterThanOrEqualTo(12);
        TriMesh side = Solids.box(new Vec3(10, 0, 10), new Vec3(20, 10, 20));
        assertThat(of(Solids.together(a, side)).overlapCount()).isZero();
    }

    /** A facet through another with which it shares a corner. */
    @Test
    void sharedCornerDoesNotHideACrossing() {
        double[] xyz = {0, 0, 0, 10, 0, 0, 0, 10, 0, 3, 3, -2, 3, 3, 2};
        SelfCrossing s = of(new TriMesh(xyz, new int[] {0, 1, 2, 0, 3, 4}));
        assertThat(s.crossingCount()).isEqualTo(1);
        double[] hinge = {0, 0, 0, 10, 0, 0, 0, 10, 0, 3, 3, -2, 3, 8, 1};
        assertThat(of(new TriMesh(hinge, new int[] {0, 1, 2, 1, 0, 4})).crosses())
                .isFalse();
    }

    @ParameterizedTest
    @ValueSource(ints = {20, 120, 400})
    void agreesWithExactArithmeticOnEveryPair(int facets) {
        Random random = new Random(facets);
        double[] xyz = new double[9 * facets];
        int[] tri = new int[3 * facets];
        for (int i = 0; i < xyz.length; i++) xyz[i] = random.nextDouble(-1, 1) + 4 * ((i / 9) * (i % 3 + 1) % 5);
        for (int i = 0; i < tri.length; i++) tri[i] = random.nextInt(12) == 0 ? i / 9 * 9 : i;
        TriMesh mesh = new TriMesh(xyz, tri);
        int exact = 0;
        for (int f = 0; f < facets; f++) for (int g = f + 1; g < facets; g++) if (Exact.cross(mesh, f, g)) exact++;
        SelfCrossing s = SelfCrossing.of(Bvh.of(mesh), 1e-12, 10, Progress.SILENT);
        assertThat(exact).isPositive();
        assertThat(s.crossingCount()).isEqualTo(exact);
    }

    /** Two facets cross when an edge of one runs strictly through the inside of the other, by decimal arithmetic without rounding. */
    private static final class Exact {
        static boolean cross(TriMesh m, int f, int g) {
            return area(m, f) && area(m, g) && (pierces(m, f, g) || pierces(m, g, f));
        }

        private static boolean area(TriMesh m, int f) {
            return m.corner(f, 0) != m.corner(f, 1)
                    && m.corner(f, 1) != m.corner(f, 2)
                    && m.corner(f, 2) != m.corner(f, 0);
        }

        private static boolean pierces(TriMesh m, int f, int g) {
            Vec3 a = m.cornerPoint(g, 0), b = m.cornerPoint(g, 1), c = m.cornerPoint(g, 2);
            for (int k = 0; k < 3; k++) {
                Vec3 p = m.cornerPoint(f, k), q = m.cornerPoint(f, (k + 1) % 3);
                if (side(a, b, c, p) * side(a, b, c, q) >= 0) continue;
                int u = side(p, q, a, b), v = side(p, q, b, c), w = side(p, q, c, a);
                if (u != 0 && u == v && v == w) return true;
            }
            return false;
        }

        private static int side(Vec3 a, Vec3 b, Vec3 c, Vec3 d) {
            BigDecimal[] u = from(a, b), v = from(a, c), w = from(a, d);
            BigDecimal det = u[0].multiply(minor(v, w, 1, 2))
                    .subtract(u[1].multiply(minor(v, w, 0, 2)))
                    .add(u[2].multiply(minor(v, w, 0, 1)));
            return det.signum();
        }

        private static BigDecimal minor(BigDecimal[] v, BigDecimal[] w, int i, int j) {
            return v[i].multiply(w[j]).subtract(v[j].multiply(w[i]));
        }

        private static BigDecimal[] from(Vec3 a, Vec3 b) {
            return new BigDecimal[] {
                new BigDecimal(b.x()).subtract(new BigDecimal(a.x())),
                new BigDecimal(b.y()).subtract(new BigDecimal(a.y())),
                new BigDecimal(b.z()).subtract(new BigDecimal(a.z()))
            };
        }
    }

    @Test
    void findsTheTubeThatCrossesItself() {
        SelfCrossing s = of(SharedParts.read("self_intersecting_real_tube.obj"));
        assertThat(s.crossingCount()).isGreaterThan(100);
        assertThat(s.places()).hasSize(100);
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "drafted_sensor_shell_bottom.stl",
                "drafted_square_face_shell.stl",
                "relay_box_bottom_shell.stl",
                "wallet_case_front.stl",
                "lobed_thumb_nut.stl",
                "ear_speculum_cone.stl",
                "hobbed_gear_with_hub.stl",
                "gear_sector_lever.stl",
                "battery_cup_side_openings.obj",
                "panel_hinge_half.stl",
                "sculpted_keycap_wide.stl",
                "grip_trigger_lever_fine.stl"
            })
    void goodPartsDoNotCross(String name) {
        assertThat(of(SharedParts.read(name)).places()).allMatch(SelfCrossing.Place::inOnePlane);
    }

    @Test
    void stopsWhenAskedAndRefusesNonsense() {
        Bvh bvh = Bvh.of(Solids.sphere(Vec3.ZERO, 1, 3));
        assertThatThrownBy(() -> SelfCrossing.of(bvh, (doing, share) -> {
                    throw new Progress.Cancelled();
                }))
                .isInstanceOf(Progress.Cancelled.class);
        assertThatThrownBy(() -> SelfCrossing.of(bvh, 0, 1, Progress.SILENT)).hasMessageContaining("tolerance");
    }
}
