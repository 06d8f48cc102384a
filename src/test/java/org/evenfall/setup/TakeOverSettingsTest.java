package org.evenfall.setup;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Map;
import org.evenfall.quantity.EnteredQuantity;
import org.evenfall.quantity.Unit;
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
        Setup chosen = TakeOverSettings.from(library(SettingsEntries.EMPTY), "b");
        assertThat(chosen.match().chosen()).isEqualTo("b");
        assertThat(chosen.match().settings()).isEqualTo(SECOND);
    }

    @Test
    void settingsTypedAlreadyStay() {
        SettingsEntries own = settings("11");
        Setup chosen = TakeOverSettings.from(library(own), "a");
        assertThat(chosen.match().chosen()).isEqualTo("a");
        assertThat(chosen.match().settings()).isEqualTo(own);
    }

    @Test
    void aShaftSpeedAloneIsNoLeverAndIsReplaced() {
        SettingsEntries pto = SettingsEntries.EMPTY.withPtoSpeed(new EnteredQuantity("750", Unit.RPM));
        assertThat(TakeOverSettings.from(library(pto), "a").match().settings()).isEqualTo(FIRST);
    }

    @Test
    void aProductThatIsNotInTheLibraryIsNotedOnly() {
        Setup before = library(SettingsEntries.EMPTY);
        assertThat(TakeOverSettings.from(before, "c"))
                .isEqualTo(before.withMatch(before.match().withChosen("c")));
    }
}
