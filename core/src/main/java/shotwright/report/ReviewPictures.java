package shotwright.report;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.OptionalInt;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.jspecify.annotations.Nullable;
import shotwright.drawing.Body;
import shotwright.drawing.Callout;
import shotwright.drawing.ColourMap;
import shotwright.drawing.ColourScale;
import shotwright.drawing.Creases;
import shotwright.drawing.DraftBars;
import shotwright.drawing.Drawing;
import shotwright.drawing.FacetPaint;
import shotwright.drawing.Legend;
import shotwright.drawing.Pen;
import shotwright.drawing.Pencil;
import shotwright.drawing.Picture;
import shotwright.drawing.Scene;
import shotwright.drawing.TechnicalView;
import shotwright.drawing.View;
import shotwright.finding.Finding;
import shotwright.geom.Box3;
import shotwright.geom.Plane;
import shotwright.geom.Vec2;
import shotwright.geom.Vec3;
import shotwright.measure.LengthUnit;
import shotwright.mesh.Bvh;
import shotwright.mesh.Probe;
import shotwright.mesh.TriMesh;
import shotwright.review.DraftRegion;
import shotwright.review.ReviewResult;
import shotwright.review.Undercut;

/** The part as the review sees it: circle numbers, draft and wall maps, cut and outline. */
final class ReviewPictures {
    private static final double WIDE = 180;
    private static final double HIGH = 130;
    private static final int MOST_NUMBERS = 24;
    private static final int MOST_ROWS = 16;
    private static final int MOST_BANDS = 8;
    private static final int MOST_TRIED = 200;
    /** From this share of the part's diagonal on a place lies beside it. */
    private static final double BESIDE = 0.02;

    static final View FROM_A = View.first().named("from half A");
    static final View FROM_B = View.underneath().named("from half B");
    private final ReviewResult review;
    private final boolean inch;
    private final Creases part;
    private @Nullable WallMap walls;

    ReviewPictures(ReviewResult review, boolean inch) {
        this.review = review;
        this.inch = inch;
        part = Creases.of(review.pulled().turned().edges());
    }

    void add(Map<String, Pictures.Draws> to) {
        to.put("20-part-from-A", () -> drawn(shaded(FROM_A)));
        to.put("20-part-from-B", () -> drawn(shaded(FROM_B)));
        if (!review.draft().isEmpty() || !review.undercuts().isEmpty()) {
            to.put("20-draft", () -> drawn(draft(FROM_A)));
            to.put("20-draft-from-B", () -> drawn(draft(FROM_B)));
        }
        if (!review.draft().isEmpty()) to.put("20-draft-by-wall", this::bars);
        if (review.wall().samples().count() > 0) {
            to.put("20-wall", () -> drawn(wall(FROM_A)));
            to.put("20-wall-from-B", () -> drawn(wall(FROM_B)));
        }
        to.put("20-section", this::section);
    }

    private static Drawing drawn(Scene scene) {
        return Picture.drawing(scene, WIDE, HIGH, Pictures.DPI);
    }

    /** The part with the findings that are seen from there in circles; what is seen from neither side stands in the view from half A. */
    Scene shaded(View view) {
        List<Callout> circles = circles(view, circled(review));
        int more = without(review).size();
        String caption = view.name()
                + (hidden(circles) ? "; dashed: hidden from both sides" : "")
                + (circles.stream().anyMatch(c -> c.foot() != null) ? "; chain line: beside the part" : "")
                + (more > 0 ? "; " + FirstAnswerPage.count(more, "more finding") + " in the summary" : "");
        return scene(Body.part(part), view, circles).captioned(caption);
    }

    private Scene scene(Body body, View view, List<Callout> circles) {
        return Scene.of(body).from(view).with(circles).in(inch ? LengthUnit.IN : LengthUnit.MM);
    }

