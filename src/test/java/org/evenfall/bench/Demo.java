package org.evenfall.bench;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.evenfall.setup.entry.Setup;
import org.evenfall.store.InputFileException;
import org.evenfall.store.SetupJson;

/** The demo, which most is measured with. */
final class Demo {

    static final String NAME = "demo/setup.json";

    private Demo() {}

    static String text() {
        try {
            return Files.readString(Path.of("demo", "setup.json"));
        } catch (IOException missing) {
            throw new UncheckedIOException(missing);
        }
    }

    static Setup setup() {
        try {
            return new SetupJson().read(text(), NAME);
        } catch (InputFileException refused) {
            throw new IllegalStateException(refused);
        }
    }
}
