package shotwright.machining.gcode;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/** The G and M words that are read, by modal group as in NISTIR 6556 (table from memory), and why others are not. */
final class Codes {
    private static final Map<String, String> GROUP = new HashMap<>();
    private static final Map<String, String> REFUSED = new HashMap<>();

    static {
        group("motion", "G0 G1 G2 G3 G73 G80 G81 G82 G83");
        group("plane", "G17");
        group("units", "G20 G21");
        group("distance", "G90 G91");
        group("arc centre", "G91.1");
        group("feed", "G94");
        group("radius compensation", "G40");
        group("length compensation", "G43 G49");
        group("return", "G98 G99");
        group("work offset", "G54 G55 G56 G57 G58 G59");
        group("following", "G61 G61.1 G64");
        group("one line only", "G4 G53");
        group("stop", "M0 M1 M2 M30");
        group("spindle", "M3 M5");
        group("tool", "M6");
        group("coolant", "M7 M8 M9");
        group("overrides", "M48");
        String compensation = "write the path of the cutter's middle; cutter radius compensation is not read";
        REFUSED.put("G41", compensation);
        REFUSED.put("G42", compensation);
        REFUSED.put("G28", "use G53 G0 Z0. or a plain Z: the way through the middle point is not known");
        REFUSED.put("G30", "use G53 G0 Z0. or a plain Z: the way through the middle point is not known");
        REFUSED.put("G18", "use G17: only arcs seen from above are read");
        REFUSED.put("G19", "use G17: only arcs seen from above are read");
        REFUSED.put("G10", "set offsets at the control, not in the program");
        REFUSED.put("G92", "set offsets at the control, not in the program");
        REFUSED.put("G52", "set offsets at the control, not in the program");
        REFUSED.put("G90.1", "write arc centres from the start of the arc");
        REFUSED.put("G93", "write feeds per minute, G94");
        REFUSED.put("G95", "write feeds per minute, G94");
        REFUSED.put("G84", "tap by hand or on a machine that can");
        REFUSED.put("G70", "write G20 for inches");
        REFUSED.put("G71", "write G21 for millimetres");
        REFUSED.put("M4", "use M3: the cutters on the rack cut with the spindle turning right");
        REFUSED.put("M98", "write the moves out; calls of other programs are not read");
        REFUSED.put("M99", "write the moves out; calls of other programs are not read");
    }

    private Codes() {}

    private static void group(String name, String codes) {
        for (String code : codes.split(" ")) GROUP.put(code, name);
    }

    /** The G and M words of a line. @throws GcodeException for one that is not read, or two that contradict each other */
    static List<String> of(Block block) {
        List<String> codes = new ArrayList<>();
        Map<String, String> seen = new HashMap<>();
        for (Block.Word w : block.words()) {
            if (w.letter() != 'G' && w.letter() != 'M') continue;
            String code = w.code();
            String group = GROUP.get(code);
            if (group == null)
                throw block.at()
                        .fault(
                                code + " is not read",
                                REFUSED.getOrDefault(code, "leave it out or write " + "the moves it stands for"));
            String other = seen.put(group, code);
            boolean bothCoolants = group.equals("coolant") && !code.equals("M9") && !"M9".equals(other);
            if (other != null && !bothCoolants)
                throw block.at().fault(other + " and " + code + " contradict each other", "keep one of them in a line");
            codes.add(code);
        }
        return codes;
    }

    static boolean isMotion(String code) {
        return "motion".equals(GROUP.get(code));
    }
}
