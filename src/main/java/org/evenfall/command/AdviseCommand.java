package org.evenfall.command;

import com.fasterxml.jackson.databind.node.ObjectNode;
import org.evenfall.command.SetupInputs.Answer;
import org.evenfall.finding.Finding;
import org.evenfall.quantity.Unit;
import org.evenfall.result.AdviceLines;
import org.evenfall.setup.AdviceFindings;
import org.evenfall.setup.Assessor;
import org.evenfall.setup.FieldResult;
import org.evenfall.setup.entry.Setup;
import org.evenfall.setup.path.StartPaths;
import org.evenfall.store.InputFileException;
import org.evenfall.trays.Advice;
import org.evenfall.trays.LeverMove;
import picocli.CommandLine.Command;

/** What to do next after the tray tests of a setup. */
@Command(
        mixinStandardHelpOptions = true,
        description = "The next move after the tray tests: what to turn, which way, and the CV to expect.")
final class AdviseCommand extends AnswerCommand {

    AdviseCommand(CommandContext context) {
        super(context, "advise");
    }

    @Override
    Answer answer(Setup setup) {
        ObjectNode result = context().json().mapper().createObjectNode();
        FieldResult field = Assessor.assessField(setup);
        ResultJson json = new ResultJson(context());
        result.set("advice", json.advice(field.trays().advice()));
        result.set("unreadable", json.findings(field.unreadable()));
        return new Answer(result, CommandFace.OK);
    }

    @Override
    void print(Setup setup, String file) throws InputFileException {
        FieldResult field = Assessor.assessField(setup);
        for (Finding unreadable : field.unreadable()) {
            context().out().println(context().words().of(unreadable));
        }
        Advice advice = field.trays().advice();
        if (advice == null) {
            throw new InputFileException(
                    file, StartPaths.TRAMLINE_WIDTH.pointer(), context().words().text("missing.widthFirst"));
        }
        context()
                .out()
                .println(
                        advice.moves().isEmpty()
                                ? AdviceLines.headline(context().words(), advice)
                                : context().words().choice(advice.kind()));
        for (LeverMove move : advice.moves()) {
            context().out().println("  " + move.lever() + ": " + plain(move.from()) + " → " + plain(move.to()));
        }
        context().out().println("  " + context().words().of(AdviceFindings.decisive(advice)));
        String expected = AdviceLines.expected(context().words(), advice);
        if (!expected.isEmpty()) {
            context().out().println("  " + expected);
        }
        for (Finding reason : AdviceFindings.others(advice)) {
            context().out().println("    " + context().words().of(reason));
        }
    }

    private String plain(double value) {
        return context().words().number(value, value == Math.rint(value) ? 0 : 1, Unit.NONE);
    }
}
