package shotwright.report;

import java.util.List;
import shotwright.measure.InchSentence;
import shotwright.sheet.PressSheet;

/** The press sheet as Markdown, boxes to tick and lines to write on. */
public final class PressSheetPage {
    private PressSheetPage() {}

    public static String text(PressSheet s, boolean inch) {
        Numbers show = inch ? Numbers.inch() : Numbers.metric();
        StringBuilder p = new StringBuilder();
        p.append("# Press sheet\n\n")
                .append(InchSentence.name(s.title()))
                .append("\n\n| set | value | not past | from |\n|---|---|---|---|\n");
        s.settings().forEach(x -> p.append("| ")
                .append(x.name())
                .append(" | ")
                .append(x.value())
                .append(" | ")
                .append(x.notPast())
                .append(" | ")
                .append(x.source())
                .append(" |\n"));
        list(p, "Cautions", s.cautions(), "- ");
        list(p, "Start-up", s.steps(), "1. ");
        list(p, "First shots", s.firstShots(), "- ");
        list(p, "Purge and change-over", s.purge(), "- ");
        p.append("\n## As run\n\n| | shot 1 | shot 5 | shot 10 | settled |\n|---|---|---|---|---|\n");
        for (String row : List.of(
                inch ? "melt, °F" : "melt, °C",
                inch ? "mold A / B, °F" : "mold A / B, °C",
                "fill, s",
                inch ? "hold, psi / s" : "hold, MPa / s",
                "cooling, s",
                "shot, g",
                "seen")) p.append("| ").append(row).append(" | | | | |\n");
        return show.sentence(p.toString());
    }

    private static void list(StringBuilder p, String title, List<String> items, String mark) {
        if (items.isEmpty()) return;
        p.append("\n## ").append(title).append("\n\n");
        items.forEach(i -> p.append(mark).append(i).append('\n'));
    }
}
