package org.evenfall.setup;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.evenfall.setup.Entered.lines;

import java.util.List;
import org.evenfall.granule.ProductForm;
import org.evenfall.granule.SizeDistribution;
import org.evenfall.reference.TestedProduct;
import org.evenfall.setup.entry.TestedProductEntry;
import org.evenfall.setup.path.EntryPath;
import org.evenfall.setup.path.MatchPaths;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** The tested products that can be used. */
class LibraryAssessorTest {

    private static Assessed<List<TestedProduct>> assess(Entered entered) {
        return LibraryAssessor.assess(entered.read());
    }

    private static Entered product(Entered entered, int index, String id, String width, String density, String d50) {
        EntryPath<TestedProductEntry> at = MatchPaths.LIBRARY.item(index);
        return entered.with(MatchPaths.TESTED_ID, at, id)
                .with(MatchPaths.TESTED_NAME, at, "Product " + id)
                .with(MatchPaths.TESTED_WIDTH, at, width)
                .with(MatchPaths.TESTED_BULK_DENSITY, at, density)
                .with(MatchPaths.TESTED_D50, at, d50);
    }

    private static Entered one(String width, String density, String d50) {
        return product(Entered.inEmpty(), 0, "a", width, density, d50);
    }

    private static Entered sieved(Entered entered, String[] apertures, String... shares) {
        EntryPath<TestedProductEntry> at = MatchPaths.LIBRARY.item(0);
        return entered.withAll(MatchPaths.TESTED_APERTURES, at, apertures)
                .withAll(MatchPaths.TESTED_SHARES, at, shares);
    }

    private static final String[] SIEVES = {"2 mm", "4.5 mm"};

    @Test
    void everyEntryIsInItsOwnPlace() {
        Entered entered = one("24 m", "0.98 kg/L", "3.3 mm")
                .with(MatchPaths.TESTED_FORM, MatchPaths.LIBRARY.item(0), ProductForm.OTHER);
        assertThat(assess(product(entered, 1, "b", "28 m", "0.75 kg/L", "")).present())
                .containsExactly(
                        new TestedProduct(
                                "a", "Product a", ProductForm.OTHER, 24, 0.98, SizeDistribution.medianOnly(3.3)),
                        new TestedProduct("b", "Product b", ProductForm.UNANSWERED, 28, 0.75, null));
        assertThat(assess(entered).findings()).isEmpty();
        assertThat(assess(Entered.inEmpty()).present()).isEmpty();
    }

    @Test
    void everyProductHasAnIdOfItsOwn() {
        Entered entered = product(one("24 m", "0.98 kg/L", ""), 1, "a", "28 m", "0.75 kg/L", "");
        entered = product(product(entered, 2, " ", "28 m", "0.75 kg/L", ""), 3, "b", "30 m", "0.77 kg/L", "");
        assertThat(lines(assess(entered).findings()))
                .containsExactly(
                        "STOP MATCH match.idTwice /match/library/1/id [a]",
                        "STOP MATCH match.idTwice /match/library/2/id [ ]");
        assertThat(assess(entered).present()).extracting(TestedProduct::widthM).containsExactly(24.0, 30.0);
    }

    @ParameterizedTest
    @CsvSource({
        "24 m, 0.98 kg/L, 3.3 mm, true",
        "24 m, 0.98 kg/L, '', true",
        "24 m, '', 3.3 mm, true",
        "24 m, '', '', false",
        "'', 0.98 kg/L, 3.3 mm, false"
    })
    void widthAndDensityOrSizesAreNeeded(String width, String density, String d50, boolean usable) {
        Assessed<List<TestedProduct>> assessed = assess(one(width, density, d50));
        assertThat(assessed.present()).hasSize(usable ? 1 : 0);
        assertThat(lines(assessed.findings()))
                .isEqualTo(
                        usable ? List.of() : List.of("WARNING MATCH match.referenceOpen /match/library/0 [Product a]"));
    }

    /**
     * 16 % below 2 mm, 16 % above 4.5 mm: d50 = √(2 × 4.5) = 3 mm; sigma = ln(4.5 / 2) / 2 / z(16 %) = 0.405465 /
     * 0.994458 = 0.407725, geometric standard deviation 1.50339. The typed median does not count.
     */
    @Test
    void sieveClassesComeBeforeATypedMedian() {
        Assessed<List<TestedProduct>> assessed =
                assess(sieved(one("24 m", "", "2.2 mm"), SIEVES, "16 %", "68 %", "16 %"));
        SizeDistribution sizes = assessed.present().get(0).sizes();
        assertThat(sizes.d50Mm()).isCloseTo(3, within(1e-6));
        assertThat(sizes.geometricSd()).isCloseTo(1.50339, within(1e-5));
        assertThat(sizes.spreadIsBound()).isFalse();
        assertThat(assessed.findings()).isEmpty();
    }

    @Test
    void aTypedMedianCountsWhereTheClassesCannotBeUsed() {
        for (Entered entered : List.of(
                sieved(one("24 m", "", "2.2 mm"), SIEVES),
                sieved(one("24 m", "", "2.2 mm"), new String[0], "16 %", "68 %", "16 %"))) {
            assertThat(assess(entered).present().get(0).sizes()).isEqualTo(SizeDistribution.medianOnly(2.2));
            assertThat(assess(entered).findings()).isEmpty();
        }
    }

    @Test
    void classesThatCannotBeUsedAreReportedAtTheirPlace() {
        assertThat(lines(assess(sieved(one("24 m", "", ""), SIEVES, "16 %", "", "16 %"))
                        .findings()))
                .containsExactly(
                        "NOTE MATCH product.classOpen /match/library/0/shares/1 []",
                        "WARNING MATCH match.referenceOpen /match/library/0 [Product a]");
        assertThat(lines(assess(sieved(one("24 m", "", "3 mm"), SIEVES, "16 %", "60 %", "16 %"))
                        .findings()))
                .containsExactly("WARNING MATCH product.notHundred /match/library/0/shares [92:1 %]");
        assertThat(lines(assess(sieved(one("24 m", "", "3 mm"), SIEVES, "16 %", "60 %", "16 %", "8 %"))
                        .findings()))
                .containsExactly("STOP MATCH product.classCount /match/library/0/shares [3:0, 4:0]");
    }
}
