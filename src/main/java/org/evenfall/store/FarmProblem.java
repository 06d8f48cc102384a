package org.evenfall.store;

import java.nio.file.Path;
import java.time.Instant;
import java.util.Optional;

/**
 * Something wrong with a file of the farm's folder.
 *
 * @param what what is wrong
 * @param file the file
 * @param detail where and how it is damaged; empty otherwise
 * @param soundSince when the newest sound generation was written; empty where none is offered
 */
public record FarmProblem(What what, Path file, String detail, Optional<Instant> soundSince) {

    /** What may be wrong. */
    public enum What {
        /** The file cannot be read. */
        DAMAGED,
        /** The file is gone; earlier generations or the register of cards show that there was one. */
        MISSING,
        /** A newer program wrote it. */
        NEWER,
        /** A card is not as it was when it was issued. */
        CHANGED
    }
}
