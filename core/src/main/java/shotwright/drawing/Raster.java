package shotwright.drawing;

import java.awt.image.BufferedImage;
import java.awt.image.DataBufferInt;
import java.util.Arrays;
import java.util.stream.IntStream;

/**
 * A depth buffer with colours: the nearest surface at every fine pixel, {@code fine} × {@code fine} of them to a pixel of the picture. Fine
 * pixel (i, j) has its middle at (i + ½, j + ½); depth grows towards the eye and is measured in fine pixels, so that slopes are plain numbers.
 */
final class Raster {
    static final float NOTHING = Float.NEGATIVE_INFINITY;

    final int width;
    final int height;
    final int fine;
    final float[] depth;
    final int[] rgb;

    /** Slopes of the surface at a fine pixel, depth per fine pixel to the right and down; packed as two floats. */
    final float[] slopeX;

    final float[] slopeY;

    /** What a map says at a fine pixel, NaN where there is no map; empty until {@link #mapped} is called. */
    float[] value = new float[0];

    Raster(int pictureWidth, int pictureHeight, int fine, int ground) {
        this.width = pictureWidth * fine;
        this.height = pictureHeight * fine;
        this.fine = fine;
        depth = new float[width * height];
        rgb = new int[width * height];
        slopeX = new float[width * height];
        slopeY = new float[width * height];
        Arrays.fill(depth, NOTHING);
        Arrays.fill(rgb, ground);
    }

    /** Keeps the values of maps from now on. */
    void mapped() {
        if (value.length > 0) return;
        value = new float[width * height];
        Arrays.fill(value, Float.NaN);
    }

    /** Gives the colour of a fine pixel from the straight-line values between the corners. */
    interface Colouring {
        int rgb(int x, int y, double shade, double value);
    }

    /**
     * Fills a triangle. Corners are x, y, depth, shade, value; both windings are drawn. A long kernel: rows and spans in one piece keep the
     * edges of neighbours exactly on the same pixels.
     */
    void triangle(double[] a, double[] b, double[] c, Colouring colouring) {
        double area = (b[0] - a[0]) * (c[1] - a[1]) - (c[0] - a[0]) * (b[1] - a[1]);
        if (area == 0 || Double.isNaN(area)) return;
        double[] low = a, mid = b, high = c, t;
        if (before(mid, low)) {
            t = low;
            low = mid;
            mid = t;
        }
        if (before(high, mid)) {
            t = mid;
            mid = high;
            high = t;
        }
        if (before(mid, low)) {
            t = low;
            low = mid;
            mid = t;
        }
        int first = Math.max(0, (int) Math.ceil(low[1] - 0.5)), end = Math.min(height, (int) Math.ceil(high[1] - 0.5));
        if (first >= end) return;
        double[] gx = new double[3], gy = new double[3];
        for (int k = 0; k < 3; k++) {
            double u = b[2 + k] - a[2 + k], v = c[2 + k] - a[2 + k];
            gx[k] = (u * (c[1] - a[1]) - v * (b[1] - a[1])) / area;
            gy[k] = (v * (b[0] - a[0]) - u * (c[0] - a[0])) / area;
        }
        double least = Math.min(a[2], Math.min(b[2], c[2])), most = Math.max(a[2], Math.max(b[2], c[2]));
        for (int j = first; j < end; j++) {
            double y = j + 0.5;
            double x1 = at(low, high, y), x2 = y < mid[1] ? at(low, mid, y) : at(mid, high, y);
            int from = Math.max(0, (int) Math.ceil(Math.min(x1, x2) - 0.5));
            int to = Math.min(width, (int) Math.ceil(Math.max(x1, x2) - 0.5));
            for (int i = from, p = j * width + from; i < to; i++, p++) {
                double dx = i + 0.5 - a[0], dy = y - a[1];
                double z = Math.clamp(a[2] + gx[0] * dx + gy[0] * dy, least, most);
                if (z <= depth[p]) continue;
                depth[p] = (float) z;
                slopeX[p] = (float) gx[0];
                slopeY[p] = (float) gy[0];
                double shade = a[3] + gx[1] * dx + gy[1] * dy;
                float v = (float) (a[4] + gx[2] * dx + gy[2] * dy);
                rgb[p] = colouring.rgb(i, j, shade, v);
                if (value.length > 0) value[p] = v;
            }
        }
    }

    private static boolean before(double[] p, double[] q) {
        return p[1] < q[1] || p[1] == q[1] && p[0] < q[0];
    }

    private static double at(double[] p, double[] q, double y) {
        return q[1] == p[1] ? p[0] : p[0] + (q[0] - p[0]) * (y - p[1]) / (q[1] - p[1]);
    }

    /** A round dot of ink, diameter in fine pixels. */
    void dot(double x, double y, double diameter, int colour) {
        double r = diameter / 2;
        for (int j = Math.max(0, (int) Math.ceil(y - r - 0.5)); j < Math.min(height, y + r - 0.5 + 1e-9); j++) {
            double dy = j + 0.5 - y, half = Math.sqrt(Math.max(0, r * r - dy * dy));
            int from = Math.max(0, (int) Math.ceil(x - half - 0.5));
            int to = Math.min(width, (int) Math.floor(x + half - 0.5) + 1);
            for (int i = from; i < to; i++) rgb[j * width + i] = colour;
        }
    }

    /** The least depth in the square of 3 × 3 fine pixels around a point: an edge in front of it is seen. */
    float farthestAround(double x, double y) {
        int ci = (int) Math.floor(x), cj = (int) Math.floor(y);
        float least = Float.POSITIVE_INFINITY;
        for (int j = Math.max(0, cj - 1); j <= Math.min(height - 1, cj + 1); j++)
            for (int i = Math.max(0, ci - 1); i <= Math.min(width - 1, ci + 1); i++)
                least = Math.min(least, depth[j * width + i]);
        return least;
    }

    /** The picture: fine pixels averaged. */
    BufferedImage image() {
        int w = width / fine, h = height / fine, n = fine * fine;
        BufferedImage out = new BufferedImage(w, h, BufferedImage.TYPE_INT_RGB);
        int[] pixels = ((DataBufferInt) out.getRaster().getDataBuffer()).getData();
        IntStream.range(0, h).parallel().forEach(j -> {
            for (int i = 0; i < w; i++) {
                int r = n / 2, g = n / 2, b = n / 2;
                for (int q = 0; q < fine; q++) {
                    int p = (j * fine + q) * width + i * fine;
                    for (int k = 0; k < fine; k++) {
                        int c = rgb[p + k];
                        r += c >> 16 & 255;
                        g += c >> 8 & 255;
                        b += c & 255;
                    }
                }
                pixels[j * w + i] = r / n << 16 | g / n << 8 | b / n;
            }
        });
        return out;
    }
}
