package shotwright.checks.mutate;

import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import java.util.zip.ZipEntry;
import java.util.zip.ZipInputStream;
import java.util.zip.ZipOutputStream;
import shotwright.geom.Vec3;
import shotwright.mesh.TriMesh;
import shotwright.mold.export.StlFile;
import shotwright.mold.export.ThreeMfFile;
import shotwright.progress.Progress;

/** A good file to start from. */
final class SeedFile {
    private static final long MOST_SHARED_BYTES = 90_000;

    private final String name;
    private final byte[] bytes;
    private final Map<String, byte[]> entries;

    private SeedFile(String name, byte[] bytes) {
        this.name = name;
        this.bytes = bytes;
        this.entries = bytes.length > 1 && bytes[0] == 'P' && bytes[1] == 'K' ? unpack(bytes) : Map.of();
    }

    String name() {
        return name;
    }

    byte[] bytes() {
        return bytes;
    }

    /** The entries of a packed file; empty for others. */
    Map<String, byte[]> entries() {
        return entries;
    }

    boolean isText() {
        for (byte b : bytes) if (b == 0 || b < 0) return false;
        return true;
    }

    /** Files made here: a block and a notched bar in every format, with the habits different exporters have. */
    static List<SeedFile> own(Path folder) throws IOException {
        List<SeedFile> out = new ArrayList<>();
        for (TriMesh m : List.of(block(), bar())) {
            String n = m.facetCount() == 12 ? "block" : "bar";
            Path stl = folder.resolve("seed.stl"), threeMf = folder.resolve("seed.3mf");
            StlFile.write(stl, m, n, Vec3.ZERO, Progress.SILENT);
            ThreeMfFile.write(threeMf, List.of(new ThreeMfFile.Item(n, m)), Progress.SILENT);
            out.add(new SeedFile(n + ", binary STL", Files.readAllBytes(stl)));
            out.add(new SeedFile(n + ", 3MF", Files.readAllBytes(threeMf)));
            out.add(new SeedFile(n + ", ASCII STL", text(asciiStl(m))));
            out.add(new SeedFile(n + ", OBJ", text(obj(m))));
            Files.delete(stl);
            Files.delete(threeMf);
        }
        out.add(new SeedFile("quads, OBJ", text(QUADS)));
        out.add(new SeedFile("components, 3MF", pack(components())));
        return out;
    }

    /** Small files that lie beside the repository, when they do. */
    static List<SeedFile> shared(Path folder) throws IOException {
        if (!Files.isDirectory(folder)) return List.of();
        List<SeedFile> out = new ArrayList<>();
        try (Stream<Path> all = Files.list(folder)) {
            for (Path p : all.sorted().toList()) {
                String n = p.getFileName().toString();
                if (n.matches(".*\\.(stl|obj|3mf)") && Files.size(p) < MOST_SHARED_BYTES && Files.size(p) > 0)
                    out.add(new SeedFile(n, Files.readAllBytes(p)));
            }
        }
        return out;
    }

    /** Files of the folder by name; none when one of them is not there. */
    static List<SeedFile> named(Path folder, List<String> names) throws IOException {
        List<SeedFile> out = new ArrayList<>();
        for (String n : names) {
            Path p = folder.resolve(n);
            if (!Files.isReadable(p)) return List.of();
            out.add(new SeedFile(n, Files.readAllBytes(p)));
        }
        return out;
    }

    private static TriMesh block() {
        return prism(new double[][] {{0, 0}, {20, 0}, {20, 12}, {0, 12}}, new int[] {0, 1, 2, 0, 2, 3});
    }

    private static TriMesh bar() {
        return prism(
                new double[][] {{0, 0}, {30, 0}, {30, 8}, {18, 8}, {15, 4}, {12, 8}, {0, 8}},
                new int[] {0, 1, 4, 1, 2, 3, 1, 3, 4, 0, 4, 5, 0, 5, 6});
    }

    private static TriMesh prism(double[][] ring, int[] cap) {
        int n = ring.length;
        double[] xyz = new double[6 * n];
        for (int i = 0; i < 2 * n; i++) {
            xyz[3 * i] = ring[i % n][0];
            xyz[3 * i + 1] = ring[i % n][1];
            xyz[3 * i + 2] = i < n ? 0 : 7.5;
        }
        List<Integer> tri = new ArrayList<>();
        for (int i = 0; i < cap.length; i += 3) {
            tri.addAll(List.of(cap[i], cap[i + 2], cap[i + 1]));
            tri.addAll(List.of(cap[i] + n, cap[i + 1] + n, cap[i + 2] + n));
        }
        for (int i = 0; i < n; i++) {
            int j = (i + 1) % n;
            tri.addAll(List.of(i, j, j + n, i, j + n, i + n));
        }
        return new TriMesh(xyz, tri.stream().mapToInt(Integer::intValue).toArray());
    }

