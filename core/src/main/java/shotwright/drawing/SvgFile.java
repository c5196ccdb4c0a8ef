package shotwright.drawing;

import java.awt.Shape;
import java.awt.geom.PathIterator;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Base64;
import java.util.Locale;
import java.util.StringJoiner;

/** Writes a drawing as SVG 1.1 in millimetres, whole in itself: no script, no style sheet, nothing to fetch. */
public final class SvgFile {
    private static final String FACE =
            "B612, system-ui, -apple-system, 'Segoe UI', 'Noto Sans', 'Liberation Sans', sans-serif";

    /** Faces as wide as the one words are measured with. */
    private static final String MEASURED = "'Liberation Sans', Arial, Helvetica, sans-serif";

    private final StringBuilder out = new StringBuilder();

    private SvgFile() {}

    /** The SVG element as text, to be put into a page or a file. */
    public static String text(Drawing drawing) {
        return text(drawing, FACE);
    }

    /** The same for a sheet on which words stand close: in letters as wide as they were measured. */
    public static String sheet(Drawing drawing) {
        return text(drawing, MEASURED);
    }

    private static String text(Drawing drawing, String face) {
        SvgFile f = new SvgFile();
        String w = num(drawing.width()), h = num(drawing.height());
        f.out.append("<svg xmlns=\"http://www.w3.org/2000/svg\" xmlns:xlink=\"http://www.w3.org/1999/xlink\" width=\"")
                .append(w)
                .append("mm\" height=\"")
                .append(h)
                .append("mm\" viewBox=\"0 0 ")
                .append(w)
                .append(' ')
                .append(h)
                .append("\" role=\"img\" font-family=\"")
                .append(face)
                .append("\" stroke-linejoin=\"round\"><title>")
                .append(escape(drawing.title()))
                .append("</title>\n");
        drawing.marks().forEach(f::mark);
        return f.out.append("</svg>\n").toString();
    }

    public static void write(Drawing drawing, Path file) throws IOException {
        Files.writeString(file, "<?xml version=\"1.0\" encoding=\"UTF-8\"?>\n" + text(drawing), StandardCharsets.UTF_8);
    }

    private void mark(Mark mark) {
        switch (mark) {
            case Mark.Line l -> line(l);
            case Mark.Fill f ->
                out.append("<path fill=\"")
                        .append(Ink.hex(f.rgb()))
                        .append("\" fill-rule=\"evenodd\" d=\"")
                        .append(data(f.shape()))
                        .append("\"/>\n");
            case Mark.Text t -> letters(t);
            case Mark.Pixels p ->
                out.append("<image x=\"")
                        .append(num(p.x()))
                        .append("\" y=\"")
                        .append(num(p.y()))
                        .append("\" width=\"")
                        .append(num(p.width()))
                        .append("\" height=\"")
                        .append(num(p.height()))
                        .append("\" preserveAspectRatio=\"none\" xlink:href=\"data:image/png;base64,")
                        .append(Base64.getEncoder().encodeToString(PngFile.bytes(p.image(), 0)))
                        .append("\"/>\n");
            case Mark.Link k -> {
                out.append("<a xlink:href=\"").append(escape(k.target())).append("\">\n");
                k.marks().forEach(this::mark);
                out.append("</a>\n");
            }
        }
    }

    private void line(Mark.Line l) {
        String d = data(l.shape());
        if (d.isEmpty()) return;
        out.append("<path fill=\"none\" stroke=\"")
                .append(Ink.hex(l.pen().rgb()))
                .append("\" stroke-width=\"")
                .append(num(l.pen().weight()))
                .append('"');
        if (!l.pen().dashes().isEmpty()) {
            StringJoiner dashes = new StringJoiner(" ");
            l.pen().dashes().forEach(v -> dashes.add(num(v)));
            out.append(" stroke-dasharray=\"").append(dashes).append('"');
        }
        out.append(" d=\"").append(d).append("\"/>\n");
    }

    private void letters(Mark.Text t) {
        out.append("<text x=\"")
                .append(num(t.x()))
                .append("\" y=\"")
                .append(num(t.y()))
                .append("\" font-size=\"")
                .append(num(t.letter().size()))
                .append("\" fill=\"")
                .append(Ink.hex(t.letter().rgb()))
                .append('"');
        if (t.letter().bold()) out.append(" font-weight=\"700\"");
        switch (t.letter().align()) {
            case START -> {}
            case MIDDLE -> out.append(" text-anchor=\"middle\"");
            case END -> out.append(" text-anchor=\"end\"");
        }
        if (t.turnDeg() != 0)
            out.append(" transform=\"rotate(")
                    .append(num(-t.turnDeg()))
                    .append(' ')
                    .append(num(t.x()))
                    .append(' ')
                    .append(num(t.y()))
                    .append(")\"");
        out.append('>').append(escape(t.text())).append("</text>\n");
    }

    private static String data(Shape shape) {
        StringBuilder d = new StringBuilder();
        double[] c = new double[6];
        for (PathIterator i = shape.getPathIterator(null); !i.isDone(); i.next()) {
            switch (i.currentSegment(c)) {
                case PathIterator.SEG_MOVETO -> points(d, 'M', c, 2);
                case PathIterator.SEG_LINETO -> points(d, 'L', c, 2);
                case PathIterator.SEG_QUADTO -> points(d, 'Q', c, 4);
                case PathIterator.SEG_CUBICTO -> points(d, 'C', c, 6);
                default -> d.append('Z');
            }
        }
        return d.toString();
    }

    private static void points(StringBuilder d, char letter, double[] c, int count) {
        d.append(letter).append(num(c[0]));
        for (int i = 1; i < count; i++) d.append(' ').append(num(c[i]));
    }

    /** A number to the thousandth without needless noughts. */
    static String num(double v) {
        double r = Math.round(v * 1000) / 1000.0;
        if (r == Math.rint(r)) return Long.toString((long) r);
        return String.format(Locale.ROOT, "%.3f", r).replaceFirst("0+$", "");
    }

    /** Text made safe between tags and inside quotes; characters XML 1.0 forbids are left out. */
    static String escape(String s) {
        StringBuilder b = new StringBuilder();
        s.codePoints()
                .filter(c ->
                        c == '\t' || c == '\n' || c >= 0x20 && c < 0xd800 || c >= 0xe000 && c < 0xfffe || c > 0xffff)
                .forEach(c -> {
                    switch (c) {
                        case '&' -> b.append("&amp;");
                        case '<' -> b.append("&lt;");
                        case '>' -> b.append("&gt;");
                        case '"' -> b.append("&quot;");
                        default -> b.appendCodePoint(c);
                    }
                });
        return b.toString();
    }
}
