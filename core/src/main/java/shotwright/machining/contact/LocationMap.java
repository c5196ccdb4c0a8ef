package shotwright.machining.contact;

import java.util.Arrays;
import shotwright.cutter.CutterProfile;
import shotwright.cutter.MountedCutter;
import shotwright.mesh.GreyMorphology;
import shotwright.mesh.Grid;

/**
 * The lowest tip heights of a cutter over a {@link TopSurface}, and the surface the cutter leaves. Contacts are asked at the cells' middles
 * only, so heights come out low where the contact lies between them: on a plane of slope b under a ball of radius r by at most
 * cell²/(4·r·cos³ b) in one direction. Good for planning and judging, never for coordinates.
 */
public final class LocationMap {
    /** Heights this near belong to one floor: half of what a facet's corners are rounded to. */
    private static final double SAME_FLOOR_MM = 5e-4;

    private final TopSurface surface;
    private final CutterProfile profile;
    private final float[] tips;

    private LocationMap(TopSurface surface, CutterProfile profile, float[] tips) {
        this.surface = surface;
        this.profile = profile;
        this.tips = tips;
    }

    /** The cutting end alone, as long as it likes to be. */
    public static LocationMap of(TopSurface surface, CutterProfile profile) {
        float[] tips = GreyMorphology.dilate(surface.heightsMm(), surface.grid(), element(profile, surface.grid()));
        return new LocationMap(surface, profile, tips);
    }

    /** The whole cutter: held up also where neck, shank or holder would touch. */
    public static LocationMap of(TopSurface surface, MountedCutter cutter) {
        CutterProfile end = cutter.profile();
        float[] tips = of(surface, end).tips;
        for (MountedCutter.Cylinder c : cutter.cylinders()) {
            if (c.radiusMm() <= end.largestRadiusMm()) continue;
            var disc = GreyMorphology.Element.disc(c.radiusMm(), surface.grid().cell());
            float[] held = GreyMorphology.dilate(surface.heightsMm(), surface.grid(), disc);
            for (int i = 0; i < tips.length; i++) tips[i] = Math.max(tips[i], held[i] - (float) c.fromMm());
        }
        return new LocationMap(surface, end, tips);
    }

    /**
     * The lowest tip heights that neck, shank and holder allow, with air around them; −∞ where they touch nothing or the cutter has nothing
     * wider than its cutting end.
     *
     * @param airMm air wanted around them
     */
    public static float[] bodyTipsMm(TopSurface surface, MountedCutter cutter, double airMm) {
        CutterProfile end = cutter.profile();
        float[] tips = new float[surface.grid().count()];
        Arrays.fill(tips, Float.NEGATIVE_INFINITY);
        for (MountedCutter.Cylinder c : cutter.cylinders()) {
            if (c.radiusMm() <= end.largestRadiusMm()) continue;
            var disc = GreyMorphology.Element.disc(
                    c.radiusMm() + airMm, surface.grid().cell());
            float[] held = GreyMorphology.dilate(surface.heightsMm(), surface.grid(), disc);
            for (int i = 0; i < tips.length; i++) tips[i] = Math.max(tips[i], held[i] - (float) c.fromMm());
        }
        return tips;
    }

    static GreyMorphology.Element element(CutterProfile profile, Grid grid) {
        return GreyMorphology.Element.round(profile.largestRadiusMm(), grid.cell(), profile::heightMm);
    }

    public CutterProfile profile() {
        return profile;
    }

    public TopSurface surface() {
        return surface;
    }

    /** The lowest tip height with the axis over a cell's middle, mm; −∞ where nothing is under the cutter. */
    public float tipMm(int cell) {
        return tips[cell];
    }

    /** The heights themselves; not to be altered. */
    public float[] tipsMm() {
        return tips;
    }

    /** The surface that is left when the tip has been everywhere on this map, mm: the closing of the surface by the cutter. */
    public float[] leftMm() {
        return GreyMorphology.erode(tips, surface.grid(), element(profile, surface.grid()));
    }

    /**
     * What is left on the surface, measured along its normal, mm: the height left times the normal's share that points up. Cutter places lie
     * on the grid, which may keep a cutter up to a cell away from a wall it could touch: that much is forgiven on walls, and a place on a
     * level floor counts as its lowest neighbour on the same floor.
     */
    public float[] leftoverMm() {
        float[] left = leftMm(), over = new float[left.length];
        for (int i = 0; i < left.length; i++) {
            if (surface.facet(i) < 0) continue;
            double up = surface.normalZ(i);
            over[i] = switch (SurfaceKind.of(up, Double.POSITIVE_INFINITY)) {
                case WALL ->
                    (float) Math.max(
                            0,
                            (left[i] - surface.heightMm(i)) * up
                                    - surface.grid().cell() * Math.sqrt(1 - up * up));
                case FLOOR, FACE -> lowestBeside(left, i) - surface.heightMm(i);
                case CURVED -> (float) ((left[i] - surface.heightMm(i)) * up);
            };
        }
        return over;
    }

    private float lowestBeside(float[] left, int cell) {
        Grid grid = surface.grid();
        float here = surface.heightMm(cell), low = left[cell];
        int x = cell % grid.nx(), y = cell / grid.nx();
        for (int j = Math.max(0, y - 1); j <= Math.min(grid.ny() - 1, y + 1); j++)
            for (int i = Math.max(0, x - 1); i <= Math.min(grid.nx() - 1, x + 1); i++) {
                int beside = grid.index(i, j);
                if (Math.abs(surface.heightMm(beside) - here) < SAME_FLOOR_MM) low = Math.min(low, left[beside]);
            }
        return low;
    }
}
