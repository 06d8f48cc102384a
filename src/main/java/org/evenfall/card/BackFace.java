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
    private static final double PEN_BOX = 36;

    /** Space at both ends of a label in a box, points. */
    private static final double PEN_INDENT = 4;

    /** Shares of the room that the box for the signature has. */
    private static final int SIGNATURE_SHARES = 3;

    private BackFace() {}

    /**
     * All pieces in reading order, for the columns of this face. Where it has one column, the QR code is next to the lines of
     * the proof, which are short, and who signs is one paragraph; so that a card keeps to two pages.
     *
     * @param signature lines of who measured and signed, and when
     * @param fromFront what found no room on the front
     */
    static List<Flow.Piece> pieces(
            Pen pen, CardContent content, List<String> signature, FrontFoot.Undrawn fromFront, Face face)
            throws IOException {
        double width = columnWidth(face);
        boolean codeByProof = face.columns() == 1 && !content.proof().lines().isEmpty();
        List<Flow.Piece> pieces = new ArrayList<>();
        if (content.sheet().findingOnly()) {
            finding(pen, content, fromFront.warnings(), width, pieces);
        } else {
            proof(pen, content, codeByProof, width, pieces);
            pieces.addAll(
                    Pieces.list(pen, TextStyle.STRONG, Pieces.Bullet.TRIANGLE, fromFront.warnings(), false, width));
        }
        if (fromFront.stops()) {
            section(pen, content.stops(), width, pieces);
        }
        section(pen, content.cautions(), width, pieces);
        for (String line : signature) {
            if (LongTexts.isLong(line)) {
                pieces.addAll(Pieces.paragraph(pen, TextStyle.BODY, line, width));
            }
        }
        List<String> lines =
                signature.stream().filter(line -> !LongTexts.isLong(line)).toList();
        if (codeByProof) {
            pieces.addAll(Pieces.paragraph(pen, TextStyle.BODY, String.join(" · ", lines), width));
        } else {
            pieces.add(codePiece(pen, lines, TextStyle.BODY, content.code()));
        }
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

    private static void proof(Pen pen, CardContent content, boolean withCode, double width, List<Flow.Piece> pieces)
            throws IOException {
        CardContent.Proof proof = content.proof();
        pieces.addAll(Pieces.heading(pen, proof.title(), width));
        if (!proof.bars().isEmpty()) {
            pieces.add(TrayBars.of(proof.bars(), pen.tags().figure(proof.barsInWords())));
        }
        if (withCode) {
            pieces.add(codePiece(pen, proof.lines(), TextStyle.STRONG, content.code()));
            return;
        }
        for (String line : proof.lines()) {
            pieces.addAll(Pieces.paragraph(pen, TextStyle.STRONG, line, width));
        }
    }

    private static Flow.Piece codePiece(Pen pen, List<String> lines, TextStyle style, CardContent.Code code) {
        return new CodePiece(
                lines,
                style,
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
            pieces.addAll(Pieces.list(pen, TextStyle.BODY, Pieces.Bullet.SQUARE, section.lines(), false, width));
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

    private static double columnWidth(Face face) {
        return face.columns() == 1 ? face.innerWidth() : (face.innerWidth() - GAP) / 2;
    }

    /**
     * Draws the boxes for the pen, if any, and the last line, side by side on a wide face; gives their upper edge.
     */
    static double foot(Pen pen, Face face, CardContent content) throws IOException {
        CardContent.Foot foot = content.foot();
        boolean boxes = !foot.penLabels().isEmpty();
        boolean sideBySide = boxes && face.columns() == 2;
        double width = sideBySide ? columnWidth(face) : face.innerWidth();
        double lines = face.bottom() - pen.paragraphHeight(TextStyle.BODY, width, foot.line());
        double top = sideBySide ? face.bottom() : lines - 2;
        if (boxes) {
            top -= PEN_BOX;
            boxes(pen, foot.penLabels(), face.right() - width, top, width);
        }
        pen.marked(StandardStructureTypes.P, TextStyle.BODY, face.left(), lines, width, foot.line());
        return Math.min(top, lines) - 4;
    }

    /** A box for each label, as wide as it and a share of the rest; the last, for the signature, has three shares. */
    private static void boxes(Pen pen, List<String> labels, double left, double top, double width) throws IOException {
        double rest = width;
        for (String label : labels) {
            rest -= pen.width(TextStyle.BODY, label) + 2 * PEN_INDENT;
        }
        double share = Math.max(0, rest / (labels.size() - 1 + SIGNATURE_SHARES));
        double x = left;
        for (int i = 0; i < labels.size(); i++) {
            String label = labels.get(i);
            double at = x;
            double room = pen.width(TextStyle.BODY, label)
                    + 2 * PEN_INDENT
                    + share * (i == labels.size() - 1 ? SIGNATURE_SHARES : 1);
            pen.box(x, top, room, PEN_BOX, 0.8, Colours.INK);
            pen.mark(
                    pen.tags().element(StandardStructureTypes.P),
                    () -> pen.text(TextStyle.BODY, at + PEN_INDENT, top + TextStyle.SMALLEST, label));
            x += room;
        }
    }
}
