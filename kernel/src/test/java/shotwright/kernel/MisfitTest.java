package shotwright.kernel;

import static java.nio.charset.StandardCharsets.ISO_8859_1;
import static org.assertj.core.api.Assertions.assertThat;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestInstance;
import shotwright.brep.ExactFailure;
import shotwright.brep.ExactShapes;
import shotwright.brep.exchange.ExchangeFile;
import shotwright.brep.exchange.Misfit;
import shotwright.geom.Vec3;
import shotwright.progress.Progress;

/** A cylinder as the engine writes it, broken in one place at a time: the place must be found. */
@TestInstance(TestInstance.Lifecycle.PER_CLASS)
class MisfitTest {
    private String good = "";

    @BeforeAll
    void write() throws ExactFailure {
        try (WorkerEngine engine = new WorkerEngine(WorkerEngine.Allowance.USUAL)) {
            assumeTrue(engine.whatIsMissing().isEmpty(), () -> engine.whatIsMissing()
                    .orElse(""));
            try (ExactShapes x = new ExactShapes(engine, Progress.SILENT)) {
                good = new String(
                        x.writeStep("pin", List.of(x.cylinder(new Vec3(1, 2, 3), Vec3.Z, 4, 20))), ISO_8859_1);
            }
        }
    }

    private static ExchangeFile read(String text) {
        return ExchangeFile.read(text.getBytes(ISO_8859_1));
    }

    private Misfit found(String wrong) {
        assertThat(wrong).isNotEqualTo(good);
        return Misfit.likeliest(read(wrong)).orElseThrow();
    }

    /** The first entity of a type: its number, and its values in brackets. */
    private Matcher first(String type) {
        Matcher m = Pattern.compile("#(\\d+) = " + type + "\\(([^;]*)\\);").matcher(good);
        assertThat(m.find()).isTrue();
        return m;
    }

    private String replaced(Matcher entity, int group, String by) {
        return good.substring(0, entity.start(group)) + by + good.substring(entity.end(group));
    }

    @Test
    void aSoundFileHasNone() {
        assertThat(Misfit.likeliest(read(good))).isEmpty();
        assertThat(Misfit.whyNoSolid(read(good)).orElseThrow().text()).contains("MANIFOLD_SOLID_BREP");
    }

    @Test
    void wrongRadius() {
        Matcher m = first("CYLINDRICAL_SURFACE");
        Misfit f = found(replaced(m, 2, m.group(2).replace("4.", "7.5")));
        // the corners lie 4 mm from the axis
        assertThat(f.text()).contains("ADVANCED_FACE").contains("lies 3.50 mm off its corners");
    }

    @Test
    void noRadius() {
        Matcher m = first("CIRCLE");
        Misfit f = found(replaced(m, 2, m.group(2).replace("4.", "-4.")));
        assertThat(f.text()).startsWith("entity #" + m.group(1) + " (CIRCLE) has no number above 0 as its value 3");
        assertThat(f.entity().line())
                .isEqualTo(good.substring(0, m.start()).lines().count() + 1);
    }

    @Test
    void misspeltType() {
        Matcher m = first("VERTEX_POINT");
        Misfit f = found(good.replace("#" + m.group(1) + " = VERTEX_POINT", "#" + m.group(1) + " = VERTEX_POUNT"));
        assertThat(f.text())
                .contains("refers to #" + m.group(1) + ", which is VERTEX_POUNT where VERTEX_POINT belongs");
    }

    @Test
    void valueLost() {
        Matcher m = first("ORIENTED_EDGE");
        Misfit f = found(replaced(m, 2, m.group(2).replace(",.T.", "").replace(",.F.", "")));
        assertThat(f.text()).isEqualTo("entity #" + m.group(1) + " (ORIENTED_EDGE) has 4 values where 5 belong");
    }

    @Test
    void directionOfNothing() {
        Matcher m = first("DIRECTION");
        assertThat(found(replaced(m, 2, "'',(0.,0.,0.)")).text())
                .contains("#" + m.group(1))
                .contains("points nowhere");
    }

    @Test
    void faceLeftOut() {
        Matcher m = first("CLOSED_SHELL");
        Misfit f = found(replaced(m, 2, m.group(2).replaceFirst(",#\\d+\\)", ")")));
        assertThat(f.text()).contains("EDGE_CURVE").contains("borders one face only");
    }

    @Test
    void edgeTurnedRound() {
        // the seam of the wall is the only edge with two corners; turn one of the circles' places in the wall's loop
        // instead
        Matcher m = Pattern.compile("#(\\d+) = EDGE_LOOP\\('',\\((#\\d+),(#\\d+),(#\\d+),(#\\d+)\\)\\);")
                .matcher(good);
        assertThat(m.find()).isTrue();
        Misfit f = found(good.substring(0, m.start(2)) + m.group(3) + good.substring(m.end(2)));
        assertThat(f.text()).startsWith("entity #" + m.group(1) + " (EDGE_LOOP) breaks off");
    }
}
