package shotwright.drawing;

import shotwright.geom.Vec3;

/**
 * Where a picture is taken from, in parallel projection. The opening direction stays upright on the page; the view turns about it and tips,
 * it never rolls.
 *
 * @param name said below the picture
 * @param up opening direction, unit length
 * @param turnDeg turn about the opening direction
 * @param raiseDeg how far the eye is raised above the parting face; 90 looks straight down on the closed side
 */
public record View(String name, Vec3 up, double turnDeg, double raiseDeg) {
    public View {
        up = up.unit();
        if (!(raiseDeg >= -90 && raiseDeg <= 90))
            throw new IllegalArgumentException("raise: " + raiseDeg + "° is not between −90 and 90");
    }

    /** The first view of everything: turned 26°, raised 42°, opening along +z. */
    public static View first() {
        return new View("turned 26°, raised 42°", Vec3.Z, 26, 42);
    }

    /** From below, where the hollow side is. */
    public static View underneath() {
        return new View("from half B, turned 26°, raised 42°", Vec3.Z, 26, -42);
    }

    /** Straight along the opening direction from the side of half A. */
    public static View fromA() {
        return new View("from half A", Vec3.Z, 0, 90);
    }

    /** Straight against the opening direction from the side of half B. */
    public static View fromB() {
        return new View("from half B", Vec3.Z, 0, -90);
    }

    /** Level with the parting face. */
    public static View level(double turnDeg) {
        return new View("level with the parting face", Vec3.Z, turnDeg, 0);
    }

    public View named(String words) {
        return new View(words, up, turnDeg, raiseDeg);
    }

    public View along(Vec3 opening) {
        return new View(name, opening, turnDeg, raiseDeg);
    }

    /** Direction to the right of the page. */
    Vec3 right() {
        Vec3[] level = level();
        double t = Math.toRadians(turnDeg);
        return level[0].times(Math.cos(t)).plus(level[1].times(Math.sin(t)));
    }

    /** Direction from the part to the eye. */
    public Vec3 toEye() {
        double e = Math.toRadians(raiseDeg);
        Vec3 front = right().cross(up);
        return front.times(Math.cos(e)).plus(up.times(Math.sin(e)));
    }

    /** Direction to the top of the page. */
    Vec3 pageUp() {
        return toEye().cross(right());
    }

    /** Two directions in the parting face that are x and y when the opening direction is z. */
    private Vec3[] level() {
        Vec3 x = Math.abs(up.z()) > 0.999999 ? Vec3.X : Vec3.Z.cross(up).unit();
        return new Vec3[] {x, up.cross(x)};
    }
}
