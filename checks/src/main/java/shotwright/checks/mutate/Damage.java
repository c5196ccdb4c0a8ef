package shotwright.checks.mutate;

import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.random.RandomGenerator;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Damages bytes the way transfers, editors, careless exporters and ill will do. Everything follows from the random source. */
final class Damage {
    private static final Pattern NUMBER = Pattern.compile("-?\\d+(\\.\\d*)?([eE][+-]?\\d+)?");
    private static final Pattern DIGIT = Pattern.compile("\\d");
    private static final Pattern WORD = Pattern.compile("[A-Za-z:_/]+");
    private static final String[] NUMBERS = {
        "0",
        "-0",
        "-1",
        "1",
        "2147483647",
        "2147483648",
        "-2147483648",
        "9999999999999999999",
        "1e309",
        "-1e309",
        "1e-320",
        "1e9",
        "1.0000001e9",
        "nan",
        "-inf",
        "1,5",
        "",
        ".",
        "1e",
        "0x10",
        "1e22",
        "1e23",
        "123456789012345678",
        "0.1",
        "7.50000001",
        "20",
        "1e-30"
    };
    /** What stands in mesh files. */
    static final String[] MESH_WORDS = {
        "solid",
        "endsolid",
        "facet",
        "endfacet",
        "vertex",
        "outer loop",
        "endloop",
        "f",
        "v",
        "f -1 -2 -3",
        "vn",
        "\\\n",
        "#",
        "\r",
        "\0",
        "<mesh>",
        "</mesh>",
        "<object id=\"1\">",
        "<components>",
        "<component objectid=\"1\"/>",
        "<component objectid=\"2\"/>",
        "<item objectid=\"1\"/>",
        "<!--",
        "<![CDATA[",
        "<!DOCTYPE model [<!ENTITY a \"b\">]>",
        "&a;",
        "&lt;",
        "transform=\"0 0 0 0 0 0 0 0 0 0 0 0\"",
        "unit=\"foot\"",
        "p:path=\"/3D/other.model\"",
        "type=\"support\"",
        "é",
        "\ufeff",
        "ISO-10303-21;"
    };
    /** What stands in STEP files. */
    static final String[] STEP_WORDS = {
        "ENDSEC;",
        "DATA;",
        "END-ISO-10303-21;",
        "CARTESIAN_POINT",
        "DIRECTION",
        "VERTEX_POINT",
        "EDGE_CURVE",
        "ORIENTED_EDGE",
        "EDGE_LOOP",
        "PLANE",
        "CYLINDRICAL_SURFACE",
        "B_SPLINE_CURVE_WITH_KNOTS",
        "ADVANCED_FACE",
        "CLOSED_SHELL",
        "MANIFOLD_SOLID_BREP",
        "PRODUCT_DEFINITION",
        "#1",
        "#999999999",
        "#9999999999",
        "$",
        "*",
        ".T.",
        ".UNSPECIFIED.",
        "(",
        ")",
        "((((",
        "'",
        "/*",
        "\\X2\\00",
        "\0",
        "é"
    };

    private final RandomGenerator r;
    private final String[] words;
    private final double blindShare;

    /** Damage with words that such files hold; a share of it takes bytes as they are. */
    Damage(RandomGenerator r, String[] words, double blindShare) {
        this.r = r;
        this.words = words;
        this.blindShare = blindShare;
    }

    byte[] of(SeedFile seed) {
        if (!seed.entries().isEmpty() && r.nextInt(4) != 0) return SeedFile.pack(entries(seed.entries()));
        byte[] b = seed.bytes();
        boolean text = seed.isText();
        for (int n = 1 + r.nextInt(2); n > 0; n--) b = text && r.nextDouble() >= blindShare ? text(b) : raw(b);
        return b;
    }

    private Map<String, byte[]> entries(Map<String, byte[]> good) {
        Map<String, byte[]> out = new LinkedHashMap<>(good);
        List<String> names = new ArrayList<>(good.keySet());
        for (int n = 1 + r.nextInt(2); n > 0; n--) {
            String name = names.get(r.nextInt(names.size()));
            byte[] content = out.getOrDefault(name, new byte[0]);
            switch (r.nextInt(12)) {
                case 0 -> out.remove(name);
                case 1 -> out.put(name + "x", content);
                case 2 -> out.put(name, raw(content));
                default -> out.put(name, text(content));
            }
        }
        return out;
    }

    /** Damage that takes the bytes as they are. */
    private byte[] raw(byte[] b) {
        if (b.length == 0) return random(r.nextInt(200));
        int at = r.nextInt(b.length);
        return switch (r.nextInt(8)) {
            case 0, 1 -> flipped(b);
            case 2 -> Arrays.copyOf(b, at);
            case 3 -> spliced(b, at, random(1 + r.nextInt(60)), at);
            case 4 -> spliced(b, at, new byte[0], Math.min(b.length, at + 1 + r.nextInt(100)));
            case 5 ->
                spliced(b, at, Arrays.copyOfRange(b, at / 2, Math.min(b.length, at / 2 + 1 + r.nextInt(200))), at);
            case 6 -> special(b);
            default -> Arrays.copyOf(b, b.length + 1 + r.nextInt(120));
        };
    }

