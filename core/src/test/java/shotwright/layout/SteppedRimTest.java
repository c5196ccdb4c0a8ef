package shotwright.layout;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import shotwright.finding.Finding;
import shotwright.geom.Vec3;
import shotwright.mesh.SharedParts;
import shotwright.mesh.Solids;
import shotwright.mesh.TriMesh;
import shotwright.mold.Halves;
import shotwright.mold.MoldResult;
import shotwright.progress.Progress;

/** Gate and vents lie where the halves that are really cut meet on the plane. */
class SteppedRimTest {
    private static LayoutResult lay(LayoutInput in) {
        return Layout.lay(in, Progress.SILENT);
    }

    /** The metal of half B ends at the parting surface: its highest point over a place is looked for in the finished half. */
    private static double partingMm(MoldResult mold, Vec3 at) {
        var hit = shotwright.mesh.Bvh.of(mold.b().mesh()).firstHit(at.plus(new Vec3(0, 0, 200)), new Vec3(0, 0, -1));
        assertThat(hit).isNotNull();
        return hit == null ? Double.NaN : hit.point().z();
    }

    @ParameterizedTest
    @ValueSource(strings = {"gear_sector_lever.stl", "drafted_square_face_shell.stl"})
    void ventsOfRealPartsLieOnTheFlat(String name) {
        TriMesh mesh = SharedParts.read(name);
        LayoutInput in =
                Fixtures.input(mesh, Vec3.Z, Fixtures.ABS, Fixtures.grown(Fixtures.COLUMN), 1, LayoutWishes.NONE);
        LayoutResult r = lay(in);
        assertThat(r.findings()).extracting(Finding::code).contains("stepped-parting");
        assertThat(r.findings()).extracting(Finding::code).doesNotContain("no-level-place", "vents-on-step");
        assertThat(r.vents()).isNotEmpty();
        MoldResult mold = Halves.make(in.part(), r, List.of(), Progress.SILENT);
        for (Vent v : r.vents()) {
            // beside the vent's own cut, half way along its land
            Vec3 side = v.out().left().times(v.widthMm() / 2 + 0.3).atZ(0);
            Vec3 at = v.atMm().plus(v.out().times(v.landMm() / 2 + 0.1).atZ(0)).plus(side);
            assertThat(Math.abs(partingMm(mold, at))).as("vent at " + v.atMm()).isLessThan(0.03);
        }
    }

    /** The rim of this one rises and falls nearly all the way round. */
    @Test
    void aRimWithoutAFlatGetsItsVentsAndAWarning() {
        TriMesh mesh = SharedParts.read("panel_hinge_half.stl");
        LayoutResult r =
                lay(Fixtures.input(mesh, Vec3.Z, Fixtures.ABS, Fixtures.grown(Fixtures.COLUMN), 1, LayoutWishes.NONE));
        assertThat(r.vents()).isNotEmpty();
        assertThat(r.findings()).extracting(Finding::code).containsAnyOf("vents-on-step", "no-level-place");
    }

    @Test
    void aFlatRimIsLevelAllRound() {
        TriMesh plate = Solids.box(new Vec3(0, 0, 0), new Vec3(40, 24, 3));
        LayoutResult r = lay(Fixtures.input(plate, Vec3.Z, Fixtures.ABS, Fixtures.COLUMN, 1, LayoutWishes.NONE));
        assertThat(r.findings()).noneMatch(f -> f.code().equals("no-level-place"));
    }
}
