package org.evenfall.granule;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Arrays;
import java.util.List;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Classes under 2, 2 to 3, 3 to 4 and over 4 mm: as wide, in ln size, as 0.405, 0.405, 0.288 and 0.288. */
class SizePeaksTest {

    @ParameterizedTest
    @CsvSource({
        "'5 60 30 5', false, one peak",
        "'30 30 20 20', false, flat",
        "'40 5 5 50', true, both ends",
        "'5 45 5 45', true, fine and coarse",
        // per ln size 98.7 and 96.6 (96.3) with 77.2 (77.5) between: 0.8 times the lower is 77.3 (77.0)
        "'10 40 22.2 27.8', true, just below 0.8",
        "'10 40 22.3 27.7', false, just above 0.8",
        "'60 35 5 0', false, falling"
    })
    void aValleyBetweenTwoPeaks(String shares, boolean two, String why) {
        List<Double> typed =
                Arrays.stream(shares.split(" ")).map(Double::valueOf).toList();
        assertThat(SizePeaks.isTwo(List.of(2.0, 3.0, 4.0), typed)).as(why).isEqualTo(two);
    }

    @ParameterizedTest
    @CsvSource({"40, true", "70, false"})
    void twoSieves(double middle, boolean two) {
        double end = (100 - middle) / 2;
        assertThat(SizePeaks.isTwo(List.of(2.0, 4.0), List.of(end, middle, end)))
                .isEqualTo(false);
        assertThat(SizePeaks.isTwo(List.of(2.0, 4.0), List.of(end + 20, middle - 40, end + 20)))
                .isEqualTo(two);
    }
}
