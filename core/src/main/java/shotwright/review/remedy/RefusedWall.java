package shotwright.review.remedy;

import shotwright.review.FaceReview;

/**
 * A wall that stays as it is.
 *
 * @param face the face
 * @param reason why it was not leaned, in a sentence
 * @param remedy what can be done instead, in a sentence
 */
public record RefusedWall(FaceReview face, String reason, String remedy) {}
