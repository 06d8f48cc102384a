package org.evenfall.command;

import java.io.InputStream;
import java.io.PrintWriter;
import java.nio.file.Path;
import java.time.Clock;
import java.util.Locale;
import java.util.Optional;
import java.util.function.Supplier;
import org.evenfall.finding.Sentences;
import org.evenfall.store.SetupJson;
import org.evenfall.store.UserFolder;

/**
 * What the commands need from outside; Main builds it, a test builds its own.
 *
 * @param in standard input
 * @param out standard output
 * @param err standard error
 * @param folder current folder
 * @param user the person's own folder
 * @param clock clock
 * @param sentences in the person's language, made when the first is needed
 * @param json reader and writer of setups
 * @param window opens the wizard
 */
public record CommandContext(
        InputStream in,
        PrintWriter out,
        PrintWriter err,
        Path folder,
        UserFolder user,
        Clock clock,
        Supplier<Sentences> sentences,
        SetupJson json,
        Window window) {

    /** Opens the wizard and waits until it is closed. */
    @FunctionalInterface
    public interface Window {
        /**
         * @param setup the setup to open, empty for the start
         * @return empty when the window was opened and closed, else one line saying why it could not be opened
         */
        Optional<String> open(Optional<Path> setup);
    }

    /** The same, but no control character that is not a tab or a line end reaches standard output or standard error. */
    CommandContext plain() {
        return new CommandContext(
                in,
                new PrintWriter(new PlainWriter(out)),
                new PrintWriter(new PlainWriter(err)),
                folder,
                user,
                clock,
                sentences,
                json,
                window);
    }

    /** Sentences in the person's language. */
    public Sentences words() {
        return sentences.get();
    }

    /** The language in which the command answers. */
    public Locale locale() {
        return words().locale();
    }

    /** A path as typed, against the current folder. */
    public Path path(String typed) {
        return folder.resolve(typed);
    }
}
