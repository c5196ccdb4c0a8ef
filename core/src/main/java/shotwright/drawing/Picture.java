package shotwright.drawing;

import java.awt.image.BufferedImage;
import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.Polygon;
import org.locationtech.jts.triangulate.polygon.ConstrainedDelaunayTriangulator;
import shotwright.geom.Plane;
import shotwright.geom.Vec2;
import shotwright.geom.Vec3;
import shotwright.mesh.TriMesh;

/**
 * A shaded picture of a scene by a depth buffer: parallel projection, one light at the eye, borders 2 pixels, sharp edges 1 pixel, no
 * shadows. With callouts, scale and legend around it, it becomes a {@link Drawing} by {@link #drawing}.
 */
public final class Picture {
    private static final long MOST_FINE_PIXELS = 8_000_000;

    private final Scene scene;
    private final Projection projection;
    private final Raster raster;
    private final double line;
    private @Nullable Bands bands;

    private Picture(Scene scene, Projection projection, Raster raster, double line) {
        this.scene = scene;
        this.projection = projection;
        this.raster = raster;
        this.line = line;
    }

    /** The bodies alone, filling a picture of this many pixels but for a margin. */
    public static BufferedImage pixels(Scene scene, int width, int height) {
        double margin = Math.max(4, 0.04 * Math.min(width, height));
        return render(scene, width, height, margin, margin, width - 2 * margin, height - 2 * margin, 1)
                .image();
    }

    /** The whole picture with circle numbers, scale, opening arrow, legend and caption on a sheet of this size in mm. */
    public static Drawing drawing(Scene scene, double width, double height, double dpi) {
        return PictureSheet.of(scene, width, height, dpi);
    }

    /** Into a rectangle of the picture; lines are {@code line} times as wide as on the desk. */
    static Picture render(
            Scene scene, int width, int height, double x, double y, double fitWidth, double fitHeight, double line) {
        if (width < 1 || height < 1)
            throw new IllegalArgumentException("picture: " + width + " × " + height + " pixels");
        int fine = 9L * width * height <= MOST_FINE_PIXELS ? 3 : 4L * width * height <= MOST_FINE_PIXELS ? 2 : 1;
        List<Section> cuts = new ArrayList<>();
        scene.cut().ifPresent(plane -> scene.bodies().forEach(b -> cuts.add(Section.of(b.mesh(), plane))));
        Projection fit = Projection.fitted(scene, cuts, x, y, fitWidth, fitHeight);
        Raster raster = new Raster(width, height, fine, scene.ground());
        Picture p = new Picture(scene, fit, raster, line);
        p.draw(fit.finer(fine), cuts);
        return p;
    }

    BufferedImage image() {
        return raster.image();
    }

    Projection projection() {
        return projection;
    }

    /** Whether nothing lies between a point and the eye. */
    boolean sees(Vec3 at) {
        Projection f = projection.finer(raster.fine);
        double x = f.x(at), y = f.y(at);
        if (x < 0 || y < 0 || x >= raster.width || y >= raster.height) return false;
        return f.depth(at) >= raster.farthestAround(x, y) - 2 * raster.fine;
    }

    private void draw(Projection fine, List<Section> cuts) {
        Light light = new Light(fine);
        ColourScale scale = bandedScale();
        if (scale != null) raster.mapped();
        for (Body b : scene.bodies()) facets(b, fine, light);
        for (int i = 0; i < cuts.size(); i++) cap(scene.bodies().get(i), cuts.get(i), fine);
        if (scale != null) {
            bands = new Bands(raster, scale);
            bands.lines(0.7 * line, Ink.BLACK);
        }
        Outliner outliner = new Outliner(raster);
        for (Body b : scene.bodies())
            edges(b.mesh(), b.creases().sharp(), (p, q) -> outliner.edge(at(p, fine), at(q, fine), line, Ink.BLACK));
        outliner.outlines(2 * line, 1.3 * line, Ink.BLACK);
        for (Section s : cuts) border(s, fine, outliner);
    }

    /** The scale of the first body whose map has bands. */
    private @Nullable ColourScale bandedScale() {
        for (Body b : scene.bodies())
            if (b.paint() instanceof FacetPaint.ByCorner c && c.scale().bands() > 0) return c.scale();
        return null;
    }

