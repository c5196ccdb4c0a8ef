package shotwright.checks.published;

import static shotwright.checks.published.Published.Mark.COMMON_PRACTICE;
import static shotwright.checks.published.Published.Mark.DERIVED;
import static shotwright.checks.published.Published.Mark.FROM_MEMORY;
import static shotwright.checks.published.Published.Mark.PUBLISHED;

import java.util.List;
import shotwright.cutter.Cutter;
import shotwright.cutter.CutterRack;
import shotwright.machining.feed.Chip;
import shotwright.machining.feed.Cut;
import shotwright.machining.feed.CutChoice;
import shotwright.machining.feed.CutData;
import shotwright.machining.feed.CutKind;
import shotwright.machining.feed.CuttingPower;
import shotwright.machining.feed.FeedRate;
import shotwright.machining.feed.FeedTable;
import shotwright.machining.feed.HoleData;
import shotwright.machining.feed.SpecificForce;
import shotwright.measure.Band;
import shotwright.measure.Units;
import shotwright.mill.MillRack;
import shotwright.stock.Machinability;
import shotwright.stock.StockRack;

/** Chip, force, power, speeds and feeds of milling. */
class CuttingTest {
    private static final String PRINTED = "printed digits";
    private static final String EXACT = "closed form";
    private static final FeedTable TABLE = FeedTable.standard().byId("aluminium");

    private static Machinability alloy(String id) {
        return StockRack.materials().byId(id).machinability();
    }

    private static double law(double chipMm) {
        Machinability m = alloy("6061-t6");
        return SpecificForce.powerLawNPerMm2(
                m.kc1NPerMm2().value(), m.mcExponent().value(), chipMm);
    }

    @Published(id = "C01", source = "VDI3323", where = "group 22: 800 N/mm², 0.25", mark = PUBLISHED)
    void specificForce() {
        double[] chip = {0.10, 0.05, 0.03, 0.02, 0.01, 0.005};
        double[] kc = {1422.6, 1691.8, 1922.2, 2127.3, 2529.8, 3008.5};
        for (int i = 0; i < chip.length; i++)
            Check.absolute("6061-T6, chip " + chip[i] + " mm", kc[i], law(chip[i]), 0.1, "N/mm²", PRINTED);
    }

    @Published(id = "C02", source = "MILLF", where = "trochoidal catalogue p. 80, worked example", mark = PUBLISHED)
    void speedAndFeed() {
        Check.absolute("Ø125 at 200 m/min", 509.3, FeedRate.speedRpm(200, 125), 0.5, "1/min", PRINTED);
        Check.absolute("0.2 mm, 8 teeth, 510 1/min", 816, FeedRate.mmPerMin(0.2, 8, 510), 1e-9, "mm/min", EXACT);
    }

    @Published(id = "C03", source = "MILLF", where = "worked example of radial chip thinning", mark = PUBLISHED)
    void thinning() {
        double d = Units.inToMm(0.5), ae = Units.inToMm(0.05), wanted = Units.inToMm(0.002);
        double phi = Chip.engagementRad(ae, d);
        Check.relative("chip over feed, Ø0.5 in, 0.05 in wide", 0.600, Chip.largestShare(phi), 1e-3, "", PRINTED);
        Check.relative("engagement", 36.87, Math.toDegrees(phi), 1e-3, "°", PRINTED);
        double fz = wanted * Chip.thinningFactor(ae, d);
        Check.relative("feed per tooth", 0.003333, Units.mmToIn(fz), 1e-3, "in", PRINTED);
        Check.relative(
                "feed, 4 teeth, 8000 1/min",
                106.7,
                Units.mmToIn(FeedRate.mmPerMin(fz, 4, 8000)),
                1e-3,
                "in/min",
                PRINTED);
    }

    @Published(id = "C04", source = "MHB", where = "p. 1147, table 1b", mark = PUBLISHED)
    void unitPower() {
        double[] hp = {0.63, 0.85, 1.00}, joule = {1.72, 2.32, 2.73};
        for (int i = 0; i < hp.length; i++)
            Check.absolute(
                    hp[i] + " hp for 1 in³/min",
                    joule[i],
                    Units.hpPerIn3PerMinToJPerMm3(hp[i]),
                    0.005,
                    "J/mm³",
                    PRINTED);
    }

