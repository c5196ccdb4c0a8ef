package shotwright.drawing;

import shotwright.geom.Vec3;

/** One light fixed to the eye, from the left, above and in front. Facing the light is the colour itself; nothing is darker than need be. */
final class Light {
    private static final Vec3 TOWARDS = new Vec3(-0.45, 0.45, 0.77).unit();

    private final Vec3 direction;

    Light(Projection p) {
        direction = p.right()
                .times(TOWARDS.x())
                .plus(p.pageUp().times(TOWARDS.y()))
                .plus(p.toEye().times(TOWARDS.z()));
    }

    /** Direction to the light in space. */
    Vec3 direction() {
        return direction;
    }

    /** Brightness of a plain surface for the cosine to the light. */
    static double plain(double cosine) {
        return Math.min(1, 0.78 + 0.27 * cosine);
    }

    /** Brightness under a map: weak, so that colours stay what the legend says. */
    static double mapped(double cosine) {
        return Math.min(1, 0.90 + 0.15 * cosine);
    }

    static int shaded(int rgb, double share) {
        int r = (int) ((rgb >> 16 & 255) * share + 0.5),
                g = (int) ((rgb >> 8 & 255) * share + 0.5),
                b = (int) ((rgb & 255) * share + 0.5);
        return r << 16 | g << 8 | b;
    }
}
