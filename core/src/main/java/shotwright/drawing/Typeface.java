package shotwright.drawing;

import java.awt.geom.AffineTransform;
import java.awt.geom.Path2D;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.ByteBuffer;
import java.util.HashMap;
import java.util.Map;

/**
 * Outlines and widths of letters from a TrueType file (ISO/IEC 14496-22: tables head, maxp, cmap format 4, hmtx, loca, glyf). Read by
 * ourselves because Java asks the machine for its fonts before it draws a letter, and refuses on a machine that has none.
 */
public final class Typeface {
    private static final Typeface REGULAR = bundled("LiberationSans-Regular.ttf");
    private static final Typeface BOLD = bundled("LiberationSans-Bold.ttf");

    private final ByteBuffer file;
    private final Map<String, Integer> tables = new HashMap<>();
    private final Map<Integer, Path2D> outlines = new HashMap<>();
    private final int unitsPerEm;
    private final boolean longOffsets;
    private final int widths;
    private final int segments;

    private Typeface(byte[] bytes) {
        file = ByteBuffer.wrap(bytes);
        int count = file.getShort(4);
        for (int i = 0; i < count; i++) {
            byte[] tag = new byte[4];
            file.get(12 + 16 * i, tag);
            tables.put(new String(tag, java.nio.charset.StandardCharsets.US_ASCII), file.getInt(12 + 16 * i + 8));
        }
        unitsPerEm = unsigned(table("head") + 18);
        longOffsets = unsigned(table("head") + 50) == 1;
        widths = unsigned(table("hhea") + 34);
        segments = unicodeTable();
    }

    static Typeface of(boolean bold) {
        return bold ? BOLD : REGULAR;
    }

    /** Length of a line of text at the letter's size, mm. */
    public static double width(String text, Letter letter) {
        return of(letter.bold()).width(text) * letter.size();
    }

    /** Outline of a line of text, base line at y = 0, starting at x = 0, y down, scaled to the letter's size. */
    static Path2D outline(String text, Letter letter) {
        return of(letter.bold()).path(text, letter.size());
    }

    private synchronized Path2D path(String text, double size) {
        Path2D line = new Path2D.Double(Path2D.WIND_NON_ZERO);
        double k = size / unitsPerEm, x = 0;
        for (int c : text.codePoints().toArray()) {
            int glyph = glyph(c);
            Path2D shape = outlines.computeIfAbsent(glyph, g -> outline(g, 0));
            line.append(shape.getPathIterator(new AffineTransform(k, 0, 0, -k, x, 0)), false);
            x += advance(glyph) * k;
        }
        return line;
    }

    private double width(String text) {
        return text.codePoints().mapToDouble(c -> advance(glyph(c))).sum() / unitsPerEm;
    }

