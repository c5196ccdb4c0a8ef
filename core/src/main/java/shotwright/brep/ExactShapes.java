package shotwright.brep;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.IntStream;
import shotwright.geom.Box3;
import shotwright.geom.Transform;
import shotwright.geom.Vec3;
import shotwright.progress.Progress;

/**
 * Work on exact solids. Shapes live until this is closed. Lengths in mm, angles in radians; solids are never changed, every operation makes
 * new ones. One thread at a time.
 */
public final class ExactShapes implements AutoCloseable {
    /** Relative accuracy of integration asked for, face by face; the engine integrates adaptively below 1e-3. */
    public static final double INTEGRATION = 1e-5;

    /** Points of bodies and tools that lie nearer than this count as one unless asked otherwise, mm. */
    public static final double SAME_MM = 1e-7;

    private final ExactEngine engine;
    private final Progress watch;
    private final List<Integer> kept = new ArrayList<>();
    private final Map<Solid, Double> volumesMm3 = new HashMap<>();
    private final Map<Solid, SolidCheck> checks = new HashMap<>();

    public ExactShapes(ExactEngine engine, Progress watch) {
        this.engine = engine;
        this.watch = watch;
    }

    /**
     * Reads a STEP file (AP203, AP214, AP242); lengths come out in mm whatever unit the file states.
     *
     * @throws ExactFailure REFUSED when the file cannot be read
     */
    public StepShapes readStep(byte[] file) throws ExactFailure {
        List<Object> out = call("readStep", (Object) file);
        if (!out.getFirst().equals("done"))
            throw new ExactFailure(ExactFailure.Why.REFUSED, "No shape could be read from the STEP file.");
        return new StepShapes(solids(out.get(1)), solids(out.get(2)));
    }

    /** The solids as one STEP file in millimetres, under a product name; the same solids give the same bytes. */
    public byte[] writeStep(String name, List<Solid> solids) throws ExactFailure {
        return StepHead.named(
                (byte[]) call("writeStep", (Object) numbers(solids)).getFirst(), name);
    }

    /** Volume, surface and centroid from the exact surfaces. */
    public ExactMass measure(Solid s) throws ExactFailure {
        double[] m = doubles("measure", s.number(), INTEGRATION);
        return new ExactMass(m[0], m[1], new Vec3(m[2], m[3], m[4]));
    }

    /** Volume alone, which takes half the time; asked again for a solid it costs nothing. */
    public double volumeMm3(Solid s) throws ExactFailure {
        Double known = volumesMm3.get(s);
        if (known != null) return known;
        double v = doubles("volume", s.number(), INTEGRATION)[0];
        volumesMm3.put(s, v);
        return v;
    }

    /** The same of several together. */
    public double volumeMm3(List<Solid> solids) throws ExactFailure {
        double sum = 0;
        for (Solid s : solids) sum += volumeMm3(s);
        return sum;
    }

    /** The smallest box along the axes. */
    public Box3 box(Solid s) throws ExactFailure {
        double[] b = doubles("box", s.number());
        return new Box3(new Vec3(b[0], b[1], b[2]), new Vec3(b[3], b[4], b[5]));
    }

    /** About the diagonal of the smallest box, never less; much faster than {@link #box}. */
    public double reachMm(Solid s) throws ExactFailure {
        return doubles("reach", s.number())[0];
    }

    /** Whether it is sound; asked again for a solid it costs nothing. */
    public SolidCheck check(Solid s) throws ExactFailure {
        SolidCheck known = checks.get(s);
        if (known != null) return known;
        int[] c = (int[]) call("check", s.number()).getFirst();
        SolidCheck made = new SolidCheck(c[0] == 1, c[1], c[2], c[3], c[4]);
        checks.put(s, made);
        return made;
    }

    /** Faces in the solid's own order. */
    public List<ExactFace> faces(Solid s) throws ExactFailure {
        double[] all = doubles("faces", s.number());
        List<ExactFace> out = new ArrayList<>();
        for (int f = 0; f < all.length / ExactFace.NUMBERS; f++) out.add(ExactFace.of(all, f));
        return List.copyOf(out);
    }

