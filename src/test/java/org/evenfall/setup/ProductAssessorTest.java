package org.evenfall.setup;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.evenfall.setup.Entered.lines;

import java.util.List;
import org.evenfall.flight.ThrowConditions;
import org.evenfall.flight.ThrowModel;
import org.evenfall.granule.ProductForm;
import org.evenfall.granule.PublishedBands;
import org.evenfall.machine.MachineProfile;
import org.evenfall.setup.entry.AmountKind;
import org.evenfall.setup.entry.Condition;
import org.evenfall.setup.entry.YesNo;
import org.evenfall.setup.path.ProductPaths;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** The product as a whole: how many bags are sampled, the density of its granules, its throw. */
class ProductAssessorTest {

    private static final MachineProfile MACHINE = MachineDefaultsTest.machine(0.41, 870.0, 0.74);

    private static Entered filled(String full) {
        return Entered.inEmpty()
                .with(ProductPaths.FORM, ProductForm.GRANULAR_UREA)
                .with(ProductPaths.CONTAINER_VOLUME, "2 L")
                .with(ProductPaths.CONTAINER_EMPTY, "200 g")
                .withAll(ProductPaths.CONTAINER_FULL, full, full, full);
    }

    private static Entered sieved(Entered entered) {
        return entered.with(ProductPaths.SIEVE_AMOUNTS, AmountKind.MASS)
                .withAll(ProductPaths.APERTURES, "2 mm", "4 mm")
                .withAll(ProductPaths.SIEVING_AMOUNTS, ProductPaths.SIEVINGS.item(0), "5 g", "85 g", "10 g")
                .withAll(ProductPaths.SIEVING_AMOUNTS, ProductPaths.SIEVINGS.item(1), "6 g", "85 g", "9 g");
    }

    private static ProductResult product(Entered entered) {
        return ProductAssessor.assess(entered.read(), MACHINE).present();
    }

    private static List<String> findings(Entered entered, String key) {
        return lines(ProductAssessor.assess(entered.read(), MACHINE).findings()).stream()
                .filter(line -> line.contains(key))
                .toList();
    }

    /** 1 500 g net in 2 L: 0.75 kg/L; granules 1000 × 0.75 / 0.59 = 1271.186 kg/m³. */
    @Test
    void everyPartOfTheResult() {
        Entered entered = sieved(filled("1700 g")).with(ProductPaths.NITROGEN, "45.5 %");
        ProductResult product = product(entered);
        assertThat(product.density().meanKgPerL()).isCloseTo(0.75, within(1e-12));
        assertThat(product.sieve().samples()).isEqualTo(2);
        assertThat(product.particle().kgPerM3()).isCloseTo(1271.1864, within(1e-4));
        assertThat(product.nitrogenPercent()).isEqualTo(45.5);
        assertThat(product.bands()).isEqualTo(PublishedBands.of(ProductForm.GRANULAR_UREA));
        assertThat(product.bagsToSample()).isNull();
        assertThat(product.flight())
                .isEqualTo(ThrowModel.of(
                        new ThrowConditions(
                                product.sieve().distribution(),
                                product.particle().kgPerM3(),
                                ThrowModel.outletSpeedMPerS(0.41, 870),
                                0.74),
                        product.particle().standardErrorKgPerM3()));
        assertThat(lines(ProductAssessor.assess(entered.read(), MACHINE).findings()))
                .containsExactly("NOTE PRODUCT product.sievesFarApart /product/sievings []");
    }

    @Test
    void withoutDensityOrSizesThereIsNoThrow() {
        assertThat(product(filled("1700 g")).flight()).isNull();
        assertThat(product(filled("1700 g")).particle()).isNotNull();
        assertThat(product(sieved(Entered.inEmpty())).flight()).isNull();
        assertThat(product(sieved(Entered.inEmpty())).particle()).isNull();
        assertThat(product(sieved(Entered.inEmpty())).nitrogenPercent()).isNull();
    }

    @Test
    void thePartsReportOneAfterTheOther() {
        Entered entered = filled("1420 g")
                .with(ProductPaths.CONDITION, Condition.CAKED)
                .with(ProductPaths.BAGS_DELIVERED, "30")
                .with(ProductPaths.BAGS_SAMPLED, "5");
        // 1 220 g net: 0.61 kg/L, packing 610 / 1260 = 0.484127
        assertThat(lines(ProductAssessor.assess(entered.read(), MACHINE).findings()))
                .containsExactly(
                        "STOP PRODUCT product.caked /product/condition []",
                        "NOTE PRODUCT product.fewBags /product/bagsSampled [6:0, 30:0]",
                        "NOTE PRODUCT product.densityOutsideBand /product/containerFull"
                                + " [0.61:2 kg/L, 0.7:2 kg/L, 0.78:2 kg/L]",
                        "NOTE PRODUCT missing.sieve /product/sievings []",
                        "WARNING PRODUCT product.packing /product/containerFull [0.484127:2]");
    }

