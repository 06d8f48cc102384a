package org.evenfall.command;

import java.nio.file.Path;
import java.util.List;
import java.util.concurrent.Callable;
import org.evenfall.publish.ReportService;
import org.evenfall.setup.Assessor;
import org.evenfall.setup.entry.Setup;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** Writes the report of a setup for the farm's records. */
@Command(
        mixinStandardHelpOptions = true,
        description = {
            "Writes a report for the farm's records: results and answers of each step, every test, what is open.",
            "It needs no finished setup: it says what is not done."
        })
final class ReportCommand implements Callable<Integer> {

    private final CommandContext context;

    @Parameters(paramLabel = "SETUP.json", description = "setup file")
    private String file = "";

    @Option(names = "--out", required = true, paramLabel = "REPORT.pdf", description = "the file to write")
    private String out = "";

    @Option(
            names = "--paper",
            paramLabel = "PAPER",
            defaultValue = "a4",
            description = "size of the paper: ${COMPLETION-CANDIDATES}; without: ${DEFAULT-VALUE}")
    private PaperOption paper = PaperOption.a4;

    ReportCommand(CommandContext context) {
        this.context = context;
    }

    @Override
    public Integer call() throws Exception {
        Path target = context.path(out);
        OutputFile.refuse(context, target, List.of(file));
        Setup setup = SetupInputs.read(context, file);
        ReportService reports = new ReportService(context.words(), context.clock());
        OutputFile.write(context, target, () -> reports.write(setup, Assessor.assess(setup), paper.sheet(), target));
        return CommandFace.OK;
    }
}
