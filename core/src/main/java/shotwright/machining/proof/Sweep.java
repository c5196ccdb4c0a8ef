package shotwright.machining.proof;

import java.util.List;
import shotwright.cutter.CutterProfile;
import shotwright.geom.Vec3;
import shotwright.machining.path.Arc;
import shotwright.machining.path.Step;

/** The lowest a cutter reaches over each place while its tip makes one move, row by row of a grid. */
sealed interface Sweep permits LineSweep, ArcSweep {
    /** A helix is taken as chords that leave it by no more than this, mm. */
    double CHORD_MM = 0.0005;

    /** The lowest the tip comes, mm. */
    double lowestMm();

    /** The least y of the footprint. */
    double lowestY();

    /** The greatest y of the footprint. */
    double highestY();

    /** Left and right end of the footprint on a row, put into {@code ends}; false when the row lies beside it. */
    boolean span(double y, double[] ends);

    /**
     * The lowest reached over the places x₀, x₀ + step, … of a row, all inside its span; far above everything where nothing is reached. Where
     * the stock already stands no higher than what is surely reached, that bound will do.
     *
     * @param top heights of the stock
     * @param first where the row's first place stands in them
     */
    void fill(float[] out, int n, double x0, double step, double y, float[] top, int first);

    /** The lowest reached over one place; far above everything where nothing is reached. */
    default float over(double x, double y) {
        double[] ends = new double[2];
        if (y < lowestY() || y > highestY() || !span(y, ends) || x < ends[0] || x > ends[1]) return Float.MAX_VALUE;
        float[] out = new float[1];
        fill(out, 1, x, 1, y, new float[] {Float.MAX_VALUE}, 0);
        return out[0];
    }

    /** A step as sweeps, lifted by a height: one, or the chords of a helix. */
    static List<Sweep> of(Step step, CutterProfile profile, double liftMm) {
        Vec3 lift = new Vec3(0, 0, liftMm);
        if (!(step instanceof Arc a))
            return List.of(
                    new LineSweep(profile, step.from().plus(lift), step.to().plus(lift)));
        if (a.from().z() == a.to().z()) return List.of(new ArcSweep(profile, a, liftMm));
        double most = Math.clamp(1 - CHORD_MM / a.radiusMm(), 0, 1);
        int n = (int) Math.max(1, Math.ceil(a.sweepRad() / (2 * Math.acos(most))));
        Sweep[] chords = new Sweep[n];
        for (int k = 0; k < n; k++)
            chords[k] = new LineSweep(
                    profile,
                    a.at(k / (double) n).plus(lift),
                    a.at((k + 1) / (double) n).plus(lift));
        return List.of(chords);
    }
}
