package shotwright.brep.exchange;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.TreeSet;
import java.util.stream.Stream;

/** Length units of a STEP file in millimetres, as prefixed metres or as a number of another unit. Source: ISO 10303-41. */
public final class LengthUnits {
    private static final Map<String, Double> PREFIX = Map.of(
            "KILO", 1e3, "HECTO", 1e2, "DECA", 1e1, "DECI", 1e-1, "CENTI", 1e-2, "MILLI", 1e-3, "MICRO", 1e-6, "NANO",
            1e-9);
    private static final int DEEPEST = 8;

    private final ExchangeFile file;

    public LengthUnits(ExchangeFile file) {
        this.file = file;
    }

    /** The different length units that shapes of the file are given in, mm, smallest first. */
    public List<Double> usedMm() {
        TreeSet<Double> out = new TreeSet<>();
        file.of("GLOBAL_UNIT_ASSIGNED_CONTEXT").forEach(e -> {
            if (e.as("GEOMETRIC_REPRESENTATION_CONTEXT").isPresent()) out.add(ofContextMm(e));
        });
        return List.copyOf(out);
    }

    /** The length unit of a representation context, mm; 1 when it names none. */
    double ofContextMm(Entity context) {
        return context.as("GLOBAL_UNIT_ASSIGNED_CONTEXT").stream()
                .flatMap(List::stream)
                .flatMap(v -> v instanceof Value.Many m ? m.values().stream() : Stream.of(v))
                .flatMap(v -> file.follow(v).stream())
                .map(e -> lengthMm(e, 0))
                .filter(OptionalDouble::isPresent)
                .mapToDouble(OptionalDouble::getAsDouble)
                .findFirst()
                .orElse(1);
    }

    /** The length behind a unit, also behind a power of it, mm; 1 when there is none. */
    double ofUnitMm(Entity unit) {
        return behind(unit, 0).orElse(1);
    }

    private OptionalDouble behind(Entity unit, int depth) {
        OptionalDouble own = lengthMm(unit, 0);
        if (own.isPresent() || depth > DEEPEST) return own;
        return unit.parts().stream()
                .flatMap(p -> p.values().stream())
                .flatMap(v -> v instanceof Value.Many m ? m.values().stream() : Stream.of(v))
                .flatMap(v -> file.follow(v).stream())
                .map(e -> behind(e, depth + 1))
                .filter(OptionalDouble::isPresent)
                .findFirst()
                .orElse(OptionalDouble.empty());
    }

    private OptionalDouble lengthMm(Entity unit, int depth) {
        Optional<List<Value>> si = unit.as("SI_UNIT");
        if (si.isPresent() && unit.as("LENGTH_UNIT").isPresent()) {
            double metres = 1;
            for (Value v : si.get()) if (v instanceof Value.Word w) metres *= PREFIX.getOrDefault(w.word(), 1.0);
            return OptionalDouble.of(1000 * metres);
        }
        Optional<List<Value>> other = unit.as("CONVERSION_BASED_UNIT");
        if (other.isEmpty() || unit.as("LENGTH_UNIT").isEmpty() || depth > DEEPEST) return OptionalDouble.empty();
        return file.follow(other.get().getLast())
                .map(m -> measureMm(m, depth + 1))
                .orElse(OptionalDouble.empty());
    }

    /** So many of another unit. */
    private OptionalDouble measureMm(Entity measure, int depth) {
        for (Value.Typed p : measure.parts()) {
            double count = Double.NaN;
            for (Value v : p.values()) {
                if (v instanceof Value.Typed t
                        && !t.values().isEmpty()
                        && t.values().getFirst() instanceof Value.Number n) count = n.bare();
                Optional<Entity> unit = file.follow(v);
                if (unit.isPresent() && !Double.isNaN(count)) {
                    OptionalDouble one = lengthMm(unit.get(), depth);
                    if (one.isPresent()) return OptionalDouble.of(count * one.getAsDouble());
                }
            }
        }
        return OptionalDouble.empty();
    }
}
