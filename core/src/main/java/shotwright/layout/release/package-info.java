/**
 * How the part comes out, and which half keeps it.
 *
 * <p>What comes in: the areas that grip each half with their draft, the resin at ejection, the press's knock-out.
 *
 * <p>What goes out: grip per half, ejection force, pins, pry pockets.
 *
 * <p>Whose formulas: closed sleeve on a core (Glanvill and Denton, Menges), draft relief, vacuum, perforation, Euler buckling.
 */
@org.jspecify.annotations.NullMarked
package shotwright.layout.release;
