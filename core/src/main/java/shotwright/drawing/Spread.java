package shotwright.drawing;

import java.util.List;

/** Keeps labels apart: each as near to where it is wanted as its neighbours allow, in the order given. */
final class Spread {
    private Spread() {}

    /**
     * Places along a line.
     *
     * @param wanted rising
     * @param step least distance; made smaller when there is not room enough
     */
    static double[] along(List<Double> wanted, double step, double from, double to) {
        int n = wanted.size();
        double s = n > 1 ? Math.min(step, (to - from) / (n - 1)) : step;
        double[] at = new double[n];
        for (int i = 0; i < n; i++) at[i] = Math.max(wanted.get(i), i == 0 ? from : at[i - 1] + s);
        for (int i = n - 1; i >= 0; i--) at[i] = Math.min(at[i], i == n - 1 ? to : at[i + 1] - s);
        return at;
    }
}
