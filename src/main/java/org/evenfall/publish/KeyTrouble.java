package org.evenfall.publish;

import org.evenfall.finding.Arg;
import org.evenfall.finding.Sentences;
import org.evenfall.quantity.PlainText;
import org.evenfall.sign.KeyException;

/** Why a key cannot be used, in a sentence; with what the system reports, for whoever is asked for help. */
public final class KeyTrouble {

    private static final int MOST_DETAIL = 120;

    private KeyTrouble() {}

    /** The sentence of the kind, with what the system reports in brackets where there is something. */
    public static String sentence(Sentences words, KeyException trouble) {
        String kind = words.choice(trouble.kind());
        String detail = trouble.detail();
        return detail.isBlank()
                ? kind
                : words.text("key.detail", Arg.text(kind), Arg.text(PlainText.oneLine(detail, MOST_DETAIL)));
    }
}
