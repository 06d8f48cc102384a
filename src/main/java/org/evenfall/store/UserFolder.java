package org.evenfall.store;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.regex.Pattern;
import java.util.stream.Stream;

/**
 * Where Evenfall keeps its files: what belongs to the person in the folder for settings, what belongs to the farm in a
 * folder that everybody sees, with one folder for each season, one for machines, tested products and cards.
 *
 * @param root folder of keys and preferences
 * @param farm folder of the farm
 */
public record UserFolder(Path root, Path farm) {

    private static final Pattern SEASON = Pattern.compile("\\d{4}");
    private static final String MACHINES = "machines";
    private static final String TESTED_PRODUCTS = "tested-products";
    private static final String CARDS = "cards";

    /** Where setups were kept before there were folders for seasons; they are still found there. */
    private static final String EARLIER_SETUPS = "setups";

    /** One folder for both. */
    public UserFolder(Path root) {
        this(root, root);
    }

    /**
     * The folder that {@code EVENFALL_HOME} names; else the usual folder of the system for settings of a program, and
     * {@code Evenfall} in the home folder for the farm. Source (from memory): XDG Base Directory Specification for {@code
     * XDG_CONFIG_HOME}; Windows: {@code APPDATA}; macOS: {@code Library/Application Support}.
     *
     * @param environment environment variables
     * @param osName system property {@code os.name}
     * @param home home folder of the user
     */
    public static UserFolder of(Map<String, String> environment, String osName, Path home) {
        String own = environment.get("EVENFALL_HOME");
        return own != null && !own.isBlank()
                ? new UserFolder(Path.of(own))
                : new UserFolder(settings(environment, osName, home), home.resolve("Evenfall"));
    }

    private static Path settings(Map<String, String> environment, String osName, Path home) {
        if (osName.startsWith("Windows") && environment.get("APPDATA") != null) {
            return Path.of(environment.get("APPDATA"), "Evenfall");
        }
        if (osName.startsWith("Mac")) {
            return home.resolve("Library").resolve("Application Support").resolve("Evenfall");
        }
        String config = environment.get("XDG_CONFIG_HOME");
        return (config == null || config.isBlank() ? home.resolve(".config") : Path.of(config)).resolve("evenfall");
    }

    /** The folder of the setups of a season; it need not exist. */
    public Path season(int year) {
        return farm.resolve(Integer.toString(year));
    }

    /** Folder of the machines. */
    public Path machines() {
        return farm.resolve(MACHINES);
    }

    /** Folder of the tested products of each machine. */
    public Path testedProducts() {
        return farm.resolve(TESTED_PRODUCTS);
    }

    /** Folder of the paper sheets that the wizard writes. */
    public Path sheets() {
        return farm.resolve("sheets");
    }

    /** Folder of the records of seasons that the wizard writes. */
    public Path records() {
        return farm.resolve("records");
    }

    /** Folder of the cards that the wizard writes. */
    public Path cards() {
        return farm.resolve(CARDS);
    }

    /** The setups of all seasons, the one changed last first; empty where there are none or nothing can be read. */
    public List<Path> recent() {
        return Stream.concat(seasons().stream(), Stream.of(root.resolve(EARLIER_SETUPS)))
                .distinct()
                .flatMap(folder -> jsonFiles(folder).stream())
                .sorted(Comparator.comparingLong(UserFolder::changed).reversed())
                .toList();
    }

    /** Whether a file is in the folder of a season. */
    public boolean isInSeason(Path file) {
        Path folder = file.toAbsolutePath().normalize().getParent();
        return folder != null
                && SEASON.matcher(String.valueOf(folder.getFileName())).matches()
                && farm.toAbsolutePath().normalize().equals(folder.getParent());
    }

    /** The folders of the seasons, the last season first. */
    public List<Path> seasons() {
        if (!Files.isDirectory(farm)) {
            return List.of();
        }
        try (Stream<Path> folders = Files.list(farm)) {
            return folders.filter(Files::isDirectory)
                    .filter(folder ->
                            SEASON.matcher(folder.getFileName().toString()).matches())
                    .sorted(Comparator.reverseOrder())
                    .toList();
        } catch (IOException | UncheckedIOException unreadable) {
            return List.of();
        }
    }

    /** The setups of a season's folder, by name. */
    public List<Path> setups(Path season) {
        return jsonFiles(season);
    }

    /** The JSON files of a folder; empty where it is not there or cannot be read. */
    static List<Path> jsonFiles(Path folder) {
        try {
            return allJsonFiles(folder);
        } catch (IOException unreadable) {
            return List.of();
        }
    }

    /**
     * The JSON files of a folder; none where it is not there.
     *
     * @throws IOException when it cannot be read
     */
    static List<Path> allJsonFiles(Path folder) throws IOException {
        try (Stream<Path> files = Files.list(folder)) {
            return files.filter(file -> file.toString().endsWith(".json"))
                    .sorted()
                    .toList();
        } catch (NoSuchFileException none) {
            return List.of();
        } catch (UncheckedIOException unreadable) {
            throw unreadable.getCause();
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
