package shotwright.machining.clear;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import org.jspecify.annotations.Nullable;
import org.locationtech.jts.algorithm.construct.MaximumInscribedCircle;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.GeometryFactory;
import org.locationtech.jts.geom.prep.PreparedGeometry;
import org.locationtech.jts.geom.prep.PreparedGeometryFactory;
import org.locationtech.jts.operation.distance.DistanceOp;
import shotwright.geom.Vec2;
import shotwright.geom.Vec3;
import shotwright.machining.contour.Contour;
import shotwright.machining.contour.Offset;
import shotwright.machining.path.Arc;
import shotwright.machining.path.Feed;
import shotwright.machining.path.Line;
import shotwright.machining.path.Move;
import shotwright.machining.path.Rapid;
import shotwright.progress.Progress;
import shotwright.region.Region;

/**
 * The moves that clear one level: into each piece by a helix, by a ramp along its border where that is too narrow, or straight down where
 * metal is gone already; then front after front with lead-ins from the cleared side, staying down where the way across is cleared. Where a front starts at a wall there is
 * no room for an arc: the way from cleared ground onto it is straight, at the feed of an entry. Such ways come nearer than allowed to a
 * wall that bulges, by (1.5·step)²/(8·radius of the wall): leave stock.
 *
 * @param moves the moves in order, one joined to the next
 * @param narrow where the front becomes a slot: to be cut with the depth and feed of a slot, or left to the next cutter
 * @param slotLengthMm length of cutting in there
 * @param linksDown ways across that stay down
 * @param linksUp ways across that lift
 * @param skipped pieces too small to enter, left to the next cutter
 */
