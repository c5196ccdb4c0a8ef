package shotwright.drawing;

import shotwright.mesh.TriMesh;

/**
 * A body in a picture.
 *
 * @param creases its surface with the edges that are drawn
 * @param paint colours
 * @param cutRgb ground of a cut face
 * @param cutTexture hatching of a cut face
 */
public record Body(Creases creases, FacetPaint paint, int cutRgb, Texture cutTexture) {
    /** Its surface, mm. */
    public TriMesh mesh() {
        return creases.mesh();
    }

    /** A plastic part; its cut faces are solid dark. */
    public static Body part(TriMesh mesh) {
        return part(Creases.of(mesh));
    }

    public static Body part(Creases creases) {
        return part(creases, FacetPaint.of(Material.PLASTIC));
    }

    public static Body part(Creases creases, FacetPaint paint) {
        return new Body(creases, paint, Ink.PLASTIC_CUT, Texture.NONE);
    }

    /** Half A in aluminium, hatched to the right. */
    public static Body halfA(Creases creases) {
        return new Body(creases, FacetPaint.of(Material.ALUMINIUM), Ink.PAPER, Texture.HATCH_A);
    }

    /** Half B in aluminium, hatched to the left. */
    public static Body halfB(Creases creases) {
        return new Body(creases, FacetPaint.of(Material.ALUMINIUM), Ink.PAPER, Texture.HATCH_B);
    }
}
