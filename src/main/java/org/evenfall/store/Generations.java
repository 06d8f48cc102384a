package org.evenfall.store;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.FileTime;
import java.util.List;
import java.util.stream.Stream;

/**
 * Two earlier generations of a file, in the folder {@code earlier} next to it: number 1 is what the file was before it was
 * written last; number 2 what it was before that, of a setup before it was first written after it was opened.
 */
final class Generations {

    private static final String FOLDER = "earlier";
    private static final String ENDING = ".json";

    private Generations() {}

    /** The file of a generation, 1 or 2; it need not exist. */
    static Path of(Path file, int number) {
        return named(file, Integer.toString(number));
    }

    /** Both generations, the newer one first; they need not exist. */
    static List<Path> of(Path file) {
        return List.of(of(file, 1), of(file, 2));
    }

    private static Path named(Path file, String what) {
        String name = String.valueOf(file.getFileName());
        String stem = name.endsWith(ENDING) ? name.substring(0, name.length() - ENDING.length()) : name;
        return file.toAbsolutePath().resolveSibling(FOLDER).resolve(stem + "." + what + ENDING);
    }

    /**
     * Keeps what a file is, before it is written.
     *
     * @param now its bytes
     * @param first whether it is written for the first time since it was opened
     * @throws IOException when it cannot be kept
     */
    static void keep(Path file, byte[] now, boolean first) throws IOException {
        FileTime written = Files.getLastModifiedTime(file);
        if (first) {
            write(of(file, 2), now, written);
        }
        write(of(file, 1), now, written);
    }

    /**
     * Keeps what a file is as the newer generation and what that was as the older one, before it is written.
     *
     * @param now its bytes
     * @throws IOException when it cannot be kept
     */
    static void rotate(Path file, byte[] now) throws IOException {
        Path newer = of(file, 1);
        if (Files.exists(newer)) {
            write(of(file, 2), WholeFileReader.read(newer), Files.getLastModifiedTime(newer));
        }
        write(newer, now, Files.getLastModifiedTime(file));
    }

    /** A generation is as old as what is in it. */
    private static void write(Path generation, byte[] bytes, FileTime written) throws IOException {
        WholeFileWriter.write(generation, bytes);
        Files.setLastModifiedTime(generation, written);
    }

    /** Moves a damaged file aside, into the folder of the generations. */
    static void putAside(Path file) throws IOException {
        Files.move(file, aside(file));
    }

    /**
     * Keeps a copy of a damaged file, in the folder of the generations.
     *
     * @param damaged its bytes
     */
    static void keepAside(Path file, byte[] damaged) throws IOException {
        WholeFileWriter.write(aside(file), damaged);
    }

    private static Path aside(Path file) throws IOException {
        Path folder = Files.createDirectories(file.toAbsolutePath().resolveSibling(FOLDER));
        String stem = String.valueOf(named(file, "damaged").getFileName());
        return FreeNames.in(folder, stem.substring(0, stem.length() - ENDING.length()), ENDING);
    }

    /** Files of which there are generations and that are gone themselves. */
    static List<Path> orphans(Path folder) {
        return UserFolder.jsonFiles(folder.resolve(FOLDER)).stream()
                .map(file -> String.valueOf(file.getFileName()))
                .flatMap(name -> name.endsWith(".1" + ENDING)
                        ? Stream.of(folder.resolve(name.substring(0, name.length() - 2 - ENDING.length()) + ENDING))
                        : Stream.empty())
                .filter(file -> !Files.exists(file))
                .toList();
    }
}
