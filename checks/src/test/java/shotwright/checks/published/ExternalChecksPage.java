package shotwright.checks.published;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Collection;
import org.junit.platform.engine.TestExecutionResult;
import org.junit.platform.launcher.TestExecutionListener;
import org.junit.platform.launcher.TestIdentifier;
import org.junit.platform.launcher.TestPlan;

/** Writes {@code docs/EXTERNAL-CHECKS.md} at the end of the whole test run (not after a part of it, nor when a test failed or was skipped). */
public final class ExternalChecksPage implements TestExecutionListener {
    private volatile boolean complete = true;

    @Override
    public void executionFinished(TestIdentifier test, TestExecutionResult result) {
        if (result.getStatus() != TestExecutionResult.Status.SUCCESSFUL) complete = false;
    }

    @Override
    public void executionSkipped(TestIdentifier test, String reason) {
        complete = false;
    }

    @Override
    public void testPlanExecutionFinished(TestPlan plan) {
        String page = System.getProperty("shotwright.externalChecks", "");
        Collection<Check.Row> rows = Check.rows();
        if (page.isEmpty() || rows.isEmpty() || !complete || System.getProperty("test") != null) return;
        try {
            Path file = Path.of(page);
            String text = render(rows);
            if (!Files.exists(file) || !Files.readString(file).equals(text)) Files.writeString(file, text);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private static String render(Collection<Check.Row> rows) {
        StringBuilder s = new StringBuilder();
        s.append("# Our numbers against numbers from outside\n\n")
                .append(
                        "Written by the tests under `checks/src/test/java/shotwright/checks/published`. Sources are listed in ")
                .append(
                        "[SOURCES.md](SOURCES.md); what has no outside check stands in [UNCHECKED.md](UNCHECKED.md).\n\n")
                .append(
                        "| id | quantity | published | ours | deviation | allowed | source | mark |\n|---|---|---|---|---|---|---|---|\n");
        for (Check.Row r : rows) {
            s.append("| ")
                    .append(String.join(", ", r.by().id()))
                    .append(" | ")
                    .append(cell(r.quantity()))
                    .append(" | ")
                    .append(cell(r.published()))
                    .append(" | ")
                    .append(cell(r.ours()))
                    .append(" | ")
                    .append(cell(r.deviation()))
                    .append(" | ")
                    .append(cell(r.allowed()))
                    .append(" | ")
                    .append(cell(r.by().source() + ", " + r.by().where()))
                    .append(" | ")
                    .append(r.by().mark().words)
                    .append(" |\n");
        }
        return s.append('\n').append(rows.size()).append(" comparisons.\n").toString();
    }

    private static String cell(String text) {
        return text.replace("|", "\\|");
    }
}
