package org.evenfall.setup.path;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Map;
import org.evenfall.quantity.EnteredQuantity;
import org.evenfall.setup.entry.ProductEntries;
import org.evenfall.setup.entry.Setup;
import org.evenfall.setup.entry.SievingEntry;
import org.junit.jupiter.api.Test;

/** Places in a setup: what is set is got, nothing else changes, and the pointer names the place. */
class EntryPathTest {

    private static EntryPath<EnteredQuantity> amount(int sample, int index) {
        return QuantityList.item(ProductPaths.SIEVING_AMOUNTS.at(ProductPaths.SIEVINGS.item(sample)), index);
    }

    @Test
    void whatIsSetIsGotAndNothingElseChanges() {
        EntryPath<String> name = ProductPaths.NAME.path();
        Setup setup = name.set(Setup.EMPTY, "urea");
        assertThat(name.get(setup)).isEqualTo("urea");
        assertThat(setup.withProduct(ProductEntries.EMPTY)).isEqualTo(Setup.EMPTY);
        assertThat(name.set(setup, "")).isEqualTo(Setup.EMPTY);
    }

    @Test
    void beyondTheEndOfAListIsTheBlank() {
        assertThat(amount(3, 2).get(Setup.EMPTY)).isEqualTo(EnteredQuantity.EMPTY);
    }

    @Test
    void settingBeyondTheEndFillsUpWithBlanks() {
        EnteredQuantity typed = EnteredQuantity.parse("40 g");
        Setup setup = amount(1, 2).set(Setup.EMPTY, typed);
        List<SievingEntry> sievings = setup.product().sievings();
        assertThat(sievings).hasSize(2);
        assertThat(sievings.get(0)).isEqualTo(SievingEntry.EMPTY);
        assertThat(sievings.get(1).amounts()).containsExactly(EnteredQuantity.EMPTY, EnteredQuantity.EMPTY, typed);
        assertThat(amount(1, 2).get(setup)).isEqualTo(typed);
    }

    @Test
    void settingAnItemLeavesItsNeighboursAlone() {
        Setup setup = amount(0, 0).set(Setup.EMPTY, EnteredQuantity.parse("1"));
        setup = amount(0, 1).set(setup, EnteredQuantity.parse("2"));
        setup = amount(0, 0).set(setup, EnteredQuantity.parse("9"));
        assertThat(setup.product().sievings().get(0).amounts())
                .extracting(EnteredQuantity::text)
                .containsExactly("9", "2");
    }

    @Test
    void thePointerNamesThePlace() {
        assertThat(amount(1, 2).pointer()).isEqualTo("/product/sievings/1/amounts/2");
    }

    /** RFC 6901, section 3: ~ is written ~0 and / is written ~1. */
    @Test
    void aLabelWithSlashAndTildeIsEscaped() {
        EntryPath<EnteredQuantity> lever =
                QuantityMap.item(SettingsPaths.LEVERS.at(MatchPaths.SETTINGS.only()), "in/out ~");
        assertThat(lever.pointer()).isEqualTo("/match/settings/levers/in~1out ~0");
        Setup setup = lever.set(Setup.EMPTY, EnteredQuantity.parse("3"));
        assertThat(setup.match().settings().levers()).isEqualTo(Map.of("in/out ~", EnteredQuantity.parse("3")));
    }

    @Test
    void thePlaceReadInAnotherWayKeepsItsPointer() {
        List<EnteredQuantity> usual = List.of(EnteredQuantity.parse("2 mm"));
        EntryPath<List<EnteredQuantity>> sieves =
                ProductPaths.APERTURES.path().as(typed -> typed.isEmpty() ? usual : typed, (old, typed) -> typed);
        assertThat(sieves.pointer()).isEqualTo(ProductPaths.APERTURES.pointer());
        assertThat(sieves.get(Setup.EMPTY)).isEqualTo(usual);
        assertThat(sieves.set(Setup.EMPTY, List.of()).product().apertures()).isEmpty();
    }
}
