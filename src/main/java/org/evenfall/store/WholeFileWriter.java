package org.evenfall.store;

import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.channels.FileChannel;
import java.nio.file.AccessDeniedException;
import java.nio.file.AtomicMoveNotSupportedException;
import java.nio.file.DirectoryIteratorException;
import java.nio.file.DirectoryStream;
import java.nio.file.FileSystemException;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.nio.file.StandardOpenOption;
import java.nio.file.attribute.AclEntry;
import java.nio.file.attribute.AclEntryFlag;
import java.nio.file.attribute.AclEntryPermission;
import java.nio.file.attribute.AclEntryType;
import java.nio.file.attribute.BasicFileAttributes;
import java.nio.file.attribute.FileAttribute;
import java.nio.file.attribute.PosixFilePermission;
import java.nio.file.attribute.PosixFilePermissions;
import java.nio.file.attribute.UserPrincipal;
import java.time.Duration;
import java.time.Instant;
import java.util.EnumSet;
import java.util.List;
import java.util.Objects;
import java.util.Set;

/**
 * Writes files whole or not at all: a temporary file in the same folder is written, forced to the disk and moved onto the
 * target. An interruption at any time leaves either the old file or the new one. A symbolic link is followed; what is
 * neither a file nor free, such as a pipe, is not written to.
 */
public final class WholeFileWriter {

    private static final String PART = ".evenfall-";
    private static final String PART_ENDING = ".part";

    /** Assumption: no file takes longer to write. */
    private static final Duration BEING_WRITTEN = Duration.ofHours(1);

    private static final String OWNER_ENTERS = "rwx------";
    private static final String OWNER_READS = "rw-------";

    private WholeFileWriter() {}

    /**
     * Writes a file, over an older one where there is one, whose permissions it keeps; makes missing folders. A new file can
     * be read by its owner only.
     *
     * @throws IOException when it cannot be written; an older file is then unchanged
     */
    public static void write(Path file, byte[] bytes) throws IOException {
        try {
            Path target = target(file);
            Path folder = folder(target);
            Files.createDirectories(folder);
            Path temporary = Files.createTempFile(folder, PART, PART_ENDING);
            replace(target, bytes, temporary, permissions(target));
        } catch (AccessDeniedException denied) {
            // the message of the system is the path alone
            FileSystemException plain = new FileSystemException(denied.getFile(), null, "no permission to write here");
            plain.initCause(denied);
            throw plain;
        }
    }

    /**
     * Writes a file that only its owner can read, from the first byte on; a missing folder is made so that only its owner
     * can enter it. Where the file system has neither POSIX permissions nor access control lists, the folder decides.
     *
     * @throws IOException when it cannot be written; an older file is then unchanged
     */
    public static void writePrivate(Path file, byte[] bytes) throws IOException {
        Path target = target(file);
        Path folder = folder(target);
        if (!Files.isDirectory(folder)) {
            Files.createDirectories(
                    folder, ownerOnly(folder, OWNER_ENTERS, AclEntryFlag.FILE_INHERIT, AclEntryFlag.DIRECTORY_INHERIT));
        }
        Path temporary = Files.createTempFile(folder, PART, PART_ENDING, ownerOnly(folder, OWNER_READS));
        replace(target, bytes, temporary, Set.of());
    }

    /** Removes what was begun in a folder and never moved to its place; what another process may be writing stays. */
    static void removeParts(Path folder, Instant now) {
        try (DirectoryStream<Path> parts = Files.newDirectoryStream(folder, PART + "*" + PART_ENDING)) {
            for (Path part : parts) {
                if (Files.getLastModifiedTime(part).toInstant().isBefore(now.minus(BEING_WRITTEN))) {
                    Files.deleteIfExists(part);
                }
            }
        } catch (IOException | DirectoryIteratorException stays) {
            // it takes room and harms nothing
        }
    }

    private static Path target(Path file) throws IOException {
        try {
            boolean link = Files.readAttributes(file, BasicFileAttributes.class, LinkOption.NOFOLLOW_LINKS)
                    .isSymbolicLink();
            Path target = link ? file.toRealPath() : file;
            if (!Files.readAttributes(target, BasicFileAttributes.class).isRegularFile()) {
                throw new FileSystemException(file.toString(), null, "it is no regular file");
            }
            return target;
        } catch (NoSuchFileException free) {
            if (Files.isSymbolicLink(file)) {
                throw free;
            }
            return file;
        }
    }

    /** Those of a file that is there; none otherwise, or where the file system has no such permissions. */
    private static Set<PosixFilePermission> permissions(Path file) throws IOException {
        if (!file.getFileSystem().supportedFileAttributeViews().contains("posix")) {
            return Set.of();
        }
        try {
            return Files.getPosixFilePermissions(file);
        } catch (NoSuchFileException free) {
            return Set.of();
        }
    }

    private static Path folder(Path file) {
        return Objects.requireNonNull(file.toAbsolutePath().getParent(), "a file in a folder");
    }

    private static void replace(Path file, byte[] bytes, Path temporary, Set<PosixFilePermission> permissions)
            throws IOException {
        try {
            try (FileChannel channel = FileChannel.open(temporary, StandardOpenOption.WRITE)) {
                ByteBuffer rest = ByteBuffer.wrap(bytes);
                while (rest.hasRemaining()) {
                    channel.write(rest);
                }
                channel.force(true);
            }
            if (!permissions.isEmpty()) {
                Files.setPosixFilePermissions(temporary, permissions);
            }
            try {
                Files.move(temporary, file, StandardCopyOption.ATOMIC_MOVE, StandardCopyOption.REPLACE_EXISTING);
            } catch (AtomicMoveNotSupportedException notHere) {
                Files.move(temporary, file, StandardCopyOption.REPLACE_EXISTING);
            }
        } catch (IOException | RuntimeException notWritten) {
            delete(temporary);
            throw notWritten;
        }
        forceFolder(folder(file));
    }

    private static void delete(Path temporary) {
        try {
            Files.deleteIfExists(temporary);
        } catch (IOException stays) {
            // the program removes it when it is started later
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
