package shotwright.machining.face;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.function.ToDoubleFunction;
import org.jspecify.annotations.Nullable;
import shotwright.cutter.Cutter;
import shotwright.cutter.CutterProfile;
import shotwright.geom.Box3;
import shotwright.geom.Vec2;
import shotwright.geom.Vec3;
import shotwright.machining.feed.CutData;
import shotwright.machining.feed.CutKind;
import shotwright.machining.feed.Shopfloor;
import shotwright.machining.path.PathBuilder;
import shotwright.machining.workpiece.Phase;
import shotwright.machining.workpiece.Task;

/** Plans facing, the outside contour and the breaking of outside edges. All passes climb. */
public final class FacePlanner {
    /** Width of a facing pass as a share of the cutter (handbook practice 0.6 to 0.75). */
    private static final double PASS_OF_CUTTER = 0.65;

    private static final double RUN_OUT_MM = 2;

    /** What the last pass round the outside takes. */
    private static final double LAST_PASS_MM = 0.1;

    private static final double DEEPEST_FACE_PASS_MM = 0.5;

    private final Shopfloor shop;

    public FacePlanner(Shopfloor shop) {
        this.shop = shop;
    }

    private record Chosen(Cutter cutter, CutData data) {}

    /**
     * Takes the skin off a face.
     *
     * @param face what is faced, its top where the skin begins
     * @param toZMm where the face shall lie
     * @param alongX lines along x, else along y
     * @return null when no cutter on the rack can do it
     */
    public @Nullable Task face(Box3 face, double toZMm, boolean alongX) {
        double skinMm = face.max().z() - toZMm;
        Chosen c = best(
                List.of(Cutter.Shape.FACE, Cutter.Shape.FLAT),
                CutKind.FACE,
                Math.min(skinMm, DEEPEST_FACE_PASS_MM),
                x -> PASS_OF_CUTTER * x.largestDiaMm(),
                x -> x.feedMmPerMin() * x.widthMm() * x.depthMm());
        if (c == null) return null;
        return new Task(
                Phase.FACE,
                "face to size",
                c.cutter,
                stickoutMm(c.cutter),
                c.data.speedRpm(),
                face.min().xy(),
                (pen, clearZMm) -> faceLines(pen, clearZMm, face, toZMm, alongX, c));
    }

    /** One-way lines, metal on the right of the cutter's way, so that it climbs. */
    private static void faceLines(PathBuilder pen, double clearZMm, Box3 face, double toZMm, boolean alongX, Chosen c) {
        double radius = c.cutter.largestDiaMm() / 2, step = c.data.widthMm();
        double across = alongX ? face.size().y() : face.size().x();
        int lines = Math.max(1, (int) Math.ceil(across / step));
        double skinMm = face.max().z() - toZMm;
        int levels = Math.max(1, (int) Math.ceil(skinMm / Math.min(c.data.depthMm(), DEEPEST_FACE_PASS_MM) - 1e-9));
        double out = radius + RUN_OUT_MM;
        for (int k = 1; k <= levels; k++) {
            double z = face.max().z() - skinMm * k / levels;
            for (int i = 0; i < lines; i++) {
                // edge of the cut after this line, from the near side, its corner beyond; the middle lies inside it by
                // the radius
                double
                        edge =
                                across * (i + 1) / lines
                                        + c.cutter.cornerRadiusMm().value(),
                        middle = edge - radius;
                Vec3 a, b;
                if (alongX) {
                    double y = face.max().y() - edge + radius;
                    a = new Vec3(face.min().x() - out, y, z);
                    b = new Vec3(face.max().x() + out, y, z);
                } else {
                    double x = face.min().x() + middle;
                    a = new Vec3(x, face.min().y() - out, z);
                    b = new Vec3(x, face.max().y() + out, z);
                }
                pen.over(a, Math.min(clearZMm, face.max().z() + RUN_OUT_MM));
                pen.line(b, c.data.feedMmPerMin());
            }
        }
        pen.rapidZ(clearZMm);
    }

