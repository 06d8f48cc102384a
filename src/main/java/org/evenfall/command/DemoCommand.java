package org.evenfall.command;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import org.evenfall.command.report.DemoPage;
import org.evenfall.publish.CardService;
import org.evenfall.result.ResultLine;
import org.evenfall.setup.Assessment;
import org.evenfall.setup.Assessor;
import org.evenfall.setup.Seasons;
import org.evenfall.setup.entry.Setup;
import org.evenfall.store.FreeNames;
import org.evenfall.store.WholeFileWriter;
import picocli.CommandLine.Command;

/** The wizard on a copy of the demo; without a window its main results and its card. */
@Command(
        mixinStandardHelpOptions = true,
        description =
                "Opens the wizard on a copy of the demo. Where no window can open: its main results and its signed card.")
final class DemoCommand implements Callable<Integer> {

    private static final String CARD = "evenfall-demo-card.pdf";

    private final CommandContext context;

    DemoCommand(CommandContext context) {
        this.context = context;
    }

    @Override
    public Integer call() throws Exception {
        String text = demo();
        // a copy of its own each time: what somebody typed in an earlier one stays
        Path copy = FreeNames.in(context.user().season(Seasons.of(LocalDate.now(context.clock()))), "demo", ".json");
        try {
            WholeFileWriter.write(copy, text.getBytes(StandardCharsets.UTF_8));
        } catch (IOException notWritten) {
            throw new CommandException(copy + ": cannot be written: " + Trouble.reason(notWritten), notWritten);
        }
        Optional<String> why = context.window().open(Optional.of(copy));
        if (why.isEmpty()) {
            return CommandFace.OK;
        }
        context.err().println(why.get());
        context.err().flush();
        Setup setup = context.json().read(text, "demo");
        Assessment assessment = Assessor.assess(setup);
        Path card = context.path(CARD);
        new CardService(context.user(), context.words(), context.clock()).write(setup, assessment, card);
        context.out().print(DemoPage.results(setup, assessment, context.words()));
        context.out().println();
        context.out().println(context.words().text("command.demoCard"));
        context.out().print(DemoPage.path(whole(card)));
        context.out().print(DemoPage.next(whole(copy), next(), context.words()));
        return CommandFace.OK;
    }

    private static String whole(Path file) {
        return file.toAbsolutePath().normalize().toString();
    }

    /** Commands with what they give. */
    private List<ResultLine> next() {
        return List.of(
                next("assess SETUP.json", "demo.assess"),
                next("sheet SETUP.json --out SHEET.pdf", "demo.sheet"),
                next("report SETUP.json --out REPORT.pdf", "demo.report"),
                next("verify " + CARD, "demo.verify"));
    }

    private ResultLine next(String command, String key) {
        return new ResultLine(command, context.words().text(key));
    }

    private static String demo() throws IOException {
        try (InputStream in = DemoCommand.class.getResourceAsStream("/org/evenfall/demo/setup.json")) {
            if (in == null) {
                throw new IOException("the demo is missing from the program");
            }
            return new String(in.readAllBytes(), StandardCharsets.UTF_8);
        }
    }
}
