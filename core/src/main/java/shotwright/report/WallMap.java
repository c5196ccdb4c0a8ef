package shotwright.report;

import java.util.Arrays;
import java.util.Comparator;
import java.util.stream.IntStream;
import shotwright.drawing.Creases;
import shotwright.geom.Box3;
import shotwright.geom.Vec3;
import shotwright.mesh.Bvh;
import shotwright.mesh.Edges;
import shotwright.mesh.Probe;
import shotwright.mesh.TriMesh;
import shotwright.mesh.WallThickness;

/**
 * The wall at every place of the surface as local thickness: the diameter of the largest ball in the part that holds the place (T.
 * Hildebrand, P. Rüegsegger, J. Microscopy 185 (1997) 67–75; from memory). The balls are the review's. A ball holds a place of the surface
 * when its shadow along the wall's normal falls there and it comes as near to the surface as a ball that touches it. Balls pinned in an
 * outside corner do not count, so an edge has the wall beside it.
 *
 * @param surface the part's surface cut fine, so that values do not run across long facets
 * @param cornersMm wall at {@code [3 · facet + corner]}; NaN where nothing was measured
 */
record WallMap(Creases surface, double[] cornersMm) {
    /** About so many facets at least are painted. */
    private static final int FACETS = 60_000;
    /** A facet of halved edges has about this share of the square over the longest edge. */
    private static final double SHARE = 0.22;

    /** At most so many facets are added: what stands closer than a few pixels is not seen. */
    private static final int MOST_ADDED = 150_000;

    static WallMap of(Bvh tree, WallThickness walls) {
        return of(Edges.of(tree.mesh()), tree, walls);
    }

    /** With the edge table of the tree's mesh. */
    static WallMap of(Edges part, Bvh tree, WallThickness walls) {
        TriMesh mesh = part.mesh();
        double area = 0;
        for (int f = 0; f < mesh.facetCount(); f++) area += mesh.area(f);
        double longest = Math.sqrt(area / (SHARE * FACETS));
        Edges fine = FineMesh.of(part, longest, mesh.facetCount() + MOST_ADDED);
        return new WallMap(Creases.of(fine), new Painter(fine.mesh(), tree, walls, area, longest).corners());
    }

    /** The surface that is painted. */
    TriMesh mesh() {
        return surface.mesh();
    }

    /** Puts the balls on the surface, largest first; the first that holds a place decides. */
    private static final class Painter {
        /** A ball reaches over the surface by its radius and lies below it by its radius, both within these shares; a little more sideways,
         * because balls stand only at the samples. */
        private static final double SIDEWAYS = 1.12;

        private static final double LEAST_DEEP = 0.85;
        private static final double MOST_DEEP = 1.12;
        /** How far a ball's middle is moved away from where it touches, as a share of its radius. */
        private static final double MOVED = 0.25;
        /** Cosine of how far the place it meets then may lie off straight ahead: walls that close at up to 70° are walls. */
        private static final double AHEAD = 0.34;
        /** Borders are ragged by the distance of the samples; smoothing over it takes rounds as its square counted in facets. */
        private static final double ROUNDS = 2;

        private static final int MOST_ROUNDS = 24;
        /** Walls within this share of each other are one wall, measured with some doubt. */
        private static final double SAME_WALL = 0.15;

        private static final int LEVEL_ROUNDS = 30, SOFT_ROUNDS = 4;

        private static final double FAR_THINNER = 0.7;
        /** Cosine up to which two normals at a vertex are one face. */
        private static final double ALIKE = 0.95;

        private final TriMesh mesh;
        private final Bvh tree;
        private final Probe probe = new Probe();
        private final WallThickness walls;
        private final double areaMm2;
        private final double longestMm;
        private final int[] placeOf;
        private int[] vertex;
        private double[] normal;
        private double[] value;
        private int count;

        Painter(TriMesh mesh, Bvh tree, WallThickness walls, double areaMm2, double longestMm) {
            this.mesh = mesh;
            this.tree = tree;
            this.walls = walls;
            this.areaMm2 = areaMm2;
            this.longestMm = longestMm;
            placeOf = new int[3 * mesh.facetCount()];
            vertex = new int[mesh.vertexCount() + 16];
            normal = new double[3 * vertex.length];
            places();
            value = new double[count];
            Arrays.fill(value, Double.NaN);
        }