    @Published(id = "C15", source = "AVAL", where = "table 5", mark = PUBLISHED)
    void edgeForces() {
        for (String id : List.of("6061-t6", "7075-t6"))
            for (Machinability.EdgeForce e : alloy(id).edgeForces())
                Check.band(
                        id + ": " + e.name(), 240, 1320, e.tangentialNPerMm2().value(), "N/mm²", "spread of the table");
        double ours = SpecificForce.edgeNPerMm2(767, 27.7, 0.03);
        Check.absolute("7075-T6, chip 0.03 mm", 1690, ours, 1, "N/mm²", PRINTED);
        Check.band("power law over edge forces there", 1 / 1.14, 1.14, law(0.03) / ours, "", "agree within 14 %");
    }

    @Published(id = "MX-UNIT", source = "MHB", where = "unit power of aluminium and feed factors", mark = FROM_MEMORY)
    void powerLawAgainstUnitPower() {
        double law = law(0.0254) / 1000;
        Check.band("power law at 0.0254 mm over 1.09 J/mm³", 0.5, 2, law / 1.09, "", "factor 2");
        Check.band("power law at 0.0254 mm over 1.44 J/mm³", 0.5, 2, law / 1.44, "", "factor 2");
    }

    @Published(
            id = "MX-A",
            source = "closed form",
            where = "Ø6, 3 teeth, 15 000 1/min, 0.05 mm, 3 × 2.4 mm",
            mark = DERIVED)
    void exampleRough() {
        double hm = Chip.meanMm(0.05, 2.4, 6), kc = law(hm), vf = FeedRate.mmPerMin(0.05, 3, 15_000);
        Check.absolute("mean chip", 0.02921, hm, 5e-6, "mm", PRINTED);
        Check.absolute("specific force", 1935, kc, 0.5, "N/mm²", PRINTED);
        Check.absolute("removal", 16.2, CuttingPower.removalCm3PerMin(3, 2.4, vf), 1e-9, "cm³/min", EXACT);
        Check.absolute("power", 522, CuttingPower.powerW(3, 2.4, vf, kc), 0.6, "W", PRINTED);
    }

    @Published(
            id = "MX-B",
            source = "closed form",
            where = "Ø6, 3 teeth, 18 000 1/min, 0.06 mm, 9 × 0.6 mm",
            mark = DERIVED)
    void exampleBounded() {
        double hm = Chip.meanMm(0.06, 0.6, 6), kc = law(hm), vf = FeedRate.mmPerMin(0.06, 3, 18_000);
        Check.absolute("mean chip", 0.01865, hm, 6e-6, "mm", PRINTED);
        Check.absolute("specific force", 2165, kc, 0.6, "N/mm²", PRINTED);
        Check.absolute("removal", 17.5, CuttingPower.removalCm3PerMin(9, 0.6, vf), 0.05, "cm³/min", PRINTED);
        Check.absolute("power", 631, CuttingPower.powerW(9, 0.6, vf, kc), 0.6, "W", PRINTED);
    }

    @Published(
            id = "MX-C",
            source = "closed form",
            where = "Ø0.8, 2 teeth, 24 000 1/min, 0.008 mm, slot 0.12 mm",
            mark = DERIVED)
    void exampleTiny() {
        double hm = Chip.meanMm(0.008, 0.8, 0.8), kc = law(hm), vf = FeedRate.mmPerMin(0.008, 2, 24_000);
        Check.absolute("mean chip", 0.00509, hm, 5e-6, "mm", PRINTED);
        Check.absolute("specific force", 2995, kc, 0.6, "N/mm²", PRINTED);
        double w = CuttingPower.powerW(0.12, 0.8, vf, kc);
        Check.absolute("power", 1.84, w, 0.005, "W", PRINTED);
        Check.absolute("torque", 0.73, 1000 * CuttingPower.torqueNm(w, 24_000), 0.005, "N·mm", PRINTED);
    }

