package shotwright.fill;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;
import shotwright.geom.Transform;
import shotwright.geom.Vec2;
import shotwright.geom.Vec3;
import shotwright.layout.Block;
import shotwright.layout.Cavity;
import shotwright.layout.FeedSegment;
import shotwright.layout.Gate;
import shotwright.layout.Half;
import shotwright.layout.LayoutResult;
import shotwright.layout.PartingChoice;
import shotwright.layout.Release;
import shotwright.layout.Section;
import shotwright.layout.Vent;
import shotwright.measure.Source;
import shotwright.mesh.TriMesh;

/** Layouts and melts for tests, our own invention. */
public final class Plans {
    private Plans() {}

    /** Cross-WLF polystyrene, constants of molding check CV-09. */
    public static MeltViscosity polystyrene() {
        return (rate, tempC) -> {
            double t = tempC + 273.15, d2 = 373.15;
            if (t <= d2 + 1) t = d2 + 1;
            double eta0 = 4.76e10 * Math.exp(-25.7 * (t - d2) / (61.06 + t - d2));
            return eta0 / (1 + Math.pow(eta0 * rate / 30_800, 1 - 0.252));
        };
    }

    public static Melt ps(double meltC, double moldC) {
        return new Melt(
                "gpps",
                "polystyrene",
                polystyrene(),
                0.3,
                false,
                meltC,
                249,
                moldC,
                118,
                0.085,
                0.97,
                2000,
                40_000,
                0.25,
                200,
                Source.FROM_MEMORY);
    }

    public static PressLimits press(double meltPressureMpa) {
        return new PressLimits(
                "test", "the press", meltPressureMpa, Double.POSITIVE_INFINITY, Double.POSITIVE_INFINITY, 100);
    }

    /** A plate of 60 × 20 × wall gated on the middle of its short edge x = 0; sprue, runner and edge gate; one vent at the far end. */
    public static LayoutResult plate(double wall, double gateDepth, int cavities) {
        List<Cavity> places = new ArrayList<>();
        List<FeedSegment> feed = new ArrayList<>();
        List<Gate> gates = new ArrayList<>();
        List<Vent> vents = new ArrayList<>();
        feed.add(new FeedSegment(
                1,
                0,
                0,
                FeedSegment.Kind.SPRUE,
                new Vec3(-16, 10, 30),
                new Vec3(-16, 10, 0),
                null,
                Section.round(3),
                Section.round(5)));
        for (int c = 1; c <= cavities; c++) {
            double y = 30 * (c - 1);
            places.add(new Cavity(c, Transform.translate(new Vec3(0, y, 0))));
            Vec3 end = new Vec3(-1, 10 + y, 0);
            feed.add(new FeedSegment(
                    2 * c,
                    1,
                    c,
                    FeedSegment.Kind.RUNNER,
                    new Vec3(-16, 10, 0),
                    end,
                    null,
                    Section.round(4),
                    Section.round(4)));
            Section slot = new Section(Section.Shape.RECTANGLE, 2, gateDepth, 0);
            feed.add(new FeedSegment(
                    2 * c + 1, 2 * c, c, FeedSegment.Kind.GATE, end, new Vec3(0.2, 10 + y, 0), Half.A, slot, slot));
            gates.add(new Gate(
                    c,
                    Gate.Kind.EDGE,
                    new Vec3(0, 10 + y, 0),
                    new Vec2(1, 0),
                    Half.A,
                    2,
                    gateDepth,
                    1,
                    wall,
                    4,
                    wall,
                    0.1,
                    0.2,
                    4));
            vents.add(new Vent(new Vec3(60, 10 + y, 0), new Vec2(1, 0), Half.A, 5, 0.02, 1, 0.5, 10, "end of flow"));
        }
        return new LayoutResult(
                0.005,
                0.005,
                0.005,
                new PartingChoice(PartingChoice.Kind.PLANE, 0, 0, wall, "flat", List.of()),
                places,
                LayoutResult.NozzleEntry.BACK,
                new Vec3(-16, 10, 30),
                feed,
                gates,
                List.of(),
                vents,
                List.of(),
                List.of(),
                List.of(),
                new Release(Half.B, 50, 100, 80, Release.By.HAND, "by hand", List.of()),
                List.of(),
                new Block(120, 80, 20, 20, "plate", "plate", 3),
                List.of(),
                List.of());
    }

    public static TriMesh plateMesh(double wall) {
        return Shapes.box(60, 20, wall);
    }

    private static final Map<Double, FlowField> FIELDS = new ConcurrentHashMap<>();

    /** The plate's flow picture at a power index of 0.3, made once per wall. */
    public static FlowField plateField(double wall) {
        return FIELDS.computeIfAbsent(
                wall,
                w -> FlowField.of(
                        Shapes.box(60, 20, w),
                        new Vec3(0, 10, w / 2),
                        0.8,
                        0.3,
                        6000,
                        shotwright.progress.Progress.SILENT));
    }

    public static FillInput plateInput(double wall, double gateDepth, Melt melt, PressLimits press, int cavities) {
        return new FillInput(melt, press, plate(wall, gateDepth, cavities), plateField(wall), 1200 * wall, 1200, 40, 0);
    }
}
