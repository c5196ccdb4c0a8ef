package shotwright.brep.exchange;

import java.util.Arrays;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/**
 * Which values the entities that make up a shape must have. Source: ISO 10303-42 (geometry and topology) as AP203, AP214 and AP242 take it up;
 * types not listed may have any.
 */
final class EntityRules {
    /**
     * Type, then its values: {@code text}, {@code number}, {@code above} (a number above zero), {@code word}, {@code any}, a group of types pointed
     * to, in brackets for a list of them with at least one.
     */
    private static final String RULES = """
            CARTESIAN_POINT text (number)
            DIRECTION text (number)
            VECTOR text DIRECTION number
            VERTEX_POINT text point
            AXIS1_PLACEMENT text point any
            AXIS2_PLACEMENT_3D text point any any
            LINE text point VECTOR
            CIRCLE text placement above
            ELLIPSE text placement above above
            HYPERBOLA text placement above above
            PARABOLA text placement above
            B_SPLINE_CURVE_WITH_KNOTS text above (point) word any any (above) (number) word
            EDGE_CURVE text VERTEX_POINT VERTEX_POINT curve word
            ORIENTED_EDGE text any any edge word
            EDGE_LOOP text (oriented)
            VERTEX_LOOP text VERTEX_POINT
            FACE_BOUND text loop word
            FACE_OUTER_BOUND text loop word
            ADVANCED_FACE text (bound) surface word
            FACE_SURFACE text (bound) surface word
            PLANE text AXIS2_PLACEMENT_3D
            CYLINDRICAL_SURFACE text AXIS2_PLACEMENT_3D above
            CONICAL_SURFACE text AXIS2_PLACEMENT_3D number above
            SPHERICAL_SURFACE text AXIS2_PLACEMENT_3D above
            TOROIDAL_SURFACE text AXIS2_PLACEMENT_3D above above
            SURFACE_OF_LINEAR_EXTRUSION text curve VECTOR
            SURFACE_OF_REVOLUTION text curve AXIS1_PLACEMENT
            B_SPLINE_SURFACE_WITH_KNOTS text above above (any) word any any any (above) (above) (number) (number) word
            CLOSED_SHELL text (face)
            OPEN_SHELL text (face)
            MANIFOLD_SOLID_BREP text shell
            BREP_WITH_VOIDS text shell (shell)
            ADVANCED_BREP_SHAPE_REPRESENTATION text (item) any
            SHAPE_DEFINITION_REPRESENTATION any any
            """;

    private static final Map<String, List<String>> VALUES = new HashMap<>();

    static {
        RULES.lines()
                .map(l -> l.split(" "))
                .forEach(w -> VALUES.put(w[0], List.of(w).subList(1, w.length)));
    }

    private static final Map<String, Set<String>> GROUPS = Map.of(
            "point", Set.of("CARTESIAN_POINT", "DEGENERATE_PCURVE", "POINT_ON_CURVE", "POINT_ON_SURFACE"),
            "placement", Set.of("AXIS2_PLACEMENT_2D", "AXIS2_PLACEMENT_3D"),
            "curve",
                    Set.of(
                            "LINE",
                            "CIRCLE",
                            "ELLIPSE",
                            "HYPERBOLA",
                            "PARABOLA",
                            "POLYLINE",
                            "B_SPLINE_CURVE",
                            "BEZIER_CURVE",
                            "UNIFORM_CURVE",
                            "QUASI_UNIFORM_CURVE",
                            "B_SPLINE_CURVE_WITH_KNOTS",
                            "BOUNDED_CURVE",
                            "TRIMMED_CURVE",
                            "COMPOSITE_CURVE",
                            "SURFACE_CURVE",
                            "SEAM_CURVE",
                            "INTERSECTION_CURVE",
                            "OFFSET_CURVE_3D",
                            "PCURVE"),
            "surface",
                    Set.of(
                            "PLANE",
                            "CYLINDRICAL_SURFACE",
                            "CONICAL_SURFACE",
                            "SPHERICAL_SURFACE",
                            "TOROIDAL_SURFACE",
                            "DEGENERATE_TOROIDAL_SURFACE",
                            "SURFACE_OF_LINEAR_EXTRUSION",
                            "SURFACE_OF_REVOLUTION",
                            "B_SPLINE_SURFACE",
                            "BEZIER_SURFACE",
                            "UNIFORM_SURFACE",
                            "QUASI_UNIFORM_SURFACE",
                            "B_SPLINE_SURFACE_WITH_KNOTS",
                            "BOUNDED_SURFACE",
                            "RECTANGULAR_TRIMMED_SURFACE",
                            "CURVE_BOUNDED_SURFACE",
                            "OFFSET_SURFACE"),
            "edge", Set.of("EDGE_CURVE", "SUBEDGE", "SEAM_EDGE", "EDGE"),
            "oriented", Set.of("ORIENTED_EDGE"),
            "loop", Set.of("EDGE_LOOP", "VERTEX_LOOP", "POLY_LOOP"),
            "bound", Set.of("FACE_BOUND", "FACE_OUTER_BOUND"),
            "face", Set.of("ADVANCED_FACE", "FACE_SURFACE", "ORIENTED_FACE", "SUBFACE"),
            "shell", Set.of("CLOSED_SHELL", "ORIENTED_CLOSED_SHELL"));
    private static final Set<String> ITEMS = new HashSet<>(Products.SOLIDS);