    @Published(
            id = "MX-ARC",
            source = "closed form",
            where = "arcs: centre feed and engagement in a corner",
            mark = DERIVED)
    void arcs() {
        Check.absolute(
                "engagement in a corner of 6 mm, cutter 3 mm, 0.6 mm wide",
                51.7,
                Math.toDegrees(Chip.concaveEngagementRad(6, 3, 0.6)),
                0.05,
                "°",
                PRINTED);
        Check.absolute(
                "engagement along the straight", 36.9, Math.toDegrees(Chip.engagementRad(0.6, 6)), 0.05, "°", PRINTED);
        Check.absolute("inside an arc of 6 mm", 500, FeedRate.insideArcMmPerMin(1000, 6, 3), 1e-9, "mm/min", EXACT);
        Check.absolute("around an arc of 12 mm", 1250, FeedRate.outsideArcMmPerMin(1000, 12, 3), 1e-9, "mm/min", EXACT);
        double facing = Chip.meanMm(0.08, 8, 12);
        Check.absolute("mean chip when facing, Ø12, 8 mm wide", 0.0558, facing, 5e-5, "mm", PRINTED);
        Check.absolute(
                "power when facing 0.5 mm deep at 1900 mm/min",
                208,
                CuttingPower.powerW(0.5, 8, 1900, law(facing)),
                1,
                "W",
                PRINTED);
    }

    @Published(id = "MX-CHIP", source = "TOOLF", where = "chip load by diameter, aluminium", mark = PUBLISHED)
    void chipLoads() {
        double[] in = {1 / 8.0, 3 / 16.0, 1 / 4.0, 3 / 8.0, 1 / 2.0}, chip = {.001, .002, .002, .003, .004};
        for (int i = 0; i < in.length; i++)
            Check.absolute(
                    "Ø" + in[i] + " in",
                    chip[i],
                    Units.mmToIn(TABLE.chipMm(Units.inToMm(in[i]), Cutter.Material.CARBIDE)),
                    0.00051,
                    "in",
                    "table prints whole thousandths");
        Check.absolute(
                "slow start of Ø0.8: 2 teeth, 24 000 1/min",
                312,
                FeedRate.mmPerMin(TABLE.chipMm(0.8, Cutter.Material.CARBIDE), 2, 24_000),
                1e-6,
                "mm/min",
                EXACT);
    }

    @Published(id = "MX-REACH", source = "MICRO", where = "p. 95, feed and depth by reach", mark = PUBLISHED)
    void reach() {
        double[] base = {1.4, 1.15, .9, .7, .6, .45, .35}, depth = {.30, .20, .17, .15, .15, .10, .10};
        for (int i = 0; i < base.length; i++) {
            String at = "reach " + TABLE.reach().aspectRatio().get(i).intValue() + " diameters";
            Check.absolute(
                    at + ": feed", base[i] / base[0], TABLE.reach().feedShare().get(i), 0.005, "", PRINTED);
            Check.absolute(
                    at + ": depth",
                    depth[i] / depth[0],
                    TABLE.reach().depthShare().get(i),
                    0.055,
                    "",
                    "rounded upwards to 0.05 for end mills of the usual kind");
        }
    }

    /** Measured mean forces: straight lines through them give the coefficients; from those our forces must come back. */
    @Published(
            id = {"M-C1", "M-C2"},
            source = "FORCEREC",
            where = "slots, 2 teeth, 3 mm deep, 6000 1/min, five feeds",
            mark = DERIVED)
    void measuredSlotForces() {
        double[] fz = {.025, .050, .075, .100, .125};
        double[] fx = {63.02, 107.14, 137.67, 171.27, 210.74}, fy = {39.80, 60.05, 71.60, 76.75, 78.49};
        for (int i = 0; i < fz.length; i++) {
            double across = SpecificForce.meanSlotN(958.9, 15.76, 2, 3, fz[i]);
            double along = SpecificForce.meanSlotN(250.9, 19.43, 2, 3, fz[i]);
            Check.absolute("across the feed at " + fz[i] + " mm", fx[i], across, 5.5, "N", "scatter about the line");
            Check.absolute("along the feed at " + fz[i] + " mm", fy[i], along, 8, "N", "scatter about the line");
        }
        Check.absolute(
                "line at feed 0, across", 30.0955, SpecificForce.meanSlotN(958.9, 15.76, 2, 3, 0), 0.01, "N", PRINTED);
        double slope = SpecificForce.meanSlotN(958.9, 15.76, 2, 3, 1) - SpecificForce.meanSlotN(958.9, 15.76, 2, 3, 0);
        Check.absolute("slope of the line, across", 1438.29, slope, 0.1, "N/mm", PRINTED);
    }