    /**
     * Mills the outside to size.
     *
     * @param raw the block as sawn
     * @param size the block as it shall be; z from the depth to be reached to the top
     * @return null when no cutter on the rack can do it
     */
    public @Nullable Task outside(Box3 raw, Box3 size) {
        double deepMm = size.size().z();
        double extraMm = Math.max(
                Math.max(
                        size.min().x() - raw.min().x(),
                        raw.max().x() - size.max().x()),
                Math.max(
                        size.min().y() - raw.min().y(),
                        raw.max().y() - size.max().y()));
        if (extraMm < 1e-6) return null;
        Chosen c = best(
                List.of(Cutter.Shape.FLAT),
                CutKind.ROUGH,
                deepMm,
                x -> Math.max(LAST_PASS_MM, Math.min(extraMm, 0.4 * x.diaMm().value())),
                x -> x.cutter().reachMm().value() >= deepMm ? x.feedMmPerMin() * x.depthMm() * x.widthMm() : 0);
        if (c == null) return null;
        return new Task(
                Phase.OUTSIDE,
                "mill outside to size",
                c.cutter,
                Math.max(stickoutMm(c.cutter), deepMm + 1),
                c.data.speedRpm(),
                size.min().xy(),
                (pen, clearZMm) -> rounds(pen, clearZMm, raw, size, extraMm, c));
    }

    /** Clockwise seen from above, so that the metal lies on the right of the cutter's way; corners on arcs. */
    private static void rounds(PathBuilder pen, double clearZMm, Box3 raw, Box3 size, double extraMm, Chosen c) {
        double radius = c.cutter.radiusMm(), feed = c.data.feedMmPerMin();
        double deepMm = size.size().z();
        int levels = Math.max(1, (int) Math.ceil(deepMm / c.data.depthMm() - 1e-9));
        List<Double> leaves = new ArrayList<>();
        double rough = extraMm - LAST_PASS_MM;
        int passes = Math.max(0, (int) Math.ceil(rough / Math.max(c.data.widthMm(), LAST_PASS_MM) - 1e-9));
        for (int i = 1; i <= passes; i++) leaves.add(LAST_PASS_MM + rough * (passes - i) / passes);
        leaves.add(0.0);
        boolean endsOnly = raw.max().y() - size.max().y() < 1e-6
                && size.min().y() - raw.min().y() < 1e-6;
        for (int k = 1; k <= levels; k++) {
            double z = size.max().z() - deepMm * k / levels;
            for (double left : leaves) {
                if (endsOnly) {
                    ends(pen, clearZMm, size, radius, left, z, feed);
                    continue;
                }
                round(pen, clearZMm, raw, size, radius, left, z, feed);
            }
        }
        pen.rapidZ(clearZMm);
    }

    /** Both ends alone, where the sides stay as they are. */
    private static void ends(
            PathBuilder pen, double clearZMm, Box3 size, double radius, double left, double z, double feed) {
        double off = radius + RUN_OUT_MM;
        end(
                pen,
                clearZMm,
                size.min().x() - left - radius,
                size.min().y() - off,
                size.max().y() + off,
                z,
                feed);
        end(
                pen,
                clearZMm,
                size.max().x() + left + radius,
                size.max().y() + off,
                size.min().y() - off,
                z,
                feed);
    }

    private static void end(
            PathBuilder pen, double clearZMm, double x, double fromYMm, double toYMm, double z, double feed) {
        pen.over(new Vec3(x, fromYMm, clearZMm), clearZMm);
        pen.rapidZ(z);
        pen.line(new Vec3(x, toYMm, z), feed);
        pen.rapidZ(clearZMm);
    }

