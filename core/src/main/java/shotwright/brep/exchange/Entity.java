package shotwright.brep.exchange;

import java.util.List;
import java.util.Optional;

/**
 * One instance of the data section.
 *
 * @param number its number
 * @param line line it begins at
 * @param parts one type with its values; several for an instance of several types at once
 */
public record Entity(int number, int line, List<Value.Typed> parts) {
    /** The values it has as one of its types. */
    public Optional<List<Value>> as(String type) {
        return parts.stream()
                .filter(p -> p.type().equals(type))
                .map(Value.Typed::values)
                .findFirst();
    }
}