    @Published(id = "M-C3", source = "AVAL", where = "table 5 beside the measured slot", mark = DERIVED)
    void powerLawIsTheSafeSide() {
        double edge = SpecificForce.edgeNPerMm2(958.9, 15.76, 0.03);
        Check.absolute("edge forces at 0.03 mm", 1484, edge, 1, "N/mm²", PRINTED);
        Check.absolute("edge forces under the power law", -23, 100 * (edge / law(0.03) - 1), 0.5, "%", PRINTED);
        Band band = SpecificForce.bandNPerMm2(alloy("7075-t6"), 0.03);
        Check.band("they lie in the band for 7075-T6", band.low(), band.high(), edge, "N/mm²", "band of the ways");
    }

    @Published(id = "M-C4", source = "FORCEREC", where = "peaks of the same records", mark = DERIVED)
    void peaks() {
        double[] fz = {.025, .050, .075, .100, .125}, peak = {252.8, 424.8, 513.6, 695.7, 916.1};
        for (int i = 0; i < fz.length; i++) {
            double longTooth = Chip.withRunOutMm(fz[i], 2, 1), whole = 1.2 * law(longTooth) * 3 * longTooth;
            Check.band(
                    "one tooth taking the feed of both at " + fz[i] + " mm, over the measured peak",
                    1,
                    1.5,
                    whole / peak[i],
                    "",
                    "safe, and not by more than a half");
        }
    }

    @Published(id = "M-C9", source = "GM", where = "problems 4.15 and 4.16, U = 1.4·t^(−0.4)", mark = PUBLISHED)
    void powerByEnergy() {
        double thin = CuttingPower.powerW(1, 20, 15, SpecificForce.powerLawNPerMm2(1400, 0.4, 0.0018));
        double thick = CuttingPower.powerW(5, 20, 100, SpecificForce.powerLawNPerMm2(1400, 0.4, 0.043));
        Check.relative("chip 0.0018 mm", 87.70, thin, 1e-3, "W", PRINTED);
        Check.relative("chip 0.043 mm", 821.5, thick, 1e-3, "W", PRINTED);
        Check.absolute(
                "energy at 0.0018 mm",
                17.5,
                SpecificForce.powerLawNPerMm2(1400, 0.4, 0.0018) / 1000,
                0.05,
                "J/mm³",
                PRINTED);
        Check.absolute(
                "energy at 0.043 mm",
                4.93,
                SpecificForce.powerLawNPerMm2(1400, 0.4, 0.043) / 1000,
                0.005,
                "J/mm³",
                PRINTED);
    }

    @Published(id = "M-C10", source = "GM", where = "problems 4.17 and 4.18: two ways, one cut", mark = PUBLISHED)
    void twoWaysDiffer() {
        double table = CuttingPower.powerW(5, 20, 25, 3300);
        Check.absolute("power by table, 3.3 J/mm³", 137.5, table, 0.01, "W", PRINTED);
        CutData cut = cut("flat-6.0x18", 22, "6061-t6", "small-vmc-30k", CutKind.ROUGH, 3, 2.4);
        Band power = cut.load().powerW();
        Check.trend(
                "our band of power is at least as wide as the 1.87 between the book's two ways",
                power.high() / power.low() >= 257.2 / 137.5);
    }

    @Published(id = "M-C17", source = "closed form", where = "run-out over diameter", mark = DERIVED)
    void runOut() {
        String words = String.join(
                " ",
                cut("flat-1-32in", 12, "6061-t6", "small-vmc-30k", CutKind.SLOT, 0.05, 1)
                        .reasons());
        double share = 100 * 0.008 / Units.inToMm(1 / 32.0);
        Check.exact(
                "0.008 mm on 1/32 in is named with its share",
                true,
                words.contains(String.format(java.util.Locale.ROOT, "%.1f %% of the diameter", share)));
    }

