package org.evenfall.store;

import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.channels.FileChannel;
import java.nio.file.AtomicMoveNotSupportedException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.nio.file.StandardOpenOption;
import java.nio.file.attribute.AclEntry;
import java.nio.file.attribute.AclEntryFlag;
import java.nio.file.attribute.AclEntryPermission;
import java.nio.file.attribute.AclEntryType;
import java.nio.file.attribute.FileAttribute;
import java.nio.file.attribute.PosixFilePermission;
import java.nio.file.attribute.PosixFilePermissions;
import java.nio.file.attribute.UserPrincipal;
import java.util.EnumSet;
import java.util.List;
import java.util.Objects;
import java.util.Set;

/**
 * Writes files whole or not at all: a temporary file in the same folder is written, forced to the disk and moved onto the
 * target. An interruption at any time leaves either the old file or the new one.
 */
public final class WholeFileWriter {

    private static final String OWNER_ENTERS = "rwx------";
    private static final String OWNER_READS = "rw-------";

    private WholeFileWriter() {}

    /**
     * Writes a file, over an older one where there is one; makes missing folders.
     *
     * @throws IOException when it cannot be written; an older file is then unchanged
     */
    public static void write(Path file, byte[] bytes) throws IOException {
        Path folder = folder(file);
        Files.createDirectories(folder);
        replace(file, bytes, Files.createTempFile(folder, ".evenfall-", ".part"));
    }

    /**
     * Writes a file that only its owner can read, from the first byte on; a missing folder is made so that only its owner
     * can enter it. Where the file system has neither POSIX permissions nor access control lists, the folder decides.
     *
     * @throws IOException when it cannot be written; an older file is then unchanged
     */
    public static void writePrivate(Path file, byte[] bytes) throws IOException {
        Path folder = folder(file);
        if (!Files.isDirectory(folder)) {
            Files.createDirectories(
                    folder, ownerOnly(folder, OWNER_ENTERS, AclEntryFlag.FILE_INHERIT, AclEntryFlag.DIRECTORY_INHERIT));
        }
        replace(file, bytes, Files.createTempFile(folder, ".evenfall-", ".part", ownerOnly(folder, OWNER_READS)));
    }

    private static Path folder(Path file) {
        return Objects.requireNonNull(file.toAbsolutePath().getParent(), "a file in a folder");
    }

    private static void replace(Path file, byte[] bytes, Path temporary) throws IOException {
        try {
            try (FileChannel channel = FileChannel.open(temporary, StandardOpenOption.WRITE)) {
                ByteBuffer rest = ByteBuffer.wrap(bytes);
                while (rest.hasRemaining()) {
                    channel.write(rest);
                }
                channel.force(true);
            }
            try {
                Files.move(temporary, file, StandardCopyOption.ATOMIC_MOVE, StandardCopyOption.REPLACE_EXISTING);
            } catch (AtomicMoveNotSupportedException notHere) {
                Files.move(temporary, file, StandardCopyOption.REPLACE_EXISTING);
            }
            forceFolder(folder(file));
        } finally {
            Files.deleteIfExists(temporary);
        }
    }

    /** Forces the new name to the disk. Windows opens no folder as a channel; the file is complete all the same. */
    private static void forceFolder(Path folder) {
        try (FileChannel channel = FileChannel.open(folder, StandardOpenOption.READ)) {
            channel.force(true);
        } catch (IOException | UnsupportedOperationException notSupported) {
            // the system does not allow it
        }
    }

    private static FileAttribute<?>[] ownerOnly(Path folder, String permissions, AclEntryFlag... inheritance)
            throws IOException {
        Set<String> views = folder.getFileSystem().supportedFileAttributeViews();
        if (views.contains("posix")) {
            Set<PosixFilePermission> owner = PosixFilePermissions.fromString(permissions);
            return new FileAttribute<?>[] {PosixFilePermissions.asFileAttribute(owner)};
        }
        if (views.contains("acl")) {
            UserPrincipal owner = folder.getFileSystem()
                    .getUserPrincipalLookupService()
                    .lookupPrincipalByName(System.getProperty("user.name"));
            return new FileAttribute<?>[] {new OwnerAcl(owner, Set.of(inheritance))};
        }
        return new FileAttribute<?>[0];
    }

    /** An access control list that allows everything to the owner and nothing to others. */
    private record OwnerAcl(UserPrincipal owner, Set<AclEntryFlag> flags) implements FileAttribute<List<AclEntry>> {

        @Override
        public String name() {
            return "acl:acl";
        }

        @Override
        public List<AclEntry> value() {
            return List.of(AclEntry.newBuilder()
                    .setType(AclEntryType.ALLOW)
                    .setPrincipal(owner)
                    .setPermissions(EnumSet.allOf(AclEntryPermission.class))
                    .setFlags(flags)
                    .build());
        }
    }
}
