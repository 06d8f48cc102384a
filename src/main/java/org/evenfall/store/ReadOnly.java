package org.evenfall.store;

import java.util.Optional;

/**
 * Why a setup can only be read.
 *
 * @param why the reason
 * @param holder who has it open, where that is known
 */
public record ReadOnly(Why why, Optional<Owner> holder) {

    /** A reason. */
    public enum Why {
        /** It is open in another window or on another computer. */
        OPEN_ELSEWHERE,
        /** It was written by a newer program, which may mean something else by it. */
        NEWER_PROGRAM,
        /** The file or its folder cannot be written. */
        NOT_WRITABLE
    }

    static ReadOnly because(Why why) {
        return new ReadOnly(why, Optional.empty());
    }
}
