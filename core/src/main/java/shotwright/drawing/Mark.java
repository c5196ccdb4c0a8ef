package shotwright.drawing;

import java.awt.Shape;
import java.awt.image.BufferedImage;
import java.util.List;

/** One thing on the paper, in paper millimetres, y down. */
public sealed interface Mark {
    /** A line along a shape. */
    record Line(Shape shape, Pen pen) implements Mark {}

    /** An area filled with one colour, even-odd. */
    record Fill(Shape shape, int rgb) implements Mark {}

    /**
     * A line of lettering.
     *
     * @param text what it says
     * @param x reference point
     * @param y height of the base line
     * @param letter look of the letters
     * @param turnDeg turn to the left about the reference point
     */
    record Text(String text, double x, double y, Letter letter, double turnDeg) implements Mark {}

    /** A picture of pixels laid over a rectangle. */
    record Pixels(BufferedImage image, double x, double y, double width, double height) implements Mark {}

    /** Marks that lead to a row in the text, for example {@code #finding-3}; on paper they are only themselves. */
    record Link(String target, List<Mark> marks) implements Mark {
        public Link {
            marks = List.copyOf(marks);
        }
    }
}
