/**
 * Walls, floors, cores and bolts held against the melt.
 *
 * <p>What comes in: sizes in millimetres, pressure and modulus in megapascals.
 *
 * <p>What goes out: deflection and stress.
 *
 * <p>Whose formulas: Roark's plates, Lamé's ring, beams, core bending after D. O. Kazmer.
 */
@org.jspecify.annotations.NullMarked
package shotwright.layout.strength;
