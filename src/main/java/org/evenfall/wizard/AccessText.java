package org.evenfall.wizard;

import java.time.Instant;
import java.time.ZoneId;
import java.time.format.DateTimeFormatter;
import java.time.format.FormatStyle;
import org.evenfall.finding.Arg;
import org.evenfall.finding.Sentences;
import org.evenfall.store.Owner;
import org.evenfall.store.ReadOnly;

/** Why a setup can only be read, in words. */
final class AccessText {

    private AccessText() {}

    /**
     * The reason; with who has the setup and since when, where that is known.
     *
     * @param namesHidden whether nobody is named
     */
    static String of(ReadOnly access, Sentences words, ZoneId zone, boolean namesHidden) {
        return switch (access.why()) {
            case NEWER_PROGRAM -> words.text("document.newer");
            case NOT_WRITABLE -> words.text("document.notWritable");
            case OPEN_ELSEWHERE ->
                access.holder()
                        .filter(holder -> !namesHidden)
                        .map(holder -> openElsewhere(holder, words, zone))
                        .orElse(words.text("document.openSomewhere"));
        };
    }

    private static String openElsewhere(Owner holder, Sentences words, ZoneId zone) {
        return words.text(
                "document.openElsewhere",
                Arg.text(holder.person()),
                Arg.text(holder.computer()),
                Arg.text(time(holder.since(), words, zone)));
    }

    /** A day and time as people write them. */
    static String time(Instant instant, Sentences words, ZoneId zone) {
        return DateTimeFormatter.ofLocalizedDateTime(FormatStyle.MEDIUM, FormatStyle.SHORT)
                .withLocale(words.locale())
                .withZone(zone)
                .format(instant);
    }
}
