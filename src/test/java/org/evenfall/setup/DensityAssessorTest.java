package org.evenfall.setup;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.evenfall.setup.Entered.lines;

import java.util.List;
import org.evenfall.granule.BulkDensity;
import org.evenfall.granule.ProductForm;
import org.evenfall.setup.path.ProductPaths;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Bulk density of fillings of a container of 2 L that weighs 200 g, where not typed otherwise. */
class DensityAssessorTest {

    private static final String AT = "/product/containerFull";

    private static Entered container(String... full) {
        return Entered.inEmpty()
                .with(ProductPaths.CONTAINER_VOLUME, "2 L")
                .with(ProductPaths.CONTAINER_EMPTY, "200 g")
                .withAll(ProductPaths.CONTAINER_FULL, full);
    }

    /** Three equal fillings. */
    private static Entered threeOf(String full) {
        return container(full, full, full);
    }

    private static Assessed<BulkDensity> assess(Entered entered) {
        return DensityAssessor.assess(entered.read());
    }

    private static List<String> when(boolean reported, String line) {
        return reported ? List.of(line) : List.of();
    }

    /**
     * Net 1 500, 1 520, 1 480 g in 2 L: 0.75, 0.76, 0.74 kg/L; mean 0.75, s = 0.01, spread 100 × 0.02 / 0.75 = 2.6667 %.
     */
    @Test
    void theMeanOfTheFillings() {
        Assessed<BulkDensity> assessed = assess(container("1700 g", "1720 g", "1.68 kg"));
        BulkDensity density = assessed.present();
        assertThat(density.meanKgPerL()).isCloseTo(0.75, within(1e-12));
        assertThat(density.sdKgPerL()).isCloseTo(0.01, within(1e-12));
        assertThat(density.spreadPercent()).isCloseTo(8 / 3.0, within(1e-9));
        assertThat(density.fillings()).isEqualTo(3);
        assertThat(assessed.findings()).isEmpty();
    }

    /** No scatter: only the scale of 1 g counts, r = 0.001 / √12 / 2; √(r²/3 + r²) = r √(4/3) = 0.001 / 6 kg/L. */
    @Test
    void theScaleShowsGrams() {
        assertThat(assess(threeOf("1700 g")).present().standardErrorKgPerL()).isCloseTo(0.001 / 6, within(1e-12));
    }

    @Test
    void whatIsMissing() {
        String volume = "MISSING PRODUCT missing.containerVolume /product/containerVolume []";
        String fillings = "MISSING PRODUCT missing.fillings " + AT + " []";
        assertThat(assess(Entered.inEmpty()).result()).isNull();
        assertThat(lines(assess(Entered.inEmpty()).findings())).containsExactly(volume, fillings);
        Entered noVolume = threeOf("1700 g").with(ProductPaths.CONTAINER_VOLUME, "");
        assertThat(assess(noVolume).result()).isNull();
        assertThat(lines(assess(noVolume).findings())).containsExactly(volume);
        assertThat(assess(container()).result()).isNull();
        assertThat(lines(assess(container()).findings())).containsExactly(fillings);
        Entered two = container("1700 g", "1700 g");
        assertThat(assess(two).present().fillings()).isEqualTo(2);
        assertThat(lines(assess(two).findings())).containsExactly(fillings);
        assertThat(assess(threeOf("1700 g")).findings()).isEmpty();
    }

    /** Without the empty weight 1 500 g count as they are: 0.75 kg/L. */
    @Test
    void withoutTheEmptyWeightTheContainerIsCountedAndNoted() {
        Assessed<BulkDensity> assessed = assess(threeOf("1500 g").with(ProductPaths.CONTAINER_EMPTY, ""));
        assertThat(assessed.present().meanKgPerL()).isCloseTo(0.75, within(1e-12));
        assertThat(lines(assessed.findings()))
                .containsExactly("NOTE PRODUCT product.noTare /product/containerEmpty []");
    }

    @Test
    void anEmptyWeightThatCannotBeReadIsNotTakenForNone() {
        Assessed<BulkDensity> assessed = assess(threeOf("1500 g").with(ProductPaths.CONTAINER_EMPTY, "2oo g"));
        assertThat(assessed.result()).isNull();
        assertThat(assessed.findings()).isEmpty();
    }

