package shotwright.drawing;

import java.util.List;

/**
 * A finished drawing: neutral marks on a sheet of given size. Made with a {@link Pencil}, written with {@link SvgFile} or {@link PngFile}.
 *
 * @param title what it shows, in one sentence for those who cannot see it
 * @param width mm
 * @param height mm
 * @param marks in the order they are laid down
 */
public record Drawing(String title, double width, double height, List<Mark> marks) {
    public Drawing {
        if (!(width > 0 && height > 0))
            throw new IllegalArgumentException("size: " + width + " × " + height + " is not a sheet");
        marks = List.copyOf(marks);
    }
}
