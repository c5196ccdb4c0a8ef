package shotwright.measure;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * Values by hand with 1 in = 25.4 mm and 1 lb = 0.453 592 37 kg exactly (international yard and pound agreement, 1959), standard gravity
 * 9.806 65 m/s² (third CGPM, 1901), °F = 9/5 °C + 32.
 */
class InchSentenceTest {
    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
            0.05 mm  | 0.002 in
            11.6 mm  | 0.457 in
            118 mm   | 4.65 in
            0.004 mm | 0.00016 in
            25.40 mm | 1.000 in
            2.19 mm  | 0.0862 in
            0 mm     | 0 in
            0.00 mm  | 0.00 in
            −4.9 mm  | −0.193 in
            34 mm²   | 0.053 in²
            0.2 mm²  | 0.0003 in²
            8.05 cm² | 1.248 in²
            0.82 cm³ | 0.050 in³
            500 mm³  | 0.03051 in³
            40 mm/s  | 1.57 in/s
            350 m/min | 1148 ft/min
            79 cm³/s | 4.82 in³/s
            0.8 µm   | 31.5 µin
            """)
    void lengthsAreasAndVolumesTurnIntoInchesAlone(String metric, String inch) {
        assertEquals("about " + inch + " here.", InchSentence.of("about " + metric + " here."));
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
            120 MPa     | 17\u202f400 psi (120\u00a0MPa)
            6 to 22 MPa | 870 to 3190 psi (6 to 22\u00a0MPa)
            0.39 MPa    | 56.6 psi (0.39\u00a0MPa)
            29.1 kN     | 3.27 short tons (29.1\u00a0kN)
            1 MPa       | 145 psi (1\u00a0MPa)
            15 kg       | 33 lb (15\u00a0kg)
            640 N       | 144 lbf (640\u00a0N)
            55 °C       | 131 °F (55\u00a0°C)
            40–80 °C    | 104–176 °F (40–80\u00a0°C)
            10 K        | 18 °F (10\u00a0K)
            """)
    void forcesPressuresAndTemperaturesKeepTheMetricBehind(String metric, String inch) {
        assertEquals("about " + inch + " here.", InchSentence.of("about " + metric + " here."));
        assertEquals(
                "here (" + inch.replaceAll(" \\(.*", "") + ").",
                InchSentence.of("here (" + metric + ")."),
                "no brackets in brackets");
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
            35.0 × 31.8 × 14.3 mm           | 1.378 × 1.252 × 0.563 in
            Ø3.5 to Ø5.1 mm                 | Ø0.138 to Ø0.201 in
            1.1 ± 0.1 mm                    | 0.043 ± 0.004 in
            0.025 to 0.038 mm               | 0.00098 to 0.0015 in
            at x 10.6, y −7.4, z 9.3 mm     | at x 0.417, y −0.291, z 0.366 in
            opened 0.2 mm (0.008 in)        | opened 0.008 in (0.2\u00a0mm)
            29.1 kN (3.28 short tons)       | 3.28 short tons (29.1\u00a0kN)
            210 °C (410 °F) at 2, 5 mm deep | 410 °F (210\u00a0°C) at 2, 0.20 in deep
            """)
    void sizesRangesPlacesAndPairs(String metric, String inch) {
        assertEquals(inch, InchSentence.of(metric));
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
            the drill of 5\u00a0mm
            density 1.05 g/cm³
            spreads heat at 0.1 mm²/s
            write it in mm or in cm
            6061-bar-1.5x3 and M5 screws, press fit N7
            3.28 short tons (29.1\u00a0kN)
            """)
    void whatIsNoMeasuredValueStays(String text) {
        assertEquals(text, InchSentence.of(text));
    }

    @Test
    void aNameKeepsItsLengths() {
        String name = InchSentence.name("end mill 1° per side, tip 2 mm");
        assertEquals(
                "cut 0.457 in deep with the end mill 1° per side, tip 2\u00a0mm",
                InchSentence.of("cut 11.6 mm deep with the " + name));
    }

    @Test
    void turningTwiceChangesNothing() {
        String once = InchSentence.of("29.1 kN at 50 °C on 35.0 × 31.8 mm (8.05 cm²), 120 MPa");
        assertEquals(once, InchSentence.of(once));
    }
}
