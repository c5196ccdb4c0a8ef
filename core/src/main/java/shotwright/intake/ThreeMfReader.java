package shotwright.intake;

import java.io.IOException;
import java.io.InputStream;
import java.net.URLDecoder;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.zip.ZipEntry;
import java.util.zip.ZipException;
import java.util.zip.ZipFile;
import org.jspecify.annotations.Nullable;
import shotwright.geom.Transform;
import shotwright.geom.Vec3;
import shotwright.measure.LengthUnit;

/**
 * 3MF: a packed file whose relationships name the root model; its build items are placed with their components, across model entries too
 * (production extension). Every placed mesh becomes an object of its own. Entry names are looked up inside the archive only and never
 * become paths on the disk.
 */
final class ThreeMfReader {
    private static final int MOST_ENTRIES = 10_000;
    private static final String AGAIN = "Export or copy the file again";

    private final ZipFile zip;
    private final ReadGuard guard;
    private final Map<String, ZipEntry> entries = new HashMap<>();
    private final Map<String, ThreeMfModel> models = new HashMap<>();
    private final List<RawObject> out = new ArrayList<>();
    private final List<String> notes = new ArrayList<>();
    private final long[] inflated = new long[1];
    private LengthUnit unit = LengthUnit.MM;
    private int instances;
    private int supports;
    private long facets;

    private ThreeMfReader(ZipFile zip, ReadGuard guard) {
        this.zip = zip;
        this.guard = guard;
    }

    static RawModel read(Path file, ReadGuard guard) throws IOException {
        try (ZipFile zip = new ZipFile(file.toFile())) {
            return new ThreeMfReader(zip, guard).read();
        } catch (ZipException e) {
            throw guard.fault("", "the packed file is damaged (" + e.getMessage() + ")", AGAIN);
        }
    }

    private RawModel read() {
        zip.stream().limit(MOST_ENTRIES + 1L).forEach(e -> entries.putIfAbsent(key(e.getName()), e));
        if (entries.size() > MOST_ENTRIES)
            throw guard.fault("", "it packs more than " + MOST_ENTRIES + " entries", "Export the part again");
        String root = rootPath();
        ThreeMfModel model = model(root);
        unit = model.unit();
        for (ThreeMfModel.Placed item : items(model)) place(root, item, Transform.IDENTITY, "", 1);
        if (supports > 0) notes.add("Left out " + supports + " objects that are supports for printing.");
        if (out.isEmpty())
            throw guard.fault(root, "nothing in it is to be built from facets", "Export the part as a plain mesh");
        return new RawModel(FileFormat.THREE_MF.words(), unit, false, out, notes, List.of());
    }

    /** The entry the package's relationships call the model; without relationships the only model entry there is. */
    private String rootPath() {
        if (!entries.containsKey(key("[Content_Types].xml")))
            notes.add("The list of content types is missing from the file.");
        ZipEntry rels = entries.get(key("_rels/.rels"));
        if (rels != null) {
            String target = modelTarget(rels);
            if (target != null) return key(target);
        }
        List<String> found =
                entries.keySet().stream().filter(k -> k.endsWith(".model")).toList();
        if (found.size() == 1) {
            notes.add("The file does not name its model; the only one inside was read.");
            return found.getFirst();
        }
        throw guard.fault(
                "",
                found.isEmpty()
                        ? "it is a zip archive without a 3MF model inside"
                        : "it holds " + found.size() + " models and does not name the one to read",
                "Export the part as STL, OBJ or 3MF, or take the part file out of the archive");
    }

    private @Nullable String modelTarget(ZipEntry rels) {
        try (XmlCursor xml = cursor(rels)) {
            while (xml.next()) {
                if (!xml.starts() || !xml.name().equals("Relationship")) continue;
                String type = xml.attribute("Type"), mode = xml.attribute("TargetMode");
                if (type != null && type.endsWith("/3dmodel") && !"External".equals(mode))
                    return xml.required("Target");
            }
        }
        return null;
    }

    private ThreeMfModel model(String path) {
        ThreeMfModel known = models.get(path);
        if (known != null) return known;
        ZipEntry e = entries.get(path);
        if (e == null)
            throw guard.fault(XmlCursor.shortened(path), "the file names this model but does not hold it", AGAIN);
        try (XmlCursor xml = cursor(e)) {
            ThreeMfModel m = ThreeMfModel.read(xml, guard);
            models.put(path, m);
            return m;
        }
    }

