package shotwright.checks.demo;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import shotwright.brep.ExactEngine;
import shotwright.brep.ExactFailure;
import shotwright.brep.ExactShapes;
import shotwright.demo.TensionKnob;
import shotwright.demo.TensionKnobSolid;
import shotwright.kernel.WorkerEngine;
import shotwright.progress.Progress;

/** Writes the demo part's files into a folder: {@code DrawDemoPart FOLDER}. */
public final class DrawDemoPart {
    private DrawDemoPart() {}

    public static void main(String[] args) throws IOException, ExactFailure {
        Path folder = Path.of(args[0]);
        Files.write(folder.resolve("tension-knob.stl"), TensionKnob.stl());
        try (WorkerEngine engine = new WorkerEngine(WorkerEngine.Allowance.USUAL)) {
            Files.write(folder.resolve("tension-knob.step"), step(engine));
        }
    }

    /** The knob with its true faces as a STEP file, byte for byte the one in {@code examples/parts}. */
    static byte[] step(ExactEngine engine) throws ExactFailure {
        try (ExactShapes x = new ExactShapes(engine, Progress.SILENT)) {
            return x.writeStep(TensionKnobSolid.NAME, List.of(TensionKnobSolid.of(x)));
        }
    }
}
