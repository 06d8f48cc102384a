package org.evenfall.card;

import java.util.ArrayList;
import java.util.List;
import org.evenfall.card.CardContent.Figure;

/** Splits very long names and notes into parts that each fit a page, so that nothing is cut. */
final class LongTexts {

    /** Most letters of a part. Assumption: about three lines of the narrowest column. */
    private static final int MOST = 120;

    private LongTexts() {}

    static boolean isLong(String text) {
        return text.length() > MOST;
    }

    /** The text, or the beginning of a long one with an ellipsis; the caller prints the whole in another place. */
    static String abbreviated(String text) {
        return isLong(text) ? split(text).get(0) + " …" : text;
    }

    /** The figures, a long one as several: the parts of its label first, then the parts of its value. */
    static List<Figure> parts(List<Figure> figures) {
        List<Figure> all = new ArrayList<>();
        for (Figure figure : figures) {
            List<String> labels = split(figure.label());
            List<String> values = split(figure.value());
            for (int i = 0; i < labels.size() - 1; i++) {
                all.add(new Figure(labels.get(i), ""));
            }
            for (int i = 0; i < values.size(); i++) {
                boolean withNext = figure.withNext() && i == values.size() - 1;
                all.add(new Figure(i == 0 ? labels.get(labels.size() - 1) : "", values.get(i), withNext));
            }
        }
        return all;
    }

    /** The parts of a text; a part ends at a blank where there is one in its second half. */
    static List<String> split(String text) {
        List<String> parts = new ArrayList<>();
        String left = text;
        while (isLong(left)) {
            int blank = left.lastIndexOf(' ', MOST);
            int at = blank > MOST / 2 ? blank : MOST;
            parts.add(left.substring(0, at).strip());
            left = left.substring(at).strip();
        }
        parts.add(left);
        return parts;
    }
}
