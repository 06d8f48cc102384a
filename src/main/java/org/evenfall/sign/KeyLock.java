package org.evenfall.sign;

import java.io.IOException;
import java.nio.channels.FileChannel;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.nio.file.attribute.FileAttribute;
import java.nio.file.attribute.PosixFilePermissions;
import java.util.Set;
import java.util.UUID;
import java.util.concurrent.locks.ReentrantLock;

/**
 * Lets one at a time write the keys of a folder, across threads and processes. An empty file in the folder is locked and
 * stays there. Where the file system has no locks, only threads of this process wait for each other.
 */
final class KeyLock {

    /** A process cannot lock one file twice, so its threads wait here first. */
    private static final ReentrantLock THREADS = new ReentrantLock();

    private static final String NAME = "signing-key.lock";

    private final Path folder;
    private final KeyFiles files;

    KeyLock(Path folder, KeyFiles files) {
        this.folder = folder;
        this.files = files;
    }

    /** Work on the keys that may fail. */
    @FunctionalInterface
    interface Work {
        void run() throws IOException;
    }

    /** Does the work while nobody else writes keys here; may be called again from inside the work. */
    void during(Work work) throws IOException {
        THREADS.lock();
        try {
            if (THREADS.getHoldCount() > 1) {
                work.run();
            } else {
                locked(work);
            }
        } finally {
            THREADS.unlock();
        }
    }

    private void locked(Work work) throws IOException {
        makeFolder();
        FileChannel channel = FileChannel.open(
                folder.resolve(NAME), Set.of(StandardOpenOption.CREATE, StandardOpenOption.WRITE), ownerOnly());
        try {
            lock(channel);
            work.run();
        } finally {
            close(channel);
        }
    }

    /** Gives the lock back. What was written counts, also where this fails. */
    private static void close(FileChannel channel) {
        try {
            channel.close();
        } catch (IOException released) {
            // the system lets go of the lock with the process at the latest
        }
    }

    /** The lock is given back when the channel is closed. */
    private static void lock(FileChannel channel) {
        try {
            channel.lock();
        } catch (IOException noLocks) {
            // the file system has none
        }
    }

    /** Makes a missing folder as every file with secrets does, by writing one. */
    private void makeFolder() throws IOException {
        if (!Files.isDirectory(folder)) {
            Path first = folder.resolve(UUID.randomUUID() + ".lock");
            files.write(first, new byte[0]);
            Files.delete(first);
        }
    }

    private FileAttribute<?>[] ownerOnly() {
        return folder.getFileSystem().supportedFileAttributeViews().contains("posix")
                ? new FileAttribute<?>[] {PosixFilePermissions.asFileAttribute(OwnerOnly.READS)}
                : new FileAttribute<?>[0];
    }
}
