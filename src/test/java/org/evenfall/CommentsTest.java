package org.evenfall;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Stream;
import javax.tools.Diagnostic;
import javax.tools.DiagnosticCollector;
import javax.tools.JavaCompiler;
import javax.tools.JavaFileObject;
import javax.tools.StandardJavaFileManager;
import javax.tools.ToolProvider;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Every public type, method and constant has a comment that says what it gives. Checked by the JDK's own doclint. */
class CommentsTest {

    private static final Path MAIN = Path.of("src", "main", "java");

    @TempDir
    private Path classes;

    @Test
    void everyPublicThingHasAComment() throws Exception {
        assertThat(withoutComment()).isEmpty();
    }

    /** A test that cannot fail is worth nothing: a source without comments is found, place by place. */
    @Test
    void whatHasNoneIsFound() throws Exception {
        Path source = Files.writeString(
                classes.resolve("Bare.java"),
                "public class Bare {\n  public int x;\n  public Bare() {}\n  public void go() {}\n}\n");
        assertThat(withoutComment(List.of(source))).hasSize(4);
    }

    private Set<String> withoutComment() throws Exception {
        try (Stream<Path> files = Files.walk(MAIN)) {
            return withoutComment(
                    files.filter(path -> path.toString().endsWith(".java")).toList());
        }
    }

    /** File and line of each public thing without a comment. */
    private Set<String> withoutComment(List<Path> sources) throws Exception {
        JavaCompiler compiler = ToolProvider.getSystemJavaCompiler();
        DiagnosticCollector<JavaFileObject> found = new DiagnosticCollector<>();
        try (StandardJavaFileManager files =
                compiler.getStandardFileManager(found, Locale.ENGLISH, StandardCharsets.UTF_8)) {
            // the classes made from annotations are taken from the class path, which holds all of main compiled
            List<String> options = List.of(
                    "-Xdoclint:missing/public",
                    "-proc:none",
                    "--release",
                    "17",
                    "-Xmaxwarns",
                    "10000",
                    "-implicit:none",
                    "-cp",
                    System.getProperty("java.class.path"),
                    "-d",
                    classes.toString());
            compiler.getTask(null, files, found, options, null, files.getJavaFileObjectsFromPaths(sources))
                    .call();
        }
        assertThat(found.getDiagnostics()).noneMatch(one -> one.getKind() == Diagnostic.Kind.ERROR);
        Set<String> places = new TreeSet<>();
        for (Diagnostic<? extends JavaFileObject> one : found.getDiagnostics()) {
            String message = one.getMessage(Locale.ENGLISH);
            if (one.getSource() != null && message.contains("no comment")) {
                places.add(one.getSource().getName() + ":" + one.getLineNumber() + " " + message);
            }
        }
        return places;
    }
}
