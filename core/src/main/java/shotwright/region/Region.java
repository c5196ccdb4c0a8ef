package shotwright.region;

import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.locationtech.jts.algorithm.locate.IndexedPointInAreaLocator;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.GeometryFactory;
import org.locationtech.jts.geom.LinearRing;
import org.locationtech.jts.geom.Location;
import org.locationtech.jts.geom.Point;
import org.locationtech.jts.geom.Polygon;
import org.locationtech.jts.geom.util.AffineTransformation;
import org.locationtech.jts.geom.util.PolygonExtracter;
import org.locationtech.jts.operation.buffer.BufferOp;
import org.locationtech.jts.operation.buffer.BufferParameters;
import org.locationtech.jts.operation.overlayng.OverlayNG;
import org.locationtech.jts.operation.overlayng.OverlayNGRobust;
import org.locationtech.jts.simplify.TopologyPreservingSimplifier;
import shotwright.geom.Vec2;

/**
 * A region of the plane bounded by straight edges: any number of pieces, each with any number of holes, millimetres. Immutable and safe to
 * read from several threads. Set operations are exact to rounding of the crossing points and do not fail on touching or nearly coincident
 * borders.
 */
public final class Region {
    private static final GeometryFactory FACTORY = new GeometryFactory();

    /** The region that covers nothing. */
    public static final Region EMPTY = new Region(FACTORY.createPolygon());

    private final Geometry geometry;
    private volatile @Nullable IndexedPointInAreaLocator locator;

    private Region(Geometry geometry) {
        this.geometry = geometry;
    }

    /** The polygons of a geometry; its points and lines are dropped. The geometry must be valid and must not be altered afterwards. */
    public static Region of(Geometry geometry) {
        if (geometry instanceof Polygon) return new Region(geometry);
        List<?> polygons = PolygonExtracter.getPolygons(geometry);
        if (polygons.isEmpty()) return EMPTY;
        return new Region(
                FACTORY.buildGeometry(polygons.stream().map(Polygon.class::cast).toList()));
    }

    /** One ring without holes; the ring need not repeat its first point and may run either way round. */
    public static Region of(List<Vec2> ring) {
        return of(ring, List.of());
    }

    /** One ring with holes inside it. */
    public static Region of(List<Vec2> ring, List<List<Vec2>> holes) {
        LinearRing[] inner = holes.stream().map(Region::linearRing).toArray(LinearRing[]::new);
        return new Region(FACTORY.createPolygon(linearRing(ring), inner));
    }

    /** A rectangle between two opposite corners. */
    public static Region rectangle(Vec2 a, Vec2 b) {
        return of(List.of(a, new Vec2(b.x(), a.y()), b, new Vec2(a.x(), b.y())));
    }

    /** A regular polygon whose corners lie on the circle, the first one at angle 0. */
    public static Region disc(Vec2 centre, double radius, int corners) {
        if (!(radius > 0) || corners < 3)
            throw new IllegalArgumentException("disc: radius " + radius + ", corners " + corners);
        List<Vec2> ring = new ArrayList<>(corners);
        for (int i = 0; i < corners; i++) {
            double a = 2 * Math.PI * i / corners;
            ring.add(centre.plus(new Vec2(radius * Math.cos(a), radius * Math.sin(a))));
        }
        return of(ring);
    }

    private static LinearRing linearRing(List<Vec2> ring) {
        if (ring.size() < 3) throw new IllegalArgumentException("ring: has only " + ring.size() + " points");
        boolean closed = ring.getFirst().equals(ring.getLast());
        Coordinate[] c = new Coordinate[ring.size() + (closed ? 0 : 1)];
        for (int i = 0; i < c.length; i++) {
            Vec2 p = ring.get(i % ring.size());
            c[i] = new Coordinate(p.x(), p.y());
        }
        return FACTORY.createLinearRing(c);
    }

    /** The union of any number of regions. */
    public static Region unionOf(Collection<Region> regions) {
        if (regions.isEmpty()) return EMPTY;
        List<Geometry> all = regions.stream().map(r -> r.geometry).toList();
        return of(OverlayNGRobust.union(FACTORY.buildGeometry(all)));
    }

