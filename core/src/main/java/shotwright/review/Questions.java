package shotwright.review;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import shotwright.finding.Finding;
import shotwright.finding.Severity;
import shotwright.geom.Vec3;
import shotwright.part.Part;

/** What to ask the customer before metal is cut: what every job needs, then what this part's findings leave open. */
final class Questions {
    private static final int MOST = 10;

    private Questions() {}

    static List<String> of(Part part, boolean resinChosen, PullChoice pull, List<Finding> findings) {
        List<String> all = new ArrayList<>();
        Vec3 size = part.box().size();
        all.add("Is " + Say.number(size.x(), 2) + " × " + Say.number(size.y(), 2) + " × " + Say.number(size.z(), 2)
                + " mm the size you expect?");
        all.add(resinChosen ? "Which colour, and which grade of the resin?" : "Which resin, and which colour?");
        all.add("How many parts at first, and how many a year?");
        all.add("Which faces show, and where must there be no gate mark?");
        all.add("Which sizes must hold a tolerance, and what do they fit?");
        if (!pull.given()) all.add("The mold opens " + pull.words() + ": may the parting line show there?");
        findings.stream()
                .filter(f -> f.severity() == Severity.STOP || f.severity() == Severity.ASK)
                .limit(MOST)
                .forEach(f -> all.add(question(f)));
        return all;
    }

    private static String question(Finding f) {
        String change = f.remedy().replaceAll("; or leave the drawing.*", "").replaceAll("\\.$", "");
        Vec3 p = f.atMm();
        String where = p == null
                ? ""
                : " (near x " + Say.number(p.x(), 1) + ", y " + Say.number(p.y(), 1) + ", z " + Say.number(p.z(), 1)
                        + " mm)";
        String ask =
                change.isEmpty() ? "May we change the part there?" : "May we change the part: " + lower(change) + "?";
        return f.text() + where + " " + ask;
    }

    private static String lower(String s) {
        return s.substring(0, 1).toLowerCase(Locale.ROOT) + s.substring(1);
    }
}
