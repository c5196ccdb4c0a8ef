package shotwright.report;

import java.util.LinkedHashMap;
import java.util.Map;
import shotwright.sizing.CavityRow;
import shotwright.sizing.ClampWay;
import shotwright.sizing.PressVerdict;
import shotwright.sizing.ResinRow;
import shotwright.sizing.SizingResult;
import shotwright.sizing.Verdict;

/** Says the press answer in rows and tables. */
final class SizingText {
    private SizingText() {}

    static Map<String, String> rows(SizingResult s, Numbers show) {
        Map<String, String> rows = new LinkedHashMap<>();
        rows.put("Resin", s.resin().name());
        String reason = s.ours().firstReason();
        rows.put(
                "Press",
                s.press().name()
                        + (s.pressGiven() ? "" : " (the smallest on the rack that serves; name yours with --press)")
                        + ": " + s.ours().verdict().words() + (reason.isEmpty() ? "" : ". " + reason));
        if (s.second() != null) {
            rows.put(
                    "Second press",
                    s.second().press().name() + ": " + s.second().verdict().words()
                            + (s.second().firstReason().isEmpty()
                                    ? ""
                                    : ". " + s.second().firstReason()));
        }
        rows.put(
                "Clamp",
                show.force(s.clampNeededKn()) + " by the rule of "
                        + Numbers.figures(s.clamp().shortTonsPerIn2(), 2) + " short tons per in², " + band(s, show)
                        + " all ways together");
        rows.put(
                "How many up",
                s.cavities()
                        + (s.cavities() == 1 ? " cavity. " : " cavities. ")
                        + s.cavityRows().stream()
                                .filter(CavityRow::chosen)
                                .findFirst()
                                .map(CavityRow::words)
                                .orElse(""));
        rows.put(
                "Shot",
                show.mass(s.shotG()) + " with feed, " + Numbers.percent(s.utilisationShare(), 0)
                        + " of what the press shoots; melt stays about " + Numbers.time(s.residenceS())
                        + " in the barrel");
        return rows;
    }

    private static String band(SizingResult s, Numbers show) {
        return show.force(s.clampBandKn().low()) + " to "
                + show.force(s.clampBandKn().high());
    }

    static String table(SizingResult s, Numbers show) {
        StringBuilder t = new StringBuilder();
        rows(s, show).forEach((name, text) -> t.append("- **")
                .append(name)
                .append(":** ")
                .append(text)
                .append('\n'));
        t.append("\n| clamp by | gives | how | from |\n|---|---|---|---|\n");
        for (ClampWay w : s.clamp().ways()) {
            t.append("| ")
                    .append(w.name())
                    .append(" | ")
                    .append(show.force(w.clampKn().nominal()))
                    .append(" | ")
                    .append(w.words())
                    .append(" | ")
                    .append(w.source())
                    .append(" |\n");
        }
        t.append(
                "\nMold prices are the quote's; the row taken stands on the layout once there is one, the others on an estimated block.\n\n| up | press says | clamp | shot | block | cycle | mold price | each | why |\n|---:|---|---|---|---|---|---:|---:|---|\n");
        for (CavityRow c : s.cavityRows()) {
            String n = c.chosen() ? "**" + c.cavitiesCount() + "**" : String.valueOf(c.cavitiesCount());
            t.append("| ")
                    .append(n)
                    .append(" | ")
                    .append(c.verdict().words())
                    .append(" | ")
                    .append(show.force(c.clampNeededKn()))
                    .append(" | ")
                    .append(show.mass(c.shotG()))
                    .append(" | ")
                    .append(show.face(c.moldWidthMm(), c.moldHeightMm()))
                    .append(" | ")
                    .append(Numbers.time(c.cycleS()))
                    .append(" | ")
                    .append(Numbers.figures(c.moldPrice(), 2))
                    .append(" | ")
                    .append(Numbers.fixed(c.pricePerPart(), 2))
                    .append(" | ")
                    .append(c.words())
                    .append(" |\n");
        }
        t.append("\n| press on the rack | says | first reason |\n|---|---|---|\n");
        for (PressVerdict p : s.presses()) {
            String name = p.press().id().equals(s.press().id())
                    ? "**" + p.press().name() + "**"
                    : p.press().name();
            t.append("| ")
                    .append(name)
                    .append(" | ")
                    .append(p.verdict().words())
                    .append(" | ")
                    .append(p.verdict() == Verdict.FITS ? "" : p.firstReason())
                    .append(" |\n");
        }
        if (!s.resinRows().isEmpty()) {
            t.append(
                    "\n| the same mold in | press says | clamp | shot | size against the first resin | |\n|---|---|---|---|---|---|\n");
            for (ResinRow r : s.resinRows()) {
                String change = (r.sizeChangePercent() > 0 ? "+" : "") + Numbers.fixed(r.sizeChangePercent(), 2) + " %";
                t.append("| ")
                        .append(r.resin().name())
                        .append(" | ")
                        .append(r.verdict().words())
                        .append(" | ")
                        .append(show.force(r.clampNeededKn()))
                        .append(" | ")
                        .append(show.mass(r.shotG()))
                        .append(" | ")
                        .append(change)
                        .append(" | ")
                        .append(r.words())
                        .append(" |\n");
            }
        }
        return t.append('\n').toString();
    }
}
