package shotwright.report.half;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import shotwright.drawing.Contour;
import shotwright.drawing.Section;
import shotwright.geom.Plane;
import shotwright.geom.Transform;
import shotwright.geom.Vec2;
import shotwright.geom.Vec3;
import shotwright.layout.Block;
import shotwright.layout.Half;
import shotwright.layout.LayoutResult;
import shotwright.mesh.TriMesh;
import shotwright.mold.BallShape;
import shotwright.mold.ChannelShape;
import shotwright.mold.ConvexTool;
import shotwright.mold.CutOut;
import shotwright.mold.ExactCircle;
import shotwright.mold.MoldResult;
import shotwright.mold.Purpose;
import shotwright.mold.RoundShape;
import shotwright.mold.Tools;
import shotwright.part.PulledPart;
import shotwright.region.Region;

/** Reads a parting face off the halves: cavities and cores from sections of the meshes, the rest from what was cut. */
public final class FaceReader {
    /** Sections are taken this far off the parting face, so that a flat face is told from what lies behind it. */
    private static final double OFF_MM = 1e-4;

    /** What is not an arc follows the mesh this closely. */
    private static final double THINNED_MM = 0.002;

    private static final double LEAST_MM2 = 0.05;

    /** A surface that lies off the parting face over less than this is no step. */
    private static final double STEP_MM2 = 0.5;

    private static final double BESIDE_MM = 0.02;
    private static final double SAME_MM = 1e-6;

    private final Half half;
    private final LayoutResult layout;
    private final MoldResult mold;
    private final Transform view;
    private final List<TriMesh> parts;
    private final Region rectangle;
    private final List<HalfFace.Hole> holes;

    private FaceReader(Half half, LayoutResult layout, MoldResult mold, PulledPart part) {
        this.half = half;
        this.layout = layout;
        this.mold = mold;
        Block b = layout.block();
        view = HalfFace.view(half, b);
        parts = layout.cavities().stream()
                .map(c -> part.mesh().transform(c.place()))
                .toList();
        double width = half == Half.A ? -b.widthMm() : b.widthMm();
        rectangle = Region.rectangle(Vec2.ZERO, new Vec2(width, b.heightMm()));
        holes = mold.circles().stream()
                .filter(c -> c.half() == half)
                .map(this::hole)
                .toList();
    }

    /** What lies on the parting face of a half. */
    public static HalfFace of(Half half, LayoutResult layout, MoldResult mold, PulledPart part) {
        return new FaceReader(half, layout, mold, part).read(shadow(layout, part));
    }

    private static Region shadow(LayoutResult layout, PulledPart part) {
        List<Region> all = new ArrayList<>();
        for (var c : layout.cavities()) all.add(placed(part.exactShadow().region(), c.place()));
        return Region.unionOf(all);
    }

    private HalfFace read(Region shadowInMold) {
        TriMesh a = mold.a().mesh(), b = mold.b().mesh();
        TriMesh own = (half == Half.A ? a : b).transform(view), other = (half == Half.A ? b : a).transform(view);
        List<TriMesh> seen = parts.stream().map(p -> p.transform(view)).toList();
        Region shadow = placed(shadowInMold, view), filled = filled(shadow);
        Region standing = level(own, OFF_MM), metal = level(own, -OFF_MM), over = level(other, -OFF_MM);
        Region step = standing.union(over).difference(filled.offset(BESIDE_MM));
        List<Contour> cavities, cores = List.of(), steps = List.of();
        if (step.area() > STEP_MM2) {
            cavities = outlines(shadow);
            steps = outlines(step);
        } else {
            List<Region> plastic = new ArrayList<>(List.of(over));
            for (TriMesh p : seen) plastic.add(level(p, -OFF_MM));
            cavities = outlines(closedWhereNot(Region.unionOf(plastic), metal));
            cores = outlines(withoutHoles(standing));
        }
        return new HalfFace(half, layout.block(), own, seen, cavities, cores, steps, cuts(), holes);
    }

    private static Region level(TriMesh mesh, double z) {
        return Section.of(mesh, new Plane(Vec3.Z, z)).region();
    }

    private static Region filled(Region r) {
        return Region.unionOf(r.exteriors().stream().map(Region::of).toList());
    }

    /** With its inner rings closed, except where they go round metal. */
    private static Region closedWhereNot(Region r, Region metal) {
        List<Region> all = new ArrayList<>(List.of(r));
        for (List<Vec2> ring : r.holes()) {
            Region hole = Region.of(ring);
            if (hole.intersection(metal).area() < hole.area() / 2) all.add(hole);
        }
        return Region.unionOf(all);
    }

    /** Cores as they were before pins went through them. */
    private Region withoutHoles(Region standing) {
        List<Region> all = new ArrayList<>(List.of(standing));
        for (HalfFace.Hole h : holes) {
            Region disc = Region.disc(h.at(), h.nearMm() / 2 + BESIDE_MM, 96);
            if (standing.union(disc).area() < standing.area() + disc.area()
                    && filled(standing).contains(disc)) all.add(disc);
        }
        return Region.unionOf(all);
    }

    private static List<Contour> outlines(Region r) {
        List<Contour> out = new ArrayList<>();
        for (Region piece : r.pieces()) {
            if (piece.area() < LEAST_MM2) continue;
            piece.exteriors().forEach(ring -> out.add(Contour.fitted(ring, THINNED_MM)));
            for (List<Vec2> ring : piece.holes())
                if (Region.of(ring).area() > LEAST_MM2) out.add(Contour.fitted(ring, THINNED_MM));
        }
        return out;
    }

