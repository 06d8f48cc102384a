package org.evenfall.store;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Optional;
import java.util.function.Predicate;

/** Puts the newest sound generation in the place of a damaged or missing file. The damaged file is kept aside. */
public final class Recovery {

    private Recovery() {}

    /** The newest generation of a file that is sound; empty without one. */
    static Optional<Path> newest(Path file, Predicate<Path> sound) {
        return Generations.of(file).stream()
                .filter(Files::isRegularFile)
                .filter(sound)
                .findFirst();
    }

    /**
     * Recovers a file; where no generation is sound, there is none afterwards.
     *
     * @throws IOException when a file cannot be moved or written
     */
    static void recover(Path file, Predicate<Path> sound) throws IOException {
        Optional<Path> generation = newest(file, sound);
        Generations.putAside(file);
        if (generation.isPresent()) {
            WholeFileWriter.write(file, Files.readAllBytes(generation.get()));
        }
    }
}
