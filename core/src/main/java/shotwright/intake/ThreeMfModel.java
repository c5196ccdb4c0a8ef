package shotwright.intake;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import shotwright.geom.Transform;
import shotwright.geom.Vec3;
import shotwright.measure.LengthUnit;

/** One model entry of a 3MF file: its unit, its objects and, in the root model, what is to be built. */
final class ThreeMfModel {
    private static final String CORE = "http://schemas.microsoft.com/3dmanufacturing/core/";
    static final String PRODUCTION = "http://schemas.microsoft.com/3dmanufacturing/production/2015/06";
    private static final Set<String> SHAPELESS = Set.of(
            PRODUCTION,
            "http://schemas.microsoft.com/3dmanufacturing/material/2015/02",
            "http://schemas.microsoft.com/3dmanufacturing/trianglesets/2021/07");

    /** An object: facets of its own, or other objects placed. */
    static final class ModelObject {
        final String name;
        final String type;
        final Doubles xyz = new Doubles();
        final Ints tri = new Ints();
        final List<Placed> components = new ArrayList<>();

        ModelObject(String name, String type) {
            this.name = name;
            this.type = type;
        }
    }

    /**
     * An object placed.
     *
     * @param path the model entry it stands in; null for the same entry
     * @param id its number there
     * @param transform where it goes, in the unit of the model that places it
     * @param where the place in the file that says so
     */
    record Placed(@Nullable String path, String id, Transform transform, String where) {}

    private final XmlCursor xml;
    private final ReadGuard guard;
    private final Map<String, ModelObject> objects = new HashMap<>();
    private final List<Placed> items = new ArrayList<>();
    private LengthUnit unit = LengthUnit.MM;
    private @Nullable ModelObject open;
    private int elements;

    private ThreeMfModel(XmlCursor xml, ReadGuard guard) {
        this.xml = xml;
        this.guard = guard;
    }

    static ThreeMfModel read(XmlCursor xml, ReadGuard guard) {
        ThreeMfModel m = new ThreeMfModel(xml, guard);
        if (!xml.next() || !xml.name().equals("model") || !xml.namespace().startsWith(CORE))
            throw xml.fault("it does not begin with a 3MF model", "Export the part again as 3MF, or as STL");
        m.header();
        while (xml.next()) {
            if ((m.elements++ & 0xFFFF) == 0) guard.at("reading facets", 0.2);
            if (!xml.namespace().startsWith(CORE)) continue;
            if (xml.starts()) m.start();
            else if (xml.name().equals("object")) m.open = null;
        }
        return m;
    }

    LengthUnit unit() {
        return unit;
    }

    Map<String, ModelObject> objects() {
        return objects;
    }

    List<Placed> items() {
        return items;
    }

    private void header() {
        String u = xml.attribute("unit");
        if (u != null) {
            unit = switch (u) {
                case "micron" -> LengthUnit.MICRON;
                case "millimeter" -> LengthUnit.MM;
                case "centimeter" -> LengthUnit.CM;
                case "inch" -> LengthUnit.IN;
                case "foot" -> LengthUnit.FT;
                case "meter" -> LengthUnit.M;
                default ->
                    throw xml.fault(
                            "the unit \"" + XmlCursor.shortened(u) + "\" is none of those 3MF knows",
                            "Export the part again, or correct the unit to millimeter or inch");
            };
        }
        String extensions = xml.attribute("requiredextensions");
        if (extensions == null) return;
        for (String prefix : extensions.strip().split("\\s+")) {
            String ns = prefix.isEmpty() ? "" : xml.namespaceOf(prefix);
            if (!prefix.isEmpty() && !SHAPELESS.contains(ns))
                throw xml.fault(
                        "the file says it cannot be understood without the extension \"" + XmlCursor.shortened(prefix)
                                + "\" (" + XmlCursor.shortened(ns) + "), which is not read here",
                        "Export the part as a plain mesh");
        }
    }

    private void start() {
        switch (xml.name()) {
            case "object" -> object();
            case "vertex" -> vertex();
            case "triangle" -> triangle();
            case "component" -> {
                if (open != null) open.components.add(placed());
            }
            case "item" -> items.add(placed());
            default -> {}
        }
    }

    private void object() {
        String id = xml.required("id"), name = xml.attribute("name"), type = xml.attribute("type");
        ModelObject o = new ModelObject(name == null ? "" : XmlCursor.shortened(name), type == null ? "model" : type);
        if (objects.put(id, o) != null)
            throw xml.fault("two objects carry the number " + XmlCursor.shortened(id), "Export the part again");
        open = o;
    }

    private void vertex() {
        if (open == null) return;
        double x = xml.number("x"), y = xml.number("y"), z = xml.number("z");
        guard.vertices(open.xyz.count() / 3 + 1L, xml.place());
        open.xyz.add(x);
        open.xyz.add(y);
        open.xyz.add(z);
    }

    private void triangle() {
        if (open == null) return;
        guard.facets(open.tri.count() / 3 + 1L, xml.place());
        corner(open, "v1");
        corner(open, "v2");
        corner(open, "v3");
    }

    private void corner(ModelObject o, String name) {
        int v = xml.index(name), known = o.xyz.count() / 3;
        if (v >= known)
            throw xml.fault(
                    "a triangle names vertex " + v + ", but its object has " + known + ", counted from 0",
                    "Export the part again");
        o.tri.add(v);
    }

    private Placed placed() {
        String t = xml.attribute("transform");
        return new Placed(
                xml.attribute(PRODUCTION, "path"),
                xml.required("objectid"),
                t == null ? Transform.IDENTITY : transform(t),
                xml.place());
    }

    /** Twelve numbers, the rows that x, y, z and the shift are multiplied with: x' = x·m00 + y·m10 + z·m20 + m30. */
    private Transform transform(String text) {
        String[] words = XmlCursor.shortened(text).length() < text.length() && text.length() > 4000
                ? new String[0]
                : text.strip().split("\\s+");
        double[] m = new double[12];
        boolean good = words.length == 12;
        for (int i = 0; good && i < 12; i++) {
            try {
                m[i] = DecimalText.parse(words[i]);
                good = Math.abs(m[i]) <= FacetCollector.FARTHEST;
            } catch (NumberFormatException e) {
                good = false;
            }
        }
        if (!good)
            throw xml.fault(
                    "the transform \"" + XmlCursor.shortened(text) + "\" is not twelve usable numbers",
                    "Export the part again");
        return new Transform(
                new Vec3(m[0], m[3], m[6]),
                new Vec3(m[1], m[4], m[7]),
                new Vec3(m[2], m[5], m[8]),
                new Vec3(m[9], m[10], m[11]));
    }
}
