package shotwright.intake;

import java.nio.ByteBuffer;
import java.nio.charset.StandardCharsets;

/** Walks through a text file word by word without making strings of the numbers, and knows the line it is on. */
final class TextScan {
    private static final int LONGEST_SHOWN = 400;

    private final ByteBuffer b;
    private final ReadGuard guard;
    private final boolean slashContinues;
    private final byte[] chunk = new byte[1 << 16];
    private int chunkAt;
    private int chunkEnd;
    private int at;
    private int line = 1;
    private int wordStart;
    private int wordEnd;
    private final Word word = new Word();

    /** {@code slashContinues}: a backslash before a line end joins the next line on. */
    TextScan(ByteBuffer b, ReadGuard guard, boolean slashContinues) {
        this.b = b;
        this.guard = guard;
        this.slashContinues = slashContinues;
        if (peek(0) == 0xEF && peek(1) == 0xBB && peek(2) == 0xBF) at = 3;
    }

    int line() {
        return line;
    }

    String place() {
        return "line " + line;
    }

    double share() {
        return (double) at / Math.max(1, b.limit());
    }

    private int peek(int i) {
        if (i >= b.limit()) return -1;
        if (i < chunkAt || i >= chunkEnd) {
            chunkAt = i;
            int n = Math.min(chunk.length, b.limit() - i);
            b.get(i, chunk, 0, n);
            chunkEnd = i + n;
        }
        return chunk[i - chunkAt] & 0xFF;
    }

    /** Moves to the next word of the file; false at its end. */
    boolean word() {
        int c = peek(at);
        while (c >= 0 && c <= ' ') {
            step(c);
            c = peek(at);
        }
        return take(c);
    }

    /** Moves to the next word of this line; false at its end. */
    boolean wordOfLine() {
        int c = peek(at);
        while (c >= 0 && c <= ' ' && c != '\n' && c != '\r' || continues(c)) {
            if (c == '\\') {
                at++;
                if (peek(at) == '\r' && peek(at + 1) == '\n') at++;
                line++;
            }
            at++;
            c = peek(at);
        }
        return c != '\n' && c != '\r' && take(c);
    }

    /** Moves past the end of this line; false when there is no other. */
    boolean nextLine() {
        int c = peek(at);
        while (c >= 0 && c != '\n' && c != '\r' || continues(c)) {
            if (continues(c)) {
                at++;
                if (peek(at) == '\r' && peek(at + 1) == '\n') at++;
                line++;
            }
            at++;
            c = peek(at);
        }
        if (c < 0) return false;
        step(c);
        return peek(at) >= 0;
    }

    private boolean continues(int c) {
        return slashContinues && c == '\\' && (peek(at + 1) == '\n' || peek(at + 1) == '\r');
    }

    private void step(int c) {
        at++;
        if (c == '\n') line++;
        else if (c == '\r') {
            line++;
            if (peek(at) == '\n') at++;
        }
    }

    private boolean take(int first) {
        if (first < 0) return false;
        wordStart = at;
        int c = first;
        while (c > ' ' && !continues(c)) {
            at++;
            c = peek(at);
        }
        wordEnd = at;
        return true;
    }

    /** The current word, read in place. */
    private final class Word implements CharSequence {
        @Override
        public int length() {
            return wordEnd - wordStart;
        }

        @Override
        public char charAt(int i) {
            return (char) peek(wordStart + i);
        }

        @Override
        public CharSequence subSequence(int from, int to) {
            return text().subSequence(from, to);
        }

        @Override
        public String toString() {
            return text();
        }
    }

    /** The word is this one, upper or lower case. */
    boolean is(String lower) {
        if (wordEnd - wordStart != lower.length()) return false;
        for (int i = 0; i < lower.length(); i++)
            if (Character.toLowerCase((char) peek(wordStart + i)) != lower.charAt(i)) return false;
        return true;
    }

    int length() {
        return wordEnd - wordStart;
    }

    int charAt(int i) {
        return peek(wordStart + i);
    }

    /** The word as text, cut where it is too long to be shown. */
    String text() {
        int n = Math.min(length(), LONGEST_SHOWN);
        byte[] w = new byte[n];
        b.get(wordStart, w);
        return new String(w, StandardCharsets.UTF_8).replaceAll("\\p{Cntrl}", "?");
    }

    private String shown() {
        String t = text();
        return "\"" + (t.length() > 24 ? t.substring(0, 24) + "…" : t) + "\"";
    }

    /** The next word of the file as a number. */
    double number(String what) {
        if (!word())
            throw guard.fault(
                    place(),
                    "the file ends where " + what + " should stand; it was cut short",
                    "Export or copy the file again");
        return wordAsNumber(what);
    }

    /** The word as a number; NaN when it says it is none. */
    double wordAsNumber(String what) {
        try {
            return DecimalText.parse(word);
        } catch (NumberFormatException e) {
            throw DecimalText.hasComma(word)
                    ? guard.fault(
                            place(),
                            shown() + " is written with a comma where " + what + " needs a decimal point",
                            "Export again with a decimal point (a setting of the computer's region)")
                    : guard.fault(
                            place(),
                            shown() + " stands where " + what + " should stand and is no number",
                            "Export the file again, or correct this line");
        }
    }

    /** A whole number from {@code from} (counted from the word's start) up to {@code to}; complains otherwise. */
    int wholeNumber(int from, int to, String what) {
        int i = from;
        boolean minus = i < to && charAt(i) == '-';
        if (minus || i < to && charAt(i) == '+') i++;
        long n = 0;
        boolean good = i < to;
        for (; i < to && good; i++) {
            int c = charAt(i);
            good = c >= '0' && c <= '9' && n < Integer.MAX_VALUE;
            n = 10 * n + (c - '0');
        }
        if (!good || n > Integer.MAX_VALUE)
            throw guard.fault(
                    place(),
                    shown() + " stands where " + what + " should stand and is no whole number",
                    "Export the file again, or correct this line");
        return (int) (minus ? -n : n);
    }
}
