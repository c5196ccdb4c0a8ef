package shotwright.layout;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.data.Offset.offset;

import java.util.List;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import shotwright.cutter.CutterRack;
import shotwright.demo.TensionKnob;
import shotwright.finding.Finding;
import shotwright.finding.Severity;
import shotwright.geom.Box3;
import shotwright.geom.Vec2;
import shotwright.geom.Vec3;
import shotwright.mesh.Solids;
import shotwright.mesh.TriMesh;
import shotwright.press.Press;
import shotwright.press.PressRack;
import shotwright.progress.Progress;
import shotwright.region.Region;
import shotwright.resin.Resin;
import shotwright.resin.ResinRack;
import shotwright.stock.StockRack;

class LayoutTest {
    private static final TriMesh PLATE = Solids.box(new Vec3(0, 0, 0), new Vec3(40, 24, 3));

    private static LayoutResult sound(LayoutInput in) {
        LayoutResult r = Layout.lay(in, Progress.SILENT);
        Sound.check(in, r);
        return r;
    }

    private static LayoutInput on(TriMesh mesh, PressFace press, int cavities) {
        return Fixtures.input(mesh, Vec3.Z, Fixtures.ABS, press, cavities, LayoutWishes.NONE);
    }

    @ParameterizedTest
    @ValueSource(ints = {1, 2, 3, 4})
    void platesOnTheBenchPress(int cavities) {
        PressFace large = Fixtures.grown(Fixtures.BENCH);
        LayoutResult r = sound(on(PLATE, large, cavities));
        assertThat(r.cavities()).hasSize(cavities);
        assertThat(r.nozzleMm().y()).isEqualTo(r.block().heightMm() / 2);
        assertThat(r.nozzleMm().z()).isZero();
    }

    @ParameterizedTest
    @ValueSource(ints = {1, 2, 3, 6})
    void washersThroughTheBack(int cavities) {
        TriMesh washer = Solids.prism(Region.disc(Vec2.ZERO, 10, 64).difference(Region.disc(Vec2.ZERO, 4, 48)), 0, 3);
        LayoutResult r = sound(on(washer, Fixtures.grown(Fixtures.COLUMN), cavities));
        assertThat(r.nozzleMm().z()).isEqualTo(r.block().thicknessAMm());
        assertThat(r.feed().getFirst().to().widthMm())
                .isGreaterThan(r.feed().getFirst().from().widthMm());
    }

    @Test
    void theKnobSitsOnTheCoreOfB() {
        LayoutResult r = sound(on(TensionKnob.mesh(), Fixtures.BENCH, 1));
        assertThat(r.release().keepsPart()).isEqualTo(Half.B);
        assertThat(r.release().gripNB()).isGreaterThan(1.5 * r.release().gripNA());
        assertThat(r.gates().getFirst().half()).isEqualTo(Half.A);
        assertThat(r.parting().pulledZMm()).isCloseTo(0, offset(1e-6));
        // the core goes through the bore to its shut-off at 14 mm, larger by the shrink
        assertThat(r.block().riseBMm()).isCloseTo(14 / (1 - r.shrinkZ()), offset(1e-6));
        assertThat(sound(on(TensionKnob.mesh(), Fixtures.COLUMN, 2)).gates()).hasSize(2);
    }

    @Test
    void aPlateWithoutCoresLiesInBUnderAFlatLid() {
        LayoutResult r = sound(on(PLATE, Fixtures.BENCH, 1));
        assertThat(r.parting().pulledZMm()).isCloseTo(3, offset(0.02));
        assertThat(r.parting().alternatives()).isNotEmpty();
    }

    @Test
    void shrinkMakesTheCavityLarger() {
        LayoutResult r = sound(on(PLATE, Fixtures.BENCH, 1));
        double f = 1 / (1 - 0.0055);
        assertThat(r.cavities().getFirst().place().determinant()).isCloseTo(f * f * f, offset(1e-9));
        LayoutWishes w = new LayoutWishes(
                null, null, null, null, null, null, List.of(), List.of(), null, 0.01, 0.0, 0.0, null, null, null);
        LayoutResult x = sound(Fixtures.input(PLATE, Vec3.Z, Fixtures.ABS, Fixtures.BENCH, 1, w));
        assertThat(x.cavities().getFirst().place().determinant()).isCloseTo(1 / 0.99, offset(1e-9));
    }

    @Test
    void aWishedGateIsTakenAndJudged() {
        LayoutWishes w = LayoutWishes.NONE.gate(new Vec3(20, 0, 1.5), null, 2.0, 0.5);
        LayoutInput in = Fixtures.input(PLATE, Vec3.Z, Fixtures.ABS, Fixtures.BENCH, 1, w);
        LayoutResult r = sound(in);
        assertThat(r.gates().getFirst().widthMm()).isEqualTo(2.0);
        assertThat(r.gates().getFirst().depthMm()).isEqualTo(0.5);
        Vec3 back = r.cavities()
                .getFirst()
                .place()
                .inverse()
                .apply(r.gates().getFirst().atMm());
        assertThat(back.xy().distance(new Vec2(20, 0))).isLessThan(1.5);
        assertThat(r.findings()).anyMatch(f -> f.code().equals("gate-tight"));
    }

