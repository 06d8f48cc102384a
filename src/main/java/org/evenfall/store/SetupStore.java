package org.evenfall.store;

import java.io.IOException;
import java.nio.charset.MalformedInputException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import org.evenfall.setup.entry.Setup;

/** Setup files on disk. A save writes the whole file or changes nothing. */
public final class SetupStore {

    private final SetupJson json;

    /** A store of files in the format of {@link SetupJson}. */
    public SetupStore(SetupJson json) {
        this.json = json;
    }

    /**
     * The setup of a file.
     *
     * @throws InputFileException when the file is not there, cannot be read, or is no setup
     */
    public Setup read(Path file) throws InputFileException {
        try {
            return json.read(Files.readString(file), file.toString());
        } catch (NoSuchFileException missing) {
            throw new InputFileException(file.toString(), "", "no such file");
        } catch (MalformedInputException binary) {
            throw new InputFileException(file.toString(), "", "not a text file in UTF-8");
        } catch (IOException unreadable) {
            throw new InputFileException(file.toString(), "", "cannot be read: " + reason(unreadable));
        }
    }

    /**
     * Writes a setup in place of what the file had.
     *
     * @throws IOException when it cannot be written; the file is then as it was
     */
    public void save(Setup setup, Path file) throws IOException {
        WholeFileWriter.write(file, json.write(setup).getBytes(StandardCharsets.UTF_8));
    }

    private static String reason(IOException problem) {
        return problem.getClass().getSimpleName().replace("Exception", "");
    }
}
