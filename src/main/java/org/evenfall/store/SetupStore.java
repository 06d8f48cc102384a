package org.evenfall.store;

import java.io.IOException;
import java.nio.charset.MalformedInputException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;

/** Setup files on disk. A save is whole or not at all. */
public final class SetupStore {

    private final SetupJson json;

    public SetupStore(SetupJson json) {
        this.json = json;
    }

    public SetupFile read(Path file) throws SetupFileException {
        try {
            return json.read(Files.readString(file), file.toString());
        } catch (NoSuchFileException missing) {
            throw new SetupFileException(file.toString(), "", "no such file");
        } catch (MalformedInputException binary) {
            throw new SetupFileException(file.toString(), "", "not a text file in UTF-8");
        } catch (IOException unreadable) {
            throw new SetupFileException(file.toString(), "", "cannot be read: " + reason(unreadable));
        }
    }

    public void save(SetupFile setup, Path file) throws IOException {
        WholeFileWriter.write(file, json.write(setup).getBytes(StandardCharsets.UTF_8));
    }

    private static String reason(IOException problem) {
        return problem.getClass().getSimpleName().replace("Exception", "");
    }
}
