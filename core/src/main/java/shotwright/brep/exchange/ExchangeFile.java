package shotwright.brep.exchange;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * A STEP file as its entities.
 *
 * @param header the entries of its header
 * @param entities its data by number, in the order of the file
 */
public record ExchangeFile(List<Value.Typed> header, Map<Integer, Entity> entities) {
    /**
     * Reads a file.
     *
     * @throws ExchangeFault when it breaks the encoding, with the line
     */
    public static ExchangeFile read(byte[] file) {
        return new ExchangeReader(file).file();
    }

    /** Entities of a type, in the order of the file. */
    public Stream<Entity> of(String type) {
        return entities.values().stream().filter(e -> e.as(type).isPresent());
    }

    /** The entity a value points to, when it does and is there. */
    public Optional<Entity> follow(Value v) {
        return v instanceof Value.Reference r ? Optional.ofNullable(entities.get(r.number())) : Optional.empty();
    }

    /** Schemas the header names, for example {@code AUTOMOTIVE_DESIGN}. */
    public List<String> schemas() {
        return header.stream()
                .filter(h -> h.type().equals("FILE_SCHEMA"))
                .flatMap(h -> texts(h.values()))
                .map(s -> s.split("\\s|\\{")[0])
                .toList();
    }

    static Stream<String> texts(List<Value> values) {
        return values.stream().flatMap(v -> switch (v) {
            case Value.Text t -> Stream.of(t.text());
            case Value.Many m -> texts(m.values());
            default -> Stream.empty();
        });
    }

    /** The first reference that leads nowhere: the entity that makes it and the number missing. */
    public Optional<Dangling> dangling() {
        for (Entity e : entities.values()) {
            for (Value.Typed p : e.parts()) {
                Optional<Integer> lost = lost(p.values());
                if (lost.isPresent()) return Optional.of(new Dangling(e, lost.get()));
            }
        }
        return Optional.empty();
    }

    /**
     * A reference that leads nowhere.
     *
     * @param from the entity that makes it
     * @param missing the number it names
     */
    public record Dangling(Entity from, int missing) {}

    private Optional<Integer> lost(List<Value> values) {
        for (Value v : values) {
            Optional<Integer> lost =
                    switch (v) {
                        case Value.Reference r ->
                            entities.containsKey(r.number()) ? Optional.<Integer>empty() : Optional.of(r.number());
                        case Value.Many m -> lost(m.values());
                        case Value.Typed t -> lost(t.values());
                        default -> Optional.<Integer>empty();
                    };
            if (lost.isPresent()) return lost;
        }
        return Optional.empty();
    }
}
