package org.evenfall.card;

import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import org.apache.pdfbox.pdmodel.documentinterchange.taggedpdf.StandardStructureTypes;
import org.evenfall.page.Colours;
import org.evenfall.page.Face;
import org.evenfall.page.Flow;
import org.evenfall.page.Pen;
import org.evenfall.page.Pieces;
import org.evenfall.page.TextStyle;

/** The face with the proof, the signature, the stop list and the cautions. */
final class BackFace {

    private static final double GAP = 14;

    /** Height of a box for the pen, points. */
    private static final double PEN_BOX = 34;

    private BackFace() {}

    /**
     * All pieces in reading order, for columns of this width.
     *
     * @param signature lines of who measured and signed, and when
     * @param fromFront what found no room on the front
     */
    static List<Flow.Piece> pieces(
            Pen pen, CardContent content, List<String> signature, FrontFoot.Undrawn fromFront, double width)
            throws IOException {
        List<Flow.Piece> pieces = new ArrayList<>();
        if (content.sheet().findingOnly()) {
            finding(pen, content, fromFront.warnings(), width, pieces);
        } else {
            proof(pen, content.proof(), width, pieces);
        }
        for (String line : signature) {
            if (LongTexts.isLong(line)) {
                pieces.addAll(Pieces.paragraph(pen, TextStyle.BODY, line, width));
            }
        }
        pieces.add(signaturePiece(
                pen, signature.stream().filter(line -> !LongTexts.isLong(line)).toList(), content.code()));
        if (!content.sheet().findingOnly()) {
            pieces.addAll(
                    Pieces.list(pen, TextStyle.STRONG, Pieces.Bullet.TRIANGLE, fromFront.warnings(), false, width));
        }
        if (fromFront.stops()) {
            section(pen, content.stops(), width, pieces);
        }
        section(pen, content.cautions(), width, pieces);
        return pieces;
    }

    private static void finding(
            Pen pen, CardContent content, List<String> warnings, double width, List<Flow.Piece> pieces)
            throws IOException {
        pieces.addAll(Pieces.title(pen, content.heading().title(), width));
        for (String line : content.heading().lines()) {
            pieces.addAll(Pieces.paragraph(pen, TextStyle.BODY, line, width));
        }
        pieces.addAll(Pieces.list(pen, TextStyle.STRONG, Pieces.Bullet.TRIANGLE, warnings, false, width));
    }

    private static void proof(Pen pen, CardContent.Proof proof, double width, List<Flow.Piece> pieces)
            throws IOException {
        pieces.addAll(Pieces.heading(pen, proof.title(), width));
        if (!proof.bars().isEmpty()) {
            pieces.add(new TrayBars(proof.bars(), pen.tags().figure(proof.barsInWords())));
        }
        for (String line : proof.lines()) {
            pieces.addAll(Pieces.paragraph(pen, TextStyle.STRONG, line, width));
        }
    }

    private static Flow.Piece signaturePiece(Pen pen, List<String> lines, CardContent.Code code) {
        return new SignaturePiece(
                lines,
                code.text(),
                pen.tags().element(StandardStructureTypes.P),
                code.text().isEmpty()
                        ? pen.tags().element(StandardStructureTypes.P)
                        : pen.tags().figure(code.inWords()));
    }

    private static void section(Pen pen, CardContent.Section section, double width, List<Flow.Piece> pieces)
            throws IOException {
        if (!section.lines().isEmpty()) {
            pieces.addAll(Pieces.heading(pen, section.title(), width));
            pieces.addAll(Pieces.list(pen, TextStyle.BODY, Pieces.Bullet.SQUARE, section.lines(), true, width));
        }
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

    /** Draws the boxes for the pen, if any, and the last line; gives their upper edge. */
    static double foot(Pen pen, Face face, CardContent content) throws IOException {
        CardContent.Foot foot = content.foot();
        double footer = face.bottom() - pen.paragraphHeight(TextStyle.BODY, face.innerWidth(), foot.line());
        int count = foot.penLabels().size();
        double boxes = footer - 2 - (count == 0 ? 0 : PEN_BOX);
        double width = face.innerWidth() / Math.max(1, count);
        for (int i = 0; i < count; i++) {
            double x = face.left() + i * width;
            String label = foot.penLabels().get(i);
            pen.box(x, boxes, width, PEN_BOX, 0.8, Colours.INK);
            pen.mark(
                    pen.tags().element(StandardStructureTypes.P),
                    () -> pen.text(TextStyle.BODY, x + 4, boxes + TextStyle.SMALLEST, label));
        }
        pen.marked(StandardStructureTypes.P, TextStyle.BODY, face.left(), footer, face.innerWidth(), foot.line());
        return boxes - 4;
    }
}
