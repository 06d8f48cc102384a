package org.evenfall.command;

import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.Locale;
import org.evenfall.command.SetupInputs.Answer;
import org.evenfall.finding.Finding;
import org.evenfall.finding.Step;
import org.evenfall.quantity.Unit;
import org.evenfall.reference.MatchResult;
import org.evenfall.reference.RankedProduct;
import org.evenfall.setup.Assessment;
import org.evenfall.setup.Assessor;
import org.evenfall.setup.entry.Setup;
import org.evenfall.setup.path.ProductPaths;
import org.evenfall.store.InputFileException;
import picocli.CommandLine.Command;

/** The closest tested products. */
@Command(mixinStandardHelpOptions = true, description = "The closest tested products, best first.")
final class MatchCommand extends AnswerCommand {

    MatchCommand(CommandContext context) {
        super(context, "match");
    }

    @Override
    Answer answer(Setup setup) {
        ObjectNode result = context().json().mapper().createObjectNode();
        ResultJson json = new ResultJson(context());
        Assessment assessment = Assessor.assess(setup);
        result.set("match", json.tree(assessment.match()));
        result.set("sources", json.sources(assessment, "/match/"));
        return new Answer(result, CommandFace.OK);
    }

    @Override
    void print(Setup setup, String file) throws InputFileException {
        Assessment assessment = Assessor.assess(setup);
        MatchResult match = assessment.match();
        if (match == null) {
            throw new InputFileException(
                    file,
                    ProductPaths.PRODUCT.only().pointer(),
                    context().words().text("missing.productFirst"));
        }
        for (RankedProduct reference : match.ranked()) {
            context().out().println(line(reference));
        }
        context().out().println(context().words().choice(match.verdict()));
        for (Finding finding : assessment.findings()) {
            if (finding.step() == Step.MATCH) {
                context().out().println(context().words().of(finding));
            }
        }
    }

    private String line(RankedProduct reference) {
        double throwM = reference.throwDifference().metres();
        return String.format(
                Locale.ROOT,
                "%-32s %s  %s  %s",
                reference.name(),
                context().words().number(reference.widthM(), 0, Unit.M),
                context().words().number(throwM, 1, Unit.M),
                context().words().choice(reference.verdict()));
    }
}
