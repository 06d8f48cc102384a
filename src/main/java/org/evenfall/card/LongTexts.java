package org.evenfall.card;

import java.util.ArrayList;
import java.util.List;
import org.evenfall.card.CardContent.Figure;

/** Names and notes longer than anybody expects: dealt out in parts that each fit a page, never cut. */
final class LongTexts {

    private static final int MOST = 120;

    private LongTexts() {}

    static boolean isLong(String text) {
        return text.length() > MOST;
    }

    /** The text, or the beginning of a long one with an ellipsis; the whole of it then stands elsewhere. */
    static String abbreviated(String text) {
        return isLong(text) ? split(text).get(0) + " …" : text;
    }

    /** Each figure, a long one as several: first what is left of its label, then its value part by part. */
    static List<Figure> parts(List<Figure> figures) {
        List<Figure> all = new ArrayList<>();
        for (Figure figure : figures) {
            List<String> labels = split(figure.label());
            List<String> values = split(figure.value());
            for (int i = 0; i < labels.size() - 1; i++) {
                all.add(new Figure(labels.get(i), ""));
            }
            for (int i = 0; i < values.size(); i++) {
                all.add(new Figure(i == 0 ? labels.get(labels.size() - 1) : "", values.get(i)));
            }
        }
        return all;
    }

    /** Breaks at a blank where there is one. */
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
