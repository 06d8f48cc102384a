package org.evenfall.store;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Files;
import java.nio.file.Path;
import org.evenfall.setup.entry.UnitSystem;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class PreferencesFileTest {

    @TempDir
    Path folder;

    private PreferencesFile file() {
        return new PreferencesFile(new UserFolder(folder));
    }

    @Test
    void theyComeBackAsTheyWereLeft() {
        assertThat(file().read()).isEqualTo(Preferences.FIRST);
        Preferences left = new Preferences(-20.0, 30.5, 1400.0, 900.0, true, true, 130, UnitSystem.ACRE);
        assertThat(file().keep(left)).isTrue();
        assertThat(file().read()).isEqualTo(left);
    }

    @ParameterizedTest
    @ValueSource(strings = {"", "null", "[]", "{\"x\": \"left\"}", "{\"dark\": 3,", "{\"units\": \"MILES\"}"})
    void aDamagedFileCountsForNothing(String text) throws Exception {
        Files.writeString(folder.resolve("preferences.json"), text);
        assertThat(file().read()).isEqualTo(Preferences.FIRST);
    }

    @Test
    void keysOfALaterVersionAreNoFault() throws Exception {
        Files.writeString(folder.resolve("preferences.json"), "{\"dark\": true, \"sound\": 1}");
        assertThat(file().read().dark()).isTrue();
        assertThat(file().read().textPercent()).isEqualTo(100);
    }

    @ParameterizedTest
    @CsvSource({"79, 80", "80, 80", "200, 200", "201, 200", "0, 100", "-5, 80"})
    void theTextStaysLegible(int typed, int used) {
        assertThat(new Preferences(null, null, null, null, false, false, typed, UnitSystem.UNANSWERED).textPercent())
                .isEqualTo(used);
    }

    @Test
    void aFolderThatCannotBeWrittenIsNoFault() throws Exception {
        Path blocked = Files.writeString(folder.resolve("file"), "");
        assertThat(new PreferencesFile(new UserFolder(blocked)).keep(Preferences.FIRST))
                .isFalse();
    }
}
