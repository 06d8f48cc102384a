package org.evenfall.wizard;

import java.io.IOException;
import java.nio.file.Path;
import java.time.Duration;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.concurrent.ScheduledExecutorService;
import java.util.concurrent.TimeUnit;
import java.util.function.Consumer;
import org.evenfall.setup.entry.Setup;
import org.jspecify.annotations.Nullable;

/**
 * Saves the open setup by itself: half a second after the last change, when another setup is opened and when the window
 * closes. Files are written on a thread of its own; {@link #keep} never waits for the disk. What cannot be written is kept
 * and tried again, also after another setup was opened.
 */
final class AutoSaver implements AutoCloseable {

    /** Waits after a change, and after a failed write. */
    record Delays(Duration afterChange, Duration afterFailure) {

        /** Short enough to lose little, long enough to write once a word; a full or absent disk is tried seldom. */
        static final Delays USUAL = new Delays(Duration.ofMillis(500), Duration.ofSeconds(10));
    }

    /** Writes a setup whole to a file. */
    @FunctionalInterface
    interface Writer {
        /** @throws IOException when the file is not written; what was there before is then left whole */
        void write(Setup setup, Path file) throws IOException;
    }

    private final Writer writer;
    private final Consumer<Exception> failed;
    private final Delays delays;
    private final ScheduledExecutorService thread = Executors.newSingleThreadScheduledExecutor(work -> {
        Thread worker = new Thread(work, "evenfall-autosaver");
        worker.setDaemon(true);
        return worker;
    });

    /** Guards the fields below; held for as long as it takes to change them, never during a write. */
    private final Object lock = new Object();

    private final Map<Path, Setup> unsaved = new LinkedHashMap<>();
    private Path file;
    private Setup content;
    private @Nullable Future<?> scheduled;

    /**
     * @param writer writes a setup whole to a file
     * @param file file of the setup that is open first
     * @param first that setup
     * @param failed gets each failure, on the saver's thread
     * @param delays waits before a write
     */
    AutoSaver(Writer writer, Path file, Setup first, Consumer<Exception> failed, Delays delays) {
        this.writer = writer;
        this.file = file;
        this.content = first;
        this.failed = failed;
        this.delays = delays;
    }

    /** The file of the open setup. */
    Path file() {
        synchronized (lock) {
            return file;
        }
    }

    /** Another setup is opened; what is unsaved of the earlier one is written soon. */
    void open(Path other, Setup opened) {
        synchronized (lock) {
            file = other;
            content = opened;
            if (!unsaved.isEmpty()) {
                schedule(Duration.ZERO);
            }
        }
    }

    /** The open setup has changed; it is written after a short wait. */
    void keep(Setup setup) {
        synchronized (lock) {
            content = setup;
            unsaved.put(file, content);
            schedule(delays.afterChange());
        }
    }

    /** What is still to be written to a file; empty when the file is up to date. */
    Optional<Setup> unsaved(Path wanted) {
        synchronized (lock) {
            return Optional.ofNullable(unsaved.get(wanted));
        }
    }

    /** Writes all that is unsaved, once, and waits until that is done or has failed. */
    void save() {
        try {
            thread.submit(this::writeAll).get();
        } catch (InterruptedException stopped) {
            Thread.currentThread().interrupt();
        } catch (ExecutionException broken) {
            throw new IllegalStateException(broken.getCause());
        }
    }

    private void schedule(Duration delay) {
        if (scheduled != null) {
            scheduled.cancel(false);
        }
        if (!thread.isShutdown()) {
            scheduled = thread.schedule(this::writeScheduled, delay.toMillis(), TimeUnit.MILLISECONDS);
        }
    }

    private void writeScheduled() {
        synchronized (lock) {
            scheduled = null;
        }
        writeAll();
    }

    private void writeAll() {
        Map<Path, Setup> now;
        synchronized (lock) {
            now = new LinkedHashMap<>(unsaved);
        }
        boolean again = false;
        for (Map.Entry<Path, Setup> one : now.entrySet()) {
            again |= !write(one.getKey(), one.getValue());
        }
        synchronized (lock) {
            // a change meanwhile has scheduled the next write already
            if (again && scheduled == null) {
                schedule(delays.afterFailure());
            }
        }
    }

    /** False when it could not be written; it then stays unsaved. */
    private boolean write(Path target, Setup setup) {
        try {
            writer.write(setup, target);
        } catch (IOException | RuntimeException problem) {
            failed.accept(problem);
            return false;
        }
        synchronized (lock) {
            // changed meanwhile: the newer content is still to be written
            unsaved.remove(target, setup);
        }
        return true;
    }

    @Override
    public void close() {
        save();
        thread.shutdown();
    }
}
