package org.evenfall.card;

import java.awt.Color;
import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.PDPageContentStream;
import org.apache.pdfbox.pdmodel.documentinterchange.logicalstructure.PDStructureElement;
import org.evenfall.card.Typefaces.Run;
import org.evenfall.card.Typefaces.Weight;

/** Draws on one page in points with the origin at the top left, so that a layout reads as it is written. */
final class Pen {

    static final Color INK = new Color(0x11, 0x15, 0x18);
    static final Color ACCENT = new Color(0x1F, 0x3F, 0x63);
    static final Color LINE = new Color(0x8A, 0x8A, 0x84);

    /** Distance of lines, and how far the baseline stands above the lower edge of its line, in letter sizes. */
    static final double LEADING = 1.16;

    static final double DESCENT = 0.25;

    private final PDPageContentStream stream;
    private final Typefaces faces;
    private final Tags tags;
    private final PDPage page;
    private final double height;
    private boolean marking;

    Pen(PDPageContentStream stream, Typefaces faces, Tags tags, PDPage page) {
        this.stream = stream;
        this.faces = faces;
        this.tags = tags;
        this.page = page;
        this.height = page.getMediaBox().getHeight();
    }

    Tags tags() {
        return tags;
    }

    /** What is drawn together. */
    @FunctionalInterface
    interface Drawing {
        void draw() throws IOException;
    }

    /** Draws something that belongs to an element of the reading order. */
    void mark(PDStructureElement element, Drawing drawing) throws IOException {
        stream.beginMarkedContent(COSName.getPDFName(element.getStructureType()), tags.next(page, element));
        marking = true;
        drawing.draw();
        marking = false;
        stream.endMarkedContent();
    }

    /** Lines and boxes of no meaning of their own, which a screen reader passes over. */
    private void ornament(Drawing drawing) throws IOException {
        if (marking) {
            drawing.draw();
        } else {
            stream.beginMarkedContent(COSName.ARTIFACT);
            drawing.draw();
            stream.endMarkedContent();
        }
    }

    Typefaces faces() {
        return faces;
    }

    /** Writes one line with its baseline at y. */
    void text(Weight weight, double size, Color colour, double x, double y, String text) throws IOException {
        stream.beginText();
        stream.setNonStrokingColor(colour);
        stream.newLineAtOffset((float) x, (float) (height - y));
        for (Run run : faces.runs(weight, text)) {
            stream.setFont(run.font(), (float) size);
            stream.showText(run.text());
        }
        stream.endText();
    }

    /** Writes wrapped lines from a top edge down; returns the bottom edge. */
    double paragraph(Weight weight, double size, Color colour, double x, double top, double width, String text)
            throws IOException {
        double y = top;
        for (String line : wrap(weight, size, width, text)) {
            y += size * LEADING;
            text(weight, size, colour, x, y - size * DESCENT, line);
        }
        return y;
    }

    double paragraphHeight(Weight weight, double size, double width, String text) throws IOException {
        return wrap(weight, size, width, text).size() * size * LEADING;
    }

    /** Breaks at blanks; a word longer than the line breaks where it must. */
    List<String> wrap(Weight weight, double size, double width, String text) throws IOException {
        List<String> lines = new ArrayList<>();
        String line = "";
        for (String word : text.strip().split("\\s+", -1)) {
            String longer = line.isEmpty() ? word : line + " " + word;
            if (faces.width(weight, size, longer) <= width) {
                line = longer;
                continue;
            }
            if (!line.isEmpty()) {
                lines.add(line);
            }
            line = word;
            while (faces.width(weight, size, line) > width && line.length() > 1) {
                int fits = line.length() - 1;
                while (fits > 1 && faces.width(weight, size, line.substring(0, fits)) > width) {
                    fits--;
                }
                lines.add(line.substring(0, fits));
                line = line.substring(fits);
            }
        }
        if (!line.isEmpty()) {
            lines.add(line);
        }
        return lines;
    }

    void line(double x1, double y1, double x2, double y2, double thickness, Color colour) throws IOException {
        ornament(() -> {
            stream.setStrokingColor(colour);
            stream.setLineWidth((float) thickness);
            stream.moveTo((float) x1, (float) (height - y1));
            stream.lineTo((float) x2, (float) (height - y2));
            stream.stroke();
        });
    }

    void box(double x, double top, double width, double boxHeight, double thickness, Color colour) throws IOException {
        ornament(() -> {
            stream.setStrokingColor(colour);
            stream.setLineWidth((float) thickness);
            stream.addRect((float) x, (float) (height - top - boxHeight), (float) width, (float) boxHeight);
            stream.stroke();
        });
    }

    void fill(double x, double top, double width, double boxHeight, Color colour) throws IOException {
        ornament(() -> {
            stream.setNonStrokingColor(colour);
            stream.addRect((float) x, (float) (height - top - boxHeight), (float) width, (float) boxHeight);
            stream.fill();
        });
    }

    void circle(double x, double y, double radius, Color colour) throws IOException {
        ornament(() -> {
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