    @ParameterizedTest
    @CsvSource({"199, true", "200, true", "1100, false"})
    void aFillingMustBeHeavierThanTheEmptyContainer(String full, boolean reported) {
        Assessed<BulkDensity> assessed = assess(container("1100 g", full + " g", "1100 g"));
        assertThat(lines(assessed.findings()))
                .isEqualTo(when(reported, "STOP PRODUCT product.lighterThanEmpty " + AT + " [" + full + ":0 g]"));
        assertThat(assessed.result() == null).isEqualTo(reported);
    }

    @Test
    void oneGramMoreThanTheEmptyContainerIsAWeight() {
        // 1 g in 2 L: 0.0005 kg/L
        assertThat(lines(assess(threeOf("201 g")).findings()))
                .containsExactly(
                        "STOP PRODUCT product.densityImpossible " + AT + " [0.0005:2 kg/L, 0.4:1 kg/L, 1.6:1 kg/L]");
    }

    /** 0.4 and 1.6 kg/L in 2 L: net 800 and 3 200 g; one gram is 0.0005 kg/L. */
    @ParameterizedTest
    @CsvSource({"999, 0.3995", "1000, ''", "1001, ''", "3399, ''", "3400, ''", "3401, 1.6005"})
    void aDensityMustBePossible(String full, String mean) {
        Assessed<BulkDensity> assessed = assess(threeOf(full + " g"));
        assertThat(lines(assessed.findings()))
                .isEqualTo(when(
                        !mean.isEmpty(),
                        "STOP PRODUCT product.densityImpossible " + AT + " [" + mean
                                + ":2 kg/L, 0.4:1 kg/L, 1.6:1 kg/L]"));
        assertThat(assessed.result() == null).isEqualTo(!mean.isEmpty());
    }

    /** 0.6 / 1.5 is a little less than 0.4 in binary numbers. */
    @Test
    void theLimitIsNotMissedByRounding() {
        Entered entered = threeOf("800 g").with(ProductPaths.CONTAINER_VOLUME, "1.5 L");
        assertThat(assess(entered).findings()).isEmpty();
    }

    /** Around 1 500 g net: ± 22 g spread 44/1500 = 2.933 %, ± 22.5 g 3 %, ± 23 g 46/1500 = 3.067 %. */
    @ParameterizedTest
    @CsvSource({"1678 g, 1722 g, ''", "1677.5 g, 1722.5 g, ''", "1677 g, 1723 g, 3.066667"})
    void fillingsThatDifferAreReported(String low, String high, String spread) {
        assertThat(lines(assess(container("1700 g", high, low)).findings()))
                .isEqualTo(when(
                        !spread.isEmpty(),
                        "WARNING PRODUCT product.fillingsDiffer " + AT + " [" + spread + ":1 %, 3:0 %]"));
    }

    /** The bands of the bundle, 0.70 to 0.78 and 0.95 to 1.05 kg/L, each half a last digit wider: 0.005 kg/L. */
    @ParameterizedTest
    @CsvSource({
        "GRANULAR_UREA, 1589, 0.6945, '0.7:2 kg/L, 0.78:2 kg/L]'",
        "GRANULAR_UREA, 1590, 0.695, ''",
        "GRANULAR_UREA, 1770, 0.785, ''",
        "GRANULAR_UREA, 1771, 0.7855, '0.7:2 kg/L, 0.78:2 kg/L]'",
        "CALCIUM_AMMONIUM_NITRATE, 2089, 0.9445, '0.95:2 kg/L, 1.05:2 kg/L]'",
        "CALCIUM_AMMONIUM_NITRATE, 2090, 0.945, ''",
        "CALCIUM_AMMONIUM_NITRATE, 2310, 1.055, ''",
        "CALCIUM_AMMONIUM_NITRATE, 2311, 1.0555, '0.95:2 kg/L, 1.05:2 kg/L]'",
        "OTHER, 2311, 1.0555, ''"
    })
    void aDensityOutsideThePublishedBandIsNoted(ProductForm form, int full, double mean, String band) {
        Assessed<BulkDensity> assessed = assess(threeOf(full + " g").with(ProductPaths.FORM, form));
        assertThat(assessed.present().meanKgPerL()).isCloseTo(mean, within(1e-12));
        assertThat(lines(assessed.findings()))
                .isEqualTo(when(
                        !band.isEmpty(),
                        "NOTE PRODUCT product.densityOutsideBand " + AT + " [" + mean + ":2 kg/L, " + band));
    }
}
