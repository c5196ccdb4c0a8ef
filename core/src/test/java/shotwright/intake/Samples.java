package shotwright.intake;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.ByteOrder;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Objects;
import java.util.zip.ZipEntry;
import java.util.zip.ZipOutputStream;
import shotwright.finding.Finding;
import shotwright.finding.Severity;
import shotwright.geom.Box3;
import shotwright.geom.Transform;
import shotwright.geom.Vec3;
import shotwright.mesh.Solids;
import shotwright.mesh.TriMesh;
import shotwright.part.Part;
import shotwright.progress.Progress;

/** Small files written by the tests themselves, apart from the program's own writers. */
final class Samples {
    static final String CORE = "http://schemas.microsoft.com/3dmanufacturing/core/2015/02";
    static final String PRODUCTION = "http://schemas.microsoft.com/3dmanufacturing/production/2015/06";

    private Samples() {}

    /** 20 × 30 × 10 mm, sat off the origin. */
    static TriMesh block() {
        return Solids.box(new Vec3(-5, 2, 1), new Vec3(15, 32, 11));
    }

    static TriMesh washer() {
        return Solids.washer(48, 12, 11.5, 5, 5.25, -2, 4);
    }

    static byte[] binaryStl(String title, int count, TriMesh mesh) {
        ByteBuffer b = ByteBuffer.allocate(84 + 50 * mesh.facetCount()).order(ByteOrder.LITTLE_ENDIAN);
        b.put(title.getBytes(StandardCharsets.ISO_8859_1), 0, Math.min(80, title.length()))
                .position(80);
        b.putInt(count);
        for (int f = 0; f < mesh.facetCount(); f++) {
            for (int i = 0; i < 3; i++) b.putFloat(0);
            for (int k = 0; k < 3; k++) {
                Vec3 p = mesh.cornerPoint(f, k);
                b.putFloat((float) p.x()).putFloat((float) p.y()).putFloat((float) p.z());
            }
            b.putShort((short) 0);
        }
        return b.array();
    }

    static byte[] binaryStl(TriMesh mesh) {
        return binaryStl("made by a test", mesh.facetCount(), mesh);
    }

    static String asciiStl(TriMesh... meshes) {
        StringBuilder s = new StringBuilder();
        for (TriMesh m : meshes) {
            s.append("solid piece\n");
            for (int f = 0; f < m.facetCount(); f++) {
                s.append("  facet normal 0 0 0\n    outer loop\n");
                for (int k = 0; k < 3; k++) {
                    Vec3 p = m.cornerPoint(f, k);
                    s.append(String.format(Locale.ROOT, "      vertex %.9e %.9e %.9e%n", p.x(), p.y(), p.z()));
                }
                s.append("    endloop\n  endfacet\n");
            }
            s.append("endsolid piece\n");
        }
        return s.toString();
    }

    static String obj(TriMesh m) {
        StringBuilder s = new StringBuilder("# made by a test\n");
        for (int v = 0; v < m.vertexCount(); v++)
            s.append("v ")
                    .append(m.x(v))
                    .append(' ')
                    .append(m.y(v))
                    .append(' ')
                    .append(m.z(v))
                    .append('\n');
        for (int f = 0; f < m.facetCount(); f++) {
            s.append('f');
            for (int k = 0; k < 3; k++) s.append(' ').append(m.corner(f, k) + 1);
            s.append('\n');
        }
        return s.toString();
    }

    static String meshXml(TriMesh m) {
        StringBuilder s = new StringBuilder("<mesh><vertices>");
        for (int v = 0; v < m.vertexCount(); v++)
            s.append(String.format(Locale.ROOT, "<vertex x=\"%s\" y=\"%s\" z=\"%s\"/>", m.x(v), m.y(v), m.z(v)));
        s.append("</vertices><triangles>");
        for (int f = 0; f < m.facetCount(); f++)
            s.append(String.format(
                    Locale.ROOT,
                    "<triangle v1=\"%d\" v2=\"%d\" v3=\"%d\"/>",
                    m.corner(f, 0),
                    m.corner(f, 1),
                    m.corner(f, 2)));
        return s.append("</triangles></mesh>").toString();
    }

    static String object(int id, String name, String inside) {
        return "<object id=\"" + id + "\" name=\"" + name + "\" type=\"model\">" + inside + "</object>";
    }

    static String model(String attributes, String objects, String items) {
        return "<?xml version=\"1.0\" encoding=\"UTF-8\"?><model xmlns=\"" + CORE + "\" " + attributes + "><resources>"
                + objects + "</resources><build>" + items + "</build></model>";
    }

    /** A 3MF package whose root model is this text; further entries by name. */
    static byte[] package3mf(String rootModel, Map<String, String> more) {
        Map<String, String> all = new LinkedHashMap<>();
        all.put(
                "[Content_Types].xml",
                "<Types xmlns=\"http://schemas.openxmlformats.org/package/2006/content-types\"/>");
        all.put(
                "_rels/.rels",
                "<Relationships xmlns=\"http://schemas.openxmlformats.org/package/2006/relationships\">"
                        + "<Relationship Id=\"a\" Type=\"http://schemas.microsoft.com/3dmanufacturing/2013/01/3dmodel\""
                        + " Target=\"/3D/part.model\"/></Relationships>");
        all.put("3D/part.model", rootModel);
        all.putAll(more);
        return zip(all);
    }

    static byte[] zip(Map<String, String> entries) {
        var bytes = new java.io.ByteArrayOutputStream();
        try (ZipOutputStream zip = new ZipOutputStream(bytes)) {
            for (var e : entries.entrySet()) {
                zip.putNextEntry(new ZipEntry(e.getKey()));
                zip.write(e.getValue().getBytes(StandardCharsets.UTF_8));
            }
        } catch (IOException e) {
            throw new java.io.UncheckedIOException(e);
        }
        return bytes.toByteArray();
    }

    static byte[] threeMf(String unit, TriMesh m) {
        return package3mf(
                model("unit=\"" + unit + "\"", object(1, "piece", meshXml(m)), "<item objectid=\"1\"/>"), Map.of());
    }

    static IntakeResult read(Path folder, byte[] content, IntakeOptions options) {
        try {
            Path file = folder.resolve("sample.bin");
            Files.write(file, content);
            return Intake.read(file, options, Progress.SILENT);
        } catch (IOException e) {
            throw new java.io.UncheckedIOException(e);
        }
    }

    static IntakeResult read(Path folder, byte[] content) {
        return read(folder, content, IntakeOptions.usual());
    }

    static IntakeResult read(Path folder, String content) {
        return read(folder, content.getBytes(StandardCharsets.UTF_8));
    }

    static TriMesh scaled(TriMesh m, double factor) {
        return m.transform(Transform.scale(factor, factor, factor));
    }

    static TriMesh without(TriMesh m, Integer... facets) {
        return Facets.keep(m, f -> !List.of(facets).contains(f));
    }

    static Part part(IntakeResult r) {
        return Objects.requireNonNull(r.part(), () -> "no part: " + r.findings());
    }

    static Box3 box(IntakeResult r) {
        return Objects.requireNonNull(r.facts().boxMm());
    }

    static void assertNoStop(IntakeResult r) {
        assertThat(r.findings()).noneMatch(f -> f.severity() == Severity.STOP);
        assertThat(r.part()).isNotNull();
    }

    static Finding only(IntakeResult r, String code) {
        List<Finding> found =
                r.findings().stream().filter(f -> f.code().equals(code)).toList();
        assertThat(found).as("findings " + code + " in " + r.findings()).hasSize(1);
        return found.getFirst();
    }
}
