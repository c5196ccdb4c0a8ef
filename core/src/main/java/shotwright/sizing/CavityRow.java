package shotwright.sizing;

/**
 * What a number of cavities would mean on our press.
 *
 * @param cavitiesCount how many up
 * @param chosen true for the number taken
 * @param verdict what the press says
 * @param clampNeededKn clamp
 * @param shotG shot with feed
 * @param moldWidthMm block across the press
 * @param moldHeightMm block along y
 * @param cycleS cycle
 * @param moldPrice price of the mold
 * @param pricePerPart price of a part at the quantity, mold share included
 * @param breakEvenCount quantity from which it is cheaper than the row before; 0 when never or for the first row
 * @param words why, or why not
 */
public record CavityRow(
        int cavitiesCount,
        boolean chosen,
        Verdict verdict,
        double clampNeededKn,
        double shotG,
        double moldWidthMm,
        double moldHeightMm,
        double cycleS,
        double moldPrice,
        double pricePerPart,
        int breakEvenCount,
        String words) {
    /** What stands before the reason of a row that is refused. */
    private static final String REFUSED = "Not possible on this press. ";

    static String refused(String reason) {
        return REFUSED + reason;
    }

    /** The reason alone of a row that is refused. */
    String refusal() {
        return words.startsWith(REFUSED) ? words.substring(REFUSED.length()) : words;
    }

    CavityRow taken(boolean newChosen, int newBreakEven, String newWords) {
        return new CavityRow(
                cavitiesCount,
                newChosen,
                verdict,
                clampNeededKn,
                shotG,
                moldWidthMm,
                moldHeightMm,
                cycleS,
                moldPrice,
                pricePerPart,
                newBreakEven,
                newWords);
    }
}
