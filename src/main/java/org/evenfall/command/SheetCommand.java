package org.evenfall.command;

import java.nio.file.Path;
import java.util.List;
import java.util.concurrent.Callable;
import org.evenfall.publish.SheetService;
import org.evenfall.setup.Assessor;
import org.evenfall.setup.entry.Setup;
import org.evenfall.sheet.SheetPart;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** Writes the paper sheets on which yard and field are noted, to be typed in afterwards. */
@Command(
        mixinStandardHelpOptions = true,
        description = {
            "Writes paper sheets for what is measured in yard and field, with boxes in the order of the prompts.",
            "The field sheet has the first move of this setup. An empty setup gives sheets that suit any machine."
        })
final class SheetCommand implements Callable<Integer> {

    private final CommandContext context;

    @Parameters(paramLabel = "SETUP.json", description = "setup file")
    private String file = "";

    @Option(names = "--out", required = true, paramLabel = "SHEET.pdf", description = "the file to write")
    private String out = "";

    @Option(
            names = "--part",
            paramLabel = "PART",
            defaultValue = "all",
            description = "which sheet: ${COMPLETION-CANDIDATES}; without: ${DEFAULT-VALUE}")
    private PartOption part = PartOption.all;

    @Option(
            names = "--paper",
            paramLabel = "PAPER",
            defaultValue = "a4",
            description = "size of the paper: ${COMPLETION-CANDIDATES}; without: ${DEFAULT-VALUE}")
    private PaperOption paper = PaperOption.a4;

    /** A sheet as it is typed on the command line. */
    enum PartOption {
        yard(SheetPart.YARD),
        field(SheetPart.FIELD),
        all(SheetPart.ALL);

        private final SheetPart sheet;

        PartOption(SheetPart sheet) {
            this.sheet = sheet;
        }
    }

    SheetCommand(CommandContext context) {
        this.context = context;
    }

    @Override
    public Integer call() throws Exception {
        Path target = context.path(out);
        OutputFile.refuse(context, target, List.of(file));
        Setup setup = SetupInputs.read(context, file);
        SheetService sheets = new SheetService(context.words(), context.clock());
        OutputFile.write(
                context, target, () -> sheets.write(setup, Assessor.assess(setup), part.sheet, paper.sheet(), target));
        return CommandFace.OK;
    }
}
