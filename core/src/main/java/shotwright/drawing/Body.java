package shotwright.drawing;

import shotwright.mesh.TriMesh;

/**
 * A body in a picture.
 *
 * @param mesh its surface, mm
 * @param paint colours
 * @param cutRgb ground of a cut face
 * @param cutTexture hatching of a cut face
 */
public record Body(TriMesh mesh, FacetPaint paint, int cutRgb, Texture cutTexture) {
    /** A plastic part; its cut faces are solid dark. */
    public static Body part(TriMesh mesh) {
        return part(mesh, FacetPaint.of(Material.PLASTIC));
    }

    public static Body part(TriMesh mesh, FacetPaint paint) {
        return new Body(mesh, paint, Ink.PLASTIC_CUT, Texture.NONE);
    }

    /** Half A in aluminium, hatched to the right. */
    public static Body halfA(TriMesh mesh) {
        return new Body(mesh, FacetPaint.of(Material.ALUMINIUM), Ink.PAPER, Texture.HATCH_A);
    }

    /** Half B in aluminium, hatched to the left. */
    public static Body halfB(TriMesh mesh) {
        return new Body(mesh, FacetPaint.of(Material.ALUMINIUM), Ink.PAPER, Texture.HATCH_B);
    }
}
