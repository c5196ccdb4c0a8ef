package shotwright.machining.setup;

import java.util.List;
import shotwright.geom.Box3;
import shotwright.machining.path.WorkOffset;

/**
 * One clamping. x runs along the bar, x 0 is the finished end at the stop, y 0 the finished side at the fixed jaw, which stands at the back
 * (+y), z 0 the finished face that lies up.
 *
 * @param name name shown
 * @param offset work offset that holds the zero
 * @param stock box around the blank as clamped, saw skin left by an earlier clamping included
 * @param finished the block the setup leaves, as far as it goes down
 * @param gripMm how much stands in the jaws
 * @param facing which way the face mill runs
 * @param keepOut jaws
 * @param travel travel it takes
 * @param steps what to do, in order
 */
public record Setup(
        String name,
        WorkOffset offset,
        Box3 stock,
        Box3 finished,
        double gripMm,
        Facing facing,
        List<Box3> keepOut,
        Travel travel,
        List<String> steps) {
    /** Which way a face is milled. */
    public enum Facing {
        ALONG_X("along x"),
        ALONG_Y("along y"),
        NOT_FACED("not faced");

        private final String words;

        Facing(String words) {
            this.words = words;
        }

        public String words() {
            return words;
        }
    }

    /**
     * Travel a setup takes, and what the mill has.
     *
     * @param xMm along x, run-out of the largest cutter included
     * @param yMm along y
     * @param zMm from the deepest cut to the clearance height, plus what the longest cutter stands out more than the shortest
     * @param millXMm travel of the mill along x
     * @param millYMm along y
     * @param millZMm along z
     */
    public record Travel(double xMm, double yMm, double zMm, double millXMm, double millYMm, double millZMm) {
        /** True when the mill has it all. */
        public boolean enough() {
            return xMm <= millXMm && yMm <= millYMm && zMm <= millZMm;
        }
    }

    public Setup {
        keepOut = List.copyOf(keepOut);
        steps = List.copyOf(steps);
    }
}
