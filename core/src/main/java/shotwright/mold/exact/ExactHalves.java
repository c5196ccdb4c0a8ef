package shotwright.mold.exact;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import shotwright.brep.ExactBody;
import shotwright.brep.ExactEngine;
import shotwright.brep.ExactFailure;
import shotwright.brep.ExactShapes;
import shotwright.brep.Outline;
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
import shotwright.mold.MoldHalf;
import shotwright.mold.MoldResult;
import shotwright.mold.RoundShape;
import shotwright.mold.Tools;
import shotwright.part.PulledPart;
import shotwright.progress.Progress;

/**
 * Makes the halves once more, from the part's exact faces. The parts are taken out of the block, the metal left is parted at every height at
 * which the mesh halves meet flat, each piece goes to the half it lies in there, and the pieces of a half are joined. Feed, vents and holes are
 * then cut as true cylinders, cones and planes. Every step is weighed.
 */
public final class ExactHalves {
    /** Largest balance error that is delivered, of the block. */
    public static final double BALANCE = 1e-6;

    /** More of a piece in the other half than this share of the part, and the parting does not run level through it. */
    private static final double MOST_OTHER = 1e-3;

    /** Largest difference from the mesh half that is delivered, of one part; chords of the mesh alone make a thousandth. */
    private static final double FROM_MESH = 5e-3;

    private static final double AROUND_MM = 5;

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
        List<Solid> a = new ArrayList<>(), b = new ArrayList<>();
        Labels labels = new Labels(
                mesh,
                meshes(pulled).stream().map(TriMesh::box).reduce(Box3::join).orElseThrow());
        List<Double> levels = Levels.of(mesh);
        double stepMm = levels.stream().mapToDouble(Math::abs).max().orElse(0);
        for (Solid piece : pieces(parts, levels)) {
            Labels.Label l = labels.of(x, piece);
            if (l.otherMm3() > MOST_OTHER * pulled.part().mass().volumeMm3())
                return ExactMold.none(
                        partStep,
                        missing(
                                "The parting surface slopes from one height to another on this part; only level partings"
                                        + " and level shut-offs are cut exactly."));
            (l.inA() ? a : b).add(piece);
        }
        List<ConvexTool> tools = Tools.of(layout, stepMm, meshes(pulled));
        return finished(partStep, parts, joined(a), joined(b), tools);
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

    /** The metal around the parts, parted at every height at which the halves meet flat. */
    private List<Solid> pieces(List<Solid> parts, List<Double> levels) throws ExactFailure {
        Box3 block = block();
        List<Solid> metal = x.cut(List.of(x.block(block)), parts), split = x.split(metal, plates(block, levels));
        // where a plate meets faces of the part awkwardly pieces get lost; slabs taken out one by one keep them
        return Math.abs(volume(split) / volume(metal) - 1) < BALANCE ? split : slabs(metal, block, levels);
    }

    private double volume(List<Solid> solids) throws ExactFailure {
        double sum = 0;
        for (Solid s : solids) sum += x.measure(s).volumeMm3();
        return sum;
    }

    private List<Solid> slabs(List<Solid> metal, Box3 block, List<Double> levels) throws ExactFailure {
        List<Solid> out = new ArrayList<>();
        Vec3 around = new Vec3(AROUND_MM, AROUND_MM, 0);
        for (int k = 0; k <= levels.size(); k++) {
            double low = k == 0 ? block.min().z() - AROUND_MM : levels.get(k - 1);
            double high = k == levels.size() ? block.max().z() + AROUND_MM : levels.get(k);
            Vec3 from = block.min().minus(around), to = block.max().plus(around);
            Box3 slab = new Box3(new Vec3(from.x(), from.y(), low), new Vec3(to.x(), to.y(), high));
            out.addAll(x.common(metal, List.of(x.block(slab))));
        }
        return out;
    }

    private List<Solid> plates(Box3 block, List<Double> levels) throws ExactFailure {
        List<Solid> plates = new ArrayList<>();
        Vec3 low = block.min().minus(new Vec3(AROUND_MM, AROUND_MM, 0)),
                high = block.max().plus(new Vec3(AROUND_MM, AROUND_MM, 0));
        for (double z : levels)
            plates.add(x.plate(Outline.polygon(List.of(
                    new Vec3(low.x(), low.y(), z),
                    new Vec3(high.x(), low.y(), z),
                    new Vec3(high.x(), high.y(), z),
                    new Vec3(low.x(), high.y(), z)))));
        return plates;
    }

    /** One solid from pieces that touch; specks that touch nothing are left out. */
    private Solid joined(List<Solid> pieces) throws ExactFailure {
        if (pieces.isEmpty()) throw new ExactFailure(ExactFailure.Why.REFUSED, "One half has no metal.");
        List<Solid> one = pieces.size() == 1 ? pieces : x.fuse(pieces.subList(0, 1), pieces.subList(1, pieces.size()));
        Solid largest = largest(one);
        return pieces.size() == 1 ? largest : x.tidy(largest);
    }

    private Solid largest(List<Solid> pieces) throws ExactFailure {
        Solid best = pieces.getFirst();
        double most = -1;
        for (Solid s : pieces) {
            double v = x.measure(s).volumeMm3();
            if (v > most) {
                most = v;
                best = s;
            }
        }
        return best;
    }

    private ExactMold finished(byte[] partStep, List<Solid> parts, Solid a, Solid b, List<ConvexTool> tools)
            throws ExactFailure {
        double before = volume(List.of(a, b)), partsMm3 = volume(parts);
        double blockMm3 = block().volume(), balance = Math.abs(before + partsMm3 - blockMm3) / blockMm3;
        ExactHalf halfA = half(Half.A, a, tools), halfB = half(Half.B, b, tools);
        double cut = before - halfA.volumeMm3() - halfB.volumeMm3();
        ExactMold made = new ExactMold(halfA, halfB, partStep, balance, cut, List.of());
        List<String> wrong = wrong(made, partsMm3 / parts.size());
        return wrong.isEmpty() ? made : ExactMold.none(partStep, missing(String.join(" ", wrong)));
    }

    private ExactHalf half(Half half, Solid bare, List<ConvexTool> tools) throws ExactFailure {
        ExactTools exact = new ExactTools(x);
        List<Solid> solids = new ArrayList<>();
        double flats = 0;
        for (ConvexTool t : tools) {
            if (t.half() != half) continue;
            solids.add(exact.of(t));
            if (t.shape() instanceof RoundShape r) flats += r.overFlatsMm3() * t.closedFormMm3() / r.volumeMm3();
        }
        Solid cut = solids.isEmpty() ? bare : largest(x.cut(List.of(bare), solids));
        double volume = x.measure(cut).volumeMm3();
        MoldHalf same = half == Half.A ? mesh.a() : mesh.b();
        String name = "half " + half + (same.canOpen() ? "" : ", CANNOT OPEN");
        return new ExactHalf(
                half, x.check(cut), volume, volume + flats - same.volumeMm3(), x.writeStep(name, List.of(cut)));
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