    private static Typeface bundled(String name) {
        try (InputStream in = Typeface.class.getResourceAsStream("/liberation/" + name)) {
            if (in == null) throw new IllegalStateException("letters: " + name + " is not on the class path");
            return new Typeface(in.readAllBytes());
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private int table(String tag) {
        Integer at = tables.get(tag);
        if (at == null) throw new IllegalStateException("letters: the font has no table " + tag);
        return at;
    }

    private int unsigned(int at) {
        return file.getShort(at) & 0xffff;
    }

    private int unicodeTable() {
        int cmap = table("cmap"), count = unsigned(cmap + 2);
        for (int i = 0; i < count; i++) {
            int at = cmap + file.getInt(cmap + 4 + 8 * i + 4);
            if (unsigned(at) == 4) return at;
        }
        throw new IllegalStateException("letters: the font has no Unicode table of format 4");
    }

    private int glyph(int codePoint) {
        if (codePoint > 0xffff) return 0;
        int n = unsigned(segments + 6) / 2;
        int ends = segments + 14, starts = ends + 2 * n + 2, deltas = starts + 2 * n, ranges = deltas + 2 * n;
        for (int i = 0; i < n; i++) {
            if (codePoint > unsigned(ends + 2 * i)) continue;
            int start = unsigned(starts + 2 * i);
            if (codePoint < start) return 0;
            int delta = unsigned(deltas + 2 * i), range = unsigned(ranges + 2 * i);
            if (range == 0) return codePoint + delta & 0xffff;
            int g = unsigned(ranges + 2 * i + range + 2 * (codePoint - start));
            return g == 0 ? 0 : g + delta & 0xffff;
        }
        return 0;
    }

    private int advance(int glyph) {
        return unsigned(table("hmtx") + 4 * Math.min(glyph, widths - 1));
    }

    private int offset(int glyph) {
        return longOffsets ? file.getInt(table("loca") + 4 * glyph) : 2 * unsigned(table("loca") + 2 * glyph);
    }

    private Path2D outline(int glyph, int depth) {
        Path2D path = new Path2D.Double(Path2D.WIND_NON_ZERO);
        int at = table("glyf") + offset(glyph);
        if (offset(glyph + 1) == offset(glyph) || depth > 4) return path;
        int contours = file.getShort(at);
        if (contours >= 0) simple(path, at + 10, contours);
        else compound(path, at + 10, depth);
        return path;
    }

    private void compound(Path2D path, int from, int depth) {
        int at = from, flags;
        do {
            flags = unsigned(at);
            int glyph = unsigned(at + 2);
            boolean words = (flags & 1) != 0;
            double dx = words ? file.getShort(at + 4) : file.get(at + 4);
            double dy = words ? file.getShort(at + 6) : file.get(at + 5);
            at += words ? 8 : 6;
            double[] m = {1, 0, 0, 1};
            if ((flags & 8) != 0) {
                m[0] = m[3] = file.getShort(at) / 16384.0;
                at += 2;
            } else if ((flags & 0x40) != 0) {
                m[0] = file.getShort(at) / 16384.0;
                m[3] = file.getShort(at + 2) / 16384.0;
                at += 4;
            } else if ((flags & 0x80) != 0) {
                for (int i = 0; i < 4; i++) m[i] = file.getShort(at + 2 * i) / 16384.0;
                at += 8;
            }
            AffineTransform place = new AffineTransform(m[0], m[1], m[2], m[3], dx, dy);
            path.append(outline(glyph, depth + 1).getPathIterator(place), false);
        } while ((flags & 0x20) != 0);
    }

    private void simple(Path2D path, int from, int contours) {
        if (contours == 0) return;
        int points = unsigned(from + 2 * contours - 2) + 1;
        int at = from + 2 * contours + 2 + unsigned(from + 2 * contours);
        byte[] flags = new byte[points];
        for (int i = 0; i < points; ) {
            byte flag = file.get(at++);
            int again = (flag & 8) != 0 ? file.get(at++) & 255 : 0;
            for (int k = 0; k <= again; k++) flags[i++] = flag;
        }
        int[] x = new int[points], y = new int[points];
        at = coordinates(x, flags, at, 2, 16);
        coordinates(y, flags, at, 4, 32);
        int start = 0;
        for (int c = 0; c < contours; c++) {
            int end = unsigned(from + 2 * c);
            contour(path, x, y, flags, start, end);
            start = end + 1;
        }
    }

    private int coordinates(int[] out, byte[] flags, int from, int shortBit, int sameBit) {
        int at = from, value = 0;
        for (int i = 0; i < out.length; i++) {
            if ((flags[i] & shortBit) != 0) {
                int step = file.get(at++) & 255;
                value += (flags[i] & sameBit) != 0 ? step : -step;
            } else if ((flags[i] & sameBit) == 0) {
                value += file.getShort(at);
                at += 2;
            }
            out[i] = value;
        }
        return at;
    }

    /** On-curve points joined by lines, off-curve points are controls of quadratic arcs; two in a row have a point between them. */
    private static void contour(Path2D path, int[] x, int[] y, byte[] flags, int start, int end) {
        int n = end - start + 1, first = start;
        while (first <= end && (flags[first] & 1) == 0) first++;
        boolean none = first > end;
        double x0 = none ? (x[start] + x[end]) / 2.0 : x[first], y0 = none ? (y[start] + y[end]) / 2.0 : y[first];
        double cx = 0, cy = 0;
        boolean control = false;
        path.moveTo(x0, y0);
        for (int k = 0; k < n; k++) {
            int i = none ? start + k : start + (first - start + 1 + k) % n;
            if ((flags[i] & 1) != 0) {
                if (control) path.quadTo(cx, cy, x[i], y[i]);
                else path.lineTo(x[i], y[i]);
                control = false;
                continue;
            }
            if (control) path.quadTo(cx, cy, (cx + x[i]) / 2, (cy + y[i]) / 2);
            cx = x[i];
            cy = y[i];
            control = true;
        }
        if (control) path.quadTo(cx, cy, x0, y0);
        path.closePath();
    }
}
