package shotwright.measure;

/**
 * Where a number comes from, in a form that can be shown beside it.
 *
 * @param kind how far the number can be trusted
 * @param text the reference in words: a key of {@code docs/SOURCES.md} with page or equation, or what was computed from what
 */
public record Source(Kind kind, String text) {
    /** Kinds of source, best first. */
    public enum Kind {
        /** Measured on this part, this press or this mold. */
        MEASURED("measured"),
        /** Worked out from the part's own shape or from other numbers that name their source. */
        COMPUTED("worked out"),
        /** Read in a published handbook, standard or paper. */
        PUBLISHED("published"),
        /** Habit of the trade without one published source. */
        COMMON_PRACTICE("common practice"),
        /** Remembered from a publication and not read again. */
        FROM_MEMORY("from memory"),
        /** Entered by the person at the desk. */
        YOURS("your own entry");

        private final String words;

        Kind(String words) {
            this.words = words;
        }

        /** The kind in words, as shown to a person. */
        public String words() {
            return words;
        }
    }

    /** The trade's habit, without further reference. */
    public static final Source COMMON_PRACTICE = new Source(Kind.COMMON_PRACTICE, "common practice");

    /** Remembered, not read again. */
    public static final Source FROM_MEMORY = new Source(Kind.FROM_MEMORY, "from memory");

    public Source {
        if (text.isBlank()) throw new IllegalArgumentException("text: a source must say something");
    }

    /** Measured on the part itself. */
    public static Source measured(String text) {
        return new Source(Kind.MEASURED, text);
    }

    /** Worked out; the text names the formula or the numbers used. */
    public static Source computed(String text) {
        return new Source(Kind.COMPUTED, text);
    }

    /** Published; the text is the key of {@code docs/SOURCES.md} and the place. */
    public static Source published(String text) {
        return new Source(Kind.PUBLISHED, text);
    }

    /** A trade habit with a remark. */
    public static Source commonPractice(String remark) {
        return new Source(Kind.COMMON_PRACTICE, remark);
    }

    /** Remembered from a named publication. */
    public static Source fromMemory(String publication) {
        return new Source(Kind.FROM_MEMORY, publication);
    }

    /** Kind and text in one line, without saying the same twice. */
    @Override
    public String toString() {
        return text.startsWith(kind.words()) ? text : kind.words() + ": " + text;
    }
}
