package org.evenfall.fuzz;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.Map;
import org.evenfall.sign.KeyRing;

/** The file of known keys: adding a key and removing it changes nothing for the others. */
final class KeysTarget {

    private static final String CODE = "QQQQ WWWW EEEE RRRR";

    private static final Path FOLDER = folder();

    private KeysTarget() {}

    private static Path folder() {
        try {
            Path folder = Files.createTempDirectory("evenfall-fuzz");
            folder.toFile().deleteOnExit();
            for (String name : new String[] {"known-keys.txt", "signing-key.lock"}) {
                folder.resolve(name).toFile().deleteOnExit();
            }
            return folder;
        } catch (IOException noFolder) {
            throw new IllegalStateException(noFolder);
        }
    }

    static void take(byte[] input) throws IOException {
        Path file = Files.write(FOLDER.resolve("known-keys.txt"), input);
        KeyRing keys = new KeyRing(FOLDER, Files::write);
        Map<String, String> before = keys.known();

        keys.remember(CODE, "Saltreed\tgroup\n");
        Map<String, String> with = new LinkedHashMap<>(before);
        with.put(CODE, "Saltreed group");
        Targets.require(keys.known().equals(with), "known after adding: " + keys.known());

        keys.forget(CODE);
        with.remove(CODE);
        Targets.require(keys.known().equals(with), "known after removing: " + keys.known());

        byte[] kept = Files.readAllBytes(file);
        keys.forget(CODE);
        Targets.require(Arrays.equals(kept, Files.readAllBytes(file)), "written without need");
    }
}
