package org.evenfall.store;

import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.json.JsonMapper;
import java.io.IOException;
import java.nio.file.Path;

/** The file of the preferences. What cannot be read or written counts for nothing: the window opens all the same. */
public final class PreferencesFile {

    private static final ObjectMapper JSON = JsonMapper.builder().build();

    private final Path file;

    /** @param user folder of the person */
    public PreferencesFile(UserFolder user) {
        this.file = user.root().resolve("preferences.json");
    }

    /** The preferences kept, else those of the first time. */
    public Preferences read() {
        try {
            Preferences kept = JSON.readValue(WholeFileReader.read(file), Preferences.class);
            return kept == null ? Preferences.FIRST : kept;
        } catch (IOException unreadable) {
            return Preferences.FIRST;
        }
    }

    /** Keeps them; false when they could not be written. */
    public boolean keep(Preferences preferences) {
        try {
            WholeFileWriter.write(file, JSON.writerWithDefaultPrettyPrinter().writeValueAsBytes(preferences));
            return true;
        } catch (IOException unwritable) {
            return false;
        }
    }
}
