package org.evenfall.result;

import java.time.LocalDateTime;
import java.time.format.DateTimeFormatter;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.evenfall.finding.Arg;
import org.evenfall.finding.Sentences;
import org.evenfall.setup.entry.Setup;

/** The foot of a page of paper: which setup, which revision, when printed. */
public final class PrintedLine {

    private static final DateTimeFormatter TIME = DateTimeFormatter.ofPattern("HH:mm", Locale.ROOT);

    private PrintedLine() {}

    /** Farm, field and product as far as they are typed, the revision of a card, day and time of printing. */
    public static String of(Sentences words, Setup setup, LocalDateTime when) {
        List<String> named = new ArrayList<>();
        for (String part : List.of(
                setup.start().farm(), setup.start().field(), setup.product().name())) {
            if (!part.isBlank()) {
                named.add(part.strip());
            }
        }
        int revision = setup.card().revision();
        Arg day = new Arg.Day(when.toLocalDate());
        Arg time = Arg.text(TIME.format(when));
        named.add(
                revision == 0
                        ? words.text("sheet.printed", day, time)
                        : words.text("sheet.printedRevision", Arg.count(revision), day, time));
        return String.join(" · ", named);
    }
}
