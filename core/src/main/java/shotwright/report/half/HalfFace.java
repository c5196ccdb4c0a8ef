package shotwright.report.half;

import java.util.List;
import java.util.function.DoubleFunction;
import shotwright.drawing.Contour;
import shotwright.geom.Transform;
import shotwright.geom.Vec2;
import shotwright.geom.Vec3;
import shotwright.layout.Block;
import shotwright.layout.Half;
import shotwright.mesh.TriMesh;

/**
 * One half looked at on its parting face. The view's origin is the datum corner, the same corner of the closed mold for both halves: lower left
 * of half B, lower right of half A, which is turned over about an upright axis; there x runs below zero. The metal lies below z = 0.
 *
 * @param half which
 * @param block the metal of both halves
 * @param mesh the half in the view, mm
 * @param parts the parts with their shrink, in the view
 * @param cavities outlines of the cavities at the parting face
 * @param cores outlines of metal that stands out of the parting face
 * @param steps outlines of what of the parting surface lies higher or lower than the parting face
 * @param cuts channels and pockets
 * @param holes round holes
 */
public record HalfFace(
        Half half,
        Block block,
        TriMesh mesh,
        List<TriMesh> parts,
        List<Contour> cavities,
        List<Contour> cores,
        List<Contour> steps,
        List<Cut> cuts,
        List<Hole> holes) {

    /**
     * A channel or pocket.
     *
     * @param kind what it is for
     * @param name which one
     * @param outline its edges at the parting face; a feed channel that runs into another overlaps it
     * @param depthMm how deep it is at its deepest
     */
    public record Cut(Kind kind, String name, Contour outline, double depthMm) {
        /** What a channel is for. */
        public enum Kind {
            SPRUE,
            RUNNER,
            GATE,
            VENT,
            VENT_CHANNEL,
            PRY
        }
    }

    /**
     * A round hole.
     *
     * @param kind what it is for
     * @param name which one
     * @param at its middle in the view
     * @param nearMm diameter at the end that is nearer to who looks
     * @param farMm diameter at the other end
     * @param depthMm length
     * @param fromBack whether it comes from the back of the half and does not reach the parting face
     */
    public record Hole(Kind kind, String name, Vec2 at, double nearMm, double farMm, double depthMm, boolean fromBack) {
        /** What a hole is for. */
        public enum Kind {
            DOWEL,
            SCREW,
            PIN,
            SPRUE,
            WELL
        }
    }

    public HalfFace {
        parts = List.copyOf(parts);
        cavities = List.copyOf(cavities);
        cores = List.copyOf(cores);
        steps = List.copyOf(steps);
        cuts = List.copyOf(cuts);
        holes = List.copyOf(holes);
    }

    /** From the mold frame into the view of a half. */
    public static Transform view(Half half, Block b) {
        if (half == Half.B) return Transform.translate(new Vec3(b.widthMm() / 2, b.heightMm() / 2, 0));
        Vec3 shift = new Vec3(-b.widthMm() / 2, b.heightMm() / 2, 0);
        return new Transform(Vec3.X.negate(), Vec3.Y, Vec3.Z.negate(), shift);
    }

    /** A place of the mold's parting plane in this view. */
    public Vec2 inView(Vec2 moldMm) {
        return view(half, block).apply(moldMm.atZ(0)).xy();
    }

    /** The corner of the block across from the datum corner. */
    public Vec2 farCorner() {
        return new Vec2(half == Half.A ? -block.widthMm() : block.widthMm(), block.heightMm());
    }

    public double thicknessMm() {
        return half == Half.A ? block.thicknessAMm() : block.thicknessBMm();
    }

    /** How deep the cavities go below the parting face; 0 when they do not. */
    public double deepestMm() {
        return parts.stream().mapToDouble(p -> -p.box().min().z()).max().stream()
                .map(d -> Math.max(0, d))
                .findFirst()
                .orElse(0);
    }

    /** How far metal stands out of the parting face; 0 when none does. */
    public double proudMm() {
        return Math.max(0, mesh.box().max().z());
    }

    /** In words, how it is seen. */
    public String seen() {
        return half == Half.A
                ? "half A turned over, seen on its parting face; x counts to the left from the datum corner"
                : "half B seen on its parting face";
    }

    /** Width, height and thickness, set by the one who shows them. */
    public String size(DoubleFunction<String> length) {
        return length.apply(block.widthMm()) + " × " + length.apply(block.heightMm()) + " × "
                + length.apply(thicknessMm());
    }
}
