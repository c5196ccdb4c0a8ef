package shotwright.mesh.complex;

/** How a cap is filled inside its border. */
public sealed interface Grade {
    /** On the border's own vertices. */
    Grade FLAT = new OwnVertices();

    /** A surface that leaves a border which is not flat with a limited slope and comes to rest at one height. */
    static Grade sloped(double restHeight, double slope, double spacing) {
        return new Sloped(restHeight, slope, spacing);
    }

    /** No further points. */
    record OwnVertices() implements Grade {}

    /**
     * Points are added where the surface is not yet at rest.
     *
     * @param restHeight height taken far from the border
     * @param slope rise over run of the way there
     * @param spacing shortest distance between added points
     */
    record Sloped(double restHeight, double slope, double spacing) implements Grade {
        public Sloped {
            if (!(slope > 0) || !(spacing > 0))
                throw new IllegalArgumentException("grade: slope " + slope + ", spacing " + spacing);
        }
    }
}
