package shotwright.sizing;

/** Whether a press can do the job. */
public enum Verdict {
    /** With room to spare. */
    FITS("fits"),
    /** It can, but an allowance is used up: try it with care. */
    TIGHT("tight"),
    /** It cannot. */
    NO("no");

    private final String words;

    Verdict(String words) {
        this.words = words;
    }

    /** The word shown. */
    public String words() {
        return words;
    }

    /** The worse of two. */
    public Verdict and(Verdict other) {
        return compareTo(other) >= 0 ? this : other;
    }
}
