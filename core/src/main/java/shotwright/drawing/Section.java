package shotwright.drawing;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import shotwright.geom.Plane;
import shotwright.geom.Vec2;
import shotwright.geom.Vec3;
import shotwright.mesh.TriMesh;
import shotwright.region.Region;
import shotwright.region.Winding;

/**
 * The cut of a mesh by a plane: the facets are crossed exactly, and the material is what the crossings go round counter-clockwise. A vertex
 * on the plane counts as lying in front, so that a cut along a flat face shows the material behind it.
 *
 * @param plane the cut; its normal points to the eye
 * @param right direction of x in the cut
 * @param up direction of y in the cut
 * @param region the material cut through, in the plane's x and y from the foot of the origin
 * @param gaps places where the surface is open and the border was closed with a straight line; 0 for a closed mesh
 */
public record Section(Plane plane, Vec3 right, Vec3 up, Region region, int gaps) {
    /** Cuts a mesh. The upright of the cut is as near to +z as it can be; a cut across z has +y up. */
    public static Section of(TriMesh mesh, Plane plane) {
        Vec3 n = plane.normal();
        Vec3 wish = Math.abs(n.z()) > 0.99 ? Vec3.Y : Vec3.Z;
        Vec3 up = wish.minus(n.times(n.dot(wish))).unit(), right = up.cross(n);
        Crossings c = new Crossings(mesh, plane, right, up);
        int gaps = c.closeGaps();
        return new Section(plane, right, up, c.region(), gaps);
    }

    /** Across z at a height, seen from above. */
    public static Section acrossZ(TriMesh mesh, double z) {
        return of(mesh, new Plane(Vec3.Z, z));
    }

    /** Across y at a place, seen from the front (from −y), x to the right. */
    public static Section acrossY(TriMesh mesh, double y) {
        return of(mesh, new Plane(Vec3.Y.negate(), -y));
    }

    /** Across x at a place, seen from the right (from +x), y to the right. */
    public static Section acrossX(TriMesh mesh, double x) {
        return of(mesh, new Plane(Vec3.X, x));
    }

    /** A point of the cut in space. */
    public Vec3 inSpace(Vec2 p) {
        return plane.normal().times(plane.offset()).plus(right.times(p.x())).plus(up.times(p.y()));
    }

    /** A point of space seen in the cut. */
    public Vec2 inCut(Vec3 p) {
        return new Vec2(right.dot(p), up.dot(p));
    }

    private static final class Crossings {
        private final Map<Long, Vec2> points = new HashMap<>();
        private final Map<Long, Integer> balance = new HashMap<>();
        private final List<Vec2> ends = new ArrayList<>();
        private final TriMesh mesh;
        private final Vec3 right;
        private final Vec3 up;
        private final double[] side;

        Crossings(TriMesh mesh, Plane plane, Vec3 right, Vec3 up) {
            this.mesh = mesh;
            this.right = right;
            this.up = up;
            side = new double[mesh.vertexCount()];
            for (int v = 0; v < side.length; v++) side[v] = plane.signedDistance(mesh.vertex(v));
            for (int f = 0; f < mesh.facetCount(); f++) facet(f);
        }

        private void facet(int f) {
            long falls = -1, rises = -1;
            for (int k = 0; k < 3; k++) {
                int a = mesh.corner(f, k), b = mesh.corner(f, (k + 1) % 3);
                boolean front = side[a] >= 0;
                if (front == side[b] >= 0) continue;
                long key = (long) Math.min(a, b) << 32 | Math.max(a, b);
                if (front) falls = key;
                else rises = key;
            }
            if (falls < 0) return;
            ends.add(point(falls));
            ends.add(point(rises));
            balance.merge(falls, -1, Integer::sum);
            balance.merge(rises, 1, Integer::sum);
        }

        private Vec2 point(long key) {
            return points.computeIfAbsent(key, k -> {
                int a = (int) (k >> 32), b = (int) (long) k;
                double share = side[a] / (side[a] - side[b]);
                Vec3 p = mesh.vertex(a).toward(mesh.vertex(b), share);
                return new Vec2(right.dot(p), up.dot(p));
            });
        }

        /** Joins every loose end with the nearest loose beginning. */
        int closeGaps() {
            List<Vec2> loose = new ArrayList<>(), wanted = new ArrayList<>();
            balance.forEach((key, b) -> {
                for (int i = 0; i < Math.abs(b); i++) (b > 0 ? loose : wanted).add(point(key));
            });
            int gaps = loose.size();
            for (Vec2 from : loose) {
                Vec2 best = wanted.getFirst();
                for (Vec2 to : wanted) if (to.distance(from) < best.distance(from)) best = to;
                wanted.remove(best);
                ends.add(from);
                ends.add(best);
            }
            return gaps;
        }

        Region region() {
            double[] xy = new double[2 * ends.size()];
            int[] times = new int[ends.size() / 2];
            for (int i = 0; i < ends.size(); i++) {
                xy[2 * i] = ends.get(i).x();
                xy[2 * i + 1] = ends.get(i).y();
                times[i / 2] = 1;
            }
            return times.length == 0 ? Region.EMPTY : Winding.atLeastOnce(xy, times);
        }
    }
}
