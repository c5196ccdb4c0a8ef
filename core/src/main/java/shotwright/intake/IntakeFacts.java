package shotwright.intake;

import java.util.List;
import org.jspecify.annotations.Nullable;
import shotwright.geom.Box3;
import shotwright.measure.LengthUnit;

/**
 * What could be measured of a file, whether or not its solid was accepted. Sizes are of the whole file; when it holds several bodies the
 * accepted part carries its own.
 *
 * @param fileName the name without folder
 * @param format what the content turned out to be, for example {@code "STL, binary"}
 * @param fileByteCount size of the file
 * @param unitTaken the unit the numbers were read in
 * @param unitReason why that unit, in a sentence
 * @param unitReadings the size the part would have in millimetres, centimetres, metres and inches; empty when no facet could be used
 * @param bodies how many separate solids
 * @param bodyList the solids, largest first
 * @param facets triangles in use
 * @param vertices different corner points
 * @param openEdges edges with a facet on one side only
 * @param nonManifoldEdges edges shared by three or more facets
 * @param turnedEdges edges whose two facets disagree on which side is outside
 * @param volumeMm3 enclosed volume; means little while edges are open
 * @param surfaceAreaMm2 area of the facets
 * @param boxMm box around the facets, in the axes of the file; null when no facet could be used
 * @param notes what was done to the file's content, in plain words
 */
public record IntakeFacts(
        String fileName,
        String format,
        long fileByteCount,
        LengthUnit unitTaken,
        String unitReason,
        List<UnitReading> unitReadings,
        int bodies,
        List<FoundBody> bodyList,
        int facets,
        int vertices,
        int openEdges,
        int nonManifoldEdges,
        int turnedEdges,
        double volumeMm3,
        double surfaceAreaMm2,
        @Nullable Box3 boxMm,
        List<String> notes) {
    public IntakeFacts {
        unitReadings = List.copyOf(unitReadings);
        bodyList = List.copyOf(bodyList);
        notes = List.copyOf(notes);
    }
}
