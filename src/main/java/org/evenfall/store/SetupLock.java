package org.evenfall.store;

import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.channels.FileChannel;
import java.nio.channels.FileLock;
import java.nio.channels.OverlappingFileLockException;
import java.nio.charset.StandardCharsets;
import java.nio.file.DirectoryIteratorException;
import java.nio.file.DirectoryStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.time.Duration;
import java.time.Instant;
import java.util.Objects;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/**
 * The right to write a file, held until it is given back or the process ends: a lock of the operating system on a file next
 * to it, {@code .locks/NAME.lock}, which names its owner. The lock file stays: a process that removed it could leave two
 * others with two locks of one name. It is opened once: closing it anywhere in the process ends the lock on most systems.
 */
final class SetupLock implements AutoCloseable {

    /** The locked byte lies far behind the owner's line: on Windows a locked byte cannot be read by others. */
    private static final long LOCKED_BYTE = Long.MAX_VALUE - 1;

    private static final int MOST_BYTES = 500;
    private static final String FOLDER = ".locks";
    private static final String ENDING = ".lock";

    /** Assumption: a new setup in which nothing is typed is not open for longer. */
    private static final Duration OPEN = Duration.ofDays(1);

    private final FileChannel channel;

    private SetupLock(FileChannel channel) {
        this.channel = channel;
    }

    /**
     * Locks a file.
     *
     * @return null when another process or window has it
     * @throws IOException when no lock can be made there, for example in a folder that cannot be written
     */
    static @Nullable SetupLock take(Path file, Owner owner) throws IOException {
        Path lockFile = of(file);
        Files.createDirectories(Objects.requireNonNull(lockFile.getParent()));
        FileChannel channel = FileChannel.open(lockFile, StandardOpenOption.CREATE, StandardOpenOption.WRITE);
        try {
            if (locked(channel)) {
                name(owner, channel);
                return new SetupLock(channel);
            }
        } catch (OverlappingFileLockException another) {
            // another window of this process
        }
        channel.close();
        return null;
    }

    /**
     * Where the file system has no locks, as on some shared folders, the file counts as locked: what others write meanwhile
     * is found before each write.
     */
    private static boolean locked(FileChannel channel) {
        try {
            FileLock lock = channel.tryLock(LOCKED_BYTE, 1, false);
            return lock != null;
        } catch (IOException noLocks) {
            return true;
        }
    }

    /** Writes who has the file. The lock counts also where that fails, as on a full disk. */
    private static void name(Owner owner, FileChannel channel) {
        try {
            channel.truncate(0);
            ByteBuffer line = ByteBuffer.wrap(owner.line().getBytes(StandardCharsets.UTF_8));
            while (line.hasRemaining()) {
                channel.write(line);
            }
        } catch (IOException unknown) {
            // others learn only that somebody has it
        }
    }

    /** Who has a file; empty when its lock file does not say. */
    static Optional<Owner> owner(Path file) {
        try (FileChannel channel = FileChannel.open(of(file), StandardOpenOption.READ)) {
            ByteBuffer bytes = ByteBuffer.allocate(MOST_BYTES);
            channel.read(bytes);
            return Owner.of(new String(bytes.array(), 0, bytes.position(), StandardCharsets.UTF_8));
        } catch (IOException unreadable) {
            return Optional.empty();
        }
    }

    private static Path of(Path file) throws IOException {
        Path real = Files.exists(file) ? file.toRealPath() : file.toAbsolutePath();
        return real.resolveSibling(FOLDER).resolve(real.getFileName() + ENDING);
    }

    /** Removes the lock files of setups that were never written, but for those of the last day, which may be open. */
    static void removeUnused(Path folder, Instant now) {
        try (DirectoryStream<Path> locks = Files.newDirectoryStream(folder.resolve(FOLDER), "*" + ENDING)) {
            for (Path lock : locks) {
                String name = String.valueOf(lock.getFileName());
                boolean written = Files.exists(folder.resolve(name.substring(0, name.length() - ENDING.length())));
                if (!written && Files.getLastModifiedTime(lock).toInstant().isBefore(now.minus(OPEN))) {
                    Files.deleteIfExists(lock);
                }
            }
        } catch (IOException | DirectoryIteratorException stays) {
            // it takes room and harms nothing
        }
    }

    @Override
    public void close() throws IOException {
        channel.close();
    }
}
