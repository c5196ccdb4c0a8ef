package shotwright.machining.gcode;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import org.jspecify.annotations.Nullable;
import shotwright.geom.Box3;
import shotwright.geom.Vec3;
import shotwright.machining.path.Coolant;
import shotwright.machining.path.Drilling;
import shotwright.machining.path.Dwell;
import shotwright.machining.path.Feed;
import shotwright.machining.path.Line;
import shotwright.machining.path.Move;
import shotwright.machining.path.Operation;
import shotwright.machining.path.Program;
import shotwright.machining.path.Rapid;
import shotwright.machining.path.WorkOffset;
import shotwright.measure.Units;

/** What a control knows while it runs a program, and the operations it has run so far. */
final class Control {
    private static final String AXES = "XYZ";

    /** No mill this program is for goes so far. */
    private static final double FAR_MM = 1e5;

    /** With what an operation cuts. */
    private record Setting(double speedRpm, Coolant coolant) {}

    private final Dialect.DwellUnit dwellUnit;
    private final double topZMm;
    private final List<Operation> operations = new ArrayList<>();
    private final List<int[]> lines = new ArrayList<>();
    private final List<Move> moves = new ArrayList<>();
    private final List<Integer> moveLines = new ArrayList<>();
    private final Set<Character> used = new TreeSet<>();

    private double unitMm = 1;
    private boolean incremental;
    private Vec3 tip;
    private String motion = "";
    private double feedMmPerMin;
    private double speedRpm;
    private boolean turning;
    private boolean mist;
    private boolean flood;
    private int chosen = -1;
    private int tool;
    private boolean toRetract;
    private double heldZMm;
    private double retractZMm = Double.NaN;
    private double bottomZMm = Double.NaN;
    private double peckMm = Double.NaN;
    private double cycleDwellS = Double.NaN;
    private @Nullable WorkOffset offset;
    private String title = "";
    private String words = "";
    private boolean named;
    private @Nullable Setting setting;
    private double highestZMm = Double.NEGATIVE_INFINITY;
    private boolean ended;

    Control(Dialect.DwellUnit dwellUnit, double topZMm) {
        this.dwellUnit = dwellUnit;
        this.topZMm = topZMm;
        tip = new Vec3(0, 0, topZMm);
    }

    boolean ended() {
        return ended;
    }

    /** Runs a line in the order of RS274/NGC: feed, speed, tool, spindle, coolant, dwell, settings, motion, stop. */
    void run(Block block) {
        for (String comment : block.comments()) hear(comment);
        if (block.words().isEmpty()) return;
        used.clear();
        used.add('G');
        used.add('M');
        List<String> codes = Codes.of(block);
        setUnits(codes);
        numbers(block);
        toolWords(block, codes);
        spindleAndCoolant(codes);
        settings(block, codes);
        boolean moved = codes.contains("G4") && dwell(block);
        if (codes.contains("G53")) machineTop(block, codes);
        else if (!moved) motion(block, codes);
        for (Block.Word w : block.words())
            if (!used.contains(w.letter()))
                throw block.at().fault(w + " belongs to no word of this line", axisRemedy(w.letter()));
        stop(codes);
    }

    private static String axisRemedy(char letter) {
        return "ABCUVW".indexOf(letter) >= 0
                ? "only X, Y and Z are read"
                : "take it out, or add the G or M word it was meant for";
    }

    private void hear(String comment) {
        if (comment.isBlank()) return;
        if (title.isEmpty()) title = comment;
        boolean names = comment.startsWith("OP ");
        if (names) close();
        if (names || !named && moves.isEmpty()) words = comment.replaceFirst("^OP \\d+: *", "");
        named |= names;
    }

    private void setUnits(List<String> codes) {
        if (codes.contains("G20")) unitMm = Units.MM_PER_IN;
        if (codes.contains("G21")) unitMm = 1;
    }

    private void numbers(Block block) {
        if (block.has('F')) {
            double f = block.number('F', "the feed");
            if (f < 0) throw block.at().fault("the feed is below zero", "write a feed above zero");
            feedMmPerMin = f * unitMm;
            used.add('F');
        }
        if (block.has('S')) {
            double s = block.number('S', "the speed");
            if (s < 0) throw block.at().fault("the speed is below zero", "write a speed of zero or more");
            speedRpm = s;
            used.add('S');
        }
    }

    private void toolWords(Block block, List<String> codes) {
        if (block.has('T')) {
            chosen = block.whole('T', "the number of the cutter");
            used.add('T');
        }
        if (codes.contains("M6")) {
            if (chosen < 0) throw block.at().fault("M6 changes to no cutter", "write T and the number before it");
            changeTo(chosen);
            turning = false;
        }
    }

