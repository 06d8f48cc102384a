package org.evenfall.store;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.FileTime;
import java.time.Instant;
import java.time.temporal.ChronoUnit;
import org.evenfall.setup.entry.Setup;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A setup from elsewhere is copied into the folder of its season, once. */
class SetupFilesTest {

    private static final Instant NOW = Instant.parse("2027-03-18T09:00:00Z");

    private final SetupStore store = new SetupStore(new SetupJson());

    @TempDir
    private Path folder;

    private UserFolder user;
    private SetupFiles files;
    private Path outside;

    private static Setup farm(String name, String season) {
        return Setup.EMPTY.withStart(Setup.EMPTY.start().withFarm(name).withSeason(season));
    }

    @BeforeEach
    void folders() throws Exception {
        user = new UserFolder(folder.resolve("settings"), folder.resolve("farm"));
        files = new SetupFiles(store, user, () -> new Owner("anna", "yard", NOW));
        outside = folder.resolve("stick").resolve("home.json");
        store.save(farm("a", "2026"), outside);
    }

    private SetupFile open(Path file) throws InputFileException {
        return files.open(file, 2027);
    }

    @Test
    void aFileFromElsewhereIsCopiedIntoItsSeasonAndStaysAsItIs() throws Exception {
        byte[] before = Files.readAllBytes(outside);
        try (SetupFile copy = open(outside)) {
            assertThat(copy.path()).isEqualTo(user.season(2026).resolve("home.json"));
            copy.save(farm("ab", "2026"));
        }
        assertThat(outside).hasBinaryContent(before);
        assertThat(files.isTakenIn(outside)).isTrue();
        try (SetupFile again = open(outside)) {
            assertThat(again.path()).isEqualTo(user.season(2026).resolve("home.json"));
            assertThat(again.setup()).isEqualTo(farm("ab", "2026"));
        }
    }

    @Test
    void aFileThatChangedElsewhereIsCopiedAnewUnderAFreeName() throws Exception {
        open(outside).close();
        store.save(farm("b", ""), outside);
        try (SetupFile copy = open(outside)) {
            assertThat(copy.path()).isEqualTo(user.season(2027).resolve("home.json"));
        }
        store.save(farm("c", "2026"), outside);
        try (SetupFile copy = open(outside)) {
            assertThat(copy.path()).isEqualTo(user.season(2026).resolve("home-2.json"));
        }
    }

    @Test
    void aFileInTheFolderOfASeasonIsOpenedWhereItIs() throws Exception {
        Path inside = user.season(2025).resolve("home.json");
        store.save(farm("a", "2026"), inside);
        try (SetupFile open = open(inside)) {
            assertThat(open.path()).isEqualTo(inside);
            assertThat(open.writable()).isTrue();
        }
        assertThat(files.isTakenIn(inside)).isFalse();
    }

    @Test
    void aFileOfANewerProgramIsNotTakenIn() throws Exception {
        Files.writeString(outside, "{\"evenfall\": 9}");
        try (SetupFile open = open(outside)) {
            assertThat(open.path()).isEqualTo(outside);
            assertThat(open.writable()).isFalse();
        }
        assertThat(user.farm()).doesNotExist();
    }

    @Test
    void whatIsNoSetupIsNotTakenIn() throws Exception {
        Files.writeString(outside, "[]");
        assertThatThrownBy(() -> open(outside)).isInstanceOf(InputFileException.class);
        assertThat(user.farm()).doesNotExist();
    }

    @Test
    void theLockOfASetupThatWasNeverWrittenIsRemovedAfterADay() throws Exception {
        files.create(2027, "never", Setup.EMPTY).close();
        files.create(2027, "today", Setup.EMPTY).close();
        SetupFile written = files.create(2027, "written", Setup.EMPTY);
        written.save(farm("a", "2027"));
        written.close();
        Path locks = user.season(2027).resolve(".locks");
        for (String name : new String[] {"never", "written"}) {
            Files.setLastModifiedTime(
                    locks.resolve(name + ".json.lock"), FileTime.from(NOW.minus(25, ChronoUnit.HOURS)));
        }
        Files.setLastModifiedTime(locks.resolve("today.json.lock"), FileTime.from(NOW.minus(23, ChronoUnit.HOURS)));
        files.removeLeftovers(2027);
        assertThat(locks.resolve("never.json.lock")).doesNotExist();
        assertThat(locks.resolve("today.json.lock")).exists();
        assertThat(locks.resolve("written.json.lock")).exists();
    }

    /** What a killed process left is removed after an hour; a process that writes now is left alone. */
    @Test
    void oldPartsAreRemoved() throws Exception {
        Path season = Files.createDirectories(user.season(2027));
        Path old = Files.writeString(season.resolve(".evenfall-1.part"), "x");
        Path young = Files.writeString(season.resolve(".evenfall-2.part"), "x");
        Path own = Files.writeString(season.resolve("notes.part"), "x");
        Files.setLastModifiedTime(old, FileTime.from(NOW.minus(61, ChronoUnit.MINUTES)));
        Files.setLastModifiedTime(young, FileTime.from(NOW.minus(59, ChronoUnit.MINUTES)));
        Files.setLastModifiedTime(own, FileTime.from(NOW.minus(5, ChronoUnit.DAYS)));
        files.removeLeftovers(2027);
        assertThat(old).doesNotExist();
        assertThat(young).exists();
        assertThat(own).exists();
    }
}