    @Published(
            id = {"X3"},
            source = "closed form",
            where = "cone of a drill's point",
            mark = DERIVED)
    void drillPoints() {
        double[] deg = {118, 120, 130, 135, 140, 142, 90};
        double[] share = {.3004, .2887, .2332, .2071, .1820, .1722, .5};
        for (int i = 0; i < deg.length; i++)
            Check.absolute(
                    "point of " + deg[i] + "° over diameter",
                    share[i],
                    HoleData.pointMm(1, Math.toRadians(deg[i])),
                    5e-5,
                    "",
                    PRINTED);
    }

    @Published(
            id = "MX-DRILL",
            source = "DRILLS",
            where = "aluminium: 350 to 400 ft/min, feed by diameter",
            mark = PUBLISHED)
    void drilling() {
        var drill = CutterRack.standard().byId("drill-5.8x38");
        var alloy = StockRack.materials().byId("6061-t6");
        HoleData d = HoleData.drill(drill, 5.8, 8, alloy, MillRack.standard().byId("benchtop-mill-10k"), TABLE);
        Check.band("speed of Ø5.8, high-speed steel", 106, 122, d.surfaceMPerMin(), "m/min", "printed range");
        Check.band("feed of Ø5.8", .05, .15, d.feedPerTurnMm(), "mm", "printed range");
        Check.band(
                "feed of Ø3.2",
                .025,
                .075,
                HoleData.drill(drill, 3.2, 4, alloy, MillRack.standard().byId("benchtop-mill-10k"), TABLE)
                        .feedPerTurnMm(),
                "mm",
                "printed range");
        double[] reamed = {3, 4, 6, 8};
        double[] low = {.13, .13, .13, .20}, high = {.25, .25, .30, .40};
        for (int i = 0; i < reamed.length; i++)
            Check.band(
                    "left for a reamer of " + reamed[i] + " mm",
                    low[i],
                    high[i],
                    reamed[i] - HoleData.drillBeforeReamMm(reamed[i], TABLE),
                    "mm",
                    "printed range");
    }

    private static CutData cut(
            String cutter, double stickoutMm, String alloy, String mill, CutKind kind, double depthMm, double widthMm) {
        CutChoice choice = CutChoice.of(
                new Cut(
                        CutterRack.standard().byId(cutter),
                        stickoutMm,
                        StockRack.materials().byId(alloy),
                        MillRack.standard().byId(mill),
                        kind,
                        depthMm,
                        widthMm),
                TABLE);
        if (choice instanceof CutData data) return data;
        throw new AssertionError(choice);
    }

    /** A plan for one mold half written down by hand: feeds a machinist would set. */
    @Published(
            id = "MX-PLAN",
            source = "common practice",
            where = "80 × 60 × 20 mm half of 6061",
            mark = COMMON_PRACTICE)
    void feedsOfAPlan() {
        String mill = "small-vmc-30k", alloy = "6061-t6";
        near("rough, flat 6", 2250, cut("flat-6.0x18", 22, alloy, mill, CutKind.ROUGH, 1.5, 2.4));
        near("rest corners, flat 4", 1280, cut("flat-4.0x12", 17, alloy, mill, CutKind.ROUGH, 1, 1.2));
        near("floor, flat 4", 900, cut("flat-4.0x12", 17, alloy, mill, CutKind.FLOOR, 0.1, 2.4));
        near("wall, taper 2°, tip 2", 500, cut("taper-2deg-tip2", 18, alloy, mill, CutKind.DRAFT_WALL, 5, 0.1));
        near("runner, ball 4", 900, cut("ball-4.0x20", 24, alloy, mill, CutKind.SLOT, 0.6, 4));
        near("text, engraver 30°", 200, cut("engraver-30deg-0.1", 14, alloy, mill, CutKind.ENGRAVE, 0.05, 1));
        Check.band(
                "power of the rough cut",
                130,
                520,
                cut("flat-6.0x18", 22, alloy, mill, CutKind.ROUGH, 1.5, 2.4)
                        .load()
                        .powerW()
                        .nominal(),
                "W",
                "about 260, factor 2");
    }

    private static void near(String what, double mmPerMin, CutData cut) {
        Check.band(what, mmPerMin / 2.2, mmPerMin * 2.2, cut.feedMmPerMin(), "mm/min", "a plan, not a measurement");
    }
}
