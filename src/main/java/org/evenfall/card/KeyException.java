package org.evenfall.card;

import java.io.IOException;

/** Why a signing key cannot be used, in a form that a face puts into words. */
public final class KeyException extends IOException {

    private static final long serialVersionUID = 1;

    /** What is the matter. */
    public enum Kind {
        /** The key is closed by a passphrase that was not given yet. */
        LOCKED,
        WRONG_PASSPHRASE,
        /** The file holds no key that signs, or none of a kind that can be used here. */
        NO_KEY,
        UNREADABLE,
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

    public Kind kind() {
        return kind;
    }
}
