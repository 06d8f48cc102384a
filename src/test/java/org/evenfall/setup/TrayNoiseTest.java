package org.evenfall.setup;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.evenfall.setup.path.TrayPaths;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** What the noise of a catch is computed from: mean granule and reading step, both in grams. */
class TrayNoiseTest {

    /** π/6 × (4 mm)³ = 33.510 32 mm³, × 1300 kg/m³ = 0.043 563 4 g; all granules alike, so the mean is the median. */
    @Test
    void theGranuleIsTheMeasuredOne() {
        TrayNoise noise = TrayNoise.of(TypedSetup.blank().read(), TypedSetup.sieved(0.75, 4, 1, 1300.0));
        assertThat(noise.granuleG()).isEqualTo(0.0435634, within(1e-7));
        assertThat(noise.stepG()).isZero();
    }

    /**
     * Else 3.2 mm at 1260 kg/m³ with a geometric standard deviation of 1.2: 17.157 285 mm³ × 1260 = 0.021 618 2 g, ×
     * exp(4.5 × ln² 1.2) = 1.161 352 makes 0.025 106 3 g.
     */
    @Test
    void withoutSieveOrDensityItIsTheUsualOne() {
        ReadSetup read = TypedSetup.blank().read();
        assertThat(TrayNoise.of(read, TypedSetup.product(0.75, 46.0)).granuleG())
                .isEqualTo(0.0251063, within(1e-7));
        assertThat(TrayNoise.of(read, TypedSetup.sieved(null, 4, 1, null)).granuleG())
                .isEqualTo(0.0251063, within(1e-7));
    }

    /**
     * Density 0.8 kg/L, bore 20 mm: 2 ml are 1.6 g; 1 mm is π/4 × 0.4 ml × 0.8 = 0.251 327 g, 3 mm 0.753 982 g, 0.25 cm
     * 0.628 319 g.
     */
    @ParameterizedTest
    @CsvSource(
            nullValues = "-",
            value = {
                "'', 20 mm, 0.8, 0",
                "0.2 g, 20 mm, 0.8, 0.2",
                "0.2 g, '', -, 0.2",
                "0.2, 20 mm, 0.8, 0.2",
                "2 ml, '', 0.8, 1.6",
                "2 ml, 20 mm, -, 0",
                "3 mm, 20 mm, 0.8, 0.753982",
                "'0,25 cm', 2 cm, 0.8, 0.628319",
                "3 mm, '', 0.8, 0",
                "3 mm, 20 mm, -, 0"
            })
    void theStepIsTurnedIntoGrams(String step, String bore, Double kgPerL, double grams) {
        ReadSetup read = TypedSetup.blank()
                .type(TrayPaths.READING_STEP, step)
                .type(TrayPaths.TUBE_BORE, bore)
                .read();
        assertThat(TrayNoise.of(read, TypedSetup.product(kgPerL, 46.0)).stepG()).isEqualTo(grams, within(1e-6));
    }
}
