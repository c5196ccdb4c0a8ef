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
        return number + ". **" + f.severity().word() + "** " + String.join("  \n   ", lines(f, show, "*")) + "\n";
    }

    /** What a finding says, where and what cures it; the words before a cure set between marks. */
    static List<String> lines(Finding f, Numbers show, String mark) {
        List<String> lines = new ArrayList<>(List.of(f.text()));
        String measured = measured(f, show), at = f.atMm() == null ? "" : "At " + show.place(f.atMm()) + ".";
        if (!measured.isEmpty() || !at.isEmpty()) lines.add((measured + " " + at).strip());
        String cure = cure("Smallest change:", f.remedy(), mark)
                + cure("", f.sizeEffect(), "")
                + cure("Saves:", f.saves(), mark);
        if (!cure.isEmpty()) lines.add(cure.strip());
        lines.replaceAll(show::sentence);
        return lines;
    }

    private static String cure(String name, String text, String mark) {
        return text.isEmpty() ? "" : " " + (mark + name + mark + " " + sentence(text)).strip();
    }

    /** Has … asked …, with the source of the limit. */
    static String measured(Finding f, Numbers show) {
        if (f.value() == null) return "";
        String value = show.value(f.value(), f.unit()), from = f.source() == null ? "." : " (" + f.source() + ").";
        if (f.limit() == null) return "Has " + value + from;
        String limit = show.value(f.limit(), f.unit());
        if (value.equals(limit)) return "At the limit of " + limit + from;
        boolean none = f.limit() == 0 && f.unit().equals("mm²");
        return "Has " + value + (none ? ", should have none" : ", limit " + limit) + from;
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
