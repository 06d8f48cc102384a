package org.evenfall.command;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import java.util.concurrent.Callable;
import org.evenfall.finding.Arg;
import org.evenfall.setup.Assessor;
import org.evenfall.setup.NextSeason;
import org.evenfall.setup.NextSeasonParts;
import org.evenfall.setup.Seasons;
import org.evenfall.setup.entry.Setup;
import org.evenfall.store.SetupStore;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Spec;

/** Writes the setup of another season from an earlier one. */
@Command(
        name = "new",
        mixinStandardHelpOptions = true,
        description = {
            "Writes the setup of the next season from an earlier one.",
            "Farm, machine, tested products, plan and names stay. What was measured is open again."
                    + " A file that is there is never overwritten."
        })
final class SetupNewCommand implements Callable<Integer> {

    private final CommandContext context;

    @Spec
    private CommandSpec spec = CommandSpec.create();

    @Option(names = "--from", required = true, paramLabel = "SETUP.json", description = "setup of an earlier season")
    private String from = "";

    @Option(
            names = "--season",
            paramLabel = "YEAR",
            description = "year of the new season; without: the season after that of the file")
    private @Nullable Integer season;

    @Option(names = "--out", required = true, paramLabel = "NEW.json", description = "the file to write")
    private String out = "";

    @Option(names = "--json", description = "file, season, what is kept and what is open as JSON")
    private boolean json;

    SetupNewCommand(CommandContext context) {
        this.context = context;
    }

    @Override
    public Integer call() throws Exception {
        Path target = context.path(out);
        Setup earlier = SetupInputs.read(context, from);
        // the file that is read is there too
        if (Files.exists(target, LinkOption.NOFOLLOW_LINKS)) {
            throw new ParameterException(spec.commandLine(), "--out: " + out + " is there; choose another name");
        }
        int year = (int) OptionRange.within(spec, "--season", (double) season(earlier), Seasons.FIRST, Seasons.LAST);
        Setup next = NextSeason.of(earlier, Assessor.assess(earlier), year);
        try {
            new SetupStore(context.json()).save(next, target);
        } catch (IOException problem) {
            throw new CommandException(target + ": cannot be written; nothing was changed", problem);
        }
        context.out().println(json ? SetupInputs.text(context, answer(next, year, target)) : line(next, year, target));
        return CommandFace.OK;
    }

    private int season(Setup earlier) {
        return season == null ? NextSeason.after(earlier, LocalDate.now(context.clock())) : season;
    }

    private ObjectNode answer(Setup next, int year, Path target) {
        ObjectNode answer = context.json().mapper().createObjectNode();
        answer.put("file", target.toString());
        answer.put("season", year);
        ArrayNode kept = answer.putArray("kept");
        NextSeasonParts.kept(next).forEach(part -> kept.add(part.name()));
        ArrayNode open = answer.putArray("open");
        NextSeasonParts.toDo().forEach(part -> open.add(part.name()));
        return answer;
    }

    private String line(Setup next, int year, Path target) {
        return context.words()
                .text(
                        "command.nextSeason",
                        Arg.text(target.toString()),
                        Arg.text(Integer.toString(year)),
                        words(NextSeasonParts.kept(next)),
                        words(NextSeasonParts.toDo()));
    }

    private static Arg words(List<? extends Enum<?>> parts) {
        return new Arg.Series(parts.stream()
                .map(part -> Arg.word("nextSeason." + part.name()))
                .toList());
    }
}
