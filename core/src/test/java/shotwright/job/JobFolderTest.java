package shotwright.job;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class JobFolderTest {
    @TempDir
    Path root = Path.of("");

    @Test
    void aWriterThatFailsLeavesTheOldFile() throws IOException {
        JobFolder folder = JobFolder.open(root);
        folder.writeText("halves/note.md", "old");
        assertThatThrownBy(() -> folder.write("halves/note.md", out -> {
                    out.write(new byte[100_000]);
                    throw new IOException("the disk is full");
                }))
                .isInstanceOf(JobException.class)
                .hasMessageContaining("the disk is full");
        assertThat(root.resolve("halves/note.md")).hasContent("old");
        try (var left = Files.list(root.resolve("halves"))) {
            assertThat(left).hasSize(1);
        }
    }

    @Test
    void whatAKilledRunLeftIsClearedAway() throws Exception {
        Process gone = new ProcessBuilder(
                        ProcessHandle.current().info().command().orElseThrow(), "-version")
                .redirectErrorStream(true)
                .start();
        gone.getInputStream().readAllBytes();
        gone.waitFor();
        Path halves = Files.createDirectories(root.resolve("halves"));
        Path left = Files.writeString(halves.resolve(".half-A.stl." + gone.pid() + ".part"), "half of it");
        Path another = Files.writeString(
                halves.resolve(".half-B.stl." + ProcessHandle.current().pid() + ".part"), "being written");
        Path theirs = Files.writeString(root.resolve("lid.part"), "a file of the owner's");
        JobFolder.open(root);
        assertThat(left).doesNotExist();
        assertThat(another).exists();
        assertThat(theirs).exists();
    }

    /** The folder a person stands in has no name of its own. */
    @Test
    void theFolderOneStandsInServes() {
        JobFolder here = JobFolder.open(Path.of("."));
        assertThat(here.path("halves/half-A.stl"))
                .isEqualTo(Path.of("halves/half-A.stl").toAbsolutePath());
        assertThatThrownBy(() -> here.path("../half-A.stl")).isInstanceOf(IllegalArgumentException.class);
    }

    @Test
    void namesStayInside() {
        JobFolder folder = JobFolder.open(root);
        assertThatThrownBy(() -> folder.path("../other")).isInstanceOf(IllegalArgumentException.class);
    }
}
