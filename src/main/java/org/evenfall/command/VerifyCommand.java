package org.evenfall.command;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.util.concurrent.Callable;
import org.evenfall.card.CardVerifier;
import org.evenfall.card.KeyRing;
import org.evenfall.card.VerifyResult;
import org.evenfall.finding.Arg;
import org.evenfall.store.InputFileException;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** Whether a card is as it was signed, and by which key. */
@Command(
        name = "verify",
        mixinStandardHelpOptions = true,
        description = {
            "Tells whether a card is unchanged since it was signed, and by which key.",
            "Exit codes: 0 unchanged, by a key known here; 1 changed; 2 the call or the file is wrong;",
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
        VerifyResult result = result();
        if (remember != null && result.unchanged()) {
            new KeyRing(context.user().root()).remember(result.keyCode(), remember);
            result = result();
        }
        if (json) {
            context.out().println(context.json().mapper().writeValueAsString(result));
        } else {
            print(result);
        }
        return code(result);
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

    private VerifyResult result() throws InputFileException {
        byte[] bytes;
        try {
            bytes = Files.readAllBytes(context.path(file));
        } catch (NoSuchFileException missing) {
            throw new InputFileException(file, "", "no such file");
        } catch (IOException unreadable) {
            throw new InputFileException(file, "", "cannot be read");
        }
        try {
            return CardVerifier.verify(bytes, new KeyRing(context.user().root()).codes());
        } catch (IOException damaged) {
            throw new InputFileException(file, "", "is no PDF file, or is damaged");
        }
    }

    private void print(VerifyResult result) {
        context.out().println(context.words().text(result.headlineKey()));
        if (!result.keyCode().isEmpty()) {
            context.out()
                    .println(context.words()
                            .text(
                                    result.knownKey() ? "verify.knownKey" : "verify.unknownKey",
                                    Arg.text(result.keyName()),
                                    Arg.text(result.keyCode())));
            context.out().println(context.words().text("verify.when", Arg.text(result.signedAt())));
            context.out().println(context.words().text("verify.means"));
        }
    }
}
