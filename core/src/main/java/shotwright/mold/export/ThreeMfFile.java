package shotwright.mold.export;

import java.io.IOException;
import java.io.OutputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.time.LocalDateTime;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.zip.ZipEntry;
import java.util.zip.ZipOutputStream;
import shotwright.geom.Vec3;
import shotwright.mesh.TriMesh;
import shotwright.progress.Progress;

/**
 * 3MF: named objects in millimetres, each built where it stands, coordinates to a millionth of a millimetre. The same meshes give the same
 * bytes.
 */
public final class ThreeMfFile {
    private static final LocalDateTime NO_TIME = LocalDateTime.of(1980, 1, 1, 0, 0);
    private static final String HEAD = "<?xml version=\"1.0\" encoding=\"UTF-8\"?>\n";
    private static final String TYPES = HEAD
            + "<Types xmlns=\"http://schemas.openxmlformats.org/package/2006/content-types\">"
            + "<Default Extension=\"rels\" ContentType=\"application/vnd.openxmlformats-package.relationships+xml\"/>"
            + "<Default Extension=\"model\" ContentType=\"application/vnd.ms-package.3dmanufacturing-3dmodel+xml\"/>"
            + "</Types>\n";
    private static final String RELATIONS = HEAD
            + "<Relationships xmlns=\"http://schemas.openxmlformats.org/package/2006/relationships\">"
            + "<Relationship Id=\"model\" Type=\"http://schemas.microsoft.com/3dmanufacturing/2013/01/3dmodel\""
            + " Target=\"/3D/3dmodel.model\"/></Relationships>\n";

    private ThreeMfFile() {}

    /**
     * One object of a file.
     *
     * @param name shown to whoever opens the file
     * @param mesh closed facets, millimetres
     */
    public record Item(String name, TriMesh mesh) {}

    /**
     * Writes objects.
     *
     * @param file the file; its folder must exist, an older file of the name is replaced
     * @param items at least one object
     * @return the meshes as the file holds them
     * @throws IOException when the folder cannot be written to; no part of the file is left behind
     */
    public static List<Rounded> write(Path file, List<Item> items, Progress progress) throws IOException {
        if (items.isEmpty()) throw new IllegalArgumentException("items: there is nothing to write");
        List<Rounded> rounded = new ArrayList<>();
        for (Item i : items) rounded.add(Rounded.toNanometre(i.mesh(), Vec3.ZERO));
        WholeFile.write(file, out -> pack(items, rounded, out, progress));
        return rounded;
    }

    private static void pack(List<Item> items, List<Rounded> rounded, OutputStream out, Progress progress)
            throws IOException {
        ZipOutputStream zip = new ZipOutputStream(out);
        entry(zip, "[Content_Types].xml");
        put(zip, TYPES);
        entry(zip, "_rels/.rels");
        put(zip, RELATIONS);
        entry(zip, "3D/3dmodel.model");
        put(zip, HEAD);
        put(zip, "<model unit=\"millimeter\" xml:lang=\"en\"");
        put(zip, " xmlns=\"http://schemas.microsoft.com/3dmanufacturing/core/2015/02\">\n<resources>\n");
        for (int i = 0; i < items.size(); i++) {
            progress.at("writing 3MF", (double) i / items.size());
            object(
                    zip,
                    i + 1,
                    items.get(i).name(),
                    rounded.get(i).mesh(),
                    progress.part((double) i / items.size(), (i + 1.0) / items.size()));
        }
        put(zip, "</resources>\n<build>\n");
        for (int i = 1; i <= items.size(); i++) put(zip, "<item objectid=\"" + i + "\"/>\n");
        put(zip, "</build>\n</model>\n");
        zip.finish();
    }

    private static void entry(ZipOutputStream zip, String name) throws IOException {
        ZipEntry e = new ZipEntry(name);
        e.setTimeLocal(NO_TIME);
        zip.putNextEntry(e);
    }

    private static void object(ZipOutputStream zip, int id, String name, TriMesh mesh, Progress progress)
            throws IOException {
        put(zip, "<object id=\"" + id + "\" type=\"model\" name=\"" + escaped(name) + "\"><mesh>\n<vertices>\n");
        StringBuilder s = new StringBuilder(1 << 16);
        int n = mesh.vertexCount() + mesh.facetCount();
        for (int v = 0; v < mesh.vertexCount(); v++) {
            s.append("<vertex x=\"").append(number(mesh.x(v)));
            s.append("\" y=\"").append(number(mesh.y(v)));
            s.append("\" z=\"").append(number(mesh.z(v))).append("\"/>\n");
            flush(zip, s, v, n, progress);
        }
        s.append("</vertices>\n<triangles>\n");
        for (int f = 0; f < mesh.facetCount(); f++) {
            s.append("<triangle v1=\"").append(mesh.corner(f, 0));
            s.append("\" v2=\"").append(mesh.corner(f, 1));
            s.append("\" v3=\"").append(mesh.corner(f, 2)).append("\"/>\n");
            flush(zip, s, mesh.vertexCount() + f, n, progress);
        }
        put(zip, s.append("</triangles>\n</mesh></object>\n").toString());
    }

    private static void flush(ZipOutputStream zip, StringBuilder s, int done, int of, Progress progress)
            throws IOException {
        if (s.length() < 60_000) return;
        progress.at("writing 3MF", (double) done / of);
        put(zip, s.toString());
        s.setLength(0);
    }

    /** Decimal text without a power of ten and without idle zeros. */
    private static String number(double x) {
        long n = Math.round(x * 1e6);
        long whole = Math.abs(n) / 1_000_000, rest = Math.abs(n) % 1_000_000;
        if (rest == 0) return (n < 0 ? "-" : "") + whole;
        String digits = String.format(Locale.ROOT, "%06d", rest);
        int end = digits.length();
        while (digits.charAt(end - 1) == '0') end--;
        return (n < 0 ? "-" : "") + whole + "." + digits.substring(0, end);
    }

    private static String escaped(String s) {
        return s.replaceAll("[^\\x20-\\ud7ff\\ue000-\\ufffd]", " ")
                .replace("&", "&amp;")
                .replace("<", "&lt;")
                .replace(">", "&gt;")
                .replace("\"", "&quot;");
    }

    private static void put(ZipOutputStream zip, String s) throws IOException {
        zip.write(s.getBytes(StandardCharsets.UTF_8));
    }
}