        /** One place for each vertex and each face that meets there. */
        private void places() {
            int[] first = new int[mesh.vertexCount()], next = new int[placeOf.length];
            Arrays.fill(first, -1);
            for (int f = 0; f < mesh.facetCount(); f++) {
                Vec3 n = mesh.doubleAreaNormal(f);
                if (n.length() == 0) n = Vec3.Z;
                n = n.unit();
                for (int k = 0; k < 3; k++) {
                    int v = mesh.corner(f, k), p = first[v];
                    while (p >= 0 && along(p, n) < ALIKE) p = next[p];
                    if (p < 0) {
                        p = add(v, n);
                        next[p] = first[v];
                        first[v] = p;
                    }
                    placeOf[3 * f + k] = p;
                }
            }
        }

        private int add(int v, Vec3 n) {
            if (count == vertex.length) {
                vertex = Arrays.copyOf(vertex, 2 * count);
                normal = Arrays.copyOf(normal, 6 * count);
            }
            vertex[count] = v;
            normal[3 * count] = n.x();
            normal[3 * count + 1] = n.y();
            normal[3 * count + 2] = n.z();
            return count++;
        }

        private double along(int place, Vec3 d) {
            return normal[3 * place] * d.x() + normal[3 * place + 1] * d.y() + normal[3 * place + 2] * d.z();
        }

        double[] corners() {
            WallThickness.Sample[] balls = IntStream.range(0, walls.count())
                    .filter(i -> walls.sphere(i) > 0)
                    .mapToObj(walls::sample)
                    .sorted(Comparator.comparingDouble(s -> -s.sphere()))
                    .toArray(WallThickness.Sample[]::new);
            if (balls.length > 0) {
                double middle = walls.rayQuantile(0.5);
                Cells open = new Cells(mesh.box(), middle / 2);
                for (int p = 0; p < count; p++) open.put(p, mesh.x(vertex[p]), mesh.y(vertex[p]), mesh.z(vertex[p]));
                for (WallThickness.Sample s : balls) if (spans(s)) lay(s, open);
                grow((int) Math.ceil(2 * middle / longestMm));
                for (int p = 0; p < count; p++) if (Double.isNaN(value[p])) value[p] = nearest(p, balls);
            }
            smooth();
            double[] corners = new double[placeOf.length];
            for (int i = 0; i < corners.length; i++) corners[i] = value[placeOf[i]];
            return corners;
        }

        /**
         * Whether a ball is held between two walls and not pinned in an outside corner: moved away from where it touches, it comes nearer to
         * what is across; in a square corner the other face stays as far as it was.
         */
        private boolean spans(WallThickness.Sample s) {
            double r = s.sphere() / 2;
            Vec3 c = s.point().minus(s.normal().times((1 + MOVED) * r));
            return tree.nearest(probe, c.x(), c.y(), c.z(), (1 - MOVED * AHEAD) * r) != Bvh.NONE;
        }

        /** Carries the wall along each face to the places left over, a facet a round. */
        private void grow(int rounds) {
            for (int round = 0; round < rounds; round++) {
                double[] before = value.clone();
                for (int i = 0; i < placeOf.length; i++) {
                    int p = placeOf[i];
                    if (!Double.isNaN(before[p])) continue;
                    for (int k = i - i % 3; k < i - i % 3 + 3; k++) {
                        double v = before[placeOf[k]];
                        if (!Double.isNaN(v) && !(value[p] >= v)) value[p] = v;
                    }
                }
            }
        }

        /**
         * Smooths a few times over, each place by those next to it on its face. First it takes the middle one of their values: specks go, and
         * a step stays a step. Then the mean of those that are one wall with it. Last of all of them, so that a step falls over the facets
         * beside it and a border crosses them where it is instead of following their edges. What is far thinner than its surroundings stays,
         * however small.
         */
        private void smooth() {
            Neighbours near = new Neighbours();
            double apart = Math.sqrt(areaMm2 / walls.count()) / longestMm;
            int rounds = (int) Math.clamp(Math.ceil(ROUNDS * apart * apart), 1, MOST_ROUNDS);
            for (int time = 0; time < rounds; time++) middles(near);
            for (int time = 0; time < LEVEL_ROUNDS; time++) means(near, SAME_WALL);
            for (int time = 0; time < SOFT_ROUNDS; time++) means(near, Double.POSITIVE_INFINITY);
        }

        /** For each place those it shares an edge of a facet with, once for each facet. */
        private final class Neighbours {
            final int[] start = new int[count + 1];
            final int[] place;

            Neighbours() {
                for (int p : placeOf) start[p + 1] += 2;
                for (int p = 0; p < count; p++) start[p + 1] += start[p];
                int[] next = Arrays.copyOf(start, count);
                place = new int[start[count]];
                for (int i = 0; i < placeOf.length; i++) {
                    int f = i - i % 3, p = placeOf[i];
                    place[next[p]++] = placeOf[f + (i - f + 1) % 3];
                    place[next[p]++] = placeOf[f + (i - f + 2) % 3];
                }
            }
        }

