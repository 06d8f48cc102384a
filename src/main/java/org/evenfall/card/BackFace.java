package org.evenfall.card;

import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import org.apache.pdfbox.pdmodel.documentinterchange.logicalstructure.PDStructureElement;
import org.apache.pdfbox.pdmodel.documentinterchange.taggedpdf.StandardStructureTypes;
import org.evenfall.card.Typefaces.Weight;

/** The face with the proof, the signature, the stop list and the cautions. */
final class BackFace {

    private static final double GAP = 14;
    private static final double PEN_BOX = 34;

    private BackFace() {}

    /**
     * All pieces in reading order, for columns of this width.
     *
     * @param signature lines of who measured and signed, and when
     * @param warnings those that found no room on the front
     * @param stops whether the stop list found none
     */
    static List<Flow.Piece> pieces(
            Pen pen, CardContent content, List<String> signature, List<String> warnings, boolean stops, double width)
            throws IOException {
        List<Flow.Piece> pieces = new ArrayList<>();
        if (content.findingOnly()) {
            pieces.addAll(Pieces.title(pen, content.title(), width));
            for (String line : content.lines()) {
                pieces.addAll(Pieces.paragraph(pen, Weight.REGULAR, line, width));
            }
            pieces.addAll(Pieces.list(pen, Weight.BOLD, Pieces.Bullet.TRIANGLE, warnings, false, width));
        } else {
            pieces.addAll(Pieces.heading(pen, content.proofTitle(), width));
            if (!content.bars().isEmpty()) {
                pieces.add(new TrayBars(content.bars(), figure(pen, content.barsTold())));
            }
            for (String line : content.proof()) {
                pieces.addAll(Pieces.paragraph(pen, Weight.BOLD, line, width));
            }
        }
        for (String line : signature) {
            if (LongTexts.isLong(line)) {
                pieces.addAll(Pieces.paragraph(pen, Weight.REGULAR, line, width));
            }
        }
        pieces.add(new SignaturePiece(
                signature.stream().filter(line -> !LongTexts.isLong(line)).toList(),
                content.qr(),
                pen.tags().element(StandardStructureTypes.P),
                content.qr().isEmpty() ? pen.tags().element(StandardStructureTypes.P) : figure(pen, content.qrTold())));
        if (!content.findingOnly()) {
            pieces.addAll(Pieces.list(pen, Weight.BOLD, Pieces.Bullet.TRIANGLE, warnings, false, width));
        }
        if (stops) {
            list(pen, content.stopTitle(), content.stops(), width, pieces);
        }
        list(pen, content.cautionTitle(), content.cautions(), width, pieces);
        return pieces;
    }

    private static void list(Pen pen, String title, List<String> lines, double width, List<Flow.Piece> pieces)
            throws IOException {
        if (!lines.isEmpty()) {
            pieces.addAll(Pieces.heading(pen, title, width));
            pieces.addAll(Pieces.list(pen, Weight.REGULAR, Pieces.Bullet.SQUARE, lines, true, width));
        }
    }

    private static PDStructureElement figure(Pen pen, String told) {
        PDStructureElement figure = pen.tags().element(StandardStructureTypes.Figure);
        figure.setAlternateDescription(told);
        return figure;
    }

    /** One column on a tall face, two on a wide one. */
    static List<Flow.Column> columns(Face face, double top, double bottom) {
        double width = columnWidth(face);
        Flow.Column first = new Flow.Column(face.left(), top, width, bottom);
        return face.columns() == 1
                ? List.of(first)
                : List.of(first, new Flow.Column(face.left() + width + GAP, top, width, bottom));
    }

    static double columnWidth(Face face) {
        return face.columns() == 1 ? face.innerWidth() : (face.innerWidth() - GAP) / 2;
    }

    /** Boxes for the pen, if any, and the last line; returns where they begin. */
    static double foot(Pen pen, Face face, CardContent content) throws IOException {
        double y = face.bottom();
        double height = pen.paragraphHeight(Weight.REGULAR, Pieces.TEXT, face.innerWidth(), content.footer());
        double footer = y - height;
        int count = content.penLabels().size();
        double boxes = footer - 2 - (count == 0 ? 0 : PEN_BOX);
        double width = face.innerWidth() / Math.max(1, count);
        for (int i = 0; i < count; i++) {
            double x = face.left() + i * width;
            String label = content.penLabels().get(i);
            pen.box(x, boxes, width, PEN_BOX, 0.8, Pen.INK);
            pen.mark(
                    pen.tags().element(StandardStructureTypes.P),
                    () -> pen.text(Weight.REGULAR, Pieces.TEXT, Pen.INK, x + 4, boxes + Pieces.TEXT, label));
        }
        pen.mark(
                pen.tags().element(StandardStructureTypes.P),
                () -> pen.paragraph(
                        Weight.REGULAR,
                        Pieces.TEXT,
                        Pen.INK,
                        face.left(),
                        footer,
                        face.innerWidth(),
                        content.footer()));
        return boxes - 4;
    }
}
