package org.evenfall.card;

import java.util.ArrayList;
import java.util.List;
import org.evenfall.finding.Arg;
import org.evenfall.finding.Sentences;
import org.evenfall.page.QrCode;

/**
 * The text of the QR code: whole lines in their order, as many as fit. Where not all fit, the last line names what is left
 * out: the only line, or the first and the last of several; it counts them where the names do not fit either.
 *
 * @param words the card's language
 */
record CodeText(Sentences words) {

    /**
     * A line of the text.
     *
     * @param name what the line is about
     * @param text the line
     */
    record Line(String name, String text) {}

    /** The text. */
    String of(List<Line> lines) {
        List<Line> plain = lines.stream()
                .map(line -> new Line(plain(line.name()), plain(line.text())))
                .toList();
        String all = joined(plain, "");
        if (QrCode.fits(all)) {
            return all;
        }
        for (int kept = plain.size() - 1; kept > 0; kept--) {
            String text = joined(plain.subList(0, kept), leftOut(plain.subList(kept, plain.size())));
            if (QrCode.fits(text)) {
                return text;
            }
        }
        return counted(plain);
    }

    private String leftOut(List<Line> lines) {
        Arg first = Arg.text(lines.get(0).name());
        return plain(
                lines.size() == 1
                        ? words.text("card.code.leftOut", first)
                        : words.text(
                                "card.code.leftOutFrom",
                                first,
                                Arg.text(lines.get(lines.size() - 1).name())));
    }

    private String counted(List<Line> lines) {
        int kept = lines.size();
        String text;
        do {
            kept--;
            text = joined(
                    lines.subList(0, kept),
                    plain(words.text("card.code.leftOutCount", Arg.count((long) lines.size() - kept))));
        } while (kept > 0 && !QrCode.fits(text));
        return text;
    }

    private static String joined(List<Line> lines, String end) {
        List<String> texts = new ArrayList<>(lines.stream().map(Line::text).toList());
        if (!end.isEmpty()) {
            texts.add(end);
        }
        return String.join("\n", texts);
    }

    /** One line, with blanks that every phone shows. */
    private static String plain(String text) {
        return text.replace('\n', ' ').replace('\u00a0', ' ').replace('\u202f', ' ');
    }
}
