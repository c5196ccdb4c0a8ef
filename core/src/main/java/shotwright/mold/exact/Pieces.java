package shotwright.mold.exact;

import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import shotwright.brep.ExactFailure;
import shotwright.brep.ExactShapes;
import shotwright.brep.Outline;
import shotwright.brep.Solid;
import shotwright.brep.SolidCheck;
import shotwright.geom.Box3;
import shotwright.geom.Vec3;
import shotwright.mesh.TriMesh;
import shotwright.mold.MoldResult;

/**
 * The metal round the parts, parted. Plates part it at every height at which the mesh halves meet flat, sheets where they meet on a slope; each
 * piece goes to the half it lies in there.
 *
 * @param a what belongs to half A
 * @param b what belongs to half B
 */
record Pieces(List<Solid> a, List<Solid> b) {
    /** How near points of part and parting surface may lie before they count as one. */
    private static final double[] SAME_MM = {1e-6, 1e-5, 1e-7};

    /** Largest share of the metal that may be lost in parting. */
    private static final double LOST = 1e-7;

    /** How far a sheet may come to lie off the parting surface: at the part, as a share of the distance from it, and at most. */
    private static final double NEAR_SLACK_MM = 0.01, FAR_SLACK = 0.2, MOST_SLACK_MM = 0.1;

    private static final double AROUND_MM = 5;

    /**
     * Parts the metal: by the plates, then by all sheets at once; where that gives no sound pieces by one sheet after another, and one that parts
     * nothing alone is tried again with the next.
     *
     * @param metal the block without the parts
     * @param plastic the parts
     * @param mostOtherMm3 how much of a piece may lie in the other half
     * @throws ExactFailure REFUSED when no way of parting gives sound pieces that each belong to one half
     */
    static Pieces of(
            ExactShapes x, List<Solid> metal, List<TriMesh> plastic, Box3 block, MoldResult mesh, double mostOtherMm3)
            throws ExactFailure {
        List<Double> levels = Levels.of(mesh.parting());
        List<Solid> pieces = parted(x, metal, plates(x, block, levels), Integer.MAX_VALUE);
        // where a plate meets faces of the part awkwardly pieces get lost; slabs taken out one by one keep them
        if (pieces == null) pieces = slabs(x, metal, block, levels);
        List<Solid> sheets = sheets(x, mesh.parting(), levels, new Inside(plastic), block);
        Box3 around = plastic.stream().map(TriMesh::box).reduce(Box3::join).orElseThrow();
        Labels labels = new Labels(mesh, around);
        if (sheets.size() > 1) {
            Pieces made = atOnce(x, pieces, sheets, labels, mostOtherMm3);
            if (made != null) return made;
        }
        Pieces made = sorted(x, oneByOne(x, pieces, sheets), labels, mostOtherMm3);
        if (made != null) return made;
        throw new ExactFailure(
                ExactFailure.Why.REFUSED,
                "The parting surface meets the faces of the part so awkwardly that no sound pieces come of it.");
    }

    private static @Nullable Pieces atOnce(
            ExactShapes x, List<Solid> pieces, List<Solid> sheets, Labels labels, double mostOtherMm3)
            throws ExactFailure {
        double whole = x.volumeMm3(pieces);
        for (double same : SAME_MM) {
            List<Solid> finer = split(x, pieces, sheets, same);
            Pieces made = isWhole(x, finer, whole) ? sorted(x, finer, labels, mostOtherMm3) : null;
            if (made != null) return made;
            x.release(finer);
        }
        return null;
    }

    private static List<Solid> oneByOne(ExactShapes x, List<Solid> coarse, List<Solid> sheets) throws ExactFailure {
        List<Solid> pieces = coarse, waiting = new ArrayList<>();
        for (Solid sheet : sheets) {
            waiting.add(sheet);
            List<Solid> finer = parted(x, pieces, waiting, pieces.size() + 1);
            if (finer == null || finer.size() <= pieces.size()) continue;
            pieces = finer;
            waiting.clear();
        }
        return pieces;
    }

