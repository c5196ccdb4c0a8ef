package shotwright.machining.gcode;

import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * The words of one line.
 *
 * @param at the line, for messages
 * @param words letter and number, in the order of the line; N and O are left out
 * @param comments what stands in brackets or behind a semicolon
 * @param label whether the line names a program, O and a number alone
 */
record Block(Place at, List<Word> words, List<String> comments, boolean label) {
    /** The longest line the RS274/NGC interpreter takes, measured. */
    private static final int LONGEST = 252;

    /** A line of a file. */
    record Place(String file, int line, String text) {
        GcodeException fault(String what, String remedy) {
            return new GcodeException(file, line, text, what, remedy);
        }
    }

    /** A letter with its number. */
    record Word(char letter, String digits) {
        double number() {
            return Double.parseDouble(digits);
        }

        /** A code as it is written, without leading noughts: {@code G1}, {@code G61.1}. */
        String code() {
            String plain = digits.replaceFirst("^0+(?=\\d)", "").replaceFirst("\\.0*$", "");
            return letter + plain;
        }

        @Override
        public String toString() {
            return letter + digits;
        }
    }

    @Nullable Word word(char letter) {
        for (Word w : words) if (w.letter == letter) return w;
        return null;
    }

    boolean has(char letter) {
        return word(letter) != null;
    }

    /** The number behind a letter. @throws GcodeException when the letter is missing */
    double number(char letter, String whatFor) {
        Word w = word(letter);
        if (w == null) throw at.fault("there is no " + letter + " word", "add " + letter + ", " + whatFor);
        return w.number();
    }

    /** A whole number of nought or more behind a letter. */
    int whole(char letter, String whatFor) {
        double v = number(letter, whatFor);
        if (v != Math.rint(v) || v < 0 || v > Integer.MAX_VALUE)
            throw at.fault(letter + " is not a whole number of nought or more", "write " + letter + ", " + whatFor);
        return (int) v;
    }

    /** Takes a line apart. @throws GcodeException when it is not made of letters with numbers */
    static Block scan(Place at) {
        String text = at.text();
        if (text.length() > LONGEST)
            throw at.fault("the line has " + text.length() + " characters", "keep lines to " + LONGEST + " or fewer");
        List<Word> words = new ArrayList<>();
        List<String> comments = new ArrayList<>();
        boolean label = false;
        int i = 0;
        while (i < text.length()) {
            char c = Character.toUpperCase(text.charAt(i));
            if (c == ' ' || c == '\t') {
                i++;
            } else if (c == ';') {
                comments.add(text.substring(i + 1).strip());
                i = text.length();
            } else if (c == '(') {
                int close = text.indexOf(')', i), nested = text.indexOf('(', i + 1);
                if (close < 0) throw at.fault("the comment is not closed", "end it with a bracket on the same line");
                if (nested >= 0 && nested < close)
                    throw at.fault("a comment stands inside a comment", "use one pair of brackets");
                comments.add(text.substring(i + 1, close).strip());
                i = close + 1;
            } else if (c >= 'A' && c <= 'Z') {
                int[] end = {i + 1};
                String digits = number(text, end);
                if (digits.isEmpty())
                    throw at.fault(
                            "no number stands behind " + c,
                            "write " + c + " with its number; names, variables " + "and formulas are not read");
                if (c == 'O') label = true;
                else if (c != 'N') words.add(new Word(c, digits));
                i = end[0];
            } else {
                throw at.fault(
                        "the sign '" + (c < 127 && c > 31 ? String.valueOf(c) : "?") + "' is not part of a word",
                        remedy(c));
            }
        }
        if (label && !words.isEmpty())
            throw at.fault("O calls or names a program among other words", "put the program's number on its own line");
        for (int k = 0; k < words.size(); k++) {
            char letter = words.get(k).letter;
            if (letter == 'G' || letter == 'M') continue;
            for (int l = 0; l < k; l++)
                if (words.get(l).letter == letter)
                    throw at.fault(letter + " stands twice", "keep one " + letter + " in a line");
        }
        return new Block(at, words, comments, label);
    }

    private static String remedy(char c) {
        return switch (c) {
            case '/' -> "take the slash away or the line out: whether it runs would hang on a switch at the control";
            case ',' -> "write decimals with a point";
            case '#', '[', ']', '=' -> "write plain numbers: variables and formulas are not read";
            case '%' -> "per-cent signs stand alone on the first and the last line";
            default -> "write letters with plain numbers";
        };
    }

    private static String number(String text, int[] at) {
        StringBuilder digits = new StringBuilder();
        boolean point = false, some = false;
        int i = at[0];
        for (; i < text.length(); i++) {
            char c = text.charAt(i);
            if (c == ' ' || c == '\t') continue;
            boolean sign = (c == '-' || c == '+') && digits.isEmpty();
            boolean first = c == '.' && !point;
            if (!sign && !first && !(c >= '0' && c <= '9')) break;
            if (c != '+') digits.append(c);
            point |= first;
            some |= c >= '0' && c <= '9';
        }
        at[0] = i;
        return some ? digits.toString() : "";
    }
}
