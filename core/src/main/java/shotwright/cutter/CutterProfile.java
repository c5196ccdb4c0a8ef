package shotwright.cutter;

/**
 * The outline of a turning cutter's cutting end: its surface's height g above the tip at each distance ρ from the axis. A flat, a corner
 * arc tangent to it, and a cone tangent to the arc, in this order and any of them empty; so g never falls, is convex, and one class serves
 * every end mill, ball, taper, engraver, spot drill and drill.
 *
 * <p>With flat r₀, corner r_c, half angle a and largest radius R: g = 0 to r₀; r_c − √(r_c² − (ρ−r₀)²) to ρ_t = r₀ + r_c·cos a; from there
 * r_c·(1 − sin a) + (ρ − ρ_t)/tan a to R. Plain geometry of the revolved outline.
 *
 * @param flatRadiusMm radius of the flat at the tip, 0 when there is none
 * @param cornerRadiusMm radius of the arc behind it, 0 when sharp
 * @param halfAngleRad angle between axis and cone; 0 when the cutter is straight behind its arc
 * @param largestRadiusMm largest radius of the cutting end
 */
public record CutterProfile(double flatRadiusMm, double cornerRadiusMm, double halfAngleRad, double largestRadiusMm) {
    /** What rounding of the parameters may leave between arc and largest radius. */
    private static final double ROUNDING_MM = 1e-9;

    public CutterProfile {
        if (!(flatRadiusMm >= 0) || !(cornerRadiusMm >= 0))
            throw new IllegalArgumentException("profile: flat " + flatRadiusMm + " mm, corner " + cornerRadiusMm
                    + " mm; neither may be below zero");
        if (!(halfAngleRad >= 0 && halfAngleRad < Math.PI / 2))
            throw new IllegalArgumentException(
                    "profile: half angle " + Math.toDegrees(halfAngleRad) + "° is not between 0 and 90°");
        if (!(largestRadiusMm > 0) || !Double.isFinite(largestRadiusMm))
            throw new IllegalArgumentException("profile: largest radius " + largestRadiusMm + " mm is not above zero");
        double arcEndMm = flatRadiusMm + cornerRadiusMm * Math.cos(halfAngleRad);
        if (arcEndMm > largestRadiusMm + ROUNDING_MM)
            throw new IllegalArgumentException("profile: flat and corner reach out to " + arcEndMm
                    + " mm, beyond the largest radius " + largestRadiusMm + " mm");
        if (halfAngleRad == 0 && arcEndMm < largestRadiusMm - ROUNDING_MM)
            throw new IllegalArgumentException("profile: a straight cutter's flat and corner reach out to " + arcEndMm
                    + " mm and leave a gap to the largest radius " + largestRadiusMm + " mm");
    }

    /** The cutting end of a cutter on the rack; of tapered ones up to the end of the flutes. */
    public static CutterProfile of(Cutter cutter) {
        double tipMm = cutter.radiusMm(), cornerMm = cutter.cornerRadiusMm().value();
        double taperRad = Math.toRadians(cutter.taperDeg().value());
        return switch (cutter.shape()) {
            case BALL -> ball(tipMm);
            case FLAT, REAMER -> flat(tipMm);
            case BULL, FACE -> bull(tipMm, cornerMm);
            case DRILL -> point(pointRad(cutter), tipMm);
            case TAPER, ENGRAVER, SPOT, V ->
                tapered(
                        tipMm,
                        taperRad,
                        tapered(tipMm, 0, taperRad, cutter.fluteLengthMm().value()));
            case TAPER_BALL -> {
                double largestMm =
                        tapered(0, tipMm, taperRad, cutter.fluteLengthMm().value());
                yield new CutterProfile(0, tipMm, taperRad, largestMm);
            }
        };
    }

    private static double pointRad(Cutter cutter) {
        var point = cutter.pointAngleDeg();
        if (point == null)
            throw new IllegalArgumentException(
                    "cutter " + cutter.id() + ": a drill needs pointAngleDeg in its rack file");
        return Math.toRadians(point.value());
    }

    /** Radius at a height on the cone. */
    private static double tapered(double flatMm, double cornerMm, double halfAngleRad, double heightMm) {
        double arcEndMm = flatMm + cornerMm * Math.cos(halfAngleRad);
        double arcHeightMm = cornerMm * (1 - Math.sin(halfAngleRad));
        return arcEndMm + Math.max(0, heightMm - arcHeightMm) * Math.tan(halfAngleRad);
    }

    /** A flat end mill. */
    public static CutterProfile flat(double radiusMm) {
        return new CutterProfile(radiusMm, 0, 0, radiusMm);
    }

