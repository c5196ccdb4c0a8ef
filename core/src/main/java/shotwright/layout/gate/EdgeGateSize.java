package shotwright.layout.gate;

/**
 * Classical size of an edge gate: depth h = n·t and width w = n·√A / 30, with the wall t in mm, the cavity's surface A in mm² and the resin
 * constant n. Source: key of SOURCES.md: PYE (from memory); n: PE, PS 0.6; POM, PC, PP 0.7; PMMA, PA 0.8; PVC 0.9. Taken here as the upper reference:
 * cutting starts smaller.
 */
public final class EdgeGateSize {
    private EdgeGateSize() {}

    /** The constant n of a resin family by its id on the rack; families the rule does not name count as 0.7. */
    public static double resinFactor(String resinId) {
        String family = resinId.toLowerCase(java.util.Locale.ROOT);
        if (family.startsWith("pe-") || family.endsWith("ps") || family.equals("abs") || family.equals("san"))
            return 0.6;
        if (family.equals("pmma") || family.startsWith("pa")) return 0.8;
        return family.startsWith("pvc") ? 0.9 : 0.7;
    }

    /** Gate depth h = n·t, mm. */
    public static double depthMm(double resinFactor, double wallMm) {
        return resinFactor * wallMm;
    }

    /** Gate width w = n·√A / 30, mm. */
    public static double widthMm(double resinFactor, double cavitySurfaceMm2) {
        return resinFactor * Math.sqrt(cavitySurfaceMm2) / 30;
    }

    /** Diameter of a round gate with the area of a slot, D = 2·√(h·w/π), mm (PT). */
    public static double roundDiameterMm(double depthMm, double widthMm) {
        return 2 * Math.sqrt(depthMm * widthMm / Math.PI);
    }
}
