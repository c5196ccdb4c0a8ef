package shotwright.brep.exchange;

import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import shotwright.geom.Vec3;

/**
 * Whether the edges of a STEP file's faces hang together, lie between two faces each, and end on their corners, and whether the corners lie on
 * the faces. Straight edges and arcs, and surfaces with a name; free forms are passed over.
 */
final class Seams {
    /** A gap that an exporter's rounding does not explain, mm. */
    private static final double GAP_MM = 0.02;

    private record Gap(Entity entity, double mm, String what) {}

    private final ExchangeFile file;
    private final double unitMm;

    Seams(ExchangeFile file) {
        this.file = file;
        this.unitMm = new LengthUnits(file).usedMm().stream().findFirst().orElse(1.0);
    }

    /** A loop that breaks off, an edge that is not used twice, or the widest gap between an edge and its corner, in this order. */
    Optional<Misfit> worst() {
        return brokenLoop().or(this::usedOtherwiseThanTwice).or(this::widestGap);
    }

    private Optional<Misfit> brokenLoop() {
        return file.of("EDGE_LOOP").flatMap(this::brokenAt).findFirst();
    }

    private Stream<Misfit> brokenAt(Entity loop) {
        List<Entity> edges = pointed(loop, "EDGE_LOOP", 1);
        for (int i = 0; i < edges.size(); i++) {
            int end = corner(edges.get(i), true), start = corner(edges.get((i + 1) % edges.size()), false);
            if (end >= 0 && start >= 0 && end != start)
                return Stream.of(Misfit.of(
                        loop,
                        "breaks off: its edge #" + edges.get(i).number() + " ends at corner #" + end
                                + ", the next begins at #" + start));
        }
        return Stream.empty();
    }

    /** Number of the corner a loop's edge begins or ends at; below zero when it cannot be told. */
    private int corner(Entity oriented, boolean end) {
        Entity edge = first(oriented, "ORIENTED_EDGE", 3);
        if (edge == null) return -1;
        boolean second = end == isTrue(oriented, "ORIENTED_EDGE", 4);
        Entity corner = first(edge, "EDGE_CURVE", second ? 2 : 1);
        return corner == null ? -1 : corner.number();
    }

    private Optional<Misfit> usedOtherwiseThanTwice() {
        return file.of("CLOSED_SHELL").flatMap(this::looseEdges).findFirst();
    }

    private Stream<Misfit> looseEdges(Entity shell) {
        Map<Entity, Integer> uses = new HashMap<>();
        pointed(shell, "CLOSED_SHELL", 1).stream().flatMap(this::edges).forEach(e -> uses.merge(e, 1, Integer::sum));
        return uses.entrySet().stream()
                .filter(u -> u.getValue() != 2)
                .sorted((a, b) -> Integer.compare(a.getKey().line(), b.getKey().line()))
                .limit(1)
                .map(u -> Misfit.of(
                        u.getKey(),
                        u.getValue() == 1
                                ? "borders one face only, so the body is open there"
                                : "borders " + u.getValue() + " faces instead of two"));
    }

    /** The edges of a face, those used twice twice. */
    private Stream<Entity> edges(Entity face) {
        return pointed(face, "ADVANCED_FACE", 1).stream()
                .flatMap(bound ->
                        Stream.of("FACE_BOUND", "FACE_OUTER_BOUND").flatMap(t -> pointed(bound, t, 1).stream()))
                .flatMap(loop -> pointed(loop, "EDGE_LOOP", 1).stream())
                .flatMap(oriented -> Stream.ofNullable(first(oriented, "ORIENTED_EDGE", 3)));
    }

    private Optional<Misfit> widestGap() {
        return Stream.concat(
                        file.of("EDGE_CURVE").map(this::edgeGap),
                        file.of("ADVANCED_FACE").map(this::faceGap))
                .max((a, b) -> Double.compare(a.mm(), b.mm()))
                .filter(g -> g.mm() > GAP_MM)
                .map(g -> Misfit.of(
                        g.entity(),
                        g.what()
                                + (g.mm() < 1e6
                                        ? String.format(Locale.ROOT, " %.2f mm", g.mm())
                                        : " more than a kilometre")
                                + " off its corners"));
    }

    private Gap edgeGap(Entity edge) {
        Entity curve = first(edge, "EDGE_CURVE", 3);
        for (String wrapped : List.of("SURFACE_CURVE", "SEAM_CURVE"))
            if (curve != null && curve.as(wrapped).isPresent()) curve = first(curve, wrapped, 1);
        double mm = 0;
        if (curve != null) for (Vec3 p : corners(edge)) mm = Math.max(mm, unitMm * toCurve(p, curve));
        return new Gap(edge, mm, "ends");
    }