    /** Numbers, counted from 1, of the findings that stand in circles: those with a place, the heaviest first when there are too many. */
    static Set<Integer> circled(ReviewResult review) {
        List<Finding> all = review.findings();
        return IntStream.rangeClosed(1, all.size())
                .filter(n -> all.get(n - 1).atMm() != null)
                .boxed()
                .sorted(Comparator.comparing(n -> all.get(n - 1).severity()))
                .limit(MOST_NUMBERS)
                .collect(Collectors.toCollection(TreeSet::new));
    }

    /** Numbers of the findings that have no circle. */
    static List<Integer> without(ReviewResult review) {
        Set<Integer> circled = circled(review);
        return IntStream.rangeClosed(1, review.findings().size())
                .filter(n -> !circled.contains(n))
                .boxed()
                .toList();
    }

    /** Those of the numbers that a view shows: every number at least in one of the two views. */
    private List<Callout> circles(View view, Set<Integer> numbers) {
        List<Callout> all = new ArrayList<>();
        for (int n : numbers) {
            Vec3 at = review.findings().get(n - 1).atMm();
            if (at == null) continue;
            Vec3 place = review.pulled().toPulled().apply(at);
            if (faces(place, view) || view.equals(FROM_A) && !faces(place, FROM_B)) all.add(circle(n, place));
        }
        return all;
    }

    /** A place beside the part gets a chain line to the part. */
    private Callout circle(int number, Vec3 place) {
        Bvh.Hit near = review.pulled().tree().nearest(place, Double.POSITIVE_INFINITY);
        double far = BESIDE * review.pulled().mesh().box().diagonal();
        return near == null || near.t() < far ? new Callout(number, place) : new Callout(number, place, near.point());
    }

    private boolean hidden(List<Callout> circles) {
        return circles.stream().anyMatch(c -> !faces(c.at(), FROM_A) && !faces(c.at(), FROM_B));
    }

    /** Whether nothing lies between a place and the eye. */
    private boolean faces(Vec3 place, View view) {
        double off = 1e-3 * review.pulled().mesh().box().diagonal();
        Probe ray = new Probe().aim(place, view.toEye());
        return !review.pulled().tree().anyHit(ray, off, Double.POSITIVE_INFINITY, Bvh.NONE);
    }

    /** How much of the draft asked for each wall has, with the numbers of the findings about draft and undercuts. */
    Scene draft(View view) {
        TriMesh mesh = review.pulled().mesh();
        boolean[] undercut = new boolean[mesh.facetCount()];
        for (Undercut u : review.undercuts()) for (int f : u.facets()) undercut[f] = true;
        int[] wall = new int[mesh.facetCount()];
        Arrays.fill(wall, -1);
        double usual = 1, most = 0;
        for (int i = 0; i < review.draft().size(); i++) {
            DraftRegion r = review.draft().get(i);
            if (r.areaMm2() > most) {
                most = r.areaMm2();
                usual = r.askedDeg();
            }
            for (int f : r.facets()) wall[f] = i;
        }
        wall = EvenBorders.of(review.pulled().edges(), wall, undercut);
        double[] has = new double[wall.length], asked = new double[wall.length];
        for (int f = 0; f < wall.length; f++) {
            DraftRegion r = wall[f] < 0 ? null : review.draft().get(wall[f]);
            has[f] = r == null ? 90 : r.hasDeg();
            asked[f] = r == null
                    ? 1
                    : Math.max(1e-3, r.shortAreaMm2() > 0 ? r.askedDeg() : Math.min(r.askedDeg(), r.hasDeg()));
        }
        double legend = usual > 0 ? usual : 1;
        FacetPaint paint = FacetPaint.draft(has, asked, f -> undercut[f], legend);
        return scene(Body.part(part, paint), view, wallCircles(view)).with(Legend.draft(legend));
    }

