package shotwright.checks.published;

import static shotwright.checks.published.Published.Mark.COMMON_PRACTICE;
import static shotwright.checks.published.Published.Mark.DERIVED;
import static shotwright.checks.published.Published.Mark.FROM_MEMORY;
import static shotwright.checks.published.Published.Mark.PUBLISHED;

import shotwright.cutter.CutterRack;
import shotwright.machining.feed.FeedTable;
import shotwright.machining.hole.BoreSteps;
import shotwright.machining.hole.FittedHole;
import shotwright.measure.Units;
import shotwright.stock.Dowel;
import shotwright.stock.Fit;
import shotwright.stock.GaugeClass;
import shotwright.stock.HoleLimits;
import shotwright.stock.StockRack;

/** Fits of dowels, and holes that keep them. */
class FitsTest {
    private static final double[] SIZE = {3, 5, 8, 12};

    @Published(id = "MX-FIT", source = "DIN286", where = "holes G7, F7, N7, K7, M7, rows to 18 mm", mark = PUBLISHED)
    void holes() {
        String[] g7 = {"2/12", "4/16", "5/20", "6/24"}, f7 = {"6/16", "10/22", "13/28", "16/34"};
        String[] n7 = {"-14/-4", "-16/-4", "-19/-4", "-23/-5"};
        String[] k7 = {"-10/0", "-9/3", "-10/5", "-12/6"}, m7 = {"-12/-2", "-12/0", "-15/0", "-18/0"};
        for (int i = 0; i < SIZE.length; i++) {
            row("G7", g7[i], Fit.G7, SIZE[i]);
            row("F7", f7[i], Fit.F7, SIZE[i]);
            row("N7", n7[i], Fit.N7, SIZE[i]);
            row("K7", k7[i], Fit.K7, SIZE[i]);
            row("M7", m7[i], Fit.M7, SIZE[i]);
        }
    }

    @Published(id = "MX-P7", source = "ISO286", where = "part 2, hole P7", mark = FROM_MEMORY)
    void holeP7() {
        String[] p7 = {"-16/-6", "-20/-8", "-24/-9", "-29/-11"};
        for (int i = 0; i < SIZE.length; i++) row("P7", p7[i], Fit.P7, SIZE[i]);
    }

    private static void row(String name, String limits, Fit fit, double size) {
        Check.exact(name + " at Ø" + size + ", µm", limits, fit.lowUm(size) + "/" + fit.highUm(size));
    }

    @Published(id = "MX-CLEAR", source = "DIN286", where = "pins in holes, from the limits of both", mark = DERIVED)
    void clearances() {
        double[] size = {3, 5, 8};
        Fit[][] pairs = {
            {Fit.H7, Fit.M6_PIN},
            {Fit.N7, Fit.M6_PIN},
            {Fit.G7, Fit.M6_PIN},
            {Fit.F7, Fit.M6_PIN},
            {Fit.H7, Fit.H6_PIN},
            {Fit.H7, Fit.G6_PIN},
            {Fit.G7, Fit.H6_PIN}
        };
        String[][] table = {
            {"-8..8", "-22..-6", "-6..10", "-2..14", "0..16", "2..18", "2..18"},
            {"-12..8", "-28..-8", "-8..12", "-2..18", "0..20", "4..24", "4..24"},
            {"-15..9", "-34..-10", "-10..14", "-2..22", "0..24", "5..29", "5..29"}
        };
        for (int i = 0; i < size.length; i++)
            for (int j = 0; j < pairs.length; j++) {
                Fit hole = pairs[j][0], pin = pairs[j][1];
                Check.exact(
                        pin + " in " + hole + " at Ø" + size[i] + ", µm",
                        table[i][j],
                        hole.leastClearanceUm(pin, size[i]) + ".." + hole.mostClearanceUm(pin, size[i]));
            }
    }

