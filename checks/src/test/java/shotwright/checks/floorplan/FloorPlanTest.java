package shotwright.checks.floorplan;

import static org.assertj.core.api.Assertions.assertThat;

import com.tngtech.archunit.core.domain.Dependency;
import com.tngtech.archunit.core.domain.JavaClass;
import com.tngtech.archunit.core.domain.JavaClasses;
import com.tngtech.archunit.core.importer.ClassFileImporter;
import com.tngtech.archunit.core.importer.ImportOption;
import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.TreeSet;
import org.jspecify.annotations.NullMarked;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import shotwright.checks.Repository;

/** Holds the code to the floor plan, to units in names, and to null-marked, documented packages. */
class FloorPlanTest {
    /** The command line, and the main program of the engine's own process. */
    private static final List<String> PROGRAMS = List.of("shotwright.desk.cli", "shotwright.kernel.worker");

    private static FloorPlan plan;
    private static JavaClasses classes;

    @BeforeAll
    static void read() throws IOException {
        plan = FloorPlan.read(Repository.root().resolve("docs/packages.puml"));
        classes = new ClassFileImporter()
                .withImportOption(ImportOption.Predefined.DO_NOT_INCLUDE_TESTS)
                .withImportOption(location -> !location.contains("/shotwright/checks/"))
                .importPackages("shotwright");
    }

    static List<String> forbiddenArrows(FloorPlan plan, Iterable<JavaClass> classes) {
        TreeSet<String> bad = new TreeSet<>();
        for (JavaClass c : classes) {
            Optional<String> from = plan.boxOf(c.getPackageName());
            if (from.isEmpty()) {
                bad.add(c.getPackageName() + " is not drawn in docs/packages.puml");
                continue;
            }
            for (Dependency d : c.getDirectDependenciesFromSelf()) {
                String target = d.getTargetClass().getPackageName();
                if (!target.startsWith("shotwright")) continue;
                Optional<String> to = plan.boxOf(target);
                if (to.isPresent() && !plan.allows(from.get(), to.get()))
                    bad.add("[" + from.get() + "] --> [" + to.get() + "] is not drawn: " + d.getDescription());
            }
        }
        return List.copyOf(bad);
    }

    @Test
    void sawTheProgram() {
        assertThat(classes.size()).isGreaterThan(150);
    }

    @Test
    void arrowsPointDown() {
        assertThat(plan.boxes()).hasSizeGreaterThan(30);
        assertThat(plan.onCircle()).isEmpty();
        plan.arrows().forEach((from, to) -> {
            assertThat(plan.boxes()).contains(from);
            assertThat(plan.boxes()).containsAll(to);
        });
    }

    @Test
    void importsFollowTheArrows() {
        assertThat(forbiddenArrows(plan, classes)).isEmpty();
    }

    @Test
    void aPlantedImportIsFound() {
        JavaClasses planted = new ClassFileImporter().importClasses(shotwright.geom.planted.UpwardImport.class);
        assertThat(forbiddenArrows(plan, planted)).anyMatch(s -> s.contains("[geom] --> [mesh]"));
    }

    @Test
    void doublesCarryTheirUnit() {
        assertThat(UnitSuffixes.missing(classes)).isEmpty();
    }

    @Test
    void aPlantedBareDoubleIsFound() {
        JavaClasses planted = new ClassFileImporter().importClasses(shotwright.geom.planted.BareDouble.class);
        assertThat(UnitSuffixes.missing(planted)).anyMatch(s -> s.contains("BareDouble.wall"));
    }

    @Test
    void packagesAreNullMarkedAndDocumented() throws IOException {
        List<String> bad = new ArrayList<>();
        for (JavaClass c : classes) {
            if (c.getSimpleName().equals("package-info")) continue;
            String p = c.getPackageName();
            Optional<Package> pack = Optional.ofNullable(c.reflect().getPackage());
            if (pack.isEmpty() || !pack.get().isAnnotationPresent(NullMarked.class))
                bad.add(p + " has no null-marked package-info.java");
        }
        assertThat(new TreeSet<>(bad)).isEmpty();
    }

    @Test
    void onlyProgramsPrint() {
        List<String> bad = new ArrayList<>();
        for (JavaClass c : classes) {
            if (PROGRAMS.contains(c.getPackageName())) continue;
            c.getFieldAccessesFromSelf().stream()
                    .filter(a -> a.getTargetOwner().isEquivalentTo(System.class)
                            && List.of("out", "err").contains(a.getTarget().getName()))
                    .forEach(a -> bad.add(a.getDescription()));
        }
        assertThat(bad).isEmpty();
    }
}
