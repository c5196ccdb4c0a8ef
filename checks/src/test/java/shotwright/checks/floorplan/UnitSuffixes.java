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

    /** Units as a name ends in them; pure numbers say what kind of number they are. */
    private static final String UNITS = "Mm|Mm2|Mm3|Mm4|Cm3|Um|M|M2|In|C|K|S|Min|H|Days|Deg|Rad|Rpm|G|Kg|Mg"
            + "|N|Kn|Nm|ShortTons|Pa|Kpa|Mpa|KPa|MPa|ShortTonsPerIn2|PaS|PaSn|W|Kw|J|Kj|KjPerKg|KjPerMol|JPerKgK"
            + "|WPerMK|WPerK|WPerM2K|Mm2PerS|MmPerS|MmPerS2|MmPerMin|MmPerIn|MPerS|M3PerS|Cm3PerS|GPerCm3|KgPerM3|M3PerKg"
            + "|M3PerKgK|GPerS|PerS|PerMin|PerH|PerK|PerC|PerPa|KPerPa|PerKg|PerPart|Money|Price"
            + "|Ratio|Share|Percent|Factor|Count|Exponent|Index|Score|Error";

    private static final Pattern ENDS_IN_UNIT = Pattern.compile(".+(" + UNITS + ")$");

    /** A name may be nothing but its unit when that is a word, for example {@code money} or {@code shortTonsPerIn2}. */
    private static final Set<String> NOTHING_BUT_UNIT =
            Set.of("score", "price", "money", "share", "ratio", "factor", "index", "percent", "shortTonsPerIn2");

    /** Names allowed as they are, each with its reason. */
    private static final Set<String> ALLOWED = Set.of(
            // the unit stands beside the number in the same record
            "Finding.value",
            "Finding.limit",
            // shrink by direction: a pure number, 0.005 is 0.5 %, in the words of the job card
            "LayoutResult.shrinkX",
            "LayoutResult.shrinkY",
            "LayoutResult.shrinkZ",
            "LayoutWishes.shrinkX",
            "LayoutWishes.shrinkY",
            "LayoutWishes.shrinkZ",
            // newtons; the half the part grips stands last, as in partsA and partsB
            "Release.gripNA",
            "Release.gripNB");

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
                if (number && !named(c.getSimpleName(), r.getName()))
                    bad.add(c.getSimpleName() + "." + r.getName() + " has no unit in its name");
            }
        }
        return bad;
    }

    private static boolean named(String type, String name) {
        return ENDS_IN_UNIT.matcher(name).matches()
                || NOTHING_BUT_UNIT.contains(name)
                || ALLOWED.contains(type + "." + name);
    }
}
