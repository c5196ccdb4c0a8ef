package shotwright.checks.published;

import static shotwright.checks.published.Published.Mark.DERIVED;
import static shotwright.checks.published.Published.Mark.PUBLISHED;

import java.util.List;
import shotwright.machining.feed.BallContact;
import shotwright.machining.feed.Cusp;
import shotwright.machining.feed.CutterBeam;
import shotwright.machining.feed.Entry;
import shotwright.machining.feed.Groove;
import shotwright.machining.feed.Roughness;

/** Bending of cutters, ridges they leave, how they enter. */
class CutterMarksTest {
    private static final String PRINTED = "printed digits";
    private static final String EXACT = "closed form";

    @Published(
            id = {"C05", "C06"},
            source = "MILLF",
            where = "printed examples of scallop height",
            mark = PUBLISHED)
    void scallop() {
        Check.absolute("ball Ø6, step 0.5", 0.0104, Cusp.ofBallMm(3, 0.5), 5e-5, "mm", PRINTED);
        Check.absolute("ball Ø10, step 0.5", 0.0063, Cusp.ofBallMm(5, 0.5), 5e-5, "mm", PRINTED);
        Check.absolute("ball Ø6, ridge 0.005", 0.346, Cusp.stepOfBallMm(3, 0.005), 5e-4, "mm", PRINTED);
    }

    @Published(id = "MX-CUSP", source = "closed form", where = "steps for ridges of 1 to 20 µm", mark = DERIVED)
    void steps() {
        double[] radius = {.5, 1, 1.5, 2, 3, 5}, ridge = {.001, .002, .005, .010, .020};
        double[][] step = {
            {.0632, .0894, .1411, .1990, .2800},
            {.0894, .1264, .1997, .2821, .3980},
            {.1095, .1549, .2447, .3458, .4883},
            {.1265, .1788, .2827, .3995, .5643},
            {.1549, .2191, .3463, .4895, .6917},
            {.2000, .2828, .4471, .6321, .8935}
        };
        for (int r = 0; r < radius.length; r++)
            for (int h = 0; h < ridge.length; h++)
                Check.absolute(
                        "R " + radius[r] + ", ridge " + ridge[h],
                        step[r][h],
                        Cusp.stepOfBallMm(radius[r], ridge[h]),
                        5.1e-5,
                        "mm",
                        PRINTED);
        Check.absolute("R 3, step 0.5", .010435, Cusp.ofBallMm(3, .5), 5e-7, "mm", PRINTED);
        Check.absolute("R 5, step 0.5", .006254, Cusp.ofBallMm(5, .5), 5e-7, "mm", PRINTED);
        double steep = Math.toRadians(60), plan = Cusp.planStepMm(3, .015038, steep);
        Check.absolute("R 3, step in plan on 60°", .3, plan, 5e-6, "mm", PRINTED);
        double wall = Math.toRadians(88), down = Cusp.downStepMm(3, .003757, wall);
        Check.absolute("R 3, step down on a wall of 2° draft", .3, down, 5e-5, "mm", PRINTED);
    }

    @Published(id = "X8", source = "closed form", where = "steps of a flat cutter on a wall", mark = DERIVED)
    void wallSteps() {
        double[] deg = {1, 2, 3, 5}, ridge = {.00175, .00349, .00523, .00872};
        for (int i = 0; i < deg.length; i++)
            Check.absolute(
                    "0.1 mm down at " + deg[i] + "°",
                    ridge[i],
                    Cusp.ofFlatOnWallMm(.1, Math.toRadians(deg[i])),
                    5.1e-6,
                    "mm",
                    PRINTED);
        Check.absolute(
                "step down for 0.0015 mm at 2°",
                .043,
                Cusp.downStepOfFlatMm(.0015, Math.toRadians(2)),
                5e-4,
                "mm",
                PRINTED);
    }

