package org.evenfall.faults;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Set;

/**
 * Work on files that is tried with every fault.
 *
 * @param name for the table of problems
 * @param prepare makes the folder as it is before
 * @param begin opens what is open before the work, in a folder of a faulty file system
 * @param wanted files that the work writes, by their place in the folder
 */
record FaultScenario(String name, Prepare prepare, Begin begin, Set<String> wanted) {

    /** Makes the folder. */
    @FunctionalInterface
    interface Prepare {
        void in(Path folder) throws Exception;
    }

    /** Opens what is open before. */
    @FunctionalInterface
    interface Begin {
        Work in(Path folder) throws Exception;
    }

    /** The work; can be tried again. */
    interface Work extends AutoCloseable {
        /** Throws when it is not done. */
        void run() throws Exception;

        @Override
        default void close() throws Exception {
            // most keep nothing open
        }
    }

    /** Without anything open before. */
    static FaultScenario of(String name, Prepare prepare, Prepare work, String... wanted) {
        return new FaultScenario(name, prepare, folder -> () -> work.in(folder), Set.of(wanted));
    }

    /** Makes it in a folder of its own. */
    Path prepared(Path folder) throws Exception {
        prepare.in(FaultyFileSystem.path(Files.createDirectories(folder), new Faults()));
        return folder;
    }
}