    private byte[] flipped(byte[] b) {
        byte[] out = b.clone();
        for (int n = 1 + r.nextInt(6); n > 0; n--) out[r.nextInt(out.length)] ^= (byte) (1 << r.nextInt(8));
        return out;
    }

    /** Four bytes that mean something special as a count or a single-precision number; often the facet count itself. */
    private byte[] special(byte[] b) {
        int[] values = {
            0,
            1,
            -1,
            Integer.MAX_VALUE,
            Integer.MIN_VALUE,
            0x7fc00000,
            0x7f800000,
            0xff800000,
            1,
            0x7f7fffff,
            13,
            0x4e6e6b28
        };
        byte[] out = b.clone();
        if (out.length < 90) return out;
        int at = r.nextInt(3) == 0 ? 80 : 84 + 50 * r.nextInt(1 + (out.length - 90) / 50) + 4 * r.nextInt(12);
        if (at + 4 > out.length) at = out.length - 4;
        int v = r.nextInt(4) == 0 ? r.nextInt() : values[r.nextInt(values.length)];
        for (int i = 0; i < 4; i++) out[at + i] = (byte) (v >> 8 * i);
        return out;
    }

    /** Damage that knows about words and numbers. */
    private byte[] text(byte[] b) {
        String s = new String(b, StandardCharsets.ISO_8859_1);
        String out =
                switch (r.nextInt(10)) {
                    case 0, 1 -> replaced(s, NUMBER, NUMBERS[r.nextInt(NUMBERS.length)]);
                    case 2 -> swapped(s, NUMBER);
                    case 3 -> swapped(s, WORD);
                    case 4 -> replaced(s, WORD, words[r.nextInt(words.length)]);
                    case 5 -> {
                        int at = r.nextInt(s.length() + 1);
                        yield s.substring(0, at) + " " + words[r.nextInt(words.length)] + " " + s.substring(at);
                    }
                    case 6 -> lines(s);
                    case 7, 8 -> replaced(s, DIGIT, Integer.toString(r.nextInt(10)));
                    default ->
                        replaced(s, NUMBER, Double.toString((r.nextDouble() - 0.5) * Math.pow(10, r.nextInt(12) - 4)));
                };
        return out.getBytes(StandardCharsets.ISO_8859_1);
    }

    private String replaced(String s, Pattern what, String by) {
        List<int[]> spans = spans(s, what);
        if (spans.isEmpty()) return s + by;
        int[] p = spans.get(r.nextInt(spans.size()));
        return s.substring(0, p[0]) + by + s.substring(p[1]);
    }

    private String swapped(String s, Pattern what) {
        List<int[]> spans = spans(s, what);
        if (spans.size() < 2) return s;
        int i = r.nextInt(spans.size() - 1), j = i + 1 + r.nextInt(spans.size() - i - 1);
        int[] p = spans.get(i), q = spans.get(j);
        return s.substring(0, p[0])
                + s.substring(q[0], q[1])
                + s.substring(p[1], q[0])
                + s.substring(p[0], p[1])
                + s.substring(q[1]);
    }

    /** A line taken out, doubled, or moved. */
    private String lines(String s) {
        List<String> lines = new ArrayList<>(List.of(s.split("\n", -1)));
        int i = r.nextInt(lines.size());
        switch (r.nextInt(3)) {
            case 0 -> lines.remove(i);
            case 1 -> lines.add(r.nextInt(lines.size()), lines.get(i));
            default -> lines.add(r.nextInt(lines.size()), lines.remove(i));
        }
        return String.join("\n", lines);
    }

    /** At most 400 finds from a random place on, so that large files stay quick. */
    private List<int[]> spans(String s, Pattern what) {
        List<int[]> out = new ArrayList<>();
        Matcher m = what.matcher(s);
        int from = s.length() > 20_000 ? r.nextInt(s.length() - 10_000) : 0;
        while (out.size() < 400 && m.find(from)) {
            out.add(new int[] {m.start(), m.end()});
            from = m.end();
        }
        return out;
    }

    private byte[] spliced(byte[] b, int from, byte[] middle, int to) {
        byte[] out = Arrays.copyOf(b, from + middle.length + b.length - to);
        System.arraycopy(middle, 0, out, from, middle.length);
        System.arraycopy(b, to, out, from + middle.length, b.length - to);
        return out;
    }

    private byte[] random(int n) {
        byte[] out = new byte[n];
        r.nextBytes(out);
        return out;
    }
}