    /** Where the bands of a map are seen; empty without such a map. */
    List<Bands.Place> bandPlaces(double room, double apart, int most) {
        return bands == null ? List.of() : bands.places(room, apart, most);
    }

    private void facets(Body body, Projection fine, Light light) {
        TriMesh mesh = body.mesh();
        Plane cut = scene.cut().orElse(null);
        FacetPaint paint = body.paint();
        boolean plain = paint instanceof FacetPaint.Plain;
        float[] normals = body.creases().normals();
        Vec3 toLight = light.direction();
        double[][] c = new double[3][5];
        double[] x = new double[mesh.vertexCount()], y = new double[x.length], z = new double[x.length];
        for (int v = 0; v < x.length; v++) {
            Vec3 p = mesh.vertex(v);
            x[v] = fine.x(p);
            y[v] = fine.y(p);
            z[v] = fine.depth(p);
        }
        for (int f = 0; f < mesh.facetCount(); f++) {
            for (int k = 0; k < 3; k++) {
                int v = mesh.corner(f, k);
                c[k][0] = x[v];
                c[k][1] = y[v];
                c[k][2] = z[v];
            }
            boolean away = (c[1][0] - c[0][0]) * (c[2][1] - c[0][1]) - (c[2][0] - c[0][0]) * (c[1][1] - c[0][1]) > 0;
            for (int k = 0; k < 3; k++) {
                int n = 9 * f + 3 * k;
                double along = normals[n] * toLight.x() + normals[n + 1] * toLight.y() + normals[n + 2] * toLight.z();
                double cosine = away ? -along : along;
                c[k][3] = plain ? Light.plain(cosine) : Light.mapped(cosine);
                if (away) c[k][3] *= 0.85;
                c[k][4] = paint instanceof FacetPaint.ByCorner b ? b.values()[3 * f + k] : Double.NaN;
            }
            Raster.Colouring colouring = colouring(paint, f);
            if (cut == null) raster.triangle(c[0], c[1], c[2], colouring);
            else clipped(c, mesh, f, cut, colouring);
        }
    }

    private Raster.Colouring colouring(FacetPaint paint, int f) {
        Texture texture = paint.texture(f);
        return switch (paint) {
            case FacetPaint.Plain p -> (x, y, shade, value) -> Light.shaded(p.rgb(), shade);
            case FacetPaint.ByCorner b ->
                (x, y, shade, value) -> Light.shaded(b.scale().rgb(value), shade);
            case FacetPaint.ByFacet b -> {
                int rgb = b.rgb()[f], ink = Ink.between(rgb, Ink.readableOn(rgb), 0.75);
                yield texture == Texture.NONE
                        ? (x, y, shade, value) -> Light.shaded(rgb, shade)
                        : (x, y, shade, value) -> Light.shaded(inked(texture, x, y) ? ink : rgb, shade);
            }
        };
    }

    private boolean inked(Texture texture, int x, int y) {
        double k = raster.fine * line;
        return texture.inked(x / k, y / k);
    }

    /** The part of a facet behind the cut. */
    private void clipped(double[][] c, TriMesh mesh, int f, Plane cut, Raster.Colouring colouring) {
        double[] side = new double[3];
        for (int k = 0; k < 3; k++) side[k] = cut.signedDistance(mesh.cornerPoint(f, k));
        if (side[0] <= 0 && side[1] <= 0 && side[2] <= 0) {
            raster.triangle(c[0], c[1], c[2], colouring);
            return;
        }
        List<double[]> kept = new ArrayList<>(4);
        for (int k = 0; k < 3; k++) {
            int n = (k + 1) % 3;
            if (side[k] <= 0) kept.add(c[k].clone());
            if (side[k] <= 0 != side[n] <= 0) kept.add(mix(c[k], c[n], side[k] / (side[k] - side[n])));
        }
        for (int i = 2; i < kept.size(); i++) raster.triangle(kept.get(0), kept.get(i - 1), kept.get(i), colouring);
    }

    private static double[] mix(double[] p, double[] q, double share) {
        double[] m = new double[p.length];
        for (int i = 0; i < m.length; i++) m[i] = p[i] + (q[i] - p[i]) * share;
        return m;
    }

