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
import org.evenfall.store.ChangedElsewhereException;
import org.evenfall.store.SetupTarget;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;

/** Saving by itself, on a slow disk, a failing one and one that comes back. */
@Timeout(value = 30, threadMode = Timeout.ThreadMode.SEPARATE_THREAD)
class AutoSaverTest {

    private static final Path FIRST = Path.of("first.json");
    private static final Path SECOND = Path.of("second.json");
    private static final Path OURS = Path.of("first-here.json");

    /** Never comes by itself within a test. */
    private static final Duration NEVER = Duration.ofHours(1);

    private static final Duration SOON = Duration.ofMillis(1);

    private final Map<Path, Setup> disk = Collections.synchronizedMap(new HashMap<>());
    private final List<Path> writes = Collections.synchronizedList(new ArrayList<>());
    private final BlockingQueue<Exception> failures = new LinkedBlockingQueue<>();
    private final BlockingQueue<Path> changedElsewhere = new LinkedBlockingQueue<>();
    private final List<Path> closed = Collections.synchronizedList(new ArrayList<>());
    private Writer writer = this::write;
    private AutoSaver saver = saver(this::write, NEVER, NEVER);

    /** What a test does in place of a disk. */
    @FunctionalInterface
    private interface Writer {
        void write(Setup setup, Path file) throws IOException;
    }

    /** A file of a test. */
    private final class Target implements SetupTarget {

        private final Path path;
        private final boolean writable;

        private Target(Path path, boolean writable) {
            this.path = path;
            this.writable = writable;
        }

        @Override
        public Path path() {
            return path;
        }

        @Override
        public Setup setup() {
            return disk.getOrDefault(path, Setup.EMPTY);
        }

        @Override
        public boolean exists() {
            return disk.containsKey(path);
        }

        @Override
        public boolean writable() {
            return writable;
        }

        @Override
        public void save(Setup setup) throws IOException {
            writer.write(setup, path);
        }

        @Override
        public void close() {
            closed.add(path);
        }
    }

    private final class Listener implements AutoSaver.Listener {

        @Override
        public void failed(Exception problem) {
            failures.add(problem);
        }

        @Override
        public void changedElsewhere(Path theirs, Path ours) {
            changedElsewhere.add(theirs);
            changedElsewhere.add(ours);
        }
    }

    private void write(Setup setup, Path file) {
        writes.add(file);
        disk.put(file, setup);
    }

