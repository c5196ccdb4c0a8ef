package shotwright.review.face;

import shotwright.brep.ExactFace;
import shotwright.geom.Vec3;
import shotwright.measure.Digits;

/**
 * How large a face is.
 *
 * @param diameterMm its largest diameter when it closes round, else 0
 * @param widthMm along its axis when it closes round; else its longest size across the pull
 * @param heightMm along the pull; of a level face its other size across the pull
 */
public record FaceSize(double diameterMm, double widthMm, double heightMm) {
    /** A length as one would say it: 6.2 mm, 12 mm. */
    static String mm(double mm) {
        return number(mm) + " mm";
    }

    private static String number(double mm) {
        String s = Digits.fixed(mm, 2);
        return s.endsWith(".00")
                ? s.substring(0, s.length() - 3)
                : s.endsWith("0") ? s.substring(0, s.length() - 1) : s;
    }

    /** In words, for example {@code "Ø6.5 × 2.13 mm"}. */
    public String words() {
        return diameterMm > 0 ? "Ø" + number(diameterMm) + " × " + mm(widthMm) : number(widthMm) + " × " + mm(heightMm);
    }

    static FaceSize round(FaceFacets f, double widestMm) {
        double[] along = f.extent(f.face().axis());
        return new FaceSize(2 * widestMm, along[1] - along[0], 0);
    }

    static FaceSize plain(FaceFacets f, Vec3 pull, boolean level) {
        Vec3 across = pull.across(), other = pull.cross(across);
        if (f.face().kind() == ExactFace.Kind.PLANE && !level && !f.isSliver()) {
            Vec3 along = f.face().axis().cross(pull);
            if (along.length() > 1e-6) return new FaceSize(0, span(f, along.unit()), span(f, pull));
        }
        double a = span(f, across), b = span(f, other);
        return new FaceSize(0, Math.max(a, b), level ? Math.min(a, b) : span(f, pull));
    }

    private static double span(FaceFacets f, Vec3 direction) {
        double[] e = f.extent(direction);
        return e[1] - e[0];
    }
}
