package org.evenfall;

import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.util.List;
import java.util.Properties;
import java.util.concurrent.TimeUnit;

/**
 * Makes the archive of loaded classes, with which later starts take half the time. It fits one Java and one place only; the
 * stamp next to it says which.
 */
public final class ClassArchive {

    /** Names the archive that the virtual machine uses where no script looks after it. */
    private static final String OWN = "evenfall.archive";

    /** Assumption: by then the window is shown and the person reads it, s. */
    private static final long LATER_S = 8;

    private ClassArchive() {}

    /**
     * Makes the archive {@code args[0]} and writes {@code args[1]} next to it, without that what it fits. Exit code 0 when it
     * was made, else 1.
     */
    public static void main(String[] args) throws IOException {
        boolean made = args.length > 0 && make(Path.of(args[0]), args.length > 1 ? args[1] : fits());
        System.exit(made ? 0 : 1);
    }

    /** Makes the archive of the installed program anew in the background, where it is missing or fits no longer. */
    static void renewLater() {
        String archive = System.getProperty(OWN, "");
        if (!archive.isEmpty()) {
            Thread thread = new Thread(() -> renew(Path.of(archive)), "evenfall-archive");
            thread.setDaemon(true);
            thread.start();
        }
    }

    private static void renew(Path archive) {
        try {
            TimeUnit.SECONDS.sleep(LATER_S);
            String fits = fits();
            if (!isFresh(archive, fits)
                    && Files.isWritable(archive.toAbsolutePath().getParent())) {
                make(archive, fits);
            }
        } catch (IOException cannot) {
            // it only starts slower
        } catch (InterruptedException ended) {
            Thread.currentThread().interrupt();
        }
    }

    private static boolean isFresh(Path archive, String fits) throws IOException {
        Path stamp = stamp(archive);
        return Files.exists(archive)
                && Files.exists(stamp)
                && Files.getLastModifiedTime(archive).compareTo(Files.getLastModifiedTime(jar())) >= 0
                && Files.readString(stamp).strip().equals(fits);
    }

    /** The program and the Java that an archive made now fits. */
    private static String fits() throws IOException {
        Path java = Path.of(System.getProperty("java.home"));
        Properties release = new Properties();
        try (InputStream in = Files.newInputStream(java.resolve("release"))) {
            release.load(in);
        }
        String version = release.getProperty("JAVA_RUNTIME_VERSION", release.getProperty("JAVA_VERSION", ""))
                .replace("\"", "");
        return String.join(" ", List.of(jar().toString(), java.toString(), version));
    }

    private static Path jar() {
        // the program is on the class path alone, or the last on it
        String places = System.getProperty("java.class.path");
        return Path.of(places.substring(places.lastIndexOf(java.io.File.pathSeparator) + 1))
                .toAbsolutePath();
    }

    private static Path stamp(Path archive) {
        return archive.resolveSibling(archive.getFileName() + ".stamp");
    }

    private static boolean make(Path archive, String stamp) {
        Path part = archive.resolveSibling(
                archive.getFileName() + "." + ProcessHandle.current().pid());
        try {
            Process dump = new ProcessBuilder(
                            Path.of(System.getProperty("java.home"), "bin", "java")
                                    .toString(),
                            "-XX:+UseG1GC",
                            "-Xshare:dump",
                            "-Xlog:disable",
                            "-XX:SharedClassListFile=" + jar().resolveSibling("evenfall.classes"),
                            "-XX:SharedArchiveFile=" + part,
                            "-cp",
                            System.getProperty("java.class.path"))
                    .redirectErrorStream(true)
                    .redirectOutput(ProcessBuilder.Redirect.DISCARD)
                    .start();
            if (dump.waitFor() != 0 || !Files.exists(part)) {
                return false;
            }
            Files.move(part, archive, StandardCopyOption.REPLACE_EXISTING);
            Files.writeString(stamp(archive), stamp + "\n");
            return true;
        } catch (IOException cannot) {
            return false;
        } catch (InterruptedException ended) {
            Thread.currentThread().interrupt();
            return false;
        } finally {
            try {
                Files.deleteIfExists(part);
            } catch (IOException stays) {
                // the next one made has another name
            }
        }
    }
}
