package shotwright.sheet;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.jspecify.annotations.Nullable;
import shotwright.press.Press;
import shotwright.resin.Resin;

/**
 * Purging from one resin to the next. Mass: 3 to 5 barrel contents within a family, 6 to 10 when the chemistry changes; hotter to colder: push
 * the purge through at the old temperature, then come down. Source: common practice.
 */
final class ChangeOver {
    private static final double SAME_FAMILY_BARRELS = 4;
    private static final double OTHER_CHEMISTRY_BARRELS = 8;

    private ChangeOver() {}

    /** Must these two never meet, hot or as pellets? */
    static boolean forbidden(Resin a, Resin b) {
        return a.forbiddenWith().contains(b.id()) || b.forbiddenWith().contains(a.id());
    }

    /** Barrel contents of purge that a change takes. */
    static double barrels(Resin from, Resin to) {
        if (from.id().equals(to.id())) return 0;
        if (forbidden(from, to)) return 2 * OTHER_CHEMISTRY_BARRELS;
        return family(from).equals(family(to)) ? SAME_FAMILY_BARRELS : OTHER_CHEMISTRY_BARRELS;
    }

    /** Purge mass for a change, g. */
    static double massG(Resin from, Resin to, Press press) {
        return barrels(from, to) * press.barrelG().value();
    }

    /** First part of the id: {@code pa6}, {@code pa66} and {@code pa66-gf30} are nylons, {@code pom-c} and {@code pom-h} acetals. */
    static String family(Resin r) {
        String head = r.id().replaceFirst("-.*", "").replaceFirst("\\d+$", "");
        return switch (head) {
            case "abs", "hips", "gpps", "san" -> "styrenics";
            case "pp", "pe" -> "polyolefins";
            default -> head;
        };
    }

    /** What to push through between two resins, in words. */
    static String between(Resin from, Resin to) {
        if (forbidden(from, to))
            return "PE-HD or PP until nothing of the old is left, then the barrel, nozzle and hopper taken apart and cleaned";
        double old = from.settings().nozzleC().value(),
                next = to.settings().nozzleC().value();
        if (family(from).equals("polyolefins") || family(to).equals("polyolefins"))
            return "the next resin itself, or natural PE-HD";
        if (Math.max(old, next) > 255) return "natural PP or PE-HD of high viscosity";
        return "natural PE-HD or PP";
    }

    static List<String> sentences(@Nullable Resin before, Resin resin, Press press) {
        List<String> out = new ArrayList<>();
        if (before == null) {
            out.add(
                    "Last resin in the barrel was ________; find out before heating. With PVC or acetal in doubt do not heat: strip and clean.");
        } else if (!before.id().equals(resin.id())) {
            double old = before.settings().nozzleC().value(),
                    next = resin.settings().nozzleC().value();
            out.add(String.format(
                    Locale.ROOT,
                    "From %s: empty the barrel, push %s through at %.0f °C, about %.0f g, until clean.",
                    before.name(),
                    between(before, resin),
                    old,
                    massG(before, resin, press)));
            if (next < old - 5)
                out.add(String.format(
                        Locale.ROOT,
                        "Come down from %.0f to %.0f °C while purging, then feed %s.",
                        old,
                        next,
                        resin.name()));
            if (next > old + 5)
                out.add(String.format(
                        Locale.ROOT,
                        "Raise from %.0f to %.0f °C with the purge in the barrel, then feed %s.",
                        old,
                        next,
                        resin.name()));
            if (forbidden(before, resin))
                out.add(
                        "These two must never meet: not in barrel, dryer, hopper, regrind or purge bucket. Log the purge and who did it.");
        }
        out.addAll(resin.purge());
        return List.copyOf(out);
    }
}
