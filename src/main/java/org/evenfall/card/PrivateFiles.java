package org.evenfall.card;

import java.io.IOException;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.nio.file.attribute.FileAttribute;
import java.nio.file.attribute.PosixFilePermission;
import java.nio.file.attribute.PosixFilePermissions;
import java.util.Objects;
import java.util.Set;

/** Files that only their owner can read, in a folder that only their owner can enter; written whole or not at all. */
final class PrivateFiles {

    private PrivateFiles() {}

    /** A new file; never over another. */
    static void writeNew(Path file, byte[] bytes) throws IOException {
        if (Files.exists(file)) {
            throw new FileAlreadyExistsException(file.toString());
        }
        replace(file, bytes);
    }

    /** The file with these bytes, whether it was there before or not. */
    static void replace(Path file, byte[] bytes) throws IOException {
        Path folder = Objects.requireNonNull(file.toAbsolutePath().getParent(), "a file in a folder");
        if (!Files.isDirectory(folder)) {
            Files.createDirectories(folder, owners(folder, "rwx------"));
        }
        Path beside = Files.createTempFile(folder, ".evenfall-", ".part", owners(folder, "rw-------"));
        try {
            Files.write(beside, bytes);
            Files.move(beside, file, StandardCopyOption.REPLACE_EXISTING);
        } finally {
            Files.deleteIfExists(beside);
        }
    }

    private static FileAttribute<?>[] owners(Path folder, String permissions) {
        if (!folder.getFileSystem().supportedFileAttributeViews().contains("posix")) {
            return new FileAttribute<?>[0];
        }
        Set<PosixFilePermission> owner = PosixFilePermissions.fromString(permissions);
        return new FileAttribute<?>[] {PosixFilePermissions.asFileAttribute(owner)};
    }
}
