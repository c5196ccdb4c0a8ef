package shotwright.machining.gcode;

import java.text.Normalizer;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

/** Words for a comment that no control can take for anything else: capitals, digits and a few signs, never a word a control acts on. */
final class Comments {
    private static final String SIGNS = " .,:+-/=";

    private Comments() {}

    /** The words in plain capitals; brackets, per-cent signs and letters beyond ASCII are replaced. */
    static String plain(String words) {
        String spelled = words.replace("µ", "U")
                .replace("×", "X")
                .replace("°", " DEG")
                .replace("Ø", "DIA ")
                .replace("ø", "DIA ")
                .replace("ß", "SS")
                .replace('−', '-')
                .replace('–', '-')
                .replace('\u00a0', ' ')
                .replace('\u202f', ' ');
        StringBuilder out = new StringBuilder();
        for (char c : Normalizer.normalize(spelled, Normalizer.Form.NFD).toCharArray()) {
            if (Character.getType(c) == Character.NON_SPACING_MARK) continue;
            boolean kept = c < 128 && (Character.isLetterOrDigit(c) || SIGNS.indexOf(c) >= 0);
            out.append(kept ? Character.toUpperCase(c) : ' ');
        }
        String plain = out.toString().replaceAll(" +", " ").strip();
        return plain.matches("(MSG|DEBUG|PRINT|LOG|LOGOPEN|LOGAPPEND|LOGCLOSE|PROBEOPEN|PROBECLOSE|PY|ABORT) ?,.*")
                ? "- " + plain
                : plain;
    }

    /** A file name of plain small letters, digits and dashes. */
    static String fileName(String words) {
        String name = plain(words)
                .toLowerCase(Locale.ROOT)
                .replaceAll("[^a-z0-9]+", "-")
                .replaceAll("^-+|-+$", "");
        return name.isEmpty() ? "program" : name;
    }

    /** Lines of at most so many characters, broken between words. */
    static List<String> wrapped(String plain, int most) {
        List<String> lines = new ArrayList<>();
        StringBuilder line = new StringBuilder();
        for (String word : plain.split(" ")) {
            String rest = word;
            if (!line.isEmpty() && line.length() + 1 + rest.length() > most) {
                lines.add(line.toString());
                line.setLength(0);
            }
            while (rest.length() > most) {
                lines.add(rest.substring(0, most));
                rest = rest.substring(most);
            }
            if (!line.isEmpty()) line.append(' ');
            line.append(rest);
        }
        if (!line.isEmpty()) lines.add(line.toString());
        return lines;
    }
}
