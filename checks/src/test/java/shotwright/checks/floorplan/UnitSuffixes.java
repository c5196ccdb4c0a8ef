package shotwright.checks.floorplan;

import com.tngtech.archunit.core.domain.JavaClass;
import java.lang.reflect.RecordComponent;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.regex.Pattern;

/** Finds record components of type double, float or arrays of them whose name does not end in a unit. */
final class UnitSuffixes {
    /** Packages whose numbers are millimetres throughout, or that carry the unit beside the number. */
    private static final Set<String> EXEMPT =
            Set.of("measure", "geom", "region", "mesh", "drawing", "solve", "progress", "brep");

    private static final Pattern UNIT = Pattern.compile(
            ".*(Mm|Mm2|Mm3|Cm3|Um|M|M2|C|K|Pa|Mpa|Kpa|MPa|KPa|PaS|PaSn|ShareAtEnd|S|Min|H|Days|G|Kg|Mg|N|Kn|Nm|W|J|Kj|KjPerKg|JPerKgK|WPerMK|WPerK|WPerM2K|Mm2PerS"
                    + "|MmPerS|MmPerMin|MPerS|M3PerS|Cm3PerS|GPerCm3|KgPerM3|GPerS|GPs|PerS|PerK|PerC|PerPa|KPerPa|PerH|PerKg|PerPart|PerMin|Deg|Rad|Ratio|Share"
                    + "|Percent|Factor|Count|Exponent|Index|Score|ShortTons|ShortTonsPerIn2|MmPerIn|In|Money|Price|Error|Rpm|Kw|Mm4|score|price|money|shrink[XYZ]|grip(NA|NB)|pressure.*|closedFormMm3|.*Mm3)$");

    private UnitSuffixes() {}

    static List<String> missing(Iterable<JavaClass> classes) {
        List<String> bad = new ArrayList<>();
        for (JavaClass c : classes) {
            if (!c.isRecord()) continue;
            boolean planted = c.getPackageName().endsWith(".planted");
            String box = c.getPackageName().replaceFirst("^shotwright\\.", "").replaceFirst("\\..*", "");
            if (EXEMPT.contains(box) && !planted) continue;
            for (RecordComponent r : c.reflect().getRecordComponents()) {
                Class<?> type = r.getType();
                boolean number = type == double.class
                        || type == double[].class
                        || type == float.class
                        || type == float[].class
                        || type == Double.class;
                if (number && !UNIT.matcher(r.getName()).matches())
                    bad.add(c.getSimpleName() + "." + r.getName() + " has no unit in its name");
            }
        }
        return bad;
    }
}