    /**
     * Triangles over every face, welded to one closed mesh.
     *
     * @param deflectionMm largest distance of a chord from its curve
     * @param angleRad largest turn between neighbouring chords
     */
    public FacedMesh mesh(Solid s, double deflectionMm, double angleRad) throws ExactFailure {
        return FaceWeld.weld(call("mesh", s.number(), deflectionMm, angleRad));
    }

    public Solid block(Box3 box) throws ExactFailure {
        return one("blockSolid", (Object) numbers(box.min(), box.max()));
    }

    /** A cylinder standing on a foot point. */
    public Solid cylinder(Vec3 footMm, Vec3 axis, double radiusMm, double heightMm) throws ExactFailure {
        return one("cylinder", numbers(footMm, axis), radiusMm, heightMm);
    }

    public Solid sphere(Vec3 centreMm, double radiusMm) throws ExactFailure {
        return one("sphere", numbers(centreMm), radiusMm);
    }

    /** The body a flat outline sweeps when it is turned once about an axis in its plane. */
    public Solid revolve(Outline outline, Vec3 axisPointMm, Vec3 axis) throws ExactFailure {
        return one("revolve", outline.numbers(), numbers(axisPointMm, axis));
    }

    /** The body a flat outline sweeps along a vector. */
    public Solid prism(Outline outline, Vec3 alongMm) throws ExactFailure {
        return one("prism", outline.numbers(), numbers(alongMm));
    }

    /** The body between two flat outlines of as many pieces, each piece joined straight to its partner; arcs about one axis give cones. */
    public Solid loft(Outline low, Outline high) throws ExactFailure {
        return one("loft", low.numbers(), high.numbers());
    }

    /**
     * The same solid with edges rounded.
     *
     * @param radiusMm of the round
     * @param onEdgesMm a point on each edge, no further off than 0.001 mm; what goes on from an edge without a kink is rounded with it
     */
    public Solid round(Solid s, double radiusMm, List<Vec3> onEdgesMm) throws ExactFailure {
        return one("round", s.number(), radiusMm, numbers(onEdgesMm.toArray(Vec3[]::new)));
    }

    /** A flat face, for splitting with. */
    public Solid plate(Outline outline) throws ExactFailure {
        return one("plate", (Object) outline.numbers());
    }

    /**
     * A solid with flat faces.
     *
     * @param cornersMm corners
     * @param faces for each face the numbers of its corners in order
     */
    public Solid polyhedron(List<Vec3> cornersMm, List<int[]> faces) throws ExactFailure {
        return one("polyhedron", numbers(cornersMm.toArray(Vec3[]::new)), counted(faces));
    }

    /**
     * An open sheet of flat faces, for splitting with.
     *
     * @param cornersMm corners
     * @param faces for each face the numbers of its corners in order
     */
    public Solid sheet(List<Vec3> cornersMm, List<int[]> faces) throws ExactFailure {
        return one("sheet", numbers(cornersMm.toArray(Vec3[]::new)), counted(faces));
    }

    private static int[] counted(List<int[]> faces) {
        return faces.stream()
                .flatMapToInt(f -> IntStream.concat(IntStream.of(f.length), IntStream.of(f)))
                .toArray();
    }

    /** The same solid with neighbouring faces on one surface made one. */
    public Solid tidy(Solid s) throws ExactFailure {
        return one("tidy", s.number());
    }

    /**
     * A turned, shifted, evenly scaled copy.
     *
     * @throws IllegalArgumentException when the map stretches unevenly: planes would stay planes, but cylinders would not stay cylinders
     */
    public Solid place(Solid s, Transform t) throws ExactFailure {
        if (!t.isEven()) throw new IllegalArgumentException("map: it stretches unevenly, " + t);
        double[] rows = {
            t.a().x(), t.a().y(), t.a().z(), t.shift().x(),
            t.b().x(), t.b().y(), t.b().z(), t.shift().y(),
            t.c().x(), t.c().y(), t.c().z(), t.shift().z()
        };
        return one("transform", s.number(), rows);
    }

