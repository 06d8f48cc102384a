package org.evenfall.command;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.nio.file.Path;
import java.util.List;
import java.util.concurrent.Callable;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.evenfall.setup.Assessor;
import org.evenfall.setup.entry.MachineEntries;
import org.evenfall.setup.entry.Setup;
import org.evenfall.store.FarmShelf;
import org.evenfall.store.InputFileException;
import org.evenfall.store.IssuedCards;
import org.evenfall.store.SetupStore;
import org.evenfall.store.UserFolder;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;

/** What is in the folder of a farm. */
@Command(
        name = "list",
        mixinStandardHelpOptions = true,
        description = "Setups by season with what is next, machines, tested products, cards issued with what each replaced.")
final class FarmListCommand implements Callable<Integer> {

    private final CommandContext context;
    private final FarmCommand farm;

    @Option(names = "--json", description = "as JSON")
    private boolean json;

    FarmListCommand(CommandContext context, FarmCommand farm) {
        this.context = context;
        this.farm = farm;
    }

    @Override
    public Integer call() throws Exception {
        UserFolder user = farm.user();
        SetupStore store = new SetupStore(context.json());
        FarmShelf shelf = new FarmShelf(store, user);
        ObjectNode result = context.json().mapper().createObjectNode();
        ArrayNode setups = result.putArray("setups");
        for (Path folder : user.seasons()) {
            for (Path file : user.setups(folder)) {
                setup(setups.addObject(), store, folder, file);
            }
        }
        ArrayNode machines = result.putArray("machines");
        shelf.machines().stream().map(MachineEntries::name).forEach(machines::add);
        ArrayNode products = result.putArray("testedProducts");
        shelf.testedProducts()
                .forEach(of -> products.addObject()
                        .put("machine", of.machine().name())
                        .put("count", of.match().library().size()));
        cards(result.putArray("cards"), user);
        if (json) {
            context.out().println(result.toPrettyString());
        } else {
            print(result);
        }
        return CommandFace.OK;
    }

    private void setup(ObjectNode line, SetupStore store, Path folder, Path file) {
        line.put("file", folder.getFileName() + "/" + file.getFileName());
        line.put("season", Integer.parseInt(String.valueOf(folder.getFileName())));
        try {
            Setup setup = store.read(file);
            line.put("farm", setup.start().farm())
                    .put("field", setup.start().field())
                    .put("crop", setup.start().crop())
                    .put("product", setup.product().name())
                    .put("tramlineWidth", setup.start().tramlineWidth().toString())
                    .put("revision", setup.card().revision())
                    .put("nextStep", Assessor.assess(setup).nextStep().name());
        } catch (InputFileException unreadable) {
            line.put("problem", unreadable.problem());
        }
    }

    private static void cards(ArrayNode list, UserFolder user) throws InputFileException {
        for (IssuedCards.Issued card : new IssuedCards(user).all()) {
            list.addObject()
                    .put("file", String.valueOf(card.file().getFileName()))
                    .put("season", card.season())
                    .put("about", String.join(" · ", card.about()))
                    .put("revision", card.revision())
                    .put("signedAt", card.signedAt())
                    .put("key", card.keyCode())
                    .put("replaces", card.replaces());
        }
    }

    private void print(ObjectNode result) {
        for (String part : List.of("setups", "machines", "testedProducts", "cards")) {
            context.out().println(context.words().text("command.farm." + part));
            result.get(part).forEach(line -> context.out()
                    .println("  "
                            + (line.isObject()
                                    ? Stream.concat(Stream.empty(), values(line))
                                            .filter(text -> !text.isBlank())
                                            .collect(Collectors.joining("  "))
                                    : line.asText())));
        }
    }

    private static Stream<String> values(com.fasterxml.jackson.databind.JsonNode line) {
        return line.properties().stream().map(entry -> entry.getValue().asText());
    }
}
