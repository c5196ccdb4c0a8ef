package shotwright.report;

import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.image.BufferedImage;
import java.util.LinkedHashMap;
import java.util.Map;
import shotwright.drawing.Drawing;
import shotwright.drawing.Ink;
import shotwright.drawing.PngFile;
import shotwright.job.JobResult;
import shotwright.layout.LayoutResult;
import shotwright.mold.MoldResult;
import shotwright.mold.export.WholeFile;
import shotwright.progress.Parallel;
import shotwright.progress.Progress;
import shotwright.review.ReviewResult;

/** The pictures of a job: names in the job folder, and what writes each. */
public final class Pictures {
    /** Pixels to the inch; a sheet 180 mm wide is 1417 pixels wide. */
    static final double DPI = 200;

    private static final int MARGIN = 30;

    private Pictures() {}

    /** A picture that is drawn when it is written. */
    @FunctionalInterface
    interface Draws {
        Drawing draw();
    }

    /**
     * Pictures of every station the job reached. Each is drawn only when it is written.
     *
     * @throws Progress.Cancelled when asked to stop
     */
    public static Map<String, WholeFile.Content> of(JobResult job, Progress progress) {
        progress.at("drawing", 0);
        Map<String, Draws> drawings = drawings(job);
        Map<String, WholeFile.Content> files = new LinkedHashMap<>();
        Runnable drawn = Parallel.steps(progress, "drawing", drawings.size());
        drawings.forEach((name, d) -> files.put("pictures/" + name + ".png", out -> {
            out.write(PngFile.bytes(withMargin(PngFile.image(d.draw(), DPI, Ink.WHITE)), DPI));
            drawn.run();
        }));
        return files;
    }

    /** Every picture of a job by its name. */
    static Map<String, Draws> drawings(JobResult job) {
        Map<String, Draws> drawings = new LinkedHashMap<>();
        ReviewResult review = job.review();
        LayoutResult layout = job.layout();
        MoldResult mold = job.mold();
        if (review != null) new ReviewPictures(review, job.inch()).add(drawings);
        if (review != null && layout != null) {
            LayoutPictures.add(drawings, layout, review.pulled(), job.inch());
            if (mold != null) new MoldPictures(mold).add(drawings, layout, review.pulled(), job.inch());
        }
        ChartPictures.add(drawings, job);
        return drawings;
    }

    /** A drawing on white paper gets a margin; a shaded picture runs to its edge. */
    private static BufferedImage withMargin(BufferedImage image) {
        if ((image.getRGB(0, image.getHeight() - 1) & 0xffffff) != Ink.WHITE) return image;
        int w = image.getWidth() + 2 * MARGIN, h = image.getHeight() + 2 * MARGIN;
        BufferedImage wide = new BufferedImage(w, h, BufferedImage.TYPE_INT_RGB);
        Graphics2D g = wide.createGraphics();
        g.setColor(new Color(Ink.WHITE));
        g.fillRect(0, 0, w, h);
        g.drawImage(image, MARGIN, MARGIN, null);
        g.dispose();
        return wide;
    }
}