    /** The JTS geometry behind this region, for algorithms that need it; not to be altered. */
    public Geometry geometry() {
        return geometry;
    }

    public boolean isEmpty() {
        return geometry.isEmpty();
    }

    public double area() {
        return geometry.getArea();
    }

    /** Length of all borders, those of holes included. */
    public double perimeter() {
        return geometry.getLength();
    }

    /** Centre of area; an empty region has none and is refused. */
    public Vec2 centroid() {
        Point p = geometry.getCentroid();
        if (p.isEmpty()) throw new IllegalArgumentException("region: is empty, it has no centroid");
        return new Vec2(p.getX(), p.getY());
    }

    /** The lower left corner of the box around it; an empty region is refused. */
    public Vec2 min() {
        requireArea();
        return new Vec2(
                geometry.getEnvelopeInternal().getMinX(),
                geometry.getEnvelopeInternal().getMinY());
    }

    /** The upper right corner of the box around it; an empty region is refused. */
    public Vec2 max() {
        requireArea();
        return new Vec2(
                geometry.getEnvelopeInternal().getMaxX(),
                geometry.getEnvelopeInternal().getMaxY());
    }

    private void requireArea() {
        if (isEmpty()) throw new IllegalArgumentException("region: is empty, it has no extent");
    }

    public Region union(Region o) {
        return of(OverlayNGRobust.overlay(geometry, o.geometry, OverlayNG.UNION));
    }

    public Region intersection(Region o) {
        return of(OverlayNGRobust.overlay(geometry, o.geometry, OverlayNG.INTERSECTION));
    }

    /** This region without the other. */
    public Region difference(Region o) {
        return of(OverlayNGRobust.overlay(geometry, o.geometry, OverlayNG.DIFFERENCE));
    }

    /** How an offset border goes round an outside corner. */
    public enum Join {
        ROUND(BufferParameters.JOIN_ROUND),
        /** Prolonged to a point, cut off at five times the distance. */
        MITRE(BufferParameters.JOIN_MITRE),
        BEVEL(BufferParameters.JOIN_BEVEL);

        private final int style;

        Join(int style) {
            this.style = style;
        }
    }

    /** The region grown (distance above zero) or shrunk (below zero) with round corners of 16 chords to the quarter circle. */
    public Region offset(double distance) {
        return offset(distance, Join.ROUND, 16);
    }

    /**
     * The region grown (distance above zero) or shrunk (below zero).
     *
     * @param quarterChords chords to a quarter circle where corners are round
     */
    public Region offset(double distance, Join join, int quarterChords) {
        if (distance == 0 || isEmpty()) return this;
        BufferParameters how = new BufferParameters(quarterChords, BufferParameters.CAP_ROUND, join.style, 5);
        how.setSimplifyFactor(0.001);
        return of(BufferOp.bufferOp(geometry, distance, how));
    }

    /**
     * The region grown (distance above zero) or shrunk (below zero) so that no place of the new border is nearer to the old one than the
     * distance, and none at a round corner farther than the distance and the error. For borders that must not be cut into: chords of a round
     * corner alone would come nearer by their sagitta. Where the old border bends inward by little, ends of offset pieces nearer to each other
     * than a thousandth of the distance are made one, which may bring the new border nearer by as much.
     */
    public Region offsetWithin(double distance, double error) {
        if (!(error > 0)) throw new IllegalArgumentException("offset: error " + error + " is not above zero");
        if (distance == 0 || isEmpty()) return this;
        double radius = Math.abs(distance) + error;
        // a corner may be given a chord less than its share, hence half as many again
        int quarterChords = (int) Math.ceil(1.5 * Math.PI / 4 / Math.acos(1 - 0.8 * error / radius));
        BufferParameters how = new BufferParameters(quarterChords, BufferParameters.CAP_ROUND, Join.ROUND.style, 5);
        how.setSimplifyFactor(error / radius / 10);
        return of(BufferOp.bufferOp(geometry, Math.copySign(radius, distance), how));
    }

