package org.evenfall.command;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import java.util.List;
import java.util.concurrent.Callable;
import org.evenfall.card.CardContents;
import org.evenfall.card.CardMaker;
import org.evenfall.card.SigningKey;
import org.evenfall.card.SigningKeys;
import org.evenfall.setup.Assessment;
import org.evenfall.setup.Assessor;
import org.evenfall.setup.entry.Setup;
import org.evenfall.store.SetupFileException;
import org.evenfall.store.SetupStore;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** The signed cab card of a setup, or the one-page finding. */
@Command(
        name = "card",
        mixinStandardHelpOptions = true,
        description = "Writes the signed cab card. Several setups go into a folder, one card each.")
final class CardCommand implements Callable<Integer> {

    private final Surroundings around;

    @Parameters(paramLabel = "SETUP.json", arity = "1..*", description = "setup files")
    private List<String> files = List.of();

    @Option(
            names = "--out",
            required = true,
            paramLabel = "CARD.pdf|DIR",
            description = "the card, or a folder for several")
    private String out = "";

    CardCommand(Surroundings around) {
        this.around = around;
    }

    @Override
    public Integer call() throws Exception {
        Path target = around.path(out);
        boolean folder = files.size() > 1 || Files.isDirectory(target);
        int worst = CommandFace.OK;
        for (String file : files) {
            Path card = folder ? target.resolve(name(file)) : target;
            worst = Math.max(worst, make(file, card));
        }
        return worst;
    }

    private static String name(String file) {
        String name = String.valueOf(Path.of(file).getFileName());
        return (name.endsWith(".json") ? name.substring(0, name.length() - 5) : name) + ".pdf";
    }

    private int make(String file, Path card) throws SetupFileException, IOException {
        Setup setup = SetupInputs.read(around, file);
        Assessment assessment = Assessor.assess(setup);
        if (!assessment.card().cardAllowed() && !assessment.card().findingOnly()) {
            return Refusal.tell(around, file, assessment);
        }
        byte[] bytes = signed(around, setup, assessment);
        try {
            SetupStore.writeWhole(card, bytes);
        } catch (IOException notWritable) {
            throw new SetupFileException(card.toString(), "", "cannot be written; nothing was changed");
        }
        around.out().println(card);
        return CommandFace.OK;
    }

    static byte[] signed(Surroundings around, Setup setup, Assessment assessment) throws IOException {
        Instant now = around.clock().instant();
        SigningKey key = SigningKeys.loadOrMake(
                around.user().key(),
                new char[0],
                setup.card().signedBy(),
                setup.card().role(),
                now);
        return CardMaker.make(
                CardContents.of(setup, assessment, around.words(), key.code()),
                key,
                setup.card().signedBy(),
                now);
    }
}