    @Published(
            id = "C07",
            source = "MILLF",
            where = "printed example of ideal roughness, f²/(8·r) and s²/(31.2·r)",
            mark = PUBLISHED)
    void roughness() {
        Check.absolute("peak height, step 0.2, radius 0.8", 6.25, Roughness.idealRzUm(.8, .2), .005, "µm", PRINTED);
        Check.absolute("mean roughness", 1.603, Roughness.idealRaUm(.8, .2), .005, "µm", PRINTED);
        double[] ra = {.4, .8, 1.6, 3.2}, ridge = {.78, 1.56, 3.12, 6.24};
        for (int i = 0; i < ra.length; i++)
            Check.absolute(
                    "ridge for Ra " + ra[i] + " µm",
                    ridge[i],
                    1000 * Roughness.cuspForRaMm(ra[i]),
                    .006,
                    "µm",
                    PRINTED);
        double[] radius = {.5, 1, 1.5, 2, 3}, step = {.079, .112, .137, .158, .193};
        for (int i = 0; i < radius.length; i++)
            Check.absolute(
                    "step for Ra 0.8 µm, R " + radius[i],
                    step[i],
                    Cusp.stepOfBallMm(radius[i], Roughness.cuspForRaMm(.8)),
                    5.1e-4,
                    "mm",
                    PRINTED);
    }

    @Published(id = "M-C11", source = "GM", where = "problem 4.24, p. 260", mark = PUBLISHED)
    void sharpAndRound() {
        double sharp = Cusp.ofSharpEdgeMm(.125, Math.toRadians(30), Math.toRadians(7));
        Check.absolute("sharp, 30° and 7°, feed 0.125", 14.332, 1000 * sharp, 1e-3, "µm", PRINTED);
        Check.absolute("round 0.7, feed 0.125", 2.790, Roughness.idealRzUm(.7, .125), 1e-3, "µm", PRINTED);
    }

    @Published(
            id = {"M-C14", "M-C15", "M-C16"},
            source = "RAPAPERS",
            where = "abstracts: reachable roughness, feed and step as first levers",
            mark = PUBLISHED)
    void trends() {
        Check.trend(
                "feed raises the roughness of a rounded edge",
                Roughness.idealRaUm(.8, .2) > Roughness.idealRaUm(.8, .1));
        Check.trend(
                "step raises the roughness of ball passes",
                Roughness.idealRaUm(1, .2) > 3 * Roughness.idealRaUm(1, .1));
        double reachable = Roughness.raOfCuspUm(Cusp.ofBallMm(1.5, .08));
        Check.band("ball R 1.5, step 0.08", .2, .6, reachable, "µm", "measured best 0.275 and 0.55");
    }

    @Published(id = "C08", source = "EQD", where = "abstract: about 80 %; training text 0.7 to 0.8", mark = PUBLISHED)
    void stiffDiameter() {
        Check.absolute("stiff share of the diameter", .80, CutterBeam.FLUTED_SHARE, 1e-9, "", EXACT);
        double ratio = CutterBeam.plain(3, 30, 600_000).tipMm(20, 0)
                / CutterBeam.plain(3, 15, 600_000).tipMm(20, 0);
        Check.absolute("twice as long", 8, ratio, 1e-9, "times", EXACT);
        double thick = CutterBeam.plain(3, 15, 600_000).tipMm(20, 0)
                / CutterBeam.plain(6, 15, 600_000).tipMm(20, 0);
        Check.absolute("twice as thick", 16, thick, 1e-9, "times", EXACT);
    }

    @Published(
            id = {"X7", "MX-BEND"},
            source = "ROARK",
            where = "cantilever with end load",
            mark = DERIVED)
    void bending() {
        double[] dia = {3, 3, 6, .8, .4}, length = {15, 15, 25, 4, 1.5}, force = {20, 20, 50, 1, .5};
        double[] gpa = {600, 210, 600, 600, 600},
                bend = {.02303, .06579, .01666, .00432, .00182},
                mpa = {221, 221, 115, 155, 233};
        for (int i = 0; i < dia.length; i++) {
            CutterBeam b = CutterBeam.plain(dia[i], length[i], 1000 * gpa[i]);
            String what = "Ø" + dia[i] + ", " + length[i] + " mm, " + gpa[i] + " GPa, " + force[i] + " N";
            Check.absolute(what, bend[i], b.tipMm(force[i], 0), 5.1e-6, "mm", PRINTED);
            Check.absolute(what + ", stress", mpa[i], b.stressMpa(force[i], 0), .55, "MPa", PRINTED);
        }
    }

