/**
 * Station 20: can it be molded in two plates?
 *
 * <p>What comes in: the part, the pull when the owner has set it, what the resin asks for, the cutters owned and the finish wanted.
 *
 * <p>What goes out: the pull with its reason, draft by wall, undercuts, through holes, walls too thin or too thick, corners and lettering
 * against the cutters, slender ribs and mold metal, questions for the customer and findings.
 *
 * <p>Whose formulas: draft by depth, texture, strip-off strain, junction circle and wall steps as named in each class; the pull search, the
 * surface maps and the closing with a cutter are plain geometry.
 */
@org.jspecify.annotations.NullMarked
package shotwright.review;
