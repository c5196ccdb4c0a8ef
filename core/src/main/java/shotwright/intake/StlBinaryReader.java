package shotwright.intake;

import java.nio.ByteBuffer;
import java.nio.ByteOrder;
import java.util.ArrayList;
import java.util.List;
import shotwright.finding.Finding;

/**
 * Binary STL: 80 bytes of free text, a count, and 50 bytes per facet: a normal, three corners as single-precision numbers, two spare bytes.
 * The stored normals are not used; the order of the corners says which side is outside. A count that disagrees with the size of the file
 * is put right when the size leaves one reading.
 */
final class StlBinaryReader {
    static final int HEAD = 84;
    static final int FACET = 50;

    private StlBinaryReader() {}

    static RawModel read(ByteBuffer bytes, ReadGuard guard) {
        ByteBuffer b = bytes.order(ByteOrder.LITTLE_ENDIAN);
        List<Finding> findings = new ArrayList<>();
        int n = facetCount(b, guard, findings);
        guard.facets(n, "byte 80");
        FacetCollector out = new FacetCollector(guard);
        for (int f = 0; f < n; f++) {
            if ((f & 0xFFFF) == 0) guard.at("reading facets", (double) f / n);
            int p = HEAD + FACET * f + 12;
            int a = out.vertex(b.getFloat(p), b.getFloat(p + 4), b.getFloat(p + 8));
            int c = out.vertex(b.getFloat(p + 12), b.getFloat(p + 16), b.getFloat(p + 20));
            int d = out.vertex(b.getFloat(p + 24), b.getFloat(p + 28), b.getFloat(p + 32));
            int facet = f + 1;
            out.facet(a, c, d, () -> "facet " + facet);
        }
        return new RawModel(
                FileFormat.STL_BINARY.words(), null, true, List.of(out.finish("")), List.of(), List.copyOf(findings));
    }

    private static int facetCount(ByteBuffer b, ReadGuard guard, List<Finding> findings) {
        long said = Integer.toUnsignedLong(b.getInt(80));
        int body = b.limit() - HEAD;
        int whole = body / FACET, rest = body % FACET;
        if (said == whole && rest == 0) return whole;
        if (rest == 0 && whole > 0) {
            findings.add(countFinding(
                    said, whole, "the size of the file fits " + whole + " whole facets, and these were read"));
            return whole;
        }
        if (said > 0 && said <= whole) {
            long left = body - said * FACET;
            findings.add(countFinding(
                    said,
                    whole,
                    left + " more bytes follow the last of them and were not read, they are no whole facets"));
            return (int) said;
        }
        throw guard.fault(
                "facet " + (whole + 1) + ", byte " + (HEAD + (long) whole * FACET),
                "the file says it holds " + said + " facets but ends after " + whole + " of them and " + rest
                        + " bytes of the next; it was cut short",
                "Export or copy the file again");
    }

    private static Finding countFinding(long said, int whole, String done) {
        return Finding.ask(
                        "facet-count",
                        "The file says it holds " + said + " facets, its size fits " + whole + ": " + done + ".")
                .remedy(
                        "Compare the size and the picture of the part with what the customer sees, or ask for a new export.");
    }
}
