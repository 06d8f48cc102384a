package org.evenfall.card;

import java.io.IOException;
import java.util.List;
import org.apache.pdfbox.pdmodel.documentinterchange.logicalstructure.PDStructureElement;
import org.evenfall.page.Flow;
import org.evenfall.page.Pen;
import org.evenfall.page.QrCode;
import org.evenfall.page.TextStyle;

/**
 * Lines left of the QR code and, where they are many, under it.
 *
 * @param lines lines of text
 * @param qr settings as text, empty for none
 * @param tag element of the lines
 * @param picture element of the code
 */
record CodePiece(List<Line> lines, String qr, PDStructureElement tag, PDStructureElement picture)
        implements Flow.Piece {

    /**
     * A line, which may be wrapped.
     *
     * @param style how it is set
     * @param text its text
     */
    record Line(TextStyle style, String text) {}

    /** Side of the QR code with its quiet zone, points. */
    private static final double CODE = 114;

    private static final double GAP = 2;

    CodePiece {
        lines = List.copyOf(lines);
    }

    /** Width of a line that begins this far down: next to the code, or under it. */
    private double room(double down, double width) {
        return qr.isEmpty() || down >= CODE ? width : width - CODE - GAP;
    }

    private double words(Pen pen, double width) throws IOException {
        double height = 0;
        for (Line line : lines) {
            height += pen.paragraphHeight(line.style(), room(height, width), line.text());
        }
        return height;
    }

    @Override
    public double gap() {
        return 4;
    }

    @Override
    public double height(Pen pen, double width) throws IOException {
        return Math.max(words(pen, width), qr.isEmpty() ? 0 : CODE) + 2;
    }

    @Override
    public void draw(Pen pen, double x, double top, double width) throws IOException {
        pen.mark(tag, () -> {
            double y = top;
            for (Line line : lines) {
                y = pen.paragraph(line.style(), x, y, room(y - top, width), line.text());
            }
        });
        if (!qr.isEmpty()) {
            pen.mark(picture, () -> QrCode.draw(pen, qr, x + width - CODE, top, CODE));
        }
    }
}