    /** Numbers of the findings about draft and undercuts, each where most of its faces is seen. */
    private List<Callout> wallCircles(View view) {
        Map<Integer, int[]> facets = new TreeMap<>();
        for (DraftRegion r : review.draft()) facets.putIfAbsent(r.finding(), r.facets());
        for (Undercut u : review.undercuts()) facets.putIfAbsent(u.finding(), u.facets());
        facets.keySet().retainAll(circled(review));
        TriMesh mesh = review.pulled().mesh();
        List<Callout> all = new ArrayList<>();
        facets.forEach((number, own) -> Arrays.stream(own)
                .filter(f -> mesh.doubleAreaNormal(f).dot(view.toEye()) > 0)
                .boxed()
                .sorted(Comparator.comparingDouble(
                        f -> -mesh.doubleAreaNormal(f).dot(view.toEye())))
                .limit(MOST_TRIED)
                .map(mesh::centroid)
                .filter(p -> faces(p, view))
                .findFirst()
                .ifPresent(p -> all.add(new Callout(number, p))));
        return all;
    }

    private Drawing bars() {
        List<DraftBars.Row> rows = new ArrayList<>();
        for (DraftRegion r :
                review.draft().subList(0, Math.min(MOST_ROWS, review.draft().size()))) {
            double has = r.shortAreaMm2() > 0 ? r.hasDeg() : Math.max(r.hasDeg(), r.askedDeg());
            OptionalInt number = r.finding() > 0 ? OptionalInt.of(r.finding()) : OptionalInt.empty();
            rows.add(new DraftBars.Row(r.name(), r.faces(), r.depthMm(), has, r.askedDeg(), number));
        }
        return DraftBars.drawing(rows, WIDE, inch ? LengthUnit.IN : LengthUnit.MM);
    }

    /** Wall as it is written, in bands between round values, each band with its wall written on it. */
    Scene wall(View view) {
        if (walls == null)
            walls = WallMap.of(
                    review.pulled().turned().edges(),
                    review.pulled().tree(),
                    review.wall().samples());
        double unit = inch ? LengthUnit.IN.mm() : 1;
        double figure = inch ? 1000 : 100;
        double[] shown = Arrays.stream(walls.cornersMm())
                .map(mm -> Math.rint(mm / unit * figure) / figure)
                .toArray();
        ColourScale scale = ColourScale.rounded(
                ColourMap.THICKNESS, review.wall().minMm() / unit, review.wall().maxMm() / unit, MOST_BANDS);
        Legend legend = Legend.of(
                "wall, " + (inch ? "in" : "mm"),
                scale,
                inch ? 3 : 2,
                scale.limits().toArray(Double[]::new));
        double middle = review.wall().medianMm() / unit;
        if (middle > scale.from() && middle < scale.to()) legend = legend.limitedAt(middle, "middle");
        return scene(Body.part(walls.surface(), new FacetPaint.ByCorner(shown, scale)), view, List.of())
                .with(legend)
                .captioned(view.name() + "; the end bands hold all that is thinner or thicker");
    }

    private Drawing section() {
        TriMesh mesh = review.pulled().mesh();
        Box3 box = mesh.box();
        double y = box.centre().y() + 1e-4 * box.size().y();
        TechnicalView cut = TechnicalView.section(part, new Plane(new Vec3(0, -1, 0), -y));
        TechnicalView outline =
                TechnicalView.outline(Body.part(part), review.pulled().shadow(), View.fromA());
        outline.row(List.of(new Vec2(box.min().x(), y), new Vec2(box.max().x(), y)), Pen.CUT);
        Numbers show = inch ? Numbers.inch() : Numbers.metric();
        Pencil paper = Pencil.on(WIDE, HIGH);
        sized(outline, show).draw(paper, 2, 2, WIDE / 2 - 4, HIGH - 4, "outline from half A");
        sized(cut, show).draw(paper, WIDE / 2 + 2, 2, WIDE / 2 - 4, HIGH - 4, "cut through the middle");
        return paper.drawing("outline and cut with overall sizes");
    }

    /** Overall width below and height at the left. */
    static TechnicalView sized(TechnicalView v, Numbers show) {
        Vec2 low = v.low(), high = v.high();
        v.size(TechnicalView.Side.BELOW, low, new Vec2(high.x(), low.y()), show.coarse(high.x() - low.x()));
        return v.size(TechnicalView.Side.LEFT, low, new Vec2(low.x(), high.y()), show.coarse(high.y() - low.y()));
    }
}
