package org.evenfall.wizard;

import java.io.InputStream;
import java.io.OutputStream;
import java.io.PrintWriter;
import java.nio.file.FileVisitResult;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.SimpleFileVisitor;
import java.nio.file.attribute.BasicFileAttributes;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.ResourceBundle;
import java.util.jar.JarEntry;
import java.util.jar.JarFile;
import javafx.application.Application;
import org.evenfall.Main;
import org.evenfall.command.CommandContext;
import org.evenfall.command.CommandFace;
import org.evenfall.finding.Sentences;
import org.evenfall.store.SetupJson;
import org.evenfall.store.UserFolder;

/**
 * Uses the program as a person does, once, without a display, so that the virtual machine can list the classes that are
 * loaded: the build runs it, and the list is what the archive of loaded classes is made from. What draws a window on a real
 * display is not used here, so that it is only loaded.
 */
public final class StartTraining {

    /** Classes that draw the window on the system that builds. */
    private static final List<String> DRAWING =
            List.of("com/sun/glass/ui/gtk/", "com/sun/glass/ui/win/", "com/sun/glass/ui/mac/", "com/sun/prism/es2/");

    private StartTraining() {}

    /** Exit code 0 when all was done. */
    public static void main(String[] args) throws Exception {
        Path folder = Files.createTempDirectory("evenfall-training");
        try {
            String demo = Path.of("demo", "setup.json").toString();
            String card = folder.resolve("card.pdf").toString();
            run(folder, "--version");
            run(folder, "--help");
            run(folder, "assess", demo);
            run(folder, "assess", demo, "--json");
            run(folder, "match", demo);
            run(folder, "advise", demo);
            run(folder, "card", demo, "--out", card);
            run(folder, "verify", card);
            loadDrawing();
            WindowWalk.main(new String[] {folder.toString()});
        } finally {
            remove(folder);
        }
        // as a person calls it; it ends the process
        Main.main(new String[] {"--version"});
    }

    private static void run(Path folder, String... args) {
        ResourceBundle.Control own = ResourceBundle.Control.getNoFallbackControl(ResourceBundle.Control.FORMAT_DEFAULT);
        Locale locale = Locale.getDefault();
        CommandContext context = new CommandContext(
                InputStream.nullInputStream(),
                new PrintWriter(OutputStream.nullOutputStream()),
                new PrintWriter(System.err, true),
                Path.of(""),
                new UserFolder(folder.resolve("home")),
                Stage0.CLOCK,
                () -> new Sentences(ResourceBundle.getBundle("org.evenfall.words", locale, own), locale),
                new SetupJson(),
                setup -> Optional.empty());
        if (CommandFace.run(context, List.of(args)) != 0) {
            throw new IllegalStateException(String.join(" ", args));
        }
    }

    private static void loadDrawing() throws Exception {
        Path jar = Path.of(Application.class
                .getProtectionDomain()
                .getCodeSource()
                .getLocation()
                .toURI());
        try (JarFile file = new JarFile(jar.toFile())) {
            for (JarEntry entry : (Iterable<JarEntry>) file.stream()::iterator) {
                String name = entry.getName();
                if (name.endsWith(".class") && DRAWING.stream().anyMatch(name::startsWith)) {
                    String binary =
                            name.substring(0, name.length() - ".class".length()).replace('/', '.');
                    Class.forName(binary, false, StartTraining.class.getClassLoader());
                }
            }
        }
    }

    private static void remove(Path folder) throws Exception {
        Files.walkFileTree(folder, new SimpleFileVisitor<>() {
            @Override
            public FileVisitResult visitFile(Path file, BasicFileAttributes attributes) throws java.io.IOException {
                Files.delete(file);
                return FileVisitResult.CONTINUE;
            }

            @Override
            public FileVisitResult postVisitDirectory(Path emptied, java.io.IOException problem)
                    throws java.io.IOException {
                Files.delete(emptied);
                return FileVisitResult.CONTINUE;
            }
        });
    }
}
