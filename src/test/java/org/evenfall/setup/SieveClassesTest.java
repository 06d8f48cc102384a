package org.evenfall.setup;

import static org.assertj.core.api.Assertions.assertThat;
import static org.evenfall.setup.Entered.lines;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;
import org.evenfall.finding.Finding;
import org.evenfall.quantity.Unit;
import org.evenfall.setup.entry.AmountKind;
import org.evenfall.setup.path.ProductPaths;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Apertures and class amounts as numbers. */
class SieveClassesTest {

    private List<Finding> findings;

    @BeforeEach
    void noFindings() {
        findings = new ArrayList<>();
    }

    private List<Double> apertures(String... typed) {
        ReadSetup read =
                Entered.inEmpty().withAll(ProductPaths.APERTURES, typed).read();
        return new SieveClasses(read, findings).apertures(ProductPaths.APERTURES.path());
    }

    /** The second sample, read with so many classes. */
    private List<Double> sample(AmountKind kind, int classes, String... typed) {
        var at = ProductPaths.SIEVINGS.item(1);
        ReadSetup read = Entered.inEmpty()
                .with(ProductPaths.SIEVE_AMOUNTS, kind)
                .withAll(ProductPaths.SIEVING_AMOUNTS, at, typed)
                .read();
        return new SieveClasses(read, findings)
                .sample(ProductPaths.SIEVING_AMOUNTS.at(at), classes, ProductPaths.SIEVING_AMOUNTS.range(read.setup()));
    }

    /** 0.125 in × 25.4 = 3.175 mm. */
    @Test
    void aperturesAreInMillimetres() {
        assertThat(apertures("2 mm", "0.125 in", "4.5 mm"))
                .usingComparatorForType((a, b) -> Math.abs(a - b) < 1e-12 ? 0 : 1, Double.class)
                .containsExactly(2.0, 3.175, 4.5);
        assertThat(findings).isEmpty();
    }

    @Test
    void noApertureIsNoFinding() {
        assertThat(apertures()).isNull();
        assertThat(apertures("", " ")).isNull();
        assertThat(findings).isEmpty();
    }

    @Test
    void aBlankBetweenAperturesIsReportedAtItsPlace() {
        assertThat(apertures("2 mm", "", "4.5 mm")).isNull();
        assertThat(lines(findings)).containsExactly("WARNING PRODUCT product.apertureBlank /product/apertures/1 [2:0]");
    }

    @Test
    void anApertureThatCannotBeReadHasItsFindingAlready() {
        assertThat(apertures("2 mm", "x", "4.5 mm")).isNull();
        assertThat(findings).isEmpty();
    }

    @ParameterizedTest
    @CsvSource({"3.1, false", "3.15, true", "3.2, true"})
    void aperturesMustRise(String second, boolean reported) {
        assertThat(apertures("2 mm", second + " mm", "3.15 mm") == null).isEqualTo(reported);
        assertThat(lines(findings))
                .isEqualTo(reported ? List.of("STOP PRODUCT product.aperturesOrder /product/apertures []") : List.of());
    }

    @ParameterizedTest
    @CsvSource({"1, true", "2, false", "8, false", "9, true"})
    void twoToEightSieves(int count, boolean reported) {
        String[] typed =
                IntStream.rangeClosed(1, count).mapToObj(mm -> mm + " mm").toArray(String[]::new);
        assertThat(apertures(typed) == null).isEqualTo(reported);
        assertThat(lines(findings))
                .isEqualTo(
                        reported
                                ? List.of("STOP PRODUCT product.aperturesCount /product/apertures [" + count + ":0]")
                                : List.of());
    }

    @Test
    void amountsAreInTheirOrder() {
        assertThat(sample(AmountKind.MASS, 3, "4 g", "96 g", "0 g")).containsExactly(4.0, 96.0, 0.0);
        assertThat(findings).isEmpty();
    }

    @Test
    void aBlankSampleIsNoFinding() {
        assertThat(sample(AmountKind.MASS, 3)).isNull();
        assertThat(sample(AmountKind.MASS, 3, "", "", "", "")).isNull();
        assertThat(findings).isEmpty();
    }

    @Test
    void moreAmountsThanClassesAreReported() {
        assertThat(sample(AmountKind.MASS, 3, "4 g", "50 g", "40 g", "6 g")).isNull();
        assertThat(lines(findings))
                .containsExactly("STOP PRODUCT product.classCount /product/sievings/1/amounts [3:0, 4:0]");
    }

    @Test
    void anOpenClassIsNotedAtItsPlace() {
        assertThat(sample(AmountKind.MASS, 3, "4 g", "", "6 g")).isNull();
        assertThat(sample(AmountKind.MASS, 4, "4 g", "50 g", "6 g")).isNull();
        assertThat(lines(findings))
                .containsExactly(
                        "NOTE PRODUCT product.classOpen /product/sievings/1/amounts/1 []",
                        "NOTE PRODUCT product.classOpen /product/sievings/1/amounts/3 []");
    }

    @Test
    void anAmountThatCannotBeReadHasItsFindingAlready() {
        assertThat(sample(AmountKind.MASS, 3, "4 g", "x", "6 g")).isNull();
        assertThat(findings).isEmpty();
    }

    @Test
    void nothingSievedIsReported() {
        assertThat(sample(AmountKind.PERCENT, 3, "0 %", "0 %", "0 %")).isNull();
        assertThat(lines(findings))
                .containsExactly("STOP PRODUCT product.nothingSieved /product/sievings/1/amounts []");
    }

    /** 100 ± 2.5; 33.1 + 31.2 + 33.2 is 97.5, in binary numbers a little more or less by the order of the sum. */
    @ParameterizedTest
    @CsvSource({
        "20, 30.2, 47.2, 97.4",
        "20, 30.3, 47.2, ''",
        "33.1, 31.2, 33.2, ''",
        "20, 30, 50, ''",
        "20, 30.3, 52.2, ''",
        "33.1, 33.2, 36.2, ''",
        "20, 30.4, 52.2, 102.6"
    })
    void sharesMakeAHundred(String first, String second, String third, String sum) {
        assertThat(sample(AmountKind.PERCENT, 3, first + " %", second + " %", third + " %"))
                .containsExactly(Double.valueOf(first), Double.valueOf(second), Double.valueOf(third));
        assertThat(lines(findings))
                .isEqualTo(
                        sum.isEmpty()
                                ? List.of()
                                : List.of("WARNING PRODUCT product.notHundred /product/sievings/1/amounts [" + sum
                                        + ":1 %]"));
    }

    @ParameterizedTest
    @ValueSource(strings = {"MASS", "HEIGHT"})
    void massesAndHeightsMakeAnySum(AmountKind kind) {
        Unit unit = kind == AmountKind.MASS ? Unit.G : Unit.MM;
        assertThat(sample(kind, 2, "1 " + unit.symbol(), "2 " + unit.symbol())).containsExactly(1.0, 2.0);
        assertThat(findings).isEmpty();
    }
}
