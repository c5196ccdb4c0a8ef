package shotwright.report;

import java.nio.charset.StandardCharsets;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import java.util.regex.Pattern;
import java.util.zip.CRC32;
import shotwright.drawing.Drawing;
import shotwright.drawing.SvgFile;
import shotwright.geom.Vec3;
import shotwright.job.CardFile;
import shotwright.job.JobFolder;
import shotwright.job.JobResult;
import shotwright.layout.Half;
import shotwright.layout.LayoutResult;
import shotwright.machining.MachiningResult;
import shotwright.machining.MachiningResult.Clamping;
import shotwright.machining.MachiningResult.ProgramFile;
import shotwright.mold.MoldHalf;
import shotwright.mold.exact.ExactHalf;
import shotwright.mold.exact.ExactMold;
import shotwright.mold.export.StlFile;
import shotwright.mold.export.ThreeMfFile;
import shotwright.mold.export.WholeFile;
import shotwright.progress.Parallel;
import shotwright.progress.Progress;
import shotwright.report.half.FaceReader;
import shotwright.report.half.HalfDxf;
import shotwright.report.half.HalfFace;
import shotwright.report.half.HalfSheet;

/** Leaves the job folder: card, summary, halves, press sheet, pictures. */
public final class JobPapers {
    private static final Pattern PROGRAM = Pattern.compile("half-[ab]-.*\\.nc");

    private JobPapers() {}

    /** Writes everything the job answered; files of stations that did not run are removed. */
    public static void write(JobResult job, JobFolder folder, Progress progress) {
        progress.at("writing the halves", 0);
        halves(job, folder, progress.part(0, 0.1));
        exact(job, folder);
        faces(job, folder);
        Map<String, WholeFile.Content> pictures = Pictures.of(job, progress.part(0.1, 0.9));
        List<String> names = List.copyOf(pictures.keySet());
        Parallel.run(
                names.size(),
                () -> i -> folder.write(names.get(i), Objects.requireNonNull(pictures.get(names.get(i)))));
        progress.at("writing the papers", 0.95);
        folder.writeText("job-card.json", CardFile.text(job.card()));
        folder.writeText("00-summary.json", SummaryJson.text(job));
        folder.writeText("00-summary.md", SummaryPage.text(job, names));
        if (job.sheet() != null) folder.writeText("press-sheet.md", PressSheetPage.text(job.sheet(), job.inch()));
        else folder.remove("press-sheet.md");
        milling(job, folder);
    }

    /** Programs that are proved, and the papers for the mill; whatever else lies among the programs is from an earlier run. */
    private static void milling(JobResult job, JobFolder folder) {
        MachiningResult m = job.machining();
        Set<String> kept = new HashSet<>();
        if (m != null)
            for (Clamping c : m.clampings())
                for (ProgramFile f : c.files()) {
                    folder.writeText("programs/" + f.name(), f.text());
                    kept.add(f.name());
                }
        folder.removeOthers("programs", PROGRAM, kept);
        if (m == null || job.layout() == null) {
            folder.remove("setup-sheets.md");
            folder.remove("kit-list.md");
            return;
        }
        folder.writeText("setup-sheets.md", SetupSheetsPage.text(title(job), m, job.layout(), job.inch()));
        folder.writeText("kit-list.md", KitListPage.text(title(job), m, job.layout(), job.inch()));
    }

    private static void halves(JobResult job, JobFolder folder, Progress progress) {
        if (job.mold() == null) {
            for (String name : List.of("half-A.stl", "half-B.stl", "halves.3mf")) folder.remove("halves/" + name);
            return;
        }
        MoldHalf a = job.mold().a(), b = job.mold().b();
        Vec3 corner = a.mesh().box().join(b.mesh().box()).min();
        for (MoldHalf h : List.of(a, b)) {
            folder.writeFile(
                    "halves/half-" + h.half() + ".stl", to -> StlFile.write(to, h.mesh(), name(h), corner, progress));
        }
        folder.writeFile(
                "halves/halves.3mf",
                to -> ThreeMfFile.write(
                        to,
                        List.of(new ThreeMfFile.Item(name(a), a.mesh()), new ThreeMfFile.Item(name(b), b.mesh())),
                        progress));
    }

    /** What lies on each parting face, as outlines for the mill and as a drawing. */
    private static void faces(JobResult job, JobFolder folder) {
        for (Half half : Half.values()) {
            String file = "halves/half-" + half;
            if (job.mold() == null || job.layout() == null || job.review() == null) {
                folder.remove(file + ".dxf");
                folder.remove(file + ".svg");
                continue;
            }
            LayoutResult layout = job.layout();
            HalfFace face = FaceReader.of(half, layout, job.mold(), job.review().pulled());
            String outlines = HalfDxf.text(face, title(job));
            folder.writeText(file + ".dxf", outlines);
            CRC32 state = new CRC32();
            state.update(outlines.getBytes(StandardCharsets.UTF_8));
            String customer = job.card().customer();
            String stock =
                    half == Half.A ? layout.block().soldAsA() : layout.block().soldAsB();
            HalfSheet.Title title = new HalfSheet.Title(
                    title(job),
                    customer == null ? "" : customer,
                    job.intake().facts().fileName(),
                    stock.isEmpty() ? "not on the rack" : stock,
                    String.format(Locale.ROOT, "%08X", state.getValue()));
            Drawing sheet = HalfSheet.drawing(face, layout, title, job.inch());
            folder.writeText(file + ".svg", SvgFile.sheet(sheet));
        }
    }

    private static String title(JobResult job) {
        String name = job.card().job();
        return name == null ? job.intake().facts().fileName() : name;
    }

    private static void exact(JobResult job, JobFolder folder) {
        ExactMold m = job.exactMold();
        for (Half half : Half.values())
            step(
                    folder,
                    "half-" + half,
                    m == null
                            ? new byte[0]
                            : m.halves().stream()
                                    .filter(h -> h.half() == half)
                                    .map(ExactHalf::step)
                                    .findFirst()
                                    .orElse(new byte[0]));
        step(folder, "part-as-molded", m == null ? new byte[0] : m.partStep());
        step(
                folder,
                "part-with-draft",
                job.draft() == null ? new byte[0] : job.draft().partStep());
    }

    private static void step(JobFolder folder, String name, byte[] file) {
        if (file.length == 0) folder.remove("halves/" + name + ".step");
        else folder.write("halves/" + name + ".step", to -> to.write(file));
    }

    private static String name(MoldHalf h) {
        return "half " + h.half() + (h.canOpen() ? "" : ", CANNOT OPEN");
    }
}
