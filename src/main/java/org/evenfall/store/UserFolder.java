package org.evenfall.store;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;

/**
 * The user's folder of Evenfall: setups, cards and keys.
 *
 * @param root the folder
 */
public record UserFolder(Path root) {

    /**
     * The folder that {@code EVENFALL_HOME} names; else the usual folder of the system for settings of a program.
     * Source (from memory): XDG Base Directory Specification for {@code XDG_CONFIG_HOME}; Windows: {@code APPDATA}; macOS:
     * {@code Library/Application Support}.
     *
     * @param environment environment variables
     * @param osName system property {@code os.name}
     * @param home home folder of the user
     */
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

    /** The folder of the setups; it need not exist. */
    public Path setups() {
        return root.resolve("setups");
    }

    /** Folder of the cards that the wizard writes. */
    public Path cards() {
        return root.resolve("cards");
    }

    /** The setups of this folder, the one changed last first; empty where there are none or the folder cannot be read. */
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
