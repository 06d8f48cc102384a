package org.evenfall.bench;

import java.io.IOException;
import java.io.OutputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.jar.JarEntry;
import java.util.jar.JarOutputStream;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** How the built program and a bare one are started: the same arguments for the virtual machine, each with its archive. */
final class StartCalls {

    private static final Path TARGET = Path.of("target");
    static final Path ARCHIVE = TARGET.resolve("evenfall.jsa");
    private static final List<String> SHARED_BY_BOTH =
            List.of("java/", "javafx/", "com/sun/", "jdk/", "sun/", "@lambda-form");

    private final Path bareJar;
    private final Path bareArchive;
    private final String barePath;

    private StartCalls(Path folder) throws IOException {
        bareJar = folder.resolve("bare.jar");
        bareArchive = folder.resolve("bare.jsa");
        try (Stream<Path> libraries = Files.list(TARGET.resolve("lib"))) {
            barePath = Stream.concat(
                            Stream.of(bareJar),
                            libraries
                                    .filter(jar -> jar.getFileName().toString().startsWith("javafx-"))
                                    .sorted())
                    .map(Path::toString)
                    .collect(Collectors.joining(java.io.File.pathSeparator));
        }
    }

    /** Makes jar and archive of the bare program in a folder. */
    static StartCalls in(Path folder) throws Exception {
        if (!Files.exists(ARCHIVE)) {
            throw new NotMeasuredException("not built: sh packaging/run --version");
        }
        StartCalls calls = new StartCalls(folder);
        calls.pack();
        calls.archive(folder);
        return calls;
    }

    private void pack() throws IOException {
        try (OutputStream out = Files.newOutputStream(bareJar);
                JarOutputStream jar = new JarOutputStream(out)) {
            for (Class<?> part : List.of(BareStart.class, BareStart.Window.class, BareWindow.class)) {
                String name = part.getName().replace('.', '/') + ".class";
                jar.putNextEntry(new JarEntry(name));
                part.getClassLoader().getResourceAsStream(name).transferTo(jar);
                jar.closeEntry();
            }
        }
    }

    /** Of the classes that the program uses too, and its own. */
    private void archive(Path folder) throws Exception {
        List<String> classes = new ArrayList<>(Files.readAllLines(TARGET.resolve("evenfall.classes")).stream()
                .filter(line -> SHARED_BY_BOTH.stream().anyMatch(line::startsWith))
                .toList());
        classes.add("org/evenfall/bench/BareStart");
        classes.add("org/evenfall/bench/BareStart$Window");
        Path list = Files.write(folder.resolve("bare.classes"), classes);
        StartUpRow.wholeMs(
                folder,
                java(
                        "-XX:+UseG1GC",
                        "-Xshare:dump",
                        "-XX:SharedClassListFile=" + list,
                        "-XX:SharedArchiveFile=" + bareArchive,
                        "-cp",
                        barePath));
    }

    /** A call of the Java that runs this. */
    static List<String> java(String... arguments) {
        List<String> call = new ArrayList<>(
                List.of(Path.of(System.getProperty("java.home"), "bin", "java").toString()));
        call.addAll(List.of(arguments));
        return call;
    }

    /** A bare program, with an argument in a window. */
    List<String> bare(String... arguments) {
        List<String> call = java(
                "@packaging/java-flags",
                "-XX:SharedArchiveFile=" + bareArchive,
                "-Xlog:disable",
                "-cp",
                barePath,
                BareStart.class.getName());
        call.addAll(List.of(arguments));
        return call;
    }

    /** The program by its start script. */
    static List<String> byScript(String... arguments) {
        List<String> call = new ArrayList<>(List.of("sh", "packaging/run"));
        call.addAll(List.of(arguments));
        return call;
    }
}