    private void changeTo(int number) {
        close();
        tool = number;
        chosen = -1;
    }

    private void spindleAndCoolant(List<String> codes) {
        turning = (turning || codes.contains("M3")) && !codes.contains("M5");
        mist = (mist || codes.contains("M7")) && !codes.contains("M9");
        flood = (flood || codes.contains("M8")) && !codes.contains("M9");
    }

    private void settings(Block block, List<String> codes) {
        for (String code : codes) {
            switch (code) {
                case "G90" -> incremental = false;
                case "G91" -> incremental = true;
                case "G98" -> toRetract = false;
                case "G99" -> toRetract = true;
                case "G43" -> lengthCompensation(block);
                case "G64" -> {
                    used.add('P');
                    used.add('Q');
                }
                case "G54", "G55", "G56", "G57", "G58", "G59" -> workOffset(block, WorkOffset.valueOf(code));
                default -> {}
            }
        }
    }

    private void lengthCompensation(Block block) {
        int h = block.whole('H', "the number of the cutter");
        used.add('H');
        if (h != tool)
            throw block.at()
                    .fault(
                            "H" + h + " is the length of another cutter than T" + tool + " in the spindle",
                            "write H" + tool);
    }

    private void workOffset(Block block, WorkOffset named) {
        if (offset != null && offset != named)
            throw block.at()
                    .fault(
                            "the work offset changes from " + offset + " to " + named,
                            "write one program for each clamping: how the two lie to each other is not known");
        offset = named;
    }

    private boolean dwell(Block block) {
        double p = block.number('P', "the time to wait");
        used.add('P');
        if (p < 0) throw block.at().fault("the dwell is below zero", "write a time of zero or more");
        add(block, new Dwell(tip, dwellS(p)));
        return true;
    }

    private double dwellS(double p) {
        return dwellUnit == Dialect.DwellUnit.SECONDS ? p : p / 1000;
    }

    private void machineTop(Block block, List<String> codes) {
        boolean zOnly = block.has('Z') && !block.has('X') && !block.has('Y') && block.number('Z', "") == 0;
        boolean rapid =
                codes.contains("G0") || motion.equals("G0") && codes.stream().noneMatch(Codes::isMotion);
        if (!zOnly || !rapid || incremental)
            throw block.at()
                    .fault(
                            "G53 is read as G53 G0 Z0. only, up to the top of the machine",
                            "where else the machine stands is not known: write places of the work offset");
        used.add('Z');
        motion = "G0";
        add(block, new Rapid(tip, new Vec3(tip.x(), tip.y(), Math.max(topZMm, tip.z()))));
    }

    private boolean anyAxis(Block block) {
        return AXES.chars().anyMatch(a -> block.has((char) a));
    }

    private void motion(Block block, List<String> codes) {
        String named = codes.stream().filter(Codes::isMotion).findFirst().orElse("");
        boolean axes = anyAxis(block);
        if (!named.isEmpty()) {
            if (named.equals("G80") && axes)
                throw block.at().fault("G80 moves nothing, but a place is given", "write G0 or G1 with the place");
            boolean cycle = isCycle(named);
            if (cycle && !named.equals(motion)) startCycle();
            motion = named.equals("G80") ? "" : named;
        }
        if (!axes && !block.has('I') && !block.has('J') && !block.has('R')) {
            if (isCycle(named)) throw block.at().fault(named + " has no place", "add X and Y of the hole");
            return;
        }
        switch (motion) {
            case "" -> {
                if (axes) throw block.at().fault("a place is given, but no word says how to go there", "add G0 or G1");
            }
            case "G0" -> add(block, new Rapid(tip, target(block)));
            case "G1" -> add(block, new Line(tip, target(block), feed(block)));
            case "G2", "G3" -> {
                Vec3 to = target(block);
                add(block, ArcWords.arc(block, tip, to, unitMm, motion.equals("G3"), feed(block)));
                used.addAll(List.of('I', 'J', 'R'));
                if (block.has('P') && block.number('P', "") == 1) used.add('P');
            }
            default -> drill(block);
        }
    }

    private static boolean isCycle(String code) {
        return code.equals("G73") || code.startsWith("G8") && !code.equals("G80");
    }

    private double feed(Block block) {
        if (!(feedMmPerMin > 0)) throw block.at().fault("it cuts without a feed", "add F with a feed above zero");
        return feedMmPerMin;
    }

