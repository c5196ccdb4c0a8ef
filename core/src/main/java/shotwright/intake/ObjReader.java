package shotwright.intake;

import java.nio.ByteBuffer;
import java.util.ArrayList;
import java.util.List;

/**
 * OBJ: {@code v x y z …} and {@code f a/b/c …}, counted from 1, or from the end when negative. Polygons are split into triangles, concave
 * ones too. Texture, normals, groups, materials, lines and points are passed over; free-form surfaces are passed over with a note. All of
 * it is read as one surface.
 */
final class ObjReader {
    private static final int MOST_CORNERS = 10_000;

    private final TextScan scan;
    private final ReadGuard guard;
    private final FacetCollector out;
    private final Ints vertexOfLine = new Ints();
    private final Ints face = new Ints();
    private int faces;
    private int polygons;
    private int thin;
    private int folded;
    private int freeForm;

    private ObjReader(ByteBuffer bytes, ReadGuard guard) {
        this.scan = new TextScan(bytes, guard, true);
        this.guard = guard;
        this.out = new FacetCollector(guard);
    }

    static RawModel read(ByteBuffer bytes, ReadGuard guard) {
        return new ObjReader(bytes, guard).read();
    }

    private RawModel read() {
        int lines = 0;
        do {
            if ((lines++ & 0x3FFF) == 0) guard.at("reading facets", scan.share());
            if (!scan.wordOfLine()) continue;
            if (scan.is("v")) vertex();
            else if (scan.is("f") || scan.is("fo")) face();
            else if (scan.is("surf") || scan.is("curv") || scan.is("curv2")) freeForm++;
        } while (scan.nextLine());
        if (faces == 0)
            throw guard.fault(
                    "",
                    freeForm > 0
                            ? "it holds free-form surfaces and no facets, and only facets are read"
                            : "it holds no facet (no line beginning with f)",
                    "Export the part as a mesh of facets");
        return new RawModel(FileFormat.OBJ.words(), null, false, List.of(out.finish("")), notes(), List.of());
    }

    private List<String> notes() {
        List<String> notes = new ArrayList<>();
        if (polygons > 0) notes.add("Split " + polygons + " polygons into triangles.");
        if (folded > 0) notes.add(folded + " polygons cross themselves or have no area; they were split as fans.");
        if (thin > 0) notes.add("Left out " + thin + " faces with fewer than three different corners.");
        if (freeForm > 0) notes.add("Passed over " + freeForm + " free-form curves or surfaces.");
        return notes;
    }

    private void vertex() {
        double[] p = new double[3];
        for (int i = 0; i < 3; i++) {
            if (!scan.wordOfLine())
                throw guard.fault(
                        scan.place(),
                        "a corner point has " + i + " coordinates, it must have 3",
                        "Export the file again, or correct this line");
            p[i] = scan.wordAsNumber("a coordinate");
        }
        if (vertexOfLine.count() >= 4L * guard.limits().maxVertexCount()) guard.vertices(Long.MAX_VALUE, scan.place());
        vertexOfLine.add(out.vertex(p[0], p[1], p[2]));
    }

    private void face() {
        faces++;
        int line = scan.line();
        face.clear();
        int corners = 0;
        boolean unusable = false;
        while (scan.wordOfLine()) {
            if (scan.charAt(0) == '#') break;
            if (++corners > MOST_CORNERS)
                throw guard.fault(
                        scan.place(),
                        "a face has more than " + MOST_CORNERS + " corners",
                        "Export the part as triangles");
            int v = corner();
            unusable |= v == FacetCollector.UNUSABLE;
            if (face.count() == 0 || face.get(face.count() - 1) != v) face.add(v);
        }
        int n = face.count();
        if (n > 1 && face.get(0) == face.get(n - 1)) n--;
        if (unusable) {
            out.facet(FacetCollector.UNUSABLE, 0, 0, () -> "line " + line);
        } else if (n < 3) {
            thin++;
        } else {
            split(java.util.Arrays.copyOf(face.toArray(), n), line);
        }
    }

    private void split(int[] ring, int line) {
        if (ring.length > 3) polygons++;
        if (ring.length > 200) guard.at("splitting polygons", scan.share());
        boolean good = EarClipping.split(ring, out::place, (a, b, c) -> out.facet(a, b, c, () -> "line " + line));
        if (!good) folded++;
    }

    private int corner() {
        int end = 0;
        while (end < scan.length() && scan.charAt(end) != '/') end++;
        int i = scan.wholeNumber(0, end, "the number of a corner point"), known = vertexOfLine.count();
        if (i == 0 || i > known || i < -known)
            throw guard.fault(
                    scan.place(),
                    "a face names corner point " + i + ", but "
                            + (i == 0
                                    ? "they are counted from 1"
                                    : known + (known == 1 ? " stands" : " stand") + " in the file up to here"),
                    "Export the file again; a hand-made cut of an OBJ file must renumber its faces");
        return vertexOfLine.get(i > 0 ? i - 1 : known + i);
    }
}
