package shotwright.mesh.pull;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.jspecify.annotations.Nullable;
import shotwright.geom.Box3;
import shotwright.geom.Plane;
import shotwright.geom.Transform;
import shotwright.geom.Vec3;
import shotwright.mesh.TriMesh;
import shotwright.mesh.complex.Cap;
import shotwright.mesh.complex.ColumnTest;
import shotwright.mesh.complex.Complex;
import shotwright.mesh.complex.Grade;
import shotwright.mesh.complex.Grain;
import shotwright.mesh.complex.Level;
import shotwright.mesh.complex.Material;
import shotwright.mesh.complex.SplitFailure;
import shotwright.progress.Progress;

/**
 * A block parted round one or several copies of a part. What counts as standing along the pull is widened step by step until the halves come
 * out sound; when no step does, the block is cut by the plane alone, which is good for looking at and weighing, not for opening.
 *
 * @param complex the block, its cells A, B and one for every copy
 * @param a cell of half A
 * @param b cell of half B
 * @param parts cells of the copies
 * @param choice what was parted where; null when only the plane cut was left
 * @param cap the parting surface
 * @param columns the column test over the copies
 * @param failures what stopped the finer steps, in order
 */
public record Parting(
        Complex complex,
        int a,
        int b,
        List<Integer> parts,
        @Nullable Choice choice,
        Cap cap,
        ColumnTest columns,
        List<String> failures) {
    /** Bad columns up to this share are slivers folding over, not a wrong half. */
    public static final double BAD_SHARE_LIMIT = 1e-4;

    private static final double STEINER_SPACING = 2e-3;

    /** How the part was seen and what heights followed. */
    public record Choice(
            SightTolerance tolerance, Sight[] sight, Columns columns, PartingHeights heights, HiddenPatches hidden) {}

    public Parting {
        parts = List.copyOf(parts);
        failures = List.copyOf(failures);
    }

    /**
     * Parts a block.
     *
     * @param part the part in its own pulled frame
     * @param places where its copies stand in the block: turns about z and shifts only
     * @param block the block around all of them
     * @param planeZ the plane asked for, in the part's frame; NaN to take the best one
     */
    public static Parting of(PulledMesh part, List<Transform> places, Box3 block, double planeZ, Progress progress) {
        List<String> failures = new ArrayList<>();
        int step = 0;
        for (SightTolerance tolerance : SightTolerance.LADDER) {
            progress.at("parting the block", step++ / 4.0);
            Choice choice = choose(part, tolerance, planeZ);
            try {
                Parting p = split(part, places, block, choice, choice.heights.planeZ(), failures);
                if (p.isSound()) return p;
                failures.add("columns in which the materials do not follow one another: " + p.columns.bad());
            } catch (SplitFailure f) {
                failures.add(String.valueOf(f.getMessage()));
            }
        }
        progress.at("parting the block by a plane", 0.75);
        double z = Double.isNaN(planeZ)
                ? choose(part, SightTolerance.LADDER.getLast(), planeZ).heights.planeZ()
                : planeZ;
        return split(part, places, block, null, z, failures);
    }

    private static Choice choose(PulledMesh part, SightTolerance tolerance, double planeZ) {
        Sight[] sight = part.sight().at(tolerance);
        Columns columns = Columns.of(part.mesh(), part.edges(), sight, tolerance.leanDeg(), part.shadow());
        double z = Double.isNaN(planeZ)
                ? PartingHeights.bestPlane(columns, sight, part.edges(), tolerance.leanDeg())
                : planeZ;
        PartingHeights heights = PartingHeights.of(columns, sight, part.edges(), tolerance.leanDeg(), z);
        return new Choice(
                tolerance, sight, columns, heights, HiddenPatches.of(part.mesh(), sight, part.edges(), heights));
    }

    private static Parting split(
            PulledMesh part,
            List<Transform> places,
            Box3 block,
            @Nullable Choice choice,
            double planeZ,
            List<String> failures) {
        TriMesh mesh = part.mesh();
        double diagonal = mesh.box().diagonal();
        Complex c = new Complex(new Grain(diagonal));
        int b = c.newCell(Material.B), a = c.newCell(Material.A);
        c.insertBlock(block, b);
        double rest = places.getFirst().apply(new Vec3(0, 0, planeZ)).z();
        double[] heights = new double[c.vertexCount() + places.size() * mesh.vertexCount()];
        Arrays.fill(heights, rest);
        List<Integer> cells = new ArrayList<>();
        for (Transform place : places) {
            int cell = c.newCell(Material.PART), v0 = c.vertexCount(), f0 = c.facetCount();
            c.insert(mesh.transform(place), cell, b);
            cells.add(cell);
            if (choice == null) continue;
            double shift = place.shift().z();
            for (int v = 0; v < mesh.vertexCount(); v++) heights[v0 + v] = choice.heights.at(v) + shift;
            pin(c, f0, choice);
        }
        Cap cap = choice == null
                ? c.split(b, Level.of(new Plane(Vec3.Z, rest)), a)
                : c.split(
                        b,
                        Level.aboveHeights(heights, rest),
                        a,
                        Grade.sloped(rest, PartingHeights.SLOPE, STEINER_SPACING * diagonal));
        c.unpin();
        return new Parting(c, a, b, cells, choice, cap, ColumnTest.overParts(c, ColumnTest.SIDE), failures);
    }

    private static void pin(Complex c, int firstFacet, Choice choice) {
        Sight[] sight = choice.sight;
        for (int f = 0; f < sight.length; f++) {
            if (sight[f] == Sight.UP) c.setPin(firstFacet + f, 1);
            if (sight[f] == Sight.DOWN) c.setPin(firstFacet + f, -1);
        }
        for (HiddenPatches.Patch p : choice.hidden.patches())
            for (int f : p.facets()) c.setPin(firstFacet + f, p.side());
    }

    /** Both halves closed and the materials in order. */
    public boolean isSound() {
        return complex.openEdges(a) == 0 && complex.openEdges(b) == 0 && columns.badShare() <= BAD_SHARE_LIMIT;
    }

    /** True when only the plane cut was left. */
    public boolean isPlaneFallBack() {
        return choice == null;
    }
}
