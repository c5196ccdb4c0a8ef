package shotwright.intake;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.stream.IntStream;
import org.jspecify.annotations.Nullable;
import shotwright.brep.ExactBody;
import shotwright.brep.ExactMass;
import shotwright.finding.Finding;
import shotwright.finding.Severity;
import shotwright.geom.Box3;
import shotwright.geom.Vec3;
import shotwright.measure.LengthUnit;
import shotwright.measure.Source;
import shotwright.measure.Tolerance;
import shotwright.mesh.Edges;
import shotwright.mesh.MassProperties;
import shotwright.mesh.TriMesh;
import shotwright.part.Part;

/** Puts what a reader found into millimetres, mends what may be mended, sorts the bodies, and lets one of them through the gate. */
final class Assembly {
    private static final int MOST_LISTED = 100;
    private static final int MOST_NAMED = 12;

    private final RawModel model;
    private final long fileBytes;
    private final IntakeOptions options;
    private final ReadGuard guard;
    private final List<String> notes = new ArrayList<>();
    private final List<Finding> findings = new ArrayList<>();
    private @Nullable Edges partedAt;

    Assembly(RawModel model, long fileBytes, IntakeOptions options, ReadGuard guard) {
        this.model = model;
        this.fileBytes = fileBytes;
        this.options = options;
        this.guard = guard;
        notes.addAll(model.notes());
        findings.addAll(model.findings());
    }

    IntakeResult result() {
        guard.at("measuring", 0.5);
        countNotes();
        Box3 rawBox = rawBox();
        UnitRule.Taken unit = UnitRule.take(model.unit(), options.unit(), rawBox == null ? null : rawBox.size());
        findings.addAll(unit.findings());
        Solids all = new Solids(model.objects(), unit.unit(), notes);
        TriMesh mesh = mended(all.mesh());
        Edges edges = Edges.of(mesh);
        TriMesh parted = FanSplit.of(mesh, edges);
        if (parted != null) {
            partedAt = edges;
            mesh = parted;
        }
        Shells shells = Shells.of(parted == null ? edges : Edges.of(parted));
        List<Shells.Body> bodies = shells.bodies(guard);
        List<FoundBody> list = list(bodies, shells, all);
        Part part = part(mesh, bodies, list, shells, all, unit.unit());
        return new IntakeResult(part, facts(mesh, edges, unit, bodies.size(), list), findings);
    }

    private void countNotes() {
        long joined = 0;
        int collapsed = 0, unusable = 0;
        String first = null;
        for (RawObject o : model.objects()) {
            if (!model.format().startsWith("STL")) joined += o.joined();
            collapsed += o.collapsed();
            unusable += o.unusable();
            if (first == null) first = o.firstUnusable();
        }
        if (joined > 0) notes.add("Joined " + SolidGate.count(joined, "corner point") + " lying exactly on others.");
        if (collapsed > 0)
            notes.add("Dropped " + SolidGate.count(collapsed, "facet") + " with two corners at the same point.");
        if (unusable == 0) return;
        notes.add("Left out " + SolidGate.count(unusable, "facet") + " with a coordinate that is no usable number.");
        findings.add(Finding.stop(
                        "not-finite",
                        SolidGate.count(unusable, "facet") + " (the first: " + first
                                + ") have a coordinate that is not a number, infinite or absurdly large, so the shape is"
                                + " not known there.")
                .measured(unusable, 0, "facets", Source.computed("every coordinate must be a number"))
                .remedy("Ask the customer for a new export of the part."));
    }

    private @Nullable Box3 rawBox() {
        Box3 box = null;
        for (RawObject o : model.objects()) {
            if (o.tri().length == 0) continue;
            Box3 b = new TriMesh(o.xyz(), o.tri()).box();
            box = box == null ? b : box.join(b);
        }
        return box;
    }

    private TriMesh mended(TriMesh given) {
        TriMesh mesh = given;
        if (mesh.facetCount() == 0) return mesh;
        if (options.mends().contains(Mend.WINDING)) {
            Mending.Mended m = Mending.winding(mesh);
            if (m != null) mesh = told(m, "Turned %s so that neighbours agree on the outside.");
        }
        if (options.mends().contains(Mend.HOLES)) mesh = told(HoleFilling.fill(mesh), "Closed flat holes with %s.");
        if (options.mends().contains(Mend.FLIP))
            mesh = told(Mending.flip(mesh, guard), "Turned %s of a solid that was inside out.");
        return mesh;
    }

