package shotwright.intake;

import java.nio.ByteBuffer;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import shotwright.brep.ExactBody;
import shotwright.brep.ExactEngine;
import shotwright.brep.ExactFailure;
import shotwright.brep.ExactMass;
import shotwright.brep.ExactShapes;
import shotwright.brep.FacedMesh;
import shotwright.brep.Solid;
import shotwright.brep.SolidCheck;
import shotwright.brep.StepShapes;
import shotwright.brep.exchange.Entity;
import shotwright.brep.exchange.ExchangeFault;
import shotwright.brep.exchange.ExchangeFile;
import shotwright.brep.exchange.Misfit;
import shotwright.brep.exchange.Products;
import shotwright.finding.Finding;
import shotwright.measure.LengthUnit;
import shotwright.measure.Source;
import shotwright.mesh.MassProperties;

/** Reads STEP (ISO 10303-21; AP203, AP214, AP242) through the engine for exact solids: true faces, and triangles over them for the line. */
final class StepReader {
    /** Chord height over the diagonal of the part. */
    private static final double DEFLECTION_SHARE = 2e-4;
    /** No finer than a file of printed digits, no coarser than a mill can follow. */
    private static final double FINEST_MM = 0.002, COARSEST_MM = 0.02;
    /** Turn between neighbouring chords, rad. */
    private static final double CHORD_TURN_RAD = 0.2;
    /** Coarser by this for the second weighing. */
    private static final double SECOND_DEFLECTION = 4;
    /** Largest difference between the mesh and the exact volume that is passed over in silence. */
    private static final double VOLUME_SHARE = 3e-3;

    private static final String NEW_EXPORT = "Ask for a new export of the STEP file";

    private final ReadGuard guard;
    private final ExchangeFile exchange;
    private final List<Finding> findings = new ArrayList<>();

    private StepReader(ReadGuard guard, ExchangeFile exchange) {
        this.guard = guard;
        this.exchange = exchange;
    }

    static RawModel read(ByteBuffer bytes, ReadGuard guard, ExactEngine engine) {
        byte[] file = new byte[bytes.remaining()];
        bytes.get(file);
        StepReader reader = new StepReader(guard, lookedThrough(file, guard));
        try (ExactShapes x = new ExactShapes(engine, reader::goOn)) {
            return reader.model(x, file);
        } catch (ExactFailure e) {
            String said = trimmed(String.valueOf(e.getMessage()));
            throw switch (e.why()) {
                case NO_ENGINE -> guard.fault("", said, "Export the part as STL, OBJ or 3MF");
                case ENDED ->
                    reader.fault(
                            said + ". What may have upset it: ",
                            "Read the file once more; if it ends again, ask for a new export of the STEP file");
                case REFUSED -> reader.fault("", NEW_EXPORT);
            };
        }
    }

    /** Looks the file through before the engine gets it, so that a broken one is refused with its line. */
    private static ExchangeFile lookedThrough(byte[] file, ReadGuard guard) {
        guard.at("looking the STEP file through", 0.02);
        try {
            ExchangeFile exchange = ExchangeFile.read(file);
            Optional<ExchangeFile.Dangling> lost = exchange.dangling();
            if (lost.isPresent()) {
                Entity from = lost.get().from();
                throw guard.fault(
                        "line " + from.line(),
                        "entity #" + from.number() + " refers to #" + lost.get().missing()
                                + ", which is not in the file",
                        NEW_EXPORT);
            }
            return exchange;
        } catch (ExchangeFault e) {
            throw guard.fault("line " + e.line(), String.valueOf(e.getMessage()), NEW_EXPORT);
        }
    }

    private void goOn(String doing, double share) {
        if (guard.isOverdue())
            throw fault(
                    "reading took longer than " + guard.limits().deadlineS() + " s and was stopped; likely ",
                    "Ask for a new export of the STEP file, or for STL or 3MF");
        guard.at("reading the STEP file", 0.1);
    }

    private static String trimmed(String sentence) {
        return sentence.endsWith(".") ? sentence.substring(0, sentence.length() - 1) : sentence;
    }

