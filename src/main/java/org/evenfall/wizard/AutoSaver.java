package org.evenfall.wizard;

import java.io.IOException;
import java.nio.file.Path;
import java.time.Duration;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.concurrent.ScheduledExecutorService;
import java.util.concurrent.TimeUnit;
import java.util.function.Predicate;
import org.evenfall.setup.entry.Setup;
import org.evenfall.store.ChangedElsewhereException;
import org.evenfall.store.SetupTarget;
import org.jspecify.annotations.Nullable;

/**
 * Saves the open setup by itself: half a second after the first change that is not saved, however fast the next ones come,
 * and when the window closes. Files are written on a thread of its own; {@link #keep} never waits for the disk. What cannot
 * be written is kept and tried again, also after another setup was opened.
 */
final class AutoSaver implements AutoCloseable {

    /** Waits after a change, and after a failed write. */
    record Delays(Duration afterChange, Duration afterFailure) {

        /** With the write itself, a change is on the disk within a second; a full or absent disk is tried seldom. */
        static final Delays USUAL = new Delays(Duration.ofMillis(500), Duration.ofSeconds(5));
    }

    /** Gets what the person must know, on the thread of the saver. */
    interface Listener {
        /** A write failed; it will be tried again. */
        void failed(Exception problem);

        /** Another program wrote the file; what was typed here is saved in a file of its own from now on. */
        void changedElsewhere(Path theirs, Path ours);
    }

    private final Listener listener;
    private final Predicate<Setup> nothingTyped;
    private final Delays delays;
    private final ScheduledExecutorService thread = Executors.newSingleThreadScheduledExecutor(work -> {
        Thread worker = new Thread(work, "evenfall-autosaver");
        worker.setDaemon(true);
        return worker;
    });

    /** Guards the fields below; held for as long as it takes to change them, never during a write. */
    private final Object lock = new Object();

    private final Map<SetupTarget, Setup> unsaved = new LinkedHashMap<>();

    /** Opened before the one that is open now; each is closed once nothing of it is unsaved. */
    private final Set<SetupTarget> earlier = new LinkedHashSet<>();

    private SetupTarget target;
    private Setup content;
    private @Nullable Future<?> scheduled;

    private @Nullable Thread atExit;

    /** When that write begins, as {@link System#nanoTime} counts. */
    private long dueNanos;

    /**
     * @param first where the setup is saved that is open first
     * @param content that setup
     * @param nothingTyped what is not written as long as there is no file
     * @param delays waits before a write
     */
    AutoSaver(SetupTarget first, Setup content, Predicate<Setup> nothingTyped, Listener listener, Delays delays) {
        this.target = first;
        this.content = content;
        this.nothingTyped = nothingTyped;
        this.listener = listener;
        this.delays = delays;
    }

    /** The file of the open setup. */
    Path file() {
        synchronized (lock) {
            return target.path();
        }
    }

    /** Another setup is opened; what is unsaved of the earlier one is written soon. */
    void open(SetupTarget other, Setup opened) {
        synchronized (lock) {
            earlier.add(target);
            target = other;
            content = opened;
            writeWithin(Duration.ZERO);
        }
    }

    /**
     * Takes a file back that was open before and is not closed yet, with what was typed in it last.
     *
     * @return empty when it is none of these
     */
    Optional<Setup> takeBack(Path file) {
        synchronized (lock) {
            for (SetupTarget one : earlier) {
                if (one.path().equals(file)) {
                    Setup setup = unsaved.getOrDefault(one, one.setup());
                    earlier.remove(one);
                    earlier.add(target);
                    target = one;
                    content = setup;
                    return Optional.of(setup);
                }
            }
            return Optional.empty();
        }
    }

    /** The open setup has changed; it is written after a short wait. Nothing is where it can only be read. */
    void keep(Setup setup) {
        synchronized (lock) {
            if (setup.equals(content) || !target.writable()) {
                return;
            }
            content = setup;
            if (!target.exists() && nothingTyped.test(setup)) {
                unsaved.remove(target);
                return;
            }
            unsaved.put(target, setup);
            writeWithin(delays.afterChange());
        }
    }

