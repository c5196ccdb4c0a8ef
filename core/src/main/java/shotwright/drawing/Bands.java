package shotwright.drawing;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.stream.IntStream;
import org.jspecify.annotations.Nullable;

/**
 * The bands of a map as they are seen in a picture: lines between them, and where there is room to write what they are, so that the map is
 * read without its colours.
 */
final class Bands {
    /** Nothing of a map is seen here. */
    private static final byte NONE = -1;

    private final Raster raster;
    private final int width;
    private final int height;
    private final byte[] band;

    Bands(Raster raster, ColourScale scale) {
        this.raster = raster;
        width = raster.width / raster.fine;
        height = raster.height / raster.fine;
        band = new byte[raster.value.length];
        IntStream.range(0, raster.height).parallel().forEach(j -> {
            for (int p = j * raster.width; p < (j + 1) * raster.width; p++)
                band[p] = (byte) scale.band(raster.value[p]);
        });
    }

    /**
     * A place where a band is seen.
     *
     * @param band counted from 0
     * @param value what the map says there
     * @param x pixels of the picture from the left
     * @param y pixels of the picture from the top
     * @param room pixels to the next place that is not of this band or has a line on it
     */
    record Place(int band, double value, int x, int y, double room) {}

    /** Draws the lines between bands of one surface; width in pixels of the picture. */
    void lines(double lineWidth, int colour) {
        int w = raster.width;
        double d = lineWidth * raster.fine;
        for (int p = 0; p + w < band.length; p++) {
            if (p % w + 1 < w && parts(p, p + 1, raster.slopeX) || parts(p, p + w, raster.slopeY))
                raster.dot(p % w + 1.0, p / w + 1.0, d, colour);
        }
    }

    /** Whether two bands meet between neighbours on one surface. */
    private boolean parts(int p, int q, float[] slope) {
        return band[p] != band[q]
                && band[p] != NONE
                && band[q] != NONE
                && Math.abs(raster.depth[q] - raster.depth[p] - slope[p]) < 2 * raster.fine;
    }

    /**
     * The roomiest places of each band, at most {@code most} of each and {@code apart} pixels from each other; the roomiest even if it is
     * narrower than {@code room}, the others only if they have that room.
     */
    List<Place> places(double room, double apart, int most) {
        float[] free = room();
        int bands = 0;
        for (byte b : band) bands = Math.max(bands, b + 1);
        List<Place> found = new ArrayList<>();
        for (int b = 0; b < bands; b++) {
            List<Place> own = new ArrayList<>();
            while (own.size() < most) {
                Place p = roomiest(free, b, own, apart);
                if (p == null || !own.isEmpty() && p.room() < room) break;
                own.add(p);
            }
            found.addAll(own);
        }
        return found;
    }

    private @Nullable Place roomiest(float[] free, int b, List<Place> but, double apart) {
        int best = -1;
        for (int p = 0; p < free.length; p++) {
            if (free[p] <= (best < 0 ? 0 : free[best]) || band[fine(p)] != b) continue;
            int x = p % width, y = p / width;
            if (but.stream().noneMatch(o -> Math.hypot(o.x() - x, o.y() - y) < apart)) best = p;
        }
        if (best < 0) return null;
        return new Place(b, raster.value[fine(best)], best % width, best / width, free[best]);
    }

    /** The fine pixel in the middle of a pixel. */
    private int fine(int p) {
        int half = raster.fine / 2;
        return (p / width * raster.fine + half) * raster.width + p % width * raster.fine + half;
    }

    /** Distance of every pixel to the next one of another band or with a line on it: steps of 1 straight and √2 across, two passes (Borgefors 1986). */
    private float[] room() {
        float[] d = new float[width * height];
        float across = (float) Math.sqrt(2);
        Arrays.fill(d, Float.MAX_VALUE);
        for (int p = 0; p < d.length; p++) {
            int x = p % width, y = p / width;
            boolean inked = raster.rgb[fine(p)] == Ink.BLACK;
            if (x == 0 || y == 0 || x == width - 1 || y == height - 1 || inked || band[fine(p)] == NONE) d[p] = 0;
            else if (band[fine(p - 1)] != band[fine(p)] || band[fine(p - width)] != band[fine(p)]) {
                d[p] = 0;
                d[p - 1] = band[fine(p - 1)] != band[fine(p)] ? 0 : d[p - 1];
                d[p - width] = band[fine(p - width)] != band[fine(p)] ? 0 : d[p - width];
            }
        }
        for (int p = width + 1; p < d.length; p++) {
            if (d[p] == 0) continue;
            d[p] = Math.min(
                    d[p],
                    Math.min(
                            Math.min(d[p - 1], d[p - width]) + 1,
                            Math.min(d[p - width - 1], d[p - width + 1]) + across));
        }
        for (int p = d.length - width - 2; p >= 0; p--) {
            if (d[p] == 0) continue;
            d[p] = Math.min(
                    d[p],
                    Math.min(
                            Math.min(d[p + 1], d[p + width]) + 1,
                            Math.min(d[p + width + 1], d[p + width - 1]) + across));
        }
        return d;
    }
}
