package org.evenfall.store;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
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
        return json.read(InputText.read(file, file.toString()), file.toString());
    }

    /**
     * What a file has.
     *
     * @param newer whether a newer program wrote it
     * @param text its whole text
     */
    record Read(Setup setup, boolean newer, String text) {

        /** The bytes of the file, which are UTF-8. */
        byte[] bytes() {
            return text.getBytes(StandardCharsets.UTF_8);
        }
    }

    /**
     * The setup of a file, also of a newer program's as far as it is understood here.
     *
     * @throws InputFileException when the file is not there, cannot be read, or is no setup
     */
    Read readAnyVersion(Path file) throws InputFileException {
        String text = InputText.read(file, file.toString());
        SetupJson.AnyVersion read = json.readAnyVersion(text, file.toString());
        return new Read(read.setup(), read.version() > SetupJson.VERSION, text);
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
        byte[] bytes = WholeFileReader.read(file, InputText.MOST_BYTES);
        try {
            return Optional.of(json.read(InputText.decode(bytes, file.toString()), file.toString()));
        } catch (InputFileException damaged) {
            return Optional.empty();
        }
    }

    /** @throws InputFileException when bytes are no setup that can be opened */
    void check(byte[] bytes, Path file) throws InputFileException {
        json.read(InputText.decode(bytes, file.toString()), file.toString());
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
}
