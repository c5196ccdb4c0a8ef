package shotwright.measure;

import java.util.Locale;
import java.util.Optional;

/** A length unit a part file may be in. */
public enum LengthUnit {
    MM("mm", "millimetres", 1),
    CM("cm", "centimetres", 10),
    M("m", "metres", 1000),
    IN("in", "inches", Units.MM_PER_IN),
    FT("ft", "feet", 12 * Units.MM_PER_IN),
    MICRON("um", "micrometres", 1e-3);

    private final String symbol;
    private final String plural;
    private final double mm;

    LengthUnit(String symbol, String plural, double mm) {
        this.symbol = symbol;
        this.plural = plural;
        this.mm = mm;
    }

    /** The short sign, for example {@code mm}. */
    public String symbol() {
        return symbol;
    }

    /** The word in the plural, for example {@code millimetres}. */
    public String plural() {
        return plural;
    }

    /** Millimetres in one of this unit. */
    public double mm() {
        return mm;
    }

    /** The unit a person typed: its sign or its name in singular or plural, in any case. */
    public static Optional<LengthUnit> parse(String text) {
        String t = text.strip().toLowerCase(Locale.ROOT);
        for (LengthUnit u : values()) {
            if (t.equals(u.symbol) || t.equals(u.plural) || (t + "s").equals(u.plural)) return Optional.of(u);
        }
        return switch (t) {
            case "inch", "\"" -> Optional.of(IN);
            case "foot" -> Optional.of(FT);
            case "millimeter", "millimeters" -> Optional.of(MM);
            case "centimeter", "centimeters" -> Optional.of(CM);
            case "meter", "meters" -> Optional.of(M);
            case "micron", "microns", "micrometer" -> Optional.of(MICRON);
            default -> Optional.empty();
        };
    }
}
