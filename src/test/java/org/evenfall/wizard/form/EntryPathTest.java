package org.evenfall.wizard.form;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.evenfall.quantity.EnteredQuantity;
import org.evenfall.setup.entry.ProductEntries;
import org.evenfall.setup.entry.Setup;
import org.evenfall.setup.entry.SievingEntry;
import org.junit.jupiter.api.Test;

/** Places in a setup: what is set is got, and nothing else changes. */
class EntryPathTest {

    private static final EntryPath<ProductEntries> PRODUCT = EntryPath.of(Setup::product, Setup::withProduct);
    private static final EntryPath<List<SievingEntry>> SIEVINGS =
            PRODUCT.then(ProductEntries::sievings, ProductEntries::withSievings);

    private static EntryPath<EnteredQuantity> amount(int sample, int index) {
        EntryPath<List<EnteredQuantity>> amounts = EntryPath.item(SIEVINGS, sample, SievingEntry.EMPTY)
                .then(SievingEntry::amounts, SievingEntry::withAmounts);
        return EntryPath.item(amounts, index, EnteredQuantity.EMPTY);
    }

    @Test
    void whatIsSetIsGotAndNothingElseChanges() {
        EntryPath<String> name = PRODUCT.then(ProductEntries::name, ProductEntries::withName);
        Setup setup = name.set(Setup.EMPTY, "urea");
        assertThat(name.get(setup)).isEqualTo("urea");
        assertThat(name.set(setup, "")).isEqualTo(Setup.EMPTY);
        assertThat(setup.withProduct(ProductEntries.EMPTY)).isEqualTo(Setup.EMPTY);
    }

    @Test
    void beyondTheEndOfAListIsTheBlank() {
        assertThat(amount(3, 2).get(Setup.EMPTY)).isEqualTo(EnteredQuantity.EMPTY);
    }

    @Test
    void settingBeyondTheEndFillsUpWithBlanks() {
        EnteredQuantity typed = EnteredQuantity.parse("40 g");
        Setup setup = amount(1, 2).set(Setup.EMPTY, typed);
        assertThat(SIEVINGS.get(setup)).hasSize(2);
        assertThat(SIEVINGS.get(setup).get(0)).isEqualTo(SievingEntry.EMPTY);
        assertThat(SIEVINGS.get(setup).get(1).amounts())
                .containsExactly(EnteredQuantity.EMPTY, EnteredQuantity.EMPTY, typed);
        assertThat(amount(1, 2).get(setup)).isEqualTo(typed);
    }

    @Test
    void settingAnItemLeavesItsNeighboursAlone() {
        Setup setup =
                amount(0, 1).set(amount(0, 0).set(Setup.EMPTY, EnteredQuantity.parse("1")), EnteredQuantity.parse("2"));
        Setup changed = amount(0, 0).set(setup, EnteredQuantity.parse("9"));
        assertThat(SIEVINGS.get(changed).get(0).amounts())
                .extracting(EnteredQuantity::text)
                .containsExactly("9", "2");
    }
}
