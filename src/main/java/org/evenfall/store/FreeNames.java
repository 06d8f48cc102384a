package org.evenfall.store;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.function.Predicate;

/** Names that no file has yet: name.pdf, name-2.pdf, name-3.pdf and so on. */
public final class FreeNames {

    /** Assumption: nobody has as many. Where nothing can be looked up every name seems taken, and no file can be written. */
    private static final int MOST = 10_000;

    private FreeNames() {}

    /**
     * The first file of a folder that is free for certain.
     *
     * @param ending ending with its dot
     */
    public static Path in(Path folder, String name, String ending) {
        return folder.resolve(first(name, ending, candidate -> !Files.notExists(folder.resolve(candidate))));
    }

    /**
     * The first name that is not taken.
     *
     * @param ending ending with its dot
     * @param taken whether a name is taken
     */
    public static String first(String name, String ending, Predicate<String> taken) {
        String candidate = name + ending;
        for (int i = 2; i <= MOST && taken.test(candidate); i++) {
            candidate = name + "-" + i + ending;
        }
        return candidate;
    }
}
