package org.evenfall.store;

import java.io.IOException;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.util.Optional;

/** Puts the newest sound generation in the place of a damaged or missing file. The damaged file is kept aside. */
public final class Recovery {

    private Recovery() {}

    /** Whether a file is undamaged. */
    @FunctionalInterface
    interface Sound {
        /** @throws IOException when it is not there or cannot be read, which proves no damage */
        boolean test(Path file) throws IOException;
    }

    /**
     * The newest generation of a file that is sound; empty without one.
     *
     * @throws IOException when one cannot be read
     */
    static Optional<Path> newest(Path file, Sound sound) throws IOException {
        for (Path generation : Generations.of(file)) {
            try {
                if (sound.test(generation)) {
                    return Optional.of(generation);
                }
            } catch (NoSuchFileException none) {
                // an older one may be there
            }
        }
        return Optional.empty();
    }

    /**
     * Recovers a file; where no generation is sound, there is none afterwards.
     *
     * @throws IOException when a file cannot be read, moved or written
     */
    static void recover(Path file, Sound sound) throws IOException {
        Optional<Path> generation = newest(file, sound);
        if (generation.isEmpty()) {
            Generations.putAside(file);
            return;
        }
        byte[] wanted = WholeFileReader.read(generation.get());
        try {
            Generations.keepAside(file, WholeFileReader.read(file));
        } catch (NoSuchFileException missing) {
            // there is nothing to keep
        }
        // over the damaged file: at no time there is none
        WholeFileWriter.write(file, wanted);
    }
}
