package org.evenfall;

import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;

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
                System.getProperty("surefire.test.class.path", System.getProperty("java.class.path"))));
        command.addAll(options);
        command.add(main.getName());
        command.addAll(List.of(arguments));
        return new ProcessBuilder(command).redirectErrorStream(true);
    }
}
