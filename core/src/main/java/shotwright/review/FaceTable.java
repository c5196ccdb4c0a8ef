package shotwright.review;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.stream.IntStream;
import org.jspecify.annotations.Nullable;
import shotwright.brep.ExactBody;
import shotwright.brep.ExactFace;
import shotwright.finding.Finding;
import shotwright.geom.Vec3;
import shotwright.mesh.Bvh;
import shotwright.mesh.pull.Columns;
import shotwright.mesh.pull.PartingHeights;
import shotwright.mesh.pull.Sight;
import shotwright.mesh.pull.SightTolerance;
import shotwright.part.PulledPart;
import shotwright.review.FaceReview.FormedBy;
import shotwright.review.FaceReview.Need;
import shotwright.review.face.FaceBorders;
import shotwright.review.face.FaceNames;
import shotwright.review.face.FaceShape;

/** The review face by face, for parts that came with exact faces: draft from the exact normals, a name, the half that makes it. */
final class FaceTable {
    /** A round face reaching into the other half by more than this share of its area is made by both. */
    private static final double BOTH_SHARE = 0.02;
    /** A curved face whose draft changes by more than this is a rounding, not a wall. */
    private static final double ROUNDING_DEG = 15;
    /** A mesh wall is said to be made of the faces that give at least this share of it. */
    private static final double SAID_SHARE = 0.02;

    private static final int MOST_SAID = 12;
    /** A place no farther from a face than this is on it. */
    private static final double ON_FACE_MM = 0.05;

    private final PulledPart pulled;

    private final List<FaceReview> faces;
    private final int[] faceOf;
    private final double[] facetMm2;

    private FaceTable(PulledPart pulled, List<FaceReview> faces, int[] faceOf, double[] facetMm2) {
        this.pulled = pulled;
        this.faces = faces;
        this.faceOf = faceOf;
        this.facetMm2 = facetMm2;
    }

    /** The faces of a part; none when it came as triangles. */
    static FaceTable of(PulledPart pulled, Walls walls, List<FormedWall> formed, MoldingLimits limits, Finish finish) {
        ExactBody body = pulled.part().exact();
        if (body == null) return none(pulled);
        return new Maker(pulled, body, walls, formed, limits, finish).make();
    }

    /** For a part that came as triangles. */
    static FaceTable none(PulledPart pulled) {
        return new FaceTable(pulled, List.of(), new int[0], new double[0]);
    }

    List<FaceReview> faces() {
        return faces;
    }

    /** The faces that make up some facets, largest share first. */
    List<FaceReview> under(int[] facets) {
        if (faces.isEmpty()) return List.of();
        double[] area = new double[faces.size()];
        double all = 0;
        for (int f : facets) {
            area[faceOf[f]] += facetMm2[f];
            all += facetMm2[f];
        }
        double least = SAID_SHARE * all;
        return IntStream.range(0, area.length)
                .filter(i -> area[i] > least)
                .boxed()
                .sorted((i, j) -> Double.compare(area[j], area[i]))
                .map(faces::get)
                .toList();
    }

    /** The finding, saying on which face its place lies where it lies on one. */
    Finding placed(Finding f) {
        Vec3 at = f.atMm();
        if (faces.isEmpty() || at == null || f.text().contains("(face")) return f;
        Bvh.Hit hit = pulled.tree().nearest(pulled.toPulled().apply(at), ON_FACE_MM);
        return hit == null
                ? f
                : f.saying(f.text() + " The place is on the "
                        + faces.get(faceOf[hit.facet()]).called() + ".");
    }

    /** {@code "face 4"} or {@code "faces 4, 6 and 9"}, rising. */
    static String numbers(List<FaceReview> faces) {
        int[] n = faces.stream().mapToInt(FaceReview::number).sorted().toArray();
        if (n.length == 1) return "face " + n[0];
        List<String> said = new ArrayList<>();
        int next = 0;
        while (next < n.length && said.size() < MOST_SAID) {
            int end = next;
            while (end + 1 < n.length && n[end + 1] == n[end] + 1) end++;
            if (end < next + 2) end = next;
            said.add(end == next ? "" + n[next] : n[next] + " to " + n[end]);
            next = end + 1;
        }
        String last = next < n.length ? (n.length - next) + " more" : said.removeLast();
        return "faces " + (said.isEmpty() ? "" : String.join(", ", said) + " and ") + last;
    }

