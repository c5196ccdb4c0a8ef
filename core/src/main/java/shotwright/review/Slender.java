package shotwright.review;

import shotwright.geom.Vec3;

/**
 * Something tall and thin, in the part or in the mold.
 *
 * @param finding number of the finding that speaks of it; 0 when none does
 * @param kind what it is
 * @param at where, axes of the file
 * @param heightMm how tall
 * @param thickMm how thick
 * @param limitRatio largest height to thickness that is held to be safe
 */
public record Slender(int finding, Kind kind, Vec3 at, double heightMm, double thickMm, double limitRatio) {
    /** What is slender. */
    public enum Kind {
        /** A rib of the part. */
        RIB("rib"),
        /** A thin wall of mold metal that fills a narrow slot of the part. */
        BLADE("mold metal"),
        /** A pin of mold metal that forms a deep round hole. */
        CORE_PIN("core pin");

        private final String words;

        Kind(String words) {
            this.words = words;
        }

        public String words() {
            return words;
        }
    }

    /** Height to thickness. */
    public double ratio() {
        return heightMm / thickMm;
    }

    Slender withFinding(int number) {
        return new Slender(number, kind, at, heightMm, thickMm, limitRatio);
    }
}
