package org.evenfall.store;

import java.time.DateTimeException;
import java.time.Instant;
import java.util.Optional;
import java.util.regex.Pattern;

/**
 * Who has a setup open, as written into its lock file for another window to read.
 *
 * @param person login name
 * @param computer name of the computer; empty when unknown
 * @param since when the setup was opened
 */
public record Owner(String person, String computer, Instant since) {

    private static final Pattern TAB = Pattern.compile("\t");
    private static final int LEAST_PARTS = 3;

    /** The line of the lock file: person, computer and time (ISO 8601, UTC), with a tab between them; more may follow. */
    String line() {
        return plain(person) + "\t" + plain(computer) + "\t" + since;
    }

    /** The owner that a line names; empty when it is no such line. */
    static Optional<Owner> of(String line) {
        String[] parts = TAB.split(line.strip(), -1);
        if (parts.length < LEAST_PARTS) {
            return Optional.empty();
        }
        try {
            return Optional.of(new Owner(parts[0], parts[1], Instant.parse(parts[2])));
        } catch (DateTimeException noTime) {
            return Optional.empty();
        }
    }

    private static String plain(String text) {
        return text.replaceAll("\\p{Cntrl}", " ").strip();
    }
}