    /** What is still to be written to a file; empty when the file is up to date. */
    Optional<Setup> unsaved(Path wanted) {
        synchronized (lock) {
            return unsaved.entrySet().stream()
                    .filter(one -> one.getKey().path().equals(wanted))
                    .map(Map.Entry::getValue)
                    .findFirst();
        }
    }

    /** Writes something else on the thread of the saver, before the next {@link #save}; nothing once it is closed. */
    void later(Runnable write) {
        if (!thread.isShutdown()) {
            thread.execute(write);
        }
    }

    /** Writes all that is unsaved, once, and waits until that is done or has failed; false when something is left. */
    boolean save() {
        try {
            thread.submit(this::writeAll).get();
        } catch (InterruptedException stopped) {
            Thread.currentThread().interrupt();
        } catch (ExecutionException broken) {
            throw new IllegalStateException(broken.getCause());
        }
        synchronized (lock) {
            return unsaved.isEmpty();
        }
    }

    /** A later change does not put off the write of an earlier one. */
    private void writeWithin(Duration delay) {
        long due = System.nanoTime() + delay.toNanos();
        if (scheduled != null) {
            if (dueNanos - due <= 0) {
                return;
            }
            scheduled.cancel(false);
        }
        if (!thread.isShutdown()) {
            dueNanos = due;
            scheduled = thread.schedule(this::writeScheduled, delay.toNanos(), TimeUnit.NANOSECONDS);
        }
    }

    private void writeScheduled() {
        synchronized (lock) {
            scheduled = null;
        }
        writeAll();
    }

    private void writeAll() {
        Map<SetupTarget, Setup> now;
        synchronized (lock) {
            now = new LinkedHashMap<>(unsaved);
        }
        boolean again = false;
        for (Map.Entry<SetupTarget, Setup> one : now.entrySet()) {
            again |= !write(one.getKey(), one.getValue());
        }
        synchronized (lock) {
            for (SetupTarget done : Set.copyOf(earlier)) {
                if (!unsaved.containsKey(done)) {
                    earlier.remove(done);
                    done.close();
                }
            }
            if (again) {
                writeWithin(delays.afterFailure());
            }
        }
    }

    /** False when it could not be written; it then stays unsaved. */
    private boolean write(SetupTarget to, Setup setup) {
        try {
            to.save(setup);
        } catch (ChangedElsewhereException changed) {
            moved(to, setup, changed.ours());
            listener.changedElsewhere(changed.theirs(), changed.ours().path());
            return true;
        } catch (IOException | RuntimeException problem) {
            listener.failed(problem);
            return false;
        }
        synchronized (lock) {
            // changed meanwhile: the newer content is still to be written
            unsaved.remove(to, setup);
        }
        return true;
    }

    /** What was to be written is in a new file, where what is typed next is written too. */
    private void moved(SetupTarget from, Setup written, SetupTarget to) {
        synchronized (lock) {
            Setup newest = unsaved.remove(from);
            if (newest != null && !newest.equals(written)) {
                unsaved.put(to, newest);
                writeWithin(delays.afterChange());
            }
            if (target.equals(from)) {
                target = to;
            } else {
                earlier.add(to);
            }
            earlier.remove(from);
            from.close();
        }
    }

    /** Writes what is left also when the process is ended from outside, as by a log-off or SIGTERM. */
    void saveAtExit() {
        Thread hook = new Thread(this::save, "evenfall-last-save");
        atExit = hook;
        Runtime.getRuntime().addShutdownHook(hook);
    }

    /** Writes what is left and lets others write the files. */
    @Override
    public void close() {
        if (thread.isShutdown()) {
            return;
        }
        save();
        forgetExit();
        thread.shutdown();
        synchronized (lock) {
            earlier.forEach(SetupTarget::close);
            target.close();
        }
    }

    private void forgetExit() {
        Thread hook = atExit;
        try {
            if (hook != null) {
                Runtime.getRuntime().removeShutdownHook(hook);
            }
        } catch (IllegalStateException exiting) {
            // it runs already, or has run
        }
    }
}