    /**
     * The same solid with faces leaned. Only flat, round and conical faces can be; those that run smoothly into one of them lean with it.
     *
     * @throws ExactFailure REFUSED when a face cannot be leaned or its neighbours leave no room
     */
    public Drafted draft(Solid s, List<LeanedFace> faces) throws ExactFailure {
        int[] which = faces.stream().mapToInt(LeanedFace::face).toArray();
        double[] how = new double[7 * which.length];
        for (int i = 0; i < which.length; i++) {
            LeanedFace f = faces.get(i);
            how[7 * i] = f.angleRad();
            System.arraycopy(numbers(f.draw(), f.neutralPointMm()), 0, how, 7 * i + 1, 6);
        }
        List<Object> out = call("draft", s.number(), which, how);
        Solid made = new Solid((int) out.getFirst());
        kept.add(made.number());
        return new Drafted(made, Arrays.stream((int[]) out.get(1)).boxed().toList());
    }

    /** What is left of the bodies outside the tools, piece by piece. */
    public List<Solid> cut(List<Solid> bodies, List<Solid> tools) throws ExactFailure {
        return cut(bodies, tools, SAME_MM);
    }

    /**
     * What is left of the bodies outside the tools, piece by piece.
     *
     * @param sameMm points nearer than this count as one
     */
    public List<Solid> cut(List<Solid> bodies, List<Solid> tools, double sameMm) throws ExactFailure {
        return combine("cut", bodies, tools, sameMm);
    }

    /** What bodies and tools share, piece by piece. */
    public List<Solid> common(List<Solid> bodies, List<Solid> tools) throws ExactFailure {
        return combine("common", bodies, tools, SAME_MM);
    }

    /** Bodies and tools in one. */
    public List<Solid> fuse(List<Solid> bodies, List<Solid> tools) throws ExactFailure {
        return combine("fuse", bodies, tools, SAME_MM);
    }

    /** Pieces of one split in one: the faces they share are taken out, so nothing is intersected. */
    public List<Solid> join(List<Solid> pieces) throws ExactFailure {
        return solids(call("join", (Object) numbers(pieces)).getFirst());
    }

    private List<Object> call(String operation, Object... values) throws ExactFailure {
        try {
            return engine.call(watch, operation, values);
        } catch (ExactFailure e) {
            if (e.why() == ExactFailure.Why.ENDED) kept.clear();
            throw e;
        } catch (RuntimeException stopped) {
            kept.clear();
            throw stopped;
        }
    }

    /**
     * The bodies parted along the tools, piece by piece.
     *
     * @param sameMm points nearer than this count as one
     */
    public List<Solid> split(List<Solid> bodies, List<Solid> tools, double sameMm) throws ExactFailure {
        return combine("split", bodies, tools, sameMm);
    }

    private List<Solid> combine(String operation, List<Solid> bodies, List<Solid> tools, double sameMm)
            throws ExactFailure {
        return solids(call(operation, numbers(bodies), numbers(tools), sameMm).getFirst());
    }

    private Solid one(String operation, Object... values) throws ExactFailure {
        Solid s = new Solid((int) call(operation, values).getFirst());
        kept.add(s.number());
        return s;
    }

    private double[] doubles(String operation, Object... values) throws ExactFailure {
        return (double[]) call(operation, values).getFirst();
    }

    private List<Solid> solids(Object numbers) {
        List<Solid> out = new ArrayList<>();
        for (int n : (int[]) numbers) {
            kept.add(n);
            out.add(new Solid(n));
        }
        return out;
    }

    private static int[] numbers(List<Solid> solids) {
        return solids.stream().mapToInt(Solid::number).toArray();
    }

    private static double[] numbers(Vec3... points) {
        double[] out = new double[3 * points.length];
        for (int i = 0; i < points.length; i++) {
            out[3 * i] = points[i].x();
            out[3 * i + 1] = points[i].y();
            out[3 * i + 2] = points[i].z();
        }
        return out;
    }

    /** Gives solids back that are no longer needed. */
    public void release(List<Solid> solids) throws ExactFailure {
        call("release", (Object) numbers(solids));
        for (Solid s : solids) {
            kept.remove((Integer) s.number());
            volumesMm3.remove(s);
            checks.remove(s);
        }
    }

    /** Gives the shapes back; the engine stays warm. */
    @Override
    public void close() {
        if (kept.isEmpty()) return;
        try {
            engine.call(Progress.SILENT, "release", (Object)
                    kept.stream().mapToInt(Integer::intValue).toArray());
        } catch (ExactFailure gone) {
            // it ended, and the shapes with it
        }
        kept.clear();
    }
}
