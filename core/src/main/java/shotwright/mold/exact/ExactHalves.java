package shotwright.mold.exact;

import java.util.ArrayList;
import java.util.Iterator;
import java.util.List;
import java.util.Locale;
import shotwright.brep.ExactBody;
import shotwright.brep.ExactEngine;
import shotwright.brep.ExactFailure;
import shotwright.brep.ExactShapes;
import shotwright.brep.Solid;
import shotwright.finding.Finding;
import shotwright.geom.Box3;
import shotwright.geom.Transform;
import shotwright.geom.Vec3;
import shotwright.layout.Block;
import shotwright.layout.Half;
import shotwright.layout.LayoutResult;
import shotwright.mesh.TriMesh;
import shotwright.mold.ConvexTool;
import shotwright.mold.CutOut;
import shotwright.mold.MoldHalf;
import shotwright.mold.MoldResult;
import shotwright.mold.RoundShape;
import shotwright.mold.Tools;
import shotwright.part.PulledPart;
import shotwright.progress.Progress;

/**
 * Makes the halves once more, from the part's exact faces. The parts are taken out of the block, the metal left is parted where the mesh halves
 * meet, and each piece goes to the half it lies in there. Feed, vents and holes are cut as true cylinders, cones and planes, and the pieces of a
 * half are joined. Every step is weighed.
 */
public final class ExactHalves {
    /** Largest balance error that is delivered, of the block. */
    public static final double BALANCE = 1e-6;

    /** More of a piece in the other half than this share of the part, and it was not parted where it should be. */
    private static final double MOST_OTHER = 1e-3;

    /** Largest difference from the mesh half that is delivered, of one part; chords of the mesh alone make a thousandth. */
    private static final double FROM_MESH = 5e-3;

    /** How near points of metal and cut-out may lie before they count as one; the first that serves is taken. */
    private static final double[] SAME_MM = {ExactShapes.SAME_MM, 1e-6, 1e-5};

    private final ExactShapes x;
    private final LayoutResult layout;
    private final MoldResult mesh;

    private ExactHalves(ExactShapes x, LayoutResult layout, MoldResult mesh) {
        this.x = x;
        this.layout = layout;
        this.mesh = mesh;
    }

    /**
     * Makes exact halves where that can be done; where not, a finding says why and the mesh halves stand.
     *
     * @param engine what works on exact solids
     * @param step the part's STEP file
     * @param part the part in the pulled frame, from that file
     * @param layout where everything is
     * @param mesh the mesh halves of the same layout
     */
    public static ExactMold make(
            ExactEngine engine, byte[] step, PulledPart part, LayoutResult layout, MoldResult mesh, Progress progress) {
        ExactBody exact = part.part().exact();
        if (exact == null) throw new IllegalArgumentException("part: it has no exact faces");
        Progress watch = (doing, s) -> progress.at("making the halves as exact solids", 0);
        try (ExactShapes x = new ExactShapes(engine, watch)) {
            return new ExactHalves(x, layout, mesh).make(step, exact.solid(), part);
        } catch (ExactFailure e) {
            return ExactMold.none(new byte[0], missing(String.valueOf(e.getMessage())));
        }
    }

    private static Finding missing(String why) {
        return Finding.watch(
                        "exact-halves-missing",
                        "The halves could not be made as exact solids, so there is no STEP of them. " + why)
                .remedy("Mill from the STL or 3MF halves; they are complete.");
    }

    private ExactMold make(byte[] step, int number, PulledPart pulled) throws ExactFailure {
        Solid inFile = x.readStep(step).solids().get(number);
        List<Solid> parts = new ArrayList<>();
        for (var cavity : layout.cavities()) {
            Transform t = pulled.toPulled().then(cavity.place());
            if (!t.isEven())
                return ExactMold.none(
                        new byte[0],
                        missing(
                                "The shrink differs from axis to axis; stretched so, cylinders and fillets are no longer"
                                        + " what they were, and a kernel could only stand in other faces for them."));
            parts.add(x.place(inFile, t));
        }
        byte[] partStep = x.writeStep("part as molded, shrink added", parts.subList(0, 1));
        List<Solid> metal = x.cut(List.of(x.block(block())), parts);
        double most = MOST_OTHER * pulled.part().mass().volumeMm3();
        Pieces pieces = Pieces.of(x, metal, meshes(pulled), block(), mesh, most);
        return finished(partStep, parts, pieces, Tools.of(layout, mesh.stepMm(), meshes(pulled)));
    }

    private List<TriMesh> meshes(PulledPart pulled) {
        return layout.cavities().stream()
                .map(c -> pulled.mesh().transform(c.place()))
                .toList();
    }

    private Box3 block() {
        Block b = layout.block();
        return new Box3(
                new Vec3(-b.widthMm() / 2, -b.heightMm() / 2, -b.thicknessBMm()),
                new Vec3(b.widthMm() / 2, b.heightMm() / 2, b.thicknessAMm()));
    }

    /** One solid from pieces that touch; specks that touch nothing are left out. */
    private Solid joined(List<Solid> pieces) throws ExactFailure {
        if (pieces.isEmpty()) throw new ExactFailure(ExactFailure.Why.REFUSED, "One half has no metal.");
        if (pieces.size() == 1) return pieces.getFirst();
        List<Solid> one = x.join(pieces);
        Solid largest = largest(one);
        Solid tidy = x.tidy(largest);
        return isSound(tidy) ? tidy : largest;
    }

