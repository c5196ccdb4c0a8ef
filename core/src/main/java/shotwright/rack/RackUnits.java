package shotwright.rack;

import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import java.util.function.DoubleUnaryOperator;
import shotwright.measure.Units;

/** The unit a component's name ends in, and the other units a file may use for it. */
final class RackUnits {
    /** Ending of the name → unit in the file; a longer ending wins. */
    private static final Map<String, String> OF_ENDING = new LinkedHashMap<>();

    static {
        String[][] rows = {
            {"GPerCm3", "g/cm³"},
            {"Percent", "%"},
            {"C", "°C"},
            {"H", "h"},
            {"Min", "min"},
            {"S", "s"},
            {"WPerMK", "W/(m·K)"},
            {"JPerKgK", "J/(kg·K)"},
            {"KjPerKg", "kJ/kg"},
            {"KjPerMol", "kJ/mol"},
            {"Mm2PerS", "mm²/s"},
            {"PerK", "1/K"},
            {"PerS", "1/s"},
            {"Mm", "mm"},
            {"Mm2", "mm²"},
            {"Um", "µm"},
            {"Mpa", "MPa"},
            {"Gpa", "GPa"},
            {"PaS", "Pa·s"},
            {"ShortTonsPerIn2", "short ton/in²"},
            {"Deg", "°"},
            {"Factor", "1"},
            {"Ratio", "1"},
            {"Share", "1"},
            {"Coefficient", "1"},
            {"Index", "1"},
            {"Count", "1"},
            {"PricePerKg", "unit/kg"},
            {"RatePerH", "unit/h"},
            {"Price", "unit"},
            {"Kn", "kN"},
            {"Nm", "N·m"},
            {"N", "N"},
            {"W", "W"},
            {"Cm3PerS", "cm³/s"},
            {"G", "g"},
            {"GPs", "g"},
            {"Rpm", "1/min"},
            {"MmPerMin", "mm/min"},
            {"MmPerS2", "mm/s²"},
            {"NPerMm2", "N/mm²"},
            {"NPerMm", "N/mm"},
            {"JPerMm3", "J/mm³"},
            {"MPerMin", "m/min"},
            {"UmPerN", "µm/N"},
            {"Exponent", "1"},
            {"Hb", "HB"}
        };
        for (String[] row : rows) OF_ENDING.put(row[0], row[1]);
    }

    /** A unit a file may use instead: the canonical one it becomes and how. */
    private record Other(String canonical, DoubleUnaryOperator convert) {}

    private static final Map<String, Other> OTHERS = Map.of(
            "in", new Other("mm", Units::inToMm),
            "short ton", new Other("kN", Units::shortTonsToKn),
            "psi", new Other("MPa", psi -> psi * Units.PA_PER_PSI / 1e6),
            "°F", new Other("°C", f -> (f - 32) * 5 / 9),
            "lbf", new Other("N", lbf -> lbf * Units.N_PER_LBF),
            "in²", new Other("mm²", Units::in2ToMm2),
            "in/min", new Other("mm/min", Units::inToMm),
            "ft/min", new Other("m/min", Units::ftToM),
            "hp/(in³/min)", new Other("J/mm³", Units::hpPerIn3PerMinToJPerMm3));

    private RackUnits() {}

    /** The unit that the ending of a component's name asks for. */
    static String unitOf(String component) {
        String best = "";
        for (String ending : OF_ENDING.keySet()) {
            boolean ends = component.equals(ending)
                    || component.equalsIgnoreCase(ending)
                    || (component.endsWith(ending) && Character.isUpperCase(ending.charAt(0)));
            if (ends && ending.length() > best.length()) best = ending;
        }
        if (best.isEmpty()) throw new IllegalArgumentException("component: " + component + " names no unit");
        return OF_ENDING.getOrDefault(best, "");
    }

    /** The value in the canonical unit, or empty when the unit in the file does not fit. */
    static Optional<Double> convert(double value, String unitInFile, String canonical) {
        if (unitInFile.equals(canonical)) return Optional.of(value);
        Other other = OTHERS.get(unitInFile);
        if (other == null || !other.canonical.equals(canonical)) return Optional.empty();
        return Optional.of(other.convert.applyAsDouble(value));
    }
}
