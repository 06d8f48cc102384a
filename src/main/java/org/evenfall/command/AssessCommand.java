package org.evenfall.command;

import java.util.List;
import java.util.concurrent.Callable;
import org.evenfall.command.report.Report;
import org.evenfall.setup.Assessment;
import org.evenfall.setup.Assessor;
import org.evenfall.setup.entry.Setup;
import org.evenfall.store.InputFileException;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** The assessment of a setup: a page to read, or every number and finding as JSON. */
@Command(
        mixinStandardHelpOptions = true,
        description =
                "A page to read: the answer, the findings, the results step by step. Exit code 1 when there is a stop finding.")
final class AssessCommand implements Callable<Integer> {

    private final CommandContext context;

    @Parameters(paramLabel = "SETUP.json", arity = "0..*", description = "setup files; several give one JSON line each")
    private List<String> files = List.of();

    @Option(names = "--json", description = "as JSON, units in the key names")
    private boolean json;

    @Option(names = "--stream", description = "one setup a line on standard input, one result line for each")
    private boolean stream;

    AssessCommand(CommandContext context) {
        this.context = context;
    }

    @Override
    public Integer call() throws Exception {
        if (stream) {
            ResultJson results = new ResultJson(context);
            return SetupInputs.stream(context, setup -> results.assessment(Assessor.assess(setup)));
        }
        if (files.isEmpty()) {
            throw new InputFileException("evenfall assess", "", "name a setup file, or use --stream");
        }
        if (files.size() > 1) {
            ResultJson results = new ResultJson(context);
            return SetupInputs.lines(context, files, setup -> results.assessment(Assessor.assess(setup)));
        }
        Setup setup = SetupInputs.read(context, files.get(0));
        Assessment assessment = Assessor.assess(setup);
        if (json) {
            context.out()
                    .println(new ResultJson(context)
                            .assessment(assessment)
                            .json()
                            .toPrettyString());
        } else {
            context.out().print(Report.of(setup, assessment, context.words()));
        }
        return ResultJson.code(assessment);
    }
}
