package org.evenfall.publish;

import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;

/** Reads a file that may be a card, and no more than a card can have. */
final class CardBytes {

    /** Assumption: far above any card, which has well under 1 MB. */
    static final int MOST = 20_000_000;

    private CardBytes() {}

    /** @throws CardFileException when there is no such file, or it cannot be read, or is too large for a card */
    static byte[] read(Path card) throws CardFileException {
        try {
            if (Files.size(card) > MOST) {
                throw tooLarge(card);
            }
            try (InputStream in = Files.newInputStream(card)) {
                // a device or a growing file has no size beforehand
                byte[] bytes = in.readNBytes(MOST + 1);
                if (bytes.length > MOST) {
                    throw tooLarge(card);
                }
                return bytes;
            }
        } catch (NoSuchFileException missing) {
            throw new CardFileException(card, "no such file", missing);
        } catch (CardFileException refused) {
            throw refused;
        } catch (IOException unreadable) {
            throw new CardFileException(card, "cannot be read", unreadable);
        }
    }

    private static CardFileException tooLarge(Path card) {
        return new CardFileException(card, "is too large for a card", new IOException("more than " + MOST + " bytes"));
    }
}
