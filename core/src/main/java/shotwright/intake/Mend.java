package shotwright.intake;

import java.util.Locale;
import java.util.Optional;

/** Repairs that are made only when the owner asks for them, because each of them guesses what the designer meant. */
public enum Mend {
    /** Turns a solid whose facets all face inward. */
    FLIP("turn an inside-out solid"),
    /** Turns single facets until neighbours agree on which side is outside. */
    WINDING("make all facets face the same way"),
    /** Closes holes whose border lies in one plane with a flat patch. */
    HOLES("close flat holes");

    private final String words;

    Mend(String words) {
        this.words = words;
    }

    /** What it does, in words. */
    public String words() {
        return words;
    }

    /** The word typed after {@code --mend}. */
    public String option() {
        return name().toLowerCase(Locale.ROOT);
    }

    /** The mend a person typed. */
    public static Optional<Mend> parse(String text) {
        String t = text.strip().toLowerCase(Locale.ROOT);
        for (Mend m : values()) if (m.option().equals(t)) return Optional.of(m);
        return Optional.empty();
    }
}
