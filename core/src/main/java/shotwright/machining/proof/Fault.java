package shotwright.machining.proof;

import shotwright.geom.Vec3;
import shotwright.measure.Digits;
import shotwright.measure.Quantity;
import shotwright.measure.Source;

/**
 * Something a program does that it must not.
 *
 * @param kind what
 * @param operation operation, from 0
 * @param move move of the operation, from 0
 * @param at where
 * @param what which cutter part, jaw, hole or axis; empty when there is only one
 * @param found what was found
 * @param limit what is allowed
 */
public record Fault(Kind kind, int operation, int move, Vec3 at, String what, Quantity found, Quantity limit) {
    private static final Source FOUND = Source.computed("the program run against the stock");

    private static final Source LIMIT = Source.computed("what was asked of this proof");

    /** What can be wrong. */
    public enum Kind {
        RAPID_IN_STOCK("a rapid runs into the stock", "mm", 2),
        GOUGE("it cuts into the half", "mm", 3),
        BODY_CONTACT("what is not made to cut touches the stock", "mm", 2),
        KEEP_OUT("it runs into what holds the stock", "mm", 1),
        HOLE_SIZE("the hole does not get its diameter", "mm", 3),
        HOLE_DEPTH("the hole does not get its depth", "mm", 3),
        LEVEL("the depth is not the one asked for", "mm", 3),
        TRAVEL("the way is longer than the axis", "mm", 1),
        SPINDLE_STANDS("it feeds with the spindle standing", "1/min", 0),
        SPEED("the spindle does not turn at this speed", "1/min", 0),
        FEED("the mill does not feed this fast", "mm/min", 0),
        LOW_CHANGE("the cutter is changed below the stock's top", "mm", 1),
        SLANTED_RAPID("a rapid on a slant goes below the stock's top", "mm", 1),
        ENGAGEMENT("the cutter is held by more metal than planned", "°", 0);

        private final String words;
        private final String unit;
        private final int decimals;

        Kind(String words, String unit, int decimals) {
            this.words = words;
            this.unit = unit;
            this.decimals = decimals;
        }

        public String words() {
            return words;
        }

        public String unit() {
            return unit;
        }
    }

    /** A fault with its two numbers in the unit of its kind. */
    static Fault of(Kind kind, int operation, int move, Vec3 at, String what, double found, double limit) {
        return new Fault(
                kind,
                operation,
                move,
                at,
                what,
                new Quantity(found, kind.unit, FOUND),
                new Quantity(limit, kind.unit, LIMIT));
    }

    /** A plain sentence without the line. */
    public String text() {
        String named = what.isEmpty() ? "" : " (" + what + ")";
        return Character.toUpperCase(kind.words.charAt(0)) + kind.words.substring(1) + named + ": " + number(found)
                + ", allowed " + number(limit) + ", at x " + Digits.fixed(at.x(), 2) + ", y "
                + Digits.fixed(at.y(), 2) + ", z " + Digits.fixed(at.z(), 2) + " mm.";
    }

    private String number(Quantity a) {
        return Digits.fixed(a.value(), kind.decimals) + (kind.unit.equals("°") ? "" : " ") + kind.unit;
    }
}
