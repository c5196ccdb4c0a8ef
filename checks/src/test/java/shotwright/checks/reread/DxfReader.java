package shotwright.checks.reread;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;

/**
 * Reads a drawing exchange file strictly: pairs of group code and value, five sections and no more, every layer and line type declared before
 * it is used, every handle once. Written apart from the writer, after the published reference of the format.
 */
final class DxfReader {
    /** A group code and its value. */
    private record Group(int code, String value) {}

    /** An entity with its groups in order. */
    record Entity(
            String kind,
            String layer,
            List<Double> x,
            List<Double> y,
            List<Double> bulge,
            double radius,
            boolean closed) {
        /** Area inside a closed outline, each arc walked in a thousand steps. */
        double areaMm2() {
            double sum = 0;
            for (int i = 0; i < x.size(); i++) {
                int j = (i + 1) % x.size();
                double px = x.get(i), py = y.get(i), qx = x.get(j), qy = y.get(j);
                int steps = bulge.get(i) == 0 ? 1 : 1000;
                double lastX = px, lastY = py;
                for (int k = 1; k <= steps; k++) {
                    double[] p = bulge.get(i) == 0
                            ? new double[] {qx, qy}
                            : on(px, py, qx, qy, bulge.get(i), (double) k / steps);
                    sum += (lastX * p[1] - p[0] * lastY) / 2;
                    lastX = p[0];
                    lastY = p[1];
                }
            }
            return Math.abs(sum);
        }

        /** A point of the arc whose quarter angle has the tangent b: on the circle through both ends, seen from its middle. */
        private static double[] on(double px, double py, double qx, double qy, double b, double share) {
            double half = 2 * Math.atan(b), chord = Math.hypot(qx - px, qy - py), r = chord / 2 / Math.sin(half);
            double mx = (px + qx) / 2 - (qy - py) / chord * r * Math.cos(half);
            double my = (py + qy) / 2 + (qx - px) / chord * r * Math.cos(half);
            double from = Math.atan2(py - my, px - mx), a = from + 2 * half * share;
            return new double[] {mx + Math.abs(r) * Math.cos(a), my + Math.abs(r) * Math.sin(a)};
        }
    }

    private final List<Group> groups = new ArrayList<>();
    private final Map<String, String> header = new HashMap<>();
    private final Map<String, Set<String>> tables = new HashMap<>();
    private final List<Entity> entities = new ArrayList<>();

    DxfReader(String text) {
        String[] lines = text.split("\n", -1);
        assertThat(lines.length % 2)
                .as("a code and a value each, and the last line feed")
                .isEqualTo(1);
        for (int i = 0; i + 1 < lines.length; i += 2) {
            assertThat(lines[i]).matches(" *\\d{1,4}");
            assertThat(lines[i + 1]).matches("[ -~]*");
            groups.add(new Group(Integer.parseInt(lines[i].trim()), lines[i + 1]));
        }
        assertThat(groups.getLast()).isEqualTo(new Group(0, "EOF"));
        List<String> names = new ArrayList<>();
        for (int i = 0; i < groups.size() - 1; ) {
            assertThat(groups.get(i)).isEqualTo(new Group(0, "SECTION"));
            String name = groups.get(i + 1).value();
            int end = i + 2;
            while (!groups.get(end).equals(new Group(0, "ENDSEC"))) end++;
            names.add(name);
            section(name, groups.subList(i + 2, end));
            i = end + 1;
        }
        assertThat(names).containsExactly("HEADER", "CLASSES", "TABLES", "BLOCKS", "ENTITIES", "OBJECTS");
        handles();
    }

    private void section(String name, List<Group> body) {
        switch (name) {
            case "HEADER" -> header(body);
            case "TABLES" -> records(body).forEach(this::table);
            case "ENTITIES" -> records(body).forEach(this::entity);
            default -> assertThat(body.stream().filter(g -> g.code() == 999)).isEmpty();
        }
    }

    private void header(List<Group> body) {
        String variable = "";
        for (Group g : body) {
            if (g.code() == 9) variable = g.value();
            else header.put(variable + " " + g.code(), g.value());
        }
    }

    /** Split before every group 0. */
    private static List<List<Group>> records(List<Group> body) {
        List<List<Group>> out = new ArrayList<>();
        for (Group g : body) {
            if (g.code() == 0) out.add(new ArrayList<>());
            out.getLast().add(g);
        }
        return out;
    }

    private void table(List<Group> record) {
        String kind = record.getFirst().value();
        if (kind.equals("TABLE") || kind.equals("ENDTAB")) return;
        tables.computeIfAbsent(kind, k -> new HashSet<>()).add(value(record, 2));
        if (kind.equals("LAYER")) assertThat(tables.get("LTYPE")).contains(value(record, 6));
    }

    private static String value(List<Group> record, int code) {
        return record.stream()
                .filter(g -> g.code() == code)
                .findFirst()
                .orElseThrow()
                .value();
    }

    private void entity(List<Group> record) {
        String kind = record.getFirst().value(), layer = value(record, 8);
        assertThat(tables.get("LAYER")).contains(layer);
        List<Double> x = new ArrayList<>(), y = new ArrayList<>(), bulge = new ArrayList<>();
        double radius = 0;
        boolean closed = false;
        for (Group g : record) {
            switch (g.code()) {
                case 10, 11 -> {
                    x.add(Double.parseDouble(g.value()));
                    bulge.add(0.0);
                }
                case 20, 21 -> y.add(Double.parseDouble(g.value()));
                case 42 -> bulge.set(bulge.size() - 1, Double.parseDouble(g.value()));
                case 40 -> radius = Double.parseDouble(g.value());
                case 70 -> closed = g.value().equals("1");
                case 90 -> assertThat(kind).isEqualTo("LWPOLYLINE");
                default -> assertThat(g.code()).isIn(0, 1, 5, 8, 30, 31, 100, 330);
            }
        }
        if (kind.equals("LWPOLYLINE")) assertThat(x).hasSize(Integer.parseInt(value(record, 90)));
        assertThat(y).hasSameSizeAs(x);
        entities.add(new Entity(kind, layer, x, y, bulge, radius, closed));
    }

    private void handles() {
        Set<String> seen = new HashSet<>();
        for (Group g : groups)
            if (g.code() == 5 && !g.value().equals(header("$HANDSEED", 5)))
                assertThat(seen.add(g.value())).as("handle " + g.value()).isTrue();
        long next = Long.parseLong(header("$HANDSEED", 5), 16);
        assertThat(seen).allMatch(h -> Long.parseLong(h, 16) < next);
        for (Group g : groups)
            if (g.code() == 330 && !g.value().equals("0")) assertThat(seen).contains(g.value());
    }

    String header(String variable, int code) {
        String v = header.get(variable + " " + code);
        assertThat(v).as(variable).isNotNull();
        return v;
    }

    /** Entities of a kind on a layer. */
    List<Entity> on(String layer, String kind) {
        return entities.stream()
                .filter(e -> e.layer().equals(layer) && e.kind().equals(kind))
                .toList();
    }

    List<Entity> all() {
        return List.copyOf(entities);
    }
}
