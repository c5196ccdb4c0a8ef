package shotwright.mesh;

import java.util.ArrayList;
import java.util.List;

/**
 * Shadow area by rows, the second method beside {@link Shadow}: along the middle line of each row every up facet covers an interval; their
 * union is found exactly in one dimension and summed by the midpoint rule.
 */
final class RowScan {
    private RowScan() {}

    static double shadowArea(TriMesh mesh, int rows) {
        double low = mesh.box().min().y(), step = mesh.box().size().y() / rows;
        List<List<double[]>> cover = new ArrayList<>(rows);
        for (int r = 0; r < rows; r++) cover.add(new ArrayList<>());
        for (int f = 0; f < mesh.facetCount(); f++) {
            if (!(mesh.doubleAreaNormal(f).z() > 0)) continue;
            double yMin = Double.POSITIVE_INFINITY, yMax = Double.NEGATIVE_INFINITY;
            for (int k = 0; k < 3; k++) {
                yMin = Math.min(yMin, mesh.y(mesh.corner(f, k)));
                yMax = Math.max(yMax, mesh.y(mesh.corner(f, k)));
            }
            int from = Math.max(0, (int) Math.floor((yMin - low) / step - 0.5));
            int to = Math.min(rows - 1, (int) Math.ceil((yMax - low) / step - 0.5));
            for (int r = from; r <= to; r++) {
                double[] span = span(mesh, f, low + (r + 0.5) * step);
                if (span[1] > span[0]) cover.get(r).add(span);
            }
        }
        double sum = 0;
        for (List<double[]> row : cover) {
            row.sort((p, q) -> Double.compare(p[0], q[0]));
            double reached = Double.NEGATIVE_INFINITY;
            for (double[] s : row) {
                if (s[1] > reached) sum += s[1] - Math.max(s[0], reached);
                reached = Math.max(reached, s[1]);
            }
        }
        return sum * step;
    }

    private static double[] span(TriMesh mesh, int f, double y) {
        double[] span = {Double.POSITIVE_INFINITY, Double.NEGATIVE_INFINITY};
        for (int k = 0; k < 3; k++) {
            int a = mesh.corner(f, k), b = mesh.corner(f, (k + 1) % 3);
            double ya = mesh.y(a), yb = mesh.y(b);
            if (ya <= y == yb <= y) continue;
            double x = mesh.x(a) + (mesh.x(b) - mesh.x(a)) * ((y - ya) / (yb - ya));
            span[0] = Math.min(span[0], x);
            span[1] = Math.max(span[1], x);
        }
        return span;
    }
}
