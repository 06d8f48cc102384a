package org.evenfall.sign;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.PosixFileAttributeView;
import java.nio.file.attribute.PosixFilePermission;
import java.util.Collections;
import java.util.Set;

/** Files that only their owner may read, where the file system has POSIX permissions. */
final class OwnerOnly {

    static final Set<PosixFilePermission> READS =
            Set.of(PosixFilePermission.OWNER_READ, PosixFilePermission.OWNER_WRITE);

    private static final Set<PosixFilePermission> OTHERS = Set.of(
            PosixFilePermission.GROUP_READ,
            PosixFilePermission.GROUP_WRITE,
            PosixFilePermission.OTHERS_READ,
            PosixFilePermission.OTHERS_WRITE);

    private OwnerOnly() {}

    /** Takes the file from others who may read or write it; whether there were such others, and it was put right. */
    static boolean putRight(Path file) {
        try {
            PosixFileAttributeView view = Files.getFileAttributeView(file, PosixFileAttributeView.class);
            if (view == null || Collections.disjoint(view.readAttributes().permissions(), OTHERS)) {
                return false;
            }
            view.setPermissions(READS);
            return true;
        } catch (IOException notAllowed) {
            return false;
        }
    }
}
