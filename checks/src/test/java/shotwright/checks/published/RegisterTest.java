package shotwright.checks.published;

import static org.assertj.core.api.Assertions.assertThat;

import com.tngtech.archunit.core.domain.JavaClass;
import com.tngtech.archunit.core.domain.JavaMethod;
import com.tngtech.archunit.core.importer.ClassFileImporter;
import java.io.IOException;
import java.nio.file.Files;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import shotwright.checks.Repository;

/** Every outside number the project knows of is either checked or admitted as unchecked; every source named is in the list of sources. */
class RegisterTest {
    private static List<Published> published() {
        List<Published> all = new ArrayList<>();
        for (JavaClass c : new ClassFileImporter().importPackages("shotwright.checks.published")) {
            for (JavaMethod m : c.getMethods()) {
                if (m.isAnnotatedWith(Published.class)) all.add(m.getAnnotationOfType(Published.class));
            }
        }
        return all;
    }

    private static Set<String> register() throws IOException {
        return Files.readAllLines(Repository.root().resolve("checks/src/test/resources/register.txt")).stream()
                .filter(l -> !l.isBlank() && !l.startsWith("#"))
                .map(String::strip)
                .collect(Collectors.toCollection(TreeSet::new));
    }

    private static Set<String> unchecked() throws IOException {
        Matcher m = Pattern.compile("(?m)^\\| ([A-Z][A-Za-z0-9-]*) \\|")
                .matcher(Files.readString(Repository.root().resolve("docs/UNCHECKED.md")));
        Set<String> ids = new TreeSet<>();
        while (m.find()) ids.add(m.group(1));
        return ids;
    }

    @Test
    void everyRowIsCheckedOrAdmitted() throws IOException {
        Set<String> covered = published().stream()
                .flatMap(p -> List.of(p.id()).stream())
                .collect(Collectors.toCollection(TreeSet::new));
        assertThat(covered).as("ids of @Published tests stand in register.txt").isSubsetOf(register());
        Set<String> open = new TreeSet<>(register());
        open.removeAll(covered);
        assertThat(unchecked())
                .as("docs/UNCHECKED.md lists exactly the rows without a test")
                .isEqualTo(open);
    }

    @Test
    void everySourceIsListed() throws IOException {
        String sources = Files.readString(Repository.root().resolve("docs/SOURCES.md"));
        for (Published p : published()) {
            if (p.source().equals("common practice") || p.source().equals("closed form")) continue;
            assertThat(sources).as("docs/SOURCES.md has key %s", p.source()).contains("| " + p.source() + " |");
        }
    }
}