    static {
        ITEMS.addAll(List.of(
                "FACETED_BREP",
                "AXIS2_PLACEMENT_3D",
                "MAPPED_ITEM",
                "GEOMETRIC_SET",
                "GEOMETRIC_CURVE_SET",
                "SHELL_BASED_SURFACE_MODEL"));
    }

    private final ExchangeFile file;

    EntityRules(ExchangeFile file) {
        this.file = file;
    }

    /** The first entity with values it cannot have. */
    Optional<Misfit> first() {
        for (Entity e : file.entities().values()) {
            if (e.parts().size() != 1) continue;
            Optional<String> wrong = wrong(e.parts().getFirst());
            if (wrong.isPresent()) return Optional.of(Misfit.of(e, wrong.get()));
        }
        return Optional.empty();
    }

    private Optional<String> wrong(Value.Typed entity) {
        List<String> rule = VALUES.get(entity.type());
        if (rule == null) return Optional.empty();
        if (rule.size() != entity.values().size())
            return Optional.of("has " + entity.values().size() + " values where " + rule.size() + " belong");
        for (int i = 0; i < rule.size(); i++) {
            Optional<String> wrong = wrong(rule.get(i), entity.values().get(i), "value " + (i + 1));
            if (wrong.isPresent()) return wrong;
        }
        if (entity.type().equals("DIRECTION") && isZero(entity.values().get(1)))
            return Optional.of("points nowhere: all its numbers are 0");
        return Optional.empty();
    }

    private static boolean isZero(Value v) {
        return v instanceof Value.Many m
                && m.values().stream().allMatch(x -> x instanceof Value.Number n && Math.abs(n.bare()) < 1e-12);
    }

    private Optional<String> wrong(String rule, Value v, String place) {
        if (rule.startsWith("(")) {
            if (!(v instanceof Value.Many list) || list.values().isEmpty())
                return Optional.of("has no list as its " + place);
            String each = rule.substring(1, rule.length() - 1);
            return list.values().stream()
                    .flatMap(x -> wrong(each, x, place).stream())
                    .findFirst();
        }
        return switch (rule) {
            case "any" -> Optional.empty();
            case "text" -> v instanceof Value.Text || v instanceof Value.Nothing ? Optional.empty() : no("text", place);
            case "word" -> v instanceof Value.Word ? Optional.empty() : no("word between dots", place);
            case "number" ->
                v instanceof Value.Number n && Double.isFinite(n.bare()) ? Optional.empty() : no("number", place);
            case "above" ->
                v instanceof Value.Number n && n.bare() > 0 && Double.isFinite(n.bare())
                        ? Optional.empty()
                        : no("number above 0", place);
            default -> pointed(rule, v, place);
        };
    }

    private static Optional<String> no(String what, String place) {
        return Optional.of("has no " + what + " as its " + place);
    }

    private Optional<String> pointed(String rule, Value v, String place) {
        Set<String> types = rule.equals("item") ? ITEMS : GROUPS.getOrDefault(rule, Set.of(rule));
        if (!(v instanceof Value.Reference r)) return no("reference to another entity", place);
        Optional<Entity> e = file.follow(v);
        if (e.isEmpty()) return Optional.of("refers to #" + r.number() + ", which is not in the file");
        if (e.get().parts().stream().anyMatch(p -> types.contains(p.type()))) return Optional.empty();
        String wanted = types.size() > 1 ? "" : " where " + types.iterator().next() + " belongs";
        String found =
                Arrays.toString(e.get().parts().stream().map(Value.Typed::type).toArray());
        return Optional.of("refers to #" + r.number() + ", which is " + found.substring(1, found.length() - 1)
                + (wanted.isEmpty() ? " and does not belong there" : wanted));
    }
}