    private Gap faceGap(Entity face) {
        Entity surface = first(face, "ADVANCED_FACE", 2);
        double mm = 0;
        if (surface != null)
            for (Vec3 p : edges(face).flatMap(e -> corners(e).stream()).toList())
                mm = Math.max(mm, unitMm * Math.abs(toSurface(p, surface)));
        return new Gap(face, mm, "lies");
    }

    private List<Vec3> corners(Entity edge) {
        return Stream.of(1, 2)
                .flatMap(end -> Stream.ofNullable(first(edge, "EDGE_CURVE", end)))
                .flatMap(corner -> Stream.ofNullable(at(first(corner, "VERTEX_POINT", 1))))
                .toList();
    }

    /** From a point to a line or a circle, in the file's unit; 0 for other curves. */
    private double toCurve(Vec3 p, Entity curve) {
        if (curve.as("LINE").isPresent()) {
            Vec3 from = at(first(curve, "LINE", 1)), along = direction(first(curve, "LINE", 2));
            return from == null || along == null
                    ? 0
                    : p.minus(from).cross(along).length();
        }
        if (curve.as("CIRCLE").isEmpty()) return 0;
        Polar at = polar(p, first(curve, "CIRCLE", 1));
        return Math.hypot(at.high(), at.wide() - number(curve, "CIRCLE", 2));
    }

    /** From a point to a surface, in the file's unit; 0 for free forms. */
    private double toSurface(Vec3 p, Entity surface) {
        String type = surface.parts().getFirst().type();
        Polar at = polar(p, first(surface, type, 1));
        double size = number(surface, type, 2);
        return switch (type) {
            case "PLANE" -> at.high();
            case "CYLINDRICAL_SURFACE" -> at.wide() - size;
            case "SPHERICAL_SURFACE" -> Math.hypot(at.wide(), at.high()) - size;
            case "TOROIDAL_SURFACE" -> Math.hypot(at.wide() - size, at.high()) - number(surface, type, 3);
            case "CONICAL_SURFACE" -> {
                double angle = number(surface, type, 3); // rad or degrees, as the file's context says
                double one = toCone(at, size, angle), other = toCone(at, size, Math.toRadians(angle));
                yield Math.min(Math.abs(one), Math.abs(other));
            }
            default -> 0;
        };
    }

    private static double toCone(Polar at, double radius, double halfAngleRad) {
        return (at.wide() - Math.abs(radius + at.high() * Math.tan(halfAngleRad))) * Math.cos(halfAngleRad);
    }

    /** Where a point lies about an axis, in the file's unit. */
    private record Polar(double high, double wide) {}

    private Polar polar(Vec3 p, @Nullable Entity placement) {
        Vec3 origin = placement == null ? null : at(first(placement, "AXIS2_PLACEMENT_3D", 1));
        if (placement == null || origin == null) return new Polar(0, 0);
        Vec3 given = unit(first(placement, "AXIS2_PLACEMENT_3D", 2)), axis = given == null ? Vec3.Z : given;
        Vec3 out = p.minus(origin);
        double high = out.dot(axis);
        return new Polar(high, out.minus(axis.times(high)).length());
    }

    private static double number(Entity e, String type, int value) {
        return value(e, type, value) instanceof Value.Number n ? n.bare() : 0;
    }

    private @Nullable Vec3 direction(@Nullable Entity vector) {
        return vector == null ? null : unit(first(vector, "VECTOR", 1));
    }

    private static @Nullable Vec3 unit(@Nullable Entity direction) {
        Vec3 d = numbers(direction, "DIRECTION");
        return d == null || d.length() == 0 ? null : d.unit();
    }

    private static @Nullable Vec3 at(@Nullable Entity point) {
        return numbers(point, "CARTESIAN_POINT");
    }

    private static @Nullable Vec3 numbers(@Nullable Entity e, String type) {
        if (e == null
                || !(value(e, type, 1) instanceof Value.Many m)
                || m.values().size() != 3) return null;
        double[] x = m.values().stream()
                .mapToDouble(v -> v instanceof Value.Number n ? n.bare() : Double.NaN)
                .toArray();
        return Double.isFinite(x[0] + x[1] + x[2]) ? new Vec3(x[0], x[1], x[2]) : null;
    }

    private static boolean isTrue(Entity e, String type, int value) {
        return value(e, type, value) instanceof Value.Word w && w.word().equals("T");
    }

    private static @Nullable Value value(Entity e, String type, int value) {
        return e.as(type).filter(v -> v.size() > value).map(v -> v.get(value)).orElse(null);
    }

    private @Nullable Entity first(Entity e, String type, int value) {
        Value v = value(e, type, value);
        return v == null ? null : file.follow(v).orElse(null);
    }

    private List<Entity> pointed(Entity e, String type, int value) {
        Value v = value(e, type, value);
        if (v == null) return List.of();
        return (v instanceof Value.Many m ? m.values().stream() : Stream.of(v))
                .flatMap(x -> file.follow(x).stream())
                .toList();
    }
}
