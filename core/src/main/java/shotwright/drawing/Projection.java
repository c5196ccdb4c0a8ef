package shotwright.drawing;

import java.util.List;
import shotwright.geom.Vec2;
import shotwright.geom.Vec3;

/**
 * Parallel projection onto a picture: pixels x right, y down, depth towards the eye.
 *
 * @param right direction to the right of the page
 * @param pageUp direction to the top of the page
 * @param toEye direction to the eye
 * @param scale pixels per millimetre
 * @param shiftX added to x
 * @param shiftY added to y
 */
public record Projection(Vec3 right, Vec3 pageUp, Vec3 toEye, double scale, double shiftX, double shiftY) {
    /** The view of what a cut leaves of the bodies, fitted into a rectangle of pixels. */
    static Projection fitted(Scene scene, List<Section> cuts, double x, double y, double width, double height) {
        View v = scene.view();
        Extent extent = new Extent(v.right(), v.pageUp());
        for (Body b : scene.bodies()) {
            for (int i = 0; i < b.mesh().vertexCount(); i++) {
                Vec3 p = b.mesh().vertex(i);
                if (scene.cut().isEmpty() || scene.cut().get().signedDistance(p) <= 0) extent.add(p);
            }
        }
        for (Section s : cuts) s.region().exteriors().forEach(ring -> ring.forEach(p -> extent.add(s.inSpace(p))));
        if (extent.lowX > extent.highX) throw new IllegalArgumentException("cut: nothing is left behind the plane");
        double least = 1e-9, w = extent.highX - extent.lowX, h = extent.highY - extent.lowY;
        double scale = Math.min(width / Math.max(least, w), height / Math.max(least, h));
        double cx = (extent.lowX + extent.highX) / 2, cy = (extent.lowY + extent.highY) / 2;
        return new Projection(
                v.right(), v.pageUp(), v.toEye(), scale, x + width / 2 - scale * cx, y + height / 2 + scale * cy);
    }

    private static final class Extent {
        private final Vec3 right;
        private final Vec3 up;
        double lowX = Double.MAX_VALUE;
        double lowY = Double.MAX_VALUE;
        double highX = -Double.MAX_VALUE;
        double highY = -Double.MAX_VALUE;

        Extent(Vec3 right, Vec3 up) {
            this.right = right;
            this.up = up;
        }

        void add(Vec3 p) {
            double x = right.dot(p), y = up.dot(p);
            lowX = Math.min(lowX, x);
            highX = Math.max(highX, x);
            lowY = Math.min(lowY, y);
            highY = Math.max(highY, y);
        }
    }

    /** The same onto pixels that are {@code k} times finer. */
    Projection finer(int k) {
        return new Projection(right, pageUp, toEye, scale * k, shiftX * k, shiftY * k);
    }

    public double x(Vec3 p) {
        return shiftX + scale * right.dot(p);
    }

    public double y(Vec3 p) {
        return shiftY - scale * pageUp.dot(p);
    }

    public double depth(Vec3 p) {
        return scale * toEye.dot(p);
    }

    public Vec2 onPicture(Vec3 p) {
        return new Vec2(x(p), y(p));
    }
}
