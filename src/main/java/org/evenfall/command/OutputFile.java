package org.evenfall.command;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.evenfall.publish.CardFileException;
import org.evenfall.sign.KeyException;

/** Where a command writes its result. */
final class OutputFile {

    private OutputFile() {}

    /** Writes the file. */
    @FunctionalInterface
    interface Writing {
        /** Writes. */
        void write() throws IOException;
    }

    /**
     * Refuses a result that would replace a file that is read.
     *
     * @param inputs files as typed
     * @throws CommandException naming the file
     */
    static void refuse(CommandContext context, Path result, List<String> inputs) throws CommandException {
        for (String input : inputs) {
            if (same(result, context.path(input))) {
                throw new CommandException(result + ": the result would replace the file that is read");
            }
        }
    }

    private static boolean same(Path one, Path other) {
        try {
            if (Files.exists(one) && Files.exists(other)) {
                return Files.isSameFile(one, other);
            }
            return one.toAbsolutePath()
                    .normalize()
                    .equals(other.toAbsolutePath().normalize());
        } catch (IOException unknown) {
            return false;
        }
    }

    /**
     * Writes a result and names it on standard output at once, so that it is known even if the call ends with an error.
     *
     * @throws CommandException naming the file, when it cannot be written
     */
    static void write(CommandContext context, Path result, Writing writing) throws IOException, CommandException {
        if (Files.isDirectory(result)) {
            throw new CommandException(result + ": cannot be written: it is a folder");
        }
        try {
            writing.write();
        } catch (CardFileException | KeyException named) {
            throw named;
        } catch (IOException notWritten) {
            throw new CommandException(result + ": cannot be written: " + Trouble.reason(notWritten), notWritten);
        }
        context.out().println(result);
        context.out().flush();
    }
}
