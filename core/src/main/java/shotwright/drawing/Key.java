package shotwright.drawing;

import java.awt.geom.Rectangle2D;
import java.util.ArrayList;
import java.util.List;

/**
 * A sample of a form with what it means.
 *
 * @param word what it means
 * @param sample draws it 6 mm wide
 */
public record Key(String word, Sample sample) {
    /** Height a row of keys takes, mm. */
    public static final double HIGH = 9;

    /** Draws a sample from x on, its middle at the height y, mm on paper. */
    public interface Sample {
        void draw(Pencil paper, double x, double y);
    }

    /** A filled or hatched area with a border. */
    public static Key area(String word, int rgb, Texture texture) {
        return new Key(word, (p, x, y) -> {
            Rectangle2D box = new Rectangle2D.Double(x, y - 1.4, 6, 2.8);
            p.fill(box, rgb);
            p.hatch(box, texture, 1.5);
            p.shape(box, Pen.THIN);
        });
    }

    /** Keys side by side, from x on, their middle at the height y. */
    public static void row(Pencil paper, double x, double y, List<Key> keys) {
        double at = x;
        for (Key k : keys) {
            k.sample.draw(paper, at, y);
            paper.textCentred(at + 7.5, y, k.word, Letter.SMALL);
            at += k.width();
        }
    }

    /** The same in as many rows, {@link #HIGH} apart, as a width asks for. */
    public static void rows(Pencil paper, double x, double y, double width, List<Key> keys) {
        List<List<Key>> rows = broken(keys, width);
        for (int i = 0; i < rows.size(); i++) row(paper, x, y + i * HIGH, rows.get(i));
    }

    /** How many rows keys take in a width. */
    public static int rows(List<Key> keys, double width) {
        return broken(keys, width).size();
    }

    private static List<List<Key>> broken(List<Key> keys, double width) {
        List<List<Key>> rows = new ArrayList<>();
        double left = 0;
        for (Key k : keys) {
            double wide = k.width();
            if (rows.isEmpty() || wide > left) {
                rows.add(new ArrayList<>());
                left = width;
            }
            rows.getLast().add(k);
            left -= wide;
        }
        return rows;
    }

    private double width() {
        return 11.5 + Typeface.width(word, Letter.SMALL);
    }
}
