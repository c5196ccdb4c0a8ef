package shotwright.intake;

import java.nio.ByteBuffer;
import java.util.ArrayList;
import java.util.List;
import shotwright.finding.Finding;

/**
 * ASCII STL: {@code facet … vertex x y z (three times) … endfacet}, in any case and spacing, any number of {@code solid} sections. The
 * sections are read into one object, because many programs write the faces of one solid as sections. Stored normals are not used.
 */
final class StlAsciiReader {
    private final TextScan scan;
    private final ReadGuard guard;
    private final FacetCollector out;
    private final int[] corner = new int[3];
    private String name = "";
    private int solids;
    private boolean open;

    private StlAsciiReader(ByteBuffer bytes, ReadGuard guard) {
        this.scan = new TextScan(bytes, guard, false);
        this.guard = guard;
        this.out = new FacetCollector(guard);
    }

    static RawModel read(ByteBuffer bytes, ReadGuard guard) {
        return new StlAsciiReader(bytes, guard).read();
    }

    private RawModel read() {
        int facets = 0;
        while (scan.word()) {
            if (scan.is("facet")) {
                if ((facets++ & 0x3FFF) == 0) guard.at("reading facets", scan.share());
                facet(facets);
            } else if (scan.is("solid")) {
                solid();
            } else if (scan.is("endsolid")) {
                open = false;
                scan.nextLine();
            } else {
                throw unexpected("\"facet\", \"solid\" or \"endsolid\"");
            }
        }
        List<Finding> findings = new ArrayList<>();
        if (open)
            findings.add(Finding.watch(
                            "end-missing",
                            "The file stops without its closing line \"endsolid\"; facets may be missing at the end.")
                    .remedy("Ask for a new export when the solid turns out to be open."));
        List<String> notes =
                solids > 1 ? List.of("Read " + solids + " sections of the file as one surface.") : List.of();
        return new RawModel(
                FileFormat.STL_ASCII.words(), null, true, List.of(out.finish(name)), notes, List.copyOf(findings));
    }

    private void solid() {
        int line = scan.line();
        StringBuilder words = new StringBuilder();
        while (scan.line() == line && words.length() < 80 && scan.wordOfLine()) {
            words.append(words.isEmpty() ? "" : " ").append(scan.text());
        }
        scan.nextLine();
        if (solids++ == 0) name = words.toString();
        open = true;
    }

    private void facet(int number) {
        int line = scan.line(), corners = 0;
        while (true) {
            if (!scan.word())
                throw guard.fault(
                        scan.place(),
                        "the file ends inside facet " + number + "; it was cut short",
                        "Export or copy the file again");
            if (scan.is("endfacet")) break;
            if (scan.is("vertex")) {
                double x = scan.number("a coordinate"),
                        y = scan.number("a coordinate"),
                        z = scan.number("a coordinate");
                if (corners < 3) corner[corners] = out.vertex(x, y, z);
                corners++;
            } else if (scan.is("normal")) {
                for (int i = 0; i < 3; i++) scan.number("a normal's component");
            } else if (!scan.is("outer") && !scan.is("loop") && !scan.is("endloop")) {
                throw unexpected("\"vertex\" or \"endfacet\"");
            }
        }
        if (corners != 3)
            throw guard.fault(
                    "line " + line,
                    "facet " + number + " has " + corners + " corners, it must have 3",
                    "Export the file again");
        out.facet(corner[0], corner[1], corner[2], () -> "line " + line);
    }

    private IntakeException unexpected(String wanted) {
        String t = scan.text();
        return guard.fault(
                scan.place(),
                "\"" + (t.length() > 24 ? t.substring(0, 24) + "…" : t) + "\" stands where " + wanted + " should stand",
                "Export the file again, or correct this line");
    }
}
