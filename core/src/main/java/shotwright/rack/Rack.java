package shotwright.rack;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.core.StreamReadConstraints;
import com.fasterxml.jackson.core.StreamReadFeature;
import com.fasterxml.jackson.core.json.JsonReadFeature;
import com.fasterxml.jackson.databind.DeserializationFeature;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.json.JsonMapper;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;

/**
 * Everything of one kind on the rack, by id.
 *
 * <p>A file may say {@code "like": "abs"}: keys it does not hold are then taken from that entry, so that a shop's own grade needs only the
 * numbers that differ.
 *
 * @param <T> the record of the kind; it has a component {@code String id}
 */
public final class Rack<T extends Rack.Entry> {
    /** What stands on a rack. */
    public interface Entry {
        /** The id, equal to the file name without ending. */
        String id();
    }

    private static final int MAX_FILE_BYTES = 1 << 20;
    private static final int MAX_FILES = 5000;
    private static final JsonMapper JSON = JsonMapper.builder(com.fasterxml.jackson.core.JsonFactory.builder()
                    .streamReadConstraints(
                            StreamReadConstraints.builder().maxNestingDepth(20).build())
                    .enable(StreamReadFeature.STRICT_DUPLICATE_DETECTION)
                    .build())
            .enable(JsonReadFeature.ALLOW_JAVA_COMMENTS)
            .enable(DeserializationFeature.FAIL_ON_TRAILING_TOKENS)
            .build();

    private final String kind;
    private final Class<T> type;
    private final Map<String, ObjectNode> trees;
    private final Map<String, T> entries;

    private Rack(String kind, Class<T> type, Map<String, ObjectNode> trees, Map<String, T> entries) {
        this.kind = kind;
        this.type = type;
        this.trees = trees;
        this.entries = entries;
    }

    /**
     * The rack that ships with the program: the ids listed in {@code shotwright/<kind>/index.txt}, one file each beside it.
     *
     * @param kind folder name, also the word in messages
     * @throws RackException when a file cannot be used
     */
    public static <T extends Entry> Rack<T> shipped(String kind, Class<T> type) {
        Rack<T> rack = new Rack<>(kind, type, new LinkedHashMap<>(), new LinkedHashMap<>());
        String folder = "shotwright/" + kind + "/";
        for (String id : new String(resource(folder + "index.txt"), StandardCharsets.UTF_8).split("\\R")) {
            if (!id.isBlank())
                rack.add(id.strip(), kind + "/" + id.strip() + ".json", resource(folder + id.strip() + ".json"));
        }
        return rack;
    }

    /**
     * This rack with the shop's own files laid over it: {@code <shop>/<kind>/*.json}; a file with a known id replaces that entry.
     *
     * @param shop the shop's folder; it may have no folder of this kind
     * @throws RackException when a file cannot be used; the message names file and key
     */
    public Rack<T> withFolder(Path shop) {
        Path folder = shop.resolve(kind);
        if (!Files.isDirectory(folder)) return this;
        Rack<T> rack = new Rack<>(kind, type, new LinkedHashMap<>(trees), new LinkedHashMap<>(entries));
        try (Stream<Path> files = Files.list(folder)) {
            List<Path> own = files.filter(f -> f.getFileName().toString().endsWith(".json"))
                    .sorted()
                    .limit(MAX_FILES + 1L)
                    .toList();
            if (own.size() > MAX_FILES)
                throw new RackException(
                        "Folder " + folder + " holds more than " + MAX_FILES + " files; keep only rack files there.");
            for (Path file : own) {
                String name = file.getFileName().toString();
                rack.add(name.substring(0, name.length() - 5), file.toString(), bytes(file));
            }
        } catch (IOException e) {
            throw new RackException("Folder " + folder + " cannot be read; check that it exists and may be opened.", e);
        }
        return rack;
    }

    /** The entry with an id. @throws RackException listing the ids when there is none */
    public T byId(String id) {
        return find(id).orElseThrow(() -> new RackException(
                "The rack has no " + kind + " '" + id + "'. It has: " + String.join(", ", ids()) + "."));
    }

    /** The entry with an id, if the rack has it. */
    public Optional<T> find(String id) {
        return Optional.ofNullable(entries.get(id));
    }

    /** Every entry, in the order of the rack; the shop's own new ones last. */
    public List<T> all() {
        return List.copyOf(entries.values());
    }

    /** Every id, in the order of the rack. */
    public Set<String> ids() {
        return java.util.Collections.unmodifiableSet(entries.keySet());
    }

    /** What the rack holds, in one word. */
    public String kind() {
        return kind;
    }

    private void add(String id, String file, byte[] bytes) {
        ObjectNode tree = merged(tree(file, bytes), file, id);
        T entry = new RackReader(file).read(type, tree, "");
        if (!entry.id().equals(id))
            throw new RackException("Rack file " + file + ": id is '" + entry.id() + "' but the file is called '" + id
                    + "'; make them equal.");
        trees.put(id, tree);
        entries.put(id, entry);
    }

    private ObjectNode merged(ObjectNode own, String file, String id) {
        JsonNode like = own.remove("like");
        if (like == null) return own;
        @Nullable ObjectNode base = trees.get(like.asText());
        if (base == null)
            throw new RackException("Rack file " + file + ": like names '" + like.asText()
                    + "', which the rack does not have; it has " + ids() + ".");
        ObjectNode out = base.deepCopy();
        out.put("id", id);
        out.setAll(own);
        return out;
    }

    private static ObjectNode tree(String file, byte[] bytes) {
        try {
            if (JSON.readTree(bytes) instanceof ObjectNode object) return object;
            throw new RackException("Rack file " + file + ": it must hold one object in braces.");
        } catch (JsonProcessingException e) {
            var at = e.getLocation();
            String place = at == null ? "" : ", line " + at.getLineNr() + " column " + at.getColumnNr();
            throw new RackException(
                    "Rack file " + file + place + ": " + e.getOriginalMessage() + ". Mend the JSON there.", e);
        } catch (IOException e) {
            throw new RackException("Rack file " + file + " cannot be read.", e);
        }
    }

    private static byte[] bytes(Path file) throws IOException {
        if (Files.size(file) > MAX_FILE_BYTES)
            throw new RackException("Rack file " + file + " is larger than 1 MB; a rack file holds one entry only.");
        return Files.readAllBytes(file);
    }

    private static byte[] resource(String name) {
        try (InputStream in = Rack.class.getClassLoader().getResourceAsStream(name)) {
            if (in == null) throw new IllegalStateException("the program lacks its own file " + name);
            return in.readAllBytes();
        } catch (IOException e) {
            throw new IllegalStateException("the program's own file " + name + " cannot be read", e);
        }
    }
}
