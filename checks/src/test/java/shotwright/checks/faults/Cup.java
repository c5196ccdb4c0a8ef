package shotwright.checks.faults;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import shotwright.brep.ExactEngine;
import shotwright.brep.ExactFailure;
import shotwright.brep.ExactShapes;
import shotwright.brep.Outline;
import shotwright.geom.Vec3;
import shotwright.progress.Progress;

/** A small drafted cup as a STEP file, to have trouble with. */
final class Cup {
    private Cup() {}

    static Path write(ExactEngine engine, Path folder) throws ExactFailure {
        Path file = folder.resolve("cup.step");
        try (ExactShapes x = new ExactShapes(engine, Progress.SILENT)) {
            Outline section = Outline.polygon(List.of(
                    new Vec3(0, 0, 6.5),
                    new Vec3(9.9, 0, 6.5),
                    new Vec3(10.2, 0, 0),
                    new Vec3(12, 0, 0),
                    new Vec3(11.7, 0, 8),
                    new Vec3(0, 0, 8)));
            Files.write(file, x.writeStep("cup", List.of(x.revolve(section, Vec3.ZERO, Vec3.Z))));
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        return file;
    }
}
