package org.evenfall.faults;

import java.io.IOException;
import java.nio.file.AtomicMoveNotSupportedException;
import java.nio.file.FileSystemException;
import java.nio.file.NoSuchFileException;
import java.util.EnumSet;
import java.util.Set;

/** How a call to the file system fails. */
public enum FaultWay {
    /** This call alone fails. */
    ERROR(false, EnumSet.allOf(FileCall.class)),
    /** The disk is broken from this call on. */
    ERRORS_FROM_NOW(true, EnumSet.allOf(FileCall.class)),
    /** The folder is gone from this call on, as a drive that is pulled out. */
    GONE_FROM_NOW(true, EnumSet.complementOf(EnumSet.of(FileCall.CLOSE))),
    /** The disk is full from this call on. */
    FULL_FROM_NOW(true, EnumSet.of(FileCall.OPEN_TO_WRITE, FileCall.WRITE, FileCall.FORCE, FileCall.CREATE_FOLDER)),
    /** Half is written, then the call fails. */
    HALF_WRITTEN(false, EnumSet.of(FileCall.WRITE)),
    /** Less is written than was asked for, which is no failure. */
    LESS_WRITTEN(false, EnumSet.of(FileCall.WRITE)),
    /** A file cannot be moved onto another in one step. */
    NO_ATOMIC_MOVE(false, EnumSet.of(FileCall.MOVE)),
    /** The file seems to end before it does. */
    CUT_SHORT(false, EnumSet.of(FileCall.READ));

    private final boolean lasting;
    private final Set<FileCall> calls;

    FaultWay(boolean lasting, Set<FileCall> calls) {
        this.lasting = lasting;
        this.calls = calls;
    }

    boolean fits(FileCall call) {
        return calls.contains(call);
    }

    boolean lasting() {
        return lasting;
    }

    /** What the call throws; the ways without an exception are left to the channel. */
    void fail(String path) throws IOException {
        switch (this) {
            case ERROR, ERRORS_FROM_NOW, HALF_WRITTEN -> throw new IOException("Input/output error");
            case GONE_FROM_NOW -> throw new NoSuchFileException(path);
            case FULL_FROM_NOW -> throw new FileSystemException(path, null, "No space left on device");
            case NO_ATOMIC_MOVE -> throw new AtomicMoveNotSupportedException(path, path, "refused");
            default -> {
                // the channel writes or reads less
            }
        }
    }
}
