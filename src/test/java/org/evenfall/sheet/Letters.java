package org.evenfall.sheet;

import java.util.ArrayList;
import java.util.List;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.text.PDFTextStripper;
import org.apache.pdfbox.text.TextPosition;

/** Letters of a file with their places. */
final class Letters extends PDFTextStripper {

    private final StringBuilder text = new StringBuilder();
    final List<String> outside = new ArrayList<>();
    private final List<double[]> places = new ArrayList<>();
    float smallest = Float.MAX_VALUE;

    static Letters of(byte[] pdf) throws Exception {
        try (PDDocument document = Loader.loadPDF(pdf)) {
            Letters letters = new Letters();
            letters.getText(document);
            return letters;
        }
    }

    @Override
    protected void processTextPosition(TextPosition letter) {
        super.processTextPosition(letter);
        text.append(letter.getUnicode());
        smallest = Math.min(smallest, letter.getFontSizeInPt());
        double margin = SheetStyle.MARGIN - 0.5;
        double right = letter.getX() + letter.getWidth();
        double top = letter.getY() - 0.7 * letter.getFontSizeInPt();
        if (letter.getUnicode().isBlank()) {
            return;
        }
        places.add(new double[] {getCurrentPageNo(), letter.getX(), top, right, letter.getY()});
        if (letter.getX() < margin
                || right > getCurrentPage().getMediaBox().getWidth() - margin
                || top < margin
                || letter.getY() > getCurrentPage().getMediaBox().getHeight() - margin) {
            outside.add(letter.getUnicode() + " at " + letter.getX() + ", " + letter.getY());
        }
    }

    List<String> overlaps() {
        List<String> found = new ArrayList<>();
        for (int i = 0; i < places.size(); i++) {
            for (int j = i + 1; j < places.size(); j++) {
                double[] a = places.get(i);
                double[] b = places.get(j);
                if (a[0] == b[0]
                        && Math.min(a[3], b[3]) - Math.max(a[1], b[1]) > 1
                        && Math.min(a[4], b[4]) - Math.max(a[2], b[2]) > 1) {
                    found.add("page " + a[0] + " at " + a[1] + ", " + a[4]);
                }
            }
        }
        return found;
    }

    String all() {
        return withoutBlanks(text);
    }

    static String withoutBlanks(CharSequence text) {
        return text.toString().replaceAll("[\\s\u00a0]", "");
    }
}
