package shotwright.layout;

/**
 * Cross-section of a feed channel, looked at along the flow.
 *
 * @param shape what it looks like
 * @param widthMm width at the parting plane, or the diameter of a round one
 * @param depthMm depth from the parting plane into one half; for a round section half of the diameter goes into each half
 * @param wallDraftDeg side-wall draft of a trapezoid, per side; 0 for the others
 */
public record Section(Shape shape, double widthMm, double depthMm, double wallDraftDeg) {
    /** Shapes a small mill cuts. */
    public enum Shape {
        /** Full round, half in each half of the mold (in the parting plane), or a standing round sprue. */
        ROUND,
        /** Half round, cut with a ball cutter in one half. */
        HALF_ROUND,
        /** Trapezoid, cut with a tapered cutter in one half. */
        TRAPEZOID,
        /** Rectangle, cut with a flat cutter in one half: gates and vents. */
        RECTANGLE
    }

    public Section {
        if (!(widthMm > 0) || !(depthMm > 0))
            throw new IllegalArgumentException("section: " + widthMm + " × " + depthMm + " mm has no opening");
    }

    public static Section round(double diameterMm) {
        return new Section(Shape.ROUND, diameterMm, diameterMm / 2, 0);
    }

    /** Free area of the flow, mm². */
    public double areaMm2() {
        return switch (shape) {
            case ROUND -> Math.PI * widthMm * widthMm / 4;
            case HALF_ROUND -> Math.PI * widthMm * widthMm / 8;
            case TRAPEZOID -> depthMm * (widthMm - depthMm * Math.tan(Math.toRadians(wallDraftDeg)));
            case RECTANGLE -> widthMm * depthMm;
        };
    }

    /** Wetted perimeter, mm. */
    public double perimeterMm() {
        return switch (shape) {
            case ROUND -> Math.PI * widthMm;
            case HALF_ROUND -> Math.PI * widthMm / 2 + widthMm;
            case TRAPEZOID -> {
                double lean = Math.tan(Math.toRadians(wallDraftDeg));
                yield widthMm + (widthMm - 2 * depthMm * lean) + 2 * depthMm * Math.hypot(1, lean);
            }
            case RECTANGLE -> 2 * (widthMm + depthMm);
        };
    }
}
