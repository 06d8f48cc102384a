package org.evenfall.page;

import java.util.ArrayList;
import java.util.List;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.text.PDFTextStripper;
import org.apache.pdfbox.text.TextPosition;

/** Letters of a file with their places, for the tests of what is drawn. */
public final class Letters extends PDFTextStripper {

    private final StringBuilder text = new StringBuilder();
    /** Letters outside the margin, with their places. */
    public final List<String> outside = new ArrayList<>();

    private final double margin;
    private final List<double[]> places = new ArrayList<>();
    /** Smallest font size, points. */
    public float smallest = Float.MAX_VALUE;

    private Letters(double margin) {
        this.margin = margin;
    }

    /**
     * The letters of all pages.
     *
     * @param marginPt margin that has no letter, points
     */
    public static Letters of(byte[] pdf, double marginPt) throws Exception {
        try (PDDocument document = Loader.loadPDF(pdf)) {
            Letters letters = new Letters(marginPt - 0.5);
            letters.getText(document);
            return letters;
        }
    }

    @Override
    protected void processTextPosition(TextPosition letter) {
        super.processTextPosition(letter);
        text.append(letter.getUnicode());
        smallest = Math.min(smallest, letter.getFontSizeInPt());
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

    /** Letters that lie on another one. */
    public List<String> overlaps() {
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

    /** All letters without blanks. */
    public String all() {
        return withoutBlanks(text);
    }

    /** A text as {@link #all} has it. */
    public static String withoutBlanks(CharSequence text) {
        return text.toString().replaceAll("[\\s\u00a0]", "");
    }
}
