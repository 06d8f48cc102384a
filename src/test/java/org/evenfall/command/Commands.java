package org.evenfall.command;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.ResourceBundle;
import org.evenfall.finding.Sentences;
import org.evenfall.reference.ProgressMonitor;
import org.evenfall.setup.AssessOptions;
import org.evenfall.setup.Assessor;
import org.evenfall.store.InputFileException;
import org.evenfall.store.SetupJson;
import org.evenfall.store.UserFolder;

/** The command line inside a test: English, a fixed clock, and the test's own folder for files and keys. */
public final class Commands {

    private final Path folder;

    /** Commands that read and write in this folder only. */
    public Commands(Path folder) {
        this.folder = folder;
    }

    /**
     * What one call gave.
     *
     * @param code exit code
     * @param out standard output
     * @param err standard error
     */
    public record Answer(int code, String out, String err) {

        /** Standard output as JSON. */
        public JsonNode json() {
            try {
                return new ObjectMapper().readTree(out);
            } catch (IOException notJson) {
                throw new UncheckedIOException(out + err, notJson);
            }
        }
    }

    /** Runs one call without standard input. */
    public Answer run(String... args) {
        return runWith("", args);
    }

    /** Runs one call with this text as standard input. */
    public Answer runWith(String input, String... args) {
        return runWith(input.getBytes(StandardCharsets.UTF_8), args);
    }

    /** Runs one call with these bytes as standard input. */
    public Answer runWith(byte[] input, String... args) {
        StringWriter out = new StringWriter();
        StringWriter err = new StringWriter();
        int code = CommandFace.run(context(input, out, err), List.of(args));
        return new Answer(code, out.toString(), err.toString());
    }

    /** The published JSON of the assessment of one setup, with two simulated repeats only, so that it is quick. */
    public JsonNode assess(JsonNode setup) {
        try {
            return new ResultJson(context(new byte[0], new StringWriter(), new StringWriter()))
                    .assessment(Assessor.assess(
                            new SetupJson().read(setup.toString(), "test"),
                            new AssessOptions(1, 2, ProgressMonitor.NONE)))
                    .json();
        } catch (InputFileException refused) {
            throw new IllegalArgumentException(refused);
        }
    }

    CommandContext context(byte[] input, StringWriter out, StringWriter err) {
        return new CommandContext(
                new ByteArrayInputStream(input),
                new PrintWriter(out),
                new PrintWriter(err),
                folder,
                new UserFolder(folder.resolve("home")),
                Clock.fixed(Instant.parse("2027-03-18T09:00:00Z"), ZoneOffset.UTC),
                () -> new Sentences(ResourceBundle.getBundle("org.evenfall.words", Locale.ENGLISH), Locale.UK),
                new SetupJson(),
                file -> Optional.of("No window here."));
    }
}
