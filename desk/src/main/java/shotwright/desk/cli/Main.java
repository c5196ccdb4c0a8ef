package shotwright.desk.cli;

import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine;
import picocli.CommandLine.Command;
import picocli.CommandLine.Help.Ansi;
import picocli.CommandLine.ParameterException;
import shotwright.intake.IntakeException;
import shotwright.job.JobException;
import shotwright.machining.gcode.GcodeException;
import shotwright.progress.Progress;
import shotwright.rack.RackException;

/** The program's front door. */
@Command(
        name = "shotwright",
        mixinStandardHelpOptions = true,
        version = "Shotwright 0.1.0",
        synopsisSubcommandLabel = "COMMAND",
        header = "From a plastic part file to two aluminium mold halves, for a one-person mold shop.",
        subcommands = {
            DemoCommand.class,
            ReviewCommand.class,
            RunCommand.class,
            HalvesCommand.class,
            FillCommand.class,
            MillCommand.class,
            ProveoutCommand.class,
            RackCommand.class
        },
        footer = {
            "",
            "Exit codes: 0 done, 1 the part or the plan has a stop, 2 wrong use, 3 the file cannot be read.",
            "Estimates help to plan. Local rules, the makers' manuals and licensed practice come first."
        })
public final class Main {
    /** Done. */
    public static final int DONE = 0;

    /** The part or the plan has a {@code stop} finding. */
    public static final int STOP = 1;

    /** Wrong use. */
    public static final int WRONG_USE = 2;

    /** The file cannot be read. */
    public static final int UNREADABLE = 3;

    /** Stopped by the person. */
    public static final int CANCELLED = 130;

    private static final int FAULT = 70;

    private Main() {}

    public static void main(String[] args) {
        int code = run(args);
        Stopping.lastWordSaid();
        System.exit(code);
    }

    /** Runs one command line and returns its exit code. */
    public static int run(String... args) {
        CommandLine line = new CommandLine(new Main());
        line.setColorScheme(CommandLine.Help.defaultColorScheme(Ansi.OFF));
        line.setUsageHelpWidth(110);
        line.setCaseInsensitiveEnumValuesAllowed(true);
        line.setParameterExceptionHandler(Main::wrongUse);
        line.setExecutionExceptionHandler((e, cmd, parsed) -> trouble(e, cmd));
        return line.execute(args);
    }

    private static int wrongUse(ParameterException e, String[] args) {
        CommandLine cmd = e.getCommandLine();
        cmd.getErr().println(e.getMessage());
        CommandLine.UnmatchedArgumentException.printSuggestions(e, cmd.getErr());
        cmd.getErr().println("“" + cmd.getCommandSpec().qualifiedName() + " --help” shows how it is used.");
        return WRONG_USE;
    }

    private static int trouble(Exception e, CommandLine cmd) {
        PrintWriter err = cmd.getErr();
        return switch (e) {
            case IntakeException i -> say(err, i.getMessage(), UNREADABLE);
            case GcodeException g -> say(err, g.getMessage(), UNREADABLE);
            case JobException j -> say(err, j.getMessage(), WRONG_USE);
            case RackException wrong -> say(err, wrong.getMessage(), WRONG_USE);
            case Progress.Cancelled c -> say(err, "Stopped. Nothing half written was left behind.", CANCELLED);
            default -> fault(err, e);
        };
    }

    private static int say(PrintWriter err, @Nullable String message, int code) {
        err.println(message);
        return code;
    }

    private static int fault(PrintWriter err, Exception e) {
        StringWriter trace = new StringWriter();
        e.printStackTrace(new PrintWriter(trace));
        err.println("The program met a fault of its own and stopped; your files are untouched.");
        try {
            Path report = Files.createTempFile("shotwright-fault-", ".txt");
            Files.writeString(report, trace.toString());
            err.println("What happened is written down in " + report
                    + "; please send it to the makers with the part file, if you may.");
        } catch (IOException unwritable) {
            err.println(e);
        }
        return FAULT;
    }
}
