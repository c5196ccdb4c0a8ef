package shotwright.mesh.complex;

import shotwright.geom.Vec3;

/** Adds the facets of a cap. Those that lie level share one source number, so that they count as one surface; every other gets its own. */
final class CapFacets {
    private CapFacets() {}

    /**
     * Adds facets.
     *
     * @param corners three vertices a facet
     * @return the source number of the level facets
     */
    static int add(Complex c, int[] corners, Vec3 up, int front, int behind) {
        int level = c.newSource();
        for (int i = 0; i < corners.length; i += 3) {
            int p = corners[i], q = corners[i + 1], r = corners[i + 2];
            double hp = up.dot(c.vertex(p)), hq = up.dot(c.vertex(q)), hr = up.dot(c.vertex(r));
            double spread = Math.max(hp, Math.max(hq, hr)) - Math.min(hp, Math.min(hq, hr));
            c.addFacet(p, q, r, front, behind, spread <= 2 * c.grain().snap() ? level : c.newSource());
        }
        return level;
    }
}
