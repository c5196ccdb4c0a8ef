package shotwright.mold;

import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import shotwright.finding.Finding;
import shotwright.geom.Plane;
import shotwright.layout.Half;
import shotwright.mesh.complex.Complex;
import shotwright.mesh.complex.SplitFailure;
import shotwright.mesh.pull.Parting;
import shotwright.progress.Progress;

/**
 * Takes the cut-outs out of the parted block one after the other. A cut is tried on a copy; when its faces meet the metal's so awkwardly that the cut
 * cannot be spanned, it is tried again a hair larger, and when that fails it is left out and said.
 */
final class Cutting {
    private static final double[] HAIRS = {0, 3e-6, -5e-6, 1.1e-5};
    private static final double EXACT = 1e-9;

    private final int a;
    private final int b;
    private Complex complex;
    private final List<CutOut> cutOuts = new ArrayList<>();
    private final List<ExactCircle> circles = new ArrayList<>();
    private final List<Finding> findings = new ArrayList<>();

    Cutting(Parting parting) {
        complex = parting.complex();
        a = parting.a();
        b = parting.b();
    }

    Complex complex() {
        return complex;
    }

    List<CutOut> cutOuts() {
        return cutOuts;
    }

    List<ExactCircle> circles() {
        return circles;
    }

    List<Finding> findings() {
        return findings;
    }

    void cut(List<ConvexTool> tools, Progress progress) {
        for (int i = 0; i < tools.size(); i++) {
            ConvexTool t = tools.get(i);
            progress.at("cutting " + t.name(), (double) i / tools.size());
            Double measured = tryCut(t);
            if (measured == null) {
                findings.add(Finding.stop(
                                "cut-out-missing",
                                "The cut-out \"" + t.name() + "\" could not be taken out of half " + t.half()
                                        + "; the half is delivered without it.")
                        .at(t.around().centre())
                        .remedy("Move or resize it by a tenth of a millimetre and make the halves again."));
                continue;
            }
            boolean trimmed = Math.abs(measured - t.closedFormMm3()) > EXACT * t.closedFormMm3();
            cutOuts.add(new CutOut(t.name(), measured, t.closedFormMm3(), trimmed));
            circles.addAll(t.circles());
        }
    }

    private @Nullable Double tryCut(ConvexTool t) {
        for (int i = 0; i < HAIRS.length; i++) {
            double hair = HAIRS[i];
            Complex trial = complex.copy();
            int cell = trial.newCell(t.kind());
            try {
                trial.cut(
                        t.half() == Half.A ? a : b,
                        larger(t.planes(), hair * complex.grain().diagonal()),
                        t.around().grow(0.037 * i),
                        cell);
            } catch (SplitFailure awkward) {
                continue;
            }
            complex = trial;
            return trial.volume(cell);
        }
        return null;
    }

    private static List<Plane> larger(List<Plane> planes, double by) {
        return planes.stream().map(p -> new Plane(p.normal(), p.offset() + by)).toList();
    }
}
