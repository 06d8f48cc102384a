package org.evenfall.wizard;

import java.io.IOException;
import java.nio.file.Path;
import java.util.concurrent.Executors;
import java.util.concurrent.ScheduledExecutorService;
import java.util.concurrent.ScheduledFuture;
import java.util.concurrent.TimeUnit;
import java.util.function.Consumer;
import org.evenfall.setup.entry.Setup;
import org.evenfall.store.SetupFile;
import org.evenfall.store.SetupStore;
import org.jspecify.annotations.Nullable;

/** Saves the open setup by itself, half a second after the last change and when the window closes, off the window's thread. */
final class AutoSaver implements AutoCloseable {

    private static final long DELAY_MS = 500;

    private final SetupStore store;
    private final Consumer<IOException> failed;
    private final ScheduledExecutorService thread = Executors.newSingleThreadScheduledExecutor(work -> {
        Thread worker = new Thread(work, "evenfall-keeper");
        worker.setDaemon(true);
        return worker;
    });
    private Path file;
    private SetupFile kept;
    private @Nullable ScheduledFuture<?> waiting;
    private boolean dirty;

    AutoSaver(SetupStore store, Path file, SetupFile first, Consumer<IOException> failed) {
        this.store = store;
        this.file = file;
        this.kept = first;
        this.failed = failed;
    }

    synchronized Path file() {
        return file;
    }

    /** Another setup is opened; what was open is saved first. */
    synchronized void keepAt(Path other, SetupFile opened) {
        save();
        file = other;
        kept = opened;
    }

    synchronized void keep(Setup setup) {
        kept = kept.with(setup);
        dirty = true;
        if (waiting != null) {
            waiting.cancel(false);
        }
        waiting = thread.schedule(this::save, DELAY_MS, TimeUnit.MILLISECONDS);
    }

    synchronized void save() {
        if (!dirty) {
            return;
        }
        try {
            store.save(kept, file);
            dirty = false;
        } catch (IOException problem) {
            failed.accept(problem);
        }
    }

    @Override
    public void close() {
        save();
        thread.shutdown();
    }
}
