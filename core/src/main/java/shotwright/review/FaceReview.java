package shotwright.review;

import shotwright.brep.ExactFace;
import shotwright.geom.Vec3;
import shotwright.review.face.FaceSize;

/**
 * One exact face of the part as the review sees it. Draft counts towards the half that forms the face, as it does for walls: below zero it
 * leans against the draw.
 *
 * @param number its place in the file, from 1
 * @param name what a person would call it
 * @param kind what surface it lies on
 * @param size how large it is
 * @param areaMm2 its area
 * @param formedBy which half makes it
 * @param leastDraftDeg least draft on it
 * @param mostDraftDeg most draft on it
 * @param leastAtMm where it has the least, axes of the file
 * @param mostAtMm where it has the most, axes of the file
 * @param atMm a place near its middle, axes of the file
 * @param lowMm its lower end along the pull, pulled frame
 * @param highMm its upper end along the pull, pulled frame
 * @param partingEndMm its end nearer to the parting, or where a level parting runs through it, pulled frame
 * @param openEndMm its end on the side to which its half leaves, pulled frame
 * @param askedDeg draft it should have; 0 when it is no wall
 * @param need whether it has that
 * @param finding number of the finding that speaks of it; 0 when none does
 */
public record FaceReview(
        int number,
        String name,
        ExactFace.Kind kind,
        FaceSize size,
        double areaMm2,
        FormedBy formedBy,
        double leastDraftDeg,
        double mostDraftDeg,
        Vec3 leastAtMm,
        Vec3 mostAtMm,
        Vec3 atMm,
        double lowMm,
        double highMm,
        double partingEndMm,
        double openEndMm,
        double askedDeg,
        Need need,
        int finding) {
    /** Which half of the mold makes a face. */
    public enum FormedBy {
        A("half A"),
        B("half B"),
        BOTH("both halves"),
        NEITHER("neither half");

        private final String words;

        FormedBy(String words) {
            this.words = words;
        }

        public String words() {
            return words;
        }

        static FormedBy of(Side side) {
            return side == Side.A ? A : B;
        }
    }

    /** What a face wants in the way of draft. */
    public enum Need {
        /** A floor, a slope or an edge. */
        NO_WALL("no wall"),
        ENOUGH("has enough"),
        LACKS("lacks draft"),
        /** A rounding that starts at a wall: when the wall leans, it goes along. */
        GOES_ALONG("goes along with its wall"),
        /** Round across the pull, or hidden from both halves. */
        CANNOT_HELP("no draft can help");

        private final String words;

        Need(String words) {
            this.words = words;
        }

        public String words() {
            return words;
        }
    }

    /** As it is called in a sentence, for example {@code "flat wall facing +x (face 4)"}. */
    public String called() {
        return name + " (face " + number + ")";
    }

    FaceReview withFinding(int findingNumber) {
        return new FaceReview(
                number,
                name,
                kind,
                size,
                areaMm2,
                formedBy,
                leastDraftDeg,
                mostDraftDeg,
                leastAtMm,
                mostAtMm,
                atMm,
                lowMm,
                highMm,
                partingEndMm,
                openEndMm,
                askedDeg,
                need,
                findingNumber);
    }
}
