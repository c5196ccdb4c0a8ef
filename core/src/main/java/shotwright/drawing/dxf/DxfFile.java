package shotwright.drawing.dxf;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import shotwright.drawing.Contour;
import shotwright.geom.Vec2;

/** One drawing, filled entity by entity and then written. Lengths in mm. The same drawing gives the same text. */
public final class DxfFile {
    /** Decimals of a coordinate: a hundred-thousandth of a millimetre. */
    private static final int DECIMALS = 5;

    private interface Entity {
        void write(Groups g);
    }

    private final Map<String, DxfLayer> layers = new LinkedHashMap<>();
    private final List<Entity> entities = new ArrayList<>();
    private Vec2 low = new Vec2(Double.MAX_VALUE, Double.MAX_VALUE);
    private Vec2 high = new Vec2(-Double.MAX_VALUE, -Double.MAX_VALUE);

    /** A closed outline; one circle when it is one. */
    public DxfFile contour(DxfLayer layer, Contour c) {
        if (c.circle().isPresent())
            return circle(layer, c.circle().get().centre(), c.circle().get().radius());
        c.corners().forEach(k -> take(k.at(), 0));
        return add(layer, "LWPOLYLINE", "AcDbPolyline", g -> {
            g.put(90, c.corners().size()).put(70, 1);
            for (Contour.Corner k : c.corners()) {
                g.put(10, k.at().x()).put(20, k.at().y());
                if (k.bulge() != 0) g.exact(42, k.bulge());
            }
        });
    }

    public DxfFile circle(DxfLayer layer, Vec2 centre, double radius) {
        take(centre, radius);
        return add(layer, "CIRCLE", "AcDbCircle", g -> g.point(10, centre).put(40, radius));
    }

    public DxfFile line(DxfLayer layer, Vec2 from, Vec2 to) {
        take(from, 0);
        take(to, 0);
        return add(layer, "LINE", "AcDbLine", g -> g.point(10, from).point(11, to));
    }

    /** A line of words that begins at a point. */
    public DxfFile text(DxfLayer layer, Vec2 at, double height, String words) {
        take(at, 0);
        return add(layer, "TEXT", "AcDbText", g -> g.point(10, at)
                .put(40, height)
                .put(1, ascii(words))
                .put(100, "AcDbText"));
    }

    private DxfFile add(DxfLayer layer, String kind, String subclass, Entity rest) {
        layers.putIfAbsent(layer.name(), layer);
        entities.add(g -> {
            g.put(0, kind)
                    .handle()
                    .put(330, Groups.MODEL)
                    .put(100, "AcDbEntity")
                    .put(8, layer.name());
            g.put(100, subclass);
            rest.write(g);
        });
        return this;
    }

    private void take(Vec2 p, double round) {
        low = new Vec2(Math.min(low.x(), p.x() - round), Math.min(low.y(), p.y() - round));
        high = new Vec2(Math.max(high.x(), p.x() + round), Math.max(high.y(), p.y() + round));
    }

    /** What is outside ASCII goes by its number. */
    private static String ascii(String words) {
        StringBuilder b = new StringBuilder();
        for (char c : words.toCharArray()) {
            if (c >= ' ' && c <= '~') b.append(c);
            else b.append(String.format(Locale.ROOT, "\\U+%04X", (int) c));
        }
        return b.toString();
    }

    /** The whole file; ASCII. */
    public String text() {
        Groups body = new Groups();
        body.section("CLASSES").end();
        tables(body);
        blocks(body);
        body.section("ENTITIES");
        entities.forEach(e -> e.write(body));
        body.end();
        objects(body);
        return head(body.next()) + body.put(0, "EOF");
    }

    private String head(String nextHandle) {
        Vec2 from = entities.isEmpty() ? Vec2.ZERO : low, to = entities.isEmpty() ? Vec2.ZERO : high;
        Groups g = new Groups().section("HEADER");
        g.put(9, "$ACADVER").put(1, "AC1015");
        g.put(9, "$DWGCODEPAGE").put(3, "ANSI_1252");
        g.put(9, "$INSUNITS").put(70, 4);
        g.put(9, "$MEASUREMENT").put(70, 1);
        g.put(9, "$EXTMIN").point(10, from).put(9, "$EXTMAX").point(10, to);
        g.put(9, "$LIMMIN").put(10, from.x()).put(20, from.y());
        g.put(9, "$LIMMAX").put(10, to.x()).put(20, to.y());
        g.put(9, "$HANDSEED").put(5, nextHandle);
        return g.end().toString();
    }

    private void tables(Groups g) {
        g.section("TABLES");
        g.table("VPORT", 0).endTable();
        g.table("LTYPE", 2 + DxfLayer.Line.values().length);
        lineType(g, "ByBlock", "");
        lineType(g, "ByLayer", "");
        for (DxfLayer.Line l : DxfLayer.Line.values()) lineType(g, l.word, l.words, l.dashesMm);
        g.endTable();
        g.table("LAYER", 1 + layers.size());
        layer(g, "0", 7, DxfLayer.Line.CONTINUOUS);
        layers.values().forEach(l -> layer(g, l.name(), l.colour(), l.line()));
        g.endTable();
        g.table("STYLE", 1);
        g.record("STYLE", "AcDbTextStyleTableRecord", "Standard");
        g.put(40, 0).put(41, 1).put(50, 0).put(71, 0).put(42, 2.5).put(3, "txt").put(4, "");
        g.endTable();
        g.table("VIEW", 0).endTable().table("UCS", 0).endTable();
        g.table("APPID", 1).record("APPID", "AcDbRegAppTableRecord", "ACAD").endTable();
        g.table("DIMSTYLE", 0).put(100, "AcDbDimStyleTable").put(71, 0).endTable();
        g.table("BLOCK_RECORD", 2);
        g.spaceRecord("*Model_Space", Groups.MODEL).spaceRecord("*Paper_Space", Groups.PAPER);
        g.endTable().end();
    }

