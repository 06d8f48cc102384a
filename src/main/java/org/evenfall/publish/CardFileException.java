package org.evenfall.publish;

import java.io.IOException;
import java.nio.file.Path;

/** A card that cannot be written or verified. The message names the file and the problem in one line. */
public final class CardFileException extends IOException {

    private static final long serialVersionUID = 1;

    CardFileException(Path file, String problem, Throwable cause) {
        super(file + ": " + problem, cause);
    }
}
