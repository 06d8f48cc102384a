package org.evenfall.command;

import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.concurrent.Callable;
import org.evenfall.finding.Arg;
import org.evenfall.finding.Sentences;
import org.evenfall.quantity.Unit;
import org.evenfall.setup.Assessor;
import org.evenfall.setup.SetupComparison;
import org.evenfall.setup.path.TrayPaths;
import org.evenfall.store.InputFileException;
import org.evenfall.trays.TestChange;
import org.evenfall.trays.Uniformity;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** The last tray tests of two setups compared. */
@Command(
        name = "compare",
        mixinStandardHelpOptions = true,
        description = "The last tray tests of two setups compared: two machines, two years.")
final class TraysCompareCommand implements Callable<Integer> {

    private final CommandContext context;

    @Parameters(index = "0", paramLabel = "FIRST.json", description = "setup file")
    private String first = "";

    @Parameters(index = "1", paramLabel = "SECOND.json", description = "setup file")
    private String second = "";

    @Option(names = "--json", description = "as JSON")
    private boolean json;

    TraysCompareCommand(CommandContext context) {
        this.context = context;
    }

    @Override
    public Integer call() throws Exception {
        Uniformity one = last(first);
        Uniformity two = last(second);
        TestChange change = SetupComparison.of(one, two);
        if (json) {
            ResultJson trees = new ResultJson(context);
            ObjectNode result = context.json().mapper().createObjectNode();
            result.set("first", trees.tree(one));
            result.set("second", trees.tree(two));
            result.set("change", trees.tree(change));
            context.out().println(result.toPrettyString());
        } else {
            context.out().println(line(first, one));
            context.out().println(line(second, two));
            context.out()
                    .println(context.words()
                            .text(
                                    "compare.chance",
                                    Arg.number(change.tellableChancePercent(), 0, Unit.PERCENT),
                                    Arg.text(second)));
        }
        return CommandFace.OK;
    }

    private Uniformity last(String file) throws InputFileException {
        Uniformity last = SetupComparison.lastTest(Assessor.assess(SetupInputs.read(context, file)));
        if (last == null) {
            throw new InputFileException(
                    file, TrayPaths.TESTS.pointer(), context.words().text("missing.trayTest"));
        }
        return last;
    }

    private String line(String file, Uniformity evenness) {
        Sentences words = context.words();
        return words.text(
                "compare.test",
                Arg.text(file),
                Arg.number(evenness.cvPercent(), 1, Unit.PERCENT),
                Arg.number(evenness.field().medianPercent(), 0, Unit.PERCENT),
                Arg.number(evenness.field().lowPercent(), 0, Unit.NONE),
                Arg.number(evenness.field().highPercent(), 0, Unit.PERCENT),
                Arg.count(evenness.trays()));
    }
}