    /** Stepped bar by sums of cubes, cone by its own closed form δ = 64·F·L³/(3·π·E·d₁·d₂³). */
    @Published(id = "MX-STEP", source = "ROARK", where = "stepped and tapered cantilevers", mark = DERIVED)
    void steppedAndTapered() {
        double e = 600e3,
                i1 = Math.PI * Math.pow(.8, 4) / 64,
                i2 = Math.PI * Math.pow(.95, 4) / 64,
                i3 = Math.PI * 256 / 64;
        double sum = 8 / (3 * e * i1) + (1000 - 8) / (3 * e * i2) + (15 * 15 * 15 - 1000) / (3 * e * i3);
        CutterBeam stepped = new CutterBeam(
                List.of(
                        new CutterBeam.Stretch(2, .8, .8),
                        new CutterBeam.Stretch(8, .95, .95),
                        new CutterBeam.Stretch(5, 4, 4)),
                600_000);
        Check.relative("the same bar", sum, stepped.tipMm(1, 0), 1e-12, "mm", EXACT);
        CutterBeam cone = new CutterBeam(List.of(new CutterBeam.Stretch(10, 1, 2)), 600_000);
        double closed = 64 * 1000.0 / (3 * Math.PI * e * 1 * 8);
        Check.relative("cone 1 to 2 mm, 10 mm long, 1 N", closed, cone.tipMm(1, 0), 1e-10, "mm", EXACT);
        double most = 32.0 * 5 / (Math.PI * Math.pow(1.5, 3));
        Check.relative(
                "its greatest stress, where it is half as thick again as at the tip",
                most,
                cone.stressMpa(1, 0),
                1e-12,
                "MPa",
                EXACT);
    }

    @Published(id = "X9", source = "closed form", where = "circle on a ball", mark = DERIVED)
    void ballContact() {
        Check.absolute("ball Ø6, 0.2 mm deep", 2.154, BallContact.effectiveDiaMm(6, .2), 5e-4, "mm", PRINTED);
        Check.absolute(
                "leaning 15°", 3.530, BallContact.effectiveDiaMm(6, .2, Math.toRadians(15)), 5e-4, "mm", PRINTED);
    }

    @Published(id = "X10", source = "closed form", where = "helix", mark = DERIVED)
    void helix() {
        Check.absolute("path Ø3, pitch 0.5", 3.037, Math.toDegrees(Entry.helixRampRad(3, .5)), 5e-4, "°", PRINTED);
        Check.absolute(
                "pitch back from the angle", .5, Entry.helixPitchMm(3, Entry.helixRampRad(3, .5)), 1e-12, "mm", EXACT);
    }

    @Published(id = "X4", source = "closed form", where = "groove of a V cutter", mark = DERIVED)
    void grooves() {
        Check.absolute(
                "30°, tip 0.1, 0.2 deep", .2072, Groove.widthMm(.1, Math.toRadians(30), .2), 5e-5, "mm", PRINTED);
        Check.absolute(
                "60°, tip 0.1, 0.15 deep", .2732, Groove.widthMm(.1, Math.toRadians(60), .15), 5e-5, "mm", PRINTED);
        Check.absolute(
                "20°, tip 0.1, 0.2 deep", .1705, Groove.widthMm(.1, Math.toRadians(20), .2), 5e-5, "mm", PRINTED);
        Check.absolute(
                "stroke 0.6 wide, 60°, tip 0.1",
                .4330,
                Groove.depthMm(.1, Math.toRadians(60), .6),
                5e-5,
                "mm",
                PRINTED);
    }
}
