package shotwright.intake;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.jspecify.annotations.Nullable;
import shotwright.finding.Finding;
import shotwright.geom.Box3;
import shotwright.geom.Vec3;
import shotwright.measure.Tolerance;
import shotwright.mesh.MassProperties;
import shotwright.mesh.TriMesh;
import shotwright.part.Part;

/** Puts what a reader found into millimetres, measures it, and decides whether it is a part. */
final class Assembly {
    private final RawModel model;
    private final String fileName;
    private final long fileBytes;
    private final IntakeOptions options;
    private final ReadGuard guard;
    private final List<String> notes = new ArrayList<>();
    private final List<Finding> findings = new ArrayList<>();

    Assembly(RawModel model, String fileName, long fileBytes, IntakeOptions options, ReadGuard guard) {
        this.model = model;
        this.fileName = fileName;
        this.fileBytes = fileBytes;
        this.options = options;
        this.guard = guard;
        notes.addAll(model.notes());
        findings.addAll(model.findings());
    }

    IntakeResult result() {
        guard.at("measuring", 0.5);
        RawObject o = model.objects().getFirst();
        TriMesh raw = new TriMesh(o.xyz(), o.tri());
        Box3 rawBox = raw.vertexCount() == 0 ? null : raw.box();
        UnitRule.Taken unit = UnitRule.take(model.unit(), options.unit(), rawBox == null ? null : rawBox.size());
        findings.addAll(unit.findings());
        if (o.collapsed() > 0) notes.add("Dropped " + o.collapsed() + " collapsed facets.");
        double mm = unit.unit().mm();
        double[] p = Arrays.stream(o.xyz()).map(x -> x * mm).toArray();
        TriMesh mesh = new TriMesh(p, o.tri());
        MassProperties mass = raw.vertexCount() == 0 ? null : MassProperties.of(mesh);
        int open = unmatched(o.tri());
        if (open > 0) findings.add(Finding.stop("open-edges", "The surface has " + open + " open edges."));
        if (mass == null || !(mass.volumeMm3() > 0))
            findings.add(Finding.stop("no-volume", "The facets enclose no volume."));
        return new IntakeResult(part(mesh, mass, unit), facts(mesh, mass, unit, open), findings);
    }

    private @Nullable Part part(TriMesh mesh, @Nullable MassProperties mass, UnitRule.Taken unit) {
        boolean refused = findings.stream().anyMatch(f -> f.severity() == shotwright.finding.Severity.STOP);
        if (refused || mass == null) return null;
        int dot = fileName.lastIndexOf('.');
        String name = dot > 0 ? fileName.substring(0, dot) : fileName;
        return new Part(
                name,
                fileName,
                unit.unit(),
                mesh,
                mass,
                Tolerance.ofDiagonal(mass.box().diagonal()));
    }

    private IntakeFacts facts(TriMesh mesh, @Nullable MassProperties mass, UnitRule.Taken unit, int open) {
        double v = mass == null ? 0 : mass.volumeMm3(), a = mass == null ? 0 : mass.surfaceAreaMm2();
        Box3 box = mass == null ? null : mass.box();
        List<FoundBody> bodies = mass == null || box == null
                ? List.of()
                : List.of(new FoundBody(1, "", mesh.facetCount(), 0, v, new Box3(Vec3.ZERO, box.size())));
        return new IntakeFacts(
                fileName,
                model.format(),
                fileBytes,
                unit.unit(),
                unit.reason(),
                unit.readings(),
                bodies.size(),
                bodies,
                mesh.facetCount(),
                mesh.vertexCount(),
                open,
                0,
                0,
                v,
                a,
                box,
                notes);
    }

    private static int unmatched(int[] tri) {
        long[] keys = new long[tri.length];
        for (int i = 0; i < tri.length; i++) {
            int a = tri[i], b = tri[i % 3 == 2 ? i - 2 : i + 1];
            keys[i] = ((long) Math.min(a, b) << 32 | Math.max(a, b)) << 1 | (a < b ? 1 : 0);
        }
        Arrays.sort(keys);
        int n = 0, i = 0;
        while (i < keys.length) {
            long e = keys[i] >> 1;
            int balance = 0;
            for (; i < keys.length && keys[i] >> 1 == e; i++) balance += (keys[i] & 1) == 1 ? 1 : -1;
            n += Math.abs(balance);
        }
        return n;
    }
}
