package shotwright.review.remedy;

import shotwright.review.FaceReview;

/**
 * A wall that has its draft in the proposed part.
 *
 * @param face the face as it is now
 * @param bothWays whether it leans both ways from the parting, which runs through it
 * @param afterDeg its least draft, measured in the file that was written
 * @param neutralMm height along the pull at which it keeps its size, pulled frame
 * @param movesMm how far its other end moves across the pull; below zero where plastic is taken off
 * @param neutralShiftMm how far the neutral edge lies from where it was
 */
public record LeanedWall(
        FaceReview face, boolean bothWays, double afterDeg, double neutralMm, double movesMm, double neutralShiftMm) {}
