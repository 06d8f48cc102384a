package org.evenfall;

import java.io.IOException;
import java.net.URISyntaxException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;

/** Makes the archive of loaded classes, with which later starts take half the time. */
public final class ClassArchive {

    private ClassArchive() {}

    /** Makes the archive {@code args[0]} and writes {@code args[1]} next to it. Exit code 0 when it was made, else 1. */
    public static void main(String[] args) {
        System.exit(args.length == 2 && make(Path.of(args[0]), args[1]) ? 0 : 1);
    }

    private static boolean make(Path archive, String stamp) {
        Path part = archive.resolveSibling(
                archive.getFileName() + "." + ProcessHandle.current().pid());
        try {
            Path jar = Path.of(ClassArchive.class
                    .getProtectionDomain()
                    .getCodeSource()
                    .getLocation()
                    .toURI());
            Process dump = new ProcessBuilder(
                            Path.of(System.getProperty("java.home"), "bin", "java")
                                    .toString(),
                            "-XX:+UseG1GC",
                            "-Xshare:dump",
                            "-Xlog:disable",
                            "-XX:SharedClassListFile=" + jar.resolveSibling("evenfall.classes"),
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
            Files.writeString(archive.resolveSibling(archive.getFileName() + ".stamp"), stamp + "\n");
            return true;
        } catch (IOException | URISyntaxException | InterruptedException | RuntimeException cannot) {
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