    /** A ball end mill. */
    public static CutterProfile ball(double radiusMm) {
        return new CutterProfile(0, radiusMm, 0, radiusMm);
    }

    /** An end mill with a corner radius. */
    public static CutterProfile bull(double radiusMm, double cornerMm) {
        return new CutterProfile(radiusMm - cornerMm, cornerMm, 0, radiusMm);
    }

    /** A cone on a flat tip: tapered end mill, engraver, V cutter, spot drill. */
    public static CutterProfile tapered(double tipRadiusMm, double halfAngleRad, double largestRadiusMm) {
        return new CutterProfile(tipRadiusMm, 0, halfAngleRad, largestRadiusMm);
    }

    /** A sharp point of the given included angle. */
    public static CutterProfile point(double includedAngleRad, double radiusMm) {
        return new CutterProfile(0, 0, includedAngleRad / 2, radiusMm);
    }

    /** Where the corner arc ends and the cone begins. */
    public double arcEndRadiusMm() {
        return flatRadiusMm + cornerRadiusMm * Math.cos(halfAngleRad);
    }

    /** Rise of the cone per unit of radius, 1/tan a; infinite on a straight cutter. */
    public double coneSlope() {
        return halfAngleRad == 0 ? Double.POSITIVE_INFINITY : 1 / Math.tan(halfAngleRad);
    }

    /** Height above the tip at a distance from the axis; infinite beyond the largest radius. */
    public double heightMm(double rhoMm) {
        if (rhoMm <= flatRadiusMm) return 0;
        if (rhoMm > largestRadiusMm) return Double.POSITIVE_INFINITY;
        double u = rhoMm - flatRadiusMm, c = cornerRadiusMm;
        if (halfAngleRad == 0 || u <= c * Math.cos(halfAngleRad)) return c - Math.sqrt(Math.max(0, c * c - u * u));
        return c * (1 - Math.sin(halfAngleRad)) + (rhoMm - arcEndRadiusMm()) / Math.tan(halfAngleRad);
    }

    /** Height of the cutting end: that at the largest radius. */
    public double endHeightMm() {
        return heightMm(largestRadiusMm);
    }

    /** Rise per unit of radius, g′(ρ); at a kink the outer value, infinite at and beyond the largest radius. */
    public double slope(double rhoMm) {
        if (rhoMm < flatRadiusMm) return 0;
        if (rhoMm >= largestRadiusMm) return Double.POSITIVE_INFINITY;
        double u = rhoMm - flatRadiusMm, c = cornerRadiusMm;
        return u < c * Math.cos(halfAngleRad) ? u / Math.sqrt(c * c - u * u) : coneSlope();
    }

    /**
     * How far from the axis the cutter touches a plane that rises by the given slope: the ρ at which slope·ρ − g(ρ) is greatest, the
     * smallest such ρ. 0 on a level plane.
     *
     * @param slope rise per unit of run, not below zero
     */
    public double contactRadiusMm(double slope) {
        if (!(slope > 0)) return 0;
        if (slope > coneSlope()) return largestRadiusMm;
        double onArcMm = cornerRadiusMm * slope / Math.sqrt(1 + slope * slope);
        return flatRadiusMm + Math.min(onArcMm, cornerRadiusMm * Math.cos(halfAngleRad));
    }

    /** The largest distance from the axis at which the cutting end is not above the height; the largest radius above its end. */
    public double radiusAtMm(double heightMm) {
        if (!(heightMm >= 0)) throw new IllegalArgumentException("height: " + heightMm + " mm is below the tip");
        double c = cornerRadiusMm, arcHeightMm = c * (1 - Math.sin(halfAngleRad));
        if (heightMm <= arcHeightMm) return flatRadiusMm + Math.sqrt(Math.max(0, heightMm * (2 * c - heightMm)));
        return Math.min(largestRadiusMm, arcEndRadiusMm() + (heightMm - arcHeightMm) * Math.tan(halfAngleRad));
    }

    /** The outline with all its radii grown or shrunk by an amount, the tip's height kept; angles do not change. */
    public CutterProfile widenedMm(double byMm) {
        double flatMm = Math.max(0, flatRadiusMm + byMm);
        double cornerMm = Math.max(0, cornerRadiusMm + Math.min(0, flatRadiusMm + byMm));
        if (halfAngleRad == 0) return new CutterProfile(flatMm, cornerMm, 0, flatMm + cornerMm);
        return new CutterProfile(
                flatMm,
                cornerMm,
                halfAngleRad,
                Math.max(flatMm + cornerMm * Math.cos(halfAngleRad), largestRadiusMm + byMm));
    }
}
