package shotwright.brep.exchange;

import static java.nio.charset.StandardCharsets.ISO_8859_1;
import static java.nio.charset.StandardCharsets.UTF_16BE;

import java.util.ArrayList;
import java.util.HexFormat;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;

/** Reads the clear text encoding of ISO 10303-21, one pass, no look back. */
final class ExchangeReader {
    private static final int DEEPEST = 200;
    private static final int MOST_QUOTED = 40;
    private static final Value NOTHING = new Value.Nothing();

    private final byte[] in;
    private int at;
    private int line = 1;

    ExchangeReader(byte[] in) {
        this.in = in;
    }

    ExchangeFile file() {
        expectWord("ISO-10303-21");
        expect(';');
        expectWord("HEADER");
        expect(';');
        List<Value.Typed> header = new ArrayList<>();
        while (!aheadIs("ENDSEC")) {
            header.add(typed(0));
            expect(';');
        }
        endSection();
        Map<Integer, Entity> entities = new LinkedHashMap<>();
        int sections = 0;
        while (!aheadIs("END-ISO-10303-21")) {
            skip();
            if (at >= in.length) throw fault("the file ends before its end mark; it was cut off");
            String section = word();
            if (section.equals("DATA")) {
                sections++;
                if (peek() == '(') many(0);
                expect(';');
                data(entities);
            } else skipSection();
        }
        if (sections == 0) throw fault("the file has no data section");
        return new ExchangeFile(List.copyOf(header), entities);
    }

    private void data(Map<Integer, Entity> entities) {
        while (!aheadIs("ENDSEC")) {
            skip();
            int from = line;
            expect('#');
            int number = whole();
            expect('=');
            List<Value.Typed> parts = new ArrayList<>();
            if (peek() == '(') {
                expect('(');
                while (peek() != ')') parts.add(typed(0));
                expect(')');
            } else parts.add(typed(0));
            expect(';');
            if (entities.put(number, new Entity(number, from, List.copyOf(parts))) != null)
                throw new ExchangeFault(from, "entity #" + number + " is given twice");
        }
        endSection();
    }

    private void skipSection() {
        while (!aheadIs("ENDSEC")) {
            if (at >= in.length) throw fault("the file ends inside a section; it was cut off");
            if (in[at] == '\'') text();
            else step();
        }
        endSection();
    }

    private void endSection() {
        expectWord("ENDSEC");
        expect(';');
    }

    private Value.Typed typed(int depth) {
        String type = word().toUpperCase(Locale.ROOT);
        return new Value.Typed(type, many(depth));
    }

    private List<Value> many(int depth) {
        if (depth > DEEPEST) throw fault("brackets are nested more than " + DEEPEST + " deep");
        expect('(');
        List<Value> out = new ArrayList<>();
        if (peek() == ')') {
            expect(')');
            return out;
        }
        while (true) {
            out.add(value(depth + 1));
            if (peek() != ',') break;
            expect(',');
        }
        expect(')');
        return out;
    }

    private Value value(int depth) {
        char c = peek();
        return switch (c) {
            case '(' -> new Value.Many(List.copyOf(many(depth)));
            case '\'' -> new Value.Text(text());
            case '#' -> {
                expect('#');
                yield new Value.Reference(whole());
            }
            case '.' -> dotted();
            case '$', '*' -> {
                step();
                yield NOTHING;
            }
            case '"' -> new Value.Text(binary());
            default -> {
                if (c == '+' || c == '-' || c >= '0' && c <= '9') yield new Value.Number(number());
                yield typed(depth);
            }
        };
    }

    private Value dotted() {
        int start = ++at;
        while (at < in.length && in[at] != '.') {
            if (!isWordByte(in[at])) throw fault("a word between dots is not closed");
            at++;
        }
        String w = latin(start, at);
        expect('.');
        return new Value.Word(w.toUpperCase(Locale.ROOT));
    }

    private String binary() {
        int start = ++at;
        while (at < in.length && in[at] != '"') step();
        String b = latin(start, at);
        expect('"');
        return b;
    }

