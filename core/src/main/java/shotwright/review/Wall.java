package shotwright.review;

import java.util.Arrays;
import java.util.List;
import org.jspecify.annotations.Nullable;
import shotwright.geom.Vec2;
import shotwright.geom.Vec3;
import shotwright.mesh.TriMesh;

/**
 * One wall: connected facets that stand more or less along the pull (+z) and lean alike, measured in the pulled frame.
 *
 * @param facets its facets
 * @param areaMm2 its area
 * @param leanDeg lean by area: above zero when it looks up
 * @param lowLeanDeg all but the lowest twentieth of the area leans more
 * @param highLeanDeg all but the highest twentieth of the area leans less
 * @param zLowMm its lower end
 * @param zHighMm its upper end
 * @param centre its centre of area
 * @param straightShare length of the mean of its outward directions across the pull: 1 for a flat wall, 0 for one that closes
 * @param spanDeg angle about the pull that its outward directions take
 * @param circle the circle it follows; null when it follows none
 */
record Wall(
        int[] facets,
        double areaMm2,
        double leanDeg,
        double lowLeanDeg,
        double highLeanDeg,
        double zLowMm,
        double zHighMm,
        Vec3 centre,
        double straightShare,
        double spanDeg,
        @Nullable Circle circle) {

    /**
     * @param centre its middle, x and y
     * @param convex true round plastic, false round air
     * @param leastMm radius at its narrow end, over the corners of the facets
     * @param mostMm radius at its wide end
     */
    record Circle(Vec2 centre, boolean convex, double leastMm, double mostMm) {}

    double depthMm() {
        return zHighMm - zLowMm;
    }

    boolean isFlat() {
        return straightShare > 0.9995;
    }

    /** The share of the area whose lean, counted towards the given half, stays below a limit. */
    double shortAreaMm2(TriMesh mesh, double[] leanDeg, Side side, double limitDeg) {
        double sum = 0;
        for (int f : facets) if ((side == Side.A ? leanDeg[f] : -leanDeg[f]) < limitDeg) sum += mesh.area(f);
        return sum;
    }

    static Wall of(TriMesh mesh, double[] leanDeg, int[] facets) {
        double area = 0, lean = 0, low = Double.POSITIVE_INFINITY, high = Double.NEGATIVE_INFINITY;
        Vec3 moment = Vec3.ZERO;
        Vec2 across = Vec2.ZERO;
        for (int f : facets) {
            Vec3 n = mesh.doubleAreaNormal(f);
            double a = n.length() / 2;
            area += a;
            lean += a * leanDeg[f];
            moment = moment.plus(mesh.centroid(f).times(a));
            across = across.plus(n.xy().times(a / n.xy().length()));
            for (int k = 0; k < 3; k++) {
                low = Math.min(low, mesh.z(mesh.corner(f, k)));
                high = Math.max(high, mesh.z(mesh.corner(f, k)));
            }
        }
        double[] ends = leanEnds(mesh, leanDeg, facets, area);
        return new Wall(
                facets,
                area,
                lean / area,
                ends[0],
                ends[1],
                low,
                high,
                moment.times(1 / area),
                across.length() / area,
                span(mesh, facets),
                fit(mesh, facets, area));
    }

    private static double[] leanEnds(TriMesh mesh, double[] leanDeg, int[] facets, double area) {
        List<Integer> order = Arrays.stream(facets)
                .boxed()
                .sorted((f, g) -> Double.compare(leanDeg[f], leanDeg[g]))
                .toList();
        double sum = 0, low = leanDeg[order.getFirst()], high = leanDeg[order.getLast()];
        boolean lowFound = false;
        for (int f : order) {
            sum += mesh.area(f);
            if (!lowFound && sum > 0.05 * area) {
                low = leanDeg[f];
                lowFound = true;
            }
            if (sum >= 0.95 * area) {
                high = leanDeg[f];
                break;
            }
        }
        return new double[] {low, high};
    }

    /** 360° less the largest gap between outward directions; gaps no wider than a coarse chord count as none. */
    private static double span(TriMesh mesh, int[] facets) {
        double[] angle = Arrays.stream(facets)
                .mapToDouble(f -> {
                    Vec3 n = mesh.doubleAreaNormal(f);
                    return Math.atan2(n.y(), n.x());
                })
                .sorted()
                .toArray();
        double gap = angle[0] + 2 * Math.PI - angle[angle.length - 1];
        for (int i = 1; i < angle.length; i++) gap = Math.max(gap, angle[i] - angle[i - 1]);
        return 360 - Math.toDegrees(gap);
    }

    /**
     * Least squares of p = c + s·n over the facets, p and n their middles and outward directions across the pull; the sign of s tells plastic
     * from air inside.
     */
    private static @Nullable Circle fit(TriMesh mesh, int[] facets, double area) {
        double px = 0, py = 0, nx = 0, ny = 0, pn = 0, nn = 0, chord = 0;
        for (int f : facets) {
            Vec2 n = mesh.doubleAreaNormal(f).xy().unit(), p = mesh.centroid(f).xy();
            double w = mesh.area(f) / area;
            px += w * p.x();
            py += w * p.y();
            nx += w * n.x();
            ny += w * n.y();
            pn += w * p.dot(n);
            nn += w;
            for (int k = 0; k < 3; k++)
                chord = Math.max(
                        chord,
                        mesh.cornerPoint(f, k)
                                .xy()
                                .distance(mesh.cornerPoint(f, (k + 1) % 3).xy()));
        }
        double spread = nn - nx * nx - ny * ny;
        if (spread < 0.05) return null;
        double s = (pn - px * nx - py * ny) / spread;
        Vec2 c = new Vec2(px - s * nx, py - s * ny);
        double off = 0, least = Double.POSITIVE_INFINITY, most = 0;
        for (int f : facets) {
            Vec2 n = mesh.doubleAreaNormal(f).xy().unit();
            off = Math.max(off, mesh.centroid(f).xy().minus(c).minus(n.times(s)).length());
            for (int k = 0; k < 3; k++) {
                double r = mesh.cornerPoint(f, k).xy().distance(c);
                least = Math.min(least, r);
                most = Math.max(most, r);
            }
        }
        boolean round = off < 0.02 * Math.abs(s) + 0.3 * chord && chord < Math.abs(s);
        return round ? new Circle(c, s > 0, least, most) : null;
    }
}
