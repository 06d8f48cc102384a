package org.evenfall;

import java.io.FileDescriptor;
import java.io.FileOutputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStreamWriter;
import java.io.PrintWriter;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Instant;
import java.time.ZoneId;
import java.util.List;
import java.util.Locale;
import java.util.Objects;
import java.util.Optional;
import java.util.ResourceBundle;
import java.util.function.Supplier;
import org.evenfall.command.CommandContext;
import org.evenfall.command.CommandFace;
import org.evenfall.finding.Sentences;
import org.evenfall.setup.path.Entries;
import org.evenfall.store.SetupJson;
import org.evenfall.store.SetupStore;
import org.evenfall.store.UserFolder;
import org.evenfall.wizard.WindowToolkit;
import org.evenfall.wizard.WizardLauncher;
import org.jspecify.annotations.Nullable;

/** Builds the object graph by hand and runs one call. */
public final class Main {

    private Main() {}

    /** Starts the window or runs one command. */
    public static void main(String[] args) {
        // the reader of PDF files would report on standard error what it thinks of them; this costs a start no time
        System.setProperty("org.apache.commons.logging.Log", "org.apache.commons.logging.impl.NoOpLog");
        // else the command line looks for a language that is not here, in every library
        System.setProperty("picocli.disable.closures", "true");
        String osName = System.getProperty("os.name", "");
        WindowToolkit toolkit = new WindowToolkit(System.getenv(), osName);
        if (opensWindow(args)) {
            toolkit.start();
        }
        SetupJson json = new SetupJson();
        Supplier<Sentences> words = new Words();
        if (readsSetup(args)) {
            ahead(json, words);
        }
        UserFolder user = UserFolder.of(System.getenv(), osName, Path.of(System.getProperty("user.home", ".")));
        Clock clock = new SystemClock();
        // the window's classes are touched only when it is opened: a command starts without JavaFX
        CommandContext.Window window = file -> {
            ClassArchive.renewLater();
            return new WizardLauncher(
                            words.get(), new SetupStore(json), user, clock, Main::demo, System.getenv(), toolkit)
                    .open(file);
        };
        CommandContext context = new CommandContext(
                System.in,
                writer(FileDescriptor.out),
                writer(FileDescriptor.err),
                Path.of(""),
                user,
                clock,
                words,
                json,
                window);
        System.exit(CommandFace.run(context, List.of(args)));
    }

    /** Whether a call opens the window, as far as that is clear before it is read: what draws it takes longest to start. */
    private static boolean opensWindow(String[] args) {
        return args.length == 0 || (args.length == 1 && (args[0].equals("demo") || args[0].endsWith(".json")));
    }

    private static boolean readsSetup(String[] args) {
        return args.length > 1 && !args[0].startsWith("-");
    }

    /**
     * Makes ready what reads setups, and the sentences, while the call is understood: both take about as long. The classes
     * that are loaded here need none that is loaded there in turn, so that neither waits for the other without end.
     */
    private static void ahead(SetupJson json, Supplier<Sentences> words) {
        Thread thread = new Thread(
                () -> {
                    Objects.requireNonNull(Entries.ALL);
                    json.makeReady();
                    Objects.requireNonNull(words.get());
                },
                "evenfall-ahead");
        thread.setDaemon(true);
        thread.start();
    }

    /** A writer that knows when it cannot write; the system's print streams keep that to themselves. */
    private static PrintWriter writer(FileDescriptor stream) {
        return new PrintWriter(new OutputStreamWriter(new FileOutputStream(stream), StandardCharsets.UTF_8), false);
    }

    private static Optional<String> demo(String name) {
        try (InputStream in = Main.class.getResourceAsStream("/org/evenfall/demo/" + name)) {
            return in == null ? Optional.empty() : Optional.of(new String(in.readAllBytes(), StandardCharsets.UTF_8));
        } catch (IOException unreadable) {
            return Optional.empty();
        }
    }

    /** The system's clock; its zone is looked up when it is asked for, since that opens every library on the class path. */
    private static final class SystemClock extends Clock {

        @Override
        public ZoneId getZone() {
            return ZoneId.systemDefault();
        }

        @Override
        public Clock withZone(ZoneId zone) {
            return Clock.system(zone);
        }

        @Override
        public Instant instant() {
            return Instant.now();
        }
    }

    /** The sentences in the language of the system, read when the first is needed. */
    private static final class Words implements Supplier<Sentences> {

        private @Nullable Sentences read;

        @Override
        public synchronized Sentences get() {
            Sentences now = read;
            if (now == null) {
                Locale locale = Locale.getDefault();
                now = new Sentences(
                        ResourceBundle.getBundle(
                                "org.evenfall.words",
                                locale,
                                ResourceBundle.Control.getNoFallbackControl(ResourceBundle.Control.FORMAT_DEFAULT)),
                        locale);
                read = now;
            }
            return now;
        }
    }
}
