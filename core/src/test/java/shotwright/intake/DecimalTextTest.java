package shotwright.intake;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatExceptionOfType;

import java.util.Locale;
import java.util.Random;
import org.junit.jupiter.api.Test;

/** The second method is the platform's own parser, which is correctly rounded. */
class DecimalTextTest {
    @Test
    void agreesWithThePlatformToTheLastBit() {
        Random r = new Random(7);
        for (int i = 0; i < 200_000; i++) {
            double x = Double.longBitsToDouble(r.nextLong());
            String s =
                    switch (i % 4) {
                        case 0 -> Double.toString(x);
                        case 1 -> String.format(Locale.ROOT, "%.6f", r.nextGaussian() * Math.pow(10, r.nextInt(8)));
                        case 2 -> Float.toString((float) r.nextGaussian());
                        default ->
                            String.format(Locale.ROOT, "%+.9e", r.nextGaussian() * Math.pow(10, r.nextInt(60) - 30));
                    };
            if (s.contains("N") || s.contains("I")) continue;
            assertThat(Double.doubleToRawLongBits(DecimalText.parse(s)))
                    .as(s)
                    .isEqualTo(Double.doubleToRawLongBits(Double.parseDouble(s)));
        }
    }

    @Test
    void refusesWhatIsNoDecimal() {
        for (String s : new String[] {"", "-", ".", "1,5", "0x1p3", "1d", "1f", "e5", "1e", "1e+", "--1", "1 2", "１"})
            assertThatExceptionOfType(NumberFormatException.class).as(s).isThrownBy(() -> DecimalText.parse(s));
        for (String s : new String[] {"nan", "-NaN", "inf", "-Infinity", "1.#INF", "-nan(ind)"})
            assertThat(DecimalText.parse(s)).as(s).isNaN();
    }
}
