package shotwright.machining.gcode;

import java.math.BigDecimal;

/** The lines of a program file as they grow: numbers, line numbers, comments. */
final class BlockText {
    /** The highest line number RS274/NGC names (NISTIR 6556, from memory). */
    private static final int LAST_NUMBER = 99_999;

    private final Dialect dialect;
    private final int step;
    private final StringBuilder text = new StringBuilder();
    private int number;

    BlockText(Dialect dialect, int step) {
        this.dialect = dialect;
        this.step = step;
    }

    /** False when the line numbers ran past the last one. */
    boolean fits() {
        return number <= LAST_NUMBER;
    }

    String text() {
        return text.toString();
    }

    void bare(String line) {
        text.append(line).append('\n');
    }

    void block(String words) {
        number += step;
        bare(step > 0 ? "N" + number + " " + words : words);
    }

    void comment(String words) {
        boolean brackets = dialect.comment() == Dialect.Comment.BRACKETS;
        for (String line : Comments.wrapped(Comments.plain(words), dialect.longestLine() - 2))
            bare(brackets ? "(" + line + ")" : "; " + line);
    }

    /** A length in whole last digits. */
    long digits(double mm) {
        return Math.round(mm / dialect.digitMm());
    }

    /** A length as text, always with its point. */
    String length(double mm) {
        return length(digits(mm));
    }

    /** A number of last digits as text, always with its point; nought has no sign. */
    String length(long digits) {
        return pointed(BigDecimal.valueOf(digits, dialect.decimals()));
    }

    /** A feed as text. */
    String feed(double mmPerMin) {
        int decimals = dialect.unit() == Dialect.Unit.MM ? 1 : 3;
        double unit = Math.pow(10, decimals) / dialect.unit().length().mm();
        return pointed(BigDecimal.valueOf(Math.max(1, Math.round(mmPerMin * unit)), decimals));
    }

    /** A time as text, in what the control counts. */
    String dwell(double timeS) {
        return dialect.dwellUnit() == Dialect.DwellUnit.SECONDS
                ? pointed(BigDecimal.valueOf(Math.round(timeS * 1000), 3))
                : String.valueOf(Math.round(timeS * 1000));
    }

    private static String pointed(BigDecimal value) {
        if (value.signum() == 0) return "0.";
        String plain = value.stripTrailingZeros().toPlainString();
        return plain.contains(".") ? plain : plain + ".";
    }
}
