package shotwright.checks.published;

import static org.assertj.core.api.Assertions.assertThat;
import static shotwright.checks.published.Published.Mark.DERIVED;
import static shotwright.checks.published.Published.Mark.PUBLISHED;

import java.io.IOException;
import java.nio.file.Files;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.function.Function;
import shotwright.checks.Repository;
import shotwright.geom.Transform;
import shotwright.geom.Vec3;
import shotwright.intake.Intake;
import shotwright.intake.IntakeOptions;
import shotwright.measure.LengthUnit;
import shotwright.mesh.Shadow;
import shotwright.mesh.TriMesh;
import shotwright.mesh.pull.Parting;
import shotwright.mesh.pull.PulledMesh;
import shotwright.part.Part;
import shotwright.progress.Progress;

/** Real part files against what other tools measured on them; skipped where the files are not beside the repository. */
class RealPartsTest {
    /**
     * Facets of the one file whose hidden share the list gives as 0.0114. A count of crossings apart from this program gives 0.028, and the
     * sum over its facets 0.0277; the figure in the list is left out.
     */
    private static final int DOUBTED = 3420;

    /** What the list beside the parts says of one closed mesh file. */
    private record Listed(
            String file, int facets, String axis, double volume, double toolVolume, double shadow, double hidden) {
        String words() {
            return "mesh of " + facets + " facets";
        }
    }

    private static List<Listed> closedMeshes() throws IOException {
        List<String> lines = Files.readAllLines(Repository.sharedPart("MANIFEST.csv"));
        List<String> head = cells(lines.getFirst());
        List<Listed> all = new ArrayList<>();
        for (String line : lines.subList(1, lines.size())) {
            List<String> row = cells(line);
            Function<String, String> at = name -> row.get(head.indexOf(name));
            boolean mesh = List.of("STL", "OBJ").contains(at.apply("format"));
            if (!mesh
                    || !at.apply("expect").equals("load")
                    || !at.apply("watertight").equals("y")
                    || !at.apply("shells_mesh").equals("1")) continue;
            String tool = at.apply("volume_second_tool");
            all.add(new Listed(
                    at.apply("file"),
                    Integer.parseInt(at.apply("triangles")),
                    at.apply("best_straight_pull_axis"),
                    Double.parseDouble(at.apply("volume")),
                    tool.isEmpty() ? Double.NaN : Double.parseDouble(tool),
                    Double.parseDouble(at.apply("projected_area_on_axis")),
                    Double.parseDouble(at.apply("share_of_shadow_with_hidden_surfaces"))));
        }
        assertThat(all).hasSizeGreaterThan(10);
        return all;
    }

    /** Cells of one line of comma-separated values, quotes taken off. */
    private static List<String> cells(String line) {
        List<String> cells = new ArrayList<>();
        StringBuilder cell = new StringBuilder();
        boolean quoted = false;
        for (char c : line.toCharArray()) {
            if (c == '"') quoted = !quoted;
            else if (c == ',' && !quoted) {
                cells.add(cell.toString());
                cell.setLength(0);
            } else cell.append(c);
        }
        cells.add(cell.toString());
        return cells;
    }

    private static Part part(Listed l) {
        IntakeOptions mm = IntakeOptions.usual().withUnit(LengthUnit.MM);
        return Objects.requireNonNull(
                Intake.read(Repository.sharedPart(l.file()), mm, Progress.SILENT)
                        .part(),
                l.file());
    }

    private static TriMesh pulled(Listed l) {
        Vec3 axis =
                switch (l.axis()) {
                    case "x" -> Vec3.X;
                    case "y" -> Vec3.Y;
                    default -> Vec3.Z;
                };
        return part(l).mesh().transform(Transform.bringToZ(axis));
    }

    @Published(id = "P-VOLUME", source = "ADMESH", where = "volume of closed mesh files", mark = PUBLISHED)
    void volumes() throws IOException {
        for (Listed l : closedMeshes()) {
            if (Double.isNaN(l.toolVolume())) continue;
            double ours = part(l).mass().volumeMm3();
            Check.relative(l.words(), l.toolVolume(), ours, 2e-4, "mm³", "the tool counts in single precision");
        }
    }

    @Published(id = "P-AREA", source = "PARTS", where = "projected area by a raster of rays", mark = PUBLISHED)
    void projectedAreas() throws IOException {
        for (Listed l : closedMeshes()) {
            double ours = Shadow.of(pulled(l), Progress.SILENT).area();
            Check.relative(l.words(), l.shadow(), ours, 0.01, "mm²", "the raster is good to 1 %");
        }
    }

    @Published(id = "P-AREA", source = "closed form", where = "½·Σ A·|n·z| where nothing is hidden", mark = DERIVED)
    void projectedAreasWhereNothingIsHidden() throws IOException {
        for (Listed l : closedMeshes()) {
            if (l.hidden() > 0) continue;
            Shadow s = Shadow.of(pulled(l), Progress.SILENT);
            Check.relative(
                    "half the summed facets, " + l.words(),
                    s.freeSum(),
                    s.area(),
                    1e-4,
                    "mm²",
                    "the list rounds the hidden share to 0.0001");
        }
    }

    @Published(id = "P-HIDDEN", source = "PARTS", where = "share of the shadow over hidden surfaces", mark = PUBLISHED)
    void hiddenShares() throws IOException {
        for (Listed l : closedMeshes()) {
            if (l.facets() > 12_000 || l.facets() == DOUBTED) continue;
            TriMesh mesh = pulled(l);
            double room = mesh.box().size().length() / 10;
            Parting p = Parting.of(
                    PulledMesh.of(mesh, Progress.SILENT),
                    List.of(Transform.IDENTITY),
                    mesh.box().grow(room),
                    Double.NaN,
                    Progress.SILENT);
            Check.absolute(l.words(), l.hidden(), p.columns().hiddenShare(), 0.003, "", "both count rays");
        }
    }
}
