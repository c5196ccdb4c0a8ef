package shotwright.machining;

import java.util.ArrayList;
import java.util.List;
import java.util.function.DoubleUnaryOperator;
import shotwright.geom.Vec3;
import shotwright.mesh.Solids;
import shotwright.mesh.TriMesh;

/**
 * A block with one drafted pocket, known in closed form: its mouth a rectangle with round corners about the origin at z 0, every level of it
 * the mouth moved inward by depth·tan(draft), round corners and all.
 */
public record DraftedPocket(
        double lengthMm, double widthMm, double cornerMm, double depthMm, double draftRad, double rimMm) {
    /** The note's body: 60 × 40 × 8, corners 4, 2° draft, 4 mm of rim. */
    public static final DraftedPocket NOTE = new DraftedPocket(60, 40, 4, 8, Math.toRadians(2), 4);

    /** How far the wall has come inward at a depth. */
    public double insetMm(double depthMm) {
        return depthMm * Math.tan(draftRad);
    }

    /** Distance of a point from the pocket's outline at a depth, moved inward by an amount; above zero inside. */
    public double inside(double x, double y, double depthMm, double byMm) {
        double r = cornerMm - insetMm(depthMm) - byMm;
        double hx = lengthMm / 2 - insetMm(depthMm) - byMm, hy = widthMm / 2 - insetMm(depthMm) - byMm;
        double qx = Math.abs(x) - hx + r, qy = Math.abs(y) - hy + r;
        double outside = Math.hypot(Math.max(0, qx), Math.max(0, qy)) + Math.min(0, Math.max(qx, qy)) - r;
        return -outside;
    }

    /** One level of the wall, counter-clockwise; the corners in so many chords. */
    private List<Vec3> ring(double depthMm, int chords) {
        double inset = insetMm(depthMm), r = cornerMm - inset;
        List<Vec3> ring = new ArrayList<>();
        for (int q = 0; q < 4; q++) {
            double cx = (q == 0 || q == 3 ? 1 : -1) * (lengthMm / 2 - cornerMm);
            double cy = (q < 2 ? 1 : -1) * (widthMm / 2 - cornerMm);
            for (int i = 0; i <= chords; i++) {
                double a = Math.PI / 2 * (q + i / (double) chords);
                ring.add(new Vec3(cx + r * Math.cos(a), cy + r * Math.sin(a), -depthMm));
            }
        }
        return ring;
    }

    /** As a mesh with a flat floor. */
    public TriMesh mesh(int chords) {
        return mesh(chords, 1, s -> 0);
    }

    /**
     * As a mesh.
     *
     * @param chords chords to each corner
     * @param rings rings of the floor
     * @param crown height of the floor over its edge, by the share 0 … 1 of the way from the middle to the edge
     */
    public TriMesh mesh(int chords, int rings, DoubleUnaryOperator crown) {
        Solids.Soup soup = new Solids.Soup();
        List<Vec3> mouth = ring(0, chords), foot = ring(depthMm, chords);
        double x = lengthMm / 2 + rimMm, y = widthMm / 2 + rimMm;
        Vec3[] corners = {new Vec3(x, y, 0), new Vec3(-x, y, 0), new Vec3(-x, -y, 0), new Vec3(x, -y, 0)};
        int n = mouth.size(), perCorner = chords + 1;
        for (int i = 0; i < n; i++) {
            int next = (i + 1) % n, q = i / perCorner, nextQ = next / perCorner;
            soup.quad(mouth.get(i), mouth.get(next), foot.get(next), foot.get(i));
            soup.add(mouth.get(next), mouth.get(i), corners[q]);
            if (q != nextQ) soup.add(mouth.get(next), corners[q], corners[nextQ]);
        }
        List<Vec3> outer = foot;
        for (int k = rings - 1; k >= 0; k--) {
            double s = k / (double) rings;
            List<Vec3> inner = new ArrayList<>();
            for (Vec3 p : foot) inner.add(new Vec3(p.x() * s, p.y() * s, -depthMm + crown.applyAsDouble(s)));
            for (int i = 0; i < n; i++) {
                int next = (i + 1) % n;
                if (k > 0) soup.quad(inner.get(i), outer.get(i), outer.get(next), inner.get(next));
                else soup.add(inner.getFirst(), outer.get(i), outer.get(next));
            }
            outer = inner;
        }
        double low = -depthMm - 2;
        for (int q = 0; q < 4; q++) {
            Vec3 a = corners[q], b = corners[(q + 1) % 4];
            soup.quad(b, a, new Vec3(a.x(), a.y(), low), new Vec3(b.x(), b.y(), low));
        }
        soup.quad(new Vec3(x, -y, low), new Vec3(-x, -y, low), new Vec3(-x, y, low), new Vec3(x, y, low));
        return soup.mesh();
    }
}
