package org.evenfall.trays;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.evenfall.trays.TestFields.list;
import static org.evenfall.trays.TestFields.places;

import java.util.List;
import org.assertj.core.data.Offset;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Differences between parts of the width, with their noise. */
class RegionContrastsTest {

    private static final Offset<Double> TINY = within(1e-9);

    private static RegionContrasts seven(double noisePercent, double... relative) {
        return RegionContrasts.of(places(7), list(relative), 28, noisePercent);
    }

    /**
     * By hand, noise of a tray 6 %: three trays against three, 6 √(1/3 + 1/3) = 4.898979; three against four, 6 √(1/3 + 1/4)
     * = 4.582576; four against three the same.
     */
    @Test
    void theNoiseOfSevenTrays() {
        RegionContrasts contrasts = seven(6, 80, 70, 120, 130, 140, 90, 70);
        assertThat(contrasts.leftRight().percent()).isCloseTo(-10, TINY);
        assertThat(contrasts.leftRight().noisePercent()).isCloseTo(4.898979486, TINY);
        assertThat(contrasts.centreOverlap().percent()).isCloseTo(52.5, TINY);
        assertThat(contrasts.centreOverlap().noisePercent()).isCloseTo(4.582575695, TINY);
        assertThat(contrasts.quarterPoint().percent()).isCloseTo(105 - 280 / 3.0, TINY);
        assertThat(contrasts.quarterPoint().noisePercent()).isCloseTo(4.582575695, TINY);
    }

    /** Five trays left of the tramline, none right of it: the mean of all six takes its place, 6 √(1/5 − 1/6) %. */
    @Test
    void aPartWithoutTrays() {
        RegionContrasts contrasts =
                RegionContrasts.of(list(-10, -8, -6, -4, -2, 0), list(90, 90, 90, 90, 90, 150), 28, 6);
        assertThat(contrasts.leftRight().percent()).isCloseTo(-10, TINY);
        assertThat(contrasts.leftRight().noisePercent()).isCloseTo(6 * Math.sqrt(1 / 30.0), TINY);
        RegionContrasts oneSide = RegionContrasts.of(list(-10, -8, -6, -4, -2), list(90, 95, 100, 105, 110), 28, 6);
        assertThat(oneSide.leftRight().percent()).isCloseTo(0, TINY);
        assertThat(oneSide.leftRight().noisePercent()).isCloseTo(0, TINY);
    }

    @ParameterizedTest
    @CsvSource({
        "3.9, 2, false",
        "4, 2, false",
        "4.1, 2, true",
        "-3.9, 2, false",
        "-4, 2, false",
        "-4.1, 2, true",
        "0, 0, false",
        "0.1, 0, true"
    })
    void aContrastIsSignificantAboveTwiceItsNoise(double percent, double noise, boolean significant) {
        Contrast contrast = new Contrast(percent, noise);
        assertThat(contrast.significant()).isEqualTo(significant);
        assertThat(SpreadShape.of(ShapeKind.LEFT_RIGHT, percent, noise).significant())
                .isEqualTo(significant);
        Contrast flat = new Contrast(0, 1);
        assertThat(new RegionContrasts(contrast, flat, flat).anySignificant()).isEqualTo(significant);
        assertThat(new RegionContrasts(flat, contrast, flat).anySignificant()).isEqualTo(significant);
        assertThat(new RegionContrasts(flat, flat, contrast).anySignificant()).isEqualTo(significant);
    }

    /** The noise of one tray of the test is that of its CV: 0.04 g granules on 100 g are 2 %. */
    @Test
    void theNoiseComesFromTheTest() {
        Uniformity test = TestFields.shaped(2, 0, 0, 0);
        assertThat(test.contrasts().leftRight().noisePercent()).isCloseTo(2 * Math.sqrt(2 / 3.0), TINY);
        List<Uniformity> four = List.of(test, test, test, test);
        assertThat(UniformityCalculator.pooled(four, TestFields.BACK_AND_FORTH)
                        .contrasts()
                        .leftRight()
                        .noisePercent())
                .isCloseTo(Math.sqrt(2 / 3.0), TINY);
    }
}
