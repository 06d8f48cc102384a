package org.evenfall.store;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.evenfall.OrdinaryUser.mode;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import org.evenfall.OrdinaryUser;
import org.evenfall.setup.entry.Setup;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Files and folders that this user may not write or read. */
@Tag("ordinary")
class PermissionsTest {

    private static final int SEASON = 2027;

    private final SetupStore store = new SetupStore(new SetupJson());

    @TempDir
    private Path folder;

    private Path season;
    private Path file;
    private SetupFiles files;

    private static Setup farm(String name) {
        return Setup.EMPTY.withStart(Setup.EMPTY.start().withFarm(name));
    }

    @BeforeEach
    void saved() throws Exception {
        OrdinaryUser.required(folder);
        season = folder.resolve("2027");
        file = season.resolve("setup.json");
        store.save(farm("a"), file);
        files = new SetupFiles(store, new UserFolder(folder), () -> new Owner("anna", "yard", Instant.EPOCH));
    }

    /** What cannot be entered cannot be removed either. */
    @AfterEach
    void giveBack() throws Exception {
        mode(folder, "rwx------");
        if (season != null) {
            mode(season, "rwx------");
        }
    }

    private void canOnlyBeRead() throws Exception {
        try (SetupFile open = files.open(file, SEASON)) {
            assertThat(open.setup()).isEqualTo(farm("a"));
            assertThat(open.readOnly().orElseThrow().why()).isEqualTo(ReadOnly.Why.NOT_WRITABLE);
        }
    }

    @Test
    void aFileThatMayNotBeWrittenIsRead() throws Exception {
        mode(file, "r--r--r--");
        canOnlyBeRead();
    }

    @Test
    void aFileInAFolderThatMayNotBeWrittenIsRead() throws Exception {
        mode(season, "r-xr-xr-x");
        canOnlyBeRead();
    }

    @Test
    void aFileThatMayNotBeReadIsNamed() throws Exception {
        mode(file, "---------");
        assertThatThrownBy(() -> files.open(file, SEASON))
                .isInstanceOf(InputFileException.class)
                .hasMessageContaining("setup.json: cannot be read");
        assertThat(FarmCheck.of(store, new UserFolder(folder)))
                .extracting(FarmProblem::file)
                .containsExactly(file);
    }

    @Test
    void aNewSetupIsSavedOnceItsFolderMayBeWritten() throws Exception {
        mode(season, "r-xr-xr-x");
        try (SetupFile open = files.create(SEASON, "new", Setup.EMPTY)) {
            assertThat(open.writable()).isTrue();
            assertThatThrownBy(() -> open.save(farm("b")))
                    .isInstanceOf(IOException.class)
                    .hasMessageContaining("no permission to write here");
            mode(season, "rwxr-xr-x");
            open.save(farm("b"));
            assertThat(store.read(season.resolve("new.json"))).isEqualTo(farm("b"));
        }
    }

    @Test
    void anOpenSetupIsSavedOnceItsFolderMayBeWrittenAgain() throws Exception {
        try (SetupFile open = files.open(file, SEASON)) {
            mode(season, "r-xr-xr-x");
            assertThatThrownBy(() -> open.save(farm("b"))).hasMessageContaining("no permission to write here");
            assertThat(store.read(file)).isEqualTo(farm("a"));
            mode(season, "rwxr-xr-x");
            open.save(farm("b"));
            assertThat(store.read(file)).isEqualTo(farm("b"));
        }
    }

    @Test
    void preferencesThatMayNotBeKeptAreReportedOnly() throws Exception {
        mode(folder, "r-xr-xr-x");
        PreferencesFile preferences = new PreferencesFile(new UserFolder(folder));
        assertThat(preferences.keep(Preferences.FIRST)).isFalse();
        assertThat(preferences.read()).isEqualTo(Preferences.FIRST);
    }

    /** A register that may not be read is not taken for an empty one. */
    @Test
    void aRegisterThatMayNotBeReadStays() throws Exception {
        Path card = Files.writeString(
                Files.createDirectories(folder.resolve("cards")).resolve("one.pdf"), "one");
        IssuedCards cards = new IssuedCards(new UserFolder(folder));
        cards.add(card, file, farm("a"), "AAAA", Instant.EPOCH);
        byte[] before = Files.readAllBytes(cards.file());
        mode(cards.file(), "---------");
        assertThatThrownBy(() -> cards.add(card, file, farm("b"), "AAAA", Instant.EPOCH))
                .isInstanceOf(IOException.class);
        mode(cards.file(), "rw-------");
        assertThat(cards.file()).hasBinaryContent(before);
    }
}
