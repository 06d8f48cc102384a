package org.evenfall.command;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.concurrent.Callable;
import org.evenfall.publish.SeasonRecordService;
import org.evenfall.setup.Seasons;
import org.evenfall.setup.entry.Setup;
import org.evenfall.store.InputFileException;
import org.evenfall.store.SetupStore;
import org.evenfall.store.UserFolder;
import org.evenfall.store.WholeFileWriter;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;

/** The record of a season: what was spread on which field. */
@Command(
        name = "record",
        mixinStandardHelpOptions = true,
        description = {
            "What was spread on which field in a season, from the passes logged in all setups of the folder.",
            "A table (CSV) or pages (PDF) by the ending of the file; without a file the table goes to standard output.",
            "A setup that cannot be read is named on standard error and left out; the exit code is then 1."
        })
final class FarmRecordCommand implements Callable<Integer> {

    private final CommandContext context;
    private final FarmCommand farm;

    @Option(names = "--season", required = true, paramLabel = "YEAR", description = "year of the season")
    private int season;

    @Option(names = "--out", paramLabel = "RECORD.csv|RECORD.pdf", description = "the file to write")
    private String out = "";

    @Option(
            names = "--paper",
            paramLabel = "PAPER",
            defaultValue = "a4",
            description = "size of the paper: ${COMPLETION-CANDIDATES}; without: ${DEFAULT-VALUE}")
    private PaperOption paper = PaperOption.a4;

    @Option(names = "--json", description = "which file was written and which setups were read, as JSON")
    private boolean json;

    FarmRecordCommand(CommandContext context, FarmCommand farm) {
        this.context = context;
        this.farm = farm;
    }

    @Override
    public Integer call() throws Exception {
        UserFolder user = farm.user();
        if (season < Seasons.FIRST || season > Seasons.LAST) {
            throw new CommandException(
                    "--season: " + season + "; allowed are " + Seasons.FIRST + " to " + Seasons.LAST);
        }
        ObjectNode result = context.json().mapper().createObjectNode().put("season", season);
        ArrayNode read = result.putArray("setups");
        ArrayNode leftOut = result.putArray("leftOut");
        List<Setup> setups = new ArrayList<>();
        for (Path file : user.setups(user.season(season))) {
            String name = String.valueOf(file.getFileName());
            try {
                setups.add(new SetupStore(context.json()).read(file));
                read.add(name);
            } catch (InputFileException unreadable) {
                leftOut.add(name);
                context.err().println(unreadable.getMessage());
            }
        }
        write(setups, result);
        if (json) {
            context.out().println(result.toPrettyString());
        }
        return leftOut.isEmpty() ? CommandFace.OK : CommandFace.FOUND;
    }

    private void write(List<Setup> setups, ObjectNode result) throws Exception {
        SeasonRecordService records = new SeasonRecordService(context.words(), context.clock());
        if (out.isEmpty()) {
            // lines of a terminal in place of those of the file
            String table = new String(records.csv(setups), StandardCharsets.UTF_8).replace("\r\n", "\n");
            if (json) {
                result.put("csv", table);
            } else {
                context.out().print(table);
            }
            return;
        }
        Path target = context.path(out);
        String ending = out.toLowerCase(Locale.ROOT);
        byte[] bytes;
        if (ending.endsWith(".pdf")) {
            bytes = records.pdf(setups, paper.sheet());
        } else if (ending.endsWith(".csv")) {
            bytes = records.csv(setups);
        } else {
            throw new CommandException("--out: " + out + "; the name ends in .csv or .pdf");
        }
        result.put("file", target.toString());
        if (json) {
            WholeFileWriter.write(target, bytes);
        } else {
            OutputFile.write(context, target, () -> WholeFileWriter.write(target, bytes));
        }
    }
}
