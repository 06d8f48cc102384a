package org.evenfall.setup;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.evenfall.quantity.EnteredQuantity;
import org.evenfall.quantity.Unit;
import org.evenfall.setup.entry.ProductEntries;
import org.evenfall.setup.entry.Setup;
import org.evenfall.setup.entry.SievingEntry;
import org.junit.jupiter.api.Test;

/** The sieves offered until others are typed. */
class DefaultSievesTest {

    private static final List<EnteredQuantity> OWN =
            List.of(new EnteredQuantity("1.7", Unit.MM), new EnteredQuantity("0.11", Unit.IN));
    private static final List<SievingEntry> ONE =
            List.of(SievingEntry.EMPTY.withAmounts(List.of(new EnteredQuantity("40", Unit.G))));

    @Test
    void theyRiseAndCanBeRead() {
        assertThat(DefaultSieves.APERTURES)
                .extracting(one -> Double.parseDouble(one.text()))
                .isSorted()
                .hasSize(3);
        Setup setup = Setup.EMPTY.withProduct(Setup.EMPTY.product().withApertures(DefaultSieves.APERTURES));
        assertThat(Assessor.assess(setup).findings())
                .noneMatch(finding -> finding.field().startsWith("/product/apertures"));
    }

    @Test
    void theyAreKeptWithTheFirstAmount() {
        ProductEntries product = DefaultSieves.withSievings(ProductEntries.EMPTY, ONE);
        assertThat(product.apertures()).isEqualTo(DefaultSieves.APERTURES);
        assertThat(product.sievings()).isEqualTo(ONE);
    }

    @Test
    void ownSievesStay() {
        ProductEntries own = ProductEntries.EMPTY.withApertures(OWN);
        assertThat(DefaultSieves.apertures(own)).isEqualTo(OWN);
        assertThat(DefaultSieves.withSievings(own, ONE).apertures()).isEqualTo(OWN);
    }

    @Test
    void theFirstSampleMoreMakesTwo() {
        Setup two = DefaultSieves.withOneSampleMore(Setup.EMPTY);
        assertThat(two.product().sievings()).containsExactly(SievingEntry.EMPTY, SievingEntry.EMPTY);
        assertThat(DefaultSieves.withOneSampleMore(two).product().sievings()).hasSize(3);
        Setup one = Setup.EMPTY.withProduct(Setup.EMPTY.product().withSievings(ONE));
        assertThat(DefaultSieves.withOneSampleMore(one).product().sievings())
                .containsExactly(ONE.get(0), SievingEntry.EMPTY);
    }
}
