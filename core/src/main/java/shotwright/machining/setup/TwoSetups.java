package shotwright.machining.setup;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import shotwright.geom.Box3;
import shotwright.geom.Vec3;
import shotwright.machining.path.WorkOffset;
import shotwright.mill.Mill;

/**
 * The two clampings of a half: back face up, then turned about the y axis with the parting face up. Turned so, the side at the fixed jaw stays
 * there and ends change places: x′ = length − x, y′ = y, z′ = −thickness − z.
 *
 * @param blank what is clamped
 * @param back back face up
 * @param parting parting face up
 * @param clampForceN least force of the vise
 * @param trouble what stands in the way, in words; empty when the half can be clamped so
 */
public record TwoSetups(Blank blank, Setup back, Setup parting, double clampForceN, List<String> trouble) {
    /** Least grip, and as a share of the height (common practice). */
    private static final double LEAST_GRIP_MM = 3;

    private static final double LEAST_GRIP_SHARE = 0.15;

    /** Grip that is usual when there is room. */
    private static final double USUAL_GRIP_MM = 6;

    /** Jaws stay so far below features on the sides. */
    private static final double BELOW_SIDE_MM = 1;

    /** Cutters stay so far above the jaws. */
    private static final double ABOVE_JAW_MM = 0.5;

    private static final double RUN_OUT_MM = 2;
    private static final double CLEARANCE_MM = 10;

    /** Friction of jaws on aluminium, and how many times the cutting force they must hold (common practice). */
    private static final double FRICTION = 0.15;

    private static final double SAFETY_FACTOR = 2.5;

    /** Jaws as boxes so thick. */
    private static final double JAW_MM = 40;

    public TwoSetups {
        trouble = List.copyOf(trouble);
    }

    /** Plans both clampings. */
    public static TwoSetups of(Blank blank, Mill mill, SetupWishes wishes) {
        return new Planner(blank, mill, wishes).plan();
    }

    /** Force of the vise that holds against a side force: 2.5·F/(2·µ). */
    public static double clampForceN(double sideForceN) {
        return SAFETY_FACTOR * sideForceN / (2 * FRICTION);
    }

    /** A place of the back-face setup as it lies in the parting-face setup, and the other way about. */
    public Vec3 turned(Vec3 place) {
        return new Vec3(blank.lengthMm() - place.x(), place.y(), -blank.half().thicknessMm() - place.z());
    }

    private record Planner(Blank b, Mill mill, SetupWishes w) {
        TwoSetups plan() {
            List<String> trouble = new ArrayList<>();
            double t = b.half().thicknessMm(), height = b.thicknessMm();
            double opening = mill.viseOpeningMm().value();
            if (b.blankAcrossMm() > opening)
                trouble.add(text(
                        "The blank is %.1f mm wide and the vise opens %.1f mm: clamp it on the table or take a narrower bar.",
                        b.blankAcrossMm(), opening));
            double least = Math.max(LEAST_GRIP_MM, LEAST_GRIP_SHARE * height);
            double most = t - w.deepestSideMm() - BELOW_SIDE_MM;
            if (most < least)
                trouble.add(text(
                        "The jaws want %.1f mm to hold and features on the sides leave %.1f mm below them: a thicker half or soft jaws cut to it.",
                        least, Math.max(0, most)));
            Setup back = back(least, t);
            double milled = -back.finished().min().z() - ABOVE_JAW_MM;
            Setup parting = parting(Math.max(least, Math.min(USUAL_GRIP_MM, Math.min(most, milled))), t);
            for (Setup s : List.of(back, parting)) travel(s, trouble);
            return new TwoSetups(b, back, parting, clampForceN(w.sideForceN()), trouble);
        }

        private void travel(Setup s, List<String> trouble) {
            Setup.Travel v = s.travel();
            if (!v.enough())
                trouble.add(String.format(
                        Locale.ROOT,
                        "%s takes %.0f × %.0f × %.0f mm of travel and the mill has %.0f × %.0f × %.0f mm.",
                        s.name(),
                        v.xMm(),
                        v.yMm(),
                        v.zMm(),
                        v.millXMm(),
                        v.millYMm(),
                        v.millZMm()));
        }

        private Setup back(double leastGrip, double t) {
            double under = t + b.half().riseMm() + b.partingOffMm();
            double grip = Math.max(leastGrip, Math.min(USUAL_GRIP_MM, under / 3));
            Box3 stock = new Box3(
                    new Vec3(-b.endOffMm(), -b.acrossMm() - b.edgeOffMm(), -under),
                    new Vec3(b.lengthMm() + b.endOffMm(), b.edgeOffMm(), b.backOffMm()));
            double outsideTo = -under + grip + ABOVE_JAW_MM;
            Setup.Facing facing = b.back() == FaceWork.SKIMMED ? facing() : Setup.Facing.NOT_FACED;
            List<String> steps = new ArrayList<>();
            steps.add(text(
                    "Deburr the blank and wipe it; %s at the fixed jaw, a sawn end at the stop on the left; parallels so that %.1f mm stand in the jaws.",
                    b.edges() == FaceWork.MILLED ? "the straighter side" : "the better drawn side", grip));
            steps.add(text(
                    "Find the zero of %s: x %.2f mm inside the left end, %s, z on the highest corner of the back face%s.",
                    WorkOffset.G54,
                    b.endOffMm(),
                    edgeZero(),
                    b.backOffMm() > 0 ? text(" less %.2f mm", b.backOffMm()) : ""));
            if (facing == Setup.Facing.NOT_FACED)
                steps.add("The back face is " + b.back().words() + "; it is not milled.");
            else steps.add(text("Face %.2f mm off the back, %s.", b.backOffMm(), facing.words()));
            steps.add(text(
                    b.edges() == FaceWork.MILLED
                            ? "Mill the outside to %.2f × %.2f mm, %.1f mm down from the back face."
                            : "Mill both ends to length %.2f mm, the sides stay (%.2f mm), %.1f mm down from the back face.",
                    b.lengthMm(),
                    b.acrossMm(),
                    -outsideTo));
            steps.add("Drill the holes of the back face: clamp screws, nozzle seat, ejector clearance.");
            steps.add("Chamfer the outside edges; mark the half and its datum corner.");
            return new Setup(
                    b.half().name() + ", back face up",
                    WorkOffset.G54,
                    stock,
                    new Box3(new Vec3(0, -b.acrossMm(), outsideTo), new Vec3(b.lengthMm(), 0, 0)),
                    grip,
                    facing,
                    jaws(b.edgeOffMm(), stock.min().z(), grip),
                    travel(stock, b.backOffMm(), facing),
                    steps);
        }