    /** Points closer to the border than the tolerance may be dropped; pieces and holes stay apart. */
    public Region simplify(double tolerance) {
        return isEmpty() ? this : of(TopologyPreservingSimplifier.simplify(geometry, tolerance));
    }

    public Region convexHull() {
        return isEmpty() ? this : of(geometry.convexHull());
    }

    /** The region turned about the origin, counter-clockwise, then moved. */
    public Region place(double turnRad, Vec2 move) {
        if (isEmpty()) return this;
        AffineTransformation t = AffineTransformation.rotationInstance(turnRad).translate(move.x(), move.y());
        return new Region(t.transform(geometry));
    }

    public Region move(Vec2 by) {
        return place(0, by);
    }

    /** Inside or on the border. */
    public boolean contains(Vec2 p) {
        return contains(p.x(), p.y());
    }

    /** Inside or on the border. */
    public boolean contains(double x, double y) {
        if (isEmpty()) return false;
        IndexedPointInAreaLocator l = locator;
        if (l == null) {
            l = new IndexedPointInAreaLocator(geometry);
            locator = l;
        }
        return l.locate(new Coordinate(x, y)) != Location.EXTERIOR;
    }

    public boolean contains(Region o) {
        return geometry.covers(o.geometry);
    }

    /** The two have at least one point in common, if only on their borders. */
    public boolean touches(Region o) {
        return geometry.intersects(o.geometry);
    }

    /** How far a point lies outside; 0 inside. Infinite for an empty region. */
    public double distance(Vec2 p) {
        if (isEmpty()) return Double.POSITIVE_INFINITY;
        return geometry.distance(FACTORY.createPoint(new Coordinate(p.x(), p.y())));
    }

    /** How far a point lies from the nearest border, inside or outside. Infinite for an empty region. */
    public double borderDistance(Vec2 p) {
        if (isEmpty()) return Double.POSITIVE_INFINITY;
        return geometry.getBoundary().distance(FACTORY.createPoint(new Coordinate(p.x(), p.y())));
    }

    /** The gap between two regions; 0 when they touch or overlap, infinite when one is empty. */
    public double distance(Region o) {
        return isEmpty() || o.isEmpty() ? Double.POSITIVE_INFINITY : geometry.distance(o.geometry);
    }

    /** The connected pieces, each with its holes. */
    public List<Region> pieces() {
        return polygons().map(Region::new).toList();
    }

    /** The outer rings, one per piece, counter-clockwise, without repeating the first point. */
    public List<List<Vec2>> exteriors() {
        return polygons().map(p -> points(p.getExteriorRing(), true)).toList();
    }

    /** The rings of all holes, clockwise, without repeating the first point. */
    public List<List<Vec2>> holes() {
        List<List<Vec2>> all = new ArrayList<>();
        polygons().forEach(p -> {
            for (int i = 0; i < p.getNumInteriorRing(); i++) all.add(points(p.getInteriorRingN(i), false));
        });
        return all;
    }

    private java.util.stream.Stream<Polygon> polygons() {
        return java.util.stream.IntStream.range(0, geometry.getNumGeometries())
                .mapToObj(i -> (Polygon) geometry.getGeometryN(i))
                .filter(p -> !p.isEmpty());
    }

    private static List<Vec2> points(LinearRing ring, boolean counterClockwise) {
        Coordinate[] c = ring.getCoordinates();
        boolean ccw = org.locationtech.jts.algorithm.Orientation.isCCW(c);
        List<Vec2> out = new ArrayList<>(c.length - 1);
        for (int i = 0; i < c.length - 1; i++) {
            Coordinate p = c[ccw == counterClockwise ? i : c.length - 1 - i];
            out.add(new Vec2(p.x, p.y));
        }
        return out;
    }

    @Override
    public String toString() {
        return "region of " + area() + " mm² in " + geometry.getNumGeometries() + " pieces";
    }
}