    private double number() {
        int start = at;
        while (at < in.length && "+-.0123456789Ee".indexOf(in[at]) >= 0) at++;
        try {
            return Double.parseDouble(latin(start, at));
        } catch (NumberFormatException e) {
            throw fault("\"" + latin(start, Math.min(at, start + MOST_QUOTED)) + "\" is no number");
        }
    }

    private int whole() {
        int start = at;
        while (at < in.length && in[at] >= '0' && in[at] <= '9') at++;
        if (at == start || at - start > 9) throw fault("an entity number is missing or too long");
        return Integer.parseInt(latin(start, at));
    }

    private String word() {
        skip();
        int start = at;
        if (at < in.length && in[at] == '!') at++;
        while (at < in.length && isWordByte(in[at])) at++;
        if (at == start) throw fault(at >= in.length ? "the file ends too early; it was cut off" : "a name is missing");
        return latin(start, at);
    }

    private static boolean isWordByte(byte b) {
        return b >= 'A' && b <= 'Z' || b >= 'a' && b <= 'z' || b >= '0' && b <= '9' || b == '_' || b == '-';
    }

    /** Text up to its closing quote; a doubled quote stands for one. */
    private String text() {
        StringBuilder out = new StringBuilder();
        int from = line;
        at++;
        while (true) {
            if (at >= in.length) throw new ExchangeFault(from, "a text is not closed; the file was cut off");
            char c = (char) (in[at] & 0xFF);
            if (c == '\'') {
                at++;
                if (at < in.length && in[at] == '\'') out.append('\'');
                else return unescaped(out.toString());
            } else if (c != '\n' && c != '\r') out.append(c);
            step();
        }
    }

    /** Undoes \X\ and \X2\ … \X0\, the two ways other letters are written. */
    private static String unescaped(String s) {
        StringBuilder out = new StringBuilder();
        for (int i = 0; i < s.length(); ) {
            int end = s.startsWith("\\X2\\", i) ? s.indexOf("\\X0\\", i + 4) : -1;
            if (end > 0 && s.substring(i + 4, end).matches("([0-9A-Fa-f]{4})*")) {
                out.append(new String(HexFormat.of().parseHex(s.substring(i + 4, end)), UTF_16BE));
                i = end + 4;
            } else if (s.startsWith("\\X\\", i) && s.substring(i).matches("(?s)\\\\X\\\\[0-9A-Fa-f]{2}.*")) {
                out.append((char) Integer.parseInt(s.substring(i + 3, i + 5), 16));
                i += 5;
            } else out.append(s.charAt(i++));
        }
        return out.toString();
    }

    private boolean aheadIs(String word) {
        skip();
        return at + word.length() <= in.length && latin(at, at + word.length()).equalsIgnoreCase(word);
    }

    private void expectWord(String word) {
        if (!aheadIs(word)) throw fault("\"" + word + "\" is missing");
        at += word.length();
    }

    private char peek() {
        skip();
        if (at >= in.length) throw fault("the file ends in the middle of an entity; it was cut off");
        return (char) (in[at] & 0xFF);
    }

    private void expect(char c) {
        if (peek() != c) throw fault("\"" + c + "\" is missing before \"" + ahead() + "\"");
        at++;
    }

    /** The next few signs of this line, what is no letter, figure or sign of ASCII as a question mark. */
    private String ahead() {
        String next = latin(at, Math.min(in.length, at + 12));
        return next.split("[\r\n]", 2)[0].replaceAll("[^ -~]", "?");
    }

    /** Over blanks and remarks. */
    private void skip() {
        while (at < in.length) {
            if (in[at] >= 0 && in[at] <= ' ') step();
            else if (in[at] == '/' && at + 1 < in.length && in[at + 1] == '*') {
                int from = line;
                at += 2;
                while (!(at + 1 < in.length && in[at] == '*' && in[at + 1] == '/')) {
                    if (at >= in.length) throw new ExchangeFault(from, "a remark is not closed; the file was cut off");
                    step();
                }
                at += 2;
            } else return;
        }
    }

    private void step() {
        if (in[at++] == '\n') line++;
    }

    private String latin(int from, int to) {
        return new String(in, from, to - from, ISO_8859_1);
    }

    private ExchangeFault fault(String message) {
        return new ExchangeFault(line, message);
    }
}
