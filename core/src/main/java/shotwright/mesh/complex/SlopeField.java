package shotwright.mesh.complex;

/**
 * The height of a surface that leaves the border of a piece with limited slope: at distance r from border points of height z it lies at
 * clamp(rest, max(z − k r), min(z + k r)). The rest height is the one asked for when the border reaches it, else the mean height of the outer loop.
 * Long border edges are sampled, so that the surface does not sag between their ends.
 */
final class SlopeField {
    private static final int SAMPLES = 3000;

    private final double slope;
    private final double rest;
    private final double[] x;
    private final double[] y;
    private final double[] z;
    /** The samples away from the rest height, the only ones that raise or lower the surface, come first. */
    private final int lifted;

    SlopeField(Outline o, Polygons.Patch patch, Grade.Sloped grade, Grain grain) {
        slope = grade.slope();
        double length = o.length(patch.shell());
        int[][] loops = new int[1 + patch.holes().size()][];
        loops[0] = patch.shell();
        for (int i = 1; i < loops.length; i++) {
            loops[i] = patch.holes().get(i - 1);
            length += o.length(loops[i]);
        }
        rest = rest(o, loops, grade.restHeight(), grain);
        DoubleRows away = new DoubleRows(), still = new DoubleRows();
        double step = Math.max(length / SAMPLES, grade.spacing());
        for (int[] loop : loops) {
            for (int i = 0; i < loop.length; i++) {
                int p = loop[i], q = loop[(i + 1) % loop.length];
                int n = 1 + (int) (Math.hypot(o.px[p] - o.px[q], o.py[p] - o.py[q]) / step);
                for (int k = 0; k < n; k++) {
                    double t = (double) k / n, h = o.height[p] + t * (o.height[q] - o.height[p]);
                    (Math.abs(h - rest) > grain.spike() ? away : still)
                            .add(o.px[p] + t * (o.px[q] - o.px[p]), o.py[p] + t * (o.py[q] - o.py[p]), h);
                }
            }
        }
        lifted = away.size;
        int n = away.size + still.size;
        x = new double[n];
        y = new double[n];
        z = new double[n];
        away.copy(x, y, z, 0);
        still.copy(x, y, z, lifted);
    }

    private static double rest(Outline o, int[][] loops, double asked, Grain grain) {
        for (int[] loop : loops) for (int p : loop) if (Math.abs(o.height[p] - asked) <= grain.snap()) return asked;
        double sum = 0;
        int[] s = loops[0];
        for (int i = 0; i < s.length; i++) {
            int p = s[i], q = s[(i + 1) % s.length];
            sum += Math.hypot(o.px[p] - o.px[q], o.py[p] - o.py[q]) * (o.height[p] + o.height[q]) / 2;
        }
        return sum / o.length(s);
    }

    /** True when the whole border lies at rest. */
    boolean isFlat() {
        return lifted == 0;
    }

    double height(double px, double py) {
        double low = Double.NEGATIVE_INFINITY, high = Double.POSITIVE_INFINITY;
        for (int i = 0; i < lifted; i++) {
            double rise = slope * Math.hypot(x[i] - px, y[i] - py);
            low = Math.max(low, z[i] - rise);
            high = Math.min(high, z[i] + rise);
        }
        return low > high ? (low + high) / 2 : Math.clamp(rest, low, high);
    }

    /** True when the surface is away from rest somewhere in a square, judged by the reach of every lifted sample. */
    boolean isMoving(double px, double py, double size) {
        for (int i = 0; i < lifted; i++) {
            double reach = Math.abs(z[i] - rest) / slope + 1.5 * size, dx = x[i] - px, dy = y[i] - py;
            if (dx * dx + dy * dy < reach * reach) return true;
        }
        return false;
    }

    /** Distance to the nearest border sample. */
    double nearest(double px, double py) {
        double best = Double.POSITIVE_INFINITY;
        for (int i = 0; i < x.length; i++) {
            double dx = x[i] - px, dy = y[i] - py;
            best = Math.min(best, dx * dx + dy * dy);
        }
        return Math.sqrt(best);
    }

    private static final class DoubleRows {
        private double[] rows = new double[96];
        private int size;

        void add(double a, double b, double c) {
            if (3 * size + 3 > rows.length) rows = java.util.Arrays.copyOf(rows, 2 * rows.length);
            rows[3 * size] = a;
            rows[3 * size + 1] = b;
            rows[3 * size++ + 2] = c;
        }

        void copy(double[] x, double[] y, double[] z, int at) {
            for (int i = 0; i < size; i++) {
                x[at + i] = rows[3 * i];
                y[at + i] = rows[3 * i + 1];
                z[at + i] = rows[3 * i + 2];
            }
        }
    }
}
