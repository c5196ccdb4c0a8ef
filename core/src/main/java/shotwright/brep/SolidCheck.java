package shotwright.brep;

/**
 * What a look at the topology says.
 *
 * @param valid every face, edge and vertex agrees with its neighbours within tolerance
 * @param solids bodies in it
 * @param shells shells in it; more than one for each body means hollow spaces
 * @param faces faces
 * @param openEdges edges that only one face uses
 */
public record SolidCheck(boolean valid, int solids, int shells, int faces, int openEdges) {
    /** One sound closed body. */
    public boolean isOneClosedSolid() {
        return valid && solids == 1 && openEdges == 0;
    }
}
