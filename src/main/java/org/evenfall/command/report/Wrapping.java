package org.evenfall.command.report;

import java.text.BreakIterator;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

/** Breaks text into lines where the language allows it; a number keeps its unit. */
final class Wrapping {

    /** Java would break a line behind it, in the middle of °C. */
    private static final char DEGREE = '°';

    private Wrapping() {}

    /**
     * The lines of a text. A line end or tab in it counts as a blank; what is longer than a line without a place to break is
     * broken anywhere.
     *
     * @param width most letters of a line, at least 1
     * @return at least one line
     */
    static List<String> lines(String text, int width, Locale locale) {
        String plain = text.strip().replaceAll("\\p{Cntrl}+", " ");
        BreakIterator places = BreakIterator.getLineInstance(locale);
        places.setText(plain);
        List<String> lines = new ArrayList<>();
        int start = 0;
        while (plain.length() - start > width) {
            // a blank after the last letter does not count
            int end = plain.charAt(start + width) == ' ' ? start + width + 1 : places.preceding(start + width + 1);
            while (end > start && end < plain.length() && plain.charAt(end - 1) == DEGREE) {
                end = places.preceding(end);
            }
            int broken = end > start ? end : start + width;
            lines.add(plain.substring(start, broken).stripTrailing());
            start = broken;
        }
        lines.add(plain.substring(start));
        return lines;
    }
}
