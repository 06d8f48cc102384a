package org.evenfall.command;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.util.Set;
import java.util.concurrent.Callable;
import org.evenfall.card.CardVerifier;
import org.evenfall.card.SigningKeys;
import org.evenfall.card.VerifyResult;
import org.evenfall.finding.Arg;
import org.evenfall.store.SetupFileException;
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

    private final Surroundings around;

    @Parameters(paramLabel = "CARD.pdf", description = "the card")
    private String file = "";

    @Option(names = "--json", description = "as JSON")
    private boolean json;

    VerifyCommand(Surroundings around) {
        this.around = around;
    }

    @Override
    public Integer call() throws Exception {
        VerifyResult result = result();
        if (json) {
            around.out().println(around.json().mapper().writeValueAsString(result));
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

    private VerifyResult result() throws SetupFileException {
        byte[] bytes;
        try {
            bytes = Files.readAllBytes(around.path(file));
        } catch (NoSuchFileException missing) {
            throw new SetupFileException(file, "", "no such file");
        } catch (IOException unreadable) {
            throw new SetupFileException(file, "", "cannot be read");
        }
        try {
            return CardVerifier.verify(bytes, known());
        } catch (IOException damaged) {
            throw new SetupFileException(file, "", "is no PDF file, or is damaged");
        }
    }

    private Set<String> known() {
        Path key = around.user().key();
        try {
            return Files.exists(key) ? Set.of(SigningKeys.load(key, new char[0]).code()) : Set.of();
        } catch (IOException unreadable) {
            return Set.of();
        }
    }

    private void print(VerifyResult result) {
        around.out().println(around.words().text(headline(result)));
        if (!result.keyCode().isEmpty()) {
            around.out()
                    .println(around.words()
                            .text(
                                    result.knownKey() ? "verify.knownKey" : "verify.unknownKey",
                                    Arg.text(result.keyName()),
                                    Arg.text(result.keyCode())));
            around.out().println(around.words().text("verify.when", Arg.text(result.signedAt())));
            around.out().println(around.words().text("verify.means"));
        }
    }

    private static String headline(VerifyResult result) {
        if (!result.signed()) {
            return "verify.unsigned";
        }
        if (result.unchanged()) {
            return "verify.unchanged";
        }
        return result.appended() ? "verify.appended" : "verify.changed";
    }
}
