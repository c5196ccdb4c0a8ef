package shotwright.mesh;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.concurrent.atomic.AtomicInteger;
import shotwright.geom.Vec3;
import shotwright.progress.Parallel;
import shotwright.progress.Progress;

/**
 * Facets of a mesh that cross each other, or lie on each other, beyond the corners and edges they share. A solid whose surface crosses
 * itself has no clear inside where it does.
 *
 * <p>Only depths above a tolerance count, the depth being the shortest shift that would part the two facets. Files in single precision
 * round every corner by up to 6e-8 of its coordinate, and CAD systems leave slivers that fold back by a little more: neither is a crossing.
 * Facets that lie on each other are counted apart: walls or gaps without thickness, and flat faces cut into triangles carelessly. Good
 * files hold some.
 *
 * @param crossingCount pairs of facets that cross; at least so many when {@code capped}
 * @param overlapCount pairs of facets that lie on each other in one plane; at least so many when {@code capped}
 * @param capped the search ended early because it had found enough
 * @param depthTolerance depth above which a pair counts
 * @param places the pairs by facet number, crossings before overlaps, as many as were asked for
 */
public record SelfCrossing(
        int crossingCount, int overlapCount, boolean capped, double depthTolerance, List<Place> places) {
    /** The usual tolerance, as a share of the diagonal of the box: 0.6 µm on a part of 60 mm. */
    public static final double DEPTH_RATIO = 1e-5;

    private static final int ENOUGH = 100_000;
    private static final int CHUNK = 1024;

    public SelfCrossing {
        places = List.copyOf(places);
    }

    /**
     * One pair.
     *
     * @param facet the smaller facet number
     * @param other the larger facet number
     * @param inOnePlane they lie on each other rather than cross
     * @param depth the shortest shift that parts them
     * @param at a point of both
     */
    public record Place(int facet, int other, boolean inOnePlane, double depth, Vec3 at) {}

    /** The surface crosses itself somewhere. Facets merely lying on each other do not count. */
    public boolean crosses() {
        return crossingCount > 0;
    }

    /** Searches with the usual tolerance and keeps up to 100 places. */
    public static SelfCrossing of(Bvh bvh, Progress progress) {
        return of(bvh, DEPTH_RATIO * bvh.mesh().box().diagonal(), 100, progress);
    }

    /**
     * Searches all pairs of facets whose boxes meet.
     *
     * @param depthTolerance depth above which a pair counts
     * @param limit places to keep
     * @throws Progress.Cancelled when asked to stop
     */
    public static SelfCrossing of(Bvh bvh, double depthTolerance, int limit, Progress progress) {
        if (!(depthTolerance > 0) || limit < 0)
            throw new IllegalArgumentException("tolerance " + depthTolerance + ", limit " + limit);
        int n = bvh.mesh().facetCount(), chunks = (n + CHUNK - 1) / CHUNK;
        List<List<Place>> found = new ArrayList<>();
        for (int c = 0; c < chunks; c++) found.add(new ArrayList<>());
        AtomicInteger total = new AtomicInteger();
        Runnable told = Parallel.steps(progress, "looking for crossing facets", chunks);
        Parallel.run(chunks, () -> {
            Search search = new Search(bvh, depthTolerance);
            return c -> {
                for (int i = c * CHUNK, end = Math.min(n, i + CHUNK); i < end && total.get() < ENOUGH; i++)
                    total.addAndGet(search.from(i, found.get(c)));
                told.run();
            };
        });
        List<Place> all = new ArrayList<>();
        found.forEach(all::addAll);
        all.sort(Comparator.comparing(Place::inOnePlane)
                .thenComparingInt(Place::facet)
                .thenComparingInt(Place::other));
        int flat = (int) all.stream().filter(Place::inOnePlane).count();
        return new SelfCrossing(
                all.size() - flat,
                flat,
                total.get() >= ENOUGH,
                depthTolerance,
                all.subList(0, Math.min(limit, all.size())));
    }

    /** One thread's search. */
    private static final class Search {
        private final Bvh bvh;
        private final double tolerance;
        private final Probe probe = new Probe();
        private final FacetPair pair = new FacetPair();

        Search(Bvh bvh, double tolerance) {
            this.bvh = bvh;
            this.tolerance = tolerance;
        }

        /** The pairs of the facet at a place in the tree with those behind it; answers how many were added. */
        int from(int place, List<Place> to) {
            int before = to.size(), count = bvh.neighbours(probe, place, tolerance);
            for (int i = 0; i < count; i++) test(bvh.facetAt(place), bvh.facetAt(probe.hitFacet(i)), to);
            return to.size() - before;
        }

        private void test(int f, int g, List<Place> to) {
            if (!pair.take(bvh.mesh(), f, g)) return;
            double depth = pair.depth(tolerance);
            boolean flat = depth <= tolerance && pair.inOnePlane(tolerance);
            if (flat) depth = pair.depthInPlane(tolerance);
            if (depth > tolerance) to.add(new Place(Math.min(f, g), Math.max(f, g), flat, depth, pair.place()));
        }
    }
}