    @Test
    void gatesKeepOutOfClearAreas() {
        Box3 clear = new Box3(new Vec3(-1, -1, -1), new Vec3(41, 12, 5));
        LayoutWishes w = new LayoutWishes(
                null,
                null,
                null,
                null,
                null,
                null,
                List.of(clear),
                List.of(),
                null,
                null,
                null,
                null,
                null,
                null,
                null);
        LayoutResult r = sound(Fixtures.input(PLATE, Vec3.Z, Fixtures.ABS, Fixtures.BENCH, 1, w));
        Vec3 at = r.cavities()
                .getFirst()
                .place()
                .inverse()
                .apply(r.gates().getFirst().atMm());
        assertThat(at.y()).isGreaterThan(12);
    }

    @Test
    void directGateStandsOverTheMiddle() {
        LayoutWishes w = LayoutWishes.NONE.gate(null, Gate.Kind.DIRECT, null, null);
        LayoutResult r = sound(Fixtures.input(PLATE, Vec3.Z, Fixtures.ABS, Fixtures.COLUMN, 1, w));
        assertThat(r.gates().getFirst().kind()).isEqualTo(Gate.Kind.DIRECT);
        assertThat(r.nozzleMm().xy().length()).isLessThan(1);
    }

    @Test
    void tooManyCavitiesAreRefusedWithACure() {
        LayoutResult r = Layout.lay(on(PLATE, Fixtures.BENCH, 8), Progress.SILENT);
        Finding stop = r.findings().getFirst();
        assertThat(stop.severity()).isEqualTo(Severity.STOP);
        assertThat(stop.text()).contains("does not go in");
        assertThat(stop.remedy()).contains("cavities instead of 8");
        assertThat(r.cavities()).hasSize(8);
    }

    @Test
    void aFixedNozzleHeightSetsHalfB() {
        PressFace fixed = Fixtures.special(Fixtures.BENCH, OptionalDouble.of(19), false);
        assertThat(sound(on(PLATE, fixed, 1)).block().thicknessBMm()).isEqualTo(19);
        PressFace high = Fixtures.special(Fixtures.BENCH, OptionalDouble.of(45), false);
        LayoutResult packed = sound(on(PLATE, high, 1));
        assertThat(packed.block().thicknessBMm()).isLessThan(30);
        assertThat(packed.findings()).anyMatch(f -> f.code().equals("packing-plate"));
    }

    @Test
    void nylonVentsAreTooShallowForASmallMill() {
        LayoutResult r = sound(Fixtures.input(PLATE, Vec3.Z, Fixtures.NYLON, Fixtures.BENCH, 1, LayoutWishes.NONE));
        assertThat(r.vents().getFirst().depthMm()).isEqualTo(0.013);
        assertThat(r.findings()).anyMatch(f -> f.code().equals("vent-shallow"));
    }

    @Test
    void screwsHoldLooseHalvesAgainstTheMelt() {
        PressFace loose = Fixtures.special(Fixtures.BENCH, OptionalDouble.empty(), true);
        LayoutResult r = sound(on(PLATE, loose, 1));
        assertThat(r.screws()).hasSizeGreaterThanOrEqualTo(2);
    }

    @Test
    void everyResinAndPressOfTheRackIsUnderstood() {
        ShopRack shop = ShopRack.of(
                CutterRack.standard().all(),
                StockRack.standard().all(),
                StockRack.materials().all(),
                StockRack.dowels().all(),
                StockRack.screws().all());
        assertThat(shop.bars()).isNotEmpty();
        LayoutInput plain = on(PLATE, Fixtures.BENCH, 1);
        for (Resin resin : ResinRack.standard().all()) {
            Melt melt = Melt.of(resin);
            assertThat(melt.lowShrinkShare()).isBetween(0.0, 0.05);
            assertThat(melt.meltC()).isGreaterThan(melt.noFlowC());
        }
        for (Press press : PressRack.standard().all()) {
            PressFace face = PressFace.of(press);
            LayoutInput in = new LayoutInput(
                    plain.part(),
                    plain.wallMm(),
                    plain.freeLowMm(),
                    plain.freeHighMm(),
                    plain.bestZMm(),
                    Melt.of(ResinRack.standard().byId("abs")),
                    face,
                    shop,
                    1,
                    LayoutWishes.NONE);
            LayoutResult r = Layout.lay(in, Progress.SILENT);
            if (r.findings().stream().noneMatch(f -> f.severity() == Severity.STOP)) Sound.check(in, r);
            else assertThat(r.findings().getFirst().remedy()).isNotBlank();
        }
    }

    @Test
    void workCanBeStopped() {
        LayoutInput in = on(PLATE, Fixtures.BENCH, 1);
        assertThatThrownBy(() -> Layout.lay(in, (doing, share) -> {
                    if (share > 0.5) throw new Progress.Cancelled();
                }))
                .isInstanceOf(Progress.Cancelled.class);
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "drafted_sensor_shell_bottom.stl",
                "button_pair_bar.stl",
                "gear_sector_lever.stl",
                "side_push_button.stl",
                "hobbed_gear_with_hub.stl",
                "lobed_thumb_nut.stl"
            })
    void realPartsOnBothPresses(String name) {
        TriMesh mesh = shotwright.mesh.SharedParts.read(name);
        for (PressFace p : List.of(Fixtures.grown(Fixtures.BENCH), Fixtures.grown(Fixtures.COLUMN))) {
            for (int n = 1; n <= 2; n++) {
                LayoutInput in = on(mesh, p, n);
                if (in.plane()) sound(in);
                else
                    assertThat(Layout.lay(in, Progress.SILENT).findings())
                            .anyMatch(f -> f.code().equals("stepped-parting"));
            }
        }
    }
}
