package shotwright.rack;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.lang.reflect.AnnotatedParameterizedType;
import java.lang.reflect.InvocationTargetException;
import java.lang.reflect.RecordComponent;
import java.util.ArrayList;
import java.util.Iterator;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.TreeSet;
import org.jspecify.annotations.Nullable;
import shotwright.measure.InchSentence;
import shotwright.measure.Quantity;
import shotwright.measure.QuantityRange;
import shotwright.measure.Source;

/**
 * Turns one JSON object into a record whose components say what the keys are called, which unit each number must have, and which may be
 * missing ({@code @Nullable}). Strict: unknown keys, missing keys, numbers without unit or source and falling ranges are refused.
 */
final class RackReader {
    private final String file;

    RackReader(String file) {
        this.file = file;
    }

    /** Reads a record; {@code at} is the key path of the object, empty at the top. */
    <T> T read(Class<T> type, JsonNode node, String at) {
        if (!(node instanceof ObjectNode object)) throw trouble(at, "must be an object in braces");
        RecordComponent[] components = type.getRecordComponents();
        Set<String> known = new TreeSet<>();
        for (RecordComponent c : components) known.add(c.getName());
        if (isVariant(type)) known.add("model");
        for (Iterator<String> keys = object.fieldNames(); keys.hasNext(); ) {
            String key = keys.next();
            if (!known.contains(key)) throw trouble(path(at, key), "is not a key of this file; it has " + known);
        }
        Object[] values = new Object[components.length];
        Class<?>[] types = new Class<?>[components.length];
        for (int i = 0; i < components.length; i++) {
            types[i] = components[i].getType();
            values[i] = component(components[i], object.get(components[i].getName()), at);
        }
        return construct(type, types, values, at);
    }

    private <T> T construct(Class<T> type, Class<?>[] types, @Nullable Object[] values, String at) {
        try {
            return type.getDeclaredConstructor(types).newInstance(values);
        } catch (InvocationTargetException e) {
            Throwable cause = e.getCause() == null ? e : e.getCause();
            if (at.isEmpty()) throw new RackException("Rack file " + file + ": " + cause.getMessage());
            throw trouble(at, String.valueOf(cause.getMessage()));
        } catch (ReflectiveOperationException e) {
            throw new IllegalStateException(type + " cannot be built by the rack reader", e);
        }
    }

    private @Nullable Object component(RecordComponent c, @Nullable JsonNode node, String at) {
        String key = path(at, c.getName());
        if (node == null || node.isNull()) {
            if (c.getAnnotatedType().isAnnotationPresent(Nullable.class)) return null;
            if (c.getType() == List.class) return List.of();
            throw trouble(key, "is missing; add it");
        }
        if (c.getType() == List.class) {
            var element = ((AnnotatedParameterizedType) c.getAnnotatedType()).getAnnotatedActualTypeArguments()[0];
            return list((Class<?>) element.getType(), c.getName(), node, key);
        }
        return single(c.getType(), c.getName(), node, key);
    }

    private List<Object> list(Class<?> element, String name, JsonNode node, String key) {
        if (!node.isArray()) throw trouble(key, "must be a list in square brackets");
        List<Object> out = new ArrayList<>();
        for (JsonNode item : node) out.add(single(element, name, item, key + "[" + out.size() + "]"));
        return out;
    }

    private Object single(Class<?> type, String name, JsonNode node, String key) {
        if (type == Quantity.class) return quantity(name, node, key);
        if (type == QuantityRange.class) return range(name, node, key);
        if (type == String.class) return name.equals("name") ? InchSentence.name(text(node, key)) : text(node, key);
        if (type == Source.class) return SourceText.parse(text(node, key));
        if (type == boolean.class) {
            if (!node.isBoolean()) throw trouble(key, "must be true or false");
            return node.booleanValue();
        }
        if (type == int.class) {
            if (!node.isInt()) throw trouble(key, "must be a whole number");
            return node.intValue();
        }
        if (type == double.class || type == Double.class) return number(node, key);
        if (type.isEnum()) return word(type, node, key);
        if (type.isSealed()) return read(variant(type, node, key), node, key);
        if (type.isRecord()) return read(type, node, key);
        throw new IllegalStateException(key + ": the rack reader does not know " + type);
    }