    @Published(
            id = "C11",
            source = "B18",
            where = "hardened ground dowels, standard series: pins and press holes",
            mark = PUBLISHED)
    void inchDowels() {
        String[] id = {"dowel-1-8in", "dowel-3-16in", "dowel-1-4in"};
        double[] low = {0.1251, 0.1876, 0.2501}, high = {0.1253, 0.1878, 0.2503};
        double[] holeLow = {.1245, .1870, .2495}, holeHigh = {.1250, .1875, .2500};
        for (int i = 0; i < id.length; i++) {
            Dowel d = StockRack.dowels().byId(id[i]);
            inch(d.name() + ", least size", low[i], d.leastMm());
            inch(d.name() + ", greatest size", high[i], d.greatestMm());
            inch(d.name() + ", smallest press hole", holeLow[i], d.pressHole().lowMm());
            inch(d.name() + ", largest press hole", holeHigh[i], d.pressHole().highMm());
        }
    }

    private static void inch(String what, double in, double oursMm) {
        Check.absolute(what, in, Units.mmToIn(oursMm), 5e-5, "in", "printed digits");
    }

    @Published(id = "C12", source = "B89", where = "classes X to ZZ, 0.254 to 20.96 mm", mark = PUBLISHED)
    void gaugePins() {
        double[] um = {1.02, 1.78, 2.54, 5.08};
        for (GaugeClass c : GaugeClass.values())
            Check.absolute("class " + c, um[c.ordinal()], c.toleranceUm(), 1e-9, "µm", "exact");
        HoleLimits hole = HoleLimits.of(Fit.H7, 6);
        Check.exact(
                "go pin for 6 H7 lies above, no-go below",
                "6.00000..6.00508 6.00692..6.01200",
                sizes(GaugeClass.ZZ.goMm(hole)) + " " + sizes(GaugeClass.ZZ.noGoMm(hole)));
    }

    private static String sizes(HoleLimits l) {
        return String.format(java.util.Locale.ROOT, "%.5f..%.5f", l.lowMm(), l.highMm());
    }

    @Published(
            id = "MX-BORE",
            source = "common practice",
            where = "boring on a helix with a gauge in between",
            mark = COMMON_PRACTICE)
    void boring() {
        BoreSteps b = new BoreSteps(HoleLimits.of(Fit.F7, 6), 4);
        Check.absolute(
                "rough path of a 4 mm cutter for 6 F7",
                6.016 - .2 - 4,
                b.beforeGauging().get(0).pathDiaMm(),
                1e-9,
                "mm",
                "closed form");
        Check.absolute(
                "path before the gauge",
                6.016 - .05 - 4,
                b.beforeGauging().get(2).pathDiaMm(),
                1e-9,
                "mm",
                "closed form");
        double measured = 5.960;
        Check.absolute(
                "radius correction for 5.960 mm", .028, b.radiusCorrectionMm(measured), 1e-9, "mm", "closed form");
        double grown = b.afterGauging(measured).getFirst().pathDiaMm()
                - b.beforeGauging().get(2).pathDiaMm();
        Check.absolute(
                "a cutter that is 0.006 under size: hole after correction",
                6.016,
                measured + grown,
                1e-9,
                "mm",
                "closed form");
        Check.exact("mill out of true by 0.01: round", false, BoreSteps.round(6.016, 6.006));
    }

    @Published(
            id = "MX-HOLE",
            source = "DRILLS",
            where = "drill before reaming; reamer only where its hole fits",
            mark = COMMON_PRACTICE)
    void waysToAHole() {
        Check.exact("6 H7, 14 deep", "drill-5.8x38 reamer-6.0h7", way(HoleLimits.of(Fit.H7, 6), 14));
        Check.exact("4 H7, 14 deep", "drill-3.8x30 reamer-4.0h7", way(HoleLimits.of(Fit.H7, 4), 14));
        Check.exact(
                "6 F7, 14 deep: no reamer cuts it, the 4 mm end mill reaches 16",
                "flat-4.0x12",
                way(HoleLimits.of(Fit.F7, 6), 14));
        Check.exact("6 N7, 40 deep", "none", way(HoleLimits.of(Fit.N7, 6), 40));
    }

    private static String way(HoleLimits hole, double depthMm) {
        return switch (FittedHole.of(
                hole, depthMm, CutterRack.standard().all(), FeedTable.standard().byId("aluminium"))) {
            case FittedHole.Reamed r -> r.drill().id() + " " + r.reamer().id();
            case FittedHole.Bored b -> b.cutter().id();
            case FittedHole.NotPossible n -> "none";
        };
    }
}
