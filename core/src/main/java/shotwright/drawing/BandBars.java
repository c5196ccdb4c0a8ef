package shotwright.drawing;

import java.util.ArrayList;
import java.util.List;
import shotwright.measure.Band;

/** Estimates of one quantity under each other: bar for what each is worth, tick for its middle, upright lines for limits. */
public final class BandBars {
    private static final double ROW = 9;

    private final String unit;
    private final List<Estimate> estimates = new ArrayList<>();
    private final List<Limit> limits = new ArrayList<>();

    private record Estimate(String name, String basis, Band band) {}

    private record Limit(double at, String words, boolean solid) {}

    /** Bars in a unit, for example kN. */
    public BandBars(String unit) {
        this.unit = unit;
    }

    /** One estimate with what it rests on. */
    public BandBars estimate(String name, String basis, Band band) {
        estimates.add(new Estimate(name, basis, band));
        return this;
    }

    /** A limit that counts. */
    public BandBars limit(double at, String words) {
        limits.add(new Limit(at, words, true));
        return this;
    }

    /** A limit for orientation. */
    public BandBars level(double at, String words) {
        limits.add(new Limit(at, words, false));
        return this;
    }

    public double height() {
        return 9 + ROW * estimates.size() + (limits.size() > 1 ? 7.5 : 4);
    }

    public Drawing drawing(String title, double width) {
        Pencil p = Pencil.on(width, height());
        double left = 16
                + estimates.stream()
                        .mapToDouble(e -> Math.max(
                                Typeface.width(e.name(), Letter.LABEL), Typeface.width(e.basis(), Letter.SMALL)))
                        .max()
                        .orElse(20);
        double right = width - 6, bottom = 7 + ROW * estimates.size();
        double most = Math.max(
                estimates.stream().mapToDouble(e -> e.band().high()).max().orElse(1),
                limits.stream().mapToDouble(Limit::at).max().orElse(0));
        Axis axis = Axis.fromZero(unit, 0, most * 1.02);
        p.text(left - 3, 4, unit, Letter.SMALL.end());
        int figures = (int) Math.max(2, (right - left) / 18);
        for (double t : axis.ticks(figures)) {
            double x = left + (right - left) * axis.share(t);
            p.text(x, 4, axis.figure(t, figures), Letter.SMALL.middle());
            p.line(x, 5.5, x, bottom, t == 0 ? Pen.THIN : new Pen(0.18, Ink.HAIR));
        }
        for (int i = 0; i < estimates.size(); i++) row(p, estimates.get(i), axis, left, right, 7 + ROW * (i + 0.5));
        limits(p, axis, left, right, bottom);
        return p.drawing(title);
    }

    private static void row(Pencil p, Estimate e, Axis axis, double left, double right, double y) {
        p.text(0, y - 0.4, e.name(), Letter.LABEL).text(0, y + 3, e.basis(), Letter.SMALL);
        double a = left + (right - left) * axis.share(e.band().low());
        double b = left + (right - left) * axis.share(e.band().high());
        double m = left + (right - left) * axis.share(e.band().nominal());
        p.fillBox(a, y - 1.7, b - a, 3.4, Ink.METAL_B);
        p.box(a, y - 1.7, b - a, 3.4, Pen.THIN);
        p.line(m, y - 2.4, m, y + 2.4, new Pen(0.6, Ink.BLACK));
        String figure = Plot.short3(e.band().nominal());
        double wide = Typeface.width(figure, Letter.LABEL.heavy());
        boolean room = a - wide - 1.5 > left;
        p.textCentred(
                room ? a - 1.2 : b + 1.2, y, figure, room ? Letter.LABEL.heavy().end() : Letter.LABEL.heavy());
    }

    private void limits(Pencil p, Axis axis, double left, double right, double bottom) {
        List<Limit> row = new ArrayList<>(limits);
        row.sort(java.util.Comparator.comparingDouble(Limit::at));
        double taken = -1e9;
        for (Limit l : row) {
            double x = left + (right - left) * axis.share(l.at());
            Pen pen = l.solid() ? new Pen(0.6, Ink.BLACK) : new Pen(0.25, Ink.BLACK).dashed(1.0, 0.8);
            p.line(x, 6, x, bottom + 0.8, pen);
            double wide = Typeface.width(l.words(), Letter.SMALL);
            double centre = Math.clamp(x, left + wide / 2 - 14, right + 4 - wide / 2);
            boolean free = centre - wide / 2 > taken + 2;
            p.text(
                    centre,
                    bottom + (free ? 4 : 7.6),
                    l.words(),
                    Letter.SMALL.middle().in(Ink.BLACK));
            if (free) taken = centre + wide / 2;
        }
    }
}
