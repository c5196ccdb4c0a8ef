package shotwright.solve;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;

class ErrorFunctionTest {
    /** Values of the table in Abramowitz and Stegun 7.1 (from memory). */
    @Test
    void tableValues() {
        assertThat(ErrorFunction.of(0.5)).isCloseTo(0.5204998778, within(1e-10));
        assertThat(ErrorFunction.of(1)).isCloseTo(0.8427007929, within(1e-10));
        assertThat(ErrorFunction.of(2)).isCloseTo(0.9953222650, within(1e-10));
        assertThat(ErrorFunction.of(-1)).isEqualTo(-ErrorFunction.of(1));
        assertThat(ErrorFunction.of(7)).isEqualTo(1);
    }

    @Test
    void inverseUndoes() {
        for (double y = -0.99; y < 1; y += 0.11)
            assertThat(ErrorFunction.of(ErrorFunction.inverse(y))).isCloseTo(y, within(1e-13));
        assertThatThrownBy(() -> ErrorFunction.inverse(1)).hasMessageContaining("not between");
    }

    @Test
    void rootNeedsSignChange() {
        assertThat(Root.between(x -> x * x - 2, 0, 2)).isCloseTo(Math.sqrt(2), within(1e-15));
        assertThatThrownBy(() -> Root.between(x -> x * x + 1, 0, 2)).hasMessageContaining("no sign change");
    }
}
