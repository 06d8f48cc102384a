package org.evenfall.command;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.concurrent.Callable;
import org.evenfall.finding.Arg;
import org.evenfall.store.FarmCheck;
import org.evenfall.store.FarmProblem;
import org.evenfall.store.SetupStore;
import org.evenfall.store.UserFolder;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;

/** Whether every file of a farm's folder is sound. */
@Command(
        name = "check",
        mixinStandardHelpOptions = true,
        description = {
            "Reads every file of the folder. Names what is damaged, missing or changed, and which earlier state is sound.",
            "Exit code 1 when something is wrong. Nothing is written without --recover."
        })
final class FarmCheckCommand implements Callable<Integer> {

    private final CommandContext context;
    private final FarmCommand farm;

    @Option(names = "--json", description = "as JSON")
    private boolean json;

    @Option(
            names = "--recover",
            description =
                    "puts the newest sound state in the place of each damaged or missing file; a damaged one is kept")
    private boolean recover;

    FarmCheckCommand(CommandContext context, FarmCommand farm) {
        this.context = context;
        this.farm = farm;
    }

    @Override
    public Integer call() throws Exception {
        UserFolder user = farm.user();
        SetupStore store = new SetupStore(context.json());
        List<FarmProblem> problems = FarmCheck.of(store, user);
        ObjectNode result = context.json().mapper().createObjectNode();
        ArrayNode list = result.putArray("problems");
        for (FarmProblem problem : problems) {
            boolean recovered = recover && problem.soundSince().isPresent();
            if (recovered) {
                FarmCheck.recover(store, user, problem.file());
            }
            String file = name(user, problem.file());
            list.addObject()
                    .put("file", file)
                    .put("problem", problem.what().name().toLowerCase(Locale.ROOT))
                    .put("detail", problem.detail())
                    .put(
                            "soundSince",
                            problem.soundSince().map(Object::toString).orElse(null))
                    .put("recovered", recovered);
            if (!json) {
                context.out().println(line(problem, file, recovered));
            }
        }
        if (json) {
            context.out().println(result.toPrettyString());
        } else if (problems.isEmpty()) {
            context.out().println(context.words().text("command.farmSound"));
        }
        return problems.isEmpty() ? CommandFace.OK : CommandFace.FOUND;
    }

    private String line(FarmProblem problem, String file, boolean recovered) {
        String what = context.words().text("farm." + problem.what(), Arg.text(file));
        String detail = problem.detail().isEmpty() ? "" : " (" + problem.detail() + ")";
        String state = problem.soundSince()
                .map(since -> " "
                        + context.words()
                                .text(
                                        recovered ? "command.farmRecovered" : "command.farmSoundSince",
                                        Arg.text(since.toString())))
                .orElse("");
        return what + detail + state;
    }

    private static String name(UserFolder user, Path file) {
        Path farm = user.farm().toAbsolutePath().normalize();
        Path whole = file.toAbsolutePath().normalize();
        return (whole.startsWith(farm) ? farm.relativize(whole) : whole).toString();
    }
}