    /** A complaint at the entity that is the likeliest reason. */
    private IntakeException fault(String before, String remedy) {
        Optional<Misfit> misfit = Misfit.whyNoSolid(exchange);
        return guard.fault(
                misfit.map(m -> "line " + m.entity().line()).orElse(""),
                before + misfit.map(Misfit::text).orElse("the file holds no entity at all"),
                remedy);
    }

    private RawModel model(ExactShapes x, byte[] file) throws ExactFailure {
        Products products = Products.of(exchange);
        StepShapes shapes = x.readStep(file);
        if (shapes.solids().isEmpty()) {
            if (!products.externalFiles().isEmpty())
                throw guard.fault(
                        "",
                        "the STEP file holds no shape of its own; it points to other files: "
                                + String.join(", ", products.externalFiles()),
                        "Ask for those files, or for one export with everything in it");
            String instead = shapes.loose().isEmpty() ? "no shape at all" : "only loose surfaces";
            throw fault("the STEP file holds " + instead + "; ", "Ask for an export of the closed solid itself");
        }
        if (!shapes.loose().isEmpty()) loose(shapes.loose().size());
        List<RawObject> objects = new ArrayList<>();
        List<String> names = products.namesFor(shapes.solids().size());
        for (int i = 0; i < names.size(); i++)
            objects.add(object(x, shapes.solids().get(i), i, names.get(i)));
        return new RawModel("STEP", LengthUnit.MM, false, objects, List.of(), findings);
    }

    private void loose(int count) {
        findings.add(Finding.watch(
                        "loose-surfaces",
                        SolidGate.count(count, "loose surface")
                                + " lie beside the solids. They bound no plastic and were left out of volume, area and mold.")
                .remedy("Ask the customer whether anything is missing from the solid."));
    }

    private RawObject object(ExactShapes x, Solid solid, int number, String name) throws ExactFailure {
        guard.at("meshing the faces", 0.2);
        SolidCheck check = x.check(solid);
        double deflection = Math.clamp(x.reachMm(solid) * DEFLECTION_SHARE, FINEST_MM, COARSEST_MM);
        FacedMesh mesh = x.mesh(solid, deflection, CHORD_TURN_RAD);
        guard.facets(mesh.mesh().facetCount(), "");
        ExactMass mass = x.measure(solid);
        if (!(mass.volumeMm3() > 0) || Double.isInfinite(mass.volumeMm3()))
            throw fault("the faces of the STEP file bound no volume; likely ", NEW_EXPORT);
        FacedMesh coarse = x.mesh(solid, SECOND_DEFLECTION * deflection, CHORD_TURN_RAD);
        weigh(
                mass,
                MassProperties.of(mesh.mesh()).volumeMm3(),
                MassProperties.of(coarse.mesh()).volumeMm3());
        if (!check.valid()) notQuite();
        ExactBody exact = new ExactBody(number, mass, x.faces(solid), mesh.faceOf(), mesh.normals());
        return new RawObject(name, mesh.mesh(), exact);
    }

    private void notQuite() {
        String where = Misfit.likeliest(exchange)
                .map(m -> " The likeliest reason is in line " + m.entity().line() + ": " + m.text() + ".")
                .orElse("");
        findings.add(Finding.watch(
                        "faces-do-not-meet",
                        "Some faces and edges of the STEP file do not meet within their own tolerance." + where
                                + " Exact halves may not come of it.")
                .remedy("Ask for a new export, if exact mold halves are wanted."));
    }

    /** The exact volume against two meshes, of which the finer must not be worse. */
    private void weigh(ExactMass exact, double fineMm3, double coarseMm3) {
        double off = Math.abs(fineMm3 / exact.volumeMm3() - 1);
        if (off <= VOLUME_SHARE) return;
        findings.add(Finding.ask(
                        "volume-doubtful",
                        "The volume is not sure: " + UnitRule.number(exact.volumeMm3())
                                + " mm³ by the faces of the file, " + UnitRule.number(fineMm3) + " mm³ by fine and "
                                + UnitRule.number(coarseMm3)
                                + " mm³ by coarse triangles over them. Faces and edges of the file disagree.")
                .measured(100 * off, 100 * VOLUME_SHARE, "%", Source.computed("two ways of weighing must agree"))
                .remedy("Ask for a new export, or for the part's volume."));
    }
}