    private AutoSaver saver(Writer own, Duration afterChange, Duration afterFailure) {
        writer = own;
        return new AutoSaver(
                new Target(FIRST, true),
                Setup.EMPTY,
                setup -> setup.equals(farm("nothing")),
                new Listener(),
                new AutoSaver.Delays(afterChange, afterFailure));
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
        saver.open(new Target(SECOND, true), farm("second"));
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

    /** The wait that the window has: what is typed is not written at once, and not much later than half a second. */
    @Test
    void theUsualWaitIsHalfASecond() throws Exception {
        CountDownLatch written = new CountDownLatch(1);
        saver.close();
        saver = saver(
                (setup, file) -> {
                    write(setup, file);
                    written.countDown();
                },
                AutoSaver.Delays.USUAL.afterChange(),
                NEVER);
        long typed = System.nanoTime();
        saver.keep(farm("a"));
        assertThat(written.await(10, TimeUnit.SECONDS)).isTrue();
        assertThat(Duration.ofNanos(System.nanoTime() - typed)).isGreaterThanOrEqualTo(Duration.ofMillis(495));
        assertThat(AutoSaver.Delays.USUAL.afterChange()).isEqualTo(Duration.ofMillis(500));
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
        saver.open(new Target(SECOND, true), farm("second"));
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
        saver.open(new Target(SECOND, true), farm("second"));
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
        saver.open(new Target(SECOND, true), farm("second"));
        saver.keep(farm("second, changed"));
        saver.save();
        assertThat(saved(SECOND)).isEqualTo("second, changed");
        assertThat(saver.unsaved(FIRST)).isPresent();
    }

    /** Each change is nearer to the one before than the wait: the first one is written all the same. */
    @Test
    void typingWithoutAPauseDoesNotPutOffTheWrite() throws Exception {
        saver.close();
        CountDownLatch written = new CountDownLatch(1);
        saver = saver(
                (setup, file) -> {
                    write(setup, file);
                    written.countDown();
                },
                Duration.ofMillis(200),
                NEVER);
        for (int i = 0; written.getCount() > 0; i++) {
            saver.keep(farm("a" + i));
            Thread.sleep(20);
        }
        assertThat(saved(FIRST)).startsWith("a");
    }

    /** The next try of a disk that is gone must not hold up what is typed in another setup. */
    @Test
    void aFailedWriteDoesNotPutOffALaterChange() throws Exception {
        saver.close();
        CountDownLatch written = new CountDownLatch(1);
        saver = saver(
                (setup, file) -> {
                    if (file.equals(FIRST)) {
                        throw new IOException("gone");
                    }
                    write(setup, file);
                    written.countDown();
                },
                SOON,
                NEVER);
        saver.keep(farm("first"));
        assertThat(failures.poll(10, TimeUnit.SECONDS)).hasMessage("gone");
        saver.open(new Target(SECOND, true), farm("second"));
        saver.keep(farm("second, changed"));
        assertThat(written.await(10, TimeUnit.SECONDS)).isTrue();
    }

    @Test
    void whatIsOnlyReadIsNotWritten() {
        saver.open(new Target(SECOND, false), farm("second"));
        saver.keep(farm("second, changed"));
        assertThat(saver.save()).isTrue();
        assertThat(writes).isEmpty();
    }

    @Test
    void aNewSetupInWhichNothingIsTypedMakesNoFile() {
        saver.keep(farm("nothing"));
        saver.save();
        assertThat(writes).isEmpty();
        saver.keep(farm("a"));
        saver.save();
        saver.keep(farm("nothing"));
        saver.save();
        assertThat(writes).as("with a file, all is written").containsExactly(FIRST, FIRST);
    }

    /** What was typed is in a file of its own, and so is what is typed next; the other program's file is not touched. */
    @Test
    void afterAnotherProgramChangedTheFileItIsWrittenToAnother() {
        saver.close();
        saver = saver(
                (setup, file) -> {
                    if (file.equals(FIRST)) {
                        disk.put(OURS, setup);
                        throw new ChangedElsewhereException(FIRST, new Target(OURS, true));
                    }
                    write(setup, file);
                },
                NEVER,
                NEVER);
        saver.keep(farm("a"));
        assertThat(saver.save()).isTrue();
        assertThat(changedElsewhere).containsExactly(FIRST, OURS);
        assertThat(saver.file()).isEqualTo(OURS);
        assertThat(closed).contains(FIRST);
        saver.keep(farm("ab"));
        saver.save();
        assertThat(saved(OURS)).isEqualTo("ab");
        assertThat(writes).containsExactly(OURS);
        assertThat(failures).isEmpty();
    }

    /** Its lock is given back only when nothing of it is unsaved; opened again before, it is the same one. */
    @Test
    void anEarlierFileIsClosedOnceItIsWritten() {
        boolean[] full = {true};
        saver.close();
        saver = saver(
                (setup, file) -> {
                    if (full[0] && file.equals(FIRST)) {
                        throw new IOException("full");
                    }
                    write(setup, file);
                },
                NEVER,
                NEVER);
        closed.clear();
        saver.keep(farm("first"));
        saver.open(new Target(SECOND, true), farm("second"));
        assertThat(saver.save()).isFalse();
        assertThat(closed).isEmpty();
        assertThat(saver.takeBack(FIRST)).contains(farm("first"));
        assertThat(saver.file()).isEqualTo(FIRST);
        saver.keep(farm("first, changed"));
        full[0] = false;
        assertThat(saver.save()).isTrue();
        assertThat(saved(FIRST)).isEqualTo("first, changed");
        assertThat(closed).containsExactly(SECOND);
        assertThat(saver.takeBack(SECOND)).isEmpty();
    }

    @Test
    void closingWritesWhatIsLeft() {
        saver.keep(farm("a"));
        saver.close();
        assertThat(saved(FIRST)).isEqualTo("a");
        saver = saver(this::write, NEVER, NEVER);
    }
}
