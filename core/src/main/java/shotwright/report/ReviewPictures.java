package shotwright.report;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.OptionalInt;
import shotwright.drawing.Body;
import shotwright.drawing.Callout;
import shotwright.drawing.ColourMap;
import shotwright.drawing.ColourScale;
import shotwright.drawing.DraftBars;
import shotwright.drawing.Drawing;
import shotwright.drawing.FacetPaint;
import shotwright.drawing.Legend;
import shotwright.drawing.Pen;
import shotwright.drawing.Pencil;
import shotwright.drawing.Picture;
import shotwright.drawing.Scene;
import shotwright.drawing.TechnicalView;
import shotwright.drawing.Texture;
import shotwright.drawing.View;
import shotwright.finding.Finding;
import shotwright.geom.Box3;
import shotwright.geom.Plane;
import shotwright.geom.Vec2;
import shotwright.geom.Vec3;
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
    static final View FROM_A = View.first().named("from half A");
    static final View FROM_B = View.underneath().named("from half B");
    /** Above this many facets inner edges of an outline are left out. */
    private static final int FINE = 60_000;

    private ReviewPictures() {}

    static void add(Map<String, Pictures.Draws> to, ReviewResult review, boolean inch) {
        to.put("20-part-from-A", () -> drawn(shaded(review, FROM_A)));
        to.put("20-part-from-B", () -> drawn(shaded(review, FROM_B)));
        if (!review.draft().isEmpty() || !review.undercuts().isEmpty()) {
            to.put("20-draft", () -> drawn(draft(review, FROM_A)));
            to.put("20-draft-from-B", () -> drawn(draft(review, FROM_B)));
        }
        if (!review.draft().isEmpty()) to.put("20-draft-by-wall", () -> bars(review));
        if (review.wall().samples().count() > 0) {
            to.put("20-wall", () -> wall(review, FROM_A, inch));
            to.put("20-wall-from-B", () -> wall(review, FROM_B, inch));
        }
        to.put("20-section", () -> section(review, inch));
    }

    private static Drawing drawn(Scene scene) {
        return Picture.drawing(scene, WIDE, HIGH, Pictures.DPI);
    }

    static Scene shaded(ReviewResult review, View view) {
        return Scene.of(Body.part(review.pulled().mesh())).from(view).with(numbers(review));
    }

    /** Findings that have a place, numbered as in the list. */
    private static List<Callout> numbers(ReviewResult review) {
        List<Callout> all = new ArrayList<>();
        for (int i = 0; i < review.findings().size() && all.size() < MOST_NUMBERS; i++) {
            Finding f = review.findings().get(i);
            Vec3 at = f.atMm();
            if (at != null)
                all.add(new Callout(i + 1, review.pulled().toPulled().apply(at)));
        }
        return all;
    }

    static Scene draft(ReviewResult review, View view) {
        TriMesh mesh = review.pulled().mesh();
        double[] has = new double[mesh.facetCount()], asked = new double[mesh.facetCount()];
        Arrays.fill(has, 90);
        Arrays.fill(asked, 1);
        boolean[] undercut = new boolean[mesh.facetCount()];
        double usual = 1, most = 0;
        for (DraftRegion r : review.draft()) {
            if (r.areaMm2() > most) {
                most = r.areaMm2();
                usual = r.askedDeg();
            }
            for (int f : r.facets()) {
                has[f] = r.hasDeg();
                asked[f] = Math.max(1e-3, r.shortAreaMm2() > 0 ? r.askedDeg() : Math.min(r.askedDeg(), r.hasDeg()));
            }
        }
        for (Undercut u : review.undercuts()) for (int f : u.facets()) undercut[f] = true;
        double legend = usual > 0 ? usual : 1;
        FacetPaint paint = FacetPaint.draft(has, asked, f -> undercut[f], legend);
        return Scene.of(Body.part(mesh, paint)).from(view).with(Legend.draft(legend));
    }

    private static Drawing bars(ReviewResult review) {
        List<DraftBars.Row> rows = new ArrayList<>();
        for (DraftRegion r :
                review.draft().subList(0, Math.min(MOST_ROWS, review.draft().size()))) {
            double has = r.shortAreaMm2() > 0 ? r.hasDeg() : Math.max(r.hasDeg(), r.askedDeg());
            OptionalInt number = r.finding() > 0 ? OptionalInt.of(r.finding()) : OptionalInt.empty();
            rows.add(new DraftBars.Row(r.name(), r.faces(), r.depthMm(), has, r.askedDeg(), number));
        }
        return DraftBars.drawing(rows, WIDE);
    }

    private static Drawing wall(ReviewResult review, View view, boolean inch) {
        double unit = inch ? 1 / 25.4 : 1;
        double[] mm = new WallMap(review.pulled().mesh(), review.wall().samples()).atCorners();
        double low = review.wall().minMm() * unit, high = review.wall().maxMm() * unit;
        for (int i = 0; i < mm.length; i++) mm[i] *= unit;
        ColourScale scale = ColourScale.even(ColourMap.THICKNESS, low, high);
        double from = scale.from(), to = scale.to(), middle = review.wall().medianMm() * unit;
        String title = "wall, " + (inch ? "in" : "mm");
        Legend legend = Legend.of(title, scale, inch ? 3 : 2, from, (from + to) / 2, to);
        if (middle > from && middle < to) legend = legend.limitedAt(middle, "median");
        Body body = Body.part(review.pulled().mesh(), new FacetPaint.ByCorner(mm, scale));
        return drawn(Scene.of(body).from(view).with(legend));
    }

    private static Drawing section(ReviewResult review, boolean inch) {
        TriMesh mesh = review.pulled().mesh();
        Box3 box = mesh.box();
        double y = box.centre().y() + 1e-4 * box.size().y();
        TechnicalView cut = TechnicalView.section(mesh, new Plane(new Vec3(0, -1, 0), -y));
        TechnicalView outline = mesh.facetCount() > FINE
                ? new TechnicalView().area(review.pulled().shadow(), -1, Texture.NONE, Pen.THICK)
                : TechnicalView.outline(mesh, View.fromA());
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
