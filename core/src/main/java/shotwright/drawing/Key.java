package shotwright.drawing;

import java.awt.geom.Rectangle2D;
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
            if (texture == Texture.HATCH_A || texture == Texture.HATCH_B)
                p.hatch(box, texture == Texture.HATCH_A ? 45 : -45, 1.5, Pen.HAIR);
            p.shape(box, Pen.THIN);
        });
    }

    /** Keys side by side, from x on, their middle at the height y. */
    public static void row(Pencil paper, double x, double y, List<Key> keys) {
        double at = x;
        for (Key k : keys) {
            k.sample.draw(paper, at, y);
            paper.textCentred(at + 7.5, y, k.word, Letter.SMALL);
            at += 11.5 + Typeface.width(k.word, Letter.SMALL);
        }
    }
}
