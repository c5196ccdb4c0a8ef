package shotwright.mesh;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.CompletionException;
import java.util.concurrent.atomic.AtomicInteger;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.GeometryFactory;
import org.locationtech.jts.operation.overlayng.OverlayNG;
import org.locationtech.jts.operation.overlayng.OverlayNGRobust;
import shotwright.geom.Vec3;
import shotwright.progress.Progress;
import shotwright.region.Region;

/**
 * What a closed mesh covers when seen along z: the union of the shadows of all facets that look up.
 *
 * @param region the exact projected region in x and y
 * @param freeSum Σ ½ A·|n·z| over all facets, mm²: equals the area where nothing is hidden, exceeds it where the mesh has more than one
 *     layer along z
 */
public record Shadow(Region region, double freeSum) {
    private static final GeometryFactory FACTORY = new GeometryFactory();

    /**
     * The exact shadow along z.
     *
     * @throws Progress.Cancelled when asked to stop
     */
    public static Shadow of(TriMesh mesh, Progress progress) {
        List<Geometry> up = new ArrayList<>();
        double sum = 0;
        for (int f = 0; f < mesh.facetCount(); f++) {
            double twice = mesh.doubleAreaNormal(f).z();
            sum += Math.abs(twice) / 4;
            if (twice > 0) up.add(shadow(mesh, f));
        }
        return new Shadow(Region.of(union(up, progress)), sum);
    }

    public double area() {
        return region.area();
    }

    /** How much of the shadow lies under a further layer: (Σ½A|n·z| − area) / area; 0 for a mesh with nothing hidden. */
    public double hiddenShare() {
        return region.isEmpty() ? 0 : (freeSum - area()) / area();
    }

    private static Geometry shadow(TriMesh mesh, int f) {
        Vec3 a = mesh.cornerPoint(f, 0), b = mesh.cornerPoint(f, 1), c = mesh.cornerPoint(f, 2);
        Coordinate first = new Coordinate(a.x(), a.y());
        return FACTORY.createPolygon(
                new Coordinate[] {first, new Coordinate(b.x(), b.y()), new Coordinate(c.x(), c.y()), first.copy()});
    }

    /** Strips across x, each united on its own, two at a time; then the strips with each other. */
    private static Geometry union(List<Geometry> up, Progress progress) {
        if (up.isEmpty()) return Region.EMPTY.geometry();
        Geometry[] all = up.toArray(Geometry[]::new);
        Arrays.sort(
                all,
                (p, q) -> Double.compare(
                        p.getEnvelopeInternal().getMinX(),
                        q.getEnvelopeInternal().getMinX()));
        int strips = Math.max(1, Math.min(64, all.length / 500));
        AtomicInteger done = new AtomicInteger();
        List<CompletableFuture<Geometry>> parts = new ArrayList<>();
        for (int i = 0; i < strips; i++) {
            int from = (int) ((long) all.length * i / strips), to = (int) ((long) all.length * (i + 1) / strips);
            parts.add(CompletableFuture.supplyAsync(() -> {
                progress.at("uniting the shadows of the facets", done.getAndIncrement() / (double) strips);
                return OverlayNGRobust.union(
                        FACTORY.buildGeometry(Arrays.asList(all).subList(from, to)));
            }));
        }
        while (parts.size() > 1) {
            List<CompletableFuture<Geometry>> next = new ArrayList<>();
            for (int i = 0; i + 1 < parts.size(); i += 2)
                next.add(parts.get(i)
                        .thenCombineAsync(parts.get(i + 1), (p, q) -> OverlayNGRobust.overlay(p, q, OverlayNG.UNION)));
            if (parts.size() % 2 == 1) next.add(parts.getLast());
            parts = next;
        }
        try {
            return parts.getFirst().join();
        } catch (CompletionException e) {
            if (e.getCause() instanceof RuntimeException r) throw r;
            throw e;
        }
    }
}
