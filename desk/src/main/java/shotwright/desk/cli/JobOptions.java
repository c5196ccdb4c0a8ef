package shotwright.desk.cli;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Option;
import shotwright.job.CardFile;
import shotwright.job.JobCard;
import shotwright.job.JobException;

/** Options that say what is decided; they win over the job card. */
final class JobOptions {
    @Option(
            names = "--card",
            paramLabel = "FILE",
            description = "job card (JSON) with the decisions; options given here win over it")
    @Nullable Path card;

    @Option(names = "--unit", paramLabel = "mm|cm|m|in", description = "unit of a file that states none (STL, OBJ)")
    @Nullable String unit;

    @Option(
            names = "--mend",
            paramLabel = "WHAT",
            split = ",",
            description =
                    "mend the file: flip (a part that is inside out), winding (facets that face the wrong way), holes (small gaps)")
    List<String> mend = new ArrayList<>();

    @Option(names = "--body", paramLabel = "N", description = "which body of a file with several, counted from 1")
    @Nullable Integer body;

    @Option(
            names = "--pull",
            paramLabel = "x,y,z",
            split = ",",
            description = "direction in which half A comes off, in the file's axes")
    List<Double> pull = new ArrayList<>();

    @Option(
            names = "--resin",
            paramLabel = "ID",
            description = "resin on the rack, by its short name; may be given several times, the first sets the shrink")
    List<String> resins = new ArrayList<>();

    @Option(
            names = "--press",
            paramLabel = "ID",
            description = "press on the rack, by its short name (see the rack command)")
    @Nullable String press;

    @Option(
            names = "--second-press",
            paramLabel = "ID",
            description = "a press the mold must fit as well, for example the customer's")
    @Nullable String secondPress;

    @Option(names = "--cavities", paramLabel = "N", description = "how many parts a shot")
    @Nullable Integer cavities;

    @Option(names = "--quantity", paramLabel = "N", split = ",", description = "quantities to price")
    List<Integer> quantities = new ArrayList<>();

    @Option(names = "--mill", paramLabel = "ID", description = "mill on the rack, by its short name")
    @Nullable String mill;

    @Option(
            names = "--control",
            paramLabel = "ID",
            description = "how programs are written for the mill's control, by the short name on the rack")
    @Nullable String control;

    @Option(
            names = "--add-draft",
            paramLabel = "DEG",
            description = "propose a part whose walls have this draft (STEP parts only), for the customer to approve")
    @Nullable Double addDraftDeg;

    @Option(
            names = "--neutral",
            paramLabel = "parting|open-edge",
            description = "with --add-draft: which end of a wall keeps its size (default: parting)")
    @Nullable String draftNeutral;

    @Option(names = "--lengths", paramLabel = "mm|in", description = "lengths on the pages in mm or in inches")
    @Nullable String lengths;

    @Option(
            names = "--shop",
            paramLabel = "DIR",
            description =
                    "the shop's folder, with its own rack files (rack/<kind>/<id>.json; its rates are rack/rates/shop.json); one with the same short name replaces ours")
    @Nullable Path shop;

    @Option(names = "--json", description = "print the results as JSON, always in metric units")
    boolean json;

    /** The card with the options laid over it. */
    JobCard card() {
        JobCard c = card == null ? JobCard.empty() : CardFile.read(card);
        return new JobCard(
                JobCard.KIND,
                c.job(),
                c.customer(),
                unit != null ? unit : c.unit(),
                mend.isEmpty() ? c.mend() : mends(),
                body != null ? body : c.body(),
                pull.isEmpty() ? c.pull() : pull,
                resins.isEmpty() ? c.resins() : resins,
                press != null ? press : c.press(),
                secondPress != null ? secondPress : c.secondPress(),
                cavities != null ? cavities : c.cavities(),
                quantities.isEmpty() ? c.quantities() : quantities,
                c.material(),
                c.cutters(),
                mill != null ? mill : c.mill(),
                control != null ? control : c.control(),
                c.layout(),
                addDraftDeg != null ? addDraftDeg : c.addDraftDeg(),
                draftNeutral != null ? draftNeutral : c.draftNeutral(),
                lengths != null ? lengths : c.lengthsIn(),
                c.currency());
    }

    private Set<String> mends() {
        for (String m : mend) {
            if (!Set.of("flip", "winding", "holes").contains(m))
                throw new JobException(
                        "--mend " + m + " is not known. What can be mended: flip, winding, holes.", null);
        }
        return new TreeSet<>(mend);
    }
}
