/**
 * Resins by family: what they weigh, how they flow, shrink, dry, burn and freeze.
 *
 * <p>What comes in: one rack file per family or grade.
 *
 * <p>What goes out: {@link shotwright.resin.Resin} with viscosity and density laws; pressure lost in plain channels.
 *
 * <p>Whose formulas: Cross with Williams–Landel–Ferry shift, Carreau, power law, Tait; keys in {@code docs/SOURCES.md}.
 */
@org.jspecify.annotations.NullMarked
package shotwright.resin;
