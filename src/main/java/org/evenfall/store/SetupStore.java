package org.evenfall.store;

import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.StandardCharsets;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.util.Optional;
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
        return json.read(text(bytes(file), file), file.toString());
    }

    /**
     * What a file has.
     *
     * @param newer whether a newer program wrote it
     */
    @SuppressWarnings("ArrayRecordComponent")
    record Read(Setup setup, boolean newer, byte[] bytes) {}

    /**
     * The setup of a file, also of a newer program's as far as it is understood here.
     *
     * @throws InputFileException when the file is not there, cannot be read, or is no setup
     */
    Read readAnyVersion(Path file) throws InputFileException {
        byte[] bytes = bytes(file);
        SetupJson.AnyVersion read = json.readAnyVersion(text(bytes, file), file.toString());
        return new Read(read.setup(), read.version() > SetupJson.VERSION, bytes);
    }

    /** Whether a file can be read as a setup of today. */
    boolean isSound(Path file) throws IOException {
        return readIfSound(file).isPresent();
    }

    /**
     * The setup of a file, where a damaged one counts for nothing.
     *
     * @return empty when it is no setup
     * @throws IOException when it is not there or cannot be read
     */
    Optional<Setup> readIfSound(Path file) throws IOException {
        byte[] bytes = WholeFileReader.read(file);
        try {
            return Optional.of(json.read(text(bytes, file), file.toString()));
        } catch (InputFileException damaged) {
            return Optional.empty();
        }
    }

    private static byte[] bytes(Path file) throws InputFileException {
        try {
            return WholeFileReader.read(file);
        } catch (NoSuchFileException missing) {
            throw new InputFileException(file.toString(), "", "no such file");
        } catch (IOException unreadable) {
            throw new InputFileException(file.toString(), "", "cannot be read: " + reason(unreadable));
        }
    }

    private static String text(byte[] bytes, Path file) throws InputFileException {
        try {
            return StandardCharsets.UTF_8
                    .newDecoder()
                    .decode(ByteBuffer.wrap(bytes))
                    .toString();
        } catch (CharacterCodingException binary) {
            throw new InputFileException(file.toString(), "", "not a text file in UTF-8");
        }
    }

    /** The bytes of a setup file. */
    byte[] bytes(Setup setup) {
        return json.write(setup).getBytes(StandardCharsets.UTF_8);
    }

    /**
     * Writes a setup in place of what the file had.
     *
     * @throws IOException when it cannot be written; the file is then as it was
     */
    public void save(Setup setup, Path file) throws IOException {
        WholeFileWriter.write(file, bytes(setup));
    }

    private static String reason(IOException problem) {
        return problem.getClass().getSimpleName().replace("Exception", "");
    }
}