    /** The rows with the numbers of the findings that speak of them. */
    List<FaceReview> told(List<DraftRegion> draft) {
        int[] finding = new int[faces.size()];
        for (DraftRegion d : draft) {
            if (d.finding() == 0) continue;
            for (FaceReview f : under(d.facets()))
                if (finding[f.number() - 1] == 0) finding[f.number() - 1] = d.finding();
        }
        return faces.stream().map(f -> f.withFinding(finding[f.number() - 1])).toList();
    }

    private static final class Maker {
        private final PulledPart pulled;
        private final ExactBody body;
        private final Walls walls;
        private final MoldingLimits limits;
        private final Finish finish;
        private final FormedWall[] wallOf;
        private final Sight[] sight;
        private final FaceBorders borders;
        private final List<FaceShape> shapes;
        private final FaceNames names;
        private final boolean level;
        private final double partingMm;

        Maker(
                PulledPart pulled,
                ExactBody body,
                Walls walls,
                List<FormedWall> formed,
                MoldingLimits limits,
                Finish finish) {
            this.pulled = pulled;
            this.body = body;
            this.walls = walls;
            this.limits = limits;
            this.finish = finish;
            wallOf = new FormedWall[body.faceOf().length];
            for (FormedWall w : formed) for (int f : w.wall().facets()) wallOf[f] = w;
            sight = pulled.sight().at(SightTolerance.LADDER.getFirst());
            borders = FaceBorders.of(body, pulled.edges());
            shapes = FaceShape.of(body, pulled.part().mesh(), pulled.edges(), borders, pulled.pull());
            names = new FaceNames(
                    pulled.pull(),
                    pulled.mesh().box().min().z(),
                    pulled.mesh().box().max().z());
            double leanDeg = SightTolerance.LADDER.getFirst().leanDeg();
            Columns columns = Columns.of(pulled.mesh(), pulled.edges(), sight, leanDeg, pulled.exactShadow());
            Columns.FreeBand band = columns.outerBand();
            level = band.low() <= band.high();
            partingMm = PartingHeights.bestPlane(columns, sight, pulled.edges(), leanDeg);
        }

        FaceTable make() {
            FormedBy[] by = new FormedBy[shapes.size()];
            for (int i = 0; i < by.length; i++) by[i] = seen(shapes.get(i));
            for (int i = 0; i < by.length; i++) if (by[i] == null) by[i] = byNeighbours(by, i);
            List<FaceReview> rows = new ArrayList<>();
            for (int i = 0; i < by.length; i++) rows.add(row(i, shapes.get(i), by[i]));
            double[] area = new double[body.faceOf().length];
            for (int f = 0; f < area.length; f++) area[f] = pulled.mesh().area(f);
            return new FaceTable(pulled, List.copyOf(rows), body.faceOf(), area);
        }

        /** By what the pull sees of it; null when it stands along the pull and is too small to be a wall. */
        private @Nullable FormedBy seen(FaceShape s) {
            double a = 0, b = 0, hidden = 0;
            for (int f : s.facets().facets()) {
                double area = pulled.mesh().area(f);
                if (wallOf[f] != null) {
                    if (wallOf[f].side() == Side.A) a += area;
                    else b += area;
                } else if (sight[f] == Sight.HIDDEN || walls.wallOf()[f] >= 0) hidden += area;
                else if (sight[f] == Sight.UP) a += area;
                else if (sight[f] == Sight.DOWN) b += area;
            }
            if (a + b + hidden == 0) return null;
            if (hidden > a + b) return FormedBy.NEITHER;
            boolean both = s.lean().highDeg() - s.lean().lowDeg() > ROUNDING_DEG;
            if (both && Math.min(a, b) > BOTH_SHARE * (a + b)) return FormedBy.BOTH;
            return a >= b ? FormedBy.A : FormedBy.B;
        }

        private FormedBy byNeighbours(@Nullable FormedBy[] by, int i) {
            for (FaceBorders.Border n : borders.of(i)) {
                FormedBy of = by[n.neighbour()];
                if (of == FormedBy.A || of == FormedBy.B) return of;
            }
            return FormedBy.B;
        }

