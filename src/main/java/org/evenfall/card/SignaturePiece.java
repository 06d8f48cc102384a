package org.evenfall.card;

import java.io.IOException;
import java.util.List;
import org.apache.pdfbox.pdmodel.documentinterchange.logicalstructure.PDStructureElement;
import org.evenfall.page.Colours;
import org.evenfall.page.Flow;
import org.evenfall.page.Pen;
import org.evenfall.page.QrCode;
import org.evenfall.page.TextStyle;

/**
 * Who measured and who signs, left of the QR code, with a line for the pen.
 *
 * @param lines who, when, which key
 * @param qr settings as text, empty for none
 * @param tag element of the lines
 * @param picture element of the code
 */
record SignaturePiece(List<String> lines, String qr, PDStructureElement tag, PDStructureElement picture)
        implements Flow.Piece {

    /** Side of the QR code with its quiet zone, points. */
    private static final double CODE = 96;

    private static final double GAP = 6;
    /** Height for a signature by pen, points. */
    private static final double PEN_ROOM = 24;

    SignaturePiece {
        lines = List.copyOf(lines);
    }

    private double room(double width) {
        return qr.isEmpty() ? width : width - CODE - GAP;
    }

    private double words(Pen pen, double width) throws IOException {
        double height = 0;
        for (String line : lines) {
            height += pen.paragraphHeight(TextStyle.BODY, room(width), line);
        }
        return height + PEN_ROOM;
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
        double room = room(width);
        pen.mark(tag, () -> {
            double y = top;
            for (String line : lines) {
                y = pen.paragraph(TextStyle.BODY, x, y, room, line);
            }
        });
        double under = top + words(pen, width);
        pen.line(x, under - 2, x + room, under - 2, 0.8, Colours.INK);
        if (!qr.isEmpty()) {
            pen.mark(picture, () -> QrCode.draw(pen, qr, x + width - CODE, top, CODE));
        }
    }
}