        private String edgeZero() {
            return b.edgeOffMm() > 0
                    ? text("y %.2f mm in front of the fixed jaw", b.edgeOffMm())
                    : "y on the fixed jaw";
        }

        private Setup parting(double grip, double t) {
            double top = b.half().riseMm() + b.partingOffMm();
            Box3 stock = new Box3(
                    new Vec3(-b.endOffMm(), -b.acrossMm() - b.edgeOffMm(), -t),
                    new Vec3(b.lengthMm() + b.endOffMm(), b.edgeOffMm(), top));
            Setup.Facing facing = facing();
            List<String> steps = new ArrayList<>();
            steps.add(
                    "Deburr, wipe block, jaws and parallels. Turn the block about the y axis, so that left and right change places: the side at the fixed jaw"
                            + " stays there. Never turn it about the long axis.");
            steps.add(text(
                    "The same side at the fixed jaw, the finished end that was on the right now at the stop; seat it on parallels with %.1f mm in the jaws and tap it down until no parallel moves.",
                    grip));
            steps.add(text(
                    "Find the zero of %s anew: x on the left end below the saw skin, y on the fixed jaw, z %.2f mm above the parallels, which is the finished parting face.",
                    WorkOffset.G55, t));
            steps.add(
                    b.half().riseMm() > 0
                            ? text(
                                    "Face %.2f mm off, %s; this is the top of the cores, %.2f mm above the parting face.",
                                    b.partingOffMm(), facing.words(), b.half().riseMm())
                            : text("Face %.2f mm off to the parting face, %s.", b.partingOffMm(), facing.words()));
            steps.add(
                    "Mill what is left of the outside at the jaws' height of the first clamping; a step of 0.02 mm at most, below the parting face.");
            steps.add(
                    "Rough the cavity, make the dowel holes in this clamping, loosen and clamp lightly, find z again, finish.");
            steps.add("Chamfer outside edges only: never the parting line, the gate or a shut-off.");
            return new Setup(
                    b.half().name() + ", parting face up",
                    WorkOffset.G55,
                    stock,
                    new Box3(
                            new Vec3(0, -b.acrossMm(), -t),
                            new Vec3(b.lengthMm(), 0, b.half().riseMm())),
                    grip,
                    facing,
                    jaws(0, stock.min().z(), grip),
                    travel(stock, top, facing),
                    steps);
        }

        /** Along x when the travel lets the face mill run off both ends, else along y. */
        private Setup.Facing facing() {
            double off = w.facingDiaMm() + 2 * RUN_OUT_MM;
            if (b.sawnLengthMm() + off <= mill.travelXMm().value()) return Setup.Facing.ALONG_X;
            return b.blankAcrossMm() + off <= mill.travelYMm().value() ? Setup.Facing.ALONG_Y : Setup.Facing.ALONG_X;
        }

        private Setup.Travel travel(Box3 stock, double topMm, Setup.Facing facing) {
            double outside = w.outsideDiaMm() + 2 * RUN_OUT_MM, face = w.facingDiaMm() + 2 * RUN_OUT_MM;
            double xOff = facing == Setup.Facing.ALONG_X ? Math.max(outside, face) : outside;
            double yOff = facing == Setup.Facing.ALONG_Y ? Math.max(outside, face) : outside;
            if (b.edges() != FaceWork.MILLED && facing != Setup.Facing.ALONG_Y) yOff = w.outsideDiaMm();
            return new Setup.Travel(
                    stock.size().x() + xOff,
                    stock.size().y() + yOff,
                    topMm + CLEARANCE_MM + w.deepestCutMm() + w.longestStickoutMm() - w.shortestStickoutMm(),
                    mill.travelXMm().value(),
                    mill.travelYMm().value(),
                    mill.travelZMm().value());
        }

        /** The jaws, at finished sides or so far outside them. */
        private List<Box3> jaws(double outsideMm, double bottomMm, double gripMm) {
            double middle = b.lengthMm() / 2, half = mill.viseJawMm().value() / 2;
            double low = bottomMm - JAW_MM,
                    top = bottomMm + gripMm,
                    back = outsideMm,
                    front = -b.acrossMm() - outsideMm;
            return List.of(
                    new Box3(new Vec3(middle - half, back, low), new Vec3(middle + half, back + JAW_MM, top)),
                    new Box3(new Vec3(middle - half, front - JAW_MM, low), new Vec3(middle + half, front, top)));
        }

        private static String text(String format, Object... values) {
            return String.format(Locale.ROOT, format, values);
        }
    }
}
