package shotwright.job;

import com.fasterxml.jackson.core.JsonGenerator;
import com.fasterxml.jackson.core.JsonParser;
import com.fasterxml.jackson.databind.DeserializationContext;
import com.fasterxml.jackson.databind.DeserializationFeature;
import com.fasterxml.jackson.databind.JsonDeserializer;
import com.fasterxml.jackson.databind.JsonSerializer;
import com.fasterxml.jackson.databind.SerializationFeature;
import com.fasterxml.jackson.databind.SerializerProvider;
import com.fasterxml.jackson.databind.json.JsonMapper;
import com.fasterxml.jackson.databind.module.SimpleModule;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.InputStream;
import java.nio.ByteBuffer;
import java.nio.file.DirectoryStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.HexFormat;
import java.util.Optional;
import java.util.zip.Deflater;
import java.util.zip.GZIPInputStream;
import java.util.zip.GZIPOutputStream;
import org.jspecify.annotations.Nullable;
import org.locationtech.jts.io.ParseException;
import org.locationtech.jts.io.WKBReader;
import org.locationtech.jts.io.WKBWriter;
import shotwright.mesh.TriMesh;
import shotwright.region.Region;

/**
 * Results kept in the job folder under the key of everything they were made from: the program, the part's content, the decisions and rack
 * entries used, and the keys of the stations before. A result whose key is met again is taken up instead of worked out again; one whose key
 * is not met is stale and removed. Plain data only: nothing read here can run.
 */
final class ResultStore {
    private static final String FOLDER = ".line";
    private static final JsonMapper JSON = JsonMapper.builder()
            .addModule(new SimpleModule("geometry")
                    .addSerializer(TriMesh.class, new MeshOut())
                    .addDeserializer(TriMesh.class, new MeshIn())
                    .addSerializer(Region.class, new RegionOut())
                    .addDeserializer(Region.class, new RegionIn()))
            .disable(SerializationFeature.FAIL_ON_EMPTY_BEANS)
            .disable(DeserializationFeature.FAIL_ON_UNKNOWN_PROPERTIES)
            .build();
    private final JobFolder folder;

    ResultStore(JobFolder folder) {
        this.folder = folder;
    }

    /** A key from the parts it is made of; anything that JSON can hold. */
    static String key(Object... parts) {
        try {
            MessageDigest sha = MessageDigest.getInstance("SHA-256");
            for (Object part : parts) {
                sha.update(JSON.writeValueAsBytes(part));
                sha.update((byte) 0);
            }
            return HexFormat.of().formatHex(sha.digest(), 0, 12);
        } catch (NoSuchAlgorithmException | IOException e) {
            throw new IllegalStateException(e);
        }
    }

    /** The kept result of a station, when one with this very key is there and whole. */
    <T> Optional<T> load(String station, String key, Class<T> type) {
        Path file = folder.path(name(station, key));
        if (!Files.isRegularFile(file)) return Optional.empty();
        try (InputStream in = new GZIPInputStream(Files.newInputStream(file), 1 << 16)) {
            return Optional.of(JSON.readValue(in, type));
        } catch (IOException | IllegalArgumentException e) {
            return Optional.empty(); // damaged or from another version: worked out again
        }
    }

    /** Keeps a result and drops what the station left under other keys. */
    void save(String station, String key, Object result) {
        folder.write(name(station, key), out -> {
            try (GZIPOutputStream zip = new FastGzip(out)) {
                JSON.writeValue(zip, result);
            }
        });
        try (DirectoryStream<Path> old = Files.newDirectoryStream(folder.path(FOLDER), station + "-*.json.gz")) {
            for (Path p : old) {
                if (!p.equals(folder.path(name(station, key)))) Files.deleteIfExists(p);
            }
        } catch (IOException e) {
            // A stale file that cannot be removed does no harm: its key is never asked for.
        }
    }

    private static String name(String station, String key) {
        return FOLDER + "/" + station + "-" + key + ".json.gz";
    }

    private static final class FastGzip extends GZIPOutputStream {
        FastGzip(java.io.OutputStream out) throws IOException {
            super(out, 1 << 16);
            def.setLevel(Deflater.BEST_SPEED);
        }
    }

    private static final class MeshOut extends JsonSerializer<TriMesh> {
        @Override
        public void serialize(TriMesh m, JsonGenerator to, SerializerProvider p) throws IOException {
            double[] xyz = m.copyXyz();
            int[] tri = m.copyTri();
            ByteBuffer b = ByteBuffer.allocate(8 + 8 * xyz.length + 4 * tri.length);
            b.putInt(xyz.length).putInt(tri.length);
            for (double v : xyz) b.putDouble(v);
            for (int v : tri) b.putInt(v);
            to.writeBinary(b.array());
        }
    }

    private static final class MeshIn extends JsonDeserializer<TriMesh> {
        @Override
        public TriMesh deserialize(JsonParser from, DeserializationContext c) throws IOException {
            ByteArrayOutputStream bytes = new ByteArrayOutputStream();
            from.readBinaryValue(bytes);
            ByteBuffer b = ByteBuffer.wrap(bytes.toByteArray());
            int n = b.getInt(), m = b.getInt();
            if (n < 0 || m < 0 || 8L * n + 4L * m != b.remaining()) throw new IOException("mesh of the wrong length");
            double[] xyz = new double[n];
            int[] tri = new int[m];
            for (int i = 0; i < n; i++) xyz[i] = b.getDouble();
            for (int i = 0; i < m; i++) tri[i] = b.getInt();
            return new TriMesh(xyz, tri);
        }
    }

    private static final class RegionOut extends JsonSerializer<Region> {
        @Override
        public void serialize(Region r, JsonGenerator to, SerializerProvider p) throws IOException {
            to.writeBinary(new WKBWriter().write(r.geometry()));
        }
    }

    private static final class RegionIn extends JsonDeserializer<Region> {
        @Override
        public @Nullable Region deserialize(JsonParser from, DeserializationContext c) throws IOException {
            try {
                return Region.of(new WKBReader().read(from.getBinaryValue()));
            } catch (ParseException e) {
                throw new IOException(e);
            }
        }
    }
}
