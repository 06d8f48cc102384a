package org.evenfall.page;

import java.awt.Color;
import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.PDPageContentStream;
import org.apache.pdfbox.pdmodel.documentinterchange.logicalstructure.PDStructureElement;
import org.evenfall.page.Typefaces.Run;

/** Draws on one page. Points, origin at the top left, y downwards. */
public final class Pen {

    private final PDPageContentStream stream;
    private final Typefaces typefaces;
    private final Tags tags;
    private final PDPage page;
    private final double height;
    private boolean marking;

    Pen(PDPageContentStream stream, Typefaces typefaces, Tags tags, PDPage page) {
        this.stream = stream;
        this.typefaces = typefaces;
        this.tags = tags;
        this.page = page;
        this.height = page.getMediaBox().getHeight();
    }

    /** The structure tree of the document. */
    public Tags tags() {
        return tags;
    }

    /** What is drawn together. */
    @FunctionalInterface
    public interface Drawing {
        /** Draws. */
        void draw() throws IOException;
    }

    /** Draws content that belongs to an element of the structure tree. */
    public void mark(PDStructureElement element, Drawing drawing) throws IOException {
        begin(element);
        drawing.draw();
        end();
    }

    private void begin(PDStructureElement element) throws IOException {
        stream.beginMarkedContent(COSName.getPDFName(element.getStructureType()), tags.next(page, element));
        marking = true;
    }

    private void end() throws IOException {
        marking = false;
        stream.endMarkedContent();
    }

    /** Draws lines and boxes without meaning of their own (an artifact, ISO 32000-1, 14.8.2.2), unless they are marked. */
    private void artifact(Drawing drawing) throws IOException {
        if (marking) {
            drawing.draw();
        } else {
            stream.beginMarkedContent(COSName.ARTIFACT);
            drawing.draw();
            stream.endMarkedContent();
        }
    }

    /** Width of a text on one line. */
    public double width(TextStyle style, String text) throws IOException {
        return typefaces.width(style, text);
    }

    /** Writes one line with its baseline at y. */
    public void text(TextStyle style, double x, double y, String text) throws IOException {
        stream.beginText();
        stream.setNonStrokingColor(style.colour());
        stream.newLineAtOffset((float) x, (float) (height - y));
        for (Run run : typefaces.runs(style.weight(), text)) {
            stream.setFont(run.font(), (float) style.size());
            stream.showText(run.text());
        }
        stream.endText();
    }

    /** Writes lines from a top edge down; gives the lower edge. */
    public double lines(TextStyle style, double x, double top, List<String> lines) throws IOException {
        double y = top;
        for (String line : lines) {
            y += style.lineHeight();
            text(style, x, y - style.descent(), line);
        }
        return y;
    }

    /** Writes a wrapped text from a top edge down; gives the lower edge. */
    public double paragraph(TextStyle style, double x, double top, double width, String text) throws IOException {
        return lines(style, x, top, wrap(style, width, text));
    }

    /**
     * Writes a wrapped text that is a new element at the end of the document; gives the lower edge.
     *
     * @param type type of the element
     */
    public double marked(String type, TextStyle style, double x, double top, double width, String text)
            throws IOException {
        begin(tags.element(type));
        double bottom = paragraph(style, x, top, width, text);
        end();
        return bottom;
    }

    /** Height of a wrapped text. */
    public double paragraphHeight(TextStyle style, double width, String text) throws IOException {
        return wrap(style, width, text).size() * style.lineHeight();
    }

    /** Breaks a text at blanks; a word longer than the line is broken where the line ends. */
    public List<String> wrap(TextStyle style, double width, String text) throws IOException {
        List<String> lines = new ArrayList<>();
        String line = "";
        for (String word : text.strip().split("\\s+", -1)) {
            String longer = line.isEmpty() ? word : line + " " + word;
            if (width(style, longer) <= width) {
                line = longer;
                continue;
            }
            if (!line.isEmpty()) {
                lines.add(line);
            }
            line = word;
            for (int fits = fitting(style, width, line); fits < line.length(); fits = fitting(style, width, line)) {
                lines.add(line.substring(0, fits));
                line = line.substring(fits);
            }
        }
        if (!line.isEmpty()) {
            lines.add(line);
        }
        return lines;
    }

    /** How much of the beginning of a word fits a line, at least a letter. Each letter is measured once. */
    private int fitting(TextStyle style, double width, String word) throws IOException {
        double taken = 0;
        for (int i = 0; i < word.length(); i = word.offsetByCodePoints(i, 1)) {
            taken += width(style, Character.toString(word.codePointAt(i)));
            if (taken > width && i > 0) {
                return i;
            }
        }
        return word.length();
    }

    /** Draws a line. */
    public void line(double x1, double y1, double x2, double y2, double thickness, Color colour) throws IOException {
        artifact(() -> {
            stream.setStrokingColor(colour);
            stream.setLineWidth((float) thickness);
            stream.moveTo((float) x1, (float) (height - y1));
            stream.lineTo((float) x2, (float) (height - y2));
            stream.stroke();
        });
    }

    /** Draws the outline of a rectangle. */
    public void box(double x, double top, double width, double boxHeight, double thickness, Color colour)
            throws IOException {
        artifact(() -> {
            stream.setStrokingColor(colour);
            stream.setLineWidth((float) thickness);
            stream.addRect((float) x, (float) (height - top - boxHeight), (float) width, (float) boxHeight);
            stream.stroke();
        });
    }

    /** Fills a rectangle. */
    public void fill(double x, double top, double width, double boxHeight, Color colour) throws IOException {
        artifact(() -> {
            stream.setNonStrokingColor(colour);
            stream.addRect((float) x, (float) (height - top - boxHeight), (float) width, (float) boxHeight);
            stream.fill();
        });
    }

    /** Draws a circle around a centre, as four Bézier curves. */
    public void circle(double x, double y, double radius, Color colour) throws IOException {
        artifact(() -> {
            // 4/3 (sqrt 2 - 1): a quarter circle by one cubic curve
            double k = 0.5523 * radius;
            float cx = (float) x;
            float cy = (float) (height - y);
            float r = (float) radius;
            float c = (float) k;
            stream.setStrokingColor(colour);
            stream.setLineWidth(0.7f);
            stream.moveTo(cx + r, cy);
            stream.curveTo(cx + r, cy + c, cx + c, cy + r, cx, cy + r);
            stream.curveTo(cx - c, cy + r, cx - r, cy + c, cx - r, cy);
            stream.curveTo(cx - r, cy - c, cx - c, cy - r, cx, cy - r);
            stream.curveTo(cx + c, cy - r, cx + r, cy - c, cx + r, cy);
            stream.closeAndStroke();
        });
    }
}