public record LevelClearing(
        List<Move> moves, Region narrow, double slotLengthMm, int linksDown, int linksUp, List<Region> skipped) {
    /** Radius of the entry helix, in radii of the cutter: no core is left standing. */
    private static final double HELIX_SHARE = 0.5;
    /** Part of the free radius a helix takes. */
    private static final double FREE_SHARE = 0.95;
    /** The smallest helix, in radii of the cutter; narrower pieces are ramped along their border. */
    private static final double LEAST_HELIX_SHARE = 0.1;
    /** Radius of a lead-in, in radii of the cutter. */
    private static final double LEAD_SHARE = 0.3;

    private static final double LEAST_LEAD_MM = 0.02;
    private static final int ARC_CHORDS = 16;
    /** A border shorter than this many radii is not ramped along. */
    private static final double LEAST_RAMP_SHARE = 0.3;
    /** How far above where metal begins the feed begins, mm. */
    private static final double ABOVE_MM = 0.3;

    private static final GeometryFactory FACTORY = new GeometryFactory();

    public LevelClearing {
        moves = List.copyOf(moves);
        skipped = List.copyOf(skipped);
    }

    /**
     * Clears a level.
     *
     * @param allowed where the centre may be
     * @param cleared where it meets no metal, empty for whole metal
     * @param zMm the level
     * @param from where the tip stands, at the retract height or above; null to begin above the first entry
     */
    public static LevelClearing of(
            Region allowed, Region cleared, double zMm, RoughRules rules, @Nullable Vec3 from, Progress progress) {
        Builder b = new Builder(zMm, rules, Wavefront.narrow(allowed, rules.stepMm()), from);
        List<Region> pieces = new ArrayList<>(allowed.pieces());
        double done = 0, whole = Math.max(1e-9, allowed.area());
        while (!pieces.isEmpty()) {
            Region piece = b.nearest(pieces);
            pieces.remove(piece);
            double share = piece.area() / whole;
            b.clear(piece, cleared.intersection(piece), progress.part(done, Math.min(1, done + share)));
            done += share;
        }
        b.up();
        return new LevelClearing(b.moves, b.narrow, b.slotLengthMm, b.linksDown, b.linksUp, b.skipped);
    }

    /**
     * Clears what a larger cutter left.
     *
     * @param mask where metal stands above the level
     */
    public static LevelClearing rest(
            Region allowed, Region mask, double zMm, RoughRules rules, @Nullable Vec3 from, Progress progress) {
        double least = rules.radiusMm() * rules.radiusMm();
        List<Region> worth =
                mask.pieces().stream().filter(p -> p.area() >= least).toList();
        Region near = Region.unionOf(worth).offset(rules.radiusMm());
        List<Region> touched =
                allowed.pieces().stream().filter(p -> p.touches(near)).toList();
        Region where = Region.unionOf(touched);
        return of(where, where.difference(near), zMm, rules, from, progress);
    }

    private static final class Builder {
        final List<Move> moves = new ArrayList<>();
        final List<Region> skipped = new ArrayList<>();
        final double zMm;
        final RoughRules rules;
        final Region narrow;
        double slotLengthMm;
        int linksDown, linksUp;

        @Nullable Vec3 at;

        Builder(double zMm, RoughRules rules, Region narrow, @Nullable Vec3 from) {
            this.zMm = zMm;
            this.rules = rules;
            this.narrow = narrow;
            at = from;
        }

        Region nearest(List<Region> pieces) {
            Vec3 here = at;
            if (here == null) return pieces.getFirst();
            Region best = pieces.getFirst();
            for (Region p : pieces) if (p.distance(here.xy()) < best.distance(here.xy())) best = p;
            return best;
        }

        void clear(Region piece, Region cleared, Progress progress) {
            Region been = cleared.isEmpty() ? enter(piece) : cleared;
            if (been.isEmpty()) {
                skipped.add(piece);
                return;
            }
            for (Front front : Wavefront.fronts(piece, been, rules.stepMm(), progress)) cut(front, piece);
        }

        private Region enter(Region piece) {
            MaximumInscribedCircle circle = new MaximumInscribedCircle(piece.geometry(), rules.radiusMm() / 50);
            Coordinate c = circle.getCenter().getCoordinate();
            Vec2 centre = new Vec2(c.x, c.y);
            double free = circle.getRadiusLine().getLength();
            double radius = Math.min(HELIX_SHARE * rules.radiusMm(), FREE_SHARE * free);
            double top = rules.startZMm() + ABOVE_MM;
            if (radius >= LEAST_HELIX_SHARE * rules.radiusMm()) {
                List<Feed> helix = Entry.helix(centre, radius, top, zMm, rules.rampRad(), rules.enterMmPerMin());
                above(helix.getFirst().from());
                follow(helix);
                return Region.disc(centre, radius, 64);
            }
            Contour ring = new Contour(piece.exteriors().getFirst(), true);
            if (ring.lengthMm() < LEAST_RAMP_SHARE * rules.radiusMm()) return Region.EMPTY;
            List<Feed> ramp = Entry.along(ring, top, zMm, rules.rampRad(), rules.enterMmPerMin());
            above(ramp.getFirst().from());
            follow(ramp);
            return piece.difference(piece.offset(-Math.max(1e-3, free * 1e-3)));
        }

        private void follow(List<? extends Feed> feeds) {
            moves.addAll(feeds);
            at = feeds.getLast().to();
        }

        private void go(Vec3 to, double feedMmPerMin) {
            Vec3 here = at;
            if (here != null && here.distance(to) > 1e-9) {
                moves.add(new Line(here, to, feedMmPerMin));
                at = to;
            }
        }

        private void rapid(Vec3 to) {
            Vec3 here = at;
            if (here != null && here.distance(to) > 1e-9) moves.add(new Rapid(here, to));
            at = to;
        }

        void up() {
            Vec3 here = at;
            if (here != null && here.z() < rules.retractZMm()) rapid(new Vec3(here.x(), here.y(), rules.retractZMm()));
        }

        /** Over metal to a place at or above where metal begins. */
        private void above(Vec3 place) {
            up();
            rapid(new Vec3(place.x(), place.y(), Math.max(place.z(), rules.retractZMm())));
            rapid(place);
        }

        private void cut(Front front, Region piece) {
            PreparedGeometry down =
                    PreparedGeometryFactory.prepare(front.cleared().geometry().buffer(1e-3));
            PreparedGeometry wide =
                    PreparedGeometryFactory.prepare(piece.geometry().buffer(1e-3));
            List<Contour> open = new ArrayList<>(front.lines());
            while (!open.isEmpty()) {
                Contour line = nearestLine(open);
                open.remove(line);
                List<Vec2> points = line.closed() ? turnedToward(line.points()) : line.points();
                Optional<Arc> lead = lead(points, down, wide);
                Geometry been = front.cleared().geometry();
                link(lead.map(l -> l.from().xy()).orElse(nearest(been, points.getFirst())), been, down);
                lead.ifPresent(l -> follow(List.of(l)));
                go(points.getFirst().atZ(zMm), rules.enterMmPerMin());
                for (int i = 1; i < points.size(); i++) piece(points.get(i - 1), points.get(i));
                if (line.closed()) piece(points.getLast(), points.getFirst());
            }
        }

        private void piece(Vec2 a, Vec2 b) {
            Vec2 middle = a.plus(b).times(0.5);
            if (!narrow.isEmpty() && narrow.contains(middle)) slotLengthMm += a.distance(b);
            go(b.atZ(zMm), rules.cutMmPerMin());
        }

        private Contour nearestLine(List<Contour> open) {
            Vec3 here = at;
            if (here == null) return open.getFirst();
            Contour best = open.getFirst();
            double least = Double.POSITIVE_INFINITY;
            for (Contour c : open) {
                double d = c.points().getFirst().distance(here.xy());
                if (c.closed()) for (Vec2 p : c.points()) d = Math.min(d, p.distance(here.xy()));
                if (d < least) {
                    least = d;
                    best = c;
                }
            }
            return best;
        }

        private List<Vec2> turnedToward(List<Vec2> ring) {
            Vec3 here = at;
            if (here == null) return ring;
            int best = 0;
            for (int i = 1; i < ring.size(); i++)
                if (ring.get(i).distance(here.xy()) < ring.get(best).distance(here.xy())) best = i;
            List<Vec2> turned = new ArrayList<>(ring.subList(best, ring.size()));
            turned.addAll(ring.subList(0, best));
            return turned;
        }

        /** A quarter turn from the cleared side onto the line. */
        private Optional<Arc> lead(List<Vec2> points, PreparedGeometry down, PreparedGeometry wide) {
            Vec2 p = points.getFirst(), along = ahead(points);
            for (double r = LEAD_SHARE * rules.radiusMm(); r >= LEAST_LEAD_MM; r /= 2) {
                Vec2 centre = p.plus(along.left().times(r)), start = centre.minus(along.times(r));
                Arc arc = new Arc(start.atZ(zMm), p.atZ(zMm), centre, true, rules.cutMmPerMin());
                if (down.covers(point(start)) && wide.covers(line(chords(arc)))) return Optional.of(arc);
            }
            return Optional.empty();
        }

        private static List<Vec2> chords(Arc arc) {
            return IntStream.rangeClosed(0, ARC_CHORDS)
                    .mapToObj(k -> arc.at(k / (double) ARC_CHORDS).xy())
                    .toList();
        }

        private static Vec2 ahead(List<Vec2> points) {
            for (int i = 1; i < points.size(); i++)
                if (points.get(i).distance(points.getFirst()) > 1e-6)
                    return points.get(i).minus(points.getFirst()).unit();
            return new Vec2(1, 0);
        }

        /** To the start of a line: back onto cleared ground by the shortest way and straight across it, else over the top. */
        private void link(Vec2 start, Geometry been, PreparedGeometry down) {
            Vec3 here = at;
            if (here != null && here.z() <= zMm + 1e-9) {
                if (here.xy().distance(start) < 1e-9) return;
                Vec2 exit = nearest(been, here.xy());
                if (exit.distance(here.xy()) <= 1.5 * rules.stepMm() && down.covers(line(List.of(exit, start)))) {
                    linksDown++;
                    go(exit.atZ(zMm), rules.cutMmPerMin());
                    go(start.atZ(zMm), rules.linkMmPerMin());
                    return;
                }
                linksUp++;
            }
            above(start.atZ(Math.min(rules.retractZMm(), zMm + ABOVE_MM)));
            go(start.atZ(zMm), rules.enterMmPerMin());
        }

        private static Vec2 nearest(Geometry to, Vec2 p) {
            Coordinate c = DistanceOp.nearestPoints(to, point(p))[0];
            return new Vec2(c.x, c.y);
        }

        private static Geometry point(Vec2 p) {
            return FACTORY.createPoint(new Coordinate(p.x(), p.y()));
        }

        private static Geometry line(List<Vec2> points) {
            return FACTORY.createLineString(
                    points.stream().map(p -> new Coordinate(p.x(), p.y())).toArray(Coordinate[]::new));
        }
    }

    /** Where the centre of this cutter meets no metal, when metal is gone from a region. */
    public static Region clearFor(Region gone, double radiusMm) {
        return Offset.by(gone, -radiusMm);
    }
}
