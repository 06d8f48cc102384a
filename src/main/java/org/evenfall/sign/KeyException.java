package org.evenfall.sign;

import java.io.IOException;

/** A signing key that cannot be used. The kind is put into words by a face. */
public final class KeyException extends IOException {

    private static final long serialVersionUID = 1;

    /** The reason. */
    public enum Kind {
        /** The key is closed by a passphrase that was not given yet. */
        LOCKED,
        /** The passphrase given is not that of the file. */
        WRONG_PASSPHRASE,
        /** The file holds no key that signs, or none of a kind that can be used here. */
        NO_KEY,
        /** The file is no key file, or is damaged. */
        UNREADABLE,
        /** This Java cannot make a key. */
        NOT_MADE,
        /** The file could not be written. */
        NOT_WRITTEN
    }

    private final Kind kind;

    KeyException(Kind kind, Throwable cause) {
        super(kind.name(), cause);
        this.kind = kind;
    }

    KeyException(Kind kind) {
        super(kind.name());
        this.kind = kind;
    }

    /** The reason. */
    public Kind kind() {
        return kind;
    }

    /** What the system reports of a file or of this Java, for whoever is asked for help; empty where the kind says all. */
    public String detail() {
        Throwable cause = getCause();
        if (cause == null || kind == Kind.LOCKED || kind == Kind.WRONG_PASSPHRASE) {
            return "";
        }
        String message = cause.getMessage();
        return message == null ? cause.getClass().getSimpleName() : message;
    }
}
