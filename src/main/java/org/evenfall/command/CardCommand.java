package org.evenfall.command;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.concurrent.Callable;
import org.evenfall.publish.CardService;
import org.evenfall.publish.KeyTrouble;
import org.evenfall.setup.Assessment;
import org.evenfall.setup.Assessor;
import org.evenfall.setup.entry.CardLanguage;
import org.evenfall.setup.entry.Setup;
import org.evenfall.sign.KeyException;
import org.evenfall.sign.KeyRing;
import org.evenfall.store.FreeNames;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** Writes the signed cab card of a setup, or the one-page finding. */
@Command(
        mixinStandardHelpOptions = true,
        description = {
            "Writes the signed cab card. Several setups go into a folder, one card each.",
            "Each file is named once it is written. An error ends the call; the cards named before it stay.",
            "Where no card can be made, the exit code is 1 and one line says what to do. A field that is too uneven,"
                    + " or a width out of reach, gives a finding sheet instead, NAME-finding.pdf."
        })
final class CardCommand implements Callable<Integer> {

    private final CommandContext context;
    private final CardService cards;

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
            description = "language of the card, overrides that of the setup: ${COMPLETION-CANDIDATES}")
    private @Nullable LanguageOption language;

    /** A language as it is typed on the command line. */
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

    CardCommand(CommandContext context) {
        this.context = context;
        this.cards = new CardService(context.user(), context.words(), context.clock());
    }

    @Override
    public Integer call() throws Exception {
        Path target = context.path(out);
        boolean folder = files.size() > 1
                || Files.isDirectory(target)
                || !out.toLowerCase(Locale.ROOT).endsWith(".pdf");
        Set<String> used = new HashSet<>();
        List<Path> targets = new ArrayList<>();
        for (String file : files) {
            Path card = folder ? target.resolve(cardName(file, used)) : target;
            OutputFile.refuse(context, card, inputs());
            OutputFile.refuse(context, CardService.findingName(card), inputs());
            targets.add(card);
        }
        int worst = CommandFace.OK;
        for (int i = 0; i < targets.size(); i++) {
            worst = Math.max(worst, write(files.get(i), targets.get(i)));
        }
        return worst;
    }

    private List<String> inputs() {
        List<String> inputs = new ArrayList<>(files);
        if (passphrase != null) {
            inputs.add(passphrase);
        }
        return inputs;
    }

    /** The name of a setup's card. Setups of one name from several folders get different names. */
    private static String cardName(String file, Set<String> used) {
        String name = String.valueOf(Path.of(file).getFileName());
        String stem = name.endsWith(".json") ? name.substring(0, name.length() - ".json".length()) : name;
        String free = FreeNames.first(stem, ".pdf", used::contains);
        used.add(free);
        return free;
    }

    private int write(String file, Path card) throws Exception {
        Setup read = SetupInputs.read(context, file);
        Setup setup = language == null ? read : read.withCard(read.card().withLanguage(language.card));
        Assessment assessment = Assessor.assess(setup);
        boolean allowed = assessment.card().cardAllowed();
        if (!allowed) {
            Refusal.report(context, file, assessment);
            if (!assessment.card().findingOnly()) {
                return CommandFace.FOUND;
            }
        }
        Path written = allowed ? card : CardService.findingName(card);
        try {
            unlock();
            OutputFile.write(context, written, () -> cards.write(setup, assessment, written));
        } catch (KeyException unusable) {
            throw new CommandException(
                    context.user().root() + ": " + KeyTrouble.sentence(context.words(), unusable)
                            + hint(unusable.kind()),
                    unusable);
        }
        return allowed ? CommandFace.OK : CommandFace.FOUND;
    }

    /** Only a passphrase that is missing or wrong can be given. */
    private static String hint(KeyException.Kind kind) {
        return kind == KeyException.Kind.LOCKED || kind == KeyException.Kind.WRONG_PASSPHRASE
                ? " (--passphrase-file)"
                : "";
    }

    private void unlock() throws KeyException, CommandException {
        char[] typed = passphrase == null ? new char[0] : PassphraseFile.read(context, passphrase);
        try {
            KeyRing.Status status = cards.keys().status();
            if (status.wasReadable()) {
                context.err().println(context.words().text("key.wasReadable"));
            }
            if (passphrase != null && status.state() == KeyRing.State.LOCKED) {
                cards.keys().unlock(typed);
            }
        } finally {
            Arrays.fill(typed, '\0');
        }
    }
}
