package org.evenfall.setup;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.tuple;

import java.util.List;
import java.util.Map;
import org.evenfall.finding.Arg;
import org.evenfall.quantity.EnteredQuantity;
import org.evenfall.quantity.Unit;
import org.evenfall.reference.TestedProduct;
import org.evenfall.setup.entry.SettingsEntries;
import org.evenfall.setup.entry.Setup;
import org.evenfall.setup.entry.TestedProductEntry;
import org.junit.jupiter.api.Test;

/** Choosing a tested product. */
class TakeOverSettingsTest {

    private static final SettingsEntries FIRST = settings("7");
    private static final SettingsEntries SECOND = settings("9");

    private static SettingsEntries settings(String longVane) {
        return SettingsEntries.EMPTY
                .withLevers(Map.of("long vane", new EnteredQuantity(longVane, Unit.NONE)))
                .withPtoSpeed(new EnteredQuantity("540", Unit.RPM));
    }

    private static Setup library(SettingsEntries typed) {
        return Setup.EMPTY.withMatch(Setup.EMPTY
                .match()
                .withSettings(typed)
                .withLibrary(List.of(
                        TestedProductEntry.EMPTY.withId("a").withSettings(FIRST),
                        TestedProductEntry.EMPTY.withId("b").withSettings(SECOND))));
    }

    @Test
    void itsSettingsAreTakenOverWhereNoLeverIsTyped() {
        Setup chosen = TakeOverSettings.choose(library(SettingsEntries.EMPTY), "b");
        assertThat(chosen.match().chosen()).isEqualTo("b");
        assertThat(chosen.match().settings()).isEqualTo(SECOND);
    }

    @Test
    void settingsTypedAlreadyStay() {
        SettingsEntries own = settings("11");
        Setup chosen = TakeOverSettings.choose(library(own), "a");
        assertThat(chosen.match().chosen()).isEqualTo("a");
        assertThat(chosen.match().settings()).isEqualTo(own);
    }

    @Test
    void aShaftSpeedAloneIsNoLeverAndIsReplaced() {
        SettingsEntries pto = SettingsEntries.EMPTY.withPtoSpeed(new EnteredQuantity("750", Unit.RPM));
        assertThat(TakeOverSettings.choose(library(pto), "a").match().settings())
                .isEqualTo(FIRST);
    }

    @Test
    void takingOverReplacesWhatTheProductSaysAndNamesIt() {
        SettingsEntries own = settings("11")
                .withTilt(new EnteredQuantity("1", Unit.DEG))
                .withPtoSpeed(new EnteredQuantity("520", Unit.RPM));
        Setup chosen = TakeOverSettings.choose(library(own), "a");
        assertThat(TakeOverSettings.changes(chosen))
                .extracting(TakeOverSettings.Change::before, TakeOverSettings.Change::after)
                .containsExactly(tuple("11", "7"), tuple("520 rpm", "540 rpm"));
        assertThat(TakeOverSettings.changes(chosen).get(0).name()).isEqualTo(Arg.text("long vane"));
        Setup taken = TakeOverSettings.takenOver(chosen);
        assertThat(taken.match().settings())
                .as("what the product does not say stays")
                .isEqualTo(FIRST.withTilt(new EnteredQuantity("1", Unit.DEG)));
        assertThat(TakeOverSettings.changes(taken)).isEmpty();
    }

    @Test
    void withoutAProductThereIsNothingToTakeOver() {
        Setup none = library(settings("11"));
        assertThat(TakeOverSettings.changes(none)).isEmpty();
        assertThat(TakeOverSettings.takenOver(none)).isEqualTo(none);
    }

    @Test
    void todaysSettingsCanBeTakenOver() {
        Setup today = library(settings("11"));
        today = today.withMatch(today.match().withToday(today.match().today().withSettings(SECOND)));
        Setup taken = TakeOverSettings.takenOver(TakeOverSettings.choose(today, TestedProduct.TODAY_ID));
        assertThat(taken.match().settings()).isEqualTo(SECOND);
    }

    @Test
    void aProductThatIsNotInTheLibraryIsNotedOnly() {
        Setup before = library(SettingsEntries.EMPTY);
        assertThat(TakeOverSettings.choose(before, "c"))
                .isEqualTo(before.withMatch(before.match().withChosen("c")));
    }
}
