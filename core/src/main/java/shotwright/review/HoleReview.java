package shotwright.review;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import shotwright.geom.Vec2;
import shotwright.geom.Vec3;
import shotwright.mesh.Bvh;
import shotwright.mesh.Probe;
import shotwright.part.PulledPart;
import shotwright.region.Region;

/** Holes one can look through along the pull, from the inner rings of the exact shadow. */
final class HoleReview {
    /** Rings smaller than this share of the shadow are gaps between chords. */
    private static final double LEAST_SHARE = 1e-6;

    private static final double LEAST_MM2 = 0.01;

    private HoleReview() {}

    /** All of them, largest first. */
    static List<ThroughHole> of(PulledPart pulled) {
        List<ThroughHole> holes = new ArrayList<>();
        double least = Math.max(LEAST_MM2, LEAST_SHARE * pulled.shadow().area());
        for (List<Vec2> ring : pulled.shadow().holes()) {
            Region r = Region.of(ring);
            if (r.area() > least) holes.add(hole(pulled, ring, r));
        }
        holes.sort(Comparator.comparingDouble(ThroughHole::areaMm2).reversed());
        return holes;
    }

    private static ThroughHole hole(PulledPart pulled, List<Vec2> ring, Region region) {
        Vec2 c = region.centroid();
        double least = Double.POSITIVE_INFINITY, most = 0, longest = 0;
        for (int i = 0; i < ring.size(); i++) {
            double r = ring.get(i).distance(c);
            least = Math.min(least, r);
            most = Math.max(most, r);
            longest = Math.max(longest, ring.get(i).distance(ring.get((i + 1) % ring.size())));
        }
        boolean round = most - least < 0.02 * most + 0.01 && longest < most && ring.size() >= 8;
        double[] z = rim(pulled, ring, c, most);
        double[] size = round ? new double[] {least + most, least + most} : sizes(region);
        return new ThroughHole(
                0, pulled.toFile(c.atZ((z[0] + z[1]) / 2)), round, size[0], size[1], z[1] - z[0], region.area());
    }

    /** Smaller and larger side of the least box round it, over turns of 5°. */
    private static double[] sizes(Region region) {
        double[] best = {0, Double.POSITIVE_INFINITY};
        for (int deg = 0; deg < 90; deg += 5) {
            Region t = region.place(Math.toRadians(deg), Vec2.ZERO);
            Vec2 s = t.max().minus(t.min());
            if (s.x() * s.y() < best[0] * best[1] || best[0] == 0)
                best = new double[] {Math.min(s.x(), s.y()), Math.max(s.x(), s.y())};
        }
        return best;
    }

    /** Middle lower and upper height of the plastic just outside the ring. */
    private static double[] rim(PulledPart pulled, List<Vec2> ring, Vec2 c, double radius) {
        Probe probe = new Probe();
        List<Double> low = new ArrayList<>(), high = new ArrayList<>();
        double below = pulled.mesh().box().min().z() - 1, off = Math.min(0.05 * radius, 0.2);
        int step = Math.max(1, ring.size() / 24);
        for (int i = 0; i < ring.size(); i += step) {
            Vec2 p = ring.get(i),
                    q = ring.get((i + 1) % ring.size()),
                    m = p.plus(q).times(0.5);
            Vec2 out = q.minus(p).length() == 0 ? m.minus(c) : q.minus(p).left();
            if (out.dot(m.minus(c)) < 0) out = out.times(-1);
            if (out.length() == 0) continue;
            Vec3 from = m.plus(out.unit().times(off)).atZ(below);
            int n = pulled.tree().allHits(probe.aim(from, Vec3.Z), 0, Double.POSITIVE_INFINITY, Bvh.NONE);
            if (n < 2) continue;
            low.add(below + probe.hitT(0));
            high.add(below + probe.hitT(n - 1));
        }
        if (low.isEmpty()) return new double[] {0, 0};
        low.sort(null);
        high.sort(null);
        return new double[] {low.get(low.size() / 2), high.get(high.size() / 2)};
    }
}
