package shotwright.report;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.json.JsonMapper;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.lang.reflect.InvocationTargetException;
import java.lang.reflect.RecordComponent;
import java.math.BigDecimal;
import java.math.MathContext;
import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import shotwright.cutter.Cutter;
import shotwright.job.JobException;
import shotwright.measure.Quantity;
import shotwright.measure.QuantityRange;
import shotwright.measure.Source;
import shotwright.press.Press;
import shotwright.rack.Rack;
import shotwright.rack.RackException;
import shotwright.resin.Resin;

/** Lists what is on the rack, and one entry with every number, unit and source. */
public final class RackPage {
    private static final JsonMapper JSON = new JsonMapper();

    private RackPage() {}

    /** The word a person types for a kind. */
    public static String word(String kind) {
        return kind.equals("mold-material") ? "material" : kind;
    }

    /** Ids and names; only counts when all kinds are listed. */
    public static String list(List<Rack<?>> racks, boolean whole, boolean json) {
        if (json) {
            ObjectNode n = JSON.createObjectNode();
            racks.forEach(r -> {
                ArrayNode a = n.putArray(word(r.kind()));
                r.ids().forEach(a::add);
            });
            return pretty(n);
        }
        StringBuilder s = new StringBuilder();
        for (Rack<?> r : racks) {
            if (whole) {
                for (Rack.Entry e : r.all())
                    s.append(pad(e.id(), 26)).append(name(e)).append('\n');
            } else {
                s.append(FirstAnswerPage.wrap(
                                pad(word(r.kind()), 10), r.ids().size() + ": " + String.join(", ", r.ids())))
                        .append('\n');
            }
        }
        return s.toString();
    }

    /** One entry. */
    public static String entry(Rack<?> rack, String id, boolean json) {
        Rack.Entry e;
        try {
            e = rack.byId(id);
        } catch (RackException missing) {
            throw new JobException(String.valueOf(missing.getMessage()), missing);
        }
        if (json) return pretty(JSON.valueToTree(e));
        StringBuilder s = new StringBuilder(name(e)).append('\n');
        rows(s, (Record) e, "");
        return s.toString();
    }

    private static void rows(StringBuilder s, Record record, String indent) {
        for (RecordComponent c : record.getClass().getRecordComponents()) {
            Object v = value(record, c);
            if (v == null || indent.isEmpty() && List.of("id", "name").contains(c.getName())) continue;
            String label = pad(indent + words(c.getName()), 28);
            switch (v) {
                case Quantity q ->
                    s.append(label)
                            .append(plain(q.value()))
                            .append(' ')
                            .append(unit(q.unit()))
                            .append("   (")
                            .append(q.source())
                            .append(")\n");
                case QuantityRange q ->
                    s.append(label)
                            .append(q.low() == q.high() ? plain(q.low()) : plain(q.low()) + " to " + plain(q.high()))
                            .append(' ')
                            .append(unit(q.unit()))
                            .append("   (")
                            .append(q.source())
                            .append(")\n");
                case List<?> l -> {
                    if (l.stream().allMatch(x -> x instanceof Double)) {
                        String numbers = l.stream().map(x -> plain((Double) x)).collect(Collectors.joining(", "));
                        s.append(FirstAnswerPage.wrap(label, numbers)).append('\n');
                        continue;
                    }
                    for (Object x : l) {
                        if (x instanceof Record r) {
                            s.append(label.stripTrailing()).append('\n');
                            rows(s, r, indent + "  ");
                        } else {
                            s.append(FirstAnswerPage.wrap(label, String.valueOf(x)))
                                    .append('\n');
                        }
                    }
                }
                case Source source ->
                    s.append(FirstAnswerPage.wrap(label, source.toString())).append('\n');
                case Record r -> {
                    s.append(label.stripTrailing()).append('\n');
                    rows(s, r, indent + "  ");
                }
                case Press.NozzleMeets w -> s.append(label).append(w.words()).append('\n');
                case Press.ClampKind w -> s.append(label).append(w.words()).append('\n');
                case Press.Drive w -> s.append(label).append(w.words()).append('\n');
                case Resin.Kind w -> s.append(label).append(w.words()).append('\n');
                case Resin.BenchtopClass w -> s.append(label).append(w.words()).append('\n');
                case Cutter.Shape w -> s.append(label).append(w.words()).append('\n');
                case Double d -> s.append(label).append(plain(d)).append('\n');
                case Enum<?> en ->
                    s.append(label)
                            .append(en.name().toLowerCase(Locale.ROOT).replace('_', ' '))
                            .append('\n');
                case Boolean b -> s.append(label).append(b ? "yes" : "no").append('\n');
                default ->
                    s.append(FirstAnswerPage.wrap(label, String.valueOf(v))).append('\n');
            }
        }
    }

    private static @Nullable Object value(Record record, RecordComponent c) {
        try {
            return c.getAccessor().invoke(record);
        } catch (IllegalAccessException | InvocationTargetException e) {
            throw new IllegalStateException(e);
        }
    }

    /** {@code nozzleBoreMm} as words, without the unit that stands behind the number. */
    static String words(String component) {
        String t = component.replaceAll(
                "(GPerCm3|Mm2PerS|MmPerS2|MmPerMin|NPerMm2|NPerMm|JPerMm3|MPerMin|UmPerN|Hb|JPerKgK|WPerMK|KjPerKg|ShortTonsPerIn2|Cm3PerS|PerKg|PerH|PerK|PerS|GPs|Mpa|Gpa|Percent|Mm2|Mm|Kn|Nm|Deg|Min|Um|Rpm|C|G|N|W|H|S)$",
                "");
        if (t.isEmpty()) t = component;
        return t.replaceAll("([a-z])([A-Z])", "$1 $2")
                .toLowerCase(Locale.ROOT)
                .replaceAll("\\bdia$", "diameter")
                .replaceAll("^mold min$", "smallest mold")
                .replaceAll("^mold max$", "largest mold");
    }

    /** As it stands in the rack file, without trailing zeros; what was converted there has six figures. */
    private static String plain(double v) {
        return BigDecimal.valueOf(v)
                .round(new MathContext(6))
                .stripTrailingZeros()
                .toPlainString();
    }

    private static String unit(String u) {
        return u.equals("1") ? "" : u;
    }

    private static String name(Rack.Entry e) {
        for (RecordComponent c : e.getClass().getRecordComponents()) {
            if (c.getName().equals("name")) return String.valueOf(value((Record) e, c));
        }
        return e.id();
    }

    private static String pad(String text, int width) {
        return text + " ".repeat(Math.max(1, width - text.length()));
    }

    private static String pretty(Object tree) {
        try {
            return JSON.writerWithDefaultPrettyPrinter().writeValueAsString(tree) + "\n";
        } catch (JsonProcessingException e) {
            throw new IllegalStateException(e);
        }
    }
}
