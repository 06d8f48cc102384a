package org.evenfall.wizard;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Path;
import java.time.Duration;
import java.util.ArrayList;
import java.util.Collections;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.concurrent.BlockingQueue;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.LinkedBlockingQueue;
import java.util.concurrent.TimeUnit;
import org.evenfall.setup.entry.Setup;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;

/** Saving by itself, on a slow disk, a failing one and one that comes back. */
@Timeout(value = 30, threadMode = Timeout.ThreadMode.SEPARATE_THREAD)
class AutoSaverTest {

    private static final Path FIRST = Path.of("first.json");
    private static final Path SECOND = Path.of("second.json");

    /** Never comes by itself within a test. */
    private static final Duration NEVER = Duration.ofHours(1);

    private static final Duration SOON = Duration.ofMillis(1);

    private final Map<Path, Setup> disk = Collections.synchronizedMap(new HashMap<>());
    private final List<Path> writes = Collections.synchronizedList(new ArrayList<>());
    private final BlockingQueue<Exception> failures = new LinkedBlockingQueue<>();
    private AutoSaver saver = saver(this::write, NEVER, NEVER);

    private void write(Setup setup, Path file) {
        writes.add(file);
        disk.put(file, setup);
    }

    private AutoSaver saver(AutoSaver.Writer writer, Duration afterChange, Duration afterFailure) {
        return new AutoSaver(
                writer, FIRST, Setup.EMPTY, failures::add, new AutoSaver.Delays(afterChange, afterFailure));
    }

    private static Setup farm(String name) {
        return Setup.EMPTY.withStart(Setup.EMPTY.start().withFarm(name));
    }

    private String saved(Path file) {
        Setup setup = disk.get(file);
        return setup == null ? "" : setup.start().farm();
    }

    @AfterEach
    void close() {
        saver.close();
    }

    @Test
    void nothingIsWrittenWithoutAChange() {
        saver.save();
        saver.open(SECOND, farm("second"));
        saver.save();
        assertThat(writes).isEmpty();
    }

    @Test
    void severalChangesAreOneWriteOfTheLast() {
        saver.keep(farm("a"));
        saver.keep(farm("ab"));
        assertThat(saver.unsaved(FIRST).orElseThrow()).isEqualTo(farm("ab"));
        saver.save();
        assertThat(writes).containsExactly(FIRST);
        assertThat(saved(FIRST)).isEqualTo("ab");
        assertThat(saver.unsaved(FIRST)).isEmpty();
        saver.save();
        assertThat(writes).hasSize(1);
    }

    @Test
    void aChangeIsWrittenByItself() throws Exception {
        CountDownLatch written = new CountDownLatch(1);
        saver.close();
        saver = saver(
                (setup, file) -> {
                    write(setup, file);
                    written.countDown();
                },
                SOON,
                NEVER);
        saver.keep(farm("a"));
        assertThat(written.await(10, TimeUnit.SECONDS)).isTrue();
        assertThat(saved(FIRST)).isEqualTo("a");
    }

    @Test
    void aSlowDiskHoldsUpNobodyAndTheLastChangeIsWritten() throws Exception {
        CountDownLatch begun = new CountDownLatch(1);
        CountDownLatch goOn = new CountDownLatch(1);
        saver.close();
        saver = saver(
                (setup, file) -> {
                    begun.countDown();
                    await(goOn);
                    write(setup, file);
                },
                SOON,
                NEVER);
        saver.keep(farm("a"));
        assertThat(begun.await(10, TimeUnit.SECONDS)).isTrue();
        // the disk has not answered yet: each of these would wait for ever if it waited for the disk
        saver.keep(farm("ab"));
        saver.keep(farm("abc"));
        assertThat(saver.file()).isEqualTo(FIRST);
        saver.open(SECOND, farm("second"));
        saver.keep(farm("second, changed"));
        assertThat(writes).isEmpty();
        goOn.countDown();
        saver.save();
        assertThat(saved(FIRST)).isEqualTo("abc");
        assertThat(saved(SECOND)).isEqualTo("second, changed");
    }

    private static void await(CountDownLatch latch) throws IOException {
        try {
            latch.await();
        } catch (InterruptedException stopped) {
            throw new IOException(stopped);
        }
    }

    @Test
    void aSetupThatCouldNotBeWrittenIsKeptAfterAnotherIsOpened() {
        boolean[] full = {true};
        saver.close();
        saver = saver(
                (setup, file) -> {
                    if (full[0]) {
                        throw new IOException("no space left");
                    }
                    write(setup, file);
                },
                NEVER,
                NEVER);
        saver.keep(farm("first"));
        saver.save();
        assertThat(failures)
                .singleElement()
                .satisfies(problem -> assertThat(problem).hasMessage("no space left"));
        saver.open(SECOND, farm("second"));
        saver.keep(farm("second, changed"));
        saver.save();
        assertThat(saver.unsaved(FIRST).orElseThrow()).isEqualTo(farm("first"));
        full[0] = false;
        saver.save();
        assertThat(saved(FIRST)).isEqualTo("first");
        assertThat(saved(SECOND)).isEqualTo("second, changed");
        assertThat(saver.unsaved(FIRST)).isEmpty();
    }

    @Test
    void aFailedWriteIsTriedAgainByItself() throws Exception {
        CountDownLatch written = new CountDownLatch(1);
        int[] tries = {0};
        saver.close();
        saver = saver(
                (setup, file) -> {
                    tries[0]++;
                    if (tries[0] < 3) {
                        throw new IOException("try " + tries[0]);
                    }
                    write(setup, file);
                    written.countDown();
                },
                SOON,
                SOON);
        saver.keep(farm("a"));
        assertThat(written.await(10, TimeUnit.SECONDS)).isTrue();
        assertThat(failures).extracting(Exception::getMessage).containsExactly("try 1", "try 2");
        assertThat(saved(FIRST)).isEqualTo("a");
    }

    @Test
    void aFailureThatIsNoIoExceptionIsReportedToo() {
        saver.close();
        saver = saver(
                (setup, file) -> {
                    throw new IllegalStateException("broken");
                },
                NEVER,
                NEVER);
        saver.keep(farm("a"));
        saver.save();
        assertThat(failures).singleElement().isInstanceOf(IllegalStateException.class);
        assertThat(saver.unsaved(FIRST)).isPresent();
    }

    @Test
    void oneFileThatCannotBeWrittenDoesNotKeepAnotherFromBeingWritten() {
        saver.close();
        saver = saver(
                (setup, file) -> {
                    if (file.equals(FIRST)) {
                        throw new IOException("read only");
                    }
                    write(setup, file);
                },
                NEVER,
                NEVER);
        saver.keep(farm("first"));
        saver.open(SECOND, farm("second"));
        saver.keep(farm("second, changed"));
        saver.save();
        assertThat(saved(SECOND)).isEqualTo("second, changed");
        assertThat(saver.unsaved(FIRST)).isPresent();
    }

    @Test
    void closingWritesWhatIsLeft() {
        saver.keep(farm("a"));
        saver.close();
        assertThat(saved(FIRST)).isEqualTo("a");
        saver = saver(this::write, NEVER, NEVER);
    }
}