        private void middles(Neighbours near) {
            double[] before = value.clone(), own = new double[64];
            for (int p = 0; p < count; p++) {
                int n = 0;
                boolean differ = false;
                for (int i = near.start[p]; i < near.start[p + 1] && n < own.length; i++) {
                    double v = before[near.place[i]];
                    if (Double.isNaN(v)) continue;
                    differ |= v != before[p];
                    own[n++] = v;
                }
                if (!differ) continue;
                Arrays.sort(own, 0, n);
                double low = own[(n - 1) / 2], high = own[n / 2];
                if (before[p] < low && before[p] > FAR_THINNER * low) value[p] = low;
                if (before[p] > high) value[p] = high;
            }
        }

        /** Half way to the mean of those around that differ by no more than a share. */
        private void means(Neighbours near, double share) {
            double[] before = value.clone();
            for (int p = 0; p < count; p++) {
                double sum = 0, all = 0;
                int n = 0, every = 0;
                for (int i = near.start[p]; i < near.start[p + 1]; i++) {
                    double v = before[near.place[i]];
                    if (Double.isNaN(v)) continue;
                    all += v;
                    every++;
                    if (Math.abs(v - before[p]) > share * before[p]) continue;
                    sum += v;
                    n++;
                }
                if (n > 0 && !(before[p] < FAR_THINNER * all / every)) value[p] = (before[p] + sum / n) / 2;
            }
        }

        private void lay(WallThickness.Sample s, Cells open) {
            double r = s.sphere() / 2;
            Vec3 centre = s.point().minus(s.normal().times(r));
            open.takeWithin(centre, r * Math.hypot(SIDEWAYS, MOST_DEEP), p -> {
                Vec3 d = mesh.vertex(vertex[p]).minus(centre);
                double deep = along(p, d), sideways = Math.sqrt(Math.max(0, d.dot(d) - deep * deep));
                if (deep < LEAST_DEEP * r || deep > MOST_DEEP * r || sideways > SIDEWAYS * r) return false;
                value[p] = s.sphere();
                return true;
            });
        }

        /** Where nothing else is known: the nearest ball of a face that looks the same way. */
        private double nearest(int place, WallThickness.Sample[] balls) {
            Vec3 at = mesh.vertex(vertex[place]);
            double least = Double.MAX_VALUE, found = Double.NaN;
            for (WallThickness.Sample s : balls) {
                double d = s.point().minus(at).dot(s.point().minus(at));
                if (d >= least || along(place, s.normal()) < 0.7) continue;
                least = d;
                found = s.sphere();
            }
            return found;
        }
    }

    /** Places not painted yet, in cubic cells. */
    private static final class Cells {
        private final Vec3 low;
        private final double side;
        private final int nx;
        private final int ny;
        private final int nz;
        private final int[] first;
        private int[] next = new int[1024];

        Cells(Box3 box, double wish) {
            low = box.min();
            side = Math.max(wish, box.diagonal() / 200);
            nx = (int) (box.size().x() / side) + 1;
            ny = (int) (box.size().y() / side) + 1;
            nz = (int) (box.size().z() / side) + 1;
            first = new int[nx * ny * nz];
            Arrays.fill(first, -1);
        }

        void put(int place, double x, double y, double z) {
            if (place >= next.length) next = Arrays.copyOf(next, 2 * Math.max(place, next.length));
            int c = (cell(z - low.z(), nz) * ny + cell(y - low.y(), ny)) * nx + cell(x - low.x(), nx);
            next[place] = first[c];
            first[c] = place;
        }

        private int cell(double along, int n) {
            return Math.clamp((long) Math.floor(along / side), 0, n - 1);
        }

        /** Takes out the places in the cells round a point that the test accepts. */
        void takeWithin(Vec3 p, double r, java.util.function.IntPredicate accept) {
            int x1 = cell(p.x() + r - low.x(), nx),
                    y1 = cell(p.y() + r - low.y(), ny),
                    z1 = cell(p.z() + r - low.z(), nz);
            for (int z = cell(p.z() - r - low.z(), nz); z <= z1; z++)
                for (int y = cell(p.y() - r - low.y(), ny); y <= y1; y++)
                    for (int x = cell(p.x() - r - low.x(), nx); x <= x1; x++) take((z * ny + y) * nx + x, accept);
        }

        private void take(int cell, java.util.function.IntPredicate accept) {
            int before = -1;
            for (int p = first[cell]; p >= 0; p = next[p]) {
                if (!accept.test(p)) before = p;
                else if (before < 0) first[cell] = next[p];
                else next[before] = next[p];
            }
        }
    }
}
