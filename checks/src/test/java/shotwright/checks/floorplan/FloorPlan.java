package shotwright.checks.floorplan;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** The floor plan drawn in {@code docs/packages.puml}: boxes with their package, and the arrows that are allowed. */
final class FloorPlan {
    private static final Pattern BOX = Pattern.compile("^\\[(\\w+)]\\s+<<([\\w.]+)\\.\\.>>$");
    private static final Pattern ARROW = Pattern.compile("^\\[(\\w+)] --> \\[(\\w+)]$");
    private final Map<String, String> packageOfBox = new LinkedHashMap<>();
    private final Map<String, Set<String>> arrows = new LinkedHashMap<>();

    static FloorPlan read(Path puml) throws IOException {
        FloorPlan plan = new FloorPlan();
        for (String line : Files.readAllLines(puml)) {
            Matcher box = BOX.matcher(line), arrow = ARROW.matcher(line);
            if (box.matches()) plan.packageOfBox.put(box.group(1), box.group(2));
            if (arrow.matches())
                plan.arrows
                        .computeIfAbsent(arrow.group(1), k -> new TreeSet<>())
                        .add(arrow.group(2));
        }
        return plan;
    }

    Set<String> boxes() {
        return packageOfBox.keySet();
    }

    Map<String, Set<String>> arrows() {
        return arrows;
    }

    /** The box a package lies in: the one with the longest matching name. */
    Optional<String> boxOf(String packageName) {
        String best = null;
        for (Map.Entry<String, String> e : packageOfBox.entrySet()) {
            String p = e.getValue();
            boolean inside = packageName.equals(p) || packageName.startsWith(p + ".");
            if (inside && (best == null || p.length() > packageOfBox.get(best).length())) best = e.getKey();
        }
        return Optional.ofNullable(best);
    }

    boolean allows(String from, String to) {
        return from.equals(to) || arrows.getOrDefault(from, Set.of()).contains(to);
    }

    /** Boxes that lie on a circle of arrows; empty when all arrows point down. */
    List<String> onCircle() {
        Map<String, Set<String>> left = new LinkedHashMap<>();
        for (String b : boxes()) left.put(b, new TreeSet<>(arrows.getOrDefault(b, Set.of())));
        boolean took = true;
        while (took) {
            List<String> free = new ArrayList<>();
            for (Map.Entry<String, Set<String>> e : left.entrySet()) {
                if (e.getValue().isEmpty()) free.add(e.getKey());
            }
            took = !free.isEmpty();
            free.forEach(left::remove);
            left.values().forEach(to -> to.removeAll(free));
        }
        return List.copyOf(left.keySet());
    }
}
