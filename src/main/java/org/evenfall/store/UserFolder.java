package org.evenfall.store;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;

/**
 * The folder in which Evenfall keeps the person's setups, kept machines and signing key.
 *
 * @param root the folder
 */
public record UserFolder(Path root) {

    /** Where the system wants such things: environment and home come from the caller. */
    public static UserFolder of(Map<String, String> environment, String osName, Path home) {
        String own = environment.get("EVENFALL_HOME");
        if (own != null && !own.isBlank()) {
            return new UserFolder(Path.of(own));
        }
        if (osName.startsWith("Windows") && environment.get("APPDATA") != null) {
            return new UserFolder(Path.of(environment.get("APPDATA"), "Evenfall"));
        }
        if (osName.startsWith("Mac")) {
            return new UserFolder(
                    home.resolve("Library").resolve("Application Support").resolve("Evenfall"));
        }
        String config = environment.get("XDG_CONFIG_HOME");
        return new UserFolder(
                (config == null || config.isBlank() ? home.resolve(".config") : Path.of(config)).resolve("evenfall"));
    }

    public Path setups() {
        return root.resolve("setups");
    }

    /** Folder of the cards that the wizard writes. */
    public Path cards() {
        return root.resolve("cards");
    }

    /** Setups kept here, the newest first. */
    public List<Path> recent() {
        if (!Files.isDirectory(setups())) {
            return List.of();
        }
        try (Stream<Path> files = Files.list(setups())) {
            return files.filter(file -> file.toString().endsWith(".json"))
                    .sorted(Comparator.comparingLong(UserFolder::changed).reversed())
                    .toList();
        } catch (IOException unreadable) {
            return List.of();
        }
    }

    private static long changed(Path file) {
        try {
            return Files.getLastModifiedTime(file).toMillis();
        } catch (IOException gone) {
            return 0;
        }
    }
}