    /** Says so when the body taken is one of those that touched in a line. */
    private void touching(Edges edges, int shell, Shells shells) {
        int[] many = Arrays.stream(edges.nonManifold())
                .filter(e -> IntStream.range(0, edges.sideCount(e))
                        .anyMatch(i -> shells.shellOf(edges.facet(e, i)) == shell))
                .toArray();
        if (many.length == 0) return;
        Vec3 at = edges.midpoint(many[0]);
        boolean one = many.length == 1;
        notes.add(
                "Parted the facets at " + SolidGate.count(many.length, "edge") + " that more than two of them shared.");
        findings.add(Finding.watch(
                        "touching-walls",
                        "Walls touch in a line without thickness at " + SolidGate.count(many.length, "edge")
                                + (one ? ", " : ", the first ") + SolidGate.near(at)
                                + ". They were read as touching, not as joined; plastic will bridge or split there as it likes.")
                .at(at)
                .measured(many.length, 0, "edges", Source.computed("a wall that can be molded has a thickness"))
                .remedy("Ask the customer whether the walls are meant to be joined, and with what thickness."));
    }

    private TriMesh told(Mending.Mended m, String words) {
        if (m.facets() == 0) return m.mesh();
        String text = words.formatted(SolidGate.count(m.facets(), "facet"));
        notes.add(text);
        findings.add(Finding.watch("mended", text + " You asked for this; the file itself was not changed.")
                .remedy("Compare the picture of the part with what the customer sees."));
        return m.mesh();
    }

    private List<FoundBody> list(List<Shells.Body> bodies, Shells shells, Solids all) {
        List<FoundBody> out = new ArrayList<>();
        for (Shells.Body b : bodies.subList(0, Math.min(MOST_LISTED, bodies.size()))) {
            int facets = shells.facets(b.shell());
            for (int h : b.hollows()) facets += shells.facets(h);
            String name = all.nameOfFacet(shells.anyFacet(b.shell()));
            out.add(new FoundBody(
                    out.size() + 1, name, facets, b.hollows().size(), b.volumeMm3(), shells.box(b.shell())));
        }
        return out;
    }

    private @Nullable Part part(
            TriMesh mesh, List<Shells.Body> bodies, List<FoundBody> list, Shells shells, Solids all, LengthUnit unit) {
        int taken = options.body() == null ? 1 : options.body();
        if (bodies.size() > 1) severalBodies(list, bodies.size(), taken);
        if (!bodies.isEmpty() && taken > bodies.size()) {
            findings.add(Finding.stop(
                            "no-such-body",
                            "Body " + taken + " was asked for, but the file holds "
                                    + SolidGate.count(bodies.size(), "solid") + ".")
                    .remedy("Name a body from 1 to " + bodies.size() + "."));
            return null;
        }
        TriMesh body = bodies.isEmpty()
                ? mesh
                : bodies.size() == 1 && bodies.getFirst().hollows().isEmpty()
                        ? mesh
                        : shells.extract(List.of(bodies.get(taken - 1).shell()));
        if (!bodies.isEmpty()) hollows(bodies.get(taken - 1), shells, mesh);
        if (partedAt != null) touching(partedAt, bodies.get(taken - 1).shell(), shells);
        if (body.facetCount() > 0) farFromOrigin(body, unit);
        boolean refused = refused();
        findings.addAll(SolidGate.check(body, options.mends(), !refused, guard));
        if (refused()) return null;
        ExactBody exact = bodies.isEmpty()
                ? null
                : all.exactOfFacet(shells.anyFacet(bodies.get(taken - 1).shell()), body.facetCount());
        MassProperties mass = mass(body, exact);
        String file = guard.fileName();
        int dot = file.lastIndexOf('.');
        return new Part(
                dot > 0 ? file.substring(0, dot) : file,
                file,
                unit,
                body,
                mass,
                Tolerance.ofDiagonal(mass.box().diagonal()),
                exact);
    }

    /** From the exact faces where there are any; the box is that of the mesh, which the line works on. */
    private static MassProperties mass(TriMesh body, @Nullable ExactBody exact) {
        if (exact == null) return MassProperties.of(body);
        ExactMass m = exact.mass();
        return new MassProperties(m.volumeMm3(), m.areaMm2(), m.centroidMm(), body.box());
    }

    private boolean refused() {
        return findings.stream().anyMatch(f -> f.severity() == Severity.STOP);
    }