    private Quantity quantity(String name, JsonNode node, String key) {
        keysOnly(node, Set.of("value", "unit", "source"), key);
        String canonical = RackUnits.unitOf(name);
        return new Quantity(inUnit(node, "value", canonical, key), canonical, source(node, key));
    }

    private QuantityRange range(String name, JsonNode node, String key) {
        keysOnly(node, Set.of("low", "high", "value", "unit", "source"), key);
        String canonical = RackUnits.unitOf(name);
        boolean one = node.has("value");
        if (one && (node.has("low") || node.has("high")))
            throw trouble(key, "has a value and a range; keep one of them");
        double low = inUnit(node, one ? "value" : "low", canonical, key);
        double high = inUnit(node, one ? "value" : "high", canonical, key);
        if (low > high) throw trouble(key, "falls from " + low + " to " + high + "; write the smaller number as low");
        return new QuantityRange(low, high, canonical, source(node, key));
    }

    private double inUnit(JsonNode node, String field, String canonical, String key) {
        double raw = number(required(node, field, key), path(key, field));
        String unit = text(required(node, "unit", key), path(key, "unit"));
        return RackUnits.convert(raw, unit, canonical)
                .orElseThrow(() -> trouble(key, "is given in " + unit + "; write it in " + canonical));
    }

    private Source source(JsonNode node, String key) {
        String text = text(required(node, "source", key), path(key, "source"));
        if (text.isBlank())
            throw trouble(key, "has an empty source; name the book, or write from memory or common practice");
        return SourceText.parse(text);
    }

    private JsonNode required(JsonNode node, String field, String key) {
        JsonNode value = node.get(field);
        if (value == null || value.isNull()) throw trouble(key, "has no " + field + "; add it");
        return value;
    }

    private void keysOnly(JsonNode node, Set<String> allowed, String key) {
        if (!node.isObject()) throw trouble(key, "must be written as a number with unit and source in braces");
        node.fieldNames().forEachRemaining(f -> {
            if (!allowed.contains(f)) throw trouble(path(key, f), "is not a key here; use " + new TreeSet<>(allowed));
        });
    }

    private double number(JsonNode node, String key) {
        if (!node.isNumber()) throw trouble(key, "must be a number");
        double value = node.doubleValue();
        if (!Double.isFinite(value)) throw trouble(key, "is not a finite number");
        return value;
    }

    private String text(JsonNode node, String key) {
        if (!node.isTextual() || node.textValue().isBlank()) throw trouble(key, "must be text");
        return node.textValue();
    }

    private Object word(Class<?> type, JsonNode node, String key) {
        List<String> words = new ArrayList<>();
        for (Object constant : type.getEnumConstants()) {
            String word = dashed(((Enum<?>) constant).name());
            if (word.equals(text(node, key))) return constant;
            words.add(word);
        }
        throw trouble(key, "is '" + text(node, key) + "'; it must be one of " + words);
    }

    private Class<?> variant(Class<?> sealed, JsonNode node, String key) {
        String model = text(required(node, "model", key), path(key, "model"));
        List<String> models = new ArrayList<>();
        for (Class<?> variant : sealed.getPermittedSubclasses()) {
            String word = dashed(variant.getSimpleName().replaceAll("(?<=[a-z])(?=[A-Z])", "_"));
            if (word.equals(model)) return variant;
            models.add(word);
        }
        throw trouble(path(key, "model"), "is '" + model + "'; it must be one of " + models);
    }

    private static boolean isVariant(Class<?> type) {
        for (Class<?> parent : type.getInterfaces()) {
            if (parent.isSealed()) return true;
        }
        return false;
    }

    private static String dashed(String name) {
        return name.toLowerCase(Locale.ROOT).replace('_', '-');
    }

    private static String path(String at, String key) {
        return at.isEmpty() ? key : at + "." + key;
    }

    private RackException trouble(String key, String what) {
        return new RackException("Rack file " + file + ": " + (key.isEmpty() ? "it " : key + " ") + what + ".");
    }
}
