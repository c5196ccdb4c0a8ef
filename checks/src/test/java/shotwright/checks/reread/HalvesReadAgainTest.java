package shotwright.checks.reread;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.Objects;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import shotwright.checks.Repository;
import shotwright.geom.Vec3;
import shotwright.job.JobCard;
import shotwright.job.Line;
import shotwright.job.Shop;
import shotwright.job.Station;
import shotwright.mold.MoldHalf;
import shotwright.mold.MoldResult;
import shotwright.mold.export.Rounded;
import shotwright.mold.export.StlFile;
import shotwright.progress.Progress;

/** Exported halves read again by ADMESH, a program of others. */
class HalvesReadAgainTest {
    /**
     * ADMESH holds areas and the running sum in single precision: every sum rounds by up to 2⁻²⁴ = 6e-8 of it, some 10 000 facets at random by
     * √10 000 times that, 6e-6; three times as much is allowed.
     */
    private static final double SINGLE_PRECISION = 2e-5;

    @TempDir
    private Path folder;

    private void readAgain(Path part) throws IOException {
        MoldResult mold = Objects.requireNonNull(new Line(Shop.standard())
                .run(part, JobCard.empty(), Station.HALVES, null, Progress.SILENT)
                .mold());
        Vec3 corner = mold.a().mesh().box().join(mold.b().mesh().box()).min();
        for (MoldHalf h : List.of(mold.a(), mold.b())) {
            Path file = folder.resolve("half-" + h.half() + ".stl");
            Rounded written = StlFile.write(file, h.mesh(), "half " + h.half(), corner, Progress.SILENT);
            Admesh read = Admesh.of(file);
            assertThat(read.facets()).isEqualTo(written.mesh().facetCount());
            assertThat(read.disconnected()).as("facets without a neighbour").isZero();
            assertThat(read.mended()).as("facets or edges to mend").isZero();
            assertThat(read.parts()).as("connected pieces").isEqualTo(1);
            assertThat(read.volumeMm3()).isEqualTo(h.volumeMm3(), within(SINGLE_PRECISION * h.volumeMm3()));
        }
    }

    @Test
    void halvesOfTheDemoPart() throws IOException {
        readAgain(Repository.root().resolve("examples/parts/tension-knob.stl"));
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "button_pair_bar.stl",
                "drafted_sensor_shell_bottom.stl",
                "relay_box_bottom_shell.stl",
                "ear_speculum_cone.stl",
                "rail_snap_clip.stl",
                "panel_hinge_half.stl"
            })
    void halvesOfRealParts(String name) throws IOException {
        readAgain(Repository.sharedPart(name));
    }
}
