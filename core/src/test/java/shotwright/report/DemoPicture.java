package shotwright.report;

import java.awt.Graphics2D;
import java.awt.image.BufferedImage;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Objects;
import shotwright.drawing.Ink;
import shotwright.drawing.Picture;
import shotwright.drawing.PngFile;
import shotwright.drawing.Scene;
import shotwright.job.JobCard;
import shotwright.job.JobResult;
import shotwright.job.Line;
import shotwright.job.Shop;
import shotwright.job.Station;
import shotwright.progress.Progress;

/** Makes {@code docs/pictures/demo.png} from the demo part; run it from the repository's root. */
final class DemoPicture {
    private static final double WIDE = 120;
    private static final double HIGH = 88;
    private static final double DPI = 148;

    private DemoPicture() {}

    public static void main(String[] args) throws IOException {
        JobResult job = new Line(Shop.standard())
                .run(
                        Path.of("examples/parts/tension-knob.stl"),
                        JobCard.empty(),
                        Station.HALVES,
                        null,
                        Progress.SILENT);
        var review = Objects.requireNonNull(job.review());
        var mold = Objects.requireNonNull(job.mold());
        MoldPictures halves = new MoldPictures(mold);
        ReviewPictures pictures = new ReviewPictures(review, false);
        List<Scene> scenes = List.of(
                pictures.shaded(ReviewPictures.FROM_B),
                pictures.draft(ReviewPictures.FROM_B),
                halves.halfA(),
                halves.halfB());
        Path file = Path.of("docs/pictures/demo.png");
        Files.createDirectories(file.getParent());
        Files.write(file, PngFile.bytes(twoByTwo(scenes), DPI));
    }

    private static BufferedImage twoByTwo(List<Scene> scenes) {
        List<BufferedImage> four = scenes.stream()
                .map(s -> PngFile.image(Picture.drawing(s, WIDE, HIGH, DPI), DPI, Ink.WHITE))
                .toList();
        int w = four.getFirst().getWidth(), h = four.getFirst().getHeight();
        BufferedImage all = new BufferedImage(2 * w, 2 * h, BufferedImage.TYPE_INT_RGB);
        Graphics2D g = all.createGraphics();
        for (int i = 0; i < 4; i++) g.drawImage(four.get(i), i % 2 * w, i / 2 * h, null);
        g.dispose();
        return all;
    }
}
