package shotwright.checks.published;

import static shotwright.checks.published.Published.Mark.DERIVED;

import java.util.List;
import java.util.Objects;
import shotwright.geom.Transform;
import shotwright.mesh.TriMesh;
import shotwright.mesh.complex.Material;
import shotwright.mesh.pull.Columns;
import shotwright.mesh.pull.Parting;
import shotwright.mesh.pull.PulledMesh;
import shotwright.progress.Progress;

/** Halves of simple solids against volumes by hand; the block reaches 10 mm beyond the part all round. */
class HalvesTest {
    private static final String EXACT = "closed form";
    private static final String PRINTED = "printed digits";
    private static final double OFF = 3 * Math.tan(Math.toRadians(2));
    private static final int[] Z_FACES = {0, 1, 2, 0, 2, 6, 0, 6, 7, 2, 3, 4, 2, 4, 6, 6, 4, 5};
    private static final int[] RAMP_FACES = {0, 1, 6, 0, 6, 7, 1, 2, 5, 1, 5, 6, 2, 3, 4, 2, 4, 5};
    private static final int[] CHANNEL_FACES = {0, 1, 2, 0, 2, 3, 0, 3, 4, 0, 4, 7, 4, 5, 6, 4, 6, 7};

    private static Parting halves(TriMesh mesh) {
        PulledMesh pulled = PulledMesh.of(mesh, Progress.SILENT);
        return Parting.of(pulled, List.of(Transform.IDENTITY), mesh.box().grow(10), Double.NaN, Progress.SILENT);
    }

    private static Columns.FreeBand band(Parting p) {
        return Objects.requireNonNull(p.choice()).columns().outerBand();
    }

    private static double volume(Parting p, Material m) {
        return p.complex().volume(m);
    }

    @Published(id = "SYN", source = "closed form", where = "box 20 × 10 × 5", mark = DERIVED)
    void box() {
        Parting p = halves(TestShape.bar(new double[] {0, 0, 20, 0, 20, 5, 0, 5}, 0, 1, 2, 0, 2, 3));
        Check.absolute("box: half A", 17_000, volume(p, Material.A), 1e-8, "mm³", EXACT);
        Check.absolute("box: half B", 12_000, volume(p, Material.B), 1e-8, "mm³", EXACT);
        Check.absolute("box: height free for a flat parting", 5, band(p).high() - band(p).low(), 1e-9, "mm", EXACT);
    }

    @Published(id = "SYN", source = "closed form", where = "washer R 10, r 4, 3 high, 64 corners", mark = DERIVED)
    void washer() {
        TriMesh mesh = TestShape.washer(10, 10, 4, 4);
        Parting p = halves(mesh);
        Check.absolute("washer: part", 790.410220, volume(p, Material.PART), 1e-6, "mm³", PRINTED);
        Check.absolute("washer: half A", 20_009.589780, volume(p, Material.A), 1e-6, "mm³", PRINTED);
        Check.absolute("washer: half B", 16_000, volume(p, Material.B), 1e-8, "mm³", EXACT);
        double shadow = PulledMesh.of(mesh, Progress.SILENT).shadow().area();
        Check.absolute("washer: shadow", 263.470073, shadow, 1e-6, "mm²", PRINTED);
        Check.exact("washer: loops of the parting", 3, p.cap().loops());
    }

    @Published(id = "SYN", source = "closed form", where = "the washer with 2° opening up the core", mark = DERIVED)
    void washerWithDraft() {
        Parting p = halves(TestShape.washer(10, 10 - OFF, 4, 4 + OFF));
        Check.absolute("2° washer: part", 776.609353, volume(p, Material.PART), 1e-6, "mm³", PRINTED);
        Check.absolute("2° washer: parts at its foot, below", 0, band(p).low(), 1e-9, "mm", EXACT);
        Check.absolute("2° washer: parts at its foot, above", 0, band(p).high(), 1e-9, "mm", EXACT);
    }

    @Published(id = "SYN", source = "closed form", where = "the washer, hole narrowing upward 2°", mark = DERIVED)
    void holeNarrowingUpward() {
        TriMesh mesh = TestShape.washer(10, 10 - OFF, 4, 4 - OFF);
        Parting p = halves(mesh);
        Check.absolute(
                "hole closed at its top: half B holds the frustum",
                16_146.645647,
                volume(p, Material.B),
                1e-6,
                "mm³",
                PRINTED);
        double shadow = PulledMesh.of(mesh, Progress.SILENT).shadow().area();
        Check.absolute("hole narrowing upward: shadow", 266.064386, shadow, 1e-6, "mm²", PRINTED);
    }

    @Published(id = "SYN", source = "closed form", where = "Z profile, bands 0 to 3 and 2 to 5", mark = DERIVED)
    void zProfile() {
        Parting p = halves(TestShape.bar(new double[] {0, 0, 10, 0, 10, 2, 20, 2, 20, 5, 10, 5, 10, 3, 0, 3}, Z_FACES));
        Check.absolute("Z profile: flat parting from", 2, band(p).low(), 1e-9, "mm", EXACT);
        Check.absolute("Z profile: flat parting to", 3, band(p).high(), 1e-9, "mm", EXACT);
    }

    @Published(id = "SYN", source = "closed form", where = "ramp between bands 0 to 2 and 4 to 6", mark = DERIVED)
    void ramp() {
        Parting p =
                halves(TestShape.bar(new double[] {0, 0, 8, 0, 12, 4, 20, 4, 20, 6, 12, 6, 8, 2, 0, 2}, RAMP_FACES));
        Check.exact("ramp: no flat parting", true, band(p).low() > band(p).high());
        Check.absolute("ramp: part", 400, volume(p, Material.PART), 1e-9, "mm³", EXACT);
        double metal = volume(p, Material.A) + volume(p, Material.B);
        Check.absolute("ramp: both halves", 30_800, metal, 1e-8, "mm³", EXACT);
    }

    @Published(
            id = "SYN",
            source = "closed form",
            where = "channel 20 × 10 × 8, slot 16 × 4 on its side",
            mark = DERIVED)
    void channelOnItsSide() {
        Parting p =
                halves(TestShape.bar(new double[] {0, 0, 20, 0, 20, 2, 4, 2, 4, 6, 20, 6, 20, 8, 0, 8}, CHANNEL_FACES));
        Check.absolute("channel: part", 960, volume(p, Material.PART), 1e-9, "mm³", EXACT);
        Check.absolute("channel: hidden share", 0.8, p.columns().hiddenShare(), 0.005, "", "raster of columns");
        Check.absolute("channel: half A locked", 0.8, p.columns().lockShareA(), 0.005, "", "raster of columns");
    }
}
