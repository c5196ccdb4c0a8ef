package shotwright.machining.proof;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.core.StreamReadFeature;
import com.fasterxml.jackson.core.json.JsonReadFeature;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.json.JsonMapper;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import shotwright.cutter.Cutter;
import shotwright.cutter.Holder;
import shotwright.cutter.MountedCutter;
import shotwright.rack.Rack;
import shotwright.rack.RackException;

/**
 * The file that says which cutter each tool number of a program is and how far it stands out:
 * {@code {"1": {"cutter": "flat-6.0x18", "stickoutMm": 25, "holder": "er16"}}}. The holder may be left out: it is then the collet chuck ER16.
 */
public final class CutterTable {
    private static final int MOST_BYTES = 1 << 20;
    private static final Map<String, Holder> HOLDERS =
            Map.of("er11", Holder.ER11, "er16-slim", Holder.ER16_SLIM, "er16", Holder.ER16, "er20", Holder.ER20);
    private static final JsonMapper JSON = JsonMapper.builder(com.fasterxml.jackson.core.JsonFactory.builder()
                    .enable(StreamReadFeature.STRICT_DUPLICATE_DETECTION)
                    .build())
            .enable(JsonReadFeature.ALLOW_JAVA_COMMENTS)
            .build();

    /** What such a file looks like, for messages. */
    public static final String EXAMPLE = "{\"1\": {\"cutter\": \"flat-6.0x18\", \"stickoutMm\": 25}}";

    private CutterTable() {}

    /**
     * Reads the file.
     *
     * @throws RackException naming file and key, and saying what to write there
     */
    public static Map<Integer, MountedCutter> read(Path file, Rack<Cutter> rack) {
        Map<Integer, MountedCutter> table = new LinkedHashMap<>();
        tree(file).properties().forEach(e -> {
            String at = "Cutter file " + file + ", \"" + e.getKey() + "\": ";
            if (!e.getKey().matches("T?\\d{1,5}"))
                throw new RackException(at + "is no tool number; write it like this: " + EXAMPLE);
            table.put(Integer.valueOf(e.getKey().replace("T", "")), cutter(at, e.getValue(), rack));
        });
        return table;
    }

    private static ObjectNode tree(Path file) {
        try {
            if (Files.size(file) > MOST_BYTES)
                throw new RackException("Cutter file " + file + " is larger than 1 MB; it holds a few cutters only.");
            if (JSON.readTree(Files.readAllBytes(file)) instanceof ObjectNode o) return o;
            throw new RackException("Cutter file " + file + ": it must be one object in braces, like " + EXAMPLE);
        } catch (JsonProcessingException e) {
            throw new RackException("Cutter file " + file + " is no sound JSON: " + e.getOriginalMessage(), e);
        } catch (IOException e) {
            throw new RackException("Cutter file " + file + " cannot be read; check its name.", e);
        }
    }

    private static MountedCutter cutter(String at, JsonNode node, Rack<Cutter> rack) {
        Set<String> known = Set.of("cutter", "stickoutMm", "holder");
        node.fieldNames().forEachRemaining(k -> {
            if (!known.contains(k)) throw new RackException(at + k + " is not known; use " + new TreeSet<>(known));
        });
        JsonNode id = node.path("cutter"), stickout = node.path("stickoutMm"), holder = node.path("holder");
        if (!id.isTextual()) throw new RackException(at + "names no cutter; write it like this: " + EXAMPLE);
        if (!stickout.isNumber()) throw new RackException(at + "has no stickoutMm; write it like this: " + EXAMPLE);
        String name = holder.isMissingNode() ? "er16" : holder.asText();
        Holder held = HOLDERS.get(name);
        if (held == null)
            throw new RackException(at + "holder " + name + " is not known; use " + new TreeSet<>(HOLDERS.keySet()));
        try {
            return new MountedCutter(rack.byId(id.asText()), stickout.asDouble(), held);
        } catch (IllegalArgumentException | RackException e) {
            throw new RackException(at + String.valueOf(e.getMessage()), e);
        }
    }
}