    private static String asciiStl(TriMesh m) {
        StringBuilder s = new StringBuilder("solid seed\n");
        for (int f = 0; f < m.facetCount(); f++) {
            s.append("facet normal 0 0 1\nouter loop\n");
            for (int k = 0; k < 3; k++) {
                Vec3 p = m.cornerPoint(f, k);
                s.append("vertex ")
                        .append(p.x())
                        .append(' ')
                        .append(p.y())
                        .append(' ')
                        .append(p.z())
                        .append('\n');
            }
            s.append("endloop\nendfacet\n");
        }
        return s.append("endsolid seed\n").toString();
    }

    private static String obj(TriMesh m) {
        StringBuilder s = new StringBuilder();
        for (int v = 0; v < m.vertexCount(); v++)
            s.append("v ")
                    .append(m.x(v))
                    .append(' ')
                    .append(m.y(v))
                    .append(' ')
                    .append(m.z(v))
                    .append('\n');
        for (int f = 0; f < m.facetCount(); f++)
            s.append("f ")
                    .append(m.corner(f, 0) + 1)
                    .append(' ')
                    .append(m.corner(f, 1) + 1)
                    .append(' ')
                    .append(m.corner(f, 2) + 1)
                    .append('\n');
        return s.toString();
    }

    private static final String QUADS = """
            # a block of quads
            o block
            v 0 0 0
            v 10 0 0 1.0
            v 10 10 0 0.5 0.5 0.5
            v 0 10 0
            v 0 0 1e1
            v 10 0 1.0E+01
            v 10 10 10
            v 0 10 10
            vt 0 0
            vn 0 0 1
            g all
            f 4/1/1 3/1/1 2/1/1 1/1/1
            f 5//1 6//1 \\
            7//1 8//1
            f 1/1 2/1 6/1 5/1
            f 2 3 7 6
            f -6 -5 -1 -2
            f -5 -8 -4 -1
            """;

    private static Map<String, byte[]> components() {
        String head = "<?xml version=\"1.0\" encoding=\"UTF-8\"?>\n<model unit=\"%s\""
                + " xmlns=\"http://schemas.microsoft.com/3dmanufacturing/core/2015/02\""
                + " xmlns:p=\"http://schemas.microsoft.com/3dmanufacturing/production/2015/06\""
                + " requiredextensions=\"p\">\n<resources>\n";
        String tetra = """
                <object id="1" type="model" name="tetra"><mesh><vertices>
                <vertex x="0" y="0" z="0"/><vertex x="20" y="0" z="0"/><vertex x="0" y="20" z="0"/><vertex x="0" y="0" z="20"/>
                </vertices><triangles>
                <triangle v1="0" v2="2" v3="1"/><triangle v1="0" v2="1" v3="3"/><triangle v1="1" v2="2" v3="3"/><triangle v1="0" v2="3" v3="2"/>
                </triangles></mesh></object>
                """;
        String pair = """
                <object id="2" type="model"><components><component objectid="1"/>
                <component objectid="1" p:path="/3D/other.model" transform="-1 0 0 0 1 0 0 0 1 -5 0 0"/></components></object>
                """;
        Map<String, byte[]> out = new LinkedHashMap<>();
        out.put(
                "[Content_Types].xml",
                text("<Types xmlns=\"http://schemas.openxmlformats.org/package/2006/content-types\"/>"));
        out.put(
                "_rels/.rels",
                text(
                        "<Relationships xmlns=\"http://schemas.openxmlformats.org/package/2006/relationships\"><Relationship"
                                + " Id=\"r\" Type=\"http://schemas.microsoft.com/3dmanufacturing/2013/01/3dmodel\""
                                + " Target=\"/3D/3dmodel.model\"/></Relationships>"));
        out.put(
                "3D/3dmodel.model",
                text(
                        head.formatted("millimeter") + tetra + pair
                                + "</resources>\n<build><item objectid=\"2\" transform=\"1 0 0 0 1 0 0 0 1 3 2 1\"/></build></model>\n"));
        out.put("3D/other.model", text(head.formatted("inch") + tetra + "</resources>\n<build/></model>\n"));
        return out;
    }

    private static byte[] text(String s) {
        return s.getBytes(StandardCharsets.UTF_8);
    }

    private static Map<String, byte[]> unpack(byte[] bytes) {
        Map<String, byte[]> out = new LinkedHashMap<>();
        try (ZipInputStream zip = new ZipInputStream(new ByteArrayInputStream(bytes))) {
            for (ZipEntry e = zip.getNextEntry(); e != null; e = zip.getNextEntry())
                out.put(e.getName(), zip.readNBytes(2_000_000));
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        return out;
    }

    static byte[] pack(Map<String, byte[]> entries) {
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        try (ZipOutputStream zip = new ZipOutputStream(out)) {
            for (Map.Entry<String, byte[]> e : entries.entrySet()) {
                zip.putNextEntry(new ZipEntry(e.getKey()));
                zip.write(e.getValue());
            }
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        return out.toByteArray();
    }
}