    private boolean isSound(Solid s) throws ExactFailure {
        return x.check(s).isOneClosedSolid();
    }

    private Solid largest(List<Solid> pieces) throws ExactFailure {
        Solid best = pieces.getFirst();
        double most = -1;
        for (Solid s : pieces) {
            double v = x.volumeMm3(s);
            if (v > most) {
                most = v;
                best = s;
            }
        }
        return best;
    }

    private ExactMold finished(byte[] partStep, List<Solid> parts, Pieces pieces, List<ConvexTool> tools)
            throws ExactFailure {
        double before = pieces.volumeMm3(x), partsMm3 = x.volumeMm3(parts);
        double blockMm3 = block().volume(), balance = Math.abs(before + partsMm3 - blockMm3) / blockMm3;
        ExactHalf halfA = half(Half.A, pieces.a(), tools), halfB = half(Half.B, pieces.b(), tools);
        double cut = before - halfA.volumeMm3() - halfB.volumeMm3();
        ExactMold made = new ExactMold(halfA, halfB, partStep, balance, cut, List.of());
        List<String> wrong = wrong(made, partsMm3 / parts.size());
        return wrong.isEmpty() ? made : ExactMold.none(partStep, missing(String.join(" ", wrong)));
    }

    private ExactHalf half(Half half, List<Solid> bare, List<ConvexTool> tools) throws ExactFailure {
        ExactTools exact = new ExactTools(x);
        List<Solid> solids = new ArrayList<>();
        double flats = 0;
        double[] taken = takenMm3(tools);
        for (int i = 0; i < taken.length; i++) {
            ConvexTool t = tools.get(i);
            if (t.half() != half) continue;
            solids.add(exact.of(t));
            if (t.shape() instanceof RoundShape r) flats += taken[i] * r.overFlatsMm3() / r.volumeMm3();
        }
        MoldHalf same = half == Half.A ? mesh.a() : mesh.b();
        double expected = same.volumeMm3() - flats, near = FROM_MESH * mesh.partVolumeMm3();
        Solid cut = without(bare, solids, s -> Math.abs(x.volumeMm3(s) - expected) <= near);
        String name = "half " + half + (same.canOpen() ? "" : ", CANNOT OPEN");
        double volume = x.volumeMm3(cut);
        return new ExactHalf(half, x.check(cut), volume, volume - expected, x.writeStep(name, List.of(cut)));
    }

    /** What each tool took out of the mesh halves. Their cut-outs stand in the order of the tools; one that could not be cut is not among them. */
    private double[] takenMm3(List<ConvexTool> tools) {
        double[] taken = new double[tools.size()];
        Iterator<CutOut> made = mesh.cutOuts().iterator();
        CutOut next = made.hasNext() ? made.next() : null;
        for (int i = 0; i < taken.length && next != null; i++) {
            if (!next.name().equals(tools.get(i).name())) continue;
            taken[i] = next.measuredMm3();
            next = made.hasNext() ? made.next() : null;
        }
        return taken;
    }

    /** Something to ask of a solid. */
    @FunctionalInterface
    private interface Question {
        boolean isTrueOf(Solid s) throws ExactFailure;
    }

    /** The pieces of a half without their cut-outs, in one: taken out all at once, or where that fails one after the other. */
    private Solid without(List<Solid> bare, List<Solid> cutOuts, Question expected) throws ExactFailure {
        if (cutOuts.isEmpty()) return joined(bare);
        for (double same : SAME_MM) {
            List<Solid> left = x.cut(bare, cutOuts, same);
            Solid cut = joined(left);
            if (isSound(cut) && expected.isTrueOf(cut)) return cut;
            x.release(left);
        }
        List<Solid> left = bare;
        for (Solid c : cutOuts)
            for (double same : SAME_MM) {
                List<Solid> cut = x.cut(left, List.of(c), same);
                if (Pieces.areSound(x, cut)) {
                    left = cut;
                    break;
                }
                x.release(cut);
            }
        return joined(left);
    }

    /** What keeps the halves from being delivered, in sentences. */
    private static List<String> wrong(ExactMold m, double partMm3) {
        List<String> out = new ArrayList<>();
        if (m.balanceError() > BALANCE)
            out.add(String.format(Locale.ROOT, "Halves and parts miss the block by %.1e of it.", m.balanceError()));
        for (ExactHalf h : m.halves()) {
            if (!h.check().isOneClosedSolid())
                out.add(String.format(
                        Locale.ROOT,
                        "Half %s is not one closed sound solid (%d solids, %d open edges%s).",
                        h.half(),
                        h.check().solids(),
                        h.check().openEdges(),
                        h.check().valid() ? "" : ", faces that do not meet"));
            if (Math.abs(h.overMeshMm3()) > FROM_MESH * partMm3)
                out.add(String.format(
                        Locale.ROOT, "Half %s differs from the mesh half by %.1f mm³.", h.half(), h.overMeshMm3()));
        }
        return out;
    }
}
