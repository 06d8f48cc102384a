package org.evenfall;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.evenfall.wizard.StartTraining;

/**
 * Writes the list of the classes that the program loads, next to its jar; the archive of loaded classes is made from it. Run
 * by the build with the jar, the test classes and a toolkit without a display on the class path.
 */
public final class ClassList {

    private ClassList() {}

    /** Arguments: the list to write, the folder of the test classes, then arguments for the virtual machine. */
    public static void main(String[] args) throws Exception {
        Path list = Path.of(args[0]);
        Path all = list.resolveSibling(list.getFileName() + ".all");
        List<String> call = new ArrayList<>(
                List.of(Path.of(System.getProperty("java.home"), "bin", "java").toString()));
        call.addAll(List.of(args).subList(2, args.length));
        call.addAll(List.of(
                "-XX:DumpLoadedClassList=" + all,
                "-cp",
                System.getProperty("java.class.path"),
                StartTraining.class.getName()));
        Path log = list.resolveSibling(list.getFileName() + ".log");
        Process training = new ProcessBuilder(call)
                .redirectErrorStream(true)
                .redirectOutput(log.toFile())
                .start();
        if (training.waitFor() != 0) {
            throw new IOException("the training failed, see " + log);
        }
        List<String> without = notShipped(Path.of(args[1]));
        Files.write(
                list,
                Files.readAllLines(all, StandardCharsets.UTF_8).stream()
                        .filter(line -> without.stream().noneMatch(line::contains))
                        .toList(),
                StandardCharsets.UTF_8);
        Files.delete(all);
        Files.delete(log);
    }

    /** Parts of lines that are of no use: test classes, the toolkit without a display, and classes that an archive refuses. */
    private static List<String> notShipped(Path testClasses) throws IOException {
        List<String> parts = new ArrayList<>(List.of(
                "/monocle/",
                // signed, and the making of an archive with a lambda of one ends with a fault of the virtual machine
                "org/bouncycastle/",
                // lambdas of interfaces of an old format, which an archive takes only while nothing has linked them
                ")Lpicocli/"));
        try (Stream<Path> files = Files.walk(testClasses)) {
            files.filter(file -> file.toString().endsWith(".class"))
                    .map(file -> testClasses.relativize(file).toString().replace('\\', '/'))
                    .map(name -> name.substring(0, name.length() - ".class".length()))
                    // those nested in another begin with its name
                    .filter(name -> !name.contains("$"))
                    .forEach(parts::add);
        }
        return parts;
    }
}
