package org.evenfall.setup;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.evenfall.quantity.EnteredQuantity;
import org.evenfall.setup.entry.AmountKind;
import org.evenfall.setup.entry.Setup;
import org.evenfall.setup.entry.TestedProductEntry;
import org.evenfall.setup.entry.TrayTestEntry;
import org.evenfall.setup.entry.UnknownKeys;
import org.evenfall.setup.path.MatchPaths;
import org.evenfall.setup.path.ProductPaths;
import org.evenfall.setup.path.StartPaths;
import org.evenfall.setup.path.TrayPaths;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** A product whose last tray test passed becomes a tested product. */
class KeptProductsTest {

    private static final TypedSetup UNEVEN = TypedSetup.uneven();

    private static Optional<TestedProductEntry> kept(Setup setup) {
        return KeptProducts.of(setup, Assessor.assess(setup));
    }

    private static List<String> texts(List<EnteredQuantity> quantities) {
        return quantities.stream().map(EnteredQuantity::toString).toList();
    }

    /**
     * Fillings of 1.5 L: 1125, 1122 and 1133 g, mean 0.751 111 kg/L. First class of the sieve: 4.2 of 227.0 g and 3.1 of 222.0
     * g, 1.8502 and 1.3964 %, mean 1.6233; last 8.1 and 9.5 g: 3.5683 and 4.2793, mean 3.9238. Catches 104, 110, 126, 121, 124,
     * 118, 108, 98, 101 mm: mean 112.22, Σ d² = 857.56, √(857.56 / 8) = 10.3535, CV 9.2259 %.
     */
    @Test
    void theMeasurementsAndTheLastSettingsAreKept() {
        TestedProductEntry kept = kept(UNEVEN.setup()).orElseThrow();
        assertThat(kept.id()).isEqualTo("own-1");
        assertThat(kept.name()).isEqualTo("Granular urea, treated, second delivery S-2077");
        assertThat(kept.form()).isEqualTo(UNEVEN.setup().product().form());
        assertThat(kept.width().toString()).isEqualTo("91,9 ft");
        assertThat(kept.nitrogen().toString()).isEqualTo("45,5 %");
        assertThat(kept.bulkDensity().toString()).isEqualTo("0.7511 kg/L");
        assertThat(texts(kept.apertures())).containsExactly("2.0000 mm", "2.8000 mm", "3.5500 mm", "4.5000 mm");
        assertThat(texts(kept.shares())).containsExactly("1.6233 %", "19.7453 %", "44.0483 %", "30.6593 %", "3.9238 %");
        assertThat(kept.d50()).isEqualTo(EnteredQuantity.EMPTY);
        assertThat(kept.testedCv().toString()).isEqualTo("9.2259 %");
        assertThat(kept.settings())
                .isEqualTo(UNEVEN.setup().trays().tests().get(1).settings());
        assertThat(kept.source()).isEqualTo("own tray test 2028-03-30");
    }

    private static TypedSetup caught(String... grams) {
        return UNEVEN.choose(TrayPaths.CATCH_KIND, AmountKind.MASS)
                .type(TrayPaths.TRAY_COUNT, "5")
                .type(TrayPaths.TEST_POSITIONS, TrayPaths.TESTS.item(1))
                .type(TrayPaths.TEST_CATCHES, TrayPaths.TESTS.item(1), grams);
    }

    /** Deviations on four of five trays round 100 g; which are even, probably even and no more was computed once. */
    @ParameterizedTest
    @CsvSource({"105, 95, true", "113, 87, true", "121, 79, false", "130, 70, false"})
    void onlyATestThatPassedIsKept(String high, String low, boolean passed) {
        Setup setup = caught(high, low, high, low, "100").setup();
        assertThat(kept(setup).isPresent()).isEqualTo(passed);
    }

    @Test
    void withoutDensityWidthOrTestThereIsNothingToKeep() {
        Setup noWidth = UNEVEN.type(StartPaths.TRAMLINE_WIDTH, "").setup();
        assertThat(KeptProducts.of(noWidth, Assessor.assess(UNEVEN.setup()))).isEmpty();
        // catches in grams, which need no density
        TypedSetup grams = caught("101", "99", "101", "99", "100");
        assertThat(kept(grams.setup())).isPresent();
        assertThat(kept(grams.type(ProductPaths.CONTAINER_FULL, ProductPaths.PRODUCT.only())
                        .setup()))
                .isEmpty();
        assertThat(kept(grams.choose(TrayPaths.TESTS, List.<TrayTestEntry>of()).setup()))
                .isEmpty();
    }

    @Test
    void withoutASieveOnlyTheDensityIsKept() {
        Setup setup = caught("101", "99", "101", "99", "100")
                .choose(ProductPaths.SIEVINGS, List.of())
                .setup();
        TestedProductEntry kept = kept(setup).orElseThrow();
        assertThat(kept.apertures()).isEmpty();
        assertThat(kept.shares()).isEmpty();
        assertThat(kept.bulkDensity().toString()).isEqualTo("0.7511 kg/L");
    }

    private static TypedSetup with(TestedProductEntry... more) {
        List<TestedProductEntry> library =
                new ArrayList<>(UNEVEN.setup().match().library());
        library.addAll(List.of(more));
        return UNEVEN.choose(MatchPaths.LIBRARY, library);
    }

    @Test
    void whatIsInTheLibraryAlreadyIsNotKeptTwice() {
        TestedProductEntry kept = kept(UNEVEN.setup()).orElseThrow();
        UnknownKeys unknown = new UnknownKeys(Map.of("colour", "\"white\""));
        TestedProductEntry renamed = kept.withId("mine")
                .withUnknownKeys(unknown)
                .withSettings(kept.settings().withUnknownKeys(unknown));
        assertThat(kept(with(renamed).setup())).isEmpty();
        assertThat(kept(with(kept.withName("Another")).setup()))
                .get()
                .extracting(TestedProductEntry::id)
                .isEqualTo("own-2");
        TestedProductEntry third = kept.withName("Third").withId("own-2");
        assertThat(kept(with(kept.withName("Another"), third).setup()))
                .get()
                .extracting(TestedProductEntry::id)
                .isEqualTo("own-3");
    }

    private static TestedProductEntry named(String id, String name) {
        return TestedProductEntry.EMPTY.withId(id).withName(name);
    }

    @Test
    void joiningLosesNoneAndGivesNoShortNameTwice() {
        List<TestedProductEntry> library = List.of(named("a", "Old"), named("own-1", "Older"));
        List<TestedProductEntry> joined = KeptProducts.join(
                library,
                List.of(
                        named("a", "Old"),
                        named("a", "New"),
                        named("b", "Other"),
                        named("", "Blank"),
                        named("b", "b")));
        assertThat(joined)
                .containsExactly(
                        named("a", "Old"),
                        named("own-1", "Older"),
                        named("own-2", "New"),
                        named("b", "Other"),
                        named("own-3", "Blank"),
                        named("own-4", "b"));
        assertThat(KeptProducts.join(library, List.of())).isEqualTo(library);
    }
}
