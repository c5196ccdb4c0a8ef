package shotwright.checks.proveout;

import static java.nio.charset.StandardCharsets.UTF_8;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.json.JsonMapper;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.PrintStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import shotwright.desk.cli.Main;

/** The command from the outside: what it prints, and how it ends. */
class ProveoutCommandTest {
    /** A slot of 20 mm, 1 deep, by a 6 mm cutter: 120 + 9π mm³ (closed form). */
    private static final String SLOT = """
            (SLOT)
            G21 G17 G40 G80 G90 G94
            G54
            T1 M6
            S9000 M3
            G0 Z5.
            G0 X10. Y10.
            G0 Z1.
            G1 Z-1. F200.
            G1 X30. F400.
            G0 Z5.
            M5
            M30
            """;

    private static final String CUTTERS = "{\"1\": {\"cutter\": \"flat-6.0x18\", \"stickoutMm\": 30}}";

    /** What a run said and how it ended. */
    private record Said(int code, String out, String err) {}

    private static Said run(String... args) {
        PrintStream out = System.out, err = System.err;
        ByteArrayOutputStream o = new ByteArrayOutputStream(), e = new ByteArrayOutputStream();
        try {
            System.setOut(new PrintStream(o, true, UTF_8));
            System.setErr(new PrintStream(e, true, UTF_8));
            int code = Main.run(args);
            return new Said(code, o.toString(UTF_8), e.toString(UTF_8));
        } finally {
            System.setOut(out);
            System.setErr(err);
        }
    }

    private static Said proveout(Path folder, String program, String... more) throws IOException {
        Path file = Files.writeString(folder.resolve("slot.nc"), program);
        Path cutters = Files.writeString(folder.resolve("cutters.json"), CUTTERS);
        List<String> args = new ArrayList<>(
                List.of("proveout", file.toString(), "--stock", "40,20,10", "--cutters", cutters.toString()));
        args.addAll(Arrays.asList(more));
        return run(args.toArray(String[]::new));
    }

    @Test
    void aSoundProgram(@TempDir Path folder) throws IOException {
        Said said = proveout(folder, SLOT, "--mill", "bench-router-300");
        assertThat(said.code()).as(said.err()).isEqualTo(Main.DONE);
        assertThat(said.out())
                .contains("slot.nc: 1 operations, 6 moves, 22 mm at feed. It takes 148 mm³ from the stock.")
                .contains("No fault was found.")
                .contains("in air first");
        JsonNode json =
                new JsonMapper().readTree(proveout(folder, SLOT, "--json").out());
        assertThat(json.path("removedMm3").asDouble()).isCloseTo(120 + 9 * Math.PI, within(0.15));
        assertThat(json.path("faults")).isEmpty();
    }

    @Test
    void aRapidThroughTheStock(@TempDir Path folder) throws IOException {
        Said said = proveout(folder, SLOT.replace("G0 Z1.", "G0 Z-0.5"));
        assertThat(said.code()).isEqualTo(Main.STOP);
        assertThat(said.out())
                .contains("One fault:")
                .contains("line 8, operation 1")
                .contains("0.50 mm, allowed 0.00 mm");
        assertThat(proveout(folder, SLOT.replace("G0 Z1.", "G0 Z-0.5"), "--lengths", "in")
                        .out())
                .contains("0.0197 in, allowed 0.00");
        JsonNode fault = new JsonMapper()
                .readTree(proveout(folder, SLOT.replace("G0 Z1.", "G0 Z-0.5"), "--json")
                        .out())
                .path("faults")
                .path(0);
        assertThat(fault.path("line").asInt()).isEqualTo(8);
        assertThat(fault.path("kind").asText()).isEqualTo("rapid-in-stock");
        assertThat(fault.path("value").asDouble()).isCloseTo(0.5, within(1e-5));
    }

    /** The half is the block with its top at the program's zero: any cut goes into it. */
    @Test
    void aCutIntoTheHalf(@TempDir Path folder) throws IOException {
        Path half = Files.writeString(folder.resolve("half.stl"), block(40, 20, -10));
        Said said = proveout(folder, SLOT, "--half", half.toString());
        assertThat(said.code()).as(said.err()).isEqualTo(Main.STOP);
        assertThat(said.out())
                .contains("cuts into the half: 1.000 mm")
                .contains("line 9")
                .contains("line 10");
        Said shallow = proveout(folder, SLOT.replace("Z-1.", "Z0."), "--half", half.toString());
        assertThat(shallow.out()).contains("No fault was found.").contains("the most is 0.000 mm");
    }

