package shotwright.layout;

import java.util.List;
import java.util.OptionalDouble;
import shotwright.geom.Vec3;
import shotwright.layout.LayoutResult.NozzleEntry;
import shotwright.measure.LengthUnit;
import shotwright.measure.Tolerance;
import shotwright.mesh.MassProperties;
import shotwright.mesh.TriMesh;
import shotwright.mesh.WallThickness;
import shotwright.part.Part;
import shotwright.part.PulledPart;
import shotwright.progress.Progress;

/** A resin, two presses and a rack of round numbers, and inputs made from meshes. */
final class Fixtures {
    static final Melt ABS = new Melt(
            "ABS", false, 0.004, 0.007, 230, 50, 115, 85, 0.085, 2.6e4, 0.25, 50_000, 0.025, 0.038, 35, 1.05, 0.96,
            1200, 0.38, 0.4, 0.6);
    static final Melt NYLON = new Melt(
            "PA66", true, 0.010, 0.022, 285, 80, 242, 150, 0.1, 6e2, 0.66, 60_000, 0.008, 0.013, 40, 1.14, 0.97, 900,
            0.4, 0.4, 0.8);

    static final PressFace BENCH = new PressFace(
            "bench press",
            NozzleEntry.PARTING_EDGE,
            false,
            3,
            0,
            500,
            OptionalDouble.empty(),
            60,
            10_000,
            40_000,
            30,
            30,
            140,
            140,
            25,
            90,
            0,
            0,
            false);
    static final PressFace COLUMN = new PressFace(
            "column press",
            NozzleEntry.BACK,
            true,
            3,
            12,
            2000,
            OptionalDouble.empty(),
            90,
            15_000,
            89_000,
            40,
            40,
            200,
            200,
            40,
            160,
            2000,
            30,
            false);

    private Fixtures() {}

    /** The same press with room for large molds. */
    static PressFace grown(PressFace p) {
        return new PressFace(
                p.name(),
                p.entry(),
                p.guided(),
                p.boreMm(),
                p.nozzleRadiusMm(),
                p.contactN(),
                p.axisHeightMm(),
                p.pressureMpa(),
                p.flowMm3PerS(),
                p.clampN(),
                30,
                30,
                400,
                400,
                p.smallestThicknessMm(),
                p.largestThicknessMm(),
                p.knockOutN(),
                p.knockOutStrokeMm(),
                p.boltsHalves());
    }

    /** The same press with its nozzle fixed at a height, or with halves that must be screwed together. */
    static PressFace special(PressFace p, OptionalDouble axisHeightMm, boolean bolts) {
        return new PressFace(
                p.name(),
                p.entry(),
                p.guided(),
                p.boreMm(),
                p.nozzleRadiusMm(),
                p.contactN(),
                axisHeightMm,
                p.pressureMpa(),
                p.flowMm3PerS(),
                p.clampN(),
                30,
                30,
                200,
                200,
                bolts ? 40 : p.smallestThicknessMm(),
                p.largestThicknessMm(),
                p.knockOutN(),
                p.knockOutStrokeMm(),
                bolts);
    }

    static ShopRack shop() {
        return new ShopRack(
                List.of(0.5, 0.8, 1.0, 1.5, 2.0, 3.0, 6.0),
                List.of(1.0, 2.0, 3.0, 4.0, 5.0, 6.0, 8.0, 10.0),
                List.of(new ShopRack.Taper(1.5, 5, 10), new ShopRack.Taper(3, 5, 15)),
                List.of(12.0, 16.0, 20.0, 25.0, 30.0, 40.0, 50.0, 60.0, 80.0).stream()
                        .map(t -> new ShopRack.Bar(
                                "plate-" + t, "6061 plate " + t + " mm", t, 1000, 1000, 3, 0.5, 69_000, 275, 90, 0.33))
                        .toList(),
                List.of(
                        new ShopRack.Pin("m4x10", 4, 10),
                        new ShopRack.Pin("m4x16", 4, 16),
                        new ShopRack.Pin("m6x14", 6, 14),
                        new ShopRack.Pin("m6x24", 6, 24),
                        new ShopRack.Pin("m8x20", 8, 20),
                        new ShopRack.Pin("m8x30", 8, 30)),
                List.of(
                        new ShopRack.Bolt("m5x20", 5, 0.8, 20, 8.5, 5, 5.5, 4.2, 970),
                        new ShopRack.Bolt("m6x25", 6, 1, 25, 10, 6, 6.6, 5, 970)));
    }

    static PulledPart pulled(TriMesh mesh, Vec3 pull) {
        MassProperties mass = MassProperties.of(mesh);
        Part part = new Part(
                "part",
                "part.stl",
                LengthUnit.MM,
                mesh,
                mass,
                Tolerance.ofDiagonal(mass.box().diagonal()));
        return PulledPart.of(part, pull, Progress.SILENT);
    }

    static LayoutInput input(TriMesh mesh, Vec3 pull, Melt melt, PressFace press, int cavities, LayoutWishes wishes) {
        PulledPart p = pulled(mesh, pull);
        double wall = WallThickness.of(p.tree(), 2000, 1, Progress.SILENT).rayQuantile(0.5);
        return LayoutInput.of(p, wall, melt, press, shop(), cavities, wishes);
    }
}
