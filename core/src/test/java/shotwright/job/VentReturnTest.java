package shotwright.job;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.OutputStream;
import java.nio.ByteBuffer;
import java.nio.ByteOrder;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import shotwright.fill.FlowField;
import shotwright.finding.Finding;
import shotwright.geom.Vec2;
import shotwright.geom.Vec3;
import shotwright.layout.LayoutResult;
import shotwright.layout.Vent;
import shotwright.mesh.Solids;
import shotwright.mesh.TriMesh;
import shotwright.progress.Progress;
import shotwright.region.Region;

/** Late places return to the layout once, and the second layout is what is kept. */
class VentReturnTest {
    private static JobCard card() {
        return new JobCard(
                JobCard.KIND,
                null,
                null,
                "mm",
                Set.of(),
                null,
                List.of(0.0, 0.0, 1.0),
                List.of("abs"),
                "electric-10t",
                null,
                1,
                List.of(),
                null,
                List.of(),
                null,
                null,
                new LayoutCard(
                        null, "edge", List.of(0.0, 15.0, 1.0), null, null, List.of(), List.of(), null, null, null),
                null,
                null,
                null,
                null);
    }

    /**
     * A plate of 60 × 30 gated in the middle of a short side. One long border is 4 mm thick, the rest 1 mm: melt runs ahead in the thick one
     * and arrives last in the thin corner far from the gate (melt follows the thick wall, common practice), while the longest way alone
     * cannot tell the two far corners apart.
     */
    private static TriMesh lopsided() {
        Region section = Region.of(List.of(
                new Vec2(0, 0), new Vec2(30, 0), new Vec2(30, 4), new Vec2(20, 4), new Vec2(18, 1), new Vec2(0, 1)));
        return Solids.prism(section, 0, 60);
    }

    private static Path file(Path folder) throws IOException {
        TriMesh m = lopsided();
        ByteBuffer b = ByteBuffer.allocate(84 + 50 * m.facetCount()).order(ByteOrder.LITTLE_ENDIAN);
        b.position(80).putInt(m.facetCount());
        for (int f = 0; f < m.facetCount(); f++) {
            b.position(84 + 50 * f + 12);
            for (int k = 0; k < 3; k++) {
                Vec3 p = m.cornerPoint(f, k);
                // the prism stands along z; laid down, its long side is x, its width y and its wall z
                b.putFloat((float) p.z()).putFloat((float) p.x()).putFloat((float) p.y());
            }
        }
        Path file = folder.resolve("lopsided.stl");
        try (OutputStream out = Files.newOutputStream(file)) {
            out.write(b.array());
        }
        return file;
    }

    private static List<Finding> moved(LayoutResult l) {
        return l.findings().stream().filter(f -> f.code().equals("vent-moved")).toList();
    }

    @Test
    void aVentGoesWhereTheMeltArrivesLastAndStaysThereWhenTakenUpAgain(@TempDir Path folder) throws IOException {
        Path file = file(folder);
        JobFolder job = JobFolder.open(folder.resolve("job"));
        JobResult first = new Line(Shop.standard()).run(file, card(), Station.COOL, job, Progress.SILENT);
        LayoutResult layout = first.layout();
        assertThat(layout).isNotNull();
        assertThat(first.fill()).isNotNull();
        if (layout == null || first.fill() == null) return;
        assertThat(moved(layout)).isNotEmpty();
        assertThat(moved(layout).getFirst().text()).contains("because the melt arrives there last");
        Vec3 thinCorner = onMold(layout, new Vec3(60, 0, 0)), thickCorner = onMold(layout, new Vec3(60, 30, 0));
        Vec3 leading = layout.vents().getFirst().atMm();
        assertThat(leading.xy().distance(thinCorner.xy())).isLessThan(10);
        assertThat(leading.xy().distance(thickCorner.xy())).isGreaterThan(15);
        FlowField.LastFill late = first.fill().lastFills().getFirst();
        Vec3 at = layout.cavities().getFirst().place().apply(late.atMm());
        assertThat(layout.vents().stream()
                        .mapToDouble(v -> v.atMm().distance(at))
                        .min()
                        .orElse(99))
                .isLessThan(10);

        JobResult again = new Line(Shop.standard()).run(file, card(), Station.COOL, job, Progress.SILENT);
        assertThat(again.takenUp()).contains(Station.LAYOUT, Station.HALVES, Station.FILL);
        assertThat(places(again)).isEqualTo(places(first));
        JobResult fresh = new Line(Shop.standard()).run(file, card(), Station.LAYOUT, null, Progress.SILENT);
        assertThat(places(fresh)).hasSameSizeAs(places(first));
        for (int i = 0; i < places(first).size(); i++)
            assertThat(places(fresh).get(i).distance(places(first).get(i))).isLessThan(1e-6);
    }

    /** A point of the part as drawn, which opens along its own z. */
    private static Vec3 onMold(LayoutResult layout, Vec3 drawn) {
        return layout.cavities().getFirst().place().apply(drawn);
    }

    private static List<Vec3> places(JobResult r) {
        List<Vec3> out = new ArrayList<>();
        if (r.layout() != null) for (Vent v : r.layout().vents()) out.add(v.atMm());
        return out;
    }
}
