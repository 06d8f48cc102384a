package org.evenfall.command;

import java.util.concurrent.Callable;
import org.evenfall.publish.CardService;
import org.evenfall.publish.KeyTrouble;
import org.evenfall.publish.VerifyText;
import org.evenfall.sign.KeyException;
import org.evenfall.sign.VerifyResult;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** Tells whether a card is unchanged since it was signed, and by which key. */
@Command(
        mixinStandardHelpOptions = true,
        description = {
            "Tells whether a card is unchanged since it was signed, and by which key.",
            "Exit codes: 0 unchanged, by a key known here; 1 changed; 2 the call is wrong, or the file is no card, damaged or cut short;",
            "3 unchanged, by a key not known here; 4 not signed; 5 something was added after signing."
        })
final class VerifyCommand implements Callable<Integer> {

    private static final int UNKNOWN_KEY = 3;
    private static final int UNSIGNED = 4;
    private static final int APPENDED = 5;

    private final CommandContext context;

    @Parameters(paramLabel = "CARD.pdf", description = "the card")
    private String file = "";

    @Option(names = "--json", description = "as JSON")
    private boolean json;

    VerifyCommand(CommandContext context) {
        this.context = context;
    }

    @Option(
            names = "--remember",
            paramLabel = "NAME",
            description = "knows the key of this card, if it is unchanged, from now on, under this name")
    private @Nullable String remember;

    @Override
    public Integer call() throws Exception {
        CardService cards = new CardService(context.user(), context.words(), context.clock());
        VerifyResult result = cards.verify(context.path(file));
        if (remember != null && result.unchanged()) {
            remember(cards, result.keyCode(), remember);
            result = cards.verify(context.path(file));
        }
        if (json) {
            context.out().println(context.json().mapper().writeValueAsString(result));
        } else {
            print(result);
        }
        return code(result);
    }

    private void remember(CardService cards, String code, String name) throws CommandException {
        try {
            cards.keys().remember(code, name);
        } catch (KeyException notWritten) {
            throw new CommandException(
                    context.user().root() + ": " + KeyTrouble.sentence(context.words(), notWritten), notWritten);
        }
    }

    private static int code(VerifyResult result) {
        if (!result.signed()) {
            return UNSIGNED;
        }
        if (result.unchanged()) {
            return result.knownKey() ? CommandFace.OK : UNKNOWN_KEY;
        }
        return result.appended() ? APPENDED : CommandFace.FOUND;
    }

    private void print(VerifyResult result) {
        VerifyText.of(result, context.words()).forEach(context.out()::println);
    }
}
