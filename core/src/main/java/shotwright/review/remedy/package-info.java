/**
 * A proposed part with the draft its walls lack, for the customer to approve.
 *
 * <p>What comes in: the part's STEP file, the review face by face, how much draft is wanted and which end of a wall keeps its size.
 *
 * <p>What goes out: the proposed part as STEP, what became of each wall, and each wall that could not be leaned with its other remedy.
 *
 * <p>Whose formulas: none; every wall is measured again in the file that was written.
 */
@org.jspecify.annotations.NullMarked
package shotwright.review.remedy;