    private void cap(Body body, Section cut, Projection fine) {
        if (cut.region().isEmpty()) return; // the plane passes beside the body
        Raster.Colouring colouring = (x, y, shade, value) -> inked(body.cutTexture(), x, y) ? Ink.BLACK : body.cutRgb();
        Geometry triangles = new ConstrainedDelaunayTriangulator(cut.region().geometry()).getResult();
        for (int i = 0; i < triangles.getNumGeometries(); i++) {
            Coordinate[] ring =
                    ((Polygon) triangles.getGeometryN(i)).getExteriorRing().getCoordinates();
            double[][] c = new double[3][];
            for (int k = 0; k < 3; k++) c[k] = corner(cut, new Vec2(ring[k].x, ring[k].y), fine, 0.25);
            raster.triangle(c[0], c[1], c[2], colouring);
        }
    }

    private static double[] corner(Section cut, Vec2 p, Projection fine, double lift) {
        Vec3 q = cut.inSpace(p);
        return new double[] {fine.x(q), fine.y(q), fine.depth(q) + lift, 1, Double.NaN};
    }

    private void border(Section cut, Projection fine, Outliner outliner) {
        List<List<Vec2>> rings = new ArrayList<>(cut.region().exteriors());
        rings.addAll(cut.region().holes());
        for (List<Vec2> ring : rings) {
            for (int i = 0; i < ring.size(); i++) {
                double[] a = corner(cut, ring.get(i), fine, 1),
                        b = corner(cut, ring.get((i + 1) % ring.size()), fine, 1);
                outliner.edge(a, b, 2 * line, Ink.BLACK);
            }
        }
    }

    private void edges(TriMesh mesh, int[] ends, EdgeInSpace edge) {
        Plane cut = scene.cut().orElse(null);
        for (int i = 0; i < ends.length; i += 2) {
            Vec3 p = mesh.vertex(ends[i]), q = mesh.vertex(ends[i + 1]);
            if (cut != null) {
                double sp = cut.signedDistance(p), sq = cut.signedDistance(q);
                if (sp > 0 && sq > 0) continue;
                Vec3 on = sp > 0 != sq > 0 ? p.toward(q, sp / (sp - sq)) : p;
                if (sp > 0) p = on;
                if (sq > 0) q = on;
            }
            edge.from(p, q);
        }
    }

    /** The parts of sharp edges and round outlines that are seen, as x₁ y₁ x₂ y₂ in millimetres along the view's right and up. */
    static List<double[]> visibleEdges(Scene scene, int finePixels) {
        List<double[]> found = new ArrayList<>();
        Picture p = depths(scene, finePixels);
        Outliner outliner = new Outliner(p.raster);
        Projection fit = p.projection;
        EdgeInSpace edge = (from, to) -> {
            double x1 = fit.right().dot(from), y1 = fit.pageUp().dot(from);
            double x2 = fit.right().dot(to), y2 = fit.pageUp().dot(to);
            outliner.seen(
                    at(from, fit),
                    at(to, fit),
                    (s, t) -> found.add(
                            new double[] {x1 + (x2 - x1) * s, y1 + (y2 - y1) * s, x1 + (x2 - x1) * t, y1 + (y2 - y1) * t
                            }));
        };
        for (Body b : scene.bodies()) {
            p.edges(b.mesh(), b.creases().sharp(), edge);
            p.edges(b.mesh(), b.creases().outlines(scene.view().toEye()), edge);
        }
        return found;
    }

    /** Only how near everything is, without colours: enough to tell what is seen. */
    private static Picture depths(Scene scene, int pixels) {
        List<Section> cuts = new ArrayList<>();
        scene.cut().ifPresent(plane -> scene.bodies().forEach(b -> cuts.add(Section.of(b.mesh(), plane))));
        Projection fit = Projection.fitted(scene, cuts, 4, 4, pixels - 8.0, pixels - 8.0);
        Picture p = new Picture(scene, fit, new Raster(pixels, pixels, 1, scene.ground()), 1);
        for (Body b : scene.bodies()) p.facets(b, fit, new Light(fit));
        for (int i = 0; i < cuts.size(); i++) p.cap(scene.bodies().get(i), cuts.get(i), fit);
        return p;
    }

    private interface EdgeInSpace {
        void from(Vec3 p, Vec3 q);
    }

    private static double[] at(Vec3 p, Projection fine) {
        return new double[] {fine.x(p), fine.y(p), fine.depth(p)};
    }
}
