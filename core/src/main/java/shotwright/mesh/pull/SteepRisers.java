package shotwright.mesh.pull;

import org.jspecify.annotations.Nullable;
import shotwright.geom.Vec3;
import shotwright.mesh.complex.Complex;

/**
 * Where the parting surface stands too steeply to seal and slide: the two halves' faces rub there instead of closing.
 *
 * @param area area of the parting surface within the limit of the pull
 * @param worstDeg smallest angle to the pull found on a facet of some size; 90 when there is none
 * @param place middle of the facet with the largest steep area, null when there is none
 */
public record SteepRisers(
        double area, double worstDeg, @Nullable Vec3 place) {
    /** Looks at all facets between the two halves. */
    public static SteepRisers of(Complex c, int a, int b, double limitDeg) {
        double area = 0, worst = 90, largest = 0;
        Vec3 place = null;
        double sliver = 1e-7 * c.grain().diagonal() * c.grain().diagonal();
        for (int f = 0; f < c.facetCount(); f++) {
            if (!(c.front(f) == a && c.behind(f) == b || c.front(f) == b && c.behind(f) == a)) continue;
            Vec3 n = c.doubleAreaNormal(f);
            double size = n.length() / 2;
            if (size < sliver) continue;
            double angle = Math.toDegrees(Math.asin(Math.min(1, Math.abs(n.z()) / (2 * size))));
            worst = Math.min(worst, angle);
            if (angle >= limitDeg) continue;
            area += size;
            if (size > largest) {
                largest = size;
                place = c.vertex(c.corner(f, 0))
                        .plus(c.vertex(c.corner(f, 1)))
                        .plus(c.vertex(c.corner(f, 2)))
                        .times(1.0 / 3);
            }
        }
        return new SteepRisers(area, worst, place);
    }
}
