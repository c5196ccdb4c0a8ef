/**
 * Where a cutter touches a surface.
 *
 * <p>What comes in: the facets of a mold half and a {@link shotwright.cutter.CutterProfile}.
 *
 * <p>What goes out: the exact height of the tip at any place ({@link shotwright.machining.contact.DropCutter}), lines refined with it, maps
 * of what each cutter leaves, and places where the half lies under itself.
 *
 * <p>Whose formulas: drop-cutter by facet and edge contacts (Hwang and Chang 1998, Computer-Aided Design 30-8; Chuang et al. 2002), with
 * branch and bound; grey morphology (Serra 1982) for maps.
 */
@org.jspecify.annotations.NullMarked
package shotwright.machining.contact;