        private FaceReview row(int i, FaceShape s, FormedBy by) {
            FormedWall wall = mostly(s);
            double[] draft = draft(s, by);
            boolean turned = by == FormedBy.B;
            double asked = asked(s, wall, draft);
            boolean outer = wall != null && wall.shape() == WallShape.OUTER;
            return new FaceReview(
                    i + 1,
                    names.of(s, outer, flatWord(wall)),
                    s.face().kind(),
                    s.size(),
                    s.face().areaMm2(),
                    by,
                    draft[0],
                    draft[1],
                    turned ? s.lean().highAtMm() : s.lean().lowAtMm(),
                    turned ? s.lean().lowAtMm() : s.lean().highAtMm(),
                    s.facets().middleMm(),
                    s.lowMm(),
                    s.highMm(),
                    partingEnd(s, by, wall),
                    by == FormedBy.B ? s.lowMm() : s.highMm(),
                    asked,
                    need(i, by, draft, asked),
                    0);
        }

        /** Least and most draft; of a face made by both halves each half counts what it makes. */
        private static double[] draft(FaceShape s, FormedBy by) {
            double low = s.lean().lowDeg(), high = s.lean().highDeg();
            return switch (by) {
                case A -> new double[] {low, high};
                case B -> new double[] {-high, -low};
                case BOTH -> new double[] {0, Math.max(high, -low)};
                case NEITHER -> low + high < 0 ? new double[] {-high, -low} : new double[] {low, high};
            };
        }

        /**
         * The end nearer to the parting. On walls open at both ends the parting itself where a level one runs through, and the end that their
         * half starts from where the parting steps.
         */
        private double partingEnd(FaceShape s, FormedBy by, @Nullable FormedWall wall) {
            double slack = pulled.part().tolerance().shopMm(), low = s.lowMm(), high = s.highMm();
            boolean through = partingMm > low + slack && partingMm < high - slack;
            if (wall != null && wall.around().opensBothWays()) {
                if (through && level) return partingMm;
                if (!level) return by == FormedBy.B ? high : low;
            }
            double toLow = Math.abs(partingMm - low), toHigh = Math.abs(partingMm - high);
            boolean tie = Math.abs(toLow - toHigh) < slack;
            return (tie ? by != FormedBy.B : toLow < toHigh) ? low : high;
        }

        private @Nullable FormedWall mostly(FaceShape s) {
            FormedWall best = null;
            double most = 0;
            List<FormedWall> seen = Arrays.stream(s.facets().facets())
                    .mapToObj(f -> wallOf[f])
                    .filter(java.util.Objects::nonNull)
                    .distinct()
                    .toList();
            for (FormedWall w : seen) {
                double area = 0;
                for (int f : s.facets().facets())
                    if (wallOf[f] == w) area += pulled.mesh().area(f);
                if (area > most) {
                    most = area;
                    best = w;
                }
            }
            return most > s.face().areaMm2() / 2 ? best : null;
        }

        private static String flatWord(@Nullable FormedWall wall) {
            return wall == null
                    ? "flat wall"
                    : switch (wall.shape()) {
                        case OUTER, INNER, RIB -> wall.shape().words();
                        case POCKET -> "pocket wall";
                        case HOLE, BOSS, FLAT, CURVED -> "flat wall";
                    };
        }

        private double asked(FaceShape s, @Nullable FormedWall wall, double[] draft) {
            if (draft[0] >= Walls.STEEPEST || s.depthMm() < DraftReview.EDGE_MM) return 0;
            return wall == null
                    ? DraftRule.askedDeg(WallShape.FLAT, s.depthMm(), limits, finish)
                    : DraftRule.askedDeg(wall.shape(), wall.wall().depthMm(), limits, finish);
        }

        private Need need(int i, FormedBy by, double[] draft, double asked) {
            if (asked == 0) return Need.NO_WALL;
            if (by == FormedBy.NEITHER || by == FormedBy.BOTH) return Need.CANNOT_HELP;
            if (draft[0] >= asked - DraftRule.BAND_DEG) return Need.ENOUGH;
            boolean rounding = draft[1] - draft[0] > ROUNDING_DEG;
            if (!rounding) return Need.LACKS;
            return startsAtWall(i) ? Need.GOES_ALONG : Need.CANNOT_HELP;
        }

        private boolean startsAtWall(int i) {
            return Arrays.stream(borders.smoothNeighbours(i)).anyMatch(n -> {
                FaceShape s = shapes.get(n);
                return s.face().kind() != ExactFace.Kind.TORUS
                        && Math.max(
                                        Math.abs(s.lean().lowDeg()),
                                        Math.abs(s.lean().highDeg()))
                                < Walls.STEEPEST;
            });
        }
    }
}
