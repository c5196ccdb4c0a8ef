package shotwright.layout;

import java.util.ArrayList;
import java.util.List;
import shotwright.geom.Vec2;
import shotwright.region.Region;

/** What already lies on the parting plane, so that nothing is put where something is. Mold frame. */
public final class Ground {
    /**
     * Something that takes room.
     *
     * @param name what it is, in trade words
     * @param region the room it takes
     */
    public record Taken(String name, Region region) {}

    private final List<Taken> taken = new ArrayList<>();

    /** Notes that something lies here. */
    public void take(String name, Region region) {
        taken.add(new Taken(name, region));
    }

    public List<Taken> taken() {
        return List.copyOf(taken);
    }

    /** Nothing lies nearer than the gap; things whose name starts with {@code except} (if not empty) do not count. */
    public boolean free(Region region, double gapMm, String except) {
        for (Taken t : taken) {
            if (!except.isEmpty() && t.name.startsWith(except)) continue;
            if (t.region.distance(region) < gapMm) return false;
        }
        return true;
    }

    public boolean free(Region region, double gapMm) {
        return free(region, gapMm, "");
    }

    /** A straight strip of a width between two points, with square ends. */
    public static Region strip(Vec2 from, Vec2 to, double widthMm) {
        Vec2 side = to.minus(from).unit().left().times(widthMm / 2);
        return Region.of(List.of(from.plus(side), from.minus(side), to.minus(side), to.plus(side)));
    }

    /** Where a ray from inside a rectangle centred on the origin leaves it, along the ray. */
    public static double toEdgeMm(Vec2 from, Vec2 direction, double widthMm, double heightMm) {
        double tx = direction.x() == 0
                ? Double.POSITIVE_INFINITY
                : (Math.copySign(widthMm / 2, direction.x()) - from.x()) / direction.x();
        double ty = direction.y() == 0
                ? Double.POSITIVE_INFINITY
                : (Math.copySign(heightMm / 2, direction.y()) - from.y()) / direction.y();
        return Math.min(tx, ty);
    }
}
