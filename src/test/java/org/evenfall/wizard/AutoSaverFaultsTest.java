package org.evenfall.wizard;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Path;
import java.time.Duration;
import java.time.Instant;
import java.util.concurrent.BlockingQueue;
import java.util.concurrent.LinkedBlockingQueue;
import java.util.concurrent.TimeUnit;
import org.evenfall.faults.FaultWay;
import org.evenfall.faults.Faults;
import org.evenfall.faults.FaultyFileSystem;
import org.evenfall.setup.entry.Setup;
import org.evenfall.store.InputFileException;
import org.evenfall.store.Owner;
import org.evenfall.store.SetupFiles;
import org.evenfall.store.SetupJson;
import org.evenfall.store.SetupStore;
import org.evenfall.store.SetupTarget;
import org.evenfall.store.UserFolder;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/** What was typed while the disk is full, broken or gone is kept, and written by itself when that is over. */
@Timeout(value = 30, threadMode = Timeout.ThreadMode.SEPARATE_THREAD)
class AutoSaverFaultsTest {

    private static final AutoSaver.Delays SHORT = new AutoSaver.Delays(Duration.ofMillis(1), Duration.ofMillis(20));
    private static final int SEASON = 2027;

    private final SetupStore store = new SetupStore(new SetupJson());
    private final Faults faults = new Faults();
    private final BlockingQueue<Exception> failures = new LinkedBlockingQueue<>();

    @TempDir
    private Path folder;

    private final class Listener implements AutoSaver.Listener {
        @Override
        public void failed(Exception problem) {
            failures.add(problem);
        }

        @Override
        public void changedElsewhere(Path theirs, Path ours) {
            failures.add(new IllegalStateException(ours.toString()));
        }
    }

    private static Setup farm(String name) {
        return Setup.EMPTY.withStart(Setup.EMPTY.start().withFarm(name));
    }

    private SetupTarget create(String name) {
        UserFolder user = new UserFolder(FaultyFileSystem.path(folder, faults));
        return new SetupFiles(store, user, () -> new Owner("anna", "yard", Instant.EPOCH))
                .create(SEASON, name, Setup.EMPTY);
    }

    private void waitUntilSaved(AutoSaver saver, String name) throws InterruptedException {
        while (saver.unsaved(FaultyFileSystem.path(folder, faults).resolve(name))
                .isPresent()) {
            Thread.sleep(5);
        }
    }

    private String saved(String name) throws InputFileException {
        return store.read(folder.resolve("2027").resolve(name)).start().farm();
    }

    /** Without another change, and also of a setup that is not the open one any more. */
    @ParameterizedTest
    @EnumSource(names = {"ERRORS_FROM_NOW", "GONE_FROM_NOW", "FULL_FROM_NOW"})
    void isWrittenWhenTheFaultIsOver(FaultWay way) throws Exception {
        SetupTarget first = create("first");
        SetupTarget second = create("second");
        try (AutoSaver saver = new AutoSaver(first, Setup.EMPTY, Setup.EMPTY::equals, new Listener(), SHORT)) {
            saver.keep(farm("a"));
            waitUntilSaved(saver, "2027/first.json");
            assertThat(saved("first.json")).isEqualTo("a");
            faults.arm(0, way);
            saver.keep(farm("ab"));
            assertThat(failures.poll(20, TimeUnit.SECONDS)).isInstanceOf(IOException.class);
            saver.open(second, Setup.EMPTY);
            saver.keep(farm("other"));
            failures.clear();
            assertThat(failures.poll(20, TimeUnit.SECONDS)).isInstanceOf(IOException.class);
            assertThat(saver.unsaved(first.path())).contains(farm("ab"));
            assertThat(saver.unsaved(second.path())).contains(farm("other"));
            assertThat(saved("first.json")).isEqualTo("a");
            faults.over();
            waitUntilSaved(saver, "2027/first.json");
            waitUntilSaved(saver, "2027/second.json");
            assertThat(saved("first.json")).isEqualTo("ab");
            assertThat(saved("second.json")).isEqualTo("other");
        }
    }
}
