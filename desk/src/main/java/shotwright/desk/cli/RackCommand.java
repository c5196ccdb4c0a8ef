package shotwright.desk.cli;

import java.io.PrintWriter;
import java.nio.file.Path;
import java.util.List;
import java.util.concurrent.Callable;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;
import shotwright.job.JobException;
import shotwright.job.Shop;
import shotwright.rack.Rack;
import shotwright.report.RackPage;

/** What is on the rack, with sources. */
@Command(
        name = "rack",
        mixinStandardHelpOptions = true,
        description =
                "what is on the rack: resin, press, cutter, mill, stock, material, dowel, screw, rates; each number with its source")
@SuppressWarnings("NullAway.Init") // picocli fills the fields
final class RackCommand implements Callable<Integer> {
    @Parameters(
            index = "0",
            arity = "0..1",
            paramLabel = "KIND",
            description = "resin, press, cutter, mill, stock, material, dowel, screw or rates")
    @Nullable String kind;

    @Parameters(
            index = "1",
            arity = "0..1",
            paramLabel = "ID",
            description = "one entry with every number and its source")
    @Nullable String id;

    @Option(
            names = "--shop",
            paramLabel = "DIR",
            description = "the shop's folder, with its own rack files in rack/<kind>/<id>.json")
    @Nullable Path shop;

    @Option(names = "--json", description = "print as JSON")
    boolean json;

    @Spec
    CommandSpec spec;

    @Override
    public Integer call() {
        Shop rack = LineRun.shop(shop);
        PrintWriter out = spec.commandLine().getOut();
        List<Rack<?>> racks = rack.racks();
        if (kind != null)
            racks = racks.stream()
                    .filter(r ->
                            r.kind().equals(kind) || RackPage.word(r.kind()).equals(kind))
                    .toList();
        if (racks.isEmpty()) {
            throw new JobException(
                    "The rack has no “" + kind + "”. It has: "
                            + String.join(
                                    ", ",
                                    rack.racks().stream()
                                            .map(r -> RackPage.word(r.kind()))
                                            .toList()) + ".",
                    null);
        }
        if (id != null) out.print(RackPage.entry(racks.getFirst(), id, json));
        else out.print(RackPage.list(racks, kind != null, json));
        out.flush();
        return Main.DONE;
    }
}
