package shotwright.review.face;

import java.util.stream.Stream;
import shotwright.geom.Vec3;
import shotwright.measure.Digits;

/** What a person at the bench would call a face. Directions are those of the file's axes. */
public final class FaceNames {
    private static final double WALL_DEG = 20;
    private static final double HALF_TURN_DEG = 170;
    private static final double SAME_MM = 0.01;
    private static final double AXIS = Math.cos(Math.toRadians(1));
    /** A slope no wider than this between two outside corners breaks an edge. */
    private static final double CHAMFER_MM = 2;

    private final Vec3 pull;
    private final double bottomMm;
    private final double topMm;

    /**
     * Names for the faces of one part.
     *
     * @param pull of length one
     * @param bottomMm lower end of the part along the pull
     * @param topMm upper end of the part along the pull
     */
    public FaceNames(Vec3 pull, double bottomMm, double topMm) {
        this.pull = pull;
        this.bottomMm = bottomMm;
        this.topMm = topMm;
    }

    /**
     * The name of a face.
     *
     * @param outside whether it looks away from the part
     * @param wall what a flat wall there is called, for example {@code "rib side"}
     */
    public String of(FaceShape s, boolean outside, String wall) {
        if (s.facets().isSliver()) return "sliver";
        return switch (s.face().kind()) {
            case PLANE -> flat(s, wall);
            case CYLINDER -> cylinder(s, outside);
            case CONE -> cone(s, outside);
            case SPHERE -> (s.hollow() ? "hollow ball, " : "ball, ") + radius(s.wideMm());
            case TORUS -> (s.hollow() ? "fillet, " : "rounded edge, ") + radius(s.wideMm());
            case FREE_FORM ->
                s.isLevel()
                        ? level(s)
                        : isWall(s)
                                ? "free-form wall" + facing(s, " facing ")
                                : "free-form face" + facing(s, " facing ");
        };
    }

    private static String radius(double mm) {
        return FaceSize.mm(mm) + " radius";
    }

    private static boolean isWall(FaceShape s) {
        return Math.max(Math.abs(s.lean().lowDeg()), Math.abs(s.lean().highDeg())) < WALL_DEG;
    }

    private String flat(FaceShape s, String wall) {
        if (s.isLevel()) return level(s);
        if (isWall(s)) return wall + facing(s, " facing ");
        boolean chamfer = s.outsideShare() > 0.9
                && s.smoothCount() == 0
                && s.depthMm() <= CHAMFER_MM
                && s.size().widthMm() > 2 * s.depthMm();
        return (chamfer ? "chamfer" : "slope") + facing(s, " facing ") + ", "
                + Digits.fixed(Math.abs(s.lean().lowDeg()), 0) + "° off the pull";
    }

    private String level(FaceShape s) {
        boolean up = s.lean().lowDeg() > 0;
        if (up && s.highMm() > topMm - SAME_MM) return "top face";
        if (!up && s.lowMm() < bottomMm + SAME_MM) return "bottom face";
        String what = s.outsideShare() < 0.4 ? "floor" : "level face";
        return up
                ? what + " " + FaceSize.mm(topMm - s.highMm()) + " below the top"
                : what + " " + FaceSize.mm(s.lowMm() - bottomMm) + " above the bottom";
    }

    private String cylinder(FaceShape s, boolean outside) {
        String across = FaceSize.mm(2 * s.wideMm());
        boolean lies = s.liesAcross(pull);
        if (s.closes()) {
            if (s.hollow()) return "inside wall of the " + across + (lies ? " cross hole" : " hole");
            if (lies) return "outside of the " + across + " round lying across the pull";
            return isOutline(s, outside)
                    ? "round outside, " + across + " across"
                    : "outside of the " + across + " boss";
        }
        if (s.smoothCount() >= 2) {
            if (s.turnDeg() > HALF_TURN_DEG) return (s.hollow() ? "slot end, " : "rounded end, ") + radius(s.wideMm());
            String corner = s.hollow() ? "inside corner, " : "rounded corner, ";
            return (lies ? s.hollow() ? "fillet, " : "rounded edge, " : corner) + radius(s.wideMm());
        }
        if (lies) return (s.hollow() ? "channel" : "round") + " lying across the pull, " + radius(s.wideMm());
        return (s.hollow() ? "hollow round wall, " : "round wall, ") + radius(s.wideMm());
    }

    private String cone(FaceShape s, boolean outside) {
        String narrow = FaceSize.mm(2 * s.narrowMm()), wide = FaceSize.mm(2 * s.wideMm());
        boolean wall = isWall(s);
        if (!s.closes()) {
            if (s.smoothCount() >= 2) return (s.hollow() ? "inside corner" : "rounded corner") + ", tapered";
            return s.hollow() ? "hollow tapered wall" : "tapered wall";
        }
        if (s.hollow())
            return wall ? "inside wall of the " + narrow + " tapered hole" : "countersink, " + wide + " wide";
        if (!wall) return "beveled edge, " + wide + " wide";
        return isOutline(s, outside)
                ? "tapered outside, " + wide + " across"
                : "outside of the " + wide + " tapered boss";
    }

    /** A boss stands on something and has an inside corner at its foot; the part's own outline has none. */
    private static boolean isOutline(FaceShape s, boolean outside) {
        return outside && s.outsideShare() > 0.9;
    }

    /** Where a face looks across the pull, by the axes of the file; empty when it looks nowhere in particular. */
    private String facing(FaceShape s, String before) {
        Vec3 sum = Vec3.ZERO;
        for (int f : s.facets().facets()) sum = sum.plus(s.facets().mesh().doubleAreaNormal(f));
        Vec3 level = sum.minus(pull.times(sum.dot(pull)));
        if (level.length() < 0.05 * 2 * s.face().areaMm2()) return "";
        return before + direction(level.unit());
    }

    /** A direction in words, for example {@code "+x"} or {@code "between −x and +y"}. */
    static String direction(Vec3 unit) {
        double[] c = {unit.x(), unit.y(), unit.z()};
        String[] near = new String[3];
        for (int i = 0; i < 3; i++) {
            near[i] = (c[i] < 0 ? "−" : "+") + "xyz".charAt(i);
            if (Math.abs(c[i]) > AXIS) return near[i];
        }
        for (int i = 0; i < 3; i++) {
            int a = i == 0 ? 1 : 0, b = i == 2 ? 1 : 2;
            if (Math.abs(c[i]) < 0.02) return "between " + near[a] + " and " + near[b];
        }
        return "between " + String.join(", ", Stream.of(near).limit(2).toList()) + " and " + near[2];
    }
}
