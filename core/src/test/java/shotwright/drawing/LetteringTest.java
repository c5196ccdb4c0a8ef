package shotwright.drawing;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;

class LetteringTest {
    /**
     * Java looks for the machine's fonts when its font manager starts, and throws where there are none. So the manager must never start: the
     * log of loaded classes of a fresh process is searched for it.
     */
    @Test
    void aPictureIsMadeWithoutAskingTheMachineForFonts() throws IOException, InterruptedException {
        String java = Path.of(System.getProperty("java.home"), "bin", "java").toString();
        Process p = new ProcessBuilder(
                        java,
                        "-Xlog:class+load",
                        "-Djava.awt.headless=true",
                        "-cp",
                        System.getProperty("java.class.path"),
                        NoFontOfTheMachine.class.getName())
                .redirectErrorStream(true)
                .start();
        String log = new String(p.getInputStream().readAllBytes(), StandardCharsets.UTF_8);
        assertThat(p.waitFor())
                .as(log.substring(Math.max(0, log.length() - 2000)))
                .isZero();
        assertThat(log).contains("shotwright.drawing.PngFile");
        assertThat(log).doesNotContain("sun.font.SunFontManager", "sun.font.FontManagerFactory");
    }
}
