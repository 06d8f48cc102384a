package org.evenfall;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.PosixFilePermissions;
import org.junit.jupiter.api.Assumptions;

/** Tests about permissions prove nothing for root, who may do everything. {@code .ci/ordinary} runs them for root. */
public final class OrdinaryUser {

    private OrdinaryUser() {}

    /** Leaves the test out for root; with {@code -Devenfall.ordinary=true} that is a failure. */
    public static void required(Path folder) throws IOException {
        Path file = mode(Files.createFile(folder.resolve("user")), "r--r--r--");
        boolean ordinary = !Files.isWritable(file);
        Files.delete(file);
        if (Boolean.getBoolean("evenfall.ordinary")) {
            assertThat(ordinary).as("an ordinary user").isTrue();
        }
        Assumptions.assumeTrue(ordinary, "root may do everything");
    }

    /** Gives a file these permissions. */
    public static Path mode(Path file, String permissions) throws IOException {
        return Files.setPosixFilePermissions(file, PosixFilePermissions.fromString(permissions));
    }
}
