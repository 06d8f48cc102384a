package org.evenfall.wizard;

import java.io.IOException;
import java.nio.file.Path;
import java.time.Clock;
import java.util.Optional;
import java.util.function.Consumer;
import java.util.function.Function;
import java.util.function.Supplier;
import org.evenfall.finding.Sentences;
import org.evenfall.setup.Assessment;
import org.evenfall.setup.entry.Setup;
import org.evenfall.store.Owner;
import org.evenfall.store.SetupFiles;
import org.evenfall.store.SetupStore;
import org.evenfall.store.UserFolder;

/**
 * What the wizard needs from outside; Main builds it, a test builds its own.
 *
 * @param assess makes an assessment
 * @param words sentences
 * @param store setup files
 * @param user the person's folder
 * @param owner who opens a setup now
 * @param clock clock
 * @param demo the demo as JSON text
 * @param reveal shows a written file in the system's own viewer
 * @param choose asks where to write a card, given a free name; empty when cancelled
 * @param pick asks for a file to open
 * @param print sends a card to a printer
 */
record WizardContext(
        Function<Setup, Assessment> assess,
        Sentences words,
        SetupStore store,
        UserFolder user,
        Supplier<Owner> owner,
        Clock clock,
        Function<String, Optional<String>> demo,
        Consumer<Path> reveal,
        Function<Path, Optional<Path>> choose,
        Picker pick,
        Printer print) {

    /** Opens setups to be written by this window. */
    SetupFiles files() {
        return new SetupFiles(store, user, owner);
    }

    /** Asks for a file to open. */
    @FunctionalInterface
    interface Picker {
        /**
         * The file chosen, empty when cancelled.
         *
         * @param title what it is for
         * @param extensions endings of its name, without dot
         */
        Optional<Path> pick(String title, String... extensions);
    }

    /** Sends a PDF to a printer. */
    @FunctionalInterface
    interface Printer {
        /** False when the person cancelled. */
        boolean send(byte[] pdf) throws IOException;
    }
}