    private static void round(
            PathBuilder pen, double clearZMm, Box3 raw, Box3 size, double radius, double left, double z, double feed) {
        double x0 = size.min().x() - left, x1 = size.max().x() + left;
        double y0 = size.min().y() - left, y1 = size.max().y() + left;
        double leadMm = radius + RUN_OUT_MM;
        // in and out along the left side, from below its corner
        Vec3 start = new Vec3(x0 - radius, Math.min(raw.min().y(), y0) - leadMm, z);
        pen.over(start.xy().atZ(clearZMm), clearZMm);
        pen.rapidZ(Math.max(z, raw.max().z() + 1));
        pen.lineZ(z, feed);
        pen.line(new Vec3(x0 - radius, y1, z), feed);
        pen.arc(new Vec3(x0, y1 + radius, z), new Vec2(x0, y1), false, feed);
        pen.line(new Vec3(x1, y1 + radius, z), feed);
        pen.arc(new Vec3(x1 + radius, y1, z), new Vec2(x1, y1), false, feed);
        pen.line(new Vec3(x1 + radius, y0, z), feed);
        pen.arc(new Vec3(x1, y0 - radius, z), new Vec2(x1, y0), false, feed);
        pen.line(new Vec3(x0, y0 - radius, z), feed);
        pen.arc(new Vec3(x0 - radius, y0, z), new Vec2(x0, y0), false, feed);
        pen.line(new Vec3(x0 - radius, y0 + 1, z), feed);
        pen.line(new Vec3(x0 - radius - 1, y0 + 1, z), feed);
        pen.rapidZ(clearZMm);
    }

    /**
     * Breaks the four outside edges of the top with a cone of 45°; the parting line, gates and shut-offs stay sharp.
     *
     * @param size the block as it is, its top where the edges are
     * @param widthMm width of the bevel in plan
     */
    public @Nullable Task chamfer(Box3 size, double widthMm) {
        Cutter v = shop.cutters().stream()
                .filter(c -> c.shape() == Cutter.Shape.V || c.shape() == Cutter.Shape.SPOT)
                .filter(c -> Math.abs(c.taperDeg().value() - 45) < 0.5)
                .max(Comparator.comparingDouble(Cutter::largestDiaMm))
                .orElse(null);
        if (v == null) return null;
        CutterProfile end = CutterProfile.of(v);
        // the cone's middle runs on the edge
        double middleMm = (end.flatRadiusMm() + end.largestRadiusMm()) / 2;
        CutData data = v.shape().mills() ? data(v, CutKind.WALL, widthMm, widthMm) : null;
        double feed = data == null ? 400 : data.feedMmPerMin();
        double speed = data == null ? Math.min(shop.mill().maxRpm().value(), 8000) : data.speedRpm();
        double tip = size.max().z() - end.heightMm(middleMm) - widthMm / 2;
        return new Task(
                Phase.CHAMFER,
                "break outside edges",
                v,
                stickoutMm(v),
                speed,
                size.min().xy(),
                (pen, clearZMm) -> {
                    round(pen, clearZMm, size, size, middleMm - widthMm / 2, 0, tip, feed);
                    pen.rapidZ(clearZMm);
                });
    }

    private @Nullable Chosen best(
            List<Cutter.Shape> shapes,
            CutKind kind,
            double depthMm,
            ToDoubleFunction<Cutter> widthMm,
            ToDoubleFunction<CutDataOf> worth) {
        Chosen best = null;
        double most = 0;
        for (Cutter c : shop.cutters()) {
            if (!shapes.contains(c.shape())) continue;
            CutData d = data(c, kind, depthMm, widthMm.applyAsDouble(c));
            if (d == null) continue;
            double w = worth.applyAsDouble(new CutDataOf(c, d));
            if (w > most) {
                most = w;
                best = new Chosen(c, d);
            }
        }
        return best;
    }

    /** A cutter with its data, to be weighed. */
    private record CutDataOf(Cutter cutter, CutData data) {
        double feedMmPerMin() {
            return data.feedMmPerMin();
        }

        double depthMm() {
            return data.depthMm();
        }

        double widthMm() {
            return data.widthMm();
        }
    }

    private @Nullable CutData data(Cutter c, CutKind kind, double depthMm, double widthMm) {
        return shop.cut(c, stickoutMm(c), kind, depthMm, widthMm);
    }

    private static double stickoutMm(Cutter c) {
        return Math.max(c.reachMm().value(), c.fluteLengthMm().value());
    }
}
