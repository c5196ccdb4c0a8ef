package shotwright.drawing;

import java.util.stream.IntStream;

/**
 * Draws outlines and edges into a raster: borders against the ground, steps in depth (surface in front of surface), and given edges where
 * they are not hidden.
 */
final class Outliner {
    private final Raster raster;

    Outliner(Raster raster) {
        this.raster = raster;
    }

    /** Borders and steps; widths in pixels of the picture. */
    void outlines(double borderWidth, double stepWidth, int colour) {
        int w = raster.width, h = raster.height;
        double border = borderWidth * raster.fine, step = stepWidth * raster.fine;
        byte[] found = new byte[w * h];
        IntStream.range(0, h).parallel().forEach(j -> {
            for (int i = 0; i < w; i++) {
                int p = j * w + i, kind = i + 1 < w ? kind(p, p + 1, raster.slopeX) : 0;
                if (j + 1 < h) kind = Math.max(kind, kind(p, p + w, raster.slopeY));
                found[p] = (byte) kind;
            }
        });
        for (int pass = 1; pass <= 2; pass++) {
            for (int p = 0; p < found.length; p++) {
                if (found[p] == pass) raster.dot(p % w + 1.0, p / w + 1.0, pass == 2 ? border : step, colour);
            }
        }
    }

    /** 2 where the ground begins, 1 where neither surface reaches the other when carried on by one pixel, else 0. */
    private int kind(int p, int q, float[] slope) {
        float a = raster.depth[p], b = raster.depth[q];
        if (a == Raster.NOTHING && b == Raster.NOTHING) return 0;
        if (a == Raster.NOTHING || b == Raster.NOTHING) return 2;
        float limit = 2f * raster.fine;
        if (Math.abs(b - a) < limit) return 0;
        boolean nearFirst = a > b;
        float near = nearFirst ? a : b, far = nearFirst ? b : a;
        float nearSlope = nearFirst ? slope[p] : -slope[q], farSlope = nearFirst ? -slope[q] : slope[p];
        boolean step = Math.abs(near + nearSlope - far) > limit
                && Math.abs(far + farSlope - near) > limit + Math.abs(farSlope);
        return step ? 1 : 0;
    }

    /** A straight edge from a to b (x, y, depth) where it is seen; width in pixels of the picture. */
    void edge(double[] a, double[] b, double width, int colour) {
        double dx = b[0] - a[0], dy = b[1] - a[1], length = Math.max(Math.abs(dx), Math.abs(dy));
        if (!(length < 1e7)) return;
        int steps = (int) Math.ceil(length) + 1;
        double d = width * raster.fine, bias = 0.75 * raster.fine;
        for (int k = 0; k <= steps; k++) {
            double s = (double) k / steps, x = a[0] + dx * s, y = a[1] + dy * s;
            if (x < -d || y < -d || x > raster.width + d || y > raster.height + d) continue;
            double z = a[2] + (b[2] - a[2]) * s;
            if (z >= raster.farthestAround(x, y) - bias) raster.dot(x, y, d, colour);
        }
    }

    /** A stretch of an edge between two shares of its length. */
    interface Stretch {
        void between(double from, double to);
    }

    /** The stretches of an edge that nothing hides. */
    void seen(double[] a, double[] b, Stretch stretch) {
        double dx = b[0] - a[0], dy = b[1] - a[1], length = Math.max(Math.abs(dx), Math.abs(dy));
        if (!(length < 1e7)) return;
        int steps = (int) Math.ceil(length) + 1;
        double bias = 0.75 * raster.fine, begin = -1;
        for (int k = 0; k <= steps; k++) {
            double s = (double) k / steps;
            double z = a[2] + (b[2] - a[2]) * s;
            boolean seen = z >= raster.farthestAround(a[0] + dx * s, a[1] + dy * s) - bias;
            if (seen && begin < 0) begin = s;
            boolean ends = begin >= 0 && (!seen || k == steps);
            if (!ends) continue;
            double end = seen ? 1 : (k - 1.0) / steps;
            if (end > begin) stretch.between(begin, end);
            begin = -1;
        }
    }
}
