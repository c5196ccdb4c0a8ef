package shotwright.review.remedy;

import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.stream.IntStream;
import shotwright.brep.ExactFace;
import shotwright.brep.LeanedFace;
import shotwright.geom.Vec3;
import shotwright.review.FaceReview;
import shotwright.review.FaceReview.FormedBy;
import shotwright.review.face.FaceBorders;

/**
 * Walls that run smoothly into each other and can only be leaned together, about one level plane.
 *
 * @param walls the walls, largest first
 * @param by the half that makes them; both when the parting runs through
 * @param neutralMm height along the pull at which they keep their size, pulled frame
 */
record Chain(List<FaceReview> walls, FormedBy by, double neutralMm) {
    Chain {
        walls = List.copyOf(walls);
    }

    /** A face the kernel can lean: flat, round or conical, with its axis along the pull. */
    static boolean canLean(FaceReview f) {
        boolean even = f.mostDraftDeg() - f.leastDraftDeg() < 1e-3 && Math.abs(f.leastDraftDeg()) < STEEPEST_DEG;
        return even
                && (f.kind() == ExactFace.Kind.PLANE
                        || f.kind() == ExactFace.Kind.CYLINDER
                        || f.kind() == ExactFace.Kind.CONE);
    }

    private static final double STEEPEST_DEG = 45;

    /** The parting runs through it, so that each half makes one end. */
    static boolean isParted(FaceReview f) {
        return f.partingEndMm() > f.lowMm() && f.partingEndMm() < f.highMm();
    }

    /** The chain a wall belongs to. */
    static Chain of(FaceReview wall, List<FaceReview> faces, FaceBorders borders, NeutralEnd neutral) {
        int[] numbers = borders.smoothChain(wall.number() - 1, i -> canLean(faces.get(i)));
        List<FaceReview> walls = IntStream.of(numbers)
                .mapToObj(faces::get)
                .sorted(Comparator.comparingDouble(FaceReview::areaMm2).reversed())
                .toList();
        FormedBy first = walls.getFirst().formedBy();
        boolean both = walls.stream().anyMatch(w -> isParted(w) || w.formedBy() != first);
        return new Chain(walls, both ? FormedBy.BOTH : first, both ? parting(walls) : end(walls, first, neutral));
    }

    /** Where the parting runs through; not a number when it runs through none of the walls. */
    private static double parting(List<FaceReview> walls) {
        return walls.stream()
                .filter(Chain::isParted)
                .mapToDouble(FaceReview::partingEndMm)
                .findFirst()
                .orElse(Double.NaN);
    }

    private static double end(List<FaceReview> walls, FormedBy by, NeutralEnd neutral) {
        FaceReview largest = walls.getFirst();
        boolean low = neutral == NeutralEnd.PARTING ? largest.partingEndMm() == largest.lowMm() : by == FormedBy.B;
        return low
                ? walls.stream().mapToDouble(FaceReview::lowMm).min().orElseThrow()
                : walls.stream().mapToDouble(FaceReview::highMm).max().orElseThrow();
    }

    double areaMm2() {
        return walls.stream().mapToDouble(FaceReview::areaMm2).sum();
    }

    int[] faceNumbers() {
        return walls.stream().mapToInt(w -> w.number() - 1).sorted().toArray();
    }

    boolean holds(int face) {
        return Arrays.binarySearch(faceNumbers(), face) >= 0;
    }

    /** Farthest that any of it lies from where it keeps its size. */
    double reachMm() {
        return walls.stream()
                .mapToDouble(w -> Math.max(Math.abs(w.lowMm() - neutralMm), Math.abs(w.highMm() - neutralMm)))
                .max()
                .orElse(0);
    }

    /**
     * What the engine is asked for: one face of the chain, the others follow.
     *
     * @param draw the way the half leaves, of length one
     * @param pull of length one
     */
    LeanedFace leaned(Vec3 draw, Vec3 pull, double angleRad) {
        return new LeanedFace(walls.getFirst().number() - 1, angleRad, draw, pull.times(neutralMm));
    }
}
