package shotwright.machining.workpiece;

import shotwright.cutter.Cutter;
import shotwright.geom.Vec2;
import shotwright.machining.path.PathBuilder;

/**
 * What one cutter does in one place. The plan gathers tasks of one phase and one cutter into an operation.
 *
 * @param phase what it is for
 * @param words the same for the papers, with the place
 * @param cutter the cutter
 * @param stickoutMm how far it must stand out of its holder at least
 * @param speedRpm spindle speed
 * @param atMm where it begins, to choose the way from task to task
 * @param path writes its moves
 */
public record Task(Phase phase, String words, Cutter cutter, double stickoutMm, double speedRpm, Vec2 atMm, Path path) {
    /** Writes moves. */
    @FunctionalInterface
    public interface Path {
        /**
         * Writes the moves of the task, from wherever the tip stands over the metal, and leaves the tip at the safe height.
         *
         * @param clearZMm height of the tip over everything that stands on the table
         */
        void write(PathBuilder pen, double clearZMm);
    }
}