    private static String block(double x, double y, double z) {
        double[][] p = {{0, 0, z}, {x, 0, z}, {x, y, z}, {0, y, z}, {0, 0, 0}, {x, 0, 0}, {x, y, 0}, {0, y, 0}};
        int[][] t = {
            {0, 2, 1}, {0, 3, 2}, {4, 5, 6}, {4, 6, 7}, {0, 1, 5}, {0, 5, 4}, {1, 2, 6}, {1, 6, 5}, {2, 3, 7},
            {2, 7, 6}, {3, 0, 4}, {3, 4, 7}
        };
        StringBuilder s = new StringBuilder("solid block\n");
        for (int[] f : t) {
            s.append("facet normal 0 0 0\nouter loop\n");
            for (int k : f)
                s.append("vertex ")
                        .append(p[k][0])
                        .append(' ')
                        .append(p[k][1])
                        .append(' ')
                        .append(p[k][2])
                        .append('\n');
            s.append("endloop\nendfacet\n");
        }
        return s.append("endsolid\n").toString();
    }

    @Test
    void wrongUseIsToldWithWhatToDo(@TempDir Path folder) throws IOException {
        Said wrong = proveout(folder, SLOT.replace("G1 X30. F400.", "G1 X30 W2"));
        assertThat(wrong.code()).isEqualTo(Main.UNREADABLE);
        assertThat(wrong.err()).contains("slot.nc line 10 \"G1 X30 W2\"").contains("only X, Y and Z");
        Said two = proveout(folder, SLOT, "--zero", "1,2");
        assertThat(two.code()).isEqualTo(Main.WRONG_USE);
        assertThat(two.err()).contains("three lengths");
        assertThat(proveout(folder, SLOT, "--cell", "7").err()).contains("between 0.005 and 1 mm");
        assertThat(proveout(folder, SLOT.replace("T1", "T4")).err())
                .contains("calls T4")
                .contains("\"4\"");
        assertThat(proveout(folder, SLOT, "--mill", "none").err()).contains("has no mill");
        Path file = folder.resolve("slot.nc");
        assertThat(run("proveout", file.toString(), "--stock", "40,20,10").err())
                .contains("calls T1")
                .contains("--cutters FILE");
        assertThat(run("proveout", "no-such.nc", "--stock", "40,20,10").err()).contains("cannot be read");
        assertThat(run("proveout", "--help").out()).contains("--stock=L,W,T").contains("--half=FILE");
    }

    @Test
    void aCutterFileIsHeldToItsKeys(@TempDir Path folder) throws IOException {
        Path program = Files.writeString(folder.resolve("slot.nc"), SLOT);
        String[][] wrong = {
            {"{\"1\": {\"cutter\": \"flat-6.0x18\"}}", "has no stickoutMm"},
            {"{\"1\": {\"cutter\": \"spoon\", \"stickoutMm\": 30}}", "has no cutter 'spoon'"},
            {"{\"one\": {}}", "no tool number"},
            {"{\"1\": {\"cutter\": \"flat-6.0x18\", \"stickoutMm\": 3}}", "flutes into the holder"},
            {"{\"1\": {\"cutter\": \"flat-6.0x18\", \"stickoutMm\": 30, \"holder\": \"tape\"}}", "er16"},
            {"{\"1\": {\"cutter\": \"flat-6.0x18\", \"length\": 30}}", "length is not known"},
            {"[]", "one object in braces"},
            {"{", "no sound JSON"},
        };
        for (String[] w : wrong) {
            Path file = Files.writeString(folder.resolve("wrong.json"), w[0]);
            Said said = run("proveout", program.toString(), "--stock", "40,20,10", "--cutters", file.toString());
            assertThat(said.code()).as(w[0]).isEqualTo(Main.WRONG_USE);
            assertThat(said.err()).contains("wrong.json").contains(w[1]);
        }
    }
}
