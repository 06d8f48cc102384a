package org.evenfall.command;

import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.Locale;
import java.util.concurrent.Callable;
import org.evenfall.command.SetupInputs.Answer;
import org.evenfall.quantity.Unit;
import org.evenfall.reference.MatchResult;
import org.evenfall.reference.RankedReference;
import org.evenfall.setup.Assessor;
import org.evenfall.setup.entry.Setup;
import org.evenfall.store.SetupFileException;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** The closest tested products. */
@Command(name = "match", mixinStandardHelpOptions = true, description = "The closest tested products, best first.")
final class MatchCommand implements Callable<Integer> {

    private final Surroundings around;

    @Parameters(paramLabel = "SETUP.json", arity = "0..1", description = "setup file")
    private @Nullable String file;

    @Option(names = "--json", description = "as JSON")
    private boolean json;

    @Option(names = "--stream", description = "one setup a line on standard input, one result line for each")
    private boolean stream;

    MatchCommand(Surroundings around) {
        this.around = around;
    }

    @Override
    public Integer call() throws Exception {
        if (stream) {
            return SetupInputs.stream(around, this::answer);
        }
        if (file == null) {
            throw new SetupFileException("evenfall match", "", "name a setup file, or use --stream");
        }
        Setup setup = SetupInputs.read(around, file);
        if (json) {
            around.out().println(answer(setup).json().toPrettyString());
            return CommandFace.OK;
        }
        MatchResult match = Assessor.assess(setup).match();
        if (match == null) {
            throw new SetupFileException(file, "/product", around.words().text("missing.productFirst"));
        }
        for (RankedReference reference : match.ranked()) {
            around.out().println(line(reference));
        }
        around.out().println(around.words().choice(match.verdict()));
        return CommandFace.OK;
    }

    private Answer answer(Setup setup) {
        ObjectNode result = around.json().mapper().createObjectNode();
        result.set("match", new ResultJson(around).tree(Assessor.assess(setup).match()));
        return new Answer(result, CommandFace.OK);
    }

    private String line(RankedReference reference) {
        double throwM = reference.throwDifferenceM() == null ? 0 : reference.throwDifferenceM();
        return String.format(
                Locale.ROOT,
                "%-32s %s  %s  %s",
                reference.name(),
                around.words().number(reference.widthM(), 0, Unit.M),
                around.words().number(throwM, 1, Unit.M),
                around.words().choice(reference.verdict()));
    }
}
