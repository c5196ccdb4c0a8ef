/**
 * Station 10: what did we get? Reads a customer's part file, says how large it is in each unit it could be meant in, checks that it is one
 * closed solid, mends what the owner asked to have mended, and hands out the part or the reasons against it.
 *
 * <p>What comes in: a file (STL, OBJ, 3MF, told apart by content and not by the ending of the name), the owner's choices, limits.
 *
 * <p>What goes out: the part, the facts measured on the way, findings. A file that cannot be read at all is one {@link
 * shotwright.intake.IntakeException} with file, place, fault and remedy.
 *
 * <p>Whose formulas: 3MF Consortium, 3MF Core Specification 1.3 and Production Extension 1.1 (from memory); winding numbers by solid angle
 * after van Oosterom and Strackee, IEEE Trans. Biomed. Eng. 30 (1983) 125 (from memory).
 */
@org.jspecify.annotations.NullMarked
package shotwright.intake;
