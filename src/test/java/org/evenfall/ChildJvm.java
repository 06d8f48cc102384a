package org.evenfall;

import java.io.File;
import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.stream.Collectors;

/** Starts a main method of the test class path in a process of its own. */
public final class ChildJvm {

    private ChildJvm() {}

    /** Standard error goes to standard output. */
    public static Process start(Class<?> main, String... arguments) throws IOException {
        return builder(List.of(), main, arguments).start();
    }

    /** The same, not started yet, with further options of the Java virtual machine. */
    public static ProcessBuilder builder(List<String> options, Class<?> main, String... arguments) {
        List<String> command = new ArrayList<>(List.of(
                Path.of(System.getProperty("java.home"), "bin", "java").toString(),
                "-Xmx256m",
                "-XX:TieredStopAtLevel=1",
                "-cp",
                classPath()));
        command.addAll(options);
        command.add(main.getName());
        command.addAll(List.of(arguments));
        return new ProcessBuilder(command).redirectErrorStream(true);
    }

    /** With whole paths, so that the process may run in another folder. */
    private static String classPath() {
        String path = System.getProperty("surefire.test.class.path", System.getProperty("java.class.path"));
        return Arrays.stream(path.split(File.pathSeparator))
                .map(entry -> new File(entry).getAbsolutePath())
                .collect(Collectors.joining(File.pathSeparator));
    }
}