    private HalfFace.Hole hole(ExactCircle c) {
        Vec3 from = view.apply(c.centreMm()), along = view.applyToDirection(c.axis());
        boolean mouthNear = along.z() < 0;
        return new HalfFace.Hole(
                kind(c.use()),
                c.name(),
                from.xy(),
                mouthNear ? c.diameterMm() : c.endDiameterMm(),
                mouthNear ? c.endDiameterMm() : c.diameterMm(),
                c.depthMm(),
                c.use() == Purpose.COUNTERBORE || c.use() == Purpose.PIN_RELIEF);
    }

    private static HalfFace.Hole.Kind kind(Purpose use) {
        return switch (use) {
            case DOWEL_HELD, DOWEL_SLIDING -> HalfFace.Hole.Kind.DOWEL;
            case CLEARANCE, COUNTERBORE, THREAD -> HalfFace.Hole.Kind.SCREW;
            case PIN, PIN_RELIEF -> HalfFace.Hole.Kind.PIN;
            case WELL -> HalfFace.Hole.Kind.WELL;
            default -> HalfFace.Hole.Kind.SPRUE;
        };
    }

    private List<HalfFace.Cut> cuts() {
        Set<String> cut = mold.cutOuts().stream().map(CutOut::name).collect(Collectors.toSet());
        List<ConvexTool> own = Tools.of(layout, mold.stepMm(), parts).stream()
                .filter(t -> t.half() == half && cut.contains(t.name()))
                .toList();
        List<HalfFace.Cut> out = new ArrayList<>();
        for (ConvexTool t : own) {
            switch (t.shape()) {
                case ChannelShape c ->
                    out.add(new HalfFace.Cut(
                            cutKind(t), t.name(), channel(c, own), Math.max(c.fromDepthMm(), c.toDepthMm())));
                case RoundShape r
                when Math.abs(r.axis().z()) < 0.5 ->
                    out.add(new HalfFace.Cut(
                            cutKind(t),
                            t.name(),
                            strip(r.fromMm(), r.toMm(), 2 * r.fromRadiusMm(), 2 * r.toRadiusMm(), own),
                            Math.max(r.fromRadiusMm(), r.toRadiusMm())));
                case RoundShape standing -> {}
                case BallShape end -> {}
            }
        }
        return out;
    }

    private static HalfFace.Cut.Kind cutKind(ConvexTool t) {
        return switch (t.purpose()) {
            case PRY_POCKET -> HalfFace.Cut.Kind.PRY;
            case VENT_LAND -> HalfFace.Cut.Kind.VENT;
            case VENT_CHANNEL -> HalfFace.Cut.Kind.VENT_CHANNEL;
            case GATE -> HalfFace.Cut.Kind.GATE;
            case SPRUE -> HalfFace.Cut.Kind.SPRUE;
            default -> HalfFace.Cut.Kind.RUNNER;
        };
    }

    private Contour channel(ChannelShape c, List<ConvexTool> own) {
        Contour slot = strip(c.fromMm(), c.toMm(), c.fromWidthMm(), c.toWidthMm(), own);
        if (slot.corners().stream().anyMatch(k -> k.bulge() != 0)) return slot;
        double length = c.fromMm().distance(c.toMm()), more = (c.toWidthMm() - c.fromWidthMm()) / length;
        Vec3 along = c.toMm().minus(c.fromMm()).unit();
        Contour whole = strip(
                c.fromMm().minus(along.times(c.beforeMm())),
                c.toMm().plus(along.times(c.afterMm())),
                c.fromWidthMm() - more * c.beforeMm(),
                c.toWidthMm() + more * c.afterMm(),
                List.of());
        Region inside = Region.of(
                        whole.corners().stream().map(Contour.Corner::at).toList())
                .intersection(rectangle);
        return inside.isEmpty() ? whole : Contour.straight(inside.exteriors().getFirst());
    }

    /** A strip between two points of the mold frame, with half circles where a channel has round ends. */
    private Contour strip(Vec3 from, Vec3 to, double fromWide, double toWide, List<ConvexTool> own) {
        Vec2 a = view.apply(from).xy(), b = view.apply(to).xy();
        Vec2 left = b.minus(a).unit().left();
        return new Contour(List.of(
                new Contour.Corner(a.minus(left.times(fromWide / 2)), 0),
                new Contour.Corner(b.minus(left.times(toWide / 2)), roundEnd(to, toWide, own)),
                new Contour.Corner(b.plus(left.times(toWide / 2)), 0),
                new Contour.Corner(a.plus(left.times(fromWide / 2)), roundEnd(from, fromWide, own))));
    }

    private static double roundEnd(Vec3 at, double wide, List<ConvexTool> own) {
        boolean found = own.stream().anyMatch(t -> switch (t.shape()) {
            case BallShape b -> b.centreMm().distance(at) < SAME_MM && Math.abs(2 * b.radiusMm() - wide) < SAME_MM;
            case RoundShape r ->
                r.fromMm().distance(at) < SAME_MM
                        && Math.abs(r.axis().z()) > 0.5
                        && Math.abs(2 * r.fromRadiusMm() - wide) < SAME_MM;
            case ChannelShape c -> false;
        });
        return found ? 1 : 0;
    }

    private static Region placed(Region region, Transform t) {
        List<Region> pieces = new ArrayList<>();
        for (Region r : region.pieces()) {
            List<List<Vec2>> holes = r.holes().stream().map(h -> ring(h, t)).toList();
            pieces.add(Region.of(ring(r.exteriors().getFirst(), t), holes));
        }
        return Region.unionOf(pieces);
    }

    private static List<Vec2> ring(List<Vec2> ring, Transform t) {
        return ring.stream().map(p -> t.apply(p.atZ(0)).xy()).toList();
    }
}
