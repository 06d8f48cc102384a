package org.evenfall.sign;

import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.time.Instant;

/** A process that makes the first key of several folders, each at the same moment as its twin. */
final class FirstKeys {

    private FirstKeys() {}

    /**
     * Arguments: folder, number of tries, own name, name of the twin. Writes the code of each key to the file
     * {@code try-name}.
     */
    public static void main(String[] args) throws Exception {
        Path base = Path.of(args[0]);
        for (int i = 0; i < Integer.parseInt(args[1]); i++) {
            Files.createFile(base.resolve("ready-" + i + args[2]));
            while (!Files.exists(base.resolve("ready-" + i + args[3]))) {
                Thread.onSpinWait();
            }
            String code = ring(base.resolve("home" + i))
                    .signing("A. Marlow", "", Instant.EPOCH)
                    .code();
            Files.writeString(base.resolve(i + args[2]), code);
        }
    }

    /** Keys in a folder, each file written whole or not at all. */
    static KeyRing ring(Path folder) {
        return new KeyRing(folder, (file, bytes) -> {
            Files.createDirectories(file.getParent());
            Path part = Files.createTempFile(file.getParent(), "part", ".tmp");
            Files.write(part, bytes);
            Files.move(part, file, StandardCopyOption.ATOMIC_MOVE, StandardCopyOption.REPLACE_EXISTING);
        });
    }
}
