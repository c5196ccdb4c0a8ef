package shotwright.machining.plan;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Sentences that differ in the number of a thing only, told once: “ream pin 1, 2, 3 …”. */
final class Alike {
    private static final Pattern NUMBER = Pattern.compile("(?<=\\p{L} )\\d+(?![\\d.])");

    private Alike() {}

    static List<String> together(List<String> sentences) {
        Map<String, List<String>> numbers = new LinkedHashMap<>();
        for (String s : sentences) {
            Matcher m = NUMBER.matcher(s);
            List<String> of = numbers.computeIfAbsent(m.replaceFirst("#"), k -> new ArrayList<>());
            if (m.reset().find()) of.add(m.group());
        }
        List<String> out = new ArrayList<>();
        numbers.forEach((s, of) -> out.add(of.isEmpty() ? s : s.replaceFirst("#", String.join(", ", of))));
        return out;
    }
}
