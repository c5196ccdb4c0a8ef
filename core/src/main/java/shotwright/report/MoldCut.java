package shotwright.report;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import shotwright.drawing.Body;
import shotwright.drawing.Drawing;
import shotwright.drawing.Ink;
import shotwright.drawing.Key;
import shotwright.drawing.Pencil;
import shotwright.drawing.Section;
import shotwright.drawing.TechnicalView;
import shotwright.drawing.Texture;
import shotwright.geom.Plane;
import shotwright.geom.Vec2;
import shotwright.geom.Vec3;
import shotwright.mesh.TriMesh;
import shotwright.mesh.complex.Material;
import shotwright.mold.ConvexTool;
import shotwright.region.Region;

/** The closed mold cut by a plane: metal, part, and what was cut out of the metal, each by its own look and named below. */
final class MoldCut {
    private final Body halfA;
    private final Body halfB;
    private final List<Body> bodies;
    private final List<ConvexTool> tools;
    private final Section sectionA;
    private final Map<Material, Region> rooms = new LinkedHashMap<>();
    private final Set<String> holes = new LinkedHashSet<>();

    /**
     * @param halfA half A
     * @param halfB half B
     * @param parts the parts in their cavities
     * @param tools what was cut out, in the order it was cut
     * @param plane the cut, its normal to the eye
     */
    MoldCut(Body halfA, Body halfB, List<TriMesh> parts, List<ConvexTool> tools, Plane plane) {
        this.halfA = halfA;
        this.halfB = halfB;
        this.tools = tools;
        bodies = new ArrayList<>(List.of(halfA, halfB));
        for (TriMesh p : parts) bodies.add(Body.part(p));
        sectionA = Section.of(halfA.mesh(), plane);
        sortOut();
    }

    /** What each kind of cut-out leaves open in the cut; kinds that are not met have none. */
    Region room(Material kind) {
        return rooms.getOrDefault(kind, Region.EMPTY);
    }

    /** Every piece of open room goes to the first tool that made it. */
    private void sortOut() {
        Region open = open();
        for (Material kind : List.of(Material.FEED, Material.VENT, Material.HOLE)) {
            List<Region> own = new ArrayList<>();
            for (ConvexTool t : tools) {
                Region r = t.kind() == kind ? section(t).intersection(open) : Region.EMPTY;
                if (r.isEmpty()) continue;
                own.add(r);
                if (kind == Material.HOLE) holes.add(t.name().split(" \\d")[0]);
            }
            rooms.put(kind, Region.unionOf(own));
            open = open.difference(room(kind));
        }
    }

    /** The block in the cut, less everything that fills it. */
    private Region open() {
        List<Region> filled = bodies.stream()
                .map(b -> Section.of(b.mesh(), sectionA.plane()).region())
                .toList();
        List<Vec2> all = filled.stream()
                .flatMap(r -> r.exteriors().stream())
                .flatMap(List::stream)
                .toList();
        if (all.isEmpty()) return Region.EMPTY;
        Vec2 low = all.getFirst(), high = low;
        for (Vec2 p : all) {
            low = new Vec2(Math.min(low.x(), p.x()), Math.min(low.y(), p.y()));
            high = new Vec2(Math.max(high.x(), p.x()), Math.max(high.y(), p.y()));
        }
        Region open = Region.rectangle(low, high);
        for (Region r : filled) open = open.difference(r);
        return open;
    }

    /** A convex tool in the cut: a square that holds it, cut off by each of its faces. */
    private Region section(ConvexTool t) {
        Vec2 middle = sectionA.inCut(t.around().centre());
        double far = t.around().diagonal();
        List<Vec2> ring = new ArrayList<>();
        for (int k = 0; k < 4; k++) ring.add(middle.plus(new Vec2(k == 0 || k == 3 ? -far : far, k < 2 ? -far : far)));
        for (Plane face : t.planes()) {
            List<Vec2> kept = new ArrayList<>();
            for (int i = 0; i < ring.size(); i++) {
                Vec2 p = ring.get(i), q = ring.get((i + 1) % ring.size());
                double sp = face.signedDistance(sectionA.inSpace(p)), sq = face.signedDistance(sectionA.inSpace(q));
                if (sp <= 0) kept.add(p);
                if (sp <= 0 != sq <= 0) kept.add(p.plus(q.minus(p).times(sp / (sp - sq))));
            }
            ring = kept;
        }
        return ring.size() < 3 ? Region.EMPTY : Region.of(ring);
    }

    Drawing drawing(String caption, double wide, double high) {
        List<Key> keys = keys();
        double below = Key.HIGH * Key.rows(keys, wide - 8);
        Pencil paper = Pencil.on(wide, high);
        List<TechnicalView.Room> filled = List.of(
                new TechnicalView.Room(room(Material.HOLE), Ink.WHITE, Texture.NONE),
                new TechnicalView.Room(room(Material.VENT), Ink.WHITE, Texture.RULED),
                new TechnicalView.Room(room(Material.FEED), Ink.METAL_DARK, Texture.NONE));
        TechnicalView.section(bodies, sectionA.plane(), filled)
                .name("A", middle(halfA.mesh().box().max().z()))
                .name("B", middle(halfB.mesh().box().min().z()))
                .draw(paper, 0, 0, wide, high - below, caption);
        Key.rows(paper, 4, high - below + Key.HIGH / 2, wide - 8, keys);
        return paper.drawing(caption);
    }

    /** Height of the middle between parting plane and back of a half. */
    private double middle(double backMm) {
        return sectionA.inCut(new Vec3(0, 0, backMm / 2)).y();
    }

    private List<Key> keys() {
        List<Key> keys = new ArrayList<>(List.of(
                Key.area("half A", Ink.WHITE, Texture.HATCH_A),
                Key.area("half B", Ink.WHITE, Texture.HATCH_B),
                Key.area("part", Ink.PLASTIC_CUT, Texture.NONE)));
        if (!room(Material.FEED).isEmpty()) keys.add(Key.area("sprue, runner, gate", Ink.METAL_DARK, Texture.NONE));
        if (!room(Material.VENT).isEmpty()) keys.add(Key.area("vent", Ink.WHITE, Texture.RULED));
        if (!holes.isEmpty())
            keys.add(Key.area(
                    String.join(", ", holes.stream().map(MoldCut::opening).toList()), Ink.WHITE, Texture.NONE));
        return keys;
    }

    private static String opening(String tool) {
        return switch (tool) {
            case "pin" -> "ejector pin hole";
            case "dowel", "screw" -> tool + " hole";
            case "pry pocket" -> "pry slot";
            default -> tool;
        };
    }
}
