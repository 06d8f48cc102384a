package org.evenfall.command;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.time.Instant;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.concurrent.Callable;
import org.evenfall.card.CardContents;
import org.evenfall.card.CardMaker;
import org.evenfall.card.KeyException;
import org.evenfall.card.KeyRing;
import org.evenfall.card.SigningKey;
import org.evenfall.setup.Assessment;
import org.evenfall.setup.Assessor;
import org.evenfall.setup.entry.CardLanguage;
import org.evenfall.setup.entry.Setup;
import org.evenfall.store.InputFileException;
import org.evenfall.store.SetupStore;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** The signed cab card of a setup, or the one-page finding. */
@Command(
        name = "card",
        mixinStandardHelpOptions = true,
        description = "Writes the signed cab card. Several setups go into a folder, one card each.")
final class CardCommand implements Callable<Integer> {

    private final CommandContext context;

    @Parameters(paramLabel = "SETUP.json", arity = "1..*", description = "setup files")
    private List<String> files = List.of();

    @Option(
            names = "--out",
            required = true,
            paramLabel = "CARD.pdf|DIR",
            description = "the card, or a folder for several")
    private String out = "";

    @Option(
            names = "--language",
            paramLabel = "LANGUAGE",
            description = "language of the card, whatever the setup says: ${COMPLETION-CANDIDATES}")
    private @Nullable LanguageOption language;

    /** A language as it is said on the command line. */
    enum LanguageOption {
        en(CardLanguage.EN),
        de(CardLanguage.DE),
        fr(CardLanguage.FR);

        private final CardLanguage card;

        LanguageOption(CardLanguage card) {
            this.card = card;
        }
    }

    @Option(
            names = "--passphrase-file",
            paramLabel = "FILE",
            description = "a text file with the passphrase of the signing key, where it has one")
    private @Nullable String passphrase;

    private final KeyRing keys;

    CardCommand(CommandContext context) {
        this.context = context;
        this.keys = new KeyRing(context.user().root());
    }

    @Override
    public Integer call() throws Exception {
        Path target = context.path(out);
        boolean folder = files.size() > 1
                || Files.isDirectory(target)
                || !out.toLowerCase(Locale.ROOT).endsWith(".pdf");
        Set<String> used = new HashSet<>();
        int worst = CommandFace.OK;
        for (String file : files) {
            Path card = folder ? target.resolve(free(name(file), used)) : target;
            worst = Math.max(worst, make(file, card));
        }
        return worst;
    }

    /** Setups of one name from several folders do not write over each other. */
    private static String free(String name, Set<String> used) {
        String free = name + ".pdf";
        for (int i = 2; !used.add(free); i++) {
            free = name + "-" + i + ".pdf";
        }
        return free;
    }

    private static String name(String file) {
        String name = String.valueOf(Path.of(file).getFileName());
        return name.endsWith(".json") ? name.substring(0, name.length() - 5) : name;
    }

    private int make(String file, Path card) throws InputFileException, IOException {
        Setup read = SetupInputs.read(context, file);
        Setup setup = language == null ? read : read.withCard(read.card().withLanguage(language.card));
        Assessment assessment = Assessor.assess(setup);
        if (!assessment.card().cardAllowed() && !assessment.card().findingOnly()) {
            return Refusal.tell(context, file, assessment);
        }
        byte[] bytes = signed(setup, assessment);
        try {
            SetupStore.writeWhole(card, bytes);
        } catch (IOException notWritable) {
            throw new InputFileException(card.toString(), "", "cannot be written; nothing was changed");
        }
        context.out().println(card);
        return CommandFace.OK;
    }

    byte[] signed(Setup setup, Assessment assessment) throws IOException, InputFileException {
        Instant now = context.clock().instant();
        SigningKey key = key(setup, now);
        return CardMaker.make(
                CardContents.of(setup, assessment, context.words(), key.code()),
                key,
                setup.card().signedBy(),
                now);
    }

    private SigningKey key(Setup setup, Instant now) throws IOException, InputFileException {
        try {
            if (passphrase != null && keys.status().state() == KeyRing.State.LOCKED) {
                keys.unlock(Files.readString(context.path(passphrase)).strip().toCharArray());
            }
            return keys.signing(setup.card().signedBy(), setup.card().role(), now);
        } catch (KeyException trouble) {
            throw new InputFileException(
                    context.user().root().toString(),
                    "",
                    context.words().choice(trouble.kind()) + " (--passphrase-file)");
        } catch (NoSuchFileException missing) {
            throw new InputFileException(String.valueOf(passphrase), "", "no such file");
        }
    }
}
