package shotwright.review.face;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.function.IntPredicate;
import shotwright.brep.ExactBody;
import shotwright.geom.Vec3;
import shotwright.mesh.Edges;

/** Which faces meet, over what length, and whether they run smoothly into each other. */
public final class FaceBorders {
    /** Two faces run smoothly into each other where their normals differ by less; what exporters make of a tangent stays below. */
    private static final double SMOOTH = Math.cos(0.01);

    /**
     * Where one face meets another.
     *
     * @param neighbour number of the other face, from 0
     * @param lengthMm how long they meet
     * @param smoothMm how much of that runs smoothly
     * @param outsideMm how much of that is an outside corner
     */
    public record Border(int neighbour, double lengthMm, double smoothMm, double outsideMm) {
        Border plus(Border o) {
            return new Border(neighbour, lengthMm + o.lengthMm, smoothMm + o.smoothMm, outsideMm + o.outsideMm);
        }
    }

    private final List<List<Border>> borders;

    private FaceBorders(List<List<Border>> borders) {
        this.borders = borders;
    }

    /**
     * The borders of a body.
     *
     * @param edges of the mesh over it, turned any way
     */
    public static FaceBorders of(ExactBody body, Edges edges) {
        List<Map<Integer, Border>> found = new ArrayList<>();
        for (int i = 0; i < body.faces().size(); i++) found.add(new HashMap<>());
        for (int e = 0; e < edges.count(); e++) {
            if (!edges.isManifold(e)) continue;
            int f = edges.facet(e, 0), g = edges.facet(e, 1), a = body.faceOf()[f], b = body.faceOf()[g];
            if (a == b) continue;
            double length = edges.length(e);
            boolean smooth = meets(body, edges, f, g, edges.low(e)) && meets(body, edges, f, g, edges.high(e));
            double smoothMm = smooth ? length : 0, outside = !smooth && edges.turn(e) > 0 ? length : 0;
            found.get(a).merge(b, new Border(b, length, smoothMm, outside), Border::plus);
            found.get(b).merge(a, new Border(a, length, smoothMm, outside), Border::plus);
        }
        return new FaceBorders(found.stream()
                .map(m -> m.values().stream()
                        .sorted(Comparator.comparingDouble(Border::lengthMm).reversed())
                        .toList())
                .toList());
    }

    private static boolean meets(ExactBody body, Edges edges, int f, int g, int vertex) {
        return normal(body, edges, f, vertex).dot(normal(body, edges, g, vertex)) > SMOOTH;
    }

    private static Vec3 normal(ExactBody body, Edges edges, int facet, int vertex) {
        int k = 0;
        while (k < 2 && edges.mesh().corner(facet, k) != vertex) k++;
        int i = 9 * facet + 3 * k;
        return new Vec3(body.normals()[i], body.normals()[i + 1], body.normals()[i + 2]).unit();
    }

    /** What a face meets, longest border first. */
    public List<Border> of(int face) {
        return borders.get(face);
    }

    /** How much of a face's border is an outside corner, of all that does not run smoothly; 1 when everything runs smoothly. */
    public double outsideShare(int face) {
        double sharp = 0, outside = 0;
        for (Border b : of(face)) {
            sharp += b.lengthMm - b.smoothMm;
            outside += b.outsideMm;
        }
        return sharp == 0 ? 1 : outside / sharp;
    }

    /** Faces that a face runs smoothly into over most of their border. */
    public int[] smoothNeighbours(int face) {
        return of(face).stream()
                .filter(b -> b.smoothMm > b.lengthMm / 2)
                .mapToInt(Border::neighbour)
                .toArray();
    }

    /** The faces that hang together smoothly with one, itself first, among those asked for. */
    public int[] smoothChain(int face, IntPredicate among) {
        List<Integer> chain = new ArrayList<>(List.of(face));
        for (int i = 0; i < chain.size(); i++) {
            for (int next : smoothNeighbours(chain.get(i)))
                if (among.test(next) && !chain.contains(next)) chain.add(next);
        }
        return chain.stream().mapToInt(Integer::intValue).toArray();
    }
}
