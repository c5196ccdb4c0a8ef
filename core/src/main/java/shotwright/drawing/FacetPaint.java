package shotwright.drawing;

/** How the facets of a body are painted: plain, one colour a facet, or a value at every corner laid on a scale. */
public sealed interface FacetPaint {
    /** Ruling of a facet. */
    default Texture texture(int facet) {
        return Texture.NONE;
    }

    /** One colour all over, shaded in full. */
    record Plain(int rgb) implements FacetPaint {}

    /** A colour and a ruling for each facet, shaded weakly so that a colour is what the legend says. */
    record ByFacet(int[] rgb, Texture[] textures) implements FacetPaint {
        public ByFacet {
            if (rgb.length != textures.length)
                throw new IllegalArgumentException("textures: " + textures.length + " for " + rgb.length + " facets");
        }

        @Override
        public Texture texture(int facet) {
            return textures[facet];
        }
    }

    /** Values at corners, {@code values[3 · facet + corner]}, straight between them; NaN is no value. */
    record ByCorner(double[] values, ColourScale scale) implements FacetPaint {}

    static FacetPaint of(Material material) {
        return new Plain(material.rgb());
    }

    /** A value for each facet laid on a scale; facets below the limit are ruled, crossed ones are marked by the caller. */
    static FacetPaint byFacet(double[] values, ColourScale scale, java.util.function.IntFunction<Texture> texture) {
        int[] rgb = new int[values.length];
        Texture[] textures = new Texture[values.length];
        for (int f = 0; f < values.length; f++) {
            rgb[f] = scale.rgb(values[f]);
            textures[f] = texture.apply(f);
        }
        return new ByFacet(rgb, textures);
    }

    /** Faces with more draft than this are floors and tops, not walls. */
    double FLOOR_DEG = 45;

    /** Facets of a round drafted wall lean by up to this much less than the wall. */
    double CHORD_DEG = 0.01;

    /**
     * The draft map: walls coloured by how much of the draft asked for they have, short ones ruled, undercuts crossed, floors and tops plain.
     *
     * @param hasDeg draft of each facet
     * @param askedDeg draft asked for at each facet
     * @param undercut whether a facet cannot be pulled
     * @param legendDeg draft that the legend calls asked
     */
    static FacetPaint draft(
            double[] hasDeg, double[] askedDeg, java.util.function.IntPredicate undercut, double legendDeg) {
        ColourScale scale = ColourScale.draft(legendDeg);
        int[] rgb = new int[hasDeg.length];
        Texture[] textures = new Texture[hasDeg.length];
        for (int f = 0; f < rgb.length; f++) {
            boolean hidden = undercut.test(f), floor = !hidden && hasDeg[f] > FLOOR_DEG;
            boolean tooLittle = hasDeg[f] < askedDeg[f] - CHORD_DEG;
            rgb[f] = floor ? Material.PLASTIC.rgb() : scale.rgb(hidden ? 0 : hasDeg[f] * legendDeg / askedDeg[f]);
            textures[f] = hidden ? Texture.CROSSED : tooLittle && !floor ? Texture.RULED : Texture.NONE;
        }
        return new ByFacet(rgb, textures);
    }

    /** Values at vertices laid on a scale. */
    static FacetPaint byVertex(shotwright.mesh.TriMesh mesh, double[] values, ColourScale scale) {
        double[] corners = new double[3 * mesh.facetCount()];
        for (int i = 0; i < corners.length; i++) corners[i] = values[mesh.corner(i / 3, i % 3)];
        return new ByCorner(corners, scale);
    }
}
