package shotwright.intake;

import java.util.List;
import java.util.Locale;
import org.jspecify.annotations.Nullable;
import shotwright.brep.ExactBody;
import shotwright.measure.LengthUnit;
import shotwright.mesh.TriMesh;

/** The objects of a file as one mesh in millimetres. Corner points of different objects are never joined. */
final class Solids {
    private final TriMesh mesh;
    private final List<RawObject> objects;
    private final String[] names;
    private final int[] firstFacet;

    Solids(List<RawObject> objects, LengthUnit unit, List<String> notes) {
        this.objects = objects;
        names = new String[objects.size()];
        firstFacet = new int[objects.size()];
        Doubles xyz = new Doubles();
        Ints tri = new Ints();
        int joined = 0;
        double reach = 0;
        for (int i = 0; i < names.length; i++) {
            RawObject o = objects.get(i);
            names[i] = o.name();
            firstFacet[i] = tri.count() / 3;
            if (o.exact() != null) {
                append(scaled(o, unit.mm()), xyz, tri);
                continue;
            }
            NearWeld.Joined near = NearWeld.of(scaled(o, unit.mm()));
            joined += near.joined();
            reach = Math.max(reach, near.reachMm());
            append(near.mesh(), xyz, tri);
        }
        if (joined > 0)
            notes.add(String.format(
                    Locale.ROOT,
                    "Joined %s less than %.2g µm from others, the rounding of the file's numbers.",
                    SolidGate.count(joined, "corner point"),
                    reach * 1e3));
        mesh = new TriMesh(xyz.toArray(), tri.toArray());
    }

    private static TriMesh scaled(RawObject o, double mm) {
        double[] p = o.xyz();
        if (mm != 1) {
            p = p.clone();
            for (int i = 0; i < p.length; i++) p[i] *= mm;
        }
        return new TriMesh(p, o.tri());
    }

    private static void append(TriMesh m, Doubles xyz, Ints tri) {
        int base = xyz.count() / 3;
        for (int v = 0; v < m.vertexCount(); v++) {
            xyz.add(m.x(v));
            xyz.add(m.y(v));
            xyz.add(m.z(v));
        }
        for (int f = 0; f < m.facetCount(); f++) for (int k = 0; k < 3; k++) tri.add(base + m.corner(f, k));
    }

    TriMesh mesh() {
        return mesh;
    }

    /** The name of the object a facet came with; mends add facets only behind all others. */
    String nameOfFacet(int facet) {
        return names.length == 0 ? "" : names[objectOf(facet)];
    }

    /** What is known from exact faces of the object a facet came with, when its facets are all of the body's. */
    @Nullable ExactBody exactOfFacet(int facet, int bodyFacets) {
        if (names.length == 0) return null;
        ExactBody exact = objects.get(objectOf(facet)).exact();
        return exact != null && exact.faceOf().length == bodyFacets ? exact : null;
    }

    private int objectOf(int facet) {
        int i = names.length - 1;
        while (i > 0 && firstFacet[i] > facet) i--;
        return i;
    }
}