    /** The solids parted by the tools into as many pieces as can be had, since a cut that fails leaves fewer; null when none is sound. */
    private static @Nullable List<Solid> parted(ExactShapes x, List<Solid> solids, List<Solid> tools, int enough)
            throws ExactFailure {
        double whole = x.volumeMm3(solids);
        List<Solid> best = null;
        for (double same : SAME_MM) {
            List<Solid> pieces = split(x, solids, tools, same);
            if (isWhole(x, pieces, whole) && (best == null || pieces.size() > best.size())) best = pieces;
            if (best != null && best.size() >= enough) break;
        }
        return best;
    }

    private static boolean isWhole(ExactShapes x, List<Solid> pieces, double wholeMm3) throws ExactFailure {
        return areSound(x, pieces) && Math.abs(x.volumeMm3(pieces) / wholeMm3 - 1) <= LOST;
    }

    /** Nothing where the engine refuses. */
    private static List<Solid> split(ExactShapes x, List<Solid> solids, List<Solid> tools, double same)
            throws ExactFailure {
        try {
            return x.split(solids, tools, same);
        } catch (ExactFailure e) {
            if (e.why() != ExactFailure.Why.REFUSED) throw e;
            return List.of();
        }
    }

    /** Null when a piece lies in both halves. */
    private static @Nullable Pieces sorted(ExactShapes x, List<Solid> pieces, Labels labels, double mostOtherMm3)
            throws ExactFailure {
        List<Solid> a = new ArrayList<>(), b = new ArrayList<>();
        for (Solid piece : pieces) {
            Labels.Label l = labels.of(x, piece);
            if (l.otherMm3() > mostOtherMm3) return null;
            (l.inA() ? a : b).add(piece);
        }
        return new Pieces(a, b);
    }

    static boolean areSound(ExactShapes x, List<Solid> pieces) throws ExactFailure {
        for (Solid s : pieces) {
            SolidCheck c = x.check(s);
            if (!c.valid() || c.openEdges() > 0) return false;
        }
        return true;
    }

    /** All metal. */
    double volumeMm3(ExactShapes x) throws ExactFailure {
        return x.volumeMm3(a) + x.volumeMm3(b);
    }

    private static List<Solid> sheets(ExactShapes x, TriMesh parting, List<Double> levels, Inside plastic, Box3 block)
            throws ExactFailure {
        List<Solid> out = new ArrayList<>();
        for (Slope s : Slopes.of(parting, levels, block)) {
            Reach.Sheet sheet = Reach.of(s.thinned(c -> slackMm(c, plastic)), levels, plastic, block);
            out.add(x.sheet(sheet.corners(), sheet.facets()));
        }
        return out;
    }

    /** Away from the part any surface parts the metal as well. */
    private static double slackMm(Vec3 corner, Inside plastic) {
        return Math.max(NEAR_SLACK_MM, FAR_SLACK * plastic.wallMm(corner, MOST_SLACK_MM / FAR_SLACK));
    }

    private static List<Solid> slabs(ExactShapes x, List<Solid> metal, Box3 block, List<Double> levels)
            throws ExactFailure {
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

    private static List<Solid> plates(ExactShapes x, Box3 block, List<Double> levels) throws ExactFailure {
        List<Solid> plates = new ArrayList<>();
        Vec3 around = new Vec3(AROUND_MM, AROUND_MM, 0);
        Vec3 low = block.min().minus(around), high = block.max().plus(around);
        for (double z : levels)
            plates.add(x.plate(Outline.polygon(List.of(
                    new Vec3(low.x(), low.y(), z),
                    new Vec3(high.x(), low.y(), z),
                    new Vec3(high.x(), high.y(), z),
                    new Vec3(low.x(), high.y(), z)))));
        return plates;
    }
}
