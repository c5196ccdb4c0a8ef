package shotwright.report;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import shotwright.finding.Finding;
import shotwright.finding.Severity;

/** Sets findings in words: number, weight, what will happen, measured against limit, the smallest change. */
final class FindingText {
    private FindingText() {}

    /** Heaviest first, order kept within a weight. */
    static List<Finding> ordered(List<Finding> findings) {
        List<Finding> out = new ArrayList<>(findings);
        out.sort(Comparator.comparing(Finding::severity));
        return out;
    }

    /** One finding as a Markdown list item. */
    static String item(int number, Finding f, Numbers show) {
        StringBuilder s = new StringBuilder();
        s.append(number)
                .append(". **")
                .append(f.severity().word())
                .append("** ")
                .append(f.text());
        String measured = measured(f, show);
        if (!measured.isEmpty()) s.append("  \n   ").append(measured);
        if (f.atMm() != null)
            s.append(measured.isEmpty() ? "  \n   At " : " At ")
                    .append(show.place(f.atMm()))
                    .append('.');
        if (!f.remedy().isEmpty()) s.append("  \n   *Smallest change:* ").append(sentence(f.remedy()));
        if (!f.sizeEffect().isEmpty()) s.append(' ').append(sentence(f.sizeEffect()));
        if (!f.saves().isEmpty()) s.append(" *Saves:* ").append(sentence(f.saves()));
        return show.sentence(s.append('\n').toString());
    }

    /** Has … asked …, with the source of the limit. */
    static String measured(Finding f, Numbers show) {
        if (f.value() == null) return "";
        String has = "Has " + show.value(f.value(), f.unit());
        if (f.limit() == null) return has + (f.source() == null ? "." : " (" + f.source() + ").");
        if (show.value(f.value(), f.unit()).equals(show.value(f.limit(), f.unit())))
            return "At the limit of " + show.value(f.limit(), f.unit())
                    + (f.source() == null ? "." : " (" + f.source() + ").");
        boolean none = f.limit() == 0 && f.unit().equals("mm²");
        return has
                + (none ? ", should have none" : ", limit " + show.value(f.limit(), f.unit()))
                + (f.source() == null ? "." : " (" + f.source() + ").");
    }

    static long count(List<Finding> findings, Severity severity) {
        return findings.stream().filter(f -> f.severity() == severity).count();
    }

    /** A sentence with a capital and a full stop. */
    static String sentence(String text) {
        String t = text.strip();
        if (t.isEmpty()) return t;
        t = Character.toUpperCase(t.charAt(0)) + t.substring(1);
        char last = t.charAt(t.length() - 1);
        return last == '.' || last == '?' || last == '!' ? t : t + ".";
    }
}