    private void severalBodies(List<FoundBody> list, int count, int taken) {
        StringBuilder all = new StringBuilder();
        for (FoundBody b : list.subList(0, Math.min(MOST_NAMED, list.size()))) {
            all.append(all.isEmpty() ? "" : "; ").append(b.number()).append(": ");
            if (!b.name().isEmpty()) all.append(b.name()).append(", ");
            all.append(UnitRule.size(b.boxMm().size()))
                    .append(", ")
                    .append(UnitRule.number(b.volumeMm3()))
                    .append(" mm³");
        }
        if (count > MOST_NAMED) all.append("; and ").append(count - MOST_NAMED).append(" smaller ones");
        String held = "The file holds " + count + " separate solids (" + all + ").";
        if (options.body() != null) {
            notes.add("Took body " + taken + " of " + count + ", as you asked.");
            return;
        }
        findings.add(Finding.ask(
                        "several-bodies",
                        "Which solid is to be molded? " + held + " One mold carries one part; the largest was taken.")
                .measured(
                        count, 1, "solids", Source.commonPractice("one part to a mold; family molds are not laid out"))
                .remedy("Choose a body by its number (--body N), or ask for an export of one part alone."));
    }

    /** A closed hollow cannot be formed by two plates; the part is worked out without it. */
    private void hollows(Shells.Body body, Shells shells, TriMesh mesh) {
        if (body.hollows().isEmpty()) return;
        double v = 0;
        for (int h : body.hollows()) v -= shells.volume(h);
        Vec3 at = mesh.cornerPoint(shells.anyFacet(body.hollows().getFirst()), 0);
        int n = body.hollows().size();
        notes.add("Filled " + SolidGate.count(n, "closed hollow") + " inside the part.");
        findings.add(Finding.ask(
                        "closed-hollow",
                        "Is the closed hollow meant? " + SolidGate.count(n, "hollow") + " of "
                                + UnitRule.number(v) + " mm³ lie" + (n == 1 ? "s" : "")
                                + " sealed inside the part, the first "
                                + SolidGate.near(at)
                                + ". No mold of two plates can form it; the part is worked out solid there.")
                .at(at)
                .measured(v, "mm³", Source.measured("volume of the hollows in the file"))
                .remedy("Fill the hollow in the design, or open it to one side along the pull."));
    }

    /** Single-precision numbers far from the origin step so coarsely that the shape is damaged before it arrives. */
    private void farFromOrigin(TriMesh body, LengthUnit unit) {
        if (!model.singlePrecision()) return;
        Box3 box = body.box();
        double far = 0;
        for (Vec3 p : List.of(box.min(), box.max()))
            far = Math.max(far, Math.max(Math.abs(p.x()), Math.max(Math.abs(p.y()), Math.abs(p.z()))));
        double step = Math.ulp((float) (far / unit.mm())) * unit.mm();
        double shop = Tolerance.ofDiagonal(Math.max(1e-9, box.diagonal())).shopMm();
        if (step <= shop) return;
        Severity s = step > 5 * shop ? Severity.STOP : Severity.WATCH;
        findings.add(Finding.of(
                        s,
                        "far-from-origin",
                        "The part lies " + UnitRule.length(far)
                                + " from the origin, where the numbers of this format step by " + UnitRule.length(step)
                                + "; sizes and walls are rounded to that step"
                                + (s == Severity.STOP ? " and the shape is lost." : "."))
                .at(box.centre())
                .measured(
                        step,
                        shop,
                        "mm",
                        Source.computed("spacing of single-precision numbers against the shop tolerance"))
                .remedy("Ask for an export with the part near the origin."));
    }

    private IntakeFacts facts(TriMesh mesh, Edges edges, UnitRule.Taken unit, int bodies, List<FoundBody> list) {
        MassProperties mass = mesh.facetCount() == 0 ? null : MassProperties.of(mesh);
        return new IntakeFacts(
                guard.fileName(),
                model.format(),
                fileBytes,
                unit.unit(),
                unit.reason(),
                unit.readings(),
                bodies,
                list,
                mesh.facetCount(),
                mesh.vertexCount(),
                edges.open().length,
                edges.nonManifold().length,
                edges.misWound().length,
                mass == null ? 0 : mass.volumeMm3(),
                mass == null ? 0 : mass.surfaceAreaMm2(),
                mass == null ? null : mass.box(),
                notes);
    }
}
