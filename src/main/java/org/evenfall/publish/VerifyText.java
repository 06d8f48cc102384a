package org.evenfall.publish;

import java.time.Instant;
import java.time.OffsetDateTime;
import java.time.ZoneOffset;
import java.time.format.DateTimeFormatter;
import java.time.format.DateTimeParseException;
import java.util.List;
import java.util.Locale;
import org.evenfall.finding.Arg;
import org.evenfall.finding.Sentences;
import org.evenfall.quantity.PlainText;
import org.evenfall.sign.VerifyResult;

/** A verification in words. */
public final class VerifyText {

    private static final DateTimeFormatter TIME = DateTimeFormatter.ofPattern("', 'HH:mm' UTC'", Locale.ROOT);

    /** Characters of a name from a certificate that are shown. */
    private static final int MOST_NAME = 80;

    private VerifyText() {}

    /** The answer in one sentence; after it, where a key signed, whose it is, when it signed and what that proves. */
    public static List<String> of(VerifyResult result, Sentences words) {
        String headline = words.text(headlineKey(result));
        if (result.keyCode().isEmpty()) {
            return List.of(headline);
        }
        return List.of(
                headline,
                words.text(
                        result.knownKey() ? "verify.knownKey" : "verify.unknownKey",
                        Arg.text(PlainText.oneLine(result.keyName(), MOST_NAME)),
                        Arg.text(result.keyCode())),
                words.text("verify.when", Arg.text(time(result.signedAt(), words))),
                words.text("verify.means"));
    }

    /** The time of a signature as people write it; as it is in the file where that is no time. */
    private static String time(String signedAt, Sentences words) {
        try {
            OffsetDateTime time = Instant.parse(signedAt).atOffset(ZoneOffset.UTC);
            return words.word(new Arg.Day(time.toLocalDate())) + TIME.format(time);
        } catch (DateTimeParseException e) {
            return PlainText.oneLine(signedAt, MOST_NAME);
        }
    }

    private static String headlineKey(VerifyResult result) {
        if (!result.signed()) {
            return "verify.unsigned";
        }
        if (result.unchanged()) {
            return "verify.unchanged";
        }
        return result.appended() ? "verify.appended" : "verify.changed";
    }
}
