package org.evenfall.command;

import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.concurrent.Callable;
import org.evenfall.command.SetupInputs.Answer;
import org.evenfall.finding.Finding;
import org.evenfall.quantity.Unit;
import org.evenfall.setup.Assessment;
import org.evenfall.setup.Assessor;
import org.evenfall.setup.entry.Setup;
import org.evenfall.store.SetupFileException;
import org.evenfall.trays.Advice;
import org.evenfall.trays.LeverMove;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** What to do next after the tray tests of a setup. */
@Command(
        name = "advise",
        mixinStandardHelpOptions = true,
        description = "The next move after the tray tests: what to turn, which way, and the CV to expect.")
final class AdviseCommand implements Callable<Integer> {

    private final Surroundings around;

    @Parameters(paramLabel = "SETUP.json", arity = "0..1", description = "setup file")
    private @Nullable String file;

    @Option(names = "--json", description = "as JSON")
    private boolean json;

    @Option(names = "--stream", description = "one setup a line on standard input, one result line for each")
    private boolean stream;

    AdviseCommand(Surroundings around) {
        this.around = around;
    }

    @Override
    public Integer call() throws Exception {
        if (stream) {
            return SetupInputs.stream(around, this::answer);
        }
        if (file == null) {
            throw new SetupFileException("evenfall advise", "", "name a setup file, or use --stream");
        }
        Setup setup = SetupInputs.read(around, file);
        if (json) {
            around.out().println(answer(setup).json().toPrettyString());
            return CommandFace.OK;
        }
        Advice advice = Assessor.assess(setup).trays().advice();
        if (advice == null) {
            throw new SetupFileException(
                    file, "/start/tramlineWidth", around.words().text("missing.widthFirst"));
        }
        around.out().println(around.words().choice(advice.kind()));
        for (LeverMove move : advice.moves()) {
            around.out().println("  " + move.lever() + ": " + plain(move.from()) + " \u2192 " + plain(move.to()));
        }
        for (Finding reason : advice.reasons()) {
            around.out().println("  " + around.words().of(reason));
        }
        return CommandFace.OK;
    }

    private String plain(double value) {
        return around.words().number(value, value == Math.rint(value) ? 0 : 1, Unit.NONE);
    }

    private Answer answer(Setup setup) {
        Assessment assessment = Assessor.assess(setup);
        ObjectNode result = around.json().mapper().createObjectNode();
        result.set("advice", new ResultJson(around).advice(assessment));
        return new Answer(result, CommandFace.OK);
    }
}
