package shotwright.checks.gates;

import static java.nio.charset.StandardCharsets.UTF_8;
import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import javax.xml.parsers.DocumentBuilderFactory;
import javax.xml.parsers.ParserConfigurationException;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.w3c.dom.NodeList;
import org.xml.sax.SAXException;
import shotwright.checks.Repository;

/** Compiles planted code with the compiler arguments of the build itself: what may be null must be asked first, in main code. */
class NullGateTest {
    private static final String HEAD = """
            @org.jspecify.annotations.NullMarked
            final class Planted {
                static int length(@org.jspecify.annotations.Nullable String word) {
            """;
    private static final String TAIL = "    }\n    private Planted() {}\n}\n";

    private record Compiled(int exit, String said) {}

    private static List<String> argumentsOfTheBuild() throws IOException {
        try {
            NodeList args = DocumentBuilderFactory.newInstance()
                    .newDocumentBuilder()
                    .parse(Repository.root().resolve("pom.xml").toFile())
                    .getElementsByTagName("arg");
            List<String> out = new ArrayList<>();
            for (int i = 0; i < args.getLength(); i++) out.add(args.item(i).getTextContent());
            return out;
        } catch (ParserConfigurationException | SAXException e) {
            throw new IOException(e);
        }
    }

    private static Compiled compile(Path folder, String body) throws IOException, InterruptedException {
        Path source = folder.resolve("Planted.java");
        Files.writeString(source, HEAD + body + TAIL);
        String path = System.getProperty("java.class.path");
        List<String> command = new ArrayList<>();
        command.add(Path.of(System.getProperty("java.home"), "bin", "javac").toString());
        command.addAll(argumentsOfTheBuild());
        command.addAll(List.of("-d", folder.toString(), "-classpath", path, "-processorpath", path, source.toString()));
        Process p = new ProcessBuilder(command).redirectErrorStream(true).start();
        String said = new String(p.getInputStream().readAllBytes(), UTF_8);
        return new Compiled(p.waitFor(), said);
    }

    @Test
    void askingFirstCompiles(@TempDir Path folder) throws Exception {
        Compiled c = compile(folder, "        return word == null ? 0 : word.length();\n");
        assertThat(c.exit()).as(c.said()).isZero();
    }

    @Test
    void aPlantedDereferenceIsRefused(@TempDir Path folder) throws Exception {
        Compiled c = compile(folder, "        return word.length();\n");
        assertThat(c.exit()).isNotZero();
        assertThat(c.said()).contains("[NullAway]").contains("Planted.java:4");
    }
}