    private double axis(Block block, char letter, double now) {
        Block.Word w = block.word(letter);
        if (w == null) return now;
        used.add(letter);
        return incremental ? now + w.number() * unitMm : w.number() * unitMm;
    }

    private Vec3 target(Block block) {
        return new Vec3(axis(block, 'X', tip.x()), axis(block, 'Y', tip.y()), axis(block, 'Z', tip.z()));
    }

    private void startCycle() {
        heldZMm = tip.z();
        retractZMm = bottomZMm = peckMm = cycleDwellS = Double.NaN;
    }

    private void drill(Block block) {
        if (incremental)
            throw block.at().fault("a drilling cycle in steps, G91", "write its places from the zero, G90");
        Drilling.Kind kind = kind(motion);
        double xMm = axis(block, 'X', tip.x()), yMm = axis(block, 'Y', tip.y());
        bottomZMm = kept(block, 'Z', bottomZMm, unitMm, "the depth");
        retractZMm = kept(block, 'R', retractZMm, unitMm, "the height just above the metal");
        if (kind.pecks()) {
            peckMm = kept(block, 'Q', peckMm, unitMm, "how deep each peck goes");
            if (!(peckMm > 0)) throw block.at().fault("the peck is not above zero", "write Q above zero");
        }
        if (kind == Drilling.Kind.SPOT)
            cycleDwellS = kept(block, 'P', cycleDwellS, dwellS(1), "the time at the bottom");
        if (retractZMm < bottomZMm)
            throw block.at().fault("R lies below the depth Z", "write R above Z, just over the metal");
        double dwellS = kind == Drilling.Kind.SPOT ? cycleDwellS : 0, qMm = kind.pecks() ? peckMm : 0;
        if (dwellS < 0) throw block.at().fault("the dwell is below zero", "write a time of zero or more");
        Vec3 at = new Vec3(xMm, yMm, 0);
        add(block, new Drilling(kind, tip, at.xy(), retractZMm, bottomZMm, qMm, dwellS, toRetract, feed(block)));
        if (!toRetract && heldZMm > tip.z()) add(block, new Rapid(tip, new Vec3(xMm, yMm, heldZMm)));
    }

    private double kept(Block block, char letter, double before, double factor, String whatFor) {
        if (!block.has(letter) && !Double.isNaN(before)) return before;
        used.add(letter);
        return block.number(letter, whatFor) * factor;
    }

    private static Drilling.Kind kind(String code) {
        for (Drilling.Kind k : Drilling.Kind.values()) if (code.equals("G" + k.code())) return k;
        throw new IllegalStateException(code + " is no drilling cycle");
    }

    private void add(Block block, Move m) {
        if (!(m.from().distance(m.to()) <= FAR_MM))
            throw block.at().fault("the place is farther away than any mill goes", "check the number and its point");
        if (m instanceof Feed || m instanceof Drilling) {
            Setting now = now();
            if (setting != null && !setting.equals(now)) close();
            setting = now;
        }
        if (m.to().z() < topZMm) highestZMm = Math.max(highestZMm, m.to().z());
        moves.add(m);
        moveLines.add(block.at().line());
        tip = m.to();
    }

    private Setting now() {
        Coolant coolant = flood ? Coolant.FLOOD : mist ? Coolant.MIST : Coolant.OFF;
        return new Setting(turning ? speedRpm : 0, coolant);
    }

    private void stop(List<String> codes) {
        boolean pause = codes.contains("M0") || codes.contains("M1");
        if (pause && chosen >= 0 && chosen != tool) changeTo(chosen);
        ended = codes.contains("M30") || codes.contains("M2");
    }

    /** Ends the operation under way; the next one has other words, cutter, speed or coolant. */
    private void close() {
        if (moves.isEmpty()) return;
        String say = words.isBlank() ? "T" + tool : words;
        Setting with = setting == null ? now() : setting;
        operations.add(
                new Operation(operations.size() + 1, say, tool, "T" + tool, 0, with.speedRpm, with.coolant, moves));
        lines.add(moveLines.stream().mapToInt(Integer::intValue).toArray());
        moves.clear();
        moveLines.clear();
        setting = null;
    }

    Listing listing(Block.Place end, Box3 stock) {
        close();
        if (operations.isEmpty()) throw end.fault("the program moves nothing", "check that it is the right file");
        double clearanceZMm = Math.max(Math.nextUp(stock.max().z()), highestZMm);
        WorkOffset in = offset == null ? WorkOffset.G54 : offset;
        String name = title.isBlank() ? end.file() : title;
        return new Listing(new Program(name, in, stock, clearanceZMm, operations), lines);
    }
}
