package org.evenfall.store;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.Arrays;
import java.util.Optional;
import org.evenfall.setup.entry.Setup;
import org.jspecify.annotations.Nullable;

/**
 * A setup file open in one window. Only one window writes it: the others can read it. Before it is written its bytes are
 * compared with those read or written last, so that nothing that another program wrote is lost.
 */
public final class SetupFile implements SetupTarget {

    private static final byte[] NO_FILE = new byte[0];

    private final SetupStore store;
    private final Path path;
    private final Owner owner;
    private final @Nullable SetupLock lock;
    private final @Nullable ReadOnly readOnly;

    /** Digest of the bytes read or written last; of no length while there is no file. */
    private volatile byte[] known;

    private volatile Setup setup;
    private boolean written;

    private SetupFile(
            SetupStore store,
            Path path,
            Owner owner,
            Setup setup,
            byte[] known,
            @Nullable SetupLock lock,
            @Nullable ReadOnly readOnly) {
        this.store = store;
        this.path = path;
        this.owner = owner;
        this.setup = setup;
        this.known = known;
        this.lock = lock;
        this.readOnly = readOnly;
    }

    /**
     * Opens a file: to write it, or only to read it where another window has it, a newer program wrote it or it cannot be
     * written.
     *
     * @throws InputFileException when the file is not there, cannot be read, or is no setup
     */
    static SetupFile open(SetupStore store, Path file, Owner owner) throws InputFileException {
        // the lock first: what is read afterwards is not changed by another window any more
        SetupLock lock = null;
        ReadOnly readOnly = null;
        try {
            lock = Files.isRegularFile(file) && Files.isWritable(file) ? SetupLock.take(file, owner) : null;
            if (lock == null) {
                readOnly = Files.isWritable(file)
                        ? new ReadOnly(ReadOnly.Why.OPEN_ELSEWHERE, SetupLock.owner(file))
                        : ReadOnly.because(ReadOnly.Why.NOT_WRITABLE);
            }
        } catch (IOException notLocked) {
            readOnly = ReadOnly.because(ReadOnly.Why.NOT_WRITABLE);
        }
        try {
            SetupStore.Read read = store.readAnyVersion(file);
            if (read.newer()) {
                close(lock);
                lock = null;
                readOnly = ReadOnly.because(ReadOnly.Why.NEWER_PROGRAM);
            }
            return new SetupFile(store, file, owner, read.setup(), digest(read.bytes()), lock, readOnly);
        } catch (InputFileException | RuntimeException unreadable) {
            close(lock);
            throw unreadable;
        }
    }

    /**
     * A new file; nothing is written until something is saved.
     *
     * @param name name without ending; a number is added when it is taken
     */
    static SetupFile create(SetupStore store, Path folder, String name, Owner owner, Setup first) {
        for (int number = 1; ; number++) {
            Path file = folder.resolve(number == 1 ? name + ".json" : name + "-" + number + ".json");
            if (Files.exists(file)) {
                continue;
            }
            try {
                Files.createDirectories(folder);
                SetupLock lock = SetupLock.take(file, owner);
                if (lock != null && !Files.exists(file)) {
                    return new SetupFile(store, file, owner, first, NO_FILE, lock, null);
                }
                close(lock);
            } catch (IOException noLockThere) {
                // each save tries again and says why it cannot
                return new SetupFile(store, file, owner, first, NO_FILE, null, null);
            }
        }
    }

    @Override
    public Path path() {
        return path;
    }

    @Override
    public boolean exists() {
        return known.length > 0;
    }

    @Override
    public Setup setup() {
        return setup;
    }

    /** Why it can only be read; empty when it can be written. */
    public Optional<ReadOnly> readOnly() {
        return Optional.ofNullable(readOnly);
    }

    @Override
    public boolean writable() {
        return readOnly == null;
    }

    @Override
    public void save(Setup changed) throws IOException {
        byte[] bytes = readable(store.bytes(changed));
        byte[] there = there();
        if (there.length > 0 && !Arrays.equals(digest(there), known)) {
            throw elsewhere(changed, bytes);
        }
        if (there.length > 0) {
            keepGeneration(there);
        }
        WholeFileWriter.write(path, bytes);
        known = digest(bytes);
        setup = changed;
        written = true;
    }

    /** What could not be opened again is not written in place of what can. */
    private byte[] readable(byte[] bytes) throws IOException {
        try {
            store.check(bytes, path);
            return bytes;
        } catch (InputFileException unreadable) {
            throw new IOException(unreadable.getMessage(), unreadable);
        }
    }

    private byte[] there() throws IOException {
        try {
            return WholeFileReader.read(path);
        } catch (NoSuchFileException none) {
            return NO_FILE;
        }
    }

    /** An older generation that cannot be kept holds up no save of what is typed now. */
    private void keepGeneration(byte[] there) {
        try {
            Generations.keep(path, there, !written);
        } catch (IOException notKept) {
            // the save that follows reports a full or absent disk
        }
    }

    private ChangedElsewhereException elsewhere(Setup changed, byte[] bytes) throws IOException {
        String name = String.valueOf(path.getFileName()).replaceFirst("\\.json$", "");
        Path folder = path.toAbsolutePath().resolveSibling("");
        SetupFile ours = create(store, folder, name + "-here", owner, changed);
        try {
            WholeFileWriter.write(ours.path, bytes);
        } catch (IOException notWritten) {
            ours.close();
            throw notWritten;
        }
        ours.known = digest(bytes);
        return new ChangedElsewhereException(path, ours);
    }

    private static byte[] digest(byte[] bytes) {
        try {
            return MessageDigest.getInstance("SHA-256").digest(bytes);
        } catch (NoSuchAlgorithmException impossible) {
            throw new IllegalStateException(impossible);
        }
    }

    @Override
    public void close() {
        close(lock);
    }

    private static void close(@Nullable SetupLock lock) {
        try {
            if (lock != null) {
                lock.close();
            }
        } catch (IOException released) {
            // the system lets go of the lock with the process at the latest
        }
    }
}
