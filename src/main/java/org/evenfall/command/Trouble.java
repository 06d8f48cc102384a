package org.evenfall.command;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.AccessDeniedException;
import java.nio.file.FileSystemException;
import java.nio.file.InvalidPathException;
import java.nio.file.NoSuchFileException;
import java.util.Objects;
import org.evenfall.publish.CardFileException;
import org.evenfall.quantity.PlainText;
import org.evenfall.quantity.Quoted;
import org.evenfall.store.InputFileException;

/** What went wrong, in one plain line without the names of the program's own parts. */
final class Trouble {

    private Trouble() {}

    /** The line of any trouble. */
    static String line(Throwable trouble) {
        return PlainText.oneLine(sentence(trouble), Quoted.MOST_IN_MESSAGE);
    }

    private static String sentence(Throwable trouble) {
        if (trouble instanceof InputFileException
                || trouble instanceof CardFileException
                || trouble instanceof CommandException) {
            return String.valueOf(trouble.getMessage());
        }
        if (trouble instanceof InvalidPathException name) {
            return Quoted.of(name.getInput())
                    + " cannot be a file name here; where it has letters beyond English, set LC_ALL=C.UTF-8";
        }
        if (trouble instanceof UncheckedIOException wrapped) {
            return sentence(Objects.requireNonNull(wrapped.getCause()));
        }
        if (trouble instanceof FileSystemException file) {
            return file.getFile() + ": " + reason(file);
        }
        if (trouble instanceof IOException other) {
            return "reading or writing failed: " + reason(other);
        }
        if (trouble instanceof OutOfMemoryError) {
            return "evenfall: too little memory for this input";
        }
        if (trouble instanceof StackOverflowError) {
            return "evenfall: the input is nested too deeply";
        }
        return "evenfall: internal error. This is a fault of the program; please report it with the call and its files";
    }

    /** Why a file cannot be read or written, as far as the system says so. */
    static String reason(IOException trouble) {
        if (trouble instanceof NoSuchFileException) {
            return "no such file or folder";
        }
        if (trouble instanceof AccessDeniedException) {
            return "no permission";
        }
        if (trouble instanceof FileSystemException file) {
            return file.getReason() == null ? "the system refuses it" : file.getReason();
        }
        return trouble.getMessage() == null ? "the system refuses it" : trouble.getMessage();
    }
}
