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
 * Volume, surface and centroid an exporter wrote beside its shapes, so that a reader can check itself ("geometric validation property", recommended
 * practice of the CAx implementor forum, from memory). Zeros are an exporter's fault and count as nothing.
 */
final class ValidationProperties {
    private final ExchangeFile file;
    private final LengthUnits units;

    private ValidationProperties(ExchangeFile file) {
        this.file = file;
        this.units = new LengthUnits(file);
    }

    static Map<Integer, Products.Vouched> of(ExchangeFile file) {
        ValidationProperties v = new ValidationProperties(file);
        Map<Integer, Products.Vouched> out = new HashMap<>();
        file.of("PROPERTY_DEFINITION_REPRESENTATION").forEach(e -> v.take(e, out));
        return out;
    }

    private void take(Entity link, Map<Integer, Products.Vouched> out) {
        List<Value> ends = link.as("PROPERTY_DEFINITION_REPRESENTATION").orElseThrow();
        if (ends.size() < 2) return;
        Optional<Entity> property = file.follow(ends.get(0)), representation = file.follow(ends.get(1));
        if (property.isEmpty() || representation.isEmpty() || !isGeometric(property.get())) return;
        Optional<Integer> target = property.get().as("PROPERTY_DEFINITION").flatMap(p -> definition(p.getLast()));
        if (target.isEmpty()) return;
        List<Value> rep = representation.get().parts().getLast().values();
        for (Entity item : rep.stream().flatMap(this::items).toList())
            out.merge(target.get(), vouched(item, rep.getLast()), ValidationProperties::both);
    }

    private static boolean isGeometric(Entity property) {
        return property.as("PROPERTY_DEFINITION").stream()
                .flatMap(ExchangeFile::texts)
                .anyMatch(
                        t -> t.toLowerCase(Locale.ROOT).replace('_', ' ').startsWith("geometric validation property"));
    }

    private Stream<Entity> items(Value v) {
        return v instanceof Value.Many m ? m.values().stream().flatMap(x -> file.follow(x).stream()) : Stream.empty();
    }

    /** The product definition a property is about: itself, or over a shape. */
    private Optional<Integer> definition(Value target) {
        return file.follow(target).flatMap(e -> {
            if (e.as("PRODUCT_DEFINITION").isPresent()) return Optional.of(e.number());
            return e.as("PRODUCT_DEFINITION_SHAPE")
                    .flatMap(s -> file.follow(s.getLast()))
                    .filter(d -> d.as("PRODUCT_DEFINITION").isPresent())
                    .map(Entity::number);
        });
    }

    private Products.Vouched vouched(Entity item, Value context) {
        Optional<List<Value>> point = item.as("CARTESIAN_POINT");
        if (point.isPresent()) {
            double mm = file.follow(context).map(units::ofContextMm).orElse(1.0);
            double[] p = point.get().stream()
                    .flatMap(v -> v instanceof Value.Many m ? m.values().stream() : Stream.empty())
                    .mapToDouble(v -> v instanceof Value.Number n ? n.bare() * mm : 0)
                    .toArray();
            return p.length == 3
                    ? new Products.Vouched(null, null, new Vec3(p[0], p[1], p[2]))
                    : Products.Vouched.NOTHING;
        }
        return item.parts().stream()
                .map(Value.Typed::values)
                .map(this::measure)
                .filter(v -> v != Products.Vouched.NOTHING)
                .findFirst()
                .orElse(Products.Vouched.NOTHING);
    }

    private Products.Vouched measure(List<Value> values) {
        for (int i = 0; i < values.size(); i++) {
            if (!(values.get(i) instanceof Value.Typed t)
                    || t.values().isEmpty()
                    || !(t.values().getFirst() instanceof Value.Number n)
                    || n.bare() == 0) continue;
            double mm = i + 1 < values.size()
                    ? file.follow(values.get(i + 1)).map(units::ofUnitMm).orElse(1.0)
                    : 1;
            if (t.type().equals("VOLUME_MEASURE")) return new Products.Vouched(n.bare() * mm * mm * mm, null, null);
            if (t.type().equals("AREA_MEASURE")) return new Products.Vouched(null, n.bare() * mm * mm, null);
        }
        return Products.Vouched.NOTHING;
    }

    private static Products.Vouched both(Products.Vouched a, Products.Vouched b) {
        return new Products.Vouched(
                first(a.volumeMm3(), b.volumeMm3()),
                first(a.areaMm2(), b.areaMm2()),
                a.centroidMm() != null ? a.centroidMm() : b.centroidMm());
    }

    private static @Nullable Double first(@Nullable Double a, @Nullable Double b) {
        return a != null ? a : b;
    }
}
