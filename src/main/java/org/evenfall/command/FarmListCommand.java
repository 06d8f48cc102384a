package org.evenfall.command;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.nio.file.Path;
import java.util.concurrent.Callable;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.evenfall.finding.Arg;
import org.evenfall.finding.Step;
import org.evenfall.quantity.PlainText;
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
        description =
                "Setups by season with what is next, machines, tested products, cards issued with what each replaced.")
final class FarmListCommand implements Callable<Integer> {

    /** Characters of a line at most. */
    private static final int MOST = 400;

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
        heading("setups", result);
        for (JsonNode setup : result.get("setups")) {
            line(
                    setup.get("file").asText(),
                    joined(setup, "farm", "field", "crop", "product", "tramlineWidth"),
                    setup.has("problem")
                            ? setup.get("problem").asText()
                            : context.words()
                                    .text(
                                            "home.next",
                                            Arg.text(context.words()
                                                    .choice(Step.valueOf(setup.get("nextStep")
                                                            .asText())))));
        }
        heading("machines", result);
        result.get("machines").forEach(machine -> line(machine.asText()));
        heading("testedProducts", result);
        for (JsonNode products : result.get("testedProducts")) {
            line(products.get("machine").asText(), products.get("count").asText());
        }
        heading("cards", result);
        for (JsonNode card : result.get("cards")) {
            String before = card.get("replaces").asText();
            line(
                    card.get("file").asText(),
                    card.get("about").asText(),
                    context.words()
                            .text(
                                    "command.farm.revision",
                                    Arg.count(card.get("revision").asInt())),
                    before.isEmpty() ? "" : context.words().text("command.farm.replaces", Arg.text(before)));
        }
    }

    private void heading(String part, ObjectNode result) {
        context.out().println(context.words().text("command.farm." + part));
        if (result.get(part).isEmpty()) {
            line(context.words().text("start.none"));
        }
    }

    private void line(String... parts) {
        String line = Stream.of(parts).filter(part -> !part.isBlank()).collect(Collectors.joining("  "));
        context.out().println("  " + PlainText.oneLine(line, MOST));
    }

    private static String joined(JsonNode line, String... keys) {
        return Stream.of(keys)
                .map(key -> line.path(key).asText())
                .filter(text -> !text.isBlank())
                .collect(Collectors.joining(" · "));
    }
}
