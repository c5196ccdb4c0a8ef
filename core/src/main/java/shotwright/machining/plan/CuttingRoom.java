package shotwright.machining.plan;

import java.util.ArrayList;
import java.util.BitSet;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import shotwright.cutter.CutterProfile;
import shotwright.cutter.MountedCutter;
import shotwright.geom.Box3;
import shotwright.machining.choice.CandidateTable;
import shotwright.machining.contact.DropCutter;
import shotwright.machining.contact.LocationMap;
import shotwright.machining.contact.TopSurface;
import shotwright.machining.contact.TriangleTree;
import shotwright.machining.contour.LevelContour;
import shotwright.machining.contour.Offset;
import shotwright.machining.finish.RestZones;
import shotwright.machining.workpiece.Workpiece;
import shotwright.region.Region;

/**
 * What roughing and finishing of a half ask again and again: the surface from above, where a cutter may stand at a height, level floors.
 */
final class CuttingRoom {
    /** Left on walls and on floors by roughing (common practice). */
    static final double WALL_STOCK_MM = 0.25, FLOOR_STOCK_MM = 0.15;

    /** Height for ways across, over everything that stands. */
    static final double RETRACT_MM = 1;

    /** Lines are asked for so much above a level floor: in its very height every place is a tie. */
    static final double OFF_FLOOR_MM = 0.001;

    static final double SAME_FLOOR_MM = 0.002;

    /** Smaller floors are specks of the map. */
    private static final double LEAST_FLOOR_MM2 = 0.02;

    /** Air around neck, shank and holder. */
    private static final double BODY_AIR_MM = 0.3;

    private static final double EVERYWHERE_MM = 50;

    final Workpiece work;
    final CandidateTable table;
    final TopSurface top;
    final double stockTopZMm;
    final double cuspMm;
    final TriangleTree tree;
    final Region block;
    final double lowestMm;
    private final Map<CutterProfile, LocationMap> maps = new HashMap<>();
    private final Map<MountedCutter, float[]> bodies = new HashMap<>();

    /**
     * @param top the half from above
     * @param stockTopZMm top of the faced block
     * @param cuspMm ridges allowed on finished ground and walls
     */
    CuttingRoom(Workpiece work, TopSurface top, CandidateTable table, double stockTopZMm, double cuspMm) {
        this.work = work;
        this.top = top;
        this.table = table;
        this.stockTopZMm = stockTopZMm;
        this.cuspMm = cuspMm;
        tree = TriangleTree.of(work.plain());
        Box3 m = work.metal();
        block = Region.rectangle(m.min().xy(), m.max().xy());
        double low = Double.POSITIVE_INFINITY;
        for (int i = 0; i < top.grid().count(); i++) if (top.facet(i) >= 0) low = Math.min(low, top.heightMm(i));
        lowestMm = low;
    }

    LocationMap map(CutterProfile profile) {
        return maps.computeIfAbsent(profile, p -> LocationMap.of(top, p));
    }

    LevelContour contour(CutterProfile profile) {
        return new LevelContour(new DropCutter(tree, profile), map(profile));
    }

    /** Where a tip may stand at a height: by exact lines where all of them close, else by the cells of the map with one to spare. */
    Region free(LevelContour contour, CutterProfile profile, double zMm, Region within) {
        LevelContour.Level level = contour.at(zMm);
        if (level.splitCount() == 0) return level.freeIn(within);
        LocationMap map = map(profile);
        BitSet cells = new BitSet();
        for (int i = 0; i < top.grid().count(); i++) if (map.tipMm(i) <= zMm) cells.set(i);
        return zone(cells).offset(-1.5 * top.grid().cell()).intersection(within);
    }

    /** Where neck, shank and holder stay clear of the half with the tip at a height. */
    Region clearOfBody(MountedCutter m, double zMm) {
        float[] tips = bodies.computeIfAbsent(m, k -> LocationMap.bodyTipsMm(top, k, WALL_STOCK_MM + BODY_AIR_MM));
        BitSet clear = new BitSet(tips.length);
        for (int i = 0; i < tips.length; i++) if (tips[i] <= zMm) clear.set(i);
        return clear.cardinality() == tips.length
                ? Offset.by(block, EVERYWHERE_MM)
                : RestZones.outline(clear, top.grid());
    }

    double cellMm2() {
        return top.grid().cell() * top.grid().cell();
    }

    /** A level floor. */
    record Floor(double zMm, BitSet cells) {}

    List<Floor> floors(BitSet cells) {
        List<Floor> out = new ArrayList<>();
        Map<Long, Floor> byHeight = new HashMap<>();
        for (int i = cells.nextSetBit(0); i >= 0; i = cells.nextSetBit(i + 1)) {
            float z = top.heightMm(i);
            long key = Math.round(z / SAME_FLOOR_MM);
            Floor f = byHeight.get(key);
            if (f == null) f = byHeight.getOrDefault(key - 1, byHeight.get(key + 1));
            if (f == null) {
                f = new Floor(z, new BitSet());
                byHeight.put(key, f);
                out.add(f);
            }
            f.cells.set(i);
        }
        out.removeIf(f -> f.cells.cardinality() * cellMm2() < LEAST_FLOOR_MM2);
        out.sort(Comparator.comparingDouble(f -> -f.zMm));
        return out;
    }

    Region zone(BitSet cells) {
        return RestZones.outline(cells, top.grid());
    }
}
