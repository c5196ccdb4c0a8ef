package shotwright.finding;

/** How much a finding weighs, heaviest first. */
public enum Severity {
    /** The plan cannot go on as it is. */
    STOP,
    /** Needs an answer from the customer or the owner. */
    ASK,
    /** Can be made, with an eye on it. */
    WATCH,
    /** Good to know. */
    NOTE;

    /** The word shown to a person. */
    public String word() {
        return name().toLowerCase(java.util.Locale.ROOT);
    }
}
