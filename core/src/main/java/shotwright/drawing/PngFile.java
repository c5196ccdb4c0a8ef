package shotwright.drawing;

import java.awt.BasicStroke;
import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.RenderingHints;
import java.awt.Shape;
import java.awt.geom.AffineTransform;
import java.awt.geom.Path2D;
import java.awt.image.BufferedImage;
import java.awt.image.RenderedImage;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import javax.imageio.IIOImage;
import javax.imageio.ImageIO;
import javax.imageio.ImageTypeSpecifier;
import javax.imageio.ImageWriter;
import javax.imageio.metadata.IIOMetadata;
import javax.imageio.metadata.IIOMetadataNode;
import javax.imageio.stream.MemoryCacheImageOutputStream;

/** Writes a drawing as PNG at a given fineness. Letters are filled outlines: no font of the machine is asked for. */
public final class PngFile {
    private PngFile() {}

    /** The drawing on a ground colour, dpi pixels to the inch. */
    public static BufferedImage image(Drawing drawing, double dpi, int ground) {
        double k = dpi / 25.4;
        int w = (int) Math.max(1, Math.round(drawing.width() * k)),
                h = (int) Math.max(1, Math.round(drawing.height() * k));
        if ((long) w * h > 200_000_000L)
            throw new IllegalArgumentException("dpi: " + dpi + " gives " + w + " × " + h + " pixels, too many");
        BufferedImage image = new BufferedImage(w, h, BufferedImage.TYPE_INT_RGB);
        Graphics2D g = image.createGraphics();
        g.setColor(new Color(ground));
        g.fillRect(0, 0, w, h);
        g.setRenderingHint(RenderingHints.KEY_ANTIALIASING, RenderingHints.VALUE_ANTIALIAS_ON);
        g.setRenderingHint(RenderingHints.KEY_STROKE_CONTROL, RenderingHints.VALUE_STROKE_PURE);
        g.setRenderingHint(RenderingHints.KEY_INTERPOLATION, RenderingHints.VALUE_INTERPOLATION_BICUBIC);
        g.scale(k, k);
        drawing.marks().forEach(m -> mark(g, m));
        g.dispose();
        return image;
    }

    /** The file's bytes on white paper. */
    public static byte[] bytes(Drawing drawing, double dpi) {
        return bytes(image(drawing, dpi, Ink.WHITE), dpi);
    }

    public static void write(Drawing drawing, double dpi, Path file) throws IOException {
        Files.write(file, bytes(drawing, dpi));
    }

    /** An image as PNG; the fineness is noted in the file when it is above zero. */
    public static byte[] bytes(RenderedImage image, double dpi) {
        ImageWriter writer = ImageIO.getImageWritersByFormatName("png").next();
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        try (MemoryCacheImageOutputStream stream = new MemoryCacheImageOutputStream(out)) {
            IIOMetadata meta = writer.getDefaultImageMetadata(ImageTypeSpecifier.createFromRenderedImage(image), null);
            if (dpi > 0) fineness(meta, dpi);
            writer.setOutput(stream);
            writer.write(new IIOImage(image, null, meta));
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        } finally {
            writer.dispose();
        }
        return out.toByteArray();
    }

    private static void fineness(IIOMetadata meta, double dpi) throws IOException {
        IIOMetadataNode root = new IIOMetadataNode("javax_imageio_png_1.0"), phys = new IIOMetadataNode("pHYs");
        String perMetre = Long.toString(Math.round(dpi / 0.0254));
        phys.setAttribute("pixelsPerUnitXAxis", perMetre);
        phys.setAttribute("pixelsPerUnitYAxis", perMetre);
        phys.setAttribute("unitSpecifier", "meter");
        root.appendChild(phys);
        meta.mergeTree("javax_imageio_png_1.0", root);
    }

    private static void mark(Graphics2D g, Mark mark) {
        switch (mark) {
            case Mark.Line l -> {
                g.setColor(new Color(l.pen().rgb()));
                g.setStroke(stroke(l.pen()));
                g.draw(l.shape());
            }
            case Mark.Fill f -> {
                g.setColor(new Color(f.rgb()));
                Path2D evenOdd = new Path2D.Double(f.shape());
                evenOdd.setWindingRule(Path2D.WIND_EVEN_ODD);
                g.fill(evenOdd);
            }
            case Mark.Text t -> {
                g.setColor(new Color(t.letter().rgb()));
                g.fill(letters(t));
            }
            case Mark.Pixels p -> pixels(g, p);
            case Mark.Link k -> k.marks().forEach(m -> mark(g, m));
        }
    }

    /** A picture made for this fineness is copied pixel for pixel, so that it stays sharp; any other is scaled. */
    private static void pixels(Graphics2D g, Mark.Pixels p) {
        AffineTransform paper = g.getTransform(), at = AffineTransform.getTranslateInstance(p.x(), p.y());
        int w = p.image().getWidth(), h = p.image().getHeight();
        at.scale(p.width() / w, p.height() / h);
        double wide = p.width() * paper.getScaleX(), high = p.height() * paper.getScaleY();
        if (Math.abs(wide - w) > 1 || Math.abs(high - h) > 1) {
            g.drawImage(p.image(), at, null);
            return;
        }
        g.setTransform(new AffineTransform());
        int x = (int) Math.round(p.x() * paper.getScaleX() + paper.getTranslateX());
        int y = (int) Math.round(p.y() * paper.getScaleY() + paper.getTranslateY());
        g.drawImage(p.image(), x, y, null);
        g.setTransform(paper);
    }

    private static Shape letters(Mark.Text t) {
        double shift =
                switch (t.letter().align()) {
                    case START -> 0;
                    case MIDDLE -> -Typeface.width(t.text(), t.letter()) / 2;
                    case END -> -Typeface.width(t.text(), t.letter());
                };
        AffineTransform at = AffineTransform.getTranslateInstance(t.x(), t.y());
        at.rotate(-Math.toRadians(t.turnDeg()));
        at.translate(shift, 0);
        return at.createTransformedShape(Typeface.outline(t.text(), t.letter()));
    }

    private static BasicStroke stroke(Pen pen) {
        List<Double> d = pen.dashes();
        if (d.isEmpty()) return new BasicStroke((float) pen.weight(), BasicStroke.CAP_BUTT, BasicStroke.JOIN_ROUND);
        float[] dashes = new float[d.size()];
        for (int i = 0; i < dashes.length; i++) dashes[i] = d.get(i).floatValue();
        return new BasicStroke((float) pen.weight(), BasicStroke.CAP_BUTT, BasicStroke.JOIN_ROUND, 10, dashes, 0);
    }
}
