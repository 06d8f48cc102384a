package org.evenfall.setup;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.evenfall.quantity.EnteredQuantity;
import org.evenfall.quantity.Unit;
import org.evenfall.setup.entry.Setup;
import org.evenfall.setup.entry.SievingEntry;
import org.junit.jupiter.api.Test;

/** As many sieves and samples as are typed. */
class SieveTableTest {

    private static final List<SievingEntry> ONE =
            List.of(SievingEntry.EMPTY.withAmounts(List.of(new EnteredQuantity("40", Unit.G))));

    @Test
    void blankValuesAtTheEndAreNoRows() {
        EnteredQuantity two = new EnteredQuantity("2", Unit.MM);
        EnteredQuantity blank = new EnteredQuantity("", Unit.MM);
        assertThat(SieveTable.withoutBlankEnd(List.of(blank, two, blank, blank)))
                .containsExactly(blank, two);
        assertThat(SieveTable.withoutBlankEnd(List.of(blank))).isEmpty();
        assertThat(SieveTable.withoutBlankEnd(List.of())).isEmpty();
    }

    @Test
    void theFirstSampleMoreMakesTwo() {
        Setup two = SieveTable.withOneSampleMore(Setup.EMPTY);
        assertThat(two.product().sievings()).containsExactly(SievingEntry.EMPTY, SievingEntry.EMPTY);
        assertThat(SieveTable.withOneSampleMore(two).product().sievings()).hasSize(3);
        Setup one = Setup.EMPTY.withProduct(Setup.EMPTY.product().withSievings(ONE));
        assertThat(SieveTable.withOneSampleMore(one).product().sievings())
                .containsExactly(ONE.get(0), SievingEntry.EMPTY);
    }
}
