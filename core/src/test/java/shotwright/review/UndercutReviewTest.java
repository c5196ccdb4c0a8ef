package shotwright.review;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Test;
import shotwright.finding.Finding;
import shotwright.finding.Severity;
import shotwright.geom.Vec2;
import shotwright.geom.Vec3;
import shotwright.mesh.SharedParts;
import shotwright.mesh.Solids;
import shotwright.mesh.TriMesh;
import shotwright.mold.SampleLayout;
import shotwright.part.PulledPart;
import shotwright.region.Region;

class UndercutReviewTest {
    private static List<Said<Undercut>> review(TriMesh mesh, Vec3 pull) {
        PulledPart part = SampleLayout.part("part", mesh, pull);
        return UndercutReview.review(part, MoldingLimits.ANY, FaceTable.none(part));
    }

    /** A slot in the side of a block, 16 deep and 10 long, with a lip of its own height over and under it. */
    private static TriMesh channel(double lowLip, double slot, double highLip) {
        double top = lowLip + slot + highLip;
        return Solids.prism(
                Region.of(List.of(
                        new Vec2(0, 0),
                        new Vec2(20, 0),
                        new Vec2(20, lowLip),
                        new Vec2(4, lowLip),
                        new Vec2(4, lowLip + slot),
                        new Vec2(20, lowLip + slot),
                        new Vec2(20, top),
                        new Vec2(0, top))),
                0,
                10);
    }

    /** Closed form: 16 × 4 × 10 of metal behind a lip of 16 × 2 × 10, or of 16 × 3 × 10 pulled the other way. */
    @Test
    void aSlotLocksItsMetalBehindTheLipItHasToPass() {
        for (Vec3 pull : List.of(Vec3.Y, Vec3.Y.negate())) {
            List<Said<Undercut>> said = review(channel(2, 4, 3), pull);
            assertThat(said).hasSize(1);
            Undercut u = said.getFirst().row();
            assertThat(u.hold()).isEqualTo(Undercut.Hold.LOCKS);
            assertThat(u.trappedMm3()).isEqualTo(640, within(5.0));
            boolean lowLip = (u.blocks() == Side.B) == (pull.y() > 0);
            assertThat(u.inTheWayMm3()).isEqualTo(lowLip ? 320 : 480, within(4.0));
            assertThat(u.at().distance(new Vec3(12, 4, 5))).isLessThan(0.1);
        }
    }

    /** Plastic in the way: a height map of the half at 0.1 mm less the exact half, worked out beforehand by another program: 3.84 ± 0.1 mm³. */
    @Test
    void aRealShellHasTwoSmallLedges() {
        List<Said<Undercut>> said = review(SharedParts.read("drafted_sensor_shell_bottom.stl"), Vec3.Z.negate());
        assertThat(said).hasSize(2);
        assertThat(said.stream().mapToDouble(s -> s.row().inTheWayMm3()).sum()).isEqualTo(3.84, within(0.2));
        for (Said<Undercut> s : said) assertThat(s.row().hold()).isEqualTo(Undercut.Hold.STRAINS_PART);
        assertThat(said).extracting(Said::finding).extracting(Finding::severity).containsOnly(Severity.ASK);
    }

    @Test
    void clipsCupsAndHingesAreLocked() {
        for (String part : List.of("rail_snap_clip.stl", "battery_cup_side_openings.obj", "panel_hinge_half.stl")) {
            List<Said<Undercut>> said = review(SharedParts.read(part), Vec3.Z);
            assertThat(said).as(part).extracting(s -> s.row().hold()).contains(Undercut.Hold.LOCKS);
        }
    }
}