    /** √ of the bags delivered, rounded up, at least 4 and at most all: √30 = 5.5, √16 = 4, √17 = 4.1. */
    @ParameterizedTest
    @CsvSource({
        "30, 5, 6, few", "30, 6, 6, ''", "30, 30, 6, ''", "30, 31, 6, more",
        "16, 3, 4, few", "16, 4, 4, ''", "17, 4, 5, few", "17, 5, 5, ''",
        "3, 2, 3, few", "3, 3, 3, ''", "3, 4, 3, more", "30, '', 6, ''"
    })
    void bagsToSample(String delivered, String sampled, int wanted, String reported) {
        Entered entered =
                Entered.inEmpty().with(ProductPaths.BAGS_DELIVERED, delivered).with(ProductPaths.BAGS_SAMPLED, sampled);
        assertThat(product(entered).bagsToSample()).isEqualTo(wanted);
        assertThat(findings(entered, "/product/bags"))
                .isEqualTo(
                        switch (reported) {
                            case "few" ->
                                List.of("NOTE PRODUCT product.fewBags /product/bagsSampled [" + wanted + ":0, "
                                        + delivered + ":0]");
                            case "more" ->
                                List.of("STOP PRODUCT product.moreSampledThanDelivered /product/bagsSampled []");
                            default -> List.of();
                        });
    }

    @Test
    void howManyToSampleIsNotKnownBeforeTheDelivery() {
        Entered entered = Entered.inEmpty().with(ProductPaths.BAGS_SAMPLED, "5");
        assertThat(product(entered).bagsToSample()).isNull();
        assertThat(findings(entered, "/product/bags")).isEmpty();
    }

    /** Packing 0.50 of 1 260 kg/m³: 0.63 kg/L, net 1 260 g in 2 L. Above, the solid speaks first. */
    @ParameterizedTest
    @CsvSource({"1459, 0.499603", "1460, ''", "1461, ''", "1875, ''"})
    void aPackingThatIsNotPlausibleIsReported(String full, String packing) {
        assertThat(findings(filled(full + " g"), "product.packing"))
                .isEqualTo(
                        packing.isEmpty()
                                ? List.of()
                                : List.of(
                                        "WARNING PRODUCT product.packing /product/containerFull [" + packing + ":2]"));
    }

    /** Packing 0.50 and 0.66 of 1 750 kg/m³: 0.875 and 1.155 kg/L, net 1 750 and 2 310 g in 2 L. */
    @ParameterizedTest
    @CsvSource({"1949, true", "1950, false", "1951, false", "2509, false", "2510, false", "2511, true"})
    void soIsOneOfADenseProduct(String full, boolean reported) {
        Entered dense = filled(full + " g").with(ProductPaths.FORM, ProductForm.CALCIUM_AMMONIUM_NITRATE);
        assertThat(findings(dense, "product.packing")).hasSize(reported ? 1 : 0);
        assertThat(findings(dense, "product.denserThanSolid")).isEmpty();
    }

    /**
     * Three equal fillings in 2 L: an estimate above 1 335 kg/m³ by more than its error, 0.03/0.59 and that of the
     * scale: above 0.82985 kg/L, net 1 659.7 g. One cause, one finding.
     */
    @ParameterizedTest
    @CsvSource({"1850, ''", "1859, ''", "1860, 1406.779661", "1900, 1440.677966"})
    void granulesDenserThanSolidUreaAreReported(String full, String kgPerM3) {
        assertThat(findings(filled(full + " g"), "product.denserThanSolid"))
                .isEqualTo(
                        kgPerM3.isEmpty()
                                ? List.of()
                                : List.of("WARNING PRODUCT product.denserThanSolid /product/containerFull [" + kgPerM3
                                        + ":0 kg/m³, 1335:0 kg/m³]"));
        assertThat(findings(filled(full + " g"), "product.packing")).isEmpty();
    }

    /** The size band of the blenders is shown when the product was answered to be a blend, and only then. */
    @ParameterizedTest
    @CsvSource({"UNANSWERED, false", "NO, false", "YES, true"})
    void theBandOfBlendComponentsIsShownForABlend(YesNo answer, boolean shown) {
        assertThat(product(filled("1700 g").with(ProductPaths.BLEND, answer)).bands())
                .isEqualTo(PublishedBands.of(ProductForm.GRANULAR_UREA, shown));
    }
}