    private static void lineType(Groups g, String name, String words, double... dashes) {
        double length = 0;
        for (double d : dashes) length += Math.abs(d);
        g.record("LTYPE", "AcDbLinetypeTableRecord", name);
        g.put(3, words).put(72, 65).put(73, dashes.length).put(40, length);
        for (double d : dashes) g.put(49, d).put(74, 0);
    }

    private static void layer(Groups g, String name, int colour, DxfLayer.Line line) {
        g.record("LAYER", "AcDbLayerTableRecord", name)
                .put(62, colour)
                .put(6, line.word)
                .put(390, Groups.PLOT_STYLE);
    }

    private static void blocks(Groups g) {
        g.section("BLOCKS")
                .block("*Model_Space", Groups.MODEL)
                .block("*Paper_Space", Groups.PAPER)
                .end();
    }

    private static void objects(Groups g) {
        g.section("OBJECTS");
        g.put(0, "DICTIONARY")
                .put(5, Groups.ROOT)
                .put(330, "0")
                .put(100, "AcDbDictionary")
                .put(281, 1);
        g.put(3, "ACAD_GROUP")
                .put(350, Groups.GROUPS)
                .put(3, "ACAD_PLOTSTYLENAME")
                .put(350, Groups.PLOT_STYLES);
        g.put(0, "DICTIONARY")
                .put(5, Groups.GROUPS)
                .put(330, Groups.ROOT)
                .put(100, "AcDbDictionary")
                .put(281, 1);
        g.put(0, "ACDBDICTIONARYWDFLT").put(5, Groups.PLOT_STYLES).put(330, Groups.ROOT);
        g.put(100, "AcDbDictionary").put(281, 1).put(3, "Normal").put(350, Groups.PLOT_STYLE);
        g.put(100, "AcDbDictionaryWithDefault").put(340, Groups.PLOT_STYLE);
        g.put(0, "ACDBPLACEHOLDER").put(5, Groups.PLOT_STYLE).put(330, Groups.PLOT_STYLES);
        g.end();
    }

    /** Pairs of a code and a value, one line each. */
    private static final class Groups {
        static final String ROOT = "1", GROUPS = "2", PLOT_STYLES = "3", PLOT_STYLE = "4", MODEL = "5", PAPER = "6";
        private static final int FIRST_FREE = 16;

        private final StringBuilder out = new StringBuilder();
        private int handle = FIRST_FREE;

        Groups put(int code, String value) {
            out.append(String.format(Locale.ROOT, "%3d\n%s\n", code, value));
            return this;
        }

        Groups put(int code, int value) {
            return put(code, Integer.toString(value));
        }

        Groups put(int code, double value) {
            String s = String.format(Locale.ROOT, "%." + DECIMALS + "f", value).replaceFirst("0+$", "");
            if (s.endsWith(".")) s += "0";
            return put(code, s.equals("-0.0") ? "0.0" : s);
        }

        Groups exact(int code, double value) {
            return put(code, String.format(Locale.ROOT, "%.12f", value));
        }

        Groups point(int code, Vec2 p) {
            return put(code, p.x()).put(code + 10, p.y()).put(code + 20, 0.0);
        }

        Groups section(String name) {
            return put(0, "SECTION").put(2, name);
        }

        Groups end() {
            return put(0, "ENDSEC");
        }

        String next() {
            return Integer.toHexString(handle).toUpperCase(Locale.ROOT);
        }

        Groups handle() {
            put(5, next());
            handle++;
            return this;
        }

        Groups table(String name, int count) {
            return put(0, "TABLE")
                    .put(2, name)
                    .handle()
                    .put(330, "0")
                    .put(100, "AcDbSymbolTable")
                    .put(70, count);
        }

        Groups endTable() {
            return put(0, "ENDTAB");
        }

        Groups record(String kind, String subclass, String name) {
            put(0, kind)
                    .handle()
                    .put(330, "0")
                    .put(100, "AcDbSymbolTableRecord")
                    .put(100, subclass);
            return put(2, name).put(70, 0);
        }

        Groups spaceRecord(String name, String own) {
            put(0, "BLOCK_RECORD").put(5, own).put(330, "0").put(100, "AcDbSymbolTableRecord");
            return put(100, "AcDbBlockTableRecord").put(2, name).put(340, "0");
        }

        Groups block(String name, String space) {
            put(0, "BLOCK")
                    .handle()
                    .put(330, space)
                    .put(100, "AcDbEntity")
                    .put(8, "0")
                    .put(100, "AcDbBlockBegin");
            put(2, name).put(70, 0).point(10, Vec2.ZERO).put(3, name).put(1, "");
            return put(0, "ENDBLK")
                    .handle()
                    .put(330, space)
                    .put(100, "AcDbEntity")
                    .put(8, "0")
                    .put(100, "AcDbBlockEnd");
        }

        @Override
        public String toString() {
            return out.toString();
        }
    }
}