    private XmlCursor cursor(ZipEntry e) {
        String name = XmlCursor.shortened(e.getName().replaceAll("\\p{Cntrl}", "?"));
        try {
            InputStream in = zip.getInputStream(e);
            if (in == null) throw guard.fault(name, "it cannot be unpacked", AGAIN);
            return new XmlCursor(new InflatedStream(in, name, e.getCompressedSize(), inflated, guard), name, guard);
        } catch (IOException x) {
            throw guard.fault(name, "it cannot be unpacked (" + x.getMessage() + ")", AGAIN);
        }
    }

    /** The build items; a model that builds nothing is taken to mean all objects that are not components of others. */
    private List<ThreeMfModel.Placed> items(ThreeMfModel model) {
        if (!model.items().isEmpty()) return model.items();
        notes.add("The file lists nothing to build; all its objects were taken.");
        Set<String> used = new HashSet<>();
        for (ThreeMfModel.ModelObject o : model.objects().values())
            for (ThreeMfModel.Placed c : o.components) used.add(c.id());
        return model.objects().keySet().stream()
                .filter(id -> !used.contains(id))
                .sorted()
                .map(id -> new ThreeMfModel.Placed(null, id, Transform.IDENTITY, "object " + XmlCursor.shortened(id)))
                .toList();
    }

    private void place(String here, ThreeMfModel.Placed placed, Transform outer, String outerName, int depth) {
        Limits l = guard.limits();
        if (depth > l.maxDepthCount())
            throw guard.fault(
                    placed.where(),
                    "components are nested deeper than " + l.maxDepthCount() + ", or an object contains itself",
                    "Export the part as one mesh");
        if (++instances > l.maxInstanceCount())
            throw guard.fault(
                    placed.where(),
                    "more than " + l.maxInstanceCount() + " objects are placed",
                    "Export one part alone");
        String path = placed.path() == null ? here : key(placed.path());
        ThreeMfModel model = model(path);
        ThreeMfModel.ModelObject o = model.objects().get(placed.id());
        if (o == null)
            throw guard.fault(
                    placed.where(), "object " + XmlCursor.shortened(placed.id()) + " is placed but not defined", AGAIN);
        Transform t = inRootUnit(placed.transform(), here).then(outer);
        if (!(Math.abs(t.determinant()) > 0) || !Double.isFinite(t.determinant()))
            throw guard.fault(placed.where(), "its transform flattens the object to nothing", "Export the part again");
        if (o.type.equals("support") || o.type.equals("solidsupport")) {
            supports++;
            return;
        }
        String name = o.name.isEmpty() ? outerName : o.name;
        for (ThreeMfModel.Placed c : o.components) place(path, c, t, name, depth + 1);
        if (o.tri.count() > 0) mesh(o, t, model.unit().mm() / unit.mm(), name, placed.where());
    }

    /** The shift of a transform is in the unit of the model that places. */
    private Transform inRootUnit(Transform t, String placingPath) {
        double scale = model(placingPath).unit().mm() / unit.mm();
        return scale == 1 ? t : new Transform(t.a(), t.b(), t.c(), t.shift().times(scale));
    }

    private void mesh(ThreeMfModel.ModelObject o, Transform t, double scale, String name, String where) {
        guard.at("placing objects", 0.4);
        facets += o.tri.count() / 3;
        guard.facets(facets, where);
        FacetCollector c = new FacetCollector(guard);
        int[] fresh = new int[o.xyz.count() / 3];
        for (int v = 0; v < fresh.length; v++) {
            Vec3 p = new Vec3(o.xyz.get(3 * v), o.xyz.get(3 * v + 1), o.xyz.get(3 * v + 2));
            if (scale != 1) p = p.times(scale);
            if (!t.equals(Transform.IDENTITY)) p = t.apply(p);
            fresh[v] = c.vertex(p.x(), p.y(), p.z());
        }
        boolean mirrored = t.determinant() < 0;
        for (int i = 0; i < o.tri.count(); i += 3) {
            int a = fresh[o.tri.get(i)], b = fresh[o.tri.get(i + 1)], d = fresh[o.tri.get(i + 2)], n = i / 3 + 1;
            c.facet(a, mirrored ? d : b, mirrored ? b : d, () -> where + ", triangle " + n);
        }
        out.add(c.finish(name));
    }

    /** Part names are compared without their leading slash, in lower case, with percent signs read. */
    private static String key(String name) {
        String s = name.replace('\\', '/');
        while (s.startsWith("/")) s = s.substring(1);
        if (s.indexOf('%') >= 0 && s.indexOf('+') < 0) {
            try {
                s = URLDecoder.decode(s, StandardCharsets.UTF_8);
            } catch (IllegalArgumentException e) {
                return s.toLowerCase(Locale.ROOT); // a stray percent sign stands for itself
            }
        }
        return s.toLowerCase(Locale.ROOT);
    }
}
